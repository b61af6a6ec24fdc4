/** FLOOD_SCHEDULE: by hand, against a simulation by small steps, and by what must hold for any plan. */
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellAnswer, CellInput, Table } from "../../../src/kernel";
import { entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { tankInEpanet } from "../../rig/epanetTank";
import { against, byAnotherRoute } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Next = "after_fill" | "after_drain";

interface Plan {
  readonly volumes: readonly number[];
  readonly uptakes: readonly number[];
  readonly flow: number;
  readonly atOnce: number;
  readonly soak: number;
  readonly drain: number;
  readonly tank: number;
  readonly next: Next;
}

const column = (cells: readonly CellInput[]): CellInput[][] => cells.map((cell) => [cell]);
const namesOf = (count: number): string[] => Array.from({ length: count }, (_, index) => `bench ${index + 1}`);

function schedule(plan: Plan, more: Readonly<Record<string, unknown>> = {}): Table {
  const entry = entryOf("FLOOD_SCHEDULE");
  const inputs = {
    bench_names: column(namesOf(plan.volumes.length)),
    flood_volumes: column(plan.volumes),
    uptakes: column(plan.uptakes),
    bench_flow: plan.flow,
    benches_at_once: plan.atOnce,
    soak_minutes: plan.soak,
    drain_minutes: plan.drain,
    start_time: 0,
    start_tank: plan.tank,
    next: plan.next,
    ...more,
  };
  return evaluate(entry, inOrder(entry, inputs)) as Table;
}

interface BenchRow {
  readonly start: number;
  readonly full: number;
  readonly drainStart: number;
  readonly empty: number;
  readonly tank: number;
  readonly note: string;
}

interface Answer {
  readonly benches: readonly BenchRow[];
  readonly lowest: number;
  readonly lowestAt: number;
  readonly note: string;
}

const MINUTES_PER_DAY = 1440;
const minutes = (cell: CellAnswer | undefined): number => (cell as number) * MINUTES_PER_DAY;

/** The table of a plan that starts at midnight, its times in minutes. */
function read(table: Table): Answer {
  const rows = table.slice(1, -1).map(([, start, full, drainStart, empty, tank, note]): BenchRow => ({
    start: minutes(start),
    full: minutes(full),
    drainStart: minutes(drainStart),
    empty: minutes(empty),
    tank: tank as number,
    note: note as string,
  }));
  const [, lowestAt, , , , lowest, note] = table.at(-1) ?? [];
  return { benches: rows, lowestAt: minutes(lowestAt), lowest: lowest as number, note: note as string };
}

const answerOf = (plan: Plan): Answer => read(schedule(plan));

/** Eight benches of 120 gal, 20 gal/min to each, two at a time: common practice, no source. */
const EIGHT: Plan = {
  volumes: Array.from({ length: 8 }, () => 120),
  uptakes: Array.from({ length: 8 }, () => 5),
  flow: 20,
  atOnce: 2,
  soak: 12,
  drain: 10,
  tank: 600,
  next: "after_fill",
};

/** Compares every row and column; times in minutes from the start of the round. */
function expectTable(plan: Plan, startTime: number, rows: readonly (readonly (string | number)[])[]): void {
  const table = schedule(plan, { start_time: startTime });
  expect(table[0]).toEqual(["bench", "fill start", "full", "drain start", "empty", "tank after", "note"]);
  expect(table).toHaveLength(rows.length + 1);
  rows.forEach((row, index) => {
    const cells = table[index + 1] ?? [];
    expect(cells).toHaveLength(7);
    row.forEach((cell, at) => {
      if (typeof cell === "string") expect(cells[at]).toBe(cell);
      else if (at === 5) expectClose(cells[at], cell, 0, 1e-9);
      else expectClose(cells[at], startTime + cell / MINUTES_PER_DAY, 0, 1e-12);
    });
  });
}

describe(byAnotherRoute("FLOOD_SCHEDULE"), () => {
  // A bench fills in (120 + 5) / 20 = 6.25 min, then soaks 12 and drains 10, and gives 120 / 10 = 12 gal back a minute.
  // Two fill at once, so a group draws 2 x 20 = 40 gal a minute, 2 x 125 = 250 gal in all, and gives 24 back a minute.

  test("eight benches, after_fill: 600 gal run dry at minute 15, at bench 5", () => {
    // Groups start at 0, 6.25, 12.5 and 18.75; each is full 6.25 min later, drains from 18.25 and is empty at 28.25.
    const at6 = 600 - 40 * 6.25; // 350, group 1 is full, group 2 starts
    const at12 = at6 - 40 * 6.25; // 100, group 2 is full, group 3 starts
    const at15 = at12 - 40 * 2.5; // 0, and group 3 goes on drawing
    const at18 = at15 - 40 * 3.25; // -130 at 18.25, group 1 starts to drain
    const at18b = at18 + (24 - 40) * 0.5; // -138 at 18.75, group 3 is full, group 4 starts
    const at24 = at18b + (24 - 40) * 5.75; // -230 at 24.5, group 2 starts to drain: the lowest
    const at25 = at24 + (48 - 40) * 0.5; // -226, group 4 is full
    const at28 = at25 + 48 * 3.25; // -70 at 28.25, group 1 is empty
    const at30 = at28 + 24 * 2.5; // -10 at 30.75, group 3 starts to drain
    const at34 = at30 + 48 * 3.75; // 170 at 34.5, group 2 is empty
    const at37 = at34 + 24 * 2.5; // 230, group 4 starts to drain
    const at40 = at37 + 48 * 3.75; // 410 at 40.75, group 3 is empty
    const at47 = at40 + 24 * 6.25; // 560, group 4 is empty: 600 less 8 x 5
    expect([at6, at12, at15, at18, at18b, at24, at25]).toEqual([350, 100, 0, -130, -138, -230, -226]);
    expect([at28, at30, at34, at37, at40, at47]).toEqual([-70, -10, 170, 230, 410, 560]);
    expectTable(EIGHT, 0.25, [
      ["bench 1", 0, 6.25, 18.25, 28.25, -70, ""],
      ["bench 2", 0, 6.25, 18.25, 28.25, -70, ""],
      ["bench 3", 6.25, 12.5, 24.5, 34.5, 170, ""],
      ["bench 4", 6.25, 12.5, 24.5, 34.5, 170, ""],
      ["bench 5", 12.5, 18.75, 30.75, 40.75, 410, "tank runs dry at bench 5"],
      ["bench 6", 12.5, 18.75, 30.75, 40.75, 410, ""],
      ["bench 7", 18.75, 25, 37, 47, 560, ""],
      ["bench 8", 18.75, 25, 37, 47, 560, ""],
      ["lowest tank level", 24.5, "", "", "", -230, "tank runs dry at bench 5"],
    ]);
  });

  test("eight benches, after_drain: the same tank never falls below 320 gal", () => {
    // A group takes 6.25 + 12 + 10 = 28.25 min, and the next one starts when it is empty: 0, 28.25, 56.5, 84.75.
    const low1 = 600 - 250; // 350 at 6.25
    const after1 = low1 + 240; // 590 at 28.25
    const low2 = after1 - 250; // 340 at 34.5
    const after2 = low2 + 240; // 580 at 56.5
    const low3 = after2 - 250; // 330 at 62.75
    const after3 = low3 + 240; // 570 at 84.75
    const low4 = after3 - 250; // 320 at 91: the lowest
    const after4 = low4 + 240; // 560 at 113: 600 less 8 x 5
    expect([low1, after1, low2, after2, low3, after3, low4, after4]).toEqual([350, 590, 340, 580, 330, 570, 320, 560]);
    expectTable({ ...EIGHT, next: "after_drain" }, 0.25, [
      ["bench 1", 0, 6.25, 18.25, 28.25, 590, ""],
      ["bench 2", 0, 6.25, 18.25, 28.25, 590, ""],
      ["bench 3", 28.25, 34.5, 46.5, 56.5, 580, ""],
      ["bench 4", 28.25, 34.5, 46.5, 56.5, 580, ""],
      ["bench 5", 56.5, 62.75, 74.75, 84.75, 570, ""],
      ["bench 6", 56.5, 62.75, 74.75, 84.75, 570, ""],
      ["bench 7", 84.75, 91, 103, 113, 560, ""],
      ["bench 8", 84.75, 91, 103, 113, 560, ""],
      ["lowest tank level", 91, "", "", "", 320, ""],
    ]);
  });

  test("the minute is the fifteenth: benches 5 and 6 full at 15:00 leave 0 gal and no note, full at 15:01 they do not", () => {
    const until = (minute: number): Plan => {
      const fill = minute - 12.5;
      const last = 20 * fill - 5;
      return { ...EIGHT, volumes: [120, 120, 120, 120, last, last], uptakes: [5, 5, 5, 5, 5, 5] };
    };
    const just = answerOf(until(15));
    expectClose(just.lowest, 0, 0, 1e-9);
    expectClose(just.lowestAt, 15, 1e-9);
    expect([just.note, ...just.benches.map(({ note }) => note)]).toEqual(["", "", "", "", "", "", ""]);
    const more = answerOf(until(15 + 1 / 60));
    expectClose(more.lowest, -40 / 60, 1e-9);
    expect(more.note).toBe("tank runs dry at bench 5");
    expect(more.benches.map(({ note }) => note)).toEqual(["", "", "", "", "tank runs dry at bench 5", ""]);
  });

  test("a bench of 5 min fill, 10 soak and 8 drain takes 23 minutes", () => {
    const one = { ...EIGHT, volumes: [95], uptakes: [5], soak: 10, drain: 8 };
    expectClose(answerOf(one).benches[0]?.empty, 5 + 10 + 8, 1e-9);
  });

  test("two at a time, 20 such benches fit into 240 minutes and 22 do not: 10 x 23 = 230, 11 x 23 = 253", () => {
    const many = (count: number): Plan => ({
      volumes: Array.from({ length: count }, () => 95),
      uptakes: Array.from({ length: count }, () => 5),
      flow: 20,
      atOnce: 2,
      soak: 10,
      drain: 8,
      tank: 1000,
      next: "after_drain",
    });
    expectClose(answerOf(many(20)).benches.at(-1)?.empty, 230, 1e-9);
    expectClose(answerOf(many(22)).benches.at(-1)?.empty, 253, 1e-9);
  });

  test("the first bench's steps: drawn 1,000 gal by minute 28.25, come back 330, so 600 - 1,000 + 330 = -70", () => {
    const step = stepsOf("FLOOD_SCHEDULE", {
      bench_names: column(namesOf(8)),
      flood_volumes: column(EIGHT.volumes),
      uptakes: column(EIGHT.uptakes),
      bench_flow: 20,
      benches_at_once: 2,
      soak_minutes: 12,
      drain_minutes: 10,
      start_time: 0.25,
      start_tank: 600,
    });
    // All four groups have filled by minute 25: 8 x 125. Group 1 has given back 240, group 2 24 x 3.75 = 90.
    expectClose(step("drawn"), 8 * 125, 1e-12);
    expectClose(step("back"), 240 + 24 * 3.75, 1e-12);
    expectClose(step("T"), -70, 0, 1e-9);
    expectClose(step("tf"), 6.25, 1e-12);
    expectClose(step("empty"), 0.25 + 28.25 / 1440, 1e-12);
  });
});

interface Simulated {
  readonly benches: BenchRow[];
  /** Level at every step, from the start on. */
  readonly levels: number[];
}

interface SimulatedBench {
  phase: "waiting" | "filling" | "soaking" | "draining" | "done";
  received: number;
  returned: number;
  clock: number;
  start: number;
  full: number;
  drainStart: number;
  empty: number;
  tank: number;
  note: string;
}

/** What of a level counts as below 0: more than arithmetic leaves of a 0. */
const BELOW = -1e-6;

/**
 * The round as it would be watched, step by step: valves open, water runs, timers count. Every step's water leaves one
 * place and enters another; that tank, benches and pots together hold what the tank held at the start is checked at each.
 */
function simulate(plan: Plan, step: number): Simulated {
  const benches = plan.volumes.map((): SimulatedBench => ({
    phase: "waiting",
    received: 0,
    returned: 0,
    clock: 0,
    start: NaN,
    full: NaN,
    drainStart: NaN,
    empty: NaN,
    tank: NaN,
    note: "",
  }));
  const EPS = step * 1e-6;
  const levels = [plan.tank];
  let tank = plan.tank;
  for (let tick = 0; benches.some(({ phase }) => phase !== "done"); tick += 1) {
    const now = tick * step;
    const isOver = ({ phase }: SimulatedBench): boolean =>
      plan.next === "after_fill" ? phase !== "filling" : phase === "done";
    if (benches.every((bench) => bench.phase === "waiting" || isOver(bench))) {
      for (const bench of benches.filter(({ phase }) => phase === "waiting").slice(0, plan.atOnce)) {
        bench.phase = "filling";
        bench.start = now;
      }
    }
    const filling = benches.filter(({ phase }) => phase === "filling");
    const before = tank;
    benches.forEach((bench, index) => {
      const volume = plan.volumes[index] as number;
      const need = volume + (plan.uptakes[index] as number);
      if (bench.phase === "filling") {
        tank -= plan.flow * step;
        bench.received += plan.flow * step;
        if (bench.received >= need - plan.flow * EPS) {
          Object.assign(bench, { phase: plan.soak === 0 ? "draining" : "soaking", full: now + step, clock: 0 });
          if (plan.soak === 0) bench.drainStart = now + step;
        }
      } else if (bench.phase === "soaking") {
        bench.clock += step;
        if (bench.clock >= plan.soak - EPS)
          Object.assign(bench, { phase: "draining", drainStart: now + step, clock: 0 });
      } else if (bench.phase === "draining") {
        tank += (volume / plan.drain) * step;
        bench.returned += (volume / plan.drain) * step;
        bench.clock += step;
        if (bench.clock >= plan.drain - EPS) Object.assign(bench, { phase: "done", empty: now + step });
      }
    });
    for (const bench of benches) if (bench.phase === "done" && Number.isNaN(bench.tank)) bench.tank = tank;
    const [first] = filling;
    if (first !== undefined && before >= BELOW && tank < BELOW) {
      first.note = `tank runs dry at bench ${benches.indexOf(first) + 1}`;
    }
    const elsewhere = benches.reduce((sum, { received, returned }) => sum + received - returned, 0);
    expectClose(tank + elsewhere, plan.tank, 1e-9, 1e-6);
    levels.push(tank);
  }
  return { benches, levels };
}

const NEXT = fc.constantFrom<Next>("after_fill", "after_drain");

/** Plans whose moments all fall on whole minutes: the volume follows from the minutes of the fill. */
const wholeMinutePlans: fc.Arbitrary<Plan> = fc
  .record({
    fills: fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 4 })), {
      minLength: 1,
      maxLength: 9,
    }),
    flow: fc.integer({ min: 5, max: 40 }),
    atOnce: fc.integer({ min: 1, max: 4 }),
    soak: fc.integer({ min: 0, max: 15 }),
    drain: fc.integer({ min: 1, max: 15 }),
    tank: fc.integer({ min: 50, max: 2000 }),
    next: NEXT,
  })
  .map(({ fills, ...rest }) => ({
    ...rest,
    volumes: fills.map(([minute, uptake]) => rest.flow * minute - uptake),
    uptakes: fills.map(([, uptake]) => uptake),
  }));

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Plans of any size that a house may have. */
const plans: fc.Arbitrary<Plan> = fc
  .record({
    benches: fc.array(fc.tuple(size(20, 300), size(0, 20)), { minLength: 1, maxLength: 12 }),
    flow: size(5, 60),
    atOnce: fc.integer({ min: 1, max: 5 }),
    soak: size(0, 20),
    drain: size(1, 20),
    tank: size(50, 3000),
    next: NEXT,
  })
  .map(({ benches, ...rest }) => ({
    ...rest,
    volumes: benches.map(([volume]) => volume),
    uptakes: benches.map(([, uptake]) => uptake),
  }));

function property(plan: fc.Arbitrary<Plan>, numRuns: number, holds: (plan: Plan) => void): void {
  fc.assert(fc.property(plan, holds), { seed: SEED, numRuns });
}

describe("a round simulated step by step", () => {
  test("in whole minutes agrees in every time, level and note", () => {
    let ranDry = 0;
    property(wholeMinutePlans, 400, (plan) => {
      const { benches, lowest, lowestAt, note } = answerOf(plan);
      const simulated = simulate(plan, 1);
      simulated.benches.forEach((watched, index) => {
        const row = benches[index] as BenchRow;
        for (const moment of ["start", "full", "drainStart", "empty"] as const) {
          expectClose(row[moment], watched[moment], 0, 1e-9);
        }
        expectClose(row.tank, watched.tank, 0, 1e-6);
        expect(row.note).toBe(watched.note);
      });
      const level = Math.min(...simulated.levels);
      expectClose(lowest, level, 0, 1e-6);
      expectClose(simulated.levels[Math.round(lowestAt)], level, 0, 1e-6);
      expect(note === "").toBe(level >= BELOW);
      if (note !== "") ranDry += 1;
    });
    expect(ranDry).toBeGreaterThan(50);
    expect(ranDry).toBeLessThan(350);
  });

  test("in steps of 0.01 min comes as near as the steps allow", () => {
    const step = 0.01;
    property(plans, 40, (plan) => {
      const { benches, lowest } = answerOf(plan);
      const simulated = simulate(plan, step);
      // Each fill, soak and drain ends up to a step late, and every group waits for those before it. Level and time then
      // differ by what flows in so many steps.
      const late = 3 * benches.length * step;
      const fastest = plan.flow * plan.atOnce + plan.volumes.reduce((sum, volume) => sum + volume / plan.drain, 0);
      simulated.benches.forEach((watched, index) => {
        const row = benches[index] as BenchRow;
        for (const moment of ["start", "full", "drainStart", "empty"] as const) {
          expectClose(row[moment], watched[moment], 0, late);
        }
        expectClose(row.tank, watched.tank, 0, late * fastest);
      });
      expectClose(lowest, Math.min(...simulated.levels), 0, late * fastest);
    });
  });
});

/** Water that a bench and its pots hold at a minute, by the times of its own row. */
function heldAt(minute: number, row: BenchRow, volume: number, uptake: number, flow: number): number {
  if (minute <= row.start) return 0;
  if (minute <= row.full) return flow * (minute - row.start);
  if (minute <= row.drainStart) return volume + uptake;
  if (minute <= row.empty) return uptake + (volume * (row.empty - minute)) / (row.empty - row.drainStart);
  return uptake;
}

describe("in any round", () => {
  test("tank, benches and pots together hold the water of the start, whenever a bench is empty and at the lowest level", () => {
    property(plans, 300, (plan) => {
      const { benches, lowest, lowestAt } = answerOf(plan);
      const elsewhere = (minute: number): number =>
        benches.reduce(
          (sum, row, index) =>
            sum + heldAt(minute, row, plan.volumes[index] as number, plan.uptakes[index] as number, plan.flow),
          0,
        );
      for (const { empty, tank } of benches) expectClose(tank + elsewhere(empty), plan.tank, 1e-9, 1e-6);
      expectClose(lowest + elsewhere(lowestAt), plan.tank, 1e-9, 1e-6);
    });
  });

  test("the tank ends with what it had less all that was taken up", () => {
    property(plans, 300, (plan) => {
      const { benches } = answerOf(plan);
      const last = benches.reduce((latest, row) => (row.empty > latest.empty ? row : latest));
      const taken = plan.uptakes.reduce((sum, uptake) => sum + uptake, 0);
      expectClose(last.tank, plan.tank - taken, 0, 1e-7);
    });
  });

  test("no more benches fill than may, and each takes its minutes", () => {
    property(plans, 300, (plan) => {
      const { benches } = answerOf(plan);
      benches.forEach(({ start, full, drainStart, empty }, index) => {
        const filling = benches.filter((other) => other.start <= start + 1e-9 && other.full > start + 1e-6);
        expect(filling.length).toBeLessThanOrEqual(plan.atOnce);
        const need = (plan.volumes[index] as number) + (plan.uptakes[index] as number);
        expectClose(full - start, need / plan.flow, 0, 1e-7);
        expectClose(drainStart - full, plan.soak, 0, 1e-7);
        expectClose(empty - drainStart, plan.drain, 0, 1e-7);
      });
    });
  });

  test("a group starts when the last of the one before is full, or empty", () => {
    property(plans, 300, (plan) => {
      const { benches } = answerOf(plan);
      benches.forEach(({ start }, index) => {
        const group = Math.floor(index / plan.atOnce);
        const before = benches.slice((group - 1) * plan.atOnce, group * plan.atOnce);
        const waited = before.map(({ full, empty }) => (plan.next === "after_fill" ? full : empty));
        expectClose(start, group === 0 ? 0 : Math.max(...waited), 0, 1e-9);
      });
    });
  });

  test("the lowest level is none of a row's that is lower, nor above the start", () => {
    property(plans, 300, (plan) => {
      const { benches, lowest } = answerOf(plan);
      for (const { tank } of benches) expect(lowest).toBeLessThanOrEqual(tank + 1e-6);
      expect(lowest).toBeLessThanOrEqual(plan.tank);
    });
  });

  test("more water at the start lifts every level by as much", () => {
    property(plans, 200, (plan) => {
      const now = answerOf(plan);
      const fuller = answerOf({ ...plan, tank: plan.tank + 100 });
      expectClose(fuller.lowest, now.lowest + 100, 0, 1e-6);
      fuller.benches.forEach(({ tank }, index) => expectClose(tank, (now.benches[index]?.tank ?? NaN) + 100, 0, 1e-6));
    });
  });

  test("three times the water through three times the flow takes the same times and three times the levels", () => {
    property(plans, 200, (plan) => {
      const now = answerOf(plan);
      const large = answerOf({
        ...plan,
        volumes: plan.volumes.map((volume) => 3 * volume),
        uptakes: plan.uptakes.map((uptake) => 3 * uptake),
        flow: 3 * plan.flow,
        tank: 3 * plan.tank,
      });
      expectClose(large.lowest, 3 * now.lowest, 0, 1e-5);
      large.benches.forEach(({ empty, tank }, index) => {
        expectClose(empty, now.benches[index]?.empty ?? NaN, 1e-12, 1e-9);
        expectClose(tank, 3 * (now.benches[index]?.tank ?? NaN), 0, 1e-5);
      });
    });
  });

  test("to wait for the drain never takes the tank lower than to wait for the fill, and never ends sooner", () => {
    property(plans, 300, (plan) => {
      const fill = answerOf({ ...plan, next: "after_fill" });
      const drain = answerOf({ ...plan, next: "after_drain" });
      expect(drain.lowest).toBeGreaterThanOrEqual(fill.lowest - 1e-6);
      expect(drain.benches.at(-1)?.empty).toBeGreaterThanOrEqual((fill.benches.at(-1)?.empty ?? NaN) - 1e-9);
    });
  });

  test("after_fill, a longer soak never leaves more in the tank at its lowest", () => {
    property(plans, 300, (plan) => {
      const now = answerOf({ ...plan, next: "after_fill" });
      const longer = answerOf({ ...plan, next: "after_fill", soak: plan.soak + 3 });
      expect(longer.lowest).toBeLessThanOrEqual(now.lowest + 1e-6);
    });
  });
});

describe(against("FLOOD_SCHEDULE", "epanet-js 0.9.0"), () => {
  const SLOT = 15;

  // The benches' times come from the table; the tank is followed by EPANET. It keeps its unit factors to six digits and
  // balances flows to 1e-5, and a pipe in which nothing flows keeps some 0.001 L/min: 0.1 in two hours is allowed.
  test.each<Next>(["after_fill", "after_drain"])(
    "the tank of eight benches, %s, at every quarter minute",
    async (next) => {
      const { benches, lowest, lowestAt } = answerOf({ ...EIGHT, next });
      const slots = Math.round(((benches.at(-1)?.empty ?? NaN) * 60) / SLOT);
      const net = Array.from({ length: slots }, (_, slot) => {
        const minute = ((slot + 0.5) * SLOT) / 60;
        const filling = benches.filter(({ start, full }) => start < minute && minute < full).length;
        const draining = benches.filter(({ drainStart, empty }) => drainStart < minute && minute < empty).length;
        return 20 * filling - 12 * draining;
      });
      const litres = await tankInEpanet(net, SLOT);
      const levelAt = (minute: number): number => 600 + (litres.get(Math.round(minute * 60)) ?? NaN);
      for (const { empty, tank } of benches) expectClose(tank, levelAt(empty), 0, 0.1);
      expectClose(lowest, levelAt(lowestAt), 0, 0.1);
      expectClose(lowest, 600 + Math.min(...litres.values()), 0, 0.1);
      if (next === "after_fill") expectClose(levelAt(15), 0, 0, 0.1);
    },
  );
});

describe("a tank that runs dry", () => {
  const two: Plan = { ...EIGHT, volumes: [45, 95], uptakes: [5, 5], flow: 10, atOnce: 2, tank: 120 };

  test("is noted at the bench that fills at that moment, not at one that is full: the second, alone from minute 5 on", () => {
    // Both draw 20 a minute until the first is full at 5: 120 - 100 = 20. The second alone draws 10: dry at minute 7.
    const { benches, note } = answerOf(two);
    expect(benches.map((row) => row.note)).toEqual(["", "tank runs dry at bench 2"]);
    expect(note).toBe("tank runs dry at bench 2");
  });

  test("is noted at the first in order of those that fill together", () => {
    expect(answerOf({ ...two, tank: 90 }).benches.map((row) => row.note)).toEqual(["tank runs dry at bench 1", ""]);
  });

  test("is noted each time that the level passes below 0, and the last row names the first", () => {
    // 100 - 115 = -15, + 110 = 95; 95 - 115 = -20, + 110 = 90.
    const plan: Plan = { ...two, volumes: [110, 110], atOnce: 1, tank: 100, next: "after_drain" };
    const { benches, note, lowest } = answerOf(plan);
    expect(benches.map((row) => row.note)).toEqual(["tank runs dry at bench 1", "tank runs dry at bench 2"]);
    expectClose(lowest, -20, 1e-9);
    expect(note).toBe("tank runs dry at bench 1");
  });

  test("is noted once where it stays below 0 through several benches", () => {
    const { benches } = answerOf({ ...EIGHT, tank: 100 });
    expect(benches.filter((row) => row.note !== "")).toHaveLength(1);
    expect(benches[0]?.note).toBe("tank runs dry at bench 1");
  });

  test("is one below 0: at 0 it has lasted, also where three times 0.1 is a little more than 0.3 in a computer", () => {
    expect(0.1 * 3).toBeGreaterThan(0.3);
    const plan = { ...two, volumes: [0.1, 0.1, 0.1], uptakes: [0, 0, 0], flow: 0.1, atOnce: 3, tank: 0.3 };
    const { benches, lowest, note } = answerOf(plan);
    expectClose(lowest, 0, 0, 1e-12);
    expect([note, ...benches.map((row) => row.note)]).toEqual(["", "", "", ""]);
    expect(answerOf({ ...plan, tank: 0.2999 }).note).toBe("tank runs dry at bench 1");
  });

  test("is named by its row where the bench has no name", () => {
    const table = schedule(two, { bench_names: [["north"], [""]] });
    expect(table[2]?.[0]).toBe("");
    expect(table[2]?.[6]).toBe("tank runs dry at row 2");
  });

  test("gives the lowest level its first time where it comes twice", () => {
    // Without uptake each bench takes 600 down to 480 and brings it back: at minutes 6 and 34.
    const plan: Plan = { ...EIGHT, volumes: [120, 120], uptakes: [0, 0], atOnce: 1, next: "after_drain" };
    expectClose(answerOf(plan).lowest, 480, 1e-12);
    expectClose(answerOf(plan).lowestAt, 6, 1e-9);
  });
});

describe("times of a round", () => {
  const late: Plan = { ...EIGHT, volumes: [95, 95], uptakes: [5, 5], flow: 10, atOnce: 1, soak: 5 };

  test("run on past midnight: from 23:50 the second bench is full at 0:10 of the next day", () => {
    const start = (23 * 60 + 50) / 1440;
    const table = schedule(late, { start_time: start });
    expectClose(table[1]?.[2], 1, 1e-12);
    expectClose(table[2]?.[2], 1 + 10 / 1440, 1e-12);
    expectClose(table.at(-1)?.[1], 1 + 10 / 1440, 1e-12);
  });

  test("carry the date where the start has one", () => {
    expectClose(schedule(late, { start_time: 45_000.25 })[1]?.[2], 45_000.25 + 10 / 1440, 0, 1e-9);
  });

  test("start all benches at once where more may fill than there are", () => {
    const { benches } = answerOf({ ...EIGHT, atOnce: 50, tank: 2000 });
    expect(new Set(benches.map(({ start }) => start))).toEqual(new Set([0]));
  });

  test("let the drain follow the fill at once where nothing soaks", () => {
    const [bench] = answerOf({ ...late, soak: 0 }).benches;
    expectClose(bench?.drainStart, bench?.full ?? NaN, 1e-12);
  });

  test("wait for the fill where no word is given", () => {
    expect(schedule(late, { next: undefined })).toEqual(schedule({ ...late, next: "after_fill" }));
  });
});

describe("rows of a plan", () => {
  const three: Plan = { ...EIGHT, volumes: [95, 95, 95], uptakes: [5, 5, 5], flow: 10, atOnce: 1, soak: 5 };

  test.each<[string, CellInput, CellInput, string]>([
    ["a blank volume", null, 5, "left out: flood_volumes is blank or 0; it must be more than 0 (gal or L)"],
    ["a volume of 0", 0, 5, "left out: flood_volumes is blank or 0; it must be more than 0 (gal or L)"],
    [
      "text for a volume",
      "full",
      5,
      'left out: flood_volumes is the text "full"; it must be more than 0 (gal or L): a number, not text',
    ],
    ["an uptake below 0", 95, -1, "left out: uptakes is -1; it must be 0 or more (gal or L)"],
    ["a blank uptake", 95, "", "left out: uptakes is blank; it must be 0 or more (gal or L)"],
  ])("carry their reason and are left out, the others are worked: %s", (_what, volume, uptake, reason) => {
    const table = schedule(three, { flood_volumes: column([95, volume, 95]), uptakes: column([5, uptake, 5]) });
    const without = schedule({ ...three, volumes: [95, 95], uptakes: [5, 5] });
    expect(table[2]).toEqual(["bench 2", "", "", "", "", "", reason]);
    expect(table[1]).toEqual(without[1]);
    expect(table[3]?.slice(1)).toEqual(without[2]?.slice(1));
    expect(table[4]).toEqual([...(without[3] ?? []).slice(0, -1), "1 left out"]);
  });

  test("that are left out are counted behind a tank that runs dry", () => {
    const table = schedule({ ...three, tank: 50 }, { flood_volumes: column([95, null, 95]) });
    expect(table.at(-1)?.[6]).toBe("tank runs dry at bench 1; 1 left out");
  });

  test.each<[string, CellInput]>([
    ["empty", null],
    ["empty text", ""],
    ["0, as a host may send an empty cell", 0],
  ])("without a name and numbers are no rows: %s", (_what, blank) => {
    const table = schedule(three, {
      bench_names: column(["bench 1", "bench 2", "bench 3", blank, blank]),
      flood_volumes: column([95, 95, 95, blank, blank]),
      uptakes: column([5, 5, 5, blank, blank]),
    });
    expect(table).toEqual(schedule(three));
  });

  test("that are all left out leave the tank as it was", () => {
    const table = schedule(three, { flood_volumes: column([null, 0, -5]) });
    expect(table).toHaveLength(5);
    expect(table[4]).toEqual(["lowest tank level", 0, "", "", "", 600, "3 left out"]);
  });

  test("must be there: a plan without any is refused by name", () => {
    const blanks = { bench_names: column([null]), flood_volumes: column([null]), uptakes: column([null]) };
    const rest = { bench_flow: 10, benches_at_once: 1, soak_minutes: 5, drain_minutes: 5, start_time: 0 };
    const refused = refusalOf("FLOOD_SCHEDULE", { ...blanks, ...rest, start_tank: 100 });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "bench_names" });
  });

  test("must be as many in each column, and the error gives both numbers", () => {
    const refused = refusalOf("FLOOD_SCHEDULE", {
      bench_names: column(["a", "b"]),
      flood_volumes: column([95, 95]),
      uptakes: column([5]),
      bench_flow: 10,
      benches_at_once: 1,
      soak_minutes: 5,
      drain_minutes: 5,
      start_time: 0,
      start_tank: 100,
    });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "uptakes" });
    expect(refused.message).toContain("uptakes has 1 cells; it must have 2");
  });

  test("may be 100,000, and the tank still foots", () => {
    const count = 100_000;
    const plan: Plan = {
      ...EIGHT,
      volumes: Array.from({ length: count }, (_, index) => 100 + (index % 7)),
      uptakes: Array.from({ length: count }, () => 5),
      atOnce: 3,
    };
    const table = schedule(plan);
    expect(table).toHaveLength(count + 2);
    expectClose(table[count]?.[5], 600 - 5 * count, 1e-9);
  });
});

describe("its help", () => {
  test("says that recirculated water spreads disease, and that a pump must not run dry", () => {
    const { caution } = entryOf("FLOOD_SCHEDULE");
    expect(caution).toContain("disease");
    expect(caution).toContain("runs dry");
  });
});
