/**
 * Leaching tests at Tern Hollow, worked by hand first (all readings invented, mL). Ten pots to a test.
 *
 * US edition
 *   Yard A, 6 July, 20 min: applied 7600 + 7400 + 7500 + 7700 + 7300 + 7500 + 7600 + 7400 + 7500 + 7500 = 75,000;
 *     leached 3300 + 2700 + 3000 + 3500 + 2500 + 2900 + 3200 + 2800 + 3100 + 3000 = 30,000; 0.40
 *     20 x 0.60 / 0.85 = 14.118 min, 14.118 / 20 - 1 = -29.4 %
 *     flow 7500 mL in 20 min = 22,500 mL/h / 3785.41 = 5.944 gal/h; of 6: 0.991
 *     fractions 0.4342 0.3649 0.4000 0.4545 0.3425 0.3867 0.4211 0.3784 0.4133 0.4000: mean 0.39955, deviation 0.03326, Cv 0.0832
 *   Yard A, 8 June: 12,750 / 75,000 = 0.17; 22 June: 18,000 / 75,000 = 0.24
 *   Yard B, 22 June: 2400 / 26,400 = 0.0909; 6 July, 21 min: 3180 / 26,500 = 0.12, within 0.05 to 0.15: 21 min stay
 *     to 0.15 it would be 21 x 0.88 / 0.85 = 21.741; flow 2650 / 2 in 21 min = 3785.7 mL/h = 1.0001 gal/h
 *   Yard C, 6 July, 12 min: 0 of 7540; 754 mL in 12 min = 3770 mL/h = 0.9959 gal/h
 * Metric edition
 *   Yard A: 13,600, 19,200 and 32,000 of 80,000: 0.17, 0.24, 0.40; 14.118 min; 8000 mL in 20 min = 24 L/h, as on Inputs
 *     fractions 0.4321 0.3671 0.4000 0.4512 0.3462 0.3875 0.4198 0.3797 0.4125 0.4000: mean 0.39961, deviation 0.03118, Cv 0.0780
 *   Yard B: 2660 / 26,600 = 0.10; 3325 / 26,600 = 0.125, 20 min stay; to 0.15 it would be 20 x 0.875 / 0.85 = 20.588
 *   Yard C: 0 of 7980
 */
import { leachingLog } from "../../src/workbooks/starters/leachingLog";
import { openStarter, type StarterReader } from "../rig/starterReader";

let starter: StarterReader;

const zones = (heading: string) => starter.column("Result", heading);
const tests = (heading: string) => starter.column("Work", heading);
const type = (heading: string, row: number, content: number | string): void =>
  starter.setInColumn("Log", heading, row, content);
const near = (found: unknown, byHand: number, within: number): void =>
  expect(Math.abs((found as number) - byHand)).toBeLessThanOrEqual(within);

/** Rows of the log where a test's first pot stands. */
const FIRST_POT = { yardA: 30, yardB: 40, yardC: 50, free: 60 };
const POTS = 10;

describe("US edition agrees with the tests worked by hand", () => {
  beforeAll(() => {
    starter = openStarter(leachingLog, "us");
  });

  test("each test, its pots pooled", () => {
    expect(tests("pots").slice(0, 7)).toEqual([10, 10, 10, 10, 10, 10, 0]);
    [0.17, 0.24, 1 / 11, 0.4, 0.12, 0].forEach((byHand, at) => near(tests("leaching fraction")[at], byHand, 1e-12));
    expect(tests("test of").slice(0, 4)).toEqual([
      "8 Jun, Yard A",
      "22 Jun, Yard A",
      "22 Jun, Yard B",
      "6 Jul, Yard A",
    ]);
  });

  test("what the pail says of the emitters", () => {
    [5.9439, 5.9439, 0.9963, 5.9439, 1.0001, 0.9959].forEach((byHand, at) =>
      near(tests("flow by the pail")[at], byHand, 0.0001),
    );
    near(tests("pail / emitter")[3], 0.99065, 0.00001);
  });

  test("EC of the leachate is the mean of the pots where it was measured", () => {
    [1.6, 1.4, 1.7, 1, 1.5].forEach((byHand, at) => near(tests("EC of leachate")[at], byHand, 1e-12));
    expect(tests("EC of leachate")[5]).toBe("");
  });

  test("Yard A comes down from 20 to 14.1 minutes, Yard B stays, the others have words instead of a number", () => {
    near(zones("minutes to set")[0], 14.118, 0.0005);
    near(zones("change")[0], -0.294, 0.0005);
    near(zones("minutes for the leaching wanted")[1], 21.741, 0.0005);
    expect(zones("minutes to set").slice(1)).toEqual([21, "", "", "", ""]);
    expect(zones("what to do")).toEqual([
      "lift a pot: light? rewet. Heavy? cut",
      "leave as it is",
      "nothing leached: run longer, test again",
      "no test yet",
      "",
      "",
    ]);
  });

  test("how far the pots of Yard A differ", () => {
    const block = starter.block("Result", "How far they differ");
    expect(block.map(([label]) => label)).toEqual(["pots", "pooled fraction", "mean of fractions", "min", "max", "Cv"]);
    [10, 0.4, 0.39955, 0.34247, 0.45455, 0.08324].forEach((byHand, at) => near(block[at]![1], byHand, 0.00001));
  });
});

describe("metric edition agrees with the tests worked by hand", () => {
  beforeAll(() => {
    starter = openStarter(leachingLog, "metric");
  });

  test("each test, its minutes and its pots", () => {
    [0.17, 0.24, 0.1, 0.4, 0.125, 0].forEach((byHand, at) => near(tests("leaching fraction")[at], byHand, 1e-12));
    [24, 24, 3.99, 24, 3.99, 3.99].forEach((byHand, at) => near(tests("flow by the pail")[at], byHand, 1e-9));
    near(zones("minutes to set")[0], 14.118, 0.0005);
    near(zones("minutes for the leaching wanted")[1], 20.588, 0.0005);
    expect(zones("minutes to set")[1]).toBe(20);
    near(starter.block("Result", "How far they differ")[5]![1], 0.07802, 0.00001);
  });
});

describe("the water that a pot keeps is the same before and after", () => {
  test.each(["us", "metric"] as const)("minutes x (1 - fraction), %s", (edition) => {
    starter = openStarter(leachingLog, edition);
    const kept = (minutes: unknown, fraction: number) => (minutes as number) * (1 - fraction);
    near(kept(zones("minutes to set")[0], 0.15), kept(zones("minutes now")[0], 0.4), 1e-12);
  });
});

describe("the log as people keep it", () => {
  beforeEach(() => {
    starter = openStarter(leachingLog, "us");
  });

  const typeTest = (date: number, zone: string, minutes: number, leachate: number): void => {
    for (let pot = 0; pot < POTS; pot += 1) {
      const row = FIRST_POT.free + pot;
      type("date", row, date);
      type("zone", row, zone);
      type("applied", row, 5000);
      type("leachate", row, leachate);
      type("minutes", row, minutes);
    }
  };

  test("a new test becomes its zone's latest: 14 minutes, 700 of 5000 mL is 0.14, which stays", () => {
    typeTest(46_216, "Yard A", 14, 700);
    expect(zones("latest test")[0]).toBe(7);
    near(zones("leaching fraction")[0], 0.14, 1e-12);
    expect([zones("minutes to set")[0], zones("what to do")[0]]).toEqual([14, "leave as it is"]);
  });

  test("a test typed in later but of an earlier date is not the latest", () => {
    typeTest(46_190, "Yard A", 20, 1000);
    expect(zones("latest test")[0]).toBe(4);
  });

  test("little leaching asks for longer: 14 x 0.98 / 0.85 = 16.141", () => {
    typeTest(46_216, "Yard A", 14, 100);
    near(zones("minutes to set")[0], 16.141, 0.0005);
    expect(zones("what to do")[0]).toBe("longer: salts gather");
  });

  test("leaching above the band but below the limit for dry substrate is cut: 14 x 0.80 / 0.85 = 13.176", () => {
    typeTest(46_216, "Yard A", 14, 1000);
    near(zones("minutes to set")[0], 13.176, 0.0005);
    expect(zones("what to do")[0]).toBe("cut");
  });

  test("a dry saucer counts: five pots of 0 and five of 0.4 pool to half", () => {
    for (let pot = 0; pot < 5; pot += 1) type("leachate", FIRST_POT.yardA + pot, 0);
    // 2900 + 3200 + 2800 + 3100 + 3000 = 15,000 of 75,000
    near(zones("leaching fraction")[0], 0.2, 1e-12);
    const block = starter.block("Result", "How far they differ");
    expect(block[0]![1]).toBe(10);
    near(block[1]![1], 0.2, 1e-6);
  });

  test("the pots of another zone can be shown, dry ones too", () => {
    starter.setLine("Inputs", "Zone whose pots are shown on Result", "Yard C");
    const block = starter.block("Result", "How far they differ");
    expect(block[0]![1]).toBe(10);
    near(block[1]![1], 0, 2e-6);
  });

  test("a zone without a test has no pots to show, and the cell says so", () => {
    starter.setLine("Inputs", "Zone whose pots are shown on Result", "Yard D");
    expect(starter.headless.message("Result!A23")).toBe(
      "LEACHING_SUMMARY: leachates has no number; it must have 1 or more",
    );
    expect(starter.check("The shown pots pool to the same fraction by both ways")).toBe("LOOK");
  });
});

describe("each check finds its cause", () => {
  beforeEach(() => {
    starter = openStarter(leachingLog, "us");
  });

  test("the demo shows a zone that leached nothing and one that leached much", () => {
    expect(starter.check("Something leached in every zone that was tested")).toBe("LOOK");
    expect(starter.check("No zone leached so much that dry substrate must be suspected")).toBe("LOOK");
  });

  test("when both are mended, all checks are OK", () => {
    for (let pot = 0; pot < POTS; pot += 1) {
      type("leachate", FIRST_POT.yardA + pot, 900);
      type("leachate", FIRST_POT.yardC + pot, 80);
    }
    expect(starter.overall()).toBe("All checks OK");
  });

  test.each([
    ["a leachate that was forgotten", "Every pot in the log was measured", () => type("leachate", 33, "")],
    ["more leachate than was applied", "Every pot in the log was measured", () => type("leachate", 33, 9000)],
    ["a pot taken out", "Every zone's latest test has pots enough", () => type("zone", 49, "")],
    [
      "a dripper of half the flow",
      "The pail agrees with the emitters",
      () => starter.setInColumn("Inputs", "flow of an emitter", 1, 2),
    ],
    ["minutes typed as hours", "The pail agrees with the emitters", () => type("minutes", 30, 0.5)],
    ["salty leachate", "Salts in the leachate are below your limit", () => type("EC of leachate", 40, 6)],
    [
      "a log that is full",
      "The log has room",
      () => {
        for (let row = FIRST_POT.free; row < 90; row += 1) {
          type("date", row, 46_216);
          type("zone", row, "Yard D");
        }
      },
    ],
  ])("%s", (_cause, check, put) => {
    expect(starter.check(check)).toBe("OK");
    put();
    expect(starter.check(check)).toBe("LOOK");
  });
});
