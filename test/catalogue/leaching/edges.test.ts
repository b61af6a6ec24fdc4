/** Numbers just at the limits that two arguments of the leaching group set each other, and at 0. */
import { answerOf, refusalOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";

describe("leaching at its limits", () => {
  test("all of the water may run out: 640 of 640 mL are 1", () => {
    expect(answerOf("LEACHING_FRACTION", { leachate: 640, applied: 640 })).toBe(1);
  });

  test("a leachate no saltier than the water is all of the water", () => {
    expect(answerOf("LEACHING_FROM_EC", { ec_applied: 1.7, ec_leachate: 1.7 })).toBe(1);
  });

  test("one pot of a block may leak all that it got: 300 of 300 and 100 of 500 mL", () => {
    const table = tableOf("LEACHING_SUMMARY", { leachates: [[300], [100]], applieds: [[300], [500]] });
    const found = Object.fromEntries(table) as Record<string, unknown>;
    expect([found["min"], found["max"], found["pooled fraction"]]).toEqual([0.2, 1, 0.5]);
    expectClose(found["mean of fractions"], (1 + 0.2) / 2, 1e-12);
    expectClose(found["Cv"], (1 - 0.2) / Math.sqrt(2) / 0.6, 1e-12);
  });

  test("a target of 0 leaves the time that the pot kept: 20 min at 0.4 are 12", () => {
    const run = { minutes_now: 20, measured: 0.4, target: 0 };
    expectClose(answerOf("RUN_MINUTES_FROM_LEACHING", run), 12, 1e-12);
  });

  test.each([0, null, undefined, ""])("a test without leachate, %p, has no answer", (measured) => {
    const none = refusalOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: 20, measured, target: 0.15 });
    expect(none).toMatchObject({ code: "#N/A", argument: "measured" });
  });
});
