/** What people and programs usually get wrong in feed and water quality; each test says it in its title. */
import { evaluate, usualOf, usualVerdict } from "../../../src/kernel";
import type { FunctionError } from "../../../src/kernel";
import { ACID_NAMES, nutrientPerMeq } from "../../../src/functions/catalogue/feed/acids";
import { ALKALINITY_MG_PER_MEQ } from "../../../src/functions/catalogue/feed/atomicWeights";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { mistakeAnswer } from "../../rig/mistakeAnswer";

type Inputs = Readonly<Record<string, unknown>>;

/** The answer of a slip whose words hold a text, for an example of the entry. */
function slipAnswer(name: string, words: string, example: number): number | null {
  const entry = entryOf(name);
  const mistake = entry.mistakes.find(({ slip }) => slip.includes(words));
  const given = entry.examples[example]?.given as Inputs;
  if (mistake === undefined) throw new Error(`${name} names no such slip: ${words}`);
  return mistakeAnswer(
    entry,
    mistake,
    Object.keys(entry.params).map((param) => given[param] as number),
  );
}

function helpOf(name: string): string {
  const { assumptions, caution = "" } = entryOf(name);
  return [...assumptions, caution].join(" ");
}

const clogging = (property: string, value: unknown): unknown =>
  evaluate(entryOf("CLOGGING_RISK"), [property, value as number]);

describe("ppm is of the element", () => {
  test("200 ppm N is a fifth of 1000 ppm of a product with 20 % N", () => {
    const call = { volume: 100, units: "us" };
    const ofNitrogen = answerOf("FERTILIZER_WEIGHT", { ...call, ppm: 200, analysis: 0.2 });
    expectClose(ofNitrogen, answerOf("FERTILIZER_WEIGHT", { ...call, ppm: 1000, analysis: 1 }), 1e-12);
    expectClose((slipAnswer("FERTILIZER_WEIGHT", "ppm of the product", 0) ?? NaN) * 5, ofNitrogen, 1e-12);
  });

  test("label P and K are oxides: 10 % P2O5 taken as P gives 0.436 of the weight that P needs", () => {
    const phosphorus = answerOf("ELEMENT_FROM_OXIDE", { percent: 10, oxide: "P2O5" }) / 100;
    const call = { ppm: 30, volume: 1000, units: "metric" };
    const right = answerOf("FERTILIZER_WEIGHT", { ...call, analysis: phosphorus });
    expectClose(answerOf("FERTILIZER_WEIGHT", { ...call, analysis: 0.1 }) / right, 0.4364, 0, 0.00005);
  });

  test("the trade's 75 is 74.89, and 62.4 with the imperial gallon (x 1.20095)", () => {
    const ounce = { weight: 1 / 16, analysis: 1, units: "us" };
    expectClose(answerOf("PPM_FROM_WEIGHT", { ...ounce, volume: 100 }), 74.89, 0, 0.005);
    expectClose(answerOf("PPM_FROM_WEIGHT", { ...ounce, volume: 100 * 1.20095 }), 62.4, 0, 0.05);
  });
});

describe("the analysis is a fraction", () => {
  test.each([
    ["FERTILIZER_WEIGHT", { ppm: 200, volume: 100 }],
    ["PPM_FROM_WEIGHT", { weight: 1, volume: 100 }],
    ["STOCK_WEIGHT", { ppm: 200, injector_ratio: 100, stock_volume: 5 }],
  ])("%s says what to write for 20", (name, call) => {
    const { message } = refusalOf(name, { ...call, analysis: 20, units: "us" });
    expect(message).toContain("analysis is 20; ");
    expect(message).toContain("write 0.2 or 20%");
  });

  test("and so is an acid's strength: 93 asks for 0.93", () => {
    const call = { acid: "sulfuric", percent_by_weight: 93, specific_gravity: 1.835 };
    expect(refusalOf("ACID_NORMALITY", call).message).toContain("write 0.93 or 93%");
  });

  test("but a label's percentage stands as it is printed: 0.2 is looked at twice", () => {
    const usual = usualOf(entryOf("ELEMENT_FROM_OXIDE"), "percent");
    expect(usual === undefined ? "" : usualVerdict(usual, 0.2, "us")).toContain("write 20, not 0.20");
  });
});

describe("injectors", () => {
  const call = { ppm: 200, analysis: 0.15, stock_volume: 1, units: "us" };

  test.each([
    [100, 0.01],
    [15, 1 / 15],
  ])("1:%d read as 1 to that many parts of water makes the stock stronger by %d", (ratio, difference) => {
    const right = answerOf("STOCK_WEIGHT", { ...call, injector_ratio: ratio });
    expectClose(answerOf("STOCK_WEIGHT", { ...call, injector_ratio: ratio + 1 }) / right - 1, difference, 1e-9);
  });

  test("a cell that has turned 1:100 into a time of day is told what to write", () => {
    const { message } = refusalOf("STOCK_WEIGHT", { ...call, injector_ratio: 160 / 1440 });
    expect(message).toContain("write 100 for 1:100");
  });

  test("1 % is 1:100: a ratio of 1 is taken, and looked at twice", () => {
    const usual = usualOf(entryOf("STOCK_WEIGHT"), "injector_ratio");
    expect(usual === undefined ? "" : usualVerdict(usual, 1, "us")).toContain("1 % is 1:100");
  });

  test("stock counted in or beside the treated volume: 1 % at 1:100", () => {
    const test100 = { treated_volume: 100, stock_used: 1 };
    expect(answerOf("INJECTOR_RATIO", test100)).toBe(100);
    expect(answerOf("INJECTOR_RATIO", { ...test100, counts_stock: true })).toBe(100);
    expect(answerOf("INJECTOR_RATIO", { ...test100, counts_stock: false })).toBe(101);
  });

  test.each([true, false])(
    "more stock than water asks whether the two were swapped, counts_stock %s",
    (counts_stock) => {
      const error = refusalOf("INJECTOR_RATIO", { treated_volume: 5, stock_used: 480, counts_stock });
      expect(error).toMatchObject({ code: "#VALUE!", argument: "stock_used" });
      expect(error.message).toContain("were the two swapped?");
    },
  );

  test("the working of a stock shows its strength, to hold against what dissolves", () => {
    expectClose(stepsOf("STOCK_WEIGHT", { ...call, injector_ratio: 200 })("s"), 36 / 16, 0.02);
    expect(helpOf("STOCK_WEIGHT")).toContain("2 to 4 lb/gal (0.25 to 0.5 kg/L)");
  });

  test("the arithmetic does not see what settles: the caution keeps calcium from sulfate and phosphate", () => {
    expect(helpOf("STOCK_WEIGHT")).toContain("Never put calcium into a stock with sulfate or phosphate");
  });
});

describe("EC", () => {
  const feed = { feed_ec: 1.74, water_ec: 0.25, label_ec: 1.52, label_ppm: 200 };

  test("the EC of the water is taken off: 196 ppm N, not 229", () => {
    expectClose(answerOf("PPM_FROM_EC", feed), 196, 0, 0.1);
    expectClose(answerOf("PPM_FROM_EC", { ...feed, water_ec: 0 }), 229, 0, 0.1);
  });

  test("a feed below its water asks whether the two were swapped", () => {
    const error = refusalOf("PPM_FROM_EC", { ...feed, feed_ec: 0.25, water_ec: 1.74 });
    expect(error).toMatchObject({ code: "#VALUE!", argument: "feed_ec" });
    expect(error.message).toContain("water_ec (1.74) or more; were the two swapped?");
  });

  test("a feed that is its water holds nothing", () => {
    expect(answerOf("PPM_FROM_EC", { ...feed, feed_ec: 0.25 })).toBe(0);
  });

  test("two products differ at the same ppm, so the label is asked for: 0.41 and 0.46 at 100 ppm N", () => {
    const at100 = { water_ec: 0.3, ppm: 200, label_ppm: 100 };
    const [first, second] = [0.41, 0.46].map((label_ec) => answerOf("FERTIGATION_EC", { ...at100, label_ec }));
    expectClose((second ?? 0) - (first ?? 0), 0.1, 1e-9);
  });

  test.each([
    ["FERTIGATION_EC", "water_ec", { ppm: 150, label_ec: 1.48, label_ppm: 200 }],
    ["FERTIGATION_EC", "label_ec", { water_ec: 0.3, ppm: 150, label_ppm: 200 }],
    ["PPM_FROM_EC", "feed_ec", { water_ec: 0.3, label_ec: 1.48, label_ppm: 200 }],
    ["TANK_DOSE", "feed_ec_rise", { tank_volume: 400, ec_now: 1, ec_target: 1.5, injector_ratio: 100 }],
    ["TANK_DILUTION", "ec_now", { tank_volume: 400, ec_target: 1.5, water_ec: 0.2 }],
  ])("%s takes no uS/cm for mS/cm: %s of 750 is refused", (name, argument, call) => {
    const { message } = refusalOf(name, { ...call, [argument]: 750 });
    expect(message).toContain(`${argument} is 750; `);
    expect(message).toContain("in uS/cm? Divide by 1000");
  });

  test.each(["FERTIGATION_EC", "PPM_FROM_EC", "TANK_DOSE", "TANK_DILUTION", "BLEND_EC"])(
    "%s says that EC adds up in the feed range only, with a meter that corrects for temperature",
    (name) => {
      expect(helpOf(name)).toMatch(/adds up in the range of feeds only.*temperature compensation/);
    },
  );

  test("dS/m, mS/cm and mmho/cm are one and the same; uS/cm is a thousand times as many", () => {
    const same = ["mS/cm", "dS/m", "mmho/cm"];
    for (const from of same) {
      for (const to of same) expect(answerOf("CONVERT_EC", { value: 1.37, from, to })).toBe(1.37);
      expectClose(answerOf("CONVERT_EC", { value: 1.37, from, to: "uS/cm" }), 1370, 1e-12);
    }
  });

  test.each([
    [500, 1000],
    [640, 1280],
    [700, 1400],
  ])("2 mS/cm are on a TDS scale of %d %d ppm: there is no one factor", (tds_factor, ppm) => {
    expectClose(answerOf("CONVERT_EC", { value: 2, from: "mS/cm", to: "tds_ppm", tds_factor }), ppm, 1e-12);
  });

  test.each([
    ["tds_ppm", "mS/cm"],
    ["uS/cm", "tds_ppm"],
    ["tds_ppm", "tds_ppm"],
  ])("no factor is taken for granted: %s to %s without one is refused", (from, to) => {
    for (const tds_factor of [undefined, null, ""]) {
      const error = refusalOf("CONVERT_EC", { value: 700, from, to, tds_factor });
      expect(error).toMatchObject({ code: "#VALUE!", argument: "tds_factor" });
      expect(error.message).toContain("tds_factor is blank; it must be given");
    }
  });

  test("a factor that counts from uS/cm is told what to write: 0.64", () => {
    const call = { value: 1, from: "mS/cm", to: "tds_ppm", tds_factor: 0.64 };
    expect(refusalOf("CONVERT_EC", call).message).toContain("write 500, 640 or 700");
  });

  test("TDS ppm is not ppm N: the help says so", () => {
    expect(helpOf("CONVERT_EC")).toContain("It is not ppm of N");
  });
});

describe("a tank that is off its EC", () => {
  const dose = { tank_volume: 400, ec_now: 1, ec_target: 1.5, feed_ec_rise: 1.5, injector_ratio: 100 };
  const thin = { tank_volume: 400, ec_now: 2, ec_target: 1.5, water_ec: 0.2 };

  function expectNoAnswer(error: FunctionError, argument: string, words: string): void {
    expect(error).toMatchObject({ code: "#N/A", argument });
    expect(error.message).toContain(words);
  }

  test("at it already: nothing to add, of stock or of water, whatever the water is", () => {
    expect(answerOf("TANK_DOSE", { ...dose, ec_target: 1 })).toBe(0);
    expect(answerOf("TANK_DILUTION", { ...thin, ec_target: 2 })).toBe(0);
    expect(answerOf("TANK_DILUTION", { ...thin, ec_target: 2, water_ec: 2 })).toBe(0);
  });

  test("no stock takes it down: #N/A, and TANK_DILUTION is named", () => {
    expectNoAnswer(refusalOf("TANK_DOSE", { ...dose, ec_target: 0.9 }), "ec_target", "TANK_DILUTION");
  });

  test("no water brings it up: #N/A, and TANK_DOSE is named", () => {
    expectNoAnswer(refusalOf("TANK_DILUTION", { ...thin, ec_target: 2.1 }), "ec_target", "TANK_DOSE");
  });

  test.each([1.5, 1.7, 2.4])("water of %d never brings it down to 1.5: #N/A", (water_ec) => {
    expectNoAnswer(refusalOf("TANK_DILUTION", { ...thin, water_ec }), "water_ec", "never brings the tank down");
  });

  test("the stock counts as ratio x rise: without the ratio the dose is a hundred times too much", () => {
    expectClose(
      (slipAnswer("TANK_DOSE", "injector ratio was left out", 0) ?? NaN) / answerOf("TANK_DOSE", dose),
      100,
      1e-9,
    );
  });
});

describe("mixing waters", () => {
  test("pH is never blended: both helps say so, and no argument takes it", () => {
    expect(helpOf("BLEND_EC")).toContain("pH never does");
    expect(helpOf("BLEND_SHARE")).toContain("Never for pH");
    for (const name of ["BLEND_EC", "BLEND_SHARE"]) expect(Object.keys(entryOf(name).params)).not.toContain("ph");
  });

  test.each([
    [1.8, 0.4, 0.3],
    [1.8, 0.4, 1.9],
    [0.4, 1.8, 0.3],
  ])("%d and %d never make %d: #N/A, and the bounds are said", (value_a, value_b, target) => {
    const error = refusalOf("BLEND_SHARE", { value_a, value_b, target });
    expect(error).toMatchObject({ code: "#N/A", argument: "target" });
    expect(error.message).toContain("from 0.4 to 1.8");
  });

  test("two equal waters have no share, not even for their own value: #N/A", () => {
    for (const target of [0.5, 0.8]) {
      const error = refusalOf("BLEND_SHARE", { value_a: 0.8, value_b: 0.8, target });
      expect(error).toMatchObject({ code: "#N/A", argument: "value_a" });
    }
  });

  test("each water alone is a mixture: the ends are 1 and 0", () => {
    expect(answerOf("BLEND_SHARE", { value_a: 1.8, value_b: 0.4, target: 1.8 })).toBe(1);
    expect(answerOf("BLEND_SHARE", { value_a: 1.8, value_b: 0.4, target: 0.4 })).toBe(0);
  });

  test("a water of volume 0 counts for nothing; nothing at all is #N/A; a blank is named", () => {
    const ecs = [[1.8], [0.4], [3]];
    expectClose(answerOf("BLEND_EC", { volumes: [[30], [70], [0]], ecs }), 0.82, 1e-12);
    expect(refusalOf("BLEND_EC", { volumes: [[0], [0], [0]], ecs })).toMatchObject({
      code: "#N/A",
      argument: "volumes",
    });
    expect(refusalOf("BLEND_EC", { volumes: [[30], [""], [1]], ecs }).message).toContain("in row 2 of the range");
  });

  test("columns of different lengths are refused with both lengths", () => {
    const { message } = refusalOf("BLEND_EC", { volumes: [[30], [70]], ecs: [[1.8]] });
    expect(message).toContain("ecs has 1 cells; it must have 2, as volumes has");
  });
});

describe("sodium adsorption", () => {
  const meq = { sodium: 178 / 22.99, calcium: 46.5 / 20.039, magnesium: 17.5 / 12.1525 };
  const ppm = { sodium: 178, calcium: 46.5, magnesium: 17.5 };

  test("is defined in meq/L alone: the same water in ppm gives the same when it is said so, and 31 when not", () => {
    expectClose(answerOf("SODIUM_ADSORPTION", { ...ppm, basis: "ppm" }), answerOf("SODIUM_ADSORPTION", meq), 1e-12);
    expectClose(answerOf("SODIUM_ADSORPTION", ppm), 31.5, 0, 0.05);
    const usual = usualOf(entryOf("SODIUM_ADSORPTION"), "");
    expect(usual === undefined ? "" : usualVerdict(usual, 31.5, "us")).toContain("were ppm taken for meq?");
  });

  test("goes by equivalent weight, half the atomic weight of calcium and magnesium", () => {
    const steps = stepsOf("SODIUM_ADSORPTION", { sodium: 22.99, calcium: 40.078, magnesium: 24.305, basis: "ppm" });
    expect([steps("Nae"), steps("Cae"), steps("Mge")]).toEqual([1, 2, 2]);
  });

  test("has no answer where calcium and magnesium are both 0, and one where either is there", () => {
    expect(refusalOf("SODIUM_ADSORPTION", { sodium: 5, calcium: 0, magnesium: 0 }).code).toBe("#N/A");
    expectClose(answerOf("SODIUM_ADSORPTION", { sodium: 5, calcium: 0, magnesium: 2 }), 5, 1e-12);
    expect(answerOf("SODIUM_ADSORPTION", { sodium: 0, calcium: 2, magnesium: 0 })).toBe(0);
  });
});

describe("clogging", () => {
  test.each([
    ["suspended_solids", 50, 100],
    ["ph", 7, 8],
    ["dissolved_solids", 500, 2000],
    ["manganese", 0.1, 1.5],
    ["iron", 0.1, 1.5],
    ["hydrogen_sulfide", 0.5, 2],
    ["bacteria", 10_000, 50_000],
  ])("%s: both limits, %d and %d, belong to moderate", (property, low, high) => {
    expect([low, high].map((value) => clogging(property, value))).toEqual(["moderate", "moderate"]);
  });

  test("iron is moderate from 0.1, where older tables begin at 0.2", () => {
    expect(clogging("iron", 0.15)).toBe("moderate");
    expect(helpOf("CLOGGING_RISK")).toContain("some print 0.2");
  });

  test("none found is minor, but a pH of 0, or above 14, is no reading", () => {
    expect(clogging("iron", 0)).toBe("minor");
    for (const value of [0, 14.5]) {
      const error = refusalOf("CLOGGING_RISK", { property: "ph", value });
      expect(error).toMatchObject({ code: "#VALUE!", argument: "value" });
      expect(error.message).toContain("for ph");
    }
    expect(clogging("bacteria", 15)).toBe("minor");
  });
});

describe("acids", () => {
  const drum = { acid: "sulfuric", percent_by_weight: 0.93, specific_gravity: 1.835 };
  const water = { alkalinity: 250, target_alkalinity: 150, acid_normality: 34.8, volume: 100, units: "us" };

  test("strength is by weight: without the specific gravity 93 % sulfuric comes out at 19 and not 35 eq/L", () => {
    expectClose(answerOf("ACID_NORMALITY", drum), 34.8, 0, 0.05);
    expectClose(answerOf("ACID_NORMALITY", { ...drum, specific_gravity: 1 }), 19, 0, 0.05);
  });

  test("a specific gravity in pounds per gallon is refused", () => {
    const { message } = refusalOf("ACID_NORMALITY", { ...drum, specific_gravity: 15.3 });
    expect(message).toContain("pounds per gallon? Divide by 8.345");
  });

  test.each([
    ["sulfuric", 2],
    ["nitric", 1],
    ["phosphoric", 1],
  ])("protons in the working range are stated: %s %d", (acid, protons) => {
    expect(stepsOf("ACID_NORMALITY", { ...drum, acid })("z")).toBe(protons);
    expect(helpOf("ACID_NORMALITY")).toContain(`${acid} ${protons}`);
  });

  test("HCO3 in ppm taken for CaCO3 is 22 % too much", () => {
    const all = { ...water, target_alkalinity: 0 };
    const asHco3 = answerOf("ACID_VOLUME", { ...all, alkalinity: (250 * 61.016) / 50.043 });
    expectClose(asHco3 / answerOf("ACID_VOLUME", all), 1.22, 0, 0.002);
    expect(helpOf("ACID_VOLUME")).toContain("From HCO3 in ppm multiply by 0.820 (they differ by 22 %)");
  });

  test("244 ppm of HCO3 are 200.1 ppm as CaCO3, and the factor of the help is 0.820", () => {
    const { CaCO3, HCO3 } = ALKALINITY_MG_PER_MEQ;
    expectClose((244 * CaCO3) / HCO3, 200.1, 0, 0.1);
    expectClose(CaCO3 / HCO3, 0.82, 0, 0.0005);
  });

  test("meq/L where ppm belong is looked at twice: an alkalinity of 4", () => {
    const usual = usualOf(entryOf("ACID_VOLUME"), "alkalinity");
    expect(usual === undefined ? "" : usualVerdict(usual, 4, "us")).toContain("meq/L: multiply by 50.04");
  });

  test("a target above the alkalinity is #N/A, at it 0, and 0 is taken and looked at twice", () => {
    const above = refusalOf("ACID_VOLUME", { ...water, target_alkalinity: 251 });
    expect(above).toMatchObject({ code: "#N/A", argument: "target_alkalinity" });
    expect(answerOf("ACID_VOLUME", { ...water, target_alkalinity: 250 })).toBe(0);
    expectClose(answerOf("ACID_VOLUME", { ...water, target_alkalinity: 0 }), 2.5 * 21.7365, 1e-5);
    const usual = usualOf(entryOf("ACID_VOLUME"), "target_alkalinity");
    expect(usual === undefined ? "" : usualVerdict(usual, 0, "us")).toContain("pH may fall below 5");
  });

  test("an acid stronger than there is one is refused", () => {
    const { message } = refusalOf("ACID_VOLUME", { ...water, acid_normality: 93 });
    expect(message).toContain("ACID_NORMALITY gives it from strength and specific gravity");
  });

  test.each([
    ["sulfuric", "16.0 mg/L of S"],
    ["nitric", "14.0 of N"],
    ["phosphoric", "31.0 of P"],
  ] as const)("the acid feeds too, and both helps say how much: %s", (acid, words) => {
    const [, printed = ""] = /^([\d.]+)/.exec(words) ?? [];
    expectClose(nutrientPerMeq(acid), Number(printed), 0, 0.051);
    for (const name of ["ACID_NORMALITY", "ACID_VOLUME"]) expect(helpOf(name)).toContain(words);
  });

  test("2.5 meq/L neutralized with nitric acid leave 114.98 of 150 ppm N to feed", () => {
    const call = { ...water, alkalinity: 150 + 2.5 * 50.043, target_alkalinity: 150 };
    expectClose(150 - stepsOf("ACID_VOLUME", call)("d") * nutrientPerMeq("nitric"), 114.98, 0, 0.01);
  });

  test.each([
    ["sulfuric", 2, 32.06],
    ["nitric", 2, 28.014],
    ["phosphoric", 1, 30.974],
  ] as const)("%s, %d meq/L: %d mg/L", (acid, meq, added) => {
    expectClose(meq * nutrientPerMeq(acid), added, 0, 0.001);
  });

  test("every acid of the list is known to the help", () => {
    for (const acid of ACID_NAMES) expect(helpOf("ACID_VOLUME")).toContain(`(${acid})`);
  });
});

describe("cautions where people, plants or water can be harmed", () => {
  test.each(["ACID_NORMALITY", "ACID_VOLUME"])(
    "%s: acid into water, never with chlorine or calcium nitrate",
    (name) => {
      const { caution = "" } = entryOf(name);
      expect(caution).toMatch(/add acid to water, never water to acid/);
      expect(caution).toMatch(/Never mix acid with chlorine.*calcium nitrate concentrate/);
      expect(caution).toMatch(/backflow prevention/);
      expect(caution).toMatch(/Label.*local code.*licensed practice come first/);
    },
  );

  test.each(["STOCK_WEIGHT", "FERTIGATION_EC", "TANK_DOSE"])(
    "%s: backflow prevention, a meter before the plants, labels and codes first",
    (name) => {
      const { caution = "" } = entryOf(name);
      expect(caution).toMatch(/backflow prevention approved for a health hazard/);
      expect(caution).toMatch(/meter.*before it reaches plants/);
      expect(caution).toMatch(/Label, local code and licensed practice come first/);
    },
  );
});
