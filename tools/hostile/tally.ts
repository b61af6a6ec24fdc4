/** Counts of a run, of one batch or of many; plain data, so that it crosses from process to process. */
import type { HostileCall } from "./call";
import { hostileCallText } from "./call";
import type { RoadName } from "./engineSentences";
import type { Judged } from "./judge";
import type { Way } from "./sheetRoad";

export type Counts = Record<string, number>;

export interface SlowCall {
  readonly milliseconds: number;
  readonly index: number;
  readonly text: string;
}

export interface FoundFault {
  readonly road: RoadName | "both roads";
  readonly index: number;
  readonly text: string;
  readonly fault: string;
}

export interface Tally {
  calls: number;
  faultCount: number;
  readonly kinds: Counts;
  readonly functions: Counts;
  readonly roads: Counts;
  readonly ways: Counts;
  /** By road and verdict. */
  readonly verdicts: Record<RoadName, Counts>;
  /** Calls whose outcomes on both roads were held against each other. */
  compared: number;
  readonly slowest: Partial<Record<RoadName, SlowCall>>;
  readonly slowestOrdinary: Partial<Record<RoadName, SlowCall>>;
  /** The first ones; all are counted. */
  readonly faults: FoundFault[];
}

const KEPT_FAULTS = 100;

export function emptyTally(): Tally {
  return {
    calls: 0,
    faultCount: 0,
    kinds: {},
    functions: {},
    roads: {},
    ways: {},
    verdicts: { "official runtime": {}, "browser sheet": {} },
    compared: 0,
    slowest: {},
    slowestOrdinary: {},
    faults: [],
  };
}

export function count(counts: Counts, key: string, by = 1): void {
  counts[key] = (counts[key] ?? 0) + by;
}

/** A call that the run has made; `ofCatalogue` is the function that it was made for. */
export function countCall(tally: Tally, call: HostileCall, ofCatalogue: string): void {
  tally.calls += 1;
  count(tally.functions, ofCatalogue);
  for (const kind of call.kinds) count(tally.kinds, kind);
}

export function countFault(tally: Tally, road: FoundFault["road"], call: HostileCall, fault: string): void {
  tally.faultCount += 1;
  if (tally.faults.length < KEPT_FAULTS) {
    tally.faults.push({ road, index: call.index, text: hostileCallText(call), fault });
  }
}

export function countJudged(tally: Tally, road: RoadName, way: Way | null, call: HostileCall, judged: Judged): void {
  count(tally.roads, road);
  if (way !== null) count(tally.ways, way);
  if (judged.verdict !== null) count(tally.verdicts[road], judged.verdict);
  for (const fault of judged.faults) countFault(tally, road, call, fault);
}

function slower(one: SlowCall | undefined, other: SlowCall | undefined): SlowCall | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return other.milliseconds > one.milliseconds ? other : one;
}

/** A call that was timed by itself. */
export function countTime(tally: Tally, road: RoadName, call: HostileCall, milliseconds: number): void {
  const isLong = call.kinds.includes("very long ranges");
  const list = isLong ? tally.slowest : tally.slowestOrdinary;
  if (milliseconds <= (list[road]?.milliseconds ?? 0)) return;
  list[road] = { milliseconds, index: call.index, text: hostileCallText(call) };
}

function addCounts(to: Counts, from: Counts): void {
  for (const [key, by] of Object.entries(from)) count(to, key, by);
}

export function add(to: Tally, from: Tally): void {
  to.calls += from.calls;
  to.faultCount += from.faultCount;
  to.compared += from.compared;
  for (const part of ["kinds", "functions", "roads", "ways"] as const) addCounts(to[part], from[part]);
  for (const road of Object.keys(to.verdicts) as RoadName[]) {
    addCounts(to.verdicts[road], from.verdicts[road]);
    for (const list of ["slowest", "slowestOrdinary"] as const) {
      const found = slower(to[list][road], from[list][road]);
      if (found !== undefined) to[list][road] = found;
    }
  }
  to.faults.push(...from.faults.slice(0, KEPT_FAULTS - to.faults.length));
}
