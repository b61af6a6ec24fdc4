/** Flow of emitters and buckets, and the rate of overhead water by nozzles and by cans. */
import { CONVERT } from "@formulajs/formulajs";
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Inputs = Readonly<Record<string, unknown>>;

const emitterFlow = (catch_ml: unknown, seconds: unknown, units: string): number =>
  answerOf("EMITTER_FLOW", { catch_ml, seconds, units });
const applicationRate = (inputs: Inputs): number => answerOf("APPLICATION_RATE", { units: "us", ...inputs });
const catchRate = (inputs: Inputs): number => answerOf("CATCH_RATE", { units: "us", ...inputs });

const SYSTEMS = ["us", "metric"] as const;

/** Unit conversions of an independent library: 1 of the first unit in the second. */
function one(from: string, to: string): number {
  return CONVERT(1, from, to) as number;
}

/** Its factors carry a rounding or two each; nothing else stands between the two answers. */
const CONVERTED = 1e-13;

describe(byAnotherRoute("EMITTER_FLOW"), () => {
  test("63.0902 mL in a minute are 1 gal/h: 3785.411784 / 60 mL", () => {
    expectClose(emitterFlow(63.0902, 60, "us"), 1, 1e-5);
    expectClose(emitterFlow(3785.411784 / 60, 60, "us"), 1, 1e-14);
  });

  test("12.5 mL in 30 s are 1.5 L/h: 25 mL a minute, 1500 mL an hour", () => {
    expectClose(emitterFlow(12.5, 30, "metric"), 1.5, 1e-14);
  });

  test("an 8 US fl oz bottle full in 45 s is 5 gal/h: 1/16 gal, 80 times an hour", () => {
    expectClose(emitterFlow(3785.411784 / 16, 45, "us"), 5, 1e-14);
  });

  test("the mean of the flows is not the flow of the mean time: bottles full in 30 and 60 s give 45 and not 40", () => {
    const flows = [30, 60].map((seconds) => emitterFlow(500, seconds, "metric"));
    expectClose(flows.reduce((sum, flow) => sum + flow, 0) / 2, 45, 1e-14);
    expectClose(emitterFlow(500, 45, "metric"), 40, 1e-14);
  });

  test("a plugged emitter gives 0, and a blank catch is refused", () => {
    for (const units of SYSTEMS) {
      expect(emitterFlow(0, 30, units)).toBe(0);
      for (const blank of [null, undefined, ""]) {
        const refused = refusalOf("EMITTER_FLOW", { catch_ml: blank, seconds: 30, units });
        expect(refused).toMatchObject({ code: "#VALUE!", argument: "catch_ml" });
        expect(refused.message).toContain("catch_ml is blank; ");
      }
    }
  });
});

describe(against("EMITTER_FLOW", "@formulajs/formulajs 4.6.1"), () => {
  test.each([
    [31.5, 30],
    [190, 30],
    [7.9, 30],
    [236, 51],
    [1000, 3600],
  ])("%d mL in %d s, converted by CONVERT to gal and L per hour", (catch_ml, seconds) => {
    const hours = seconds * one("sec", "hr");
    expectClose(emitterFlow(catch_ml, seconds, "us"), (catch_ml * one("ml", "gal")) / hours, CONVERTED);
    expectClose(emitterFlow(catch_ml, seconds, "metric"), (catch_ml * one("ml", "l")) / hours, CONVERTED);
  });
});

describe("the flow of an emitter", () => {
  test("brought back to its catch is that catch", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), fc.integer({ min: 5, max: 900 }), (ml, seconds) => {
        expectClose((emitterFlow(ml, seconds, "metric") * 1000 * seconds) / 3600, ml, 1e-12);
        expectClose((emitterFlow(ml, seconds, "us") * 3785.411784 * seconds) / 3600, ml, 1e-12);
      }),
      { seed: SEED },
    );
  });
});

describe(byAnotherRoute("BUCKET_FLOW"), () => {
  test.each([
    ["5 gal in 30 s are 10 gal/min, not 5", 5, 30, 10],
    ["5 gal in 24 s are 12.5 gal/min", 5, 24, 12.5],
    ["200 L in 100 s are 120 L/min", 200, 100, 120],
    ["half a gallon in 90 s is 1/3 gal/min", 0.5, 90, 1 / 3],
  ])("%s", (_what, volume, seconds, flow) => {
    expectClose(answerOf("BUCKET_FLOW", { volume, seconds }), flow, 1e-14);
  });

  test("gallons and litres of one bucket stand as 1 to 3.785411784", () => {
    const us = answerOf("BUCKET_FLOW", { volume: 5, seconds: 37 });
    const metric = answerOf("BUCKET_FLOW", { volume: 5 * 3.785411784, seconds: 37 });
    expectClose(metric / us, 3.785411784, 1e-14);
  });

  test("an empty bucket is no measurement: 0 and blank volumes are refused in the same words", () => {
    const said = [0, null, undefined, ""].map((volume) => refusalOf("BUCKET_FLOW", { volume, seconds: 30 }).message);
    expect(new Set(said).size).toBe(1);
  });
});

describe(against("BUCKET_FLOW", "@formulajs/formulajs 4.6.1"), () => {
  test.each([
    [5, 30],
    [55, 412],
    [19, 7.5],
  ])("%d gal in %d s, the seconds converted to minutes by CONVERT", (volume, seconds) => {
    expectClose(answerOf("BUCKET_FLOW", { volume, seconds }), volume / (seconds * one("sec", "mn")), CONVERTED);
  });
});

describe(published("APPLICATION_RATE"), () => {
  test("training slides, total-area problem: 8 gal/min on 60 ft by 15 ft is 0.86 in/h", () => {
    expectClose(applicationRate({ nozzle_flow: 8, spacing_along: 60, spacing_between: 15 }), 0.86, 0, 0.006);
  });

  test("training slides, derivation of the constant: 1 gal/min on 1 ft2 is 96.25 in/h", () => {
    expectClose(applicationRate({ nozzle_flow: 1, spacing_along: 1, spacing_between: 1 }), 96.25, 1e-14);
  });

  test("NRCS National Engineering Handbook, Part 623, chapter 11: the constant is 96.3, rounded", () => {
    expectClose(applicationRate({ nozzle_flow: 1, spacing_along: 1, spacing_between: 1 }), 96.3, 0, 0.0501);
  });

  // The abstract gives spacing and rates, not the flow: it follows from the first rate, and the second unit is the check.
  test.each([
    [10.84, 0.29, 0.74, 0.006],
    [16.08, 0.43, 1.1, 0.051],
  ])(
    "Overton (2014), staggered nozzles 60 ft (18.3 m) apart both ways: %d gal/min are %d in/h = %d cm/h",
    (flow, inches, centimetres, within) => {
      const staggered = { spacing_along: 60, spacing_between: 60, pattern: "offset" };
      expectClose(applicationRate({ ...staggered, nozzle_flow: flow }), inches, 0, 0.001);
      const metric = {
        nozzle_flow: flow * 3.785411784,
        spacing_along: 18.288,
        spacing_between: 18.288,
        pattern: "offset",
        units: "metric",
      };
      expectClose(applicationRate(metric) / 10, centimetres, 0, within);
    },
  );
});

describe(byAnotherRoute("APPLICATION_RATE"), () => {
  test("700 L/h on 9 m by 9 m are 8.642 mm/h: 700 / 81", () => {
    const nozzle = { spacing_along: 9, spacing_between: 9, units: "metric" };
    expectClose(applicationRate({ ...nozzle, nozzle_flow: 700 / 60 }), 700 / 81, 1e-14);
    expectClose(applicationRate({ ...nozzle, nozzle_flow: 11.667 }), 8.642, 0, 0.001);
  });

  test("nozzles 30 ft apart in a triangle of equal sides, 6 gal/min: 0.7413 in/h with 96.3, 0.7409 exactly", () => {
    const rate = applicationRate({ nozzle_flow: 6, spacing_along: 30, spacing_between: 30, pattern: "triangle" });
    expectClose(rate, 0.7413, 0, 0.001);
    // Height of the triangle by Pythagoras: 30^2 - 15^2 = 675.
    expectClose(rate, (96.25 * 6) / (30 * Math.sqrt(675)), 1e-14);
  });

  test("a depth of 10 mm on 81 m2 is 810 L, an hour's work of 13.5 L/min", () => {
    const nozzle = { nozzle_flow: 13.5, spacing_along: 9, spacing_between: 9, units: "metric" };
    expectClose(applicationRate(nozzle), 10, 1e-14);
  });
});

describe(against("APPLICATION_RATE", "@formulajs/formulajs 4.6.1"), () => {
  test.each([
    [6, 30, 25],
    [10.84, 60, 60],
    [0.35, 7.5, 9],
  ])("%d gal/min on %d ft by %d ft, converted by CONVERT to in3 and in", (nozzle_flow, along, between) => {
    const cubicInches = (nozzle_flow * one("gal", "in3")) / one("mn", "hr");
    const squareInches = along * one("ft", "in") * between * one("ft", "in");
    const nozzle = { nozzle_flow, spacing_along: along, spacing_between: between };
    expectClose(applicationRate(nozzle), cubicInches / squareInches, CONVERTED);
  });

  test("13 L/min on 8 m by 11 m, converted by CONVERT to m3 and mm", () => {
    const nozzle = { nozzle_flow: 13, spacing_along: 8, spacing_between: 11, units: "metric" };
    const metres = (13 * one("l", "m3")) / one("mn", "hr") / (8 * 11);
    expectClose(applicationRate(nozzle), metres * one("m", "mm"), CONVERTED);
  });
});

describe("the pattern of the nozzles", () => {
  const side = { nozzle_flow: 6, spacing_along: 30, spacing_between: 30 };

  test("counts 0.866 once: rows 26 ft apart as they were measured, or the side of 30 ft", () => {
    const rows = 30 * (Math.sqrt(3) / 2);
    const measured = applicationRate({ ...side, spacing_between: rows, pattern: "offset" });
    expectClose(measured, applicationRate({ ...side, pattern: "triangle" }), 1e-14);
  });

  test("takes no 0.866 off rows that were measured: 25 ft by 30 ft are 0.77 in/h, not 0.89", () => {
    const rate = applicationRate({ ...side, spacing_between: 25, pattern: "offset" });
    expectClose(rate, 0.77, 1e-12);
    expectClose(rate / 0.866, 0.89, 0, 0.0051);
  });

  test("offset rows water as much ground as rows in line", () => {
    const rectangle = { ...side, spacing_between: 25 };
    expect(applicationRate({ ...rectangle, pattern: "offset" })).toBe(applicationRate(rectangle));
    expect(applicationRate({ ...rectangle, pattern: "square" })).toBe(applicationRate(rectangle));
  });

  test("a triangle needs one side: the other may be blank, 0 as hosts send a blank, or the same", () => {
    const rate = applicationRate({ ...side, pattern: "triangle" });
    for (const spacing_between of [null, undefined, "", 0, 30]) {
      expect(applicationRate({ ...side, spacing_between, pattern: "triangle" })).toBe(rate);
    }
  });

  test("a triangle of unequal sides is refused, and told of offset", () => {
    for (const spacing_between of [26, 30.0001, 25.98]) {
      const refused = refusalOf("APPLICATION_RATE", { ...side, spacing_between, units: "us", pattern: "triangle" });
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "spacing_between" });
      expect(refused.message).toContain("spacing_along (30)");
      expect(refused.message).toContain('"offset"');
    }
  });

  test.each(["square", "offset", undefined])("without the rows' distance is refused in one text: %s", (pattern) => {
    const said = [null, undefined, "", 0].map((spacing_between) => {
      const refused = refusalOf("APPLICATION_RATE", { ...side, spacing_between, units: "us", pattern });
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "spacing_between" });
      return refused.message;
    });
    expect(new Set(said).size).toBe(1);
    expect(said[0]).toContain("spacing_between is blank or 0; it must be more than 0");
  });

  test("rows that stand 1 m apart are rows: 3 L/min on 2 m by 1 m are 90 mm/h", () => {
    const close = { nozzle_flow: 3, spacing_along: 2, spacing_between: 1, units: "metric" };
    expectClose(answerOf("APPLICATION_RATE", close), (3 * 60) / 2, 1e-14);
  });

  test("a half-circle nozzle of half the flow on half the ground gives the same rate", () => {
    const half = { nozzle_flow: 3, spacing_along: 30, spacing_between: 15 };
    expectClose(applicationRate(half), applicationRate(side), 1e-14);
  });

  test("one nozzle's water belongs to each rectangle, since its four corners give a quarter each", () => {
    const corners = 4 * (6 / 4);
    expectClose(applicationRate(side), (96.25 * corners) / (30 * 30), 1e-14);
  });
});

describe(published("CATCH_RATE"), () => {
  test("worksheets for irrigation auditors: 3.66 x mL / (min x in2) is in/h", () => {
    const mouthOf1in2 = Math.sqrt(4 / Math.PI);
    expectClose(catchRate({ catches_ml: 1, can_diameter: mouthOf1in2, minutes: 1 }), 3.66, 0, 0.0051);
  });
});

describe(byAnotherRoute("CATCH_RATE"), () => {
  test("25 mL in cans of 81.1 cm2 in 30 min are 6.165 mm/h", () => {
    const can_diameter = Math.sqrt((4 * 81.1) / Math.PI);
    const test = { catches_ml: [[25, 25, 25]], can_diameter, minutes: 30, units: "metric" };
    expectClose(catchRate(test), 6.165, 0, 0.002);
    // 25 cm3 on 81.1 cm2 are 25 / 81.1 cm, ten times as many mm, twice in an hour.
    expectClose(catchRate(test), (2 * 10 * 25) / 81.1, 1e-14);
  });

  test("cups with a mouth of 10 in2 that caught an inch, 163.87 mL, in an hour: 1 in/h", () => {
    const test = { catches_ml: [[163.87064, 163.87064]], can_diameter: Math.sqrt(40 / Math.PI), minutes: 60 };
    expectClose(catchRate(test), 1, 1e-12);
  });
});

describe(against("CATCH_RATE", "@formulajs/formulajs 4.6.1"), () => {
  test.each([
    [100.5, 4.25, 30],
    [42, 3, 20],
    [655, 9.5, 75],
  ])("%d mL in a can of %d in in %d min, converted by CONVERT to in3 and mm", (mean, diameter, minutes) => {
    const catches_ml = [[mean - 10, mean + 10, mean]];
    const hours = minutes * one("mn", "hr");
    const us = (mean * one("ml", "in3")) / ((Math.PI / 4) * diameter ** 2) / hours;
    expectClose(catchRate({ catches_ml, can_diameter: diameter, minutes }), us, CONVERTED);
    const metric = { catches_ml, can_diameter: diameter * one("in", "cm"), minutes, units: "metric" };
    expectClose(catchRate(metric), us * one("in", "mm"), CONVERTED);
  });
});

describe("cans", () => {
  const test24 = {
    catches_ml: [
      [112, 98, 105, 121, 84, 76],
      [118, 109, 95, 88, 126, 101],
      [92, 115, 107, 79, 70, 103],
      [119, 96, 110, 90, 85, 113],
    ],
    can_diameter: 4.25,
    minutes: 30,
  };

  test("of the starter's audit: 24 catches come to 0.865 in/h", () => {
    expectClose(catchRate(test24), 0.865, 0, 0.0005);
  });

  test("hold, together, the depth times their mouths: no water is lost in the mean", () => {
    const step = stepsOf("CATCH_RATE", { ...test24, units: "metric", can_diameter: 10.8 });
    const litres = (step("d") * step("A") * 24) / 10 / 1000;
    expectClose(litres, 2.412, 1e-12);
  });

  test.each([null, undefined, "", 0])("one that stayed dry or empty (%p) follows the word in zeros", (dry) => {
    const some = { ...test24, catches_ml: [[30, dry, 60]], units: "us" };
    const rateOf = (catches_ml: unknown): number => catchRate({ ...test24, catches_ml });
    expect(refusalOf("CATCH_RATE", some).message).toContain("catches_ml is blank or 0 in column 2 of the range");
    expectClose(catchRate({ ...some, zeros: "count" }), rateOf([[30, 30, 30]]), 1e-14);
    expectClose(catchRate({ ...some, zeros: "skip" }), rateOf([[45, 45]]), 1e-14);
  });

  test("that all stayed dry, counted: nothing came down", () => {
    expect(catchRate({ ...test24, catches_ml: [[0, null, ""]], zeros: "count" })).toBe(0);
  });

  test("that were all left out leave nothing to average", () => {
    const none = refusalOf("CATCH_RATE", { ...test24, catches_ml: [[0, null]], units: "us", zeros: "skip" });
    expect(none.message).toMatch(/catches_ml has no number.*1 or more$/);
  });
});
