/** The run time after a leaching test, against the water balance of the pot. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { balanced, physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

describe(against("RUN_MINUTES_FROM_LEACHING", "mathjs 15.2.0, lusolve, the water balance of a pot"), () => {
  const tests = fc.record({
    minutes: fc.double({ min: 1, max: 120, noNaN: true }),
    measured: fc.double({ min: 0.01, max: 0.9, noNaN: true }),
    target: fc.double({ min: 0, max: 0.9, noNaN: true }),
    flow: fc.double({ min: 0.2, max: 30, noNaN: true }),
  });

  /*
   * What the pot kept in the test is weighed: applied less leached. The new run must leave it as much, so with its minutes
   * and its leachate unknown: flow x minutes - leachate = kept, and leachate - target x flow x minutes = 0.
   */
  test.each(["gallon", "L"])("minutes and leachate of the new run in %s, for any test", (volume) => {
    fc.assert(
      fc.property(tests, ({ minutes, measured, target, flow }) => {
        const applied = { q: quantity(flow, `${volume}/hour`), t: quantity(minutes, "minute") };
        const kept = physical("q * t", applied, volume) - physical("LF * q * t", { ...applied, LF: measured }, volume);
        const perMinute = quantity(flow, `${volume}/hour`).toNumber(`${volume}/minute`);
        const [wanted] = balanced(
          [
            [perMinute, -1],
            [-target * perMinute, 1],
          ],
          [kept, 0],
        ) as [number, number];
        const call = { minutes_now: minutes, measured, target };
        expectClose(answerOf("RUN_MINUTES_FROM_LEACHING", call), wanted, 1e-10);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });
});
