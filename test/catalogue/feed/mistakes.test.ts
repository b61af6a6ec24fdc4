/** What each slip of feeds and water quality gives, by the published formula with the slip put into it by hand. */
import { evaluate } from "../../../src/kernel";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { expectNoMistake, type MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const { sqrt } = Math;
/** In litres: 231 cubic inches of 16.387064 mL. */
const GALLON = 3.785411784;
/** In mg. */
const POUND = 453_592.37;
const KILOGRAM = 1_000_000;

/** g/mol: 2 x 1.008 + 32.06 + 4 x 15.999, and so on. */
const SULFURIC = 98.072;
const NITRIC = 63.012;
const PHOSPHORIC = 97.994;
/** mg a meq: 100.086 / 2, and 1.008 + 12.011 + 3 x 15.999. */
const CACO3 = 50.043;
const HCO3 = 61.016;
const P_OF_P2O5 = 61.948 / 141.943;
const K_OF_K2O = 78.196 / 94.195;

const LITRES = { alkalinity: 230, target_alkalinity: 70, acid_normality: 11, volume: 900, units: "metric" };
const GALLONS = { ...LITRES, units: "us" };
const WATERS = { volumes: [[40], [25], [60]], ecs: [[1.7], [0.6], [0.3]] };
const SHARES = { value_a: 2.1, value_b: 0.5, target: 0.9 };
const FEED = { water_ec: 0.4, ppm: 170, label_ec: 1.3, label_ppm: 200 };
const BACK = { feed_ec: 1.9, water_ec: 0.4, label_ec: 1.3, label_ppm: 200 };
const TANK_US = { ppm: 170, analysis: 0.15, volume: 320, units: "us" };
const TANK_METRIC = { ppm: 170, analysis: 0.15, volume: 1300, units: "metric" };
const WEIGHED_US = { weight: 2.7, analysis: 0.15, volume: 320, units: "us" };
const WEIGHED_METRIC = { weight: 1.9, analysis: 0.15, volume: 1300, units: "metric" };
const CAUGHT = { treated_volume: 470, stock_used: 6 };
const METERED = { treated_volume: 470, stock_used: 6, counts_stock: false };
const LOOP = { start_ppm: 24, makeup_ppm: 41, uptake_ppm: 13, makeup_volume: 60, tank_volume: 1100, rounds: 17 };
const MEQ = { sodium: 7.7, calcium: 2.3, magnesium: 1.4 };
const PPM = { sodium: 180, calcium: 46, magnesium: 17, basis: "ppm" };
const PPM_MEQ = { sodium: 180 / 22.99, calcium: 46 / 20.039, magnesium: 17 / 12.1525 };
const STOCK_US = { ppm: 170, analysis: 0.15, injector_ratio: 128, stock_volume: 30, units: "us" };
const STOCK_METRIC = { ppm: 170, analysis: 0.15, injector_ratio: 128, stock_volume: 90, units: "metric" };
const TOO_STRONG = { tank_volume: 420, ec_now: 2.3, ec_target: 1.6, water_ec: 0.3 };
const TOO_WEAK = { tank_volume: 420, ec_now: 0.9, ec_target: 1.6, feed_ec_rise: 1.4, injector_ratio: 130 };

const TABLES: Readonly<Record<string, readonly MistakeRow[]>> = {
  ACID_NORMALITY: [
    [
      "The specific gravity was left out: a litre of acid weighs more than a litre of water",
      { acid: "sulfuric", percent_by_weight: 0.93, specific_gravity: 1.83 },
      (1000 * 0.93 * 2) / SULFURIC,
    ],
    [
      "The specific gravity was left out: a litre of acid weighs more than a litre of water",
      { acid: "nitric", percent_by_weight: 0.67, specific_gravity: 1.4 },
      (1000 * 0.67) / NITRIC,
    ],
    [
      "One of the two protons of sulfuric acid was counted",
      { acid: "sulfuric", percent_by_weight: 0.93, specific_gravity: 1.83 },
      (1830 * 0.93) / SULFURIC,
    ],
    [
      "All three protons of phosphoric acid were counted",
      { acid: "phosphoric", percent_by_weight: 0.75, specific_gravity: 1.58 },
      (1580 * 0.75 * 3) / PHOSPHORIC,
    ],
    ["The acid was taken as pure", { acid: "nitric", percent_by_weight: 0.67, specific_gravity: 1.4 }, 1400 / NITRIC],
  ],
  ACID_VOLUME: [
    [
      "Alkalinity in ppm of HCO3 was taken for ppm of CaCO3",
      LITRES,
      (((230 / CACO3) * HCO3 - 70) / CACO3) * (900 / 11),
    ],
    ["All of the alkalinity was neutralized, down to 0", LITRES, ((230 / CACO3) * 900) / 11],
    ["All of the alkalinity was neutralized, down to 0", GALLONS, ((230 / CACO3) * 900 * GALLON) / 11],
    ["ppm were used as meq/L, undivided by 50", LITRES, ((230 - 70) * 900) / 11],
    ["ppm were used as meq/L, undivided by 50", GALLONS, ((230 - 70) * 900 * GALLON) / 11],
    ["CaCO3 was counted as 100 mg a meq, its molar mass, not as 50", LITRES, (((230 - 70) / 100.086) * 900) / 11],
    ["Gallons were used as litres", GALLONS, (((230 - 70) / CACO3) * 900) / 11],
  ],
  BLEND_EC: [
    ["The plain mean was taken, whatever the volumes", WATERS, 2.6 / 3],
    ["The volumes were put in the wrong order", WATERS, (60 * 1.7 + 25 * 0.6 + 40 * 0.3) / 125],
  ],
  BLEND_SHARE: [
    ["The part of the other water was given", SHARES, (2.1 - 0.9) / (2.1 - 0.5)],
    ["Parts of a to 1 part of b were given, not the part of a in the whole", SHARES, (0.9 - 0.5) / (2.1 - 0.9)],
    ["The target was divided by water a, as if b were pure", SHARES, 0.9 / 2.1],
  ],
  CONVERT_EC: [
    ["The number was kept and only the unit was changed", { value: 850, from: "uS/cm", to: "mS/cm" }, 850],
    [
      "The factor was used the wrong way round",
      { value: 1.7, from: "mS/cm", to: "tds_ppm", tds_factor: 640 },
      1.7 / 640,
    ],
    [
      "The factor was used the wrong way round",
      { value: 900, from: "tds_ppm", to: "dS/m", tds_factor: 700 },
      900 * 700,
    ],
    // The thousand of uS is kept in its place.
    [
      "The factor was used the wrong way round",
      { value: 1700, from: "uS/cm", to: "tds_ppm", tds_factor: 640 },
      1.7 / 640,
    ],
    [
      "The factor was used the wrong way round",
      { value: 900, from: "tds_ppm", to: "uS/cm", tds_factor: 700 },
      900 * 700 * 1000,
    ],
    [
      "The scale of another TDS meter was used",
      { value: 1.7, from: "mmho/cm", to: "tds_ppm", tds_factor: 640 },
      1.7 * 500,
    ],
    [
      "The scale of another TDS meter was used",
      { value: 1.7, from: "mS/cm", to: "tds_ppm", tds_factor: 500 },
      1.7 * 700,
    ],
    [
      "The scale of another TDS meter was used",
      { value: 900, from: "tds_ppm", to: "uS/cm", tds_factor: 700 },
      (900 / 500) * 1000,
    ],
  ],
  ELEMENT_FROM_OXIDE: [
    ["The oxide was taken for the element", { percent: 18, oxide: "P2O5" }, 18],
    ["It was divided by the factor, not multiplied", { percent: 18, oxide: "P2O5" }, 18 / P_OF_P2O5],
    ["It was divided by the factor, not multiplied", { percent: 14, oxide: "NH4" }, (14 / 14.007) * 18.039],
    ["The atoms were counted once where the formula has two", { percent: 18, oxide: "P2O5" }, (18 * 30.974) / 141.943],
    ["The atoms were counted once where the formula has two", { percent: 23, oxide: "K2O" }, (23 * 39.098) / 94.195],
  ],
  FERTIGATION_EC: [
    ["The EC of the water was left out", FEED, (170 * 1.3) / 200],
    ["The EC of the water was taken off, not added", FEED, (170 * 1.3) / 200 - 0.4],
    ["The label's EC was taken as it stands, at other ppm", FEED, 0.4 + 1.3],
    ["The label was turned upside down: ppm over EC", FEED, 0.4 + 170 * (200 / 1.3)],
  ],
  FERTILIZER_WEIGHT: [
    ["ppm of the product was taken for ppm of the element", TANK_US, (170 * 320 * GALLON) / POUND],
    ["ppm of the product was taken for ppm of the element", TANK_METRIC, (170 * 1300) / KILOGRAM],
    ["The analysis was used as a percentage (20), not as a fraction (0.20)", TANK_METRIC, (170 * 1300) / KILOGRAM / 15],
    ["The weight of the element was multiplied by the analysis", TANK_METRIC, ((170 * 1300) / KILOGRAM) * 0.15],
    // A label of 0.15 of P holds 0.15 / 0.436 of P2O5, which then stands where P belongs.
    ["P2O5 on the label was used as P", TANK_METRIC, (170 * 1300) / KILOGRAM / (0.15 / P_OF_P2O5)],
    ["K2O on the label was used as K", TANK_METRIC, (170 * 1300) / KILOGRAM / (0.15 / K_OF_K2O)],
    ["The answer was given in ounces, not in pounds", TANK_US, ((170 * 320 * GALLON) / POUND / 0.15) * 16],
  ],
  INJECTOR_RATIO: [
    ["The stock was counted the other way: in or beside the treated volume", CAUGHT, 476 / 6],
    ["The stock was counted the other way: in or beside the treated volume", METERED, 470 / 6],
    ["The ratio was inverted", CAUGHT, 6 / 470],
    ["The ratio was inverted", METERED, 6 / 476],
    ["The answer was given in percent", CAUGHT, 600 / 470],
    ["The answer was given in percent", METERED, 600 / 476],
  ],
  ION_BUILDUP: [
    ["What plants take up was left out", LOOP, 24 + (17 * 41 * 60) / 1100],
    ["The make-up was counted once, not at each round", LOOP, 24 + (28 * 60) / 1100],
    ["The make-up was counted as the whole tank", LOOP, 24 + 17 * 28],
    ["What was there at the start was left out", LOOP, (17 * 28 * 60) / 1100],
  ],
  PPM_FROM_EC: [
    ["The EC of the water was not taken off", BACK, (1.9 * 200) / 1.3],
    ["The EC of the water was added, not taken off", BACK, (2.3 * 200) / 1.3],
    ["The label was turned upside down: EC over ppm", BACK, (1.5 * 1.3) / 200],
  ],
  PPM_FROM_WEIGHT: [
    ["ppm of the product was worked, not of the element", WEIGHED_US, (2.7 * POUND) / (320 * GALLON)],
    ["ppm of the product was worked, not of the element", WEIGHED_METRIC, (1.9 * KILOGRAM) / 1300],
    [
      "The analysis was used as a percentage (20), not as a fraction (0.20)",
      WEIGHED_METRIC,
      (1.9 * KILOGRAM * 15) / 1300,
    ],
    ["It was divided by the analysis", WEIGHED_METRIC, (1.9 * KILOGRAM) / 1300 / 0.15],
    ["Ounces were taken for pounds", WEIGHED_US, (16 * 2.7 * POUND * 0.15) / (320 * GALLON)],
  ],
  SODIUM_ADSORPTION: [
    ["ppm were put in where meq per litre belong", PPM, 180 / sqrt((46 + 17) / 2)],
    // Right is 7.7 meq: the report said 177 ppm of sodium, and that was typed.
    ["ppm were put in where meq per litre belong", MEQ, (7.7 * 22.99) / sqrt((2.3 * 20.039 + 1.4 * 12.1525) / 2)],
    ["Calcium and magnesium were added, but not halved", MEQ, 7.7 / sqrt(2.3 + 1.4)],
    [
      "Calcium and magnesium were added, but not halved",
      PPM,
      PPM_MEQ.sodium / sqrt(PPM_MEQ.calcium + PPM_MEQ.magnesium),
    ],
    ["The root was halved, not the sum under it", MEQ, 7.7 / (sqrt(2.3 + 1.4) / 2)],
    ["The root was left out", MEQ, 7.7 / ((2.3 + 1.4) / 2)],
    ["The root was left out", PPM, PPM_MEQ.sodium / ((PPM_MEQ.calcium + PPM_MEQ.magnesium) / 2)],
    ["Magnesium was left out", MEQ, 7.7 / sqrt(2.3 / 2)],
    ["Magnesium was left out", PPM, PPM_MEQ.sodium / sqrt(PPM_MEQ.calcium / 2)],
  ],
  STOCK_WEIGHT: [
    [
      "1:100 was taken as 1 part of stock to 100 parts of water, 1 in 101",
      STOCK_METRIC,
      (170 * 129 * 90) / KILOGRAM / 0.15,
    ],
    ["The injector ratio was left out: that is the feed, not the stock", STOCK_METRIC, (170 * 90) / KILOGRAM / 0.15],
    ["It was divided by the injector ratio", STOCK_METRIC, ((170 / 128) * 90) / KILOGRAM / 0.15],
    ["ppm of the product was taken for ppm of the element", STOCK_US, (170 * 128 * 30 * GALLON) / POUND],
    ["ppm of the product was taken for ppm of the element", STOCK_METRIC, (170 * 128 * 90) / KILOGRAM],
    [
      "The analysis was used as a percentage (20), not as a fraction (0.20)",
      STOCK_METRIC,
      (170 * 128 * 90) / KILOGRAM / 15,
    ],
    ["The answer was given in ounces, not in pounds", STOCK_US, ((170 * 128 * 30 * GALLON) / POUND / 0.15) * 16],
  ],
  TANK_DILUTION: [
    ["The EC of the water was left out", TOO_STRONG, (420 * (2.3 - 1.6)) / 1.6],
    ["It was worked as the part to let out and replace", TOO_STRONG, (420 * (2.3 - 1.6)) / (2.3 - 0.3)],
    ["The whole tank afterwards was given, not the water to add", TOO_STRONG, (420 * (2.3 - 0.3)) / (1.6 - 0.3)],
  ],
  TANK_DOSE: [
    ["The stock was counted as feed: the injector ratio was left out", TOO_WEAK, (420 * (1.6 - 0.9)) / 1.4],
    ["The EC wanted was used, not what is lacking", TOO_WEAK, (420 * 1.6) / (1.4 * 130)],
    ["It was multiplied by the rise, not divided", TOO_WEAK, ((420 * (1.6 - 0.9)) / 130) * 1.4],
  ],
};

expectMistakesOfGroup("Feed and water quality", TABLES);

expectNoMistake("ACID_NORMALITY", [
  [
    "One of the two protons of sulfuric acid was counted",
    { acid: "phosphoric", percent_by_weight: 0.75, specific_gravity: 1.58 },
  ],
  [
    "All three protons of phosphoric acid were counted",
    { acid: "sulfuric", percent_by_weight: 0.93, specific_gravity: 1.83 },
  ],
]);
expectNoMistake("ACID_VOLUME", [["Gallons were used as litres", LITRES]]);
expectNoMistake("BLEND_SHARE", [
  // All of it is water a: there is no part of b.
  ["Parts of a to 1 part of b were given, not the part of a in the whole", { ...SHARES, target: 2.1 }],
]);
expectNoMistake("CONVERT_EC", [
  // The factor is not read where neither side is TDS, or both are.
  ["The factor was used the wrong way round", { value: 850, from: "uS/cm", to: "mS/cm" }],
  ["The factor was used the wrong way round", { value: 850, from: "uS/cm", to: "mS/cm", tds_factor: 640 }],
  ["The factor was used the wrong way round", { value: 850, from: "tds_ppm", to: "tds_ppm", tds_factor: 640 }],
  ["The scale of another TDS meter was used", { value: 850, from: "uS/cm", to: "mS/cm" }],
  ["The scale of another TDS meter was used", { value: 850, from: "uS/cm", to: "mS/cm", tds_factor: 640 }],
  ["The scale of another TDS meter was used", { value: 850, from: "tds_ppm", to: "tds_ppm", tds_factor: 640 }],
]);
expectNoMistake("ELEMENT_FROM_OXIDE", [
  ["The atoms were counted once where the formula has two", { percent: 18, oxide: "NO3" }],
]);
expectNoMistake("FERTILIZER_WEIGHT", [["The answer was given in ounces, not in pounds", TANK_METRIC]]);
expectNoMistake("PPM_FROM_WEIGHT", [["Ounces were taken for pounds", WEIGHED_METRIC]]);
expectNoMistake("SODIUM_ADSORPTION", [["Magnesium was left out", { ...MEQ, calcium: 0 }]]);
expectNoMistake("STOCK_WEIGHT", [["The answer was given in ounces, not in pounds", STOCK_METRIC]]);

describe("each way that a calculation of the group may take", () => {
  const EC_WAYS: readonly (readonly [value: number, from: string, to: string, factor: number | null, gives: number])[] =
    [
      [1.7, "mS/cm", "dS/m", null, 1.7],
      [1.7, "mmho/cm", "uS/cm", null, 1700],
      [850, "uS/cm", "mmho/cm", null, 0.85],
      [850, "uS/cm", "uS/cm", null, 850],
      [850, "uS/cm", "tds_ppm", 640, 0.85 * 640],
      [900, "tds_ppm", "uS/cm", 700, (900 / 700) * 1000],
      [900, "tds_ppm", "tds_ppm", 700, 900],
    ];

  test.each(EC_WAYS)("CONVERT_EC: %d %s in %s by %s is %d", (value, from, to, factor, gives) => {
    expectClose(answerOf("CONVERT_EC", { value, from, to, tds_factor: factor }), gives, 1e-12);
  });

  test("BLEND_SHARE: water a may be the weaker or the stronger, and the target at either end", () => {
    expectClose(answerOf("BLEND_SHARE", SHARES), 0.4 / 1.6, 1e-12);
    expectClose(answerOf("BLEND_SHARE", { value_a: 0.5, value_b: 2.1, target: 0.9 }), 1.2 / 1.6, 1e-12);
    expect(answerOf("BLEND_SHARE", { ...SHARES, target: 2.1 })).toBe(1);
    expect(answerOf("BLEND_SHARE", { ...SHARES, target: 0.5 })).toBe(0);
  });

  test("CLOGGING_RISK: the whole scale of pH is read, its end among it", () => {
    const risk = entryOf("CLOGGING_RISK");
    expect(evaluate(risk, ["ph", 14])).toBe("severe");
    expect(refusalOf("CLOGGING_RISK", { property: "ph", value: 14.1 }).argument).toBe("value");
  });

  test("INJECTOR_RATIO: with the stock in the treated volume and beside it", () => {
    expectClose(answerOf("INJECTOR_RATIO", CAUGHT), 470 / 6, 1e-12);
    expectClose(answerOf("INJECTOR_RATIO", METERED), 476 / 6, 1e-12);
    expect(answerOf("INJECTOR_RATIO", { treated_volume: 6, stock_used: 6, counts_stock: false })).toBe(2);
  });

  test("ION_BUILDUP: an ion that plants take up faster than it comes falls to 0 and stays there", () => {
    const falling = { ...LOOP, makeup_ppm: 13, uptake_ppm: 41 };
    expectClose(answerOf("ION_BUILDUP", falling), Math.max(0, 24 - (17 * 28 * 60) / 1100), 1e-12);
    expectClose(answerOf("ION_BUILDUP", { ...falling, rounds: 9 }), 24 - (9 * 28 * 60) / 1100, 1e-12);
    expect(answerOf("ION_BUILDUP", { ...falling, rounds: 400 })).toBe(0);
  });

  test("SODIUM_ADSORPTION: in meq, in ppm, and with one of calcium and magnesium alone", () => {
    expectClose(answerOf("SODIUM_ADSORPTION", MEQ), 7.7 / sqrt(1.85), 1e-12);
    const ppm = PPM_MEQ.sodium / sqrt((PPM_MEQ.calcium + PPM_MEQ.magnesium) / 2);
    expectClose(answerOf("SODIUM_ADSORPTION", PPM), ppm, 1e-12);
    expectClose(answerOf("SODIUM_ADSORPTION", { ...MEQ, calcium: 0 }), 7.7 / sqrt(0.7), 1e-12);
    expectClose(answerOf("SODIUM_ADSORPTION", { ...MEQ, magnesium: 0 }), 7.7 / sqrt(1.15), 1e-12);
  });

  test("TANK_DILUTION: water as strong as the tank that is at its EC adds nothing, and is not refused", () => {
    const even = { tank_volume: 420, ec_now: 1.6, ec_target: 1.6, water_ec: 1.6 };
    expect(answerOf("TANK_DILUTION", even)).toBe(0);
    expect(stepsOf("TANK_DILUTION", even)("W")).toBe(0);
    expectClose(answerOf("TANK_DILUTION", TOO_STRONG), (420 * 0.7) / 1.3, 1e-12);
  });
});
