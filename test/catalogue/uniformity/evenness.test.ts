/** DU, CU and the statistical uniformity: values worked by hand, other engines, and what must hold of any readings. */
import { AVEDEV, AVERAGE, DEVSQ, NORM, SMALL, STDEV } from "@formulajs/formulajs";
import fc from "fast-check";
import type { CellInput } from "../../../src/kernel";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { FormulaSheet } from "../../rig/spreadsheetEngines";
import { SEED } from "../../rig/validInputs";

type Measure = "DU_LOW_QUARTER" | "CU_CHRISTIANSEN" | "STATISTICAL_UNIFORMITY";
const MEASURES: readonly Measure[] = ["DU_LOW_QUARTER", "CU_CHRISTIANSEN", "STATISTICAL_UNIFORMITY"];

function measured(name: Measure, readings: readonly CellInput[], zeros?: string): number {
  return answerOf(name, { readings: [readings], zeros });
}

const du = (...readings: number[]): number => measured("DU_LOW_QUARTER", readings);
const cu = (...readings: number[]): number => measured("CU_CHRISTIANSEN", readings);
const us = (...readings: number[]): number => measured("STATISTICAL_UNIFORMITY", readings);

const SIXTEEN = [12, 14, 15, 16, 16, 17, 18, 18, 19, 20, 20, 20, 21, 22, 24, 28];
/** Catches of a sprinkler test between four sprinklers, recalled from Michael (1978): the arithmetic is ours. */
const TWENTY_ONE = [
  8.9, 7.6, 6.6, 8.1, 7.6, 9.9, 10.2, 8.3, 8.9, 9.1, 9.1, 9.4, 8.9, 9.4, 7.9, 9.1, 8.6, 9.1, 7.9, 6.6, 6.8,
];
const EMITTERS = [3.4, 3.6, 3.7, 3.8, 3.8, 3.9, 4, 4, 4, 4.1, 4.1, 4.2, 4.2, 4.3, 4.4, 4.5];
const NEW_EMITTERS = [3.9, 4, 4.1, 4, 3.8, 4.2, 4, 4, 3.9, 4.1];

/** Random catches and flows of a sheet's size, of many counts. */
const sampled = fc.sample(fc.array(fc.double({ min: 0.5, max: 250, noNaN: true }), { minLength: 4, maxLength: 40 }), {
  seed: SEED,
  numRuns: 40,
});
const someReadings = fc.array(fc.double({ min: 0.01, max: 1000, noNaN: true }), { minLength: 4, maxLength: 60 });

/** Sums of some forty numbers in another order of adding. */
const REORDERED = 1e-12;

describe(published("CU_CHRISTIANSEN"), () => {
  test("Zoldoske & Solomon (1988): around a mean of 10, readings of 8 and 12 deviate by 2 each", () => {
    const step = stepsOf("CU_CHRISTIANSEN", { readings: [[8, 12]] });
    expect(step("m")).toBe(10);
    expect(step("D")).toBe(2);
    expectClose(cu(8, 12), 1 - 2 / 10, 1e-14);
  });
});

describe(byAnotherRoute("DU_LOW_QUARTER"), () => {
  test("sixteen catches: (12 + 14 + 15 + 16) / 4 over 300 / 16 is 0.76", () => {
    expectClose(du(...SIXTEEN), 0.76, 1e-14);
  });

  test("sixteen emitters in L/h, field emission uniformity: 14.5 / 4 over 64 / 16 is 0.90625", () => {
    expectClose(du(...EMITTERS), 0.90625, 1e-14);
  });

  test("the starter's 24 catches: 482 / 6 over 100.5 is 0.799", () => {
    const catches = [112, 98, 105, 121, 84, 76, 118, 109, 95, 88, 126, 101];
    catches.push(92, 115, 107, 79, 70, 103, 119, 96, 110, 90, 85, 113);
    expectClose(du(...catches), 0.799, 0, 0.0005);
  });

  test("sorted and averaged by the book, it is the same for any readings", () => {
    for (const readings of sampled) {
      const sorted = [...readings].sort((a, b) => a - b);
      const quarter = Math.ceil(readings.length / 4);
      const low = sorted.slice(0, quarter).reduce((sum, reading) => sum + reading, 0) / quarter;
      const all = sorted.reduce((sum, reading) => sum + reading, 0) / readings.length;
      expectClose(du(...readings), low / all, REORDERED);
    }
  });
});

describe(byAnotherRoute("CU_CHRISTIANSEN"), () => {
  test("21 catches that add up to 178.0 mm: their deviations of 17.7714 mm give 0.90016", () => {
    const mean = 178 / 21;
    expectClose(
      TWENTY_ONE.reduce((sum, reading) => sum + reading, 0),
      178,
      1e-14,
    );
    const above = TWENTY_ONE.filter((reading) => reading > mean);
    // Deviations above and below the mean are equal: twice those of the 13 catches above it.
    const deviations = 2 * (above.reduce((sum, reading) => sum + reading, 0) - above.length * mean);
    expectClose(deviations, 17.7714, 0, 0.0001);
    expectClose(cu(...TWENTY_ONE), 1 - deviations / 178, 1e-13);
    expectClose(100 * cu(...TWENTY_ONE), 90.016, 0, 0.001);
  });

  test("sixteen catches: deviations of 48 in all from 18.75 give 1 - 48 / 300 = 0.84", () => {
    expectClose(cu(...SIXTEEN), 0.84, 1e-14);
  });

  test("very uneven: 4 either side of a mean of 5 give 0.2; 8 and three of nothing give 1 - 3 / 2", () => {
    expectClose(cu(1, 9), 0.2, 1e-15);
    expect(measured("CU_CHRISTIANSEN", [8, 0, 0, 0], "count")).toBe(-0.5);
    // Of a pair the coefficient is the lower over the mean: every digit of the lower counts.
    expectClose(cu(983286.3, 0.00532), 0.00532 / 491643.15266, 1e-15);
    expectClose(stepsOf("CU_CHRISTIANSEN", { readings: [[1, 9]] })("L"), 1, 0);
  });
});

describe(byAnotherRoute("STATISTICAL_UNIFORMITY"), () => {
  test("sixteen catches: sqrt(235 / 15) over 18.75 is a Cv of 0.2111, and 0.7889 remains", () => {
    expectClose(stepsOf("STATISTICAL_UNIFORMITY", { readings: [SIXTEEN] })("Cv"), 0.2111, 0, 0.0001);
    expectClose(us(...SIXTEEN), 0.7889, 0, 0.0001);
  });

  test("ten new emitters: sqrt(0.12 / 9) over 4 is a Cv of 0.0289", () => {
    expectClose(stepsOf("STATISTICAL_UNIFORMITY", { readings: [NEW_EMITTERS] })("Cv"), 0.0289, 0, 0.0002);
    expectClose(us(...NEW_EMITTERS), 1 - Math.sqrt(0.12 / 9) / 4, 1e-13);
  });

  test("two readings: half their difference times sqrt(2), over their mean", () => {
    expectClose(us(9, 11), 1 - Math.SQRT2 / 10, 1e-14);
  });
});

describe("against two spreadsheet engines, in other formulas than the working has", () => {
  const sheet = new FormulaSheet();
  const places = sampled.map((readings) => {
    const range = sheet.put(readings.map((reading) => [reading]));
    const above = `">" & AVERAGE(${range})`;
    const quarter = Math.ceil(readings.length / 4);
    const lowest = Array.from({ length: quarter }, (_, index) => `SMALL(${range}, ${index + 1})`).join(" + ");
    return {
      readings,
      DU_LOW_QUARTER: sheet.formula(`=(${lowest}) * COUNT(${range}) / ${quarter} / SUM(${range})`),
      // Deviations above the mean are as much as those below it.
      CU_CHRISTIANSEN: sheet.formula(
        `=1 - 2 * (SUMIF(${range}, ${above}) - COUNTIF(${range}, ${above}) * AVERAGE(${range})) / SUM(${range})`,
      ),
      STATISTICAL_UNIFORMITY: sheet.formula(
        `=1 - SQRT(DEVSQ(${range}) / (COUNT(${range}) - 1)) * COUNT(${range}) / SUM(${range})`,
      ),
    };
  });

  const check = (name: Measure, values: readonly (number | string)[]): void => {
    for (const place of places) expectClose(values[place[name]], measured(name, place.readings), 0, REORDERED);
  };
  const inHyperFormula = sheet.inHyperFormula();
  const inIronCalc = sheet.inIronCalc();

  describe(against("DU_LOW_QUARTER", "HyperFormula 3.5.0"), () => {
    test("the sum of SMALL", () => check("DU_LOW_QUARTER", inHyperFormula));
  });
  describe(against("DU_LOW_QUARTER", "IronCalc 0.8.4"), () => {
    test("the sum of SMALL", () => check("DU_LOW_QUARTER", inIronCalc));
  });
  describe(against("CU_CHRISTIANSEN", "HyperFormula 3.5.0"), () => {
    test("twice the deviations above the mean", () => check("CU_CHRISTIANSEN", inHyperFormula));
  });
  describe(against("CU_CHRISTIANSEN", "IronCalc 0.8.4"), () => {
    test("twice the deviations above the mean", () => check("CU_CHRISTIANSEN", inIronCalc));
  });
  describe(against("STATISTICAL_UNIFORMITY", "HyperFormula 3.5.0"), () => {
    test("the root of DEVSQ", () => check("STATISTICAL_UNIFORMITY", inHyperFormula));
  });
  describe(against("STATISTICAL_UNIFORMITY", "IronCalc 0.8.4"), () => {
    test("the root of DEVSQ", () => check("STATISTICAL_UNIFORMITY", inIronCalc));
  });
});

describe(against("DU_LOW_QUARTER", "@formulajs/formulajs 4.6.1"), () => {
  test("SMALL and AVERAGE on random readings", () => {
    for (const readings of sampled) {
      const lowest = Array.from(
        { length: Math.ceil(readings.length / 4) },
        (_, index) => SMALL(readings, index + 1) as number,
      );
      expectClose(du(...readings), (AVERAGE(lowest) as number) / (AVERAGE(readings) as number), REORDERED);
    }
  });
});

describe(against("CU_CHRISTIANSEN", "@formulajs/formulajs 4.6.1"), () => {
  test("AVEDEV and AVERAGE on random readings", () => {
    for (const readings of sampled) {
      expectClose(cu(...readings), 1 - (AVEDEV(readings) as number) / (AVERAGE(readings) as number), 0, REORDERED);
    }
  });

  test.each([0.05, 0.1, 0.2])("normal readings with a Cv of %d: 1 - 0.798 Cv, the root of 2 / pi", (variation) => {
    const readings = Array.from({ length: 5000 }, (_, i) => 1 + variation * (NORM.S.INV((i + 0.5) / 5000) as number));
    expectClose(cu(...readings), 1 - Math.sqrt(2 / Math.PI) * variation, 0, 0.001 * variation);
    expectClose(cu(...readings), 1 - 0.798 * variation, 0, 0.0012 * variation);
    expectClose(1 - du(...readings), 1.59 * (1 - cu(...readings)), 0.004);
  });
});

describe(against("STATISTICAL_UNIFORMITY", "@formulajs/formulajs 4.6.1"), () => {
  test("STDEV.S and DEVSQ on random readings", () => {
    for (const readings of sampled) {
      const mean = AVERAGE(readings) as number;
      expectClose(us(...readings), 1 - (STDEV.S(readings) as number) / mean, 0, REORDERED);
      const squares = DEVSQ(readings) as number;
      expectClose(us(...readings), 1 - Math.sqrt(squares / (readings.length - 1)) / mean, 0, REORDERED);
    }
  });
});

describe("measures that are easily mixed up", () => {
  test("the standard deviation has n - 1: at 16 readings n would make it 3 % smaller", () => {
    const step = stepsOf("STATISTICAL_UNIFORMITY", { readings: [SIXTEEN] });
    expectClose(Math.sqrt(235 / 16) / step("s"), 0.968, 0, 0.0005);
  });

  test("CU, statistical uniformity and DU differ on the same catches: 0.84, 0.79, 0.76", () => {
    expect([cu(...SIXTEEN), us(...SIXTEEN), du(...SIXTEEN)].map((value) => value.toFixed(2))).toEqual([
      "0.84",
      "0.79",
      "0.76",
    ]);
  });

  test("the low half, 0.84 here, is not the low quarter", () => {
    const lowHalf = (12 + 14 + 15 + 16 + 16 + 17 + 18 + 18) / 8 / 18.75;
    expectClose(lowHalf, 0.84, 1e-14);
    expect(lowHalf - du(...SIXTEEN)).toBeGreaterThan(0.07);
  });

  test("seconds to fill a bottle run the other way: their low quarter is the wettest", () => {
    const seconds = [20, 25, 30, 60];
    const flows = seconds.map((second) => 600 / second);
    // Flows 30, 24, 20, 10: 10 / 21. Seconds: 20 / 33.75.
    expectClose(du(...flows), 10 / 21, 1e-14);
    expectClose(du(...seconds), 20 / 33.75, 1e-14);
  });
});

describe("CU and the statistical uniformity may fall below 0", () => {
  test("one emitter of eight runs: CU 1 - 1.75, Us 1 - sqrt(8)", () => {
    const readings = [8, 0, 0, 0, 0, 0, 0, 0];
    expectClose(measured("CU_CHRISTIANSEN", readings, "count"), -0.75, 1e-14);
    expectClose(measured("STATISTICAL_UNIFORMITY", readings, "count"), 1 - Math.sqrt(8), 1e-14);
    expect(measured("DU_LOW_QUARTER", readings, "count")).toBe(0);
  });
});

describe.each(MEASURES)("%s and cells that are dry or empty", (name) => {
  describe.each<[string, CellInput]>([
    ["null", null],
    ["nothing", undefined],
    ["an empty text", ""],
    ["0", 0],
  ])("arriving as %s", (_what, dry) => {
    const readings = [10, 20, dry, 30, 40];

    test("are named unless a word says what they mean", () => {
      for (const zeros of [undefined, null, "", "error"]) {
        const refused = refusalOf(name, { readings: [readings], zeros });
        expect(refused).toMatchObject({ code: "#VALUE!", argument: "readings" });
        expect(refused.message).toContain("readings is blank or 0 in column 3 of the range");
      }
    });

    test("are readings of 0 under count, and gone under skip", () => {
      expect(measured(name, readings, "count")).toBe(measured(name, [10, 20, 0, 30, 40], "count"));
      expect(measured(name, readings, "skip")).toBe(measured(name, [10, 20, 30, 40]));
    });
  });

  test("have no measure where all are 0: #N/A with the reason", () => {
    const dry = refusalOf(name, { readings: [[0, 0, null, ""]], zeros: "count" });
    expect(dry).toMatchObject({ code: "#N/A", argument: "readings" });
    expect(dry.message).toContain("readings are all 0");
  });

  test("refuse a reading below 0 whatever the word", () => {
    for (const zeros of ["error", "count", "skip"]) {
      expect(refusalOf(name, { readings: [[5, 6, -1, 7]], zeros }).message).toContain("readings is -1 in column 3");
    }
  });
});

describe("worked by hand with a dry cell", () => {
  const readings = [10, 20, null, 30, 40];

  test("counted: CU 1 - 64 / 100, Us 1 - sqrt(1000 / 4) / 20", () => {
    expectClose(measured("CU_CHRISTIANSEN", readings, "count"), 1 - (10 + 0 + 20 + 10 + 20) / 100, 1e-14);
    expectClose(measured("STATISTICAL_UNIFORMITY", readings, "count"), 1 - Math.sqrt(1000 / 4) / 20, 1e-14);
  });

  test("left out: CU 1 - 40 / 100, Us 1 - sqrt(500 / 3) / 25", () => {
    expectClose(measured("CU_CHRISTIANSEN", readings, "skip"), 0.6, 1e-14);
    expectClose(measured("STATISTICAL_UNIFORMITY", readings, "skip"), 1 - Math.sqrt(500 / 3) / 25, 1e-14);
  });
});

describe("the fewest readings", () => {
  test.each<[Measure, number]>([
    ["DU_LOW_QUARTER", 4],
    ["CU_CHRISTIANSEN", 2],
    ["STATISTICAL_UNIFORMITY", 2],
  ])("of %s are %d, counted after the empty ones are left out", (name, fewest) => {
    const enough = Array.from({ length: fewest }, (_, index) => 10 + index);
    expect(measured(name, enough)).toBeGreaterThan(0);
    const refused = refusalOf(name, { readings: [[...enough.slice(1), 0]], zeros: "skip" });
    expect(refused.message).toContain(`it must have ${fewest} or more`);
  });
});

describe.each(MEASURES)("%s of any readings", (name) => {
  const property = (check: (readings: number[]) => void): void =>
    fc.assert(fc.property(someReadings, check), { seed: SEED, numRuns: 200 });

  test("is the same in another unit", () => {
    property((readings) => {
      const millilitres = readings.map((reading) => reading * 3785.411784);
      expectClose(measured(name, millilitres), measured(name, readings), 0, REORDERED);
    });
  });

  test("does not ask for an order or a shape", () => {
    property((readings) => {
      const turned = [...readings].reverse();
      expectClose(measured(name, turned), measured(name, readings), 0, REORDERED);
      const column = readings.map((reading) => [reading]);
      expect(answerOf(name, { readings: column })).toBe(measured(name, readings));
    });
  });

  test("is 1 for equal readings, to the last bit, and never above 1", () => {
    const value = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(value, fc.integer({ min: 4, max: 300 }), (reading, count) => {
        const equal = Array.from({ length: count }, () => reading);
        expect(measured(name, equal)).toBe(1);
        const almost = equal.map((same, index) => same * (1 + (index % 3) * Number.EPSILON));
        expect(measured(name, almost)).toBeLessThanOrEqual(1);
      }),
      { seed: SEED, numRuns: 200 },
    );
    property((readings) => expect(measured(name, readings)).toBeLessThanOrEqual(1));
  });

  test("rises when every reading moves towards the mean", () => {
    property((readings) => {
      const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
      const closer = readings.map((reading) => (reading + mean) / 2);
      const before = measured(name, readings);
      expect(measured(name, closer)).toBeGreaterThanOrEqual(before - REORDERED);
      // Half the distance is half of what is missing to 1.
      expectClose(1 - measured(name, closer), (1 - before) / 2, 0, REORDERED);
    });
  });
});

describe("readings with a mean of 1", () => {
  // Deviations of 0.5 either side: 1 in all, squares 0.5.
  test.each<[Measure, number]>([
    ["DU_LOW_QUARTER", 0.5],
    ["CU_CHRISTIANSEN", 1 - 1 / 4],
    ["STATISTICAL_UNIFORMITY", 1 - Math.sqrt(0.5 / 3)],
  ])("are as good as any other: %s", (name, expected) => {
    expectClose(measured(name, [0.5, 1, 1.5, 1]), expected, 1e-14);
  });
});
