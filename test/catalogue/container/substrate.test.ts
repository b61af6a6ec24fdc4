/** Air and water in a substrate, the water that plants can take, and how long it lasts. */
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { Table } from "../../../src/kernel";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Inputs = Readonly<Record<string, unknown>>;

/** The core of the porometer procedure, 7.6 cm high, and numbers of one run. */
const CORE = { core_volume: 347.5, drained_volume: 66, wet_weight: 290, dry_weight: 75 };
const POT = { wet_weight: 6.3, dry_weight: 1.8, volume: 9, units: "metric" };
const POUNDS = 0.45359237;
const GALLONS = 3.785411784;

const capacity = (inputs: Inputs = {}): number => answerOf("CONTAINER_CAPACITY", { ...POT, ...inputs });

function porometer(inputs: Inputs = {}): Record<string, unknown> {
  const entry = entryOf("POROMETER_TEST");
  return Object.fromEntries(evaluate(entry, inOrder(entry, { ...CORE, ...inputs })) as Table) as Record<
    string,
    unknown
  >;
}

const positive = (max: number): fc.Arbitrary<number> => fc.double({ min: 1e-3, max, noNaN: true });

describe(byAnotherRoute("CONTAINER_CAPACITY"), () => {
  test("a core of 347.5 cm3 that lost 215 g in the oven held 61.87 % of water", () => {
    const core = { wet_weight: 0.29, dry_weight: 0.075, volume: 0.3475 };
    expectClose(capacity(core), 0.6187, 0, 0.0001);
  });

  test("water at 1 kg/L: 10 lb are 4.5359 kg, and 2.4 gal are 9.085 L", () => {
    const pot = { wet_weight: 14.5, dry_weight: 4.5, volume: 2.4, units: "us" };
    expectClose(capacity(pot), (10 * POUNDS) / (2.4 * GALLONS), 1e-14);
  });

  test("2.5 g of water to the g of substrate of 0.22 g/cm3 is 0.55 by volume", () => {
    expectClose(capacity({ dry_weight: 0.22, wet_weight: 0.22 * 3.5, volume: 1 }), 0.55, 1e-12);
  });

  test("back to the water: the capacity times the volume weighs what the pot lost", () => {
    expectClose(answerOf("WATER_HELD", { volume: 9, container_capacity: capacity() }), 6.3 - 1.8, 1e-14);
  });
});

describe("container capacity", () => {
  test("does not mind a pot left on both weights", () => {
    expectClose(capacity({ wet_weight: 6.3 + 0.4, dry_weight: 1.8 + 0.4 }), capacity(), 1e-12);
  });

  test("with dry above wet asks whether the two were swapped", () => {
    const swapped = refusalOf("CONTAINER_CAPACITY", { ...POT, wet_weight: 1.8, dry_weight: 6.3 });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "wet_weight" });
    expect(swapped.message).toBe(
      "CONTAINER_CAPACITY: wet_weight is 1.8; it must be more than dry_weight (6.3); were the two swapped?",
    );
  });

  test("above 1 asks whether two numbers were swapped, or the pot is in a weight", () => {
    for (const volume of [4.4, 1.8]) {
      const above = refusalOf("CONTAINER_CAPACITY", { ...POT, volume });
      expect(above).toMatchObject({ code: "#VALUE!", argument: "volume" });
      expect(above.message).toContain("it must be 4.5 or more");
      expect(above.message).toContain("swapped");
    }
  });

  test("of twice the same weight is no measurement: a pot that drained is never dry", () => {
    expect(refusalOf("CONTAINER_CAPACITY", { ...POT, dry_weight: 6.3 }).argument).toBe("wet_weight");
  });

  test("in pounds and gallons is that in kilograms and litres", () => {
    fc.assert(
      fc.property(positive(50), positive(50), positive(100), (dry, water, volume) => {
        fc.pre(water < 0.99 * volume);
        const metric = capacity({ wet_weight: dry + water, dry_weight: dry, volume });
        const us = { wet_weight: (dry + water) / POUNDS, dry_weight: dry / POUNDS, volume: volume / GALLONS };
        expectClose(capacity({ ...us, units: "us" }), metric, 1e-9);
      }),
      { seed: SEED },
    );
  });
});

describe(byAnotherRoute("AIR_SPACE"), () => {
  test("66 mL out of a core of 347.5 mL leave 18.99 % of air", () => {
    expectClose(answerOf("AIR_SPACE", { drained_volume: 66, container_volume: 347.5 }), 0.1899, 0, 0.0001);
  });

  test("a pint out of a gallon is an eighth", () => {
    expectClose(answerOf("AIR_SPACE", { drained_volume: 16, container_volume: 128 }), 0.125, 1e-14);
  });
});

describe("air space", () => {
  test("above 1 asks whether the two were swapped", () => {
    const swapped = refusalOf("AIR_SPACE", { drained_volume: 347.5, container_volume: 66 });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "drained_volume" });
    expect(swapped.message).toBe(
      "AIR_SPACE: drained_volume is 347.5; it must be container_volume (66) or less; were the two swapped?",
    );
  });

  test("of 0 is a result: field soil in a shallow pot may keep all its water", () => {
    expect(answerOf("AIR_SPACE", { drained_volume: 0, container_volume: 500 })).toBe(0);
    for (const blank of [null, undefined, ""]) {
      const refused = refusalOf("AIR_SPACE", { drained_volume: blank, container_volume: 500 });
      expect(refused.message).toContain("drained_volume is blank; ");
    }
  });
});

describe(published("POROMETER_TEST"), () => {
  // Boyer et al. (2012), Table 1, measured with the NCSU porometer; each column is rounded for itself, so the sum of two
  // may lie a whole percent from the third. Weights for a core of 347.5 cm3 follow from the density and the capacity.
  test.each([
    ["clean chip residual, 0.48 cm", 28, 57, 85, 0.22],
    ["clean chip residual, 0.95 cm", 48, 42, 90, 0.19],
    ["pine bark", 31, 48, 79, 0.18],
    ["peat moss", 11, 87, 98, 0.11],
  ])("Boyer et al. (2012), Table 1, %s: air %d and water %d are %d % of pores", (_what, air, water, pores, density) => {
    const dry_weight = density * 347.5;
    const run = { drained_volume: (air / 100) * 347.5, wet_weight: dry_weight + (water / 100) * 347.5, dry_weight };
    const found = porometer(run);
    expectClose(found["total porosity"], pores / 100, 0, 0.0101);
    expectClose(found["bulk density g/cm3"], density, 1e-12);
  });
});

describe(byAnotherRoute("POROMETER_TEST"), () => {
  test.each([
    ["air space", 0.1899],
    ["container capacity", 0.6187],
    ["total porosity", 0.8086],
    ["bulk density g/cm3", 0.2158],
  ])("66 mL drained, 290 g wet, 75 g dry in 347.5 cm3: %s %d", (label, value) => {
    expectClose(porometer()[label], value, 0, 0.0001);
  });

  test("is AIR_SPACE and CONTAINER_CAPACITY of the same core", () => {
    const found = porometer();
    expectClose(found["air space"], answerOf("AIR_SPACE", { drained_volume: 66, container_volume: 347.5 }), 1e-15);
    const core = { wet_weight: 0.29, dry_weight: 0.075, volume: 0.3475, units: "metric" };
    expectClose(found["container capacity"], answerOf("CONTAINER_CAPACITY", core), 1e-12);
  });

  // Bilderback & Fonteno (1987), abstract: the same medium has 28 % air and 43 % water in a #1 pot, 12 % and 59 % in a
  // bedding cell.
  test("pores stay the same while air and water change with the height: 28 + 43 and 12 + 59 are both 71 %", () => {
    const core = (air: number, water: number): unknown =>
      porometer({ core_volume: 100, drained_volume: air, wet_weight: 20 + water, dry_weight: 20 })["total porosity"];
    expectClose(core(28, 43), 0.71, 1e-12);
    expectClose(core(12, 59), 0.71, 1e-12);
  });

  test("2.5 g of water to the g of substrate of 0.22 g/cm3 is 0.55 by volume, not 2.5 nor 0.71 by weight", () => {
    const core = { core_volume: 100, drained_volume: 20, wet_weight: 22 * 3.5, dry_weight: 22 };
    expectClose(porometer(core)["container capacity"], 0.55, 1e-12);
  });
});

describe("the porometer", () => {
  test("lists four rows, label and value, without a header", () => {
    expect(Object.keys(porometer())).toEqual([
      "air space",
      "container capacity",
      "total porosity",
      "bulk density g/cm3",
    ]);
  });

  test.each<[string, Inputs, string]>([
    ["drained water and core", { core_volume: 66, drained_volume: 347.5 }, "drained_volume"],
    ["wet and dry weight", { wet_weight: 75, dry_weight: 290 }, "wet_weight"],
    ["core and wet weight", { core_volume: 290, wet_weight: 347.5 }, "core_volume"],
  ])("asks whether %s were swapped", (_which, inputs, argument) => {
    const swapped = refusalOf("POROMETER_TEST", { ...CORE, ...inputs });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument });
    expect(swapped.message).toContain("swapped");
  });

  test("takes the core's weight left on the wet weight for the slip it is", () => {
    const withCore = refusalOf("POROMETER_TEST", { ...CORE, wet_weight: 290 + 180 });
    expect(withCore.message).toContain("is the core in wet_weight?");
  });

  test("leaves room for solids and no more: air and water never pass the core", () => {
    const share = fc.double({ min: 0.001, max: 0.998, noNaN: true });
    fc.assert(
      fc.property(positive(2000), share, share, positive(500), (core, air, water, dry) => {
        fc.pre(air + water < 0.999);
        const run = { core_volume: core, drained_volume: air * core, wet_weight: dry + water * core, dry_weight: dry };
        expectClose(porometer(run)["total porosity"], air + water, 1e-6);
      }),
      { seed: SEED },
    );
  });
});

describe(byAnotherRoute("WATER_HELD"), () => {
  test("9 L at 0.55 hold 4.95 L; what is left is air and solids", () => {
    expectClose(answerOf("WATER_HELD", { volume: 9, container_capacity: 0.55 }), 9 - 9 * 0.45, 1e-14);
  });
});

const available = (volume: number, container_capacity: number, unavailable_water: number): number =>
  answerOf("AVAILABLE_WATER", { volume, container_capacity, unavailable_water });

describe(published("AVAILABLE_WATER"), () => {
  test("FAO-56 Eq. 82, Example 37: 0.32 and 0.12 in 0.8 m of soil hold 160 mm, which is 160 L under 1 m2", () => {
    expectClose(available(800, 0.32, 0.12), 160, 1e-12);
  });
});

describe(byAnotherRoute("AVAILABLE_WATER"), () => {
  test("55 % less 25 % is 30 %, of 9 L 2.7 L", () => {
    expectClose(available(1, 0.55, 0.25), 0.3, 1e-12);
    expectClose(available(9, 0.55, 0.25), 2.7, 1e-12);
  });

  test("is what is held at capacity less what is held when plants can take no more", () => {
    const held = (container_capacity: number): number => answerOf("WATER_HELD", { volume: 9, container_capacity });
    expectClose(available(9, 0.55, 0.25), held(0.55) - held(0.25), 1e-12);
  });

  // De Boodt & Verdonck (1972), definitions: 55 % at 10 cm of suction, 30 % at 50 cm, 25 % at 100 cm.
  test("easily available water and the buffer below it are the same difference between other suctions: 25 and 5 %", () => {
    expectClose(available(1, 0.55, 0.3), 0.25, 1e-12);
    expectClose(available(1, 0.3, 0.25), 0.05, 1e-12);
    expectClose(available(1, 0.55, 0.3) + available(1, 0.3, 0.25), available(1, 0.55, 0.25), 1e-12);
  });
});

describe("available water", () => {
  test("with more unavailable than capacity asks whether the two were swapped", () => {
    const swapped = refusalOf("AVAILABLE_WATER", { volume: 9, container_capacity: 0.25, unavailable_water: 0.55 });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "unavailable_water" });
    expect(swapped.message).toContain("were the two swapped?");
  });

  test("never counts a blank as nothing unavailable", () => {
    for (const unavailable_water of [0, null, undefined, ""]) {
      const refused = refusalOf("AVAILABLE_WATER", { volume: 9, container_capacity: 0.55, unavailable_water });
      expect(refused.message).toContain("unavailable_water is blank or 0; ");
    }
  });
});

const interval = { available_water: 2.7, depletion_fraction: 0.4, daily_use: 0.45 };

describe(published("IRRIGATION_INTERVAL"), () => {
  test("FAO-56 Eq. 83, Example 37 on the way: 0.4 of 160 mm is 64 mm", () => {
    const step = stepsOf("IRRIGATION_INTERVAL", { available_water: 160, depletion_fraction: 0.4, daily_use: 6 });
    expectClose(step("R"), 64, 1e-12);
  });

  test.each([
    [0.4, 0.3, 11],
    [0.8, 0.4, 29],
    [1.2, 0.55, 59],
  ])(
    "FAO-56 Example 36 on the way, loamy sand of 0.15 and 0.06: %d m deep at p = %d is %d mm",
    (depth, depletion_fraction, printed) => {
      const available_water = available(1000 * depth, 0.15, 0.06);
      const step = stepsOf("IRRIGATION_INTERVAL", { available_water, depletion_fraction, daily_use: 1 });
      expectClose(step("R"), printed, 0, 0.51);
    },
  );
});

describe(byAnotherRoute("IRRIGATION_INTERVAL"), () => {
  test("9 L with 30 % available, 40 % of that used, is 1.08 L; at 0.45 L a day it lasts 2.4 days", () => {
    expectClose(stepsOf("IRRIGATION_INTERVAL", interval)("R"), 9 * 0.3 * 0.4, 1e-12);
    expectClose(answerOf("IRRIGATION_INTERVAL", interval), 2.4, 1e-12);
  });

  test("at ten hours of use a day, 0.4 days are four hours: the pot wants water more than twice a day", () => {
    const pot = { available_water: 0.2, depletion_fraction: 0.5, daily_use: 0.25 };
    expectClose(answerOf("IRRIGATION_INTERVAL", pot), 0.4, 1e-12);
  });

  test("day after day the deficit of WATER_BALANCE reaches the trigger on the day that the interval says", () => {
    const et = Array.from({ length: 6 }, () => [0.45]);
    const none = et.map(() => [0]);
    const entry = entryOf("WATER_BALANCE");
    const days = evaluate(entry, inOrder(entry, { et, rain: none, irrigation: none, capacity: 2.7 })) as Table;
    const first = days.slice(1).findIndex((row) => row[4] === "irrigate") + 1;
    expect(first).toBe(Math.ceil(answerOf("IRRIGATION_INTERVAL", interval)));
  });
});

describe("the interval", () => {
  test("counts depletion on the available water, not on all that is held", () => {
    const held = answerOf("WATER_HELD", { volume: 9, container_capacity: 0.55 });
    const onAll = answerOf("IRRIGATION_INTERVAL", { ...interval, available_water: held });
    expectClose(onAll / answerOf("IRRIGATION_INTERVAL", interval), 0.55 / 0.3, 1e-12);
  });

  test("is halved by twice the use, and by half the depletion", () => {
    fc.assert(
      fc.property(positive(100), fc.double({ min: 0.01, max: 1, noNaN: true }), positive(100), (water, part, use) => {
        const days = (depletion_fraction: number, daily_use: number): number =>
          answerOf("IRRIGATION_INTERVAL", { available_water: water, depletion_fraction, daily_use });
        expectClose(days(part, 2 * use), days(part, use) / 2, 1e-12);
        expectClose(days(part / 2, use), days(part, use) / 2, 1e-12);
        expectClose(days(part, use) * use, part * water, 1e-12);
      }),
      { seed: SEED },
    );
  });
});
