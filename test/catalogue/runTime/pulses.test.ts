/** Pulses as a little model: against a valve that is watched every second, and by what must hold for any day. */
import fc from "fast-check";
import { tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

const SECONDS_PER_DAY = 86_400;

type Row = readonly [pulse: number, start: number, stop: number, minutes: number];

function pulsesOf(day: Record<string, unknown>): readonly Row[] {
  const [header, ...rows] = tableOf("PULSE_SCHEDULE", day);
  expect(header).toEqual(["pulse", "start", "stop", "minutes"]);
  return rows as unknown as Row[];
}

interface Watched {
  readonly opened: number;
  readonly closed: number;
}

/** A valve that is told its seconds of water and of rest, watched second by second until the water of the day is given. */
function watchValve(toGive: number, pulse: number, fill: number, rest: number): Watched[] {
  const seen: Watched[] = [];
  let [second, given] = [0, 0];
  while (given < toGive) {
    const opened = second;
    let open = 0;
    while (open < pulse + fill) {
      second += 1;
      open += 1;
      if (open > fill) given += 1;
    }
    seen.push({ opened, closed: second });
    if (given < toGive) for (let resting = 0; resting < rest; resting += 1) second += 1;
  }
  return seen;
}

const days = fc.record({
  pulses: fc.integer({ min: 1, max: 24 }),
  pulse: fc.integer({ min: 1, max: 1800 }),
  rest: fc.integer({ min: 0, max: 7200 }),
  fill: fc.integer({ min: 0, max: 300 }),
});

describe(byAnotherRoute("PULSE_SCHEDULE"), () => {
  test("45 minutes in three parts with an hour between: 15, 60, 15, 60, 15 are 165 minutes, 6:00 to 8:45", () => {
    const rows = pulsesOf({ total_minutes: 45, pulses: 3, rest_minutes: 60, start_time: 0.25 });
    expect(rows.map(([, , , minutes]) => minutes)).toEqual([15, 15, 15]);
    expectClose((rows.at(-1)?.[2] ?? NaN) * 24, 8.75, 1e-12);
  });

  test("starts and stops are those of a valve watched every second, for any day", () => {
    fc.assert(
      fc.property(days, ({ pulses, pulse, rest, fill }) => {
        const seen = watchValve(pulses * pulse, pulse, fill, rest);
        const rows = pulsesOf({
          total_minutes: (pulses * pulse) / 60,
          pulses,
          rest_minutes: rest / 60,
          start_time: 0,
          fill_minutes: fill / 60,
        });
        expect(rows).toHaveLength(seen.length);
        rows.forEach(([, start, stop], index) => {
          expectClose(start * SECONDS_PER_DAY, seen[index]?.opened ?? NaN, 0, 1e-6);
          expectClose(stop * SECONDS_PER_DAY, seen[index]?.closed ?? NaN, 0, 1e-6);
        });
      }),
      { seed: SEED, numRuns: 150 },
    );
  });
});

describe("whatever the day", () => {
  const plans = fc.record({
    total_minutes: fc.double({ min: 0.1, max: 600, noNaN: true }),
    pulses: fc.integer({ min: 1, max: 40 }),
    rest_minutes: fc.double({ min: 0, max: 240, noNaN: true }),
    start_time: fc.double({ min: 0, max: 1, noNaN: true }),
    fill_minutes: fc.double({ min: 0, max: 10, noNaN: true }),
  });

  test("the pulses together are the minutes of the day and a filling each, the rests one fewer than the pulses", () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const rows = pulsesOf(plan);
        const open = rows.reduce((sum, [, start, stop]) => sum + (stop - start) * 1440, 0);
        expectClose(open, plan.total_minutes + plan.pulses * plan.fill_minutes, 1e-6);
        const rests = rows.slice(1).map(([, start], index) => (start - (rows[index]?.[2] ?? NaN)) * 1440);
        expect(rests).toHaveLength(plan.pulses - 1);
        for (const rest of rests) expectClose(rest, plan.rest_minutes, 1e-9, 1e-6);
        expect(rows[0]?.[1]).toBe(plan.start_time);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });
});
