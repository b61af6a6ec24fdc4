/** Pots on the scale: water between two weighings, and the weight at which to irrigate. */
import { CONVERT } from "@formulajs/formulajs";
import fc from "fast-check";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Inputs = Readonly<Record<string, unknown>>;

const water = (heavier_weight: number, lighter_weight: number, units = "metric"): number =>
  answerOf("WATER_FROM_WEIGHT", { heavier_weight, lighter_weight, units });

const POT = { drained_weight: 6, dry_weight: 2.4, fraction: 0.8 };
const target = (inputs: Inputs): number => answerOf("TARGET_WEIGHT", { ...POT, ...inputs });

describe(published("WATER_FROM_WEIGHT"), () => {
  // 8.34 is rounded by its source: at 1 kg/L a gallon weighs 8.3454 lb.
  test("Michigan Department of Environmental Quality, operator training: 1 gallon of water weighs 8.34 pounds", () => {
    expectClose(water(12 + 8.34, 12, "us"), 1, 0.0007);
  });
});

describe(byAnotherRoute("WATER_FROM_WEIGHT"), () => {
  test("6.82 kg drained and 6.31 kg the day after: 0.51 L used", () => {
    expectClose(water(6.82, 6.31), 0.51, 0, 1e-12);
  });

  test("1.1 lb are 0.49895 kg, and that many litres 0.1318 gal", () => {
    expectClose(water(12.4, 11.3, "us"), (1.1 * 0.45359237) / 3.785411784, 1e-12);
  });

  test("120 gal on a bench weigh 1,000 lb: 1001.4 lb", () => {
    expectClose(water(50 + 1001.4485, 50, "us"), 120, 1e-6);
  });
});

describe(against("WATER_FROM_WEIGHT", "@formulajs/formulajs 4.6.1"), () => {
  // CONVERT takes a pound as 0.453592 kg, 8e-7 less than its definition.
  test.each([
    [12.4, 11.3],
    [60, 41.75],
    [3.01, 3],
  ])("%d lb less %d lb, by CONVERT from lbm to g and from ml to gal", (heavier, lighter) => {
    const grams = (CONVERT(heavier, "lbm", "g") as number) - (CONVERT(lighter, "lbm", "g") as number);
    expectClose(water(heavier, lighter, "us"), CONVERT(grams, "ml", "gal") as number, 1e-6);
  });
});

describe("water by weight", () => {
  test("is 0 when nothing was lost", () => {
    expect(water(6.31, 6.31)).toBe(0);
  });

  test("of a pot that got heavier asks whether the two were swapped", () => {
    const swapped = refusalOf("WATER_FROM_WEIGHT", { heavier_weight: 6.31, lighter_weight: 6.82, units: "metric" });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "lighter_weight" });
    expect(swapped.message).toContain("were the two swapped?");
  });

  test("does not mind the pot: its weight cancels out", () => {
    expectClose(water(6.82 + 0.35, 6.31 + 0.35), water(6.82, 6.31), 1e-9);
  });

  test("of two days is the water of both", () => {
    const weight = fc.double({ min: 0.5, max: 60, noNaN: true });
    fc.assert(
      fc.property(weight, weight, weight, fc.constantFrom("us", "metric"), (a, b, c, units) => {
        const [low = a, middle = b, high = c] = [a, b, c].sort((x, y) => x - y);
        expectClose(water(high, middle, units) + water(middle, low, units), water(high, low, units), 1e-12, 1e-12);
      }),
      { seed: SEED },
    );
  });

  test("is a fifth more US than imperial gallons", () => {
    // Ten pounds of water to the imperial gallon, by its definition of 1824 within a few parts in a thousand.
    expectClose(water(22, 12, "us"), 1.201, 0.003);
  });
});

describe(byAnotherRoute("TARGET_WEIGHT"), () => {
  test("80 % of the water of a pot of 6.0 kg, 2.4 kg dry: 0.72 of 3.6 kg gone, 5.28 kg", () => {
    expectClose(target({ basis: "water" }), 6 - 0.2 * 3.6, 1e-12);
  });

  test("80 % of its total weight: 1.2 kg gone, a third of the water, 4.80 kg", () => {
    expectClose(target({ basis: "total" }), 4.8, 1e-12);
    expectClose((6 - target({ basis: "total" })) / 3.6, 1 / 3, 1e-12);
  });

  test("0.6 of the water of a pot of 15.2 lb, 5.6 lb dry: 11.36 lb", () => {
    const pot = { drained_weight: 15.2, dry_weight: 5.6, fraction: 0.6, basis: "water" };
    expectClose(target(pot), 15.2 - 0.4 * 9.6, 1e-12);
  });
});

describe("the target weight", () => {
  test.each(["water", "total"])("at a fraction of 1 is the drained weight, on %s", (basis) => {
    expectClose(target({ fraction: 1, basis }), 6, 1e-12);
  });

  test("never lies below the dry weight: on the total, 0.4 is the least, and 0.39 is refused by name", () => {
    expectClose(target({ fraction: 0.4, basis: "total" }), 2.4, 1e-12);
    const dry = refusalOf("TARGET_WEIGHT", { ...POT, fraction: 0.39, basis: "total" });
    expect(dry).toMatchObject({ code: "#VALUE!", argument: "fraction" });
    expect(dry.message).toContain('(0.4, no water left) or more; was "water" meant?');
    expectClose(target({ fraction: 0.39, basis: "water" }), 2.4 + 0.39 * 3.6, 1e-12);
  });

  test("with dry above drained asks whether the two were swapped", () => {
    const swapped = refusalOf("TARGET_WEIGHT", { ...POT, drained_weight: 2.4, dry_weight: 6, basis: "water" });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "drained_weight" });
    expect(swapped.message).toContain("were the two swapped?");
  });

  test("wants the basis named: there is none by default", () => {
    for (const basis of [null, undefined, "", 0]) {
      const refused = refusalOf("TARGET_WEIGHT", { ...POT, basis });
      expect(refused.message).toContain('it must be "water" or "total"');
    }
  });

  test("takes 80 for the percentage it is", () => {
    expect(refusalOf("TARGET_WEIGHT", { ...POT, fraction: 80, basis: "water" }).message).toContain("0.8 or 80%");
  });

  test("on the total leaves less water than on the water, and grams do as well as kilograms", () => {
    const part = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 50, noNaN: true }), part, part, (drained_weight, dryness, fraction) => {
        const dry_weight = dryness * drained_weight;
        const onWater = target({ drained_weight, dry_weight, fraction, basis: "water" });
        const grams = { drained_weight: 1000 * drained_weight, dry_weight: 1000 * dry_weight };
        expectClose(target({ ...grams, fraction, basis: "water" }), 1000 * onWater, 1e-12);
        expect(onWater).toBeGreaterThan(dry_weight);
        if (fraction > 1.001 * dryness) {
          expect(target({ drained_weight, dry_weight, fraction, basis: "total" })).toBeLessThan(onWater);
        }
      }),
      { seed: SEED },
    );
  });

  test("is where the water left over the water held is the fraction: back through WATER_FROM_WEIGHT", () => {
    const left = water(target({ basis: "water" }), 2.4);
    expectClose(left / water(6, 2.4), 0.8, 1e-12);
  });
});
