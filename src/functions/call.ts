/** Calling the catalogue: a name, its arguments, its answer. What every host comes down to. */
import { evaluate, FunctionError, type Answer, type ArgumentInput, type Entry } from "../kernel";
import { find } from "./catalogue";

export const NAMESPACE = "CANYARD";

/** The entry of a name, or the error that there is none. */
export function entryOf(name: string): Entry {
  const entry = find(name);
  if (entry === undefined) throw new FunctionError("input", null, `${NAMESPACE}: there is no function ${name}`);
  return entry;
}

/**
 * The answer of a function for arguments in the catalogue's order; a range is an array of rows.
 * @throws FunctionError with `code` "#VALUE!" or "#N/A" and a `message` that names the argument; PassedError for an
 * error that stood in a cell.
 */
export function call(name: string, args: readonly ArgumentInput[]): Answer {
  return evaluate(entryOf(name), args);
}
