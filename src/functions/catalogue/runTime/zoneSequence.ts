import { cite, defineFunction, shortNumber, type CellAnswer, type Show } from "../../../kernel";
import { MINUTES_PER_DAY, PAST_MIDNIGHT } from "../clock";
import { wholeUp } from "../wholeNumbers";
import { faultOf, isUnwritten, type PlanCell } from "./planRows";
import { SUPPLY_FLOW_PARAM } from "./supply";

const MOST_CYCLES = 100;
/** A sheet's 1,048,576 rows without the header and the last row. */
const MOST_ROWS = 1_048_574;

/** How a zone runs in one cycle. */
interface Run {
  /** Valves that run one after the other; 1 where the supply carries the whole zone. */
  readonly valves: number;
  /** Minutes of each valve. */
  readonly minutes: number;
  /** Flow while the zone runs. */
  readonly flow: number;
  /** Minutes from its start to its stop. */
  readonly span: number;
}

interface Zone {
  readonly name: string;
  /** The run, or why there is none. */
  readonly run: Run | string;
}

interface Plan {
  readonly supply: number;
  readonly start: number;
  readonly gap: number;
  readonly cycles: number;
}

/** One zone in one cycle, on symbols S, s, g and c. */
function runOf(minutes: number, flow: number, { supply, start, gap, cycles }: Plan, show: Show): Run {
  show("m", minutes, "minutes", "Minutes of the first zone, from the table");
  show("f", flow, "flow", "Flow of the first zone, from the table");
  const valves = show(
    "k = MAX(1, ROUNDUP(f / S - 1E-9, 0))",
    Math.max(1, wholeUp(flow / supply)),
    "count",
    "Valves in turn; 1 where the supply carries the zone",
  );
  const atOnce = show("Q = f / k", flow / valves, "flow", "Flow while it runs");
  const each = show("t = m / c", minutes / cycles, "minutes", "Minutes of a valve in one cycle");
  const span = show("d = k * t + (k - 1) * g", valves * each + (valves - 1) * gap, "minutes", "From start to stop");
  show("stop = s + d / 1440", start + span / MINUTES_PER_DAY, "time of day", "Stop of the first zone");
  return { valves, minutes: each, flow: atOnce, span };
}

/** A flow so far above the supply that no number counts its valves. */
function beyondSupply(flow: number, { supply }: Plan): string | null {
  return Number.isFinite(flow / supply) ? null : "left out: its flow is beyond what valves in turn can share";
}

function zonesOf(
  names: readonly string[],
  minutes: readonly PlanCell[],
  flows: readonly PlanCell[],
  plan: Plan,
  show: Show,
): Zone[] {
  const zones: Zone[] = [];
  let heard = show;
  names.forEach((name, row) => {
    const [itsMinutes, itsFlow] = [minutes[row] as PlanCell, flows[row] as PlanCell];
    if (isUnwritten(name, itsMinutes, itsFlow)) return;
    const fault = faultOf(itsMinutes, itsFlow) ?? beyondSupply(itsFlow as number, plan);
    if (fault !== null) {
      zones.push({ name, run: fault });
      return;
    }
    zones.push({ name, run: runOf(itsMinutes as number, itsFlow as number, plan, heard) });
    heard = show.silent;
  });
  return zones;
}

/** Zones that start together; minutes from the start of the round. */
interface RunningSet {
  readonly start: number;
  stop: number;
  flow: number;
  /** Nothing may join: the end of a cycle, or a zone that runs alone. */
  isClosed: boolean;
}

function joins({ flow, isClosed }: RunningSet, run: Run, supply: number): boolean {
  return !isClosed && run.valves === 1 && wholeUp((flow + run.flow) / supply) <= 1;
}

function noteOf({ valves, minutes }: Run): string {
  return valves === 1 ? "" : `above the supply: ${valves} valves in turn, ${shortNumber(minutes)} min each`;
}

function sequence(zones: readonly Zone[], { supply, start, gap, cycles }: Plan): CellAnswer[][] {
  const rows: CellAnswer[][] = [["zone", "start", "stop", "flow", "note"]];
  const timeOf = (minutes: number): number => start + minutes / MINUTES_PER_DAY;
  let set: RunningSet | null = null;
  let highest = 0;
  for (let cycle = 1; cycle <= cycles; cycle += 1) {
    if (set !== null) set.isClosed = true;
    for (const { name, run } of zones) {
      if (typeof run === "string") {
        rows.push([name, "", "", "", run]);
        continue;
      }
      if (set === null || !joins(set, run, supply)) {
        set = { start: set === null ? 0 : set.stop + gap, stop: 0, flow: 0, isClosed: run.valves > 1 };
      }
      const stop = set.start + run.span;
      set.stop = Math.max(set.stop, stop);
      set.flow += run.flow;
      highest = Math.max(highest, set.flow);
      rows.push([name, timeOf(set.start), timeOf(stop), run.flow, noteOf(run)]);
    }
  }
  const leftOut = zones.filter(({ run }) => typeof run === "string").length;
  const note = leftOut === 0 ? "" : `${leftOut} left out`;
  rows.push(["end of round", start, timeOf(set === null ? 0 : set.stop), highest, note]);
  return rows;
}

export const zoneSequence = defineFunction({
  name: "ZONE_SEQUENCE",
  group: "Run time, zones, booms, mats",
  summary: "Start and stop of each zone, so that the supply is never asked for more than it gives",
  formula: "zones in order form a set while their flows fit; the next set starts after the last stop + gap",
  source: cite("DEFINITION", "the sum of the flows at any moment is within the supply"),
  assumptions: [
    "Zones keep the order given. Those whose flows fit the supply together start together; the next ones wait until the last of them has stopped, plus the gap.",
    "A zone above the supply runs alone, as equal valves in turn, each for all the minutes of the zone; flow is then that of one valve. Its pipes must be split like that.",
    "With cycles the whole order runs that many times with minutes / cycles each, so that a zone rests while the others run. Where all zones fit into one set they rest for the gap only.",
    "Minutes to fill the lines are not added: where lines drain at each rest, add cycles x fill to the minutes.",
    "A row whose minutes or flow are missing or wrong carries its reason and is left out, and the last row counts such rows. A row without a name and numbers is no row.",
    PAST_MIDNIGHT,
    "Put long runs together and short ones together: a set lasts as long as its longest zone.",
  ],
  params: {
    zone_names: { kind: "texts", about: "Names of the zones in the order in which they may run" },
    minutes: {
      kind: "column",
      quantity: "minutes",
      symbol: "M",
      above: 0,
      blanks: "refused",
      about: "Run time of each zone for the whole round",
    },
    flows: {
      kind: "column",
      quantity: "flow",
      symbol: "F",
      above: 0,
      blanks: "refused",
      about: "Flow of each zone, in the unit of the supply",
    },
    supply_flow: SUPPLY_FLOW_PARAM,
    start_time: {
      quantity: "time of day",
      symbol: "s",
      atLeast: 0,
      about: "Start of the first set, a time of the sheet; 0 is midnight",
    },
    gap_minutes: {
      quantity: "minutes",
      symbol: "g",
      atLeast: 0,
      default: 1,
      about: "From the last stop of a set to the start of the next, and between valves in turn; 0 is a value",
      usual: {
        us: [0, 15],
        metric: [0, 15],
        source: cite("PRACTICE", "time for valves to close and pressure to come back"),
      },
    },
    cycles: {
      quantity: "count",
      symbol: "c",
      atLeast: 1,
      atMost: MOST_CYCLES,
      whole: true,
      default: 1,
      guard: "more rounds than any controller is set to",
      about: "How many times the whole order runs, with minutes / cycles each",
      usual: { us: [1, 12], metric: [1, 12], source: cite("PRACTICE", "cyclic irrigation") },
    },
  },
  result: {
    header: true,
    table: [
      { name: "zone", quantity: "text" },
      { name: "start", quantity: "time of day" },
      { name: "stop", quantity: "time of day" },
      { name: "flow", quantity: "flow" },
      { name: "note", quantity: "text" },
    ],
    about: "One row a zone and cycle, then the end of the round with the highest flow at once",
  },
  examples: [
    {
      given: {
        zone_names: [["A"], ["B"], ["C"]],
        minutes: [[20], [15], [30]],
        flows: [[30], [25], [40]],
        supply_flow: 60,
        start_time: 0.25,
      },
      gives: [
        ["zone", "start", "stop", "flow", "note"],
        ["A", 0.25, 0.25 + 20 / 1440, 30, ""],
        ["B", 0.25, 0.25 + 15 / 1440, 25, ""],
        ["C", 0.25 + 21 / 1440, 0.25 + 51 / 1440, 40, ""],
        ["end of round", 0.25, 0.25 + 51 / 1440, 55, ""],
      ],
      from: cite("ARITHMETIC", "30 + 25 = 55 fits 60, 95 does not: C starts at 20 + 1 minutes and ends at 51"),
    },
    {
      given: {
        zone_names: [["Yard A"], ["Yard B"]],
        minutes: [[12], [20]],
        flows: [[40], [90]],
        supply_flow: 60,
        start_time: 0.25,
        gap_minutes: 2,
        cycles: 2,
      },
      gives: [
        ["zone", "start", "stop", "flow", "note"],
        ["Yard A", 0.25, 0.25 + 6 / 1440, 40, ""],
        ["Yard B", 0.25 + 8 / 1440, 0.25 + 30 / 1440, 45, "above the supply: 2 valves in turn, 10 min each"],
        ["Yard A", 0.25 + 32 / 1440, 0.25 + 38 / 1440, 40, ""],
        ["Yard B", 0.25 + 40 / 1440, 0.25 + 62 / 1440, 45, "above the supply: 2 valves in turn, 10 min each"],
        ["end of round", 0.25, 0.25 + 62 / 1440, 45, ""],
      ],
      from: cite("ARITHMETIC", "6 min and 10 + 2 + 10 min a cycle, gaps of 2: 6, 8 to 30, 32 to 38, 40 to 62"),
    },
  ],
  mistakes: [],
  seeAlso: ["ZONE_FLOW", "ZONES_AT_ONCE", "RUN_MINUTES", "LINE_FILL_MINUTES", "PULSE_SCHEDULE"],
  caution:
    "For people who set a controller, not for a controller to read. Flow alone does not keep the pressure up: count on 90 % of the supply that was measured, and check the farthest zone. A row left out is a zone that stays dry.",
  compute(given, show, { refuse }) {
    const { zone_names, minutes, flows, supply_flow, start_time, gap_minutes, cycles } = given;
    const plan = { supply: supply_flow, start: start_time, gap: gap_minutes, cycles };
    const zones = zonesOf(zone_names, minutes, flows, plan, show);
    if (zones.length === 0) throw refuse("zone_names", null, "it must have a zone with its minutes and its flow");
    if (zones.length * cycles > MOST_ROWS) {
      throw refuse(
        "cycles",
        cycles,
        `it must be ${Math.floor(MOST_ROWS / zones.length)} or less: the table has a row for each zone and cycle`,
      );
    }
    return sequence(zones, plan);
  },
});
