/** One batch over both roads, judged and counted. */
import { areComparable, disagreement } from "./agreement";
import type { HostileCall, Outcome } from "./call";
import type { RoadName } from "./engineSentences";
import { callsOfBatch, functionOf, type Plan } from "./generate";
import { ceilingOf, judge } from "./judge";
import { openOfficialRoad, type OfficialRoad } from "./officialRoad";
import { openSheetRoad, WAYS, type SheetRoad, type Way } from "./sheetRoad";
import { countCall, countFault, countJudged, countTime, emptyTally, type Tally } from "./tally";

export interface Roads {
  readonly official: OfficialRoad;
  readonly sheet: SheetRoad;
}

export function openRoads(functionsFile: string): Roads {
  return { official: openOfficialRoad(functionsFile), sheet: openSheetRoad() };
}

interface Timed {
  readonly outcome: Outcome;
  /** Null where the call was one of many that together took less than one alone may take. */
  readonly milliseconds: number | null;
}

/** Told before each call that is made by itself. */
type Announce = (index: number, road: RoadName) => void;

const ATTEMPTS = 3;

/**
 * The least time of some attempts, the first of which gives the outcome: a machine that has other work makes any call
 * slow now and then, a slow call is slow each time.
 */
async function timed(call: HostileCall, run: () => Outcome | Promise<Outcome>): Promise<Timed> {
  let outcome: Outcome | null = null;
  let milliseconds = Infinity;
  for (let attempt = 0; attempt < ATTEMPTS && milliseconds > ceilingOf(call); attempt += 1) {
    const start = performance.now();
    const found = await run();
    milliseconds = Math.min(milliseconds, performance.now() - start);
    outcome ??= found;
  }
  return { outcome: outcome as Outcome, milliseconds };
}

/** A batch that took longer than this together is done again call by call. */
const TOGETHER_AT_MOST = 800;

/** Calls that go by themselves whatever happens: those that may take long. */
const goesAlone = ({ kinds }: HostileCall): boolean => kinds.includes("very long ranges");

async function oneByOne(
  road: RoadName,
  calls: readonly HostileCall[],
  run: (call: HostileCall) => Outcome | Promise<Outcome>,
  announce: Announce,
): Promise<Timed[]> {
  const made: Timed[] = [];
  for (const call of calls) {
    announce(call.index, road);
    made.push(await timed(call, () => run(call)));
  }
  return made;
}

/** Together where that is quick, so that the time of each is bounded by that of all. */
async function together(
  road: RoadName,
  calls: readonly HostileCall[],
  runAll: (calls: readonly HostileCall[]) => Outcome[] | Promise<Outcome[]>,
  announce: Announce,
  alone: boolean,
): Promise<Timed[]> {
  const single = async (call: HostileCall): Promise<Outcome> => (await runAll([call]))[0] as Outcome;
  if (alone) return oneByOne(road, calls, single, announce);
  const start = performance.now();
  const outcomes = await runAll(calls);
  const isQuick = performance.now() - start <= TOGETHER_AT_MOST;
  return isQuick
    ? outcomes.map((outcome) => ({ outcome, milliseconds: null }))
    : oneByOne(road, calls, single, announce);
}

async function mixed(
  road: RoadName,
  calls: readonly HostileCall[],
  runAll: (calls: readonly HostileCall[]) => Outcome[] | Promise<Outcome[]>,
  announce: Announce,
  alone: boolean,
): Promise<Map<HostileCall, Timed>> {
  const longOnes = calls.filter(goesAlone);
  const others = calls.filter((call) => !goesAlone(call));
  const found = [
    ...(await together(road, others, runAll, announce, alone)),
    ...(await together(road, longOnes, runAll, announce, true)),
  ];
  return new Map([...others, ...longOnes].map((call, at) => [call, found[at] as Timed]));
}

/** How the sheet is asked, batch by batch: mostly as its page does it. */
export function wayOf(batch: number): Way {
  return WAYS[[1, 0, 2, 0][batch % 4] as 0 | 1 | 2];
}

function onSheet(sheet: SheetRoad, way: Way): (calls: readonly HostileCall[]) => Outcome[] {
  return (calls) =>
    way === "in a cell, spilling" ? sheet.runInCells(calls) : calls.map((call) => sheet.run(call, way));
}

function judged(tally: Tally, road: RoadName, way: Way | null, found: ReadonlyMap<HostileCall, Timed>): void {
  for (const [call, { outcome, milliseconds }] of found) {
    countJudged(tally, road, way, call, judge(road, call, outcome, milliseconds));
    if (milliseconds !== null) countTime(tally, road, call, milliseconds);
  }
}

export interface BatchOptions {
  /** Every call by itself and announced, to find the one that does not come back. */
  readonly oneByOne?: boolean;
  readonly announce?: Announce;
}

/** The official runtime is not asked for a name that was never registered: a host looks for it and does not come to us. */
const isKnown = ({ kinds }: HostileCall): boolean => !kinds.includes("name of no function");

export async function runCalls(
  { official, sheet }: Roads,
  plan: Plan,
  batch: number,
  calls: readonly HostileCall[],
  { oneByOne: alone = false, announce = () => {} }: BatchOptions = {},
): Promise<Tally> {
  const tally = emptyTally();
  const way = wayOf(batch);
  for (const call of calls) countCall(tally, call, functionOf(plan, call));
  const inRuntime = await mixed(
    "official runtime",
    calls.filter(isKnown),
    (some) => official.run(some),
    announce,
    alone,
  );
  const inSheet = await mixed("browser sheet", calls, onSheet(sheet, way), announce, alone);
  judged(tally, "official runtime", null, inRuntime);
  judged(tally, "browser sheet", way, inSheet);
  for (const [call, { outcome }] of inRuntime) {
    const other = inSheet.get(call)?.outcome;
    if (other === undefined || !areComparable(call, other)) continue;
    tally.compared += 1;
    const wrong = disagreement(outcome, other);
    if (wrong !== null) countFault(tally, "both roads", call, wrong);
  }
  return tally;
}

export function runBatch(roads: Roads, plan: Plan, batch: number, options?: BatchOptions): Promise<Tally> {
  return runCalls(roads, plan, batch, callsOfBatch(plan, batch), options);
}
