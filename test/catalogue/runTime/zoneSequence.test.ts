/**
 * The order of zones as a little model: by hand, against a controller that looks at its valves every second, and by what
 * must hold for any plan.
 */
import fc from "fast-check";
import { answerOf, refusalOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

const MINUTES_PER_DAY = 1440;
const SECONDS_PER_DAY = 86_400;
const SIX_O_CLOCK = 0.25;

interface Zone {
  readonly name: string;
  readonly minutes: unknown;
  readonly flow: unknown;
}

interface Settings {
  readonly supply: number;
  readonly start?: number;
  readonly gap?: number;
  readonly cycles?: number;
}

type Row = readonly [zone: string, start: number | "", stop: number | "", flow: number | "", note: string];

function argumentsOf(
  zones: readonly Zone[],
  { supply, start = SIX_O_CLOCK, gap, cycles }: Settings,
): Record<string, unknown> {
  return {
    zone_names: zones.map(({ name }) => [name]),
    minutes: zones.map(({ minutes }) => [minutes]),
    flows: zones.map(({ flow }) => [flow]),
    supply_flow: supply,
    start_time: start,
    gap_minutes: gap,
    cycles,
  };
}

function sequence(zones: readonly Zone[], settings: Settings): { rows: readonly Row[]; last: Row } {
  const [header, ...body] = tableOf("ZONE_SEQUENCE", argumentsOf(zones, settings));
  expect(header).toEqual(["zone", "start", "stop", "flow", "note"]);
  const rows = body as unknown as Row[];
  return { rows: rows.slice(0, -1), last: rows.at(-1) as Row };
}

/** Minutes from 6:00. */
function minutesAfterSix(time: number | ""): number {
  return ((time as number) - SIX_O_CLOCK) * MINUTES_PER_DAY;
}

const zone = (name: string, minutes: unknown, flow: unknown): Zone => ({ name, minutes, flow });

describe(byAnotherRoute("ZONE_SEQUENCE"), () => {
  /*
   * Supply 60, gap 2, two cycles, from 6:00. Minutes of a cycle: A 10, B 14, C 9, D 10, E 5.
   *   A 33 + B 25 = 58 fits; + C 80 does not. A, B start at 0; A stops at 10, B at 14.
   *   C draws 80: above 60, so two valves of 40 in turn, alone: 16 to 25, 27 to 36, together 16 to 36.
   *   D 20 + E 40 = 60 fits to the last drop: 38 to 48 and 38 to 43.
   *   Second cycle from 48 + 2 = 50, each 50 later: A 50 to 60, B 50 to 64, C 66 to 86, D 88 to 98, E 88 to 93.
   * Highest at once: 58, 40, 60. Water: 20 x 33 + 28 x 25 + 18 x 80 + 20 x 20 + 10 x 40 = 3600.
   */
  const day = [zone("A", 20, 33), zone("B", 28, 25), zone("C", 18, 80), zone("D", 20, 20), zone("E", 10, 40)];
  const { rows, last } = sequence(day, { supply: 60, gap: 2, cycles: 2 });
  const byHand: [string, number, number, number][] = [
    ["A", 0, 10, 33],
    ["B", 0, 14, 25],
    ["C", 16, 36, 40],
    ["D", 38, 48, 20],
    ["E", 38, 43, 40],
  ];

  test.each([0, 1])("five zones on a supply of 60, worked on paper: cycle %d of 0 and 1", (cycle) => {
    byHand.forEach(([name, start, stop, flow], index) => {
      const row = rows[cycle * 5 + index] as Row;
      expect(row[0]).toBe(name);
      expectClose(minutesAfterSix(row[1]), start + 50 * cycle, 0, 1e-8);
      expectClose(minutesAfterSix(row[2]), stop + 50 * cycle, 0, 1e-8);
      expect(row[3]).toBe(flow);
      expect(row[4]).toBe(name === "C" ? "above the supply: 2 valves in turn, 9 min each" : "");
    });
  });

  test("and its last row: 6:00 to 7:38, 60 at once", () => {
    expect(last[0]).toBe("end of round");
    expect(last[1]).toBe(SIX_O_CLOCK);
    expectClose(minutesAfterSix(last[2]), 98, 0, 1e-8);
    expect(last.slice(3)).toEqual([60, ""]);
  });

  test("its water is what the zones were to get: 3,600, cycle by cycle", () => {
    // Minutes that water: the span less the gap between the two valves of C.
    const water = rows.reduce((sum, [name, start, stop, flow]) => {
      const span = minutesAfterSix(stop) - minutesAfterSix(start) - (name === "C" ? 2 : 0);
      return sum + span * (flow as number);
    }, 0);
    expectClose(water, 3600, 1e-9);
  });
});

/** What a controller did with one zone in one cycle, in seconds from the start of the round. */
interface Watered {
  readonly opened: number;
  closed: number;
  /** Seconds of each valve, added. */
  seconds: number;
  volume: number;
  valves: number;
}

interface SecondsPlan {
  readonly zones: readonly { readonly seconds: number; readonly flow: number }[];
  readonly supply: number;
  readonly gap: number;
  readonly cycles: number;
}

interface OpenValve {
  readonly watered: Watered;
  readonly flow: number;
  left: number;
}

/** Valves that make a zone fit the supply, tried one by one. */
function valvesFor(flow: number, supply: number): number {
  let valves = 1;
  while (flow / valves > supply) valves += 1;
  return valves;
}

/**
 * A controller that works in steps of one second and knows no formula: when nothing is open and the pause is over it
 * opens what is next, and it closes a valve when its seconds have run out.
 */
function runController({ zones, supply, gap, cycles }: SecondsPlan): { log: Watered[]; highest: number; end: number } {
  const log: Watered[] = [];
  let open: OpenValve[] = [];
  /** Valves of a split zone that wait for their turn. */
  let waiting: OpenValve[] = [];
  let [cycle, next, pause, second, highest] = [0, 0, 0, 0, 0];

  const openNext = (): void => {
    const turn = waiting.shift();
    if (turn !== undefined) {
      open = [turn];
      return;
    }
    if (next === zones.length) [cycle, next] = [cycle + 1, 0];
    let drawn = 0;
    while (next < zones.length) {
      const { seconds, flow } = zones[next] as { seconds: number; flow: number };
      const valves = valvesFor(flow, supply);
      if (open.length > 0 && (valves > 1 || drawn + flow > supply)) return;
      const watered: Watered = { opened: second, closed: NaN, seconds: 0, volume: 0, valves };
      log.push(watered);
      next += 1;
      drawn += flow;
      open.push({ watered, flow: flow / valves, left: seconds });
      if (valves > 1) {
        waiting = Array.from({ length: valves - 1 }, () => ({ watered, flow: flow / valves, left: seconds }));
        return;
      }
    }
  };

  for (;;) {
    if (open.length === 0) {
      if (pause > 0) {
        pause -= 1;
        second += 1;
        continue;
      }
      openNext();
    }
    const flow = open.reduce((sum, valve) => sum + valve.flow, 0);
    if (flow > supply) throw new Error(`${flow} drawn from a supply of ${supply} at second ${second}`);
    highest = Math.max(highest, flow);
    second += 1;
    for (const valve of open) {
      valve.left -= 1;
      valve.watered.seconds += 1;
      valve.watered.volume += valve.flow / 60;
      valve.watered.closed = second;
    }
    open = open.filter(({ left }) => left > 0);
    if (open.length > 0) continue;
    if (waiting.length === 0 && next === zones.length && cycle === cycles - 1) return { log, highest, end: second };
    pause = gap;
  }
}

/** Plans in whole seconds and eighths of a flow, so that the controller's sums are exact. */
const secondsPlans: fc.Arbitrary<SecondsPlan> = fc.record({
  zones: fc.array(
    fc.record({ seconds: fc.integer({ min: 1, max: 120 }), flow: fc.integer({ min: 1, max: 960 }).map((n) => n / 8) }),
    { minLength: 1, maxLength: 10 },
  ),
  supply: fc.integer({ min: 240, max: 800 }).map((n) => n / 8),
  gap: fc.integer({ min: 0, max: 120 }),
  cycles: fc.integer({ min: 1, max: 4 }),
});

function tableOfSeconds({ zones, supply, gap, cycles }: SecondsPlan): { rows: readonly Row[]; last: Row } {
  const named = zones.map(({ seconds, flow }, index) => zone(`zone ${index + 1}`, (seconds * cycles) / 60, flow));
  return sequence(named, { supply, start: 0, gap: gap / 60, cycles });
}

const property = (holds: (plan: SecondsPlan) => void, numRuns = 120): void =>
  fc.assert(fc.property(secondsPlans, holds), { seed: SEED, numRuns });

const TO_THE_SECOND = 1e-6;
const secondsOf = (time: number | ""): number => (time as number) * SECONDS_PER_DAY;

// Against a controller that looks at its valves every second, for any plan.
describe(byAnotherRoute("ZONE_SEQUENCE"), () => {
  test("each zone opens and closes when a controller that steps by the second does it, for any plan", () => {
    property((plan) => {
      const { log, end, highest } = runController(plan);
      const { rows, last } = tableOfSeconds(plan);
      expect(rows).toHaveLength(plan.zones.length * plan.cycles);
      rows.forEach(([, start, stop, flow, note], index) => {
        const { opened, closed, valves } = log[index] as Watered;
        expectClose(secondsOf(start), opened, 0, TO_THE_SECOND);
        expectClose(secondsOf(stop), closed, 0, TO_THE_SECOND);
        expect(flow).toBe((plan.zones[index % plan.zones.length] as { flow: number }).flow / valves);
        expect(note.includes(`${valves} valves in turn`)).toBe(valves > 1);
      });
      expectClose(secondsOf(last[2]), end, 0, TO_THE_SECOND);
      expectClose(last[3], highest, 1e-12);
    });
  });

  test("that controller gives each zone its minutes, valve by valve, and its water, over all cycles", () => {
    property((plan) => {
      const { log } = runController(plan);
      plan.zones.forEach(({ seconds, flow }, index) => {
        const parts = log.filter((_part, at) => at % plan.zones.length === index);
        expect(parts).toHaveLength(plan.cycles);
        const minutes = (seconds * plan.cycles) / 60;
        const [{ valves }] = parts as [Watered];
        expectClose(parts.reduce((sum, part) => sum + part.seconds, 0) / 60, valves * minutes, 1e-9);
        expectClose(
          parts.reduce((sum, part) => sum + part.volume, 0),
          flow * minutes,
          1e-9,
        );
      });
    });
  });
});

interface Span {
  readonly start: number;
  readonly stop: number;
  readonly flow: number;
}

/** Minutes and flows of any size, not whole in anything. */
const anyPlans = fc.record({
  zones: fc.array(
    fc.record({
      minutes: fc.double({ min: 0.1, max: 500, noNaN: true }),
      flow: fc.double({ min: 0.1, max: 200, noNaN: true }),
    }),
    { minLength: 1, maxLength: 40 },
  ),
  supply: fc.double({ min: 5, max: 150, noNaN: true }),
  gap: fc.double({ min: 0, max: 20, noNaN: true }),
  cycles: fc.integer({ min: 1, max: 6 }),
});

function spansOf(plan: {
  zones: readonly { minutes: number; flow: number }[];
  supply: number;
  gap: number;
  cycles: number;
}): {
  spans: Span[];
  last: Row;
} {
  const named = plan.zones.map(({ minutes, flow }) => zone("a zone", minutes, flow));
  const { rows, last } = sequence(named, { ...plan, start: 0 });
  const spans = rows.map(([, start, stop, flow]) => ({
    start: (start as number) * MINUTES_PER_DAY,
    stop: (stop as number) * MINUTES_PER_DAY,
    flow: flow as number,
  }));
  return { spans, last };
}

describe("whatever the plan", () => {
  const DUST = 1e-6;
  const always = (holds: (plan: Parameters<typeof spansOf>[0]) => void): void =>
    fc.assert(fc.property(anyPlans, holds), { seed: SEED, numRuns: 200 });

  test("the flows at any moment are within the supply, and the highest of them is on the last row", () => {
    always((plan) => {
      const { spans, last } = spansOf(plan);
      const atOnce = spans.map(({ start }) =>
        spans
          .filter((other) => other.start <= start + DUST && other.stop > start + DUST)
          .reduce((sum, { flow }) => sum + flow, 0),
      );
      expect(Math.max(...atOnce)).toBeLessThanOrEqual(plan.supply * (1 + 1e-8));
      expectClose(Math.max(...atOnce), last[3] as number, 1e-12);
    });
  });

  test("sets do not overlap: what starts later starts the gap after all before it have stopped, and no later", () => {
    always((plan) => {
      const { spans } = spansOf(plan);
      let stopped = 0;
      spans.forEach(({ start, stop }, index) => {
        const previous = spans[index - 1];
        if (previous !== undefined && start > previous.start + DUST / 10) {
          expectClose(start, stopped + plan.gap, 0, DUST);
        } else {
          expectClose(start, previous?.start ?? 0, 0, DUST);
        }
        stopped = Math.max(stopped, stop);
      });
    });
  });

  test("a set takes the next zone whenever it fits: none could have started a set earlier", () => {
    always((plan) => {
      const { spans } = spansOf(plan);
      const perCycle = plan.zones.length;
      let drawn = 0;
      spans.forEach(({ start, flow }, index) => {
        const { flow: whole } = plan.zones[index % perCycle] as { flow: number };
        const startsSet = index === 0 || start > (spans[index - 1] as Span).start + DUST;
        const previousWhole = plan.zones[(index - 1 + perCycle) % perCycle] as { flow: number };
        const mayJoin = index % perCycle !== 0 && whole <= plan.supply && previousWhole.flow <= plan.supply;
        if (startsSet && mayJoin) expect(drawn + whole).toBeGreaterThan(plan.supply);
        drawn = startsSet ? flow : drawn + flow;
      });
    });
  });

  test("every zone runs its minutes / cycles in each cycle, valve after valve with the gap between", () => {
    always((plan) => {
      const { spans } = spansOf(plan);
      spans.forEach(({ start, stop, flow }, index) => {
        const { minutes, flow: whole } = plan.zones[index % plan.zones.length] as { minutes: number; flow: number };
        const valves = Math.round(whole / flow);
        expectClose(stop - start, (valves * minutes) / plan.cycles + (valves - 1) * plan.gap, 1e-9, DUST);
        expectClose(valves * flow, whole, 1e-12);
        if (valves > 1) expect(whole / (valves - 1)).toBeGreaterThan(plan.supply);
      });
    });
  });

  test("the cycles repeat the whole order, each as far after the one before as the first is long, and the gap", () => {
    always((plan) => {
      const { spans } = spansOf(plan);
      const perCycle = plan.zones.length;
      const length = Math.max(...spans.slice(0, perCycle).map(({ stop }) => stop)) + plan.gap;
      spans.forEach(({ start, stop }, index) => {
        const first = spans[index % perCycle] as Span;
        const later = Math.floor(index / perCycle) * length;
        expectClose(start, first.start + later, 1e-9, DUST);
        expectClose(stop, first.stop + later, 1e-9, DUST);
      });
    });
  });

  test("a later start moves every time by as much, and the round ends with its last stop", () => {
    always((plan) => {
      const named = plan.zones.map(({ minutes, flow }) => zone("a zone", minutes, flow));
      const early = sequence(named, { ...plan, start: 0 });
      const late = sequence(named, { ...plan, start: 0.75 });
      early.rows.forEach(([, start, stop], index) => {
        expectClose(late.rows[index]?.[1], (start as number) + 0.75, 1e-12);
        expectClose(late.rows[index]?.[2], (stop as number) + 0.75, 1e-12);
      });
      expect(early.last[2]).toBe(Math.max(...early.rows.map(([, , stop]) => stop as number)));
    });
  });
});

describe("fitting the supply", () => {
  test("takes 0.1 + 0.2 for 0.3, although a computer makes 0.30000000000000004 of it", () => {
    expect(0.1 + 0.2).toBeGreaterThan(0.3);
    const { rows, last } = sequence([zone("A", 5, 0.1), zone("B", 5, 0.2)], { supply: 0.3 });
    expect(rows[1]?.[1]).toBe(SIX_O_CLOCK);
    expectClose(last[3], 0.3, 1e-12);
  });

  test("takes 0.3 over 0.1 for three valves, and a hair more for four", () => {
    const valves = (flow: number): string => sequence([zone("A", 5, flow)], { supply: 0.1 }).rows[0]?.[4] ?? "";
    expect(valves(0.3)).toContain("3 valves");
    expect(valves(0.3 + 1e-6)).toContain("4 valves");
  });

  test("is not tried across a zone that runs alone, although a valve of it leaves room", () => {
    // 90 on 60 runs as two valves of 45; the 10 behind it waits for both: 5 + 1 + 5 + 1.
    const { rows } = sequence([zone("big", 5, 90), zone("small", 5, 10)], { supply: 60 });
    expectClose(minutesAfterSix(rows[1]?.[1] as number), 12, 0, 1e-8);
  });

  test("keeps the order: a small zone does not slip in before a big one", () => {
    const { rows } = sequence([zone("A", 10, 40), zone("B", 10, 40), zone("C", 10, 20)], { supply: 60 });
    expect(rows.map(([name]) => name)).toEqual(["A", "B", "C"]);
    expect(minutesAfterSix(rows[2]?.[1] as number)).toBeCloseTo(11, 8);
  });
});

describe("a row that cannot run", () => {
  const good = zone("good", 10, 30);

  test.each([
    ["blank minutes", zone("bad", null, 30), "left out: minutes is blank or 0; it must be more than 0 (min)"],
    ["minutes of 0", zone("bad", 0, 30), "left out: minutes is blank or 0; it must be more than 0 (min)"],
    [
      "text for minutes",
      zone("bad", "ten", 30),
      'left out: minutes is the text "ten"; it must be more than 0 (min): a number, not text',
    ],
    ["minutes below 0", zone("bad", -5, 30), "left out: minutes is -5; it must be more than 0 (min)"],
    ["a blank flow", zone("bad", 10, ""), "left out: flows is blank or 0; it must be more than 0 (gal/min or L/min)"],
    ["TRUE for a flow", zone("bad", 10, true), "left out: flows is TRUE; it must be more than 0 (gal/min or L/min)"],
  ])("for %s carries its reason, and the others run", (_what, bad, reason) => {
    const { rows, last } = sequence([good, bad, good], { supply: 60 });
    expect(rows[1]).toEqual(["bad", "", "", "", reason]);
    expect(rows[0]?.slice(1, 3)).toEqual(rows[2]?.slice(1, 3));
    expect(last[4]).toBe("1 left out");
  });

  test("for a flow that no count of valves could share says so, and no number runs out in its words", () => {
    const { rows } = sequence([good, zone("bad", 10, 1e308)], { supply: 1e-10 });
    expect(rows[1]).toEqual(["bad", "", "", "", "left out: its flow is beyond what valves in turn can share"]);
  });

  test("has its place in every cycle, so that rows keep their distance", () => {
    const { rows } = sequence([good, zone("bad", null, 30)], { supply: 60, cycles: 3 });
    expect(rows.map(([name]) => name)).toEqual(["good", "bad", "good", "bad", "good", "bad"]);
  });

  test("and no other leaves a round of no length that says so", () => {
    const { rows, last } = sequence([zone("bad", null, 30), zone("worse", 5, null)], { supply: 60 });
    expect(rows).toHaveLength(2);
    expect(last).toEqual(["end of round", SIX_O_CLOCK, SIX_O_CLOCK, 0, "2 left out"]);
  });

  test.each<[string, unknown]>([
    ["empty", null],
    ["empty texts", ""],
    ["sent as 0 by a host", 0],
  ])("because nothing is written in it is no row: cells %s", (_how, blank) => {
    const spare = zone(blank as string, blank, blank);
    const { rows, last } = sequence([good, spare, spare], { supply: 60 });
    expect(rows).toHaveLength(1);
    expect(last[4]).toBe("");
  });

  test("in a range without any zone is refused, naming zone_names", () => {
    const spare = zone("", null, null);
    const refused = refusalOf("ZONE_SEQUENCE", argumentsOf([spare, spare], { supply: 60 }));
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "zone_names" });
  });
});

describe("times and sizes", () => {
  test("run on past midnight", () => {
    const { last } = sequence([zone("A", 90, 30)], { supply: 60, start: 23.5 / 24 });
    expectClose((last[2] as number) * 24, 25, 1e-12);
  });

  test("columns of unequal lengths are refused with both lengths", () => {
    const args = { ...argumentsOf([zone("A", 1, 1), zone("B", 1, 1)], { supply: 60 }), flows: [[1]] };
    expect(refusalOf("ZONE_SEQUENCE", args).message).toBe(
      "ZONE_SEQUENCE: flows has 1 cells; it must have 2, as zone_names has",
    );
  });

  test("one zone in cells that are no range runs like any other", () => {
    const args = { zone_names: "A", minutes: 10, flows: 30, supply_flow: 60, start_time: 0.25 };
    expect(tableOf("ZONE_SEQUENCE", args)).toHaveLength(3);
  });

  test("a table longer than a sheet is refused before it is worked", () => {
    const many = Array.from({ length: 20_000 }, () => zone("A", 1, 1));
    expect(refusalOf("ZONE_SEQUENCE", argumentsOf(many, { supply: 60, cycles: 100 }))).toMatchObject({
      argument: "cycles",
      message: expect.stringContaining("it must be 52 or less"),
    });
  });

  test("20,000 zones in three cycles are one call; it takes their minutes and a gap between each two", () => {
    const minutes = (index: number) => 5 + (index % 40);
    const named = Array.from({ length: 20_000 }, (_, index) => zone(`zone ${index}`, minutes(index), 90));
    const { rows, last } = sequence(named, { supply: 120, cycles: 3, gap: 1 });
    expect(rows).toHaveLength(3 * 20_000);
    const total = named.reduce((sum, _zone, index) => sum + minutes(index), 0);
    expectClose(((last[2] as number) - (rows[0]?.[1] as number)) * 24 * 60, total + (3 * 20_000 - 1), 1e-9);
  });
});

describe("together with the other functions of the day", () => {
  test("Yard B: 2,400 plants with two emitters of 1 gal/h draw 80, which a supply of 60 runs as two valves of 40", () => {
    const flow = answerOf("ZONE_FLOW", { plants: 2400, emitters_per_plant: 2, emitter_flow: 1 });
    expect(answerOf("ZONES_AT_ONCE", { supply_flow: 60, zone_flow: flow })).toBe(0);
    const { rows } = sequence([zone("Yard B", 21, flow)], { supply: 60, gap: 1, cycles: 3 });
    expect(rows.map(([, , , drawn, note]) => [drawn, note])).toEqual(
      Array.from({ length: 3 }, () => [40, "above the supply: 2 valves in turn, 7 min each"]),
    );
  });
});
