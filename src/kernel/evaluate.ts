/** The one runner: arguments in, checked answer out, and on request the steps by which it came about. */
import { readOnce, type Arguments } from "./arguments";
import { blankCount } from "./coerce";
import type { Answer, ArgumentInput, Around, CellAnswer, Entry, Show } from "./define";
import { isRepeating } from "./define";
import { BEYOND_CELLS, FunctionError } from "./errors";

function guardedCell(entry: Entry, cell: unknown): CellAnswer {
  if (typeof cell === "number") {
    if (Number.isFinite(cell)) return cell === 0 ? 0 : cell;
    return new FunctionError("input", null, `${entry.name}: ${BEYOND_CELLS}`);
  }
  if (typeof cell === "string" || typeof cell === "boolean" || cell instanceof FunctionError) return cell;
  return "";
}

/** The row itself where nothing in it is to be changed, which is nearly always: a table may have a million. */
function guardedRow(entry: Entry, row: readonly CellAnswer[]): readonly CellAnswer[] {
  for (const cell of row) {
    if (!Object.is(guardedCell(entry, cell), cell)) return row.map((each) => guardedCell(entry, each));
  }
  return row;
}

/** Nothing that is not finite ever reaches a cell. */
function guarded(entry: Entry, answer: Answer): Answer {
  if (Array.isArray(answer)) {
    return (answer as readonly (readonly CellAnswer[])[]).map((row) => guardedRow(entry, row));
  }
  const cell = guardedCell(entry, answer);
  if (cell instanceof FunctionError) throw cell;
  return cell;
}

/** What surrounds one call; only functions with the word `zeros` ask how many cells it decided about. */
function aroundCall(entry: Entry, { args, reader: { around, asksZeros } }: Arguments): Around<string, string> {
  if (!asksZeros) return around;
  const names = Object.keys(entry.params);
  return { ...around, blanksMet: (argument) => blankCount(args[names.indexOf(argument)]) };
}

/** The answer for arguments that were read; `show` hears every step. */
export function compute(entry: Entry, read: Arguments, show: Show): Answer {
  return guarded(entry, entry.compute(read.given, show, aroundCall(entry, read)));
}

/** The answer for arguments that were read, without a record. */
export function computeGiven(entry: Entry, read: Arguments): Answer {
  return compute(entry, read, read.reader.silent);
}

export function evaluate(entry: Entry, args: readonly ArgumentInput[]): Answer {
  return computeGiven(entry, readOnce(entry, args));
}

/** The arguments of an example, or of any call by name, in the entry's order. */
export function inOrder(entry: Entry, byName: Readonly<Record<string, unknown>>): ArgumentInput[] {
  return Object.entries(entry.params).flatMap(([name, param]) =>
    isRepeating(param) ? ((byName[name] ?? []) as ArgumentInput[]) : [byName[name] as ArgumentInput],
  );
}
