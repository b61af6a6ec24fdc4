/** What may come of a call and what may not. */
import { find } from "../../src/functions";
import { isRepeating, isTable } from "../../src/kernel";
import { cellsOf, isCellError, type Cell, type CellError, type HostileCall, type Outcome } from "./call";
import { saidByEngine, type RoadName } from "./engineSentences";
import { passesOn } from "./passedErrors";
import { textFault } from "./texts";

export type Verdict = "answer" | "our refusal" | "error passed on" | "sentence of the engine";

export interface Judged {
  readonly verdict: Verdict | null;
  readonly faults: readonly string[];
}

/** Generous, and far above what any call of an ordinary size takes. */
const CEILING = 1_000;
const LONG_CEILING = 10_000;

const LONGEST_ANSWER = 32_767;

type Fault = string | null;

function cellFault(call: HostileCall, cell: Cell): Fault {
  if (isCellError(cell)) return errorFault(call, cell);
  if (cell === undefined || cell === null) return `a cell of the answer is ${cell}`;
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) return `a cell of the answer is ${cell}`;
    return Object.is(cell, -0) ? "a cell of the answer is -0" : null;
  }
  if (typeof cell === "boolean") return null;
  if (typeof cell !== "string") return `a cell of the answer is a ${typeof cell}`;
  if (cell.length > LONGEST_ANSWER) return `a text of ${cell.length} letters, more than a cell holds`;
  const fault = textFault(call, cell);
  return fault === null ? null : `an answer ${fault}`;
}

/** What the names of functions may be that an error begins with: the call's own, or of the one that it asked about. */
function beginsWell(call: HostileCall, message: string): boolean {
  const name = /^([A-Z][A-Z0-9_]*): /.exec(message)?.[1];
  if (name === call.name) return true;
  const repeats = Object.values(find(call.name)?.params ?? {}).some(isRepeating);
  return name !== undefined && repeats && find(name) !== undefined;
}

function errorFault(call: HostileCall, { code, message }: CellError): Fault {
  if (message === "") return `an error without our text: ${code}`;
  if (message.includes("could not be worked out")) return `an exception inside: ${message}`;
  if (!beginsWell(call, message)) return `an error that does not begin with the function's name: ${message}`;
  if (!/^[A-Z0-9_]+: \S+ \S+ \S+/.test(message)) return `an error that is no sentence: ${message}`;
  const fault = textFault(call, message);
  return fault === null ? null : `an error ${fault}`;
}

function shapeFault(call: HostileCall, rows: unknown): Fault {
  const entry = find(call.name);
  if (entry === undefined) return "an answer of a function that does not exist";
  if (Array.isArray(rows) !== isTable(entry.result)) return "an answer of another shape than the entry says";
  if (!Array.isArray(rows)) return null;
  const lengths = new Set(rows.map((row) => (Array.isArray(row) ? row.length : -1)));
  return lengths.size === 1 && !lengths.has(0) && !lengths.has(-1)
    ? null
    : "a table with uneven rows, or without cells";
}

function answerFaults(call: HostileCall, value: unknown): string[] {
  const shape = shapeFault(call, value);
  const cells: unknown[] = Array.isArray(value) ? (value as unknown[]).flat() : [value];
  const wrong = new Set(cells.map((cell) => cellFault(call, cell)).concat(shape));
  const swallowed =
    passesOn(call) && !call.kinds.includes("too many arguments") ? "an error in an argument was swallowed" : null;
  return [...wrong.add(swallowed)].filter((fault) => fault !== null);
}

function errorJudged(road: RoadName, call: HostileCall, error: CellError): Judged {
  if (saidByEngine(road, call, error)) return { verdict: "sentence of the engine", faults: [] };
  if (passesOn(call, road, error)) return { verdict: "error passed on", faults: [] };
  const fault = errorFault(call, error);
  return fault === null ? { verdict: "our refusal", faults: [] } : { verdict: null, faults: [fault] };
}

function judgedOutcome(road: RoadName, call: HostileCall, outcome: Outcome): Judged {
  switch (outcome.kind) {
    case "thrown":
      return { verdict: null, faults: [`thrown raw: ${outcome.text}`] };
    case "error":
      return errorJudged(road, call, outcome);
    case "answer": {
      const faults = answerFaults(call, outcome.value);
      return { verdict: faults.length === 0 ? "answer" : null, faults };
    }
  }
}

/** How long a call may take, in milliseconds. */
export function ceilingOf({ args, kinds }: HostileCall): number {
  const isLong = kinds.includes("very long ranges") || cellsOf(args).length > 10_000;
  return isLong ? LONG_CEILING : CEILING;
}

/** `milliseconds` where the call was timed by itself. */
export function judge(road: RoadName, call: HostileCall, outcome: Outcome, milliseconds: number | null): Judged {
  const { verdict, faults } = judgedOutcome(road, call, outcome);
  const isSlow = milliseconds !== null && milliseconds > ceilingOf(call);
  return { verdict, faults: isSlow ? [...faults, `slow: ${Math.round(milliseconds)} ms`] : faults };
}
