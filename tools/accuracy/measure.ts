/** Every function of the catalogue measured: random calls, worked twice, the worst one kept. */
import { isScalar, type Answer, type Entry, type Step, type Table } from "../../src/kernel";
import { callText } from "../../test/rig/catalogueExamples";
import { Decisions, waysToTurn } from "./decisions";
import { drawnCalls, type Draw } from "./draws";
import { judge, LIMIT, type Judged } from "./judge";
import { replay, type Replayed } from "./replay";

export interface Worst extends Judged {
  readonly call: string;
  /** The step that gave the number: of a scalar its answer, of a table one of its cells. */
  readonly step: string;
}

export interface Measured {
  readonly name: string;
  readonly isScalar: boolean;
  /** Calls of which a number was compared, and numbers compared in them. */
  readonly calls: number;
  readonly numbers: number;
  /** Calls that agree once a decision within rounding of its edge is turned. */
  readonly atAnEdge: number;
  /** Calls whose answer no recorded step gave. */
  readonly withoutStep: number;
  /** Numbers that should be 0 and are a last digit of something. */
  readonly dust: number;
  readonly worst: Worst | null;
  /** Steps taken as they were recorded, having no formula. */
  readonly asRecorded: readonly Step[];
}

function numbersOf(answer: Answer): ReadonlySet<unknown> {
  return new Set(Array.isArray(answer) ? (answer as Table).flat() : [answer]);
}

/** The steps whose numbers reach a cell: of one answer the last, of a table every one that stands in it. */
function answerSteps(entry: Entry, { working: { steps, answer } }: Draw): ReadonlySet<Step> {
  const cells = numbersOf(answer);
  const candidates = isScalar(entry.result) ? steps.slice(-1) : steps;
  return new Set(candidates.filter(({ value }) => typeof value === "number" && cells.has(value === 0 ? 0 : value)));
}

interface Compared extends Judged {
  readonly step: Step;
}

function compared(entry: Entry, draw: Draw, decisions: Decisions): Compared[] {
  const wanted = answerSteps(entry, draw);
  return replay(entry, draw.working, decisions)
    .filter(({ step }) => wanted.has(step) && step.formula !== "")
    .map(({ step, big }: Replayed) => ({ step, ...judge(step.value, big) }));
}

function isWithin(numbers: readonly Judged[]): boolean {
  return numbers.every(({ share }) => share <= LIMIT);
}

interface CallMeasured {
  readonly numbers: readonly Compared[];
  readonly atAnEdge: boolean;
}

/** Where the answers differ, decisions that might have gone the other way are turned before it counts as an error. */
export function measuredCall(entry: Entry, draw: Draw): CallMeasured {
  const decisions = new Decisions();
  const numbers = compared(entry, draw, decisions);
  if (isWithin(numbers)) return { numbers, atAnEdge: false };
  for (const way of waysToTurn(decisions.close)) {
    const turned = compared(entry, draw, new Decisions(way));
    if (isWithin(turned)) return { numbers: turned, atAnEdge: true };
  }
  return { numbers, atAnEdge: false };
}

function worse(entry: Entry, draw: Draw, numbers: readonly Compared[], found: Worst | null): Worst | null {
  let worst = found;
  for (const { step, ...judged } of numbers) {
    if (worst !== null && !(judged.share > worst.share)) continue;
    worst = { ...judged, call: callText(entry, draw.args), step: `${step.symbol} = ${step.formula}` };
  }
  return worst;
}

export function measured(entry: Entry, callsWanted: number): Measured {
  const asRecorded = new Map<string, Step>();
  const counts = { calls: 0, numbers: 0, atAnEdge: 0, withoutStep: 0, dust: 0 };
  let worst: Worst | null = null;
  for (const draw of drawnCalls(entry, callsWanted)) {
    const { numbers, atAnEdge } = measuredCall(entry, draw);
    for (const step of draw.working.steps) if (step.formula === "") asRecorded.set(step.symbol, step);
    counts.numbers += numbers.length;
    counts.dust += numbers.filter(({ error }) => error === Infinity).length;
    if (numbers.length === 0) counts.withoutStep += 1;
    else if (atAnEdge) counts.atAnEdge += 1;
    else counts.calls += 1;
    worst = worse(entry, draw, numbers, worst);
  }
  return {
    name: entry.name,
    isScalar: isScalar(entry.result),
    ...counts,
    worst,
    asRecorded: [...asRecorded.values()],
  };
}
