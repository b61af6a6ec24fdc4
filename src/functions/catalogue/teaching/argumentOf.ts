/** What is known of one argument of a function, or of its answer, for the functions that ask about functions. */
import {
  FunctionError,
  isScalar,
  isTable,
  shownValue,
  usualOf,
  type Entry,
  type QuantityName,
  type UsualRange,
} from "../../../kernel";
import { either } from "./lookUp";

export interface ArgumentAsked {
  /** Null for words, texts and cells, which have no unit. */
  readonly quantity: QuantityName | null;
  readonly usual: UsualRange | undefined;
}

function columnsOf(entry: Entry): readonly { readonly name: string; readonly quantity: QuantityName | "text" }[] {
  return isTable(entry.result) ? entry.result.table : [];
}

function ofAnswer(entry: Entry): ArgumentAsked {
  return { quantity: isScalar(entry.result) ? entry.result.quantity : null, usual: usualOf(entry, "") };
}

/** An argument by its name in any case; "" is the answer; where that is a table, one of its columns by name. */
export function argumentAsked(ownName: string, entry: Entry, asked: string): ArgumentAsked {
  const name = asked.toLowerCase();
  const columns = columnsOf(entry);
  if (name === "" && columns.length === 0) return ofAnswer(entry);
  const param = entry.params[name];
  if (param !== undefined)
    return { quantity: "quantity" in param ? param.quantity : null, usual: usualOf(entry, name) };
  const column = columns.find((candidate) => candidate.name.toLowerCase() === name);
  if (column !== undefined) return { quantity: column.quantity === "text" ? null : column.quantity, usual: undefined };
  const known = [...Object.keys(entry.params), ...columns.map((candidate) => candidate.name)];
  const blank = columns.length === 0 ? ", or blank for its answer" : "";
  const itMust =
    known.length === 0
      ? `it must be blank: ${entry.name} has no arguments`
      : `it must be one of ${entry.name}: ${either(known)}${blank}`;
  throw new FunctionError(
    "input",
    "argument",
    `${ownName}: argument is ${shownValue(asked === "" ? null : asked)}; ${itMust}`,
  );
}
