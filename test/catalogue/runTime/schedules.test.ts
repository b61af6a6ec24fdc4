/**
 * Schedules against a spreadsheet that works the same day from built-in formulas, laid out row by row: a clock that runs
 * on, sets that fill up by a running sum, water that falls pass by pass; and the water of the day is all there.
 */
import fc from "fast-check";
import { tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { columnName, ENGINES, numberAt, wholeAt, type PlainCell, type SheetValues } from "../../rig/plainSheet";
import { SEED } from "../../rig/validInputs";

/** A millisecond, in days. */
const MILLISECOND = 1 / 86_400_000;
const CLOSE = 1e-9;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const sampled = <T>(days: fc.Arbitrary<T>, count: number): T[] => fc.sample(days, { seed: SEED, numRuns: count });

type Worked = (grid: readonly (readonly PlainCell[])[]) => SheetValues;

/** A start on the minute. */
const minuteOfDay = fc.integer({ min: 0, max: 1439 }).map((minute) => minute / 1440);

const pulseDays = fc.record({
  total_minutes: size(1, 600),
  pulses: fc.integer({ min: 1, max: 20 }),
  rest_minutes: fc.integer({ min: 0, max: 480 }).map((half) => half / 2),
  start_time: minuteOfDay,
  fill_minutes: fc.integer({ min: 0, max: 100 }).map((tenth) => tenth / 10),
});

describe.each(ENGINES)("a day of pulses in %s", (engine, worked) => {
  const days = sampled(pulseDays, 25);
  /*
   * A row a pulse, all days below one another. Columns: the water still to give, what this pulse gives of it (the rest of
   * the water over the rest of the pulses), start, stop. The clock runs on from row to row.
   */
  const first: number[] = [];
  const rows: PlainCell[][] = [];
  for (const { total_minutes, pulses, rest_minutes, start_time, fill_minutes } of days) {
    first.push(rows.length);
    for (let pulse = 1; pulse <= pulses; pulse += 1) {
      const [row, above] = [rows.length + 1, rows.length];
      rows.push([
        pulse === 1 ? total_minutes : `=A${above}-B${above}`,
        `=A${row}/${pulses - pulse + 1}`,
        pulse === 1 ? start_time : `=D${above}+${rest_minutes}/60/24`,
        `=C${row}+(B${row}+${fill_minutes})/60/24`,
      ]);
    }
  }
  const values = worked(rows);

  describe(against("PULSE_SCHEDULE", engine), () => {
    test("start and stop of each pulse by a clock that runs on, and the water all given", () => {
      days.forEach((day, at) => {
        const [, ...pulses] = tableOf("PULSE_SCHEDULE", day);
        expect(pulses).toHaveLength(day.pulses);
        let given = 0;
        pulses.forEach(([number, start, stop, minutes], index) => {
          const row = (first[at] as number) + index;
          expect(number).toBe(index + 1);
          expectClose(start, numberAt(values, row, 2), 0, MILLISECOND);
          expectClose(stop, numberAt(values, row, 3), 0, MILLISECOND);
          expectClose(minutes, numberAt(values, row, 1) + day.fill_minutes, CLOSE);
          given += (minutes as number) - day.fill_minutes;
        });
        expectClose(given, day.total_minutes, CLOSE);
      });
    });
  });
});

/** Flows in eighths of a unit, so that sums are exact and a set may fill the supply to the last drop. */
const eighths = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 8 * min, max: 8 * max }).map((count) => count / 8);

const rounds = fc.record({
  zones: fc.array(fc.record({ minutes: size(0.5, 90), flow: eighths(1, 120) }), { minLength: 1, maxLength: 10 }),
  supply: eighths(40, 160),
  start_time: minuteOfDay,
  gap: fc.integer({ min: 0, max: 100 }).map((tenth) => tenth / 10),
  cycles: fc.integer({ min: 1, max: 4 }),
});
type Round = typeof rounds extends fc.Arbitrary<infer T> ? T : never;

const ROUND = { valves: 4, together: 6, start: 7, stop: 8 } as const;

/**
 * A round as a sheet: A cycle, B minutes of the zone, C its flow, D minutes of this cycle, E valves in turn, F flow while
 * it runs, G flow of the set so far, H start, I stop, J last stop so far. A zone joins the set above where both run whole,
 * the cycle is the same and the running sum stays within the supply.
 */
function roundRows({ zones, supply, start_time, gap, cycles }: Round, above: number): PlainCell[][] {
  const rows: PlainCell[][] = [];
  for (let cycle = 1; cycle <= cycles; cycle += 1) {
    for (const { minutes, flow } of zones) {
      const row = above + rows.length + 1;
      const last = row - 1;
      const isFirst = rows.length === 0;
      const joins = `AND(A${row}=A${last},E${row}=1,E${last}=1,G${last}+F${row}<=${supply})`;
      rows.push([
        cycle,
        minutes,
        flow,
        `=B${row}/${cycles}`,
        `=INT(C${row}/${supply})+IF(INT(C${row}/${supply})*${supply}<C${row},1,0)`,
        `=C${row}/E${row}`,
        isFirst ? `=F${row}` : `=IF(${joins},G${last}+F${row},F${row})`,
        isFirst ? start_time : `=IF(${joins},H${last},J${last}+${gap}/60/24)`,
        `=H${row}+(E${row}*D${row}+(E${row}-1)*${gap})/60/24`,
        isFirst ? `=I${row}` : `=IF(${joins},MAX(J${last},I${row}),I${row})`,
      ]);
    }
  }
  return rows;
}

describe.each(ENGINES)("rounds of zones in %s", (engine, worked) => {
  const plans = sampled(rounds, 40);
  const first: number[] = [];
  const rows: PlainCell[][] = [];
  for (const plan of plans) {
    first.push(rows.length);
    rows.push(...roundRows(plan, rows.length));
  }
  const values = worked(rows);

  const roundOf = ({ zones, supply, start_time, gap, cycles }: Round): ReturnType<typeof tableOf> =>
    tableOf("ZONE_SEQUENCE", {
      zone_names: zones.map((_zone, index) => [`zone ${index + 1}`]),
      minutes: zones.map(({ minutes }) => [minutes]),
      flows: zones.map(({ flow }) => [flow]),
      supply_flow: supply,
      start_time,
      gap_minutes: gap,
      cycles,
    });

  describe(against("ZONE_SEQUENCE", engine), () => {
    test("sets by a running sum of the flows, start and stop by a clock that runs on, for forty rounds", () => {
      plans.forEach((plan, at) => {
        const body = roundOf(plan).slice(1);
        const end = body.pop() as readonly unknown[];
        expect(body).toHaveLength(plan.zones.length * plan.cycles);
        const sheet = body.map((_row, index) => (first[at] as number) + index);
        body.forEach(([, start, stop, flow], index) => {
          const row = sheet[index] as number;
          expectClose(start, numberAt(values, row, ROUND.start), 0, MILLISECOND);
          expectClose(stop, numberAt(values, row, ROUND.stop), 0, MILLISECOND);
          expectClose(flow, numberAt(values, row, 5), CLOSE);
        });
        expectClose(end[2], Math.max(...sheet.map((row) => numberAt(values, row, ROUND.stop))), 0, MILLISECOND);
        expectClose(end[3], Math.max(...sheet.map((row) => numberAt(values, row, ROUND.together))), CLOSE);
      });
      // Zones that share a set, that wait, and that are split into valves are all among them.
      const valves = values.map((_row, row) => wholeAt(values, row, ROUND.valves));
      expect(valves.filter((count) => count > 1).length).toBeGreaterThan(20);
      const together = values.filter((row) => (row[ROUND.together] as number) > (row[5] as number));
      expect(together.length).toBeGreaterThan(50);
    });

    test("each zone gets its minutes times its flow, over all cycles and valves", () => {
      plans.forEach((plan, at) => {
        const body = roundOf(plan).slice(1, -1);
        plan.zones.forEach(({ minutes, flow }, zone) => {
          let water = 0;
          for (let cycle = 0; cycle < plan.cycles; cycle += 1) {
            const index = cycle * plan.zones.length + zone;
            const [, start, stop, itsFlow] = body[index] as readonly number[] as [number, number, number, number];
            const valves = wholeAt(values, (first[at] as number) + index, ROUND.valves);
            water += itsFlow * ((stop - start) * 1440 - (valves - 1) * plan.gap);
          }
          expectClose(water, minutes * flow, 1e-7);
        });
      });
    });
  });
});

const MOST_PASSES = 24;
const houses = fc.record({
  flow: size(2, 200),
  speed: size(5, 200),
  width: size(2, 60),
  units: fc.constantFrom("us" as const, "metric" as const),
  // So many passes are wanted, and a part of one, so that no quotient falls on a whole number by its last digit alone.
  sections: fc.array(
    fc.record({
      length: size(2, 80),
      passes: fc.oneof(
        fc.constant(0),
        fc.tuple(fc.integer({ min: 0, max: MOST_PASSES - 2 }), size(0.01, 0.99)).map(([whole, part]) => whole + part),
      ),
    }),
    { minLength: 1, maxLength: 6 },
  ),
});
type House = typeof houses extends fc.Arbitrary<infer T> ? T : never;

/** Depth that a volume has on an area: gallons of 231 in3 on feet of 12 in, or litres on square metres. */
const depthText = (units: "us" | "metric", volume: string, length: string, width: number): string =>
  units === "us" ? `${volume}*231/(${length}*12*${width}*12)` : `${volume}/(${length}*${width})`;

/** Water of one pass, by the numbers alone. */
const passOf = ({ flow, speed, width, units }: House): number =>
  units === "us" ? (flow * 231) / (speed * 12 * width * 12) : flow / (speed * width);

/**
 * A section a row: A depth wanted, B length, C minutes of a crossing, D water of one, E depth of it on the section, F
 * passes, G minutes, H water, and from I on the depth that each crossing found. Passes are the crossings that found the
 * section short.
 */
function sectionRow(house: House, wanted: number, length: number, row: number): PlainCell[] {
  const after = Array.from({ length: MOST_PASSES }, (_pass, at): PlainCell => {
    return at === 0 ? 0 : `=${columnName(at + 7)}${row}+$E${row}`;
  });
  const [from, to] = [columnName(8), columnName(7 + MOST_PASSES)];
  return [
    wanted,
    length,
    `=B${row}/${house.speed}`,
    `=C${row}*${house.flow}`,
    `=${depthText(house.units, `D${row}`, `B${row}`, house.width)}`,
    `=COUNTIF(${from}${row}:${to}${row},"<"&A${row})`,
    `=IF(F${row}=0,C${row},F${row}*C${row})`,
    `=F${row}*D${row}`,
    ...after,
  ];
}

function planOf(house: House, depths: readonly number[]): ReturnType<typeof tableOf> {
  return tableOf("BOOM_PLAN", {
    section_names: house.sections.map((_section, index) => [`section ${index + 1}`]),
    depths: depths.map((depth) => [depth]),
    lengths: house.sections.map(({ length }) => [length]),
    boom_flow: house.flow,
    travel_speed: house.speed,
    swath_width: house.width,
    units: house.units,
  });
}

function expectBoomAsIn(worked: Worked, all: readonly House[]): void {
  const first: number[] = [];
  const rows: PlainCell[][] = [];
  const wanted = all.map((house) => house.sections.map(({ passes }) => passes * passOf(house)));
  all.forEach((house, at) => {
    first.push(rows.length);
    house.sections.forEach(({ length }, index) => {
      rows.push(sectionRow(house, (wanted[at] as number[])[index] as number, length, rows.length + 1));
    });
  });
  const values = worked(rows);
  all.forEach((house, at) => {
    const body = planOf(house, wanted[at] as number[]).slice(1);
    const total = body.pop() as readonly unknown[];
    const sum = [0, 0, 0];
    body.forEach(([, passes, minutes, volume], index) => {
      const row = (first[at] as number) + index;
      expect(passes).toBe(wholeAt(values, row, 5));
      expectClose(minutes, numberAt(values, row, 6), CLOSE);
      expectClose(volume, numberAt(values, row, 7), CLOSE);
      [5, 6, 7].forEach((column, which) => {
        sum[which] = (sum[which] as number) + numberAt(values, row, column);
      });
    });
    sum.forEach((all, which) => expectClose(total[which + 1], all, CLOSE));
  });
}

describe.each(ENGINES)("a boom's house in %s", (engine, worked) => {
  describe(against("BOOM_PLAN", engine), () => {
    test("passes counted as depth adds up pass by pass, minutes and water of them, for forty houses", () => {
      expectBoomAsIn(worked, sampled(houses, 40));
    });
  });
});
