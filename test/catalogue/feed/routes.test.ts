/** Cases worked by hand, each by another route than the code takes. */
import { answerOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute } from "../../rig/evidence";

describe(byAnotherRoute("FERTILIZER_WEIGHT"), () => {
  test("150 ppm of 20 %: 0.75 g/L, by ppm / (10 x percent)", () => {
    const call = { ppm: 150, analysis: 0.2, volume: 1, units: "metric" };
    expectClose(answerOf("FERTILIZER_WEIGHT", call), 150 / (10 * 20) / 1000, 1e-12);
  });

  test("a season: 500 m3 at 150 ppm hold 75 kg of N, 375 kg of 20 %", () => {
    const call = { ppm: 150, analysis: 0.2, volume: 500_000, units: "metric" };
    expectClose(answerOf("FERTILIZER_WEIGHT", call), 375, 1e-12);
  });

  test("1000 gal at 150 ppm of 20 %: 6.259 lb, from 119.83 ppm for 1 lb of the element in 1000 gal", () => {
    const call = { ppm: 150, analysis: 0.2, volume: 1000, units: "us" };
    expectClose(answerOf("FERTILIZER_WEIGHT", call), 150 / 119.826427 / 0.2, 1e-8);
  });
});

describe(byAnotherRoute("PPM_FROM_WEIGHT"), () => {
  test("1 oz of the element in 100 gal: 28,349.523 mg in 378.5411784 L, 74.89 ppm", () => {
    const call = { weight: 1 / 16, analysis: 1, volume: 100, units: "us" };
    expectClose(answerOf("PPM_FROM_WEIGHT", call), 28_349.523125 / 378.5411784, 1e-12);
    expectClose(answerOf("PPM_FROM_WEIGHT", call), 74.89, 0, 0.0051);
  });

  test("0.75 g/L of 20 %: 150 ppm, by 10 x percent x g/L", () => {
    const call = { weight: 0.00075, analysis: 0.2, volume: 1, units: "metric" };
    expectClose(answerOf("PPM_FROM_WEIGHT", call), 10 * 20 * 0.75, 1e-12);
  });

  test("dilution: 2 L of 15,000 ppm filled up to 200 L are 150 ppm, as the weight in them says", () => {
    const weight = answerOf("FERTILIZER_WEIGHT", { ppm: 15_000, analysis: 0.2, volume: 2, units: "metric" });
    expectClose(answerOf("PPM_FROM_WEIGHT", { weight, analysis: 0.2, volume: 200, units: "metric" }), 150, 1e-12);
  });
});

describe(byAnotherRoute("STOCK_WEIGHT"), () => {
  const call = { ppm: 150, analysis: 0.2, injector_ratio: 100, stock_volume: 50, units: "us" };

  test("50 gal of stock at 1:100 make 5000 gal of feed: as much as a tank of that feed takes", () => {
    const feed = { ppm: 150, analysis: 0.2, volume: 5000, units: "us" };
    expectClose(answerOf("STOCK_WEIGHT", call), answerOf("FERTILIZER_WEIGHT", feed), 1e-12);
  });

  test("150 ppm of 20 % at 1:100 are 75 g per litre of stock", () => {
    const litre = { ...call, stock_volume: 1, units: "metric" };
    expectClose(answerOf("STOCK_WEIGHT", litre), 0.15 * 5 * 0.1, 1e-12);
  });

  test("10 m3 through a 1:100 injector use 0.1 m3 of stock, and what is in it feeds them", () => {
    const stock = answerOf("STOCK_WEIGHT", { ...call, stock_volume: 10_000 / 100, units: "metric" });
    const inFeed = { weight: stock, analysis: 0.2, volume: 10_000, units: "metric" };
    expectClose(answerOf("PPM_FROM_WEIGHT", inFeed), 150, 1e-12);
  });
});

describe(byAnotherRoute("INJECTOR_RATIO"), () => {
  test("480 L of treated water with 5 L of stock: 96", () => {
    expect(answerOf("INJECTOR_RATIO", { treated_volume: 480, stock_used: 5 })).toBe(96);
  });

  test("the same water, metered before the injector as 475", () => {
    expect(answerOf("INJECTOR_RATIO", { treated_volume: 475, stock_used: 5, counts_stock: false })).toBe(96);
  });
});

describe(byAnotherRoute("FERTIGATION_EC"), () => {
  test("0.0074 mS/cm for each ppm: 150 ppm add 1.11 to 0.30", () => {
    const call = { water_ec: 0.3, ppm: 150, label_ec: 1.48, label_ppm: 200 };
    expectClose(answerOf("FERTIGATION_EC", call), 0.3 + 150 * 0.0074, 1e-12);
  });
});

describe(byAnotherRoute("PPM_FROM_EC"), () => {
  test("1.74 over 0.25 of water on a label of 1.52 at 200: 2 % short of 200, as 1.49 is of 1.52", () => {
    const call = { feed_ec: 1.74, water_ec: 0.25, label_ec: 1.52, label_ppm: 200 };
    expectClose(answerOf("PPM_FROM_EC", call), 200 * (1 - 0.03 / 1.52), 1e-12);
  });
});

describe(byAnotherRoute("TANK_DOSE"), () => {
  // 400 gal hold 400 x 0.5 = 200 gal x mS/cm too little; a gallon of feed brings 1.5, a gallon of stock 100 times that.
  test("400 gal from 1.0 to 1.5 with a stock that adds 1.5 at 1:100: 1.33 gal", () => {
    const call = { tank_volume: 400, ec_now: 1, ec_target: 1.5, feed_ec_rise: 1.5, injector_ratio: 100 };
    expectClose(answerOf("TANK_DOSE", call), 200 / 150, 1e-12);
  });

  test("the stock's own volume neglected: short of the full balance by 1 part in 100 or less at 1:100", () => {
    const [tank, now, target, rise, ratio, water] = [400, 1, 1.5, 1.5, 100, 0.2];
    const call = { tank_volume: tank, ec_now: now, ec_target: target, feed_ec_rise: rise, injector_ratio: ratio };
    // tank now + dose (water + rise ratio) = (tank + dose) target
    const full = (tank * (target - now)) / (water + rise * ratio - target);
    const short = 1 - answerOf("TANK_DOSE", call) / full;
    expect(short).toBeGreaterThan(0);
    expect(short).toBeLessThan(1 / ratio);
  });
});

describe(byAnotherRoute("TANK_DILUTION"), () => {
  test("400 gal of 2.0 with 153.8 gal of 0.2 mix to 1.5", () => {
    const water = answerOf("TANK_DILUTION", { tank_volume: 400, ec_now: 2, ec_target: 1.5, water_ec: 0.2 });
    expectClose(water, 153.8, 0, 0.051);
    expectClose(answerOf("BLEND_EC", { volumes: [[400], [water]], ecs: [[2], [0.2]] }), 1.5, 1e-12);
  });

  test("what its help says of a full tank: let out V (now - target) / (now - water), refill, and it stands at the target", () => {
    const out = (400 * (2 - 1.5)) / (2 - 0.2);
    expectClose(answerOf("BLEND_EC", { volumes: [[400 - out], [out]], ecs: [[2], [0.2]] }), 1.5, 1e-12);
  });
});

describe(byAnotherRoute("ION_BUILDUP"), () => {
  test("40 rounds, counted one by one: make-up in, uptake out, 20 to 80 ppm", () => {
    const call = { start_ppm: 20, makeup_ppm: 40, uptake_ppm: 10, makeup_volume: 50, tank_volume: 1000, rounds: 40 };
    let milligrams = 20 * 1000;
    for (let round = 0; round < 40; round += 1) milligrams += 50 * 40 - 50 * 10;
    expect(milligrams / 1000).toBe(80);
    expectClose(answerOf("ION_BUILDUP", call), milligrams / 1000, 1e-12);
  });

  test("an ion that plants take up faster than the make-up brings it is used up and stays at 0", () => {
    const call = { start_ppm: 20, makeup_ppm: 5, uptake_ppm: 15, makeup_volume: 100, tank_volume: 1000 };
    expect([0, 10, 20, 30].map((rounds) => answerOf("ION_BUILDUP", { ...call, rounds }))).toEqual([20, 10, 0, 0]);
  });
});

describe(byAnotherRoute("BLEND_EC"), () => {
  test("30 m3 of 1.8 and 70 m3 of 0.4: a drop of 1.4 from the first to the second, 70 % of it", () => {
    expectClose(answerOf("BLEND_EC", { volumes: [[30], [70]], ecs: [[1.8], [0.4]] }), 1.8 - 0.7 * 1.4, 1e-12);
  });

  test("recirculation: 40 % of 1.6 and 60 % of 0.3 make 0.82, so a feed for 1.9 must add 1.08", () => {
    const mix = answerOf("BLEND_EC", { volumes: [[0.4], [0.6]], ecs: [[1.6], [0.3]] });
    expectClose(mix, 0.82, 1e-12);
    expectClose(1.9 - mix, 1.08, 1e-12);
  });
});

describe(byAnotherRoute("BLEND_SHARE"), () => {
  test("1.8 and 0.4 for 0.8: 2 parts and 5 parts, since 1.0 lies above the target and 0.4 below", () => {
    expectClose(answerOf("BLEND_SHARE", { value_a: 1.8, value_b: 0.4, target: 0.8 }), 2 / 7, 1e-12);
  });
});

describe(byAnotherRoute("CONVERT_EC"), () => {
  test("750 uS/cm are 0.75 dS/m, and 480 ppm on a scale of 640", () => {
    expectClose(answerOf("CONVERT_EC", { value: 750, from: "uS/cm", to: "dS/m" }), 0.75, 1e-12);
    const tds = { value: 750, from: "uS/cm", to: "tds_ppm", tds_factor: 640 };
    expectClose(answerOf("CONVERT_EC", tds), 480, 1e-12);
  });
});

describe(byAnotherRoute("ELEMENT_FROM_OXIDE"), () => {
  test("150 ppm N of 20-10-20 bring 32.73 ppm P and 124.5 ppm K", () => {
    const phosphorus = answerOf("ELEMENT_FROM_OXIDE", { percent: 10, oxide: "P2O5" });
    const potassium = answerOf("ELEMENT_FROM_OXIDE", { percent: 20, oxide: "K2O" });
    expectClose((150 * phosphorus) / 20, 32.73, 0, 0.01);
    expectClose((150 * potassium) / 20, 124.5, 0, 0.05);
  });

  test.each([
    ["P2O5", 0.4364],
    ["K2O", 0.8301],
    ["CaO", 0.7147],
    ["MgO", 0.603],
    ["NO3", 0.2259],
    ["NH4", 0.7765],
  ])("ratio of abridged atomic weights, %s: %d", (oxide, factor) => {
    expectClose(answerOf("ELEMENT_FROM_OXIDE", { percent: 100, oxide }) / 100, factor, 0, 0.00006);
  });

  test("SO3 is two fifths sulfur: 32.06 / 80.057", () => {
    expectClose(answerOf("ELEMENT_FROM_OXIDE", { percent: 50, oxide: "SO3" }), (50 * 32.06) / 80.057, 1e-12);
  });
});

describe(byAnotherRoute("SODIUM_ADSORPTION"), () => {
  test("20, 3 and 1 meq/L: 20 over the root of 2", () => {
    const sar = answerOf("SODIUM_ADSORPTION", { sodium: 20, calcium: 3, magnesium: 1 });
    expectClose(sar * sar, 200, 1e-12);
  });

  test.each([
    ["Nae", 7.743],
    ["Cae", 2.3205],
    ["Mge", 1.44],
  ])("178, 46.5 and 17.5 mg/L: %s is %d meq/L", (symbol, meq) => {
    const steps = stepsOf("SODIUM_ADSORPTION", { sodium: 178, calcium: 46.5, magnesium: 17.5, basis: "ppm" });
    expectClose(steps(symbol), meq, 0, 0.001);
  });
});

describe(byAnotherRoute("ACID_NORMALITY"), () => {
  // A litre weighs 1835 g and holds 1706.55 g of acid: 17.401 mol of 98.072 g, twice as many protons.
  test("sulfuric, 93 %, 1.835: 34.80 eq/L", () => {
    const call = { acid: "sulfuric", percent_by_weight: 0.93, specific_gravity: 1.835 };
    expectClose(answerOf("ACID_NORMALITY", call), 34.8, 0, 0.01);
    expectClose(answerOf("ACID_NORMALITY", call), (2 * 1706.55) / 98.072, 1e-12);
  });
});

describe(byAnotherRoute("ACID_VOLUME"), () => {
  test("2 meq/L with 34.8 eq/L: 57.47 mL in a cubic metre", () => {
    const call = {
      alkalinity: 150.129,
      target_alkalinity: 50.043,
      acid_normality: 34.8,
      volume: 1000,
      units: "metric",
    };
    expectClose(answerOf("ACID_VOLUME", call), 57.47, 0, 0.01);
  });

  test("250 to 150 ppm in 100 gal with 34.8 eq/L: 21.74 mL", () => {
    const call = { alkalinity: 250, target_alkalinity: 150, acid_normality: 34.8, volume: 100, units: "us" };
    expectClose(answerOf("ACID_VOLUME", call), (100 / 50.04) * (378.5411784 / 34.8), 1e-4);
    expectClose(answerOf("ACID_VOLUME", call), 21.74, 0, 0.01);
  });
});
