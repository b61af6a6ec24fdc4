/** A call of another function by its name, for the functions that show, mark or explain one. */
import {
  FunctionError,
  isScalar,
  readArguments,
  work,
  type Arguments,
  type ArgumentInput,
  type Entry,
  type Working,
} from "../../../kernel";
import { noSuchFunction, type LookUp } from "./lookUp";

/** The entry of that name, or the error that offers the nearest ones. */
export function entryNamed(ownName: string, asked: string, find: LookUp, names: readonly string[]): Entry {
  const entry = find(asked);
  if (entry === undefined) throw noSuchFunction(ownName, asked, names);
  return entry;
}

export interface WorkedCall {
  readonly entry: Entry;
  readonly read: Arguments;
  readonly working: Working;
  readonly right: number;
}

/** A call with one number as its answer; its own error comes back as it is. */
export function workedNumber(ownName: string, entry: Entry, input: readonly ArgumentInput[]): WorkedCall {
  if (!isScalar(entry.result)) {
    const message = `${ownName}: function_name is ${entry.name}, which has no single number as its answer; choose one that has`;
    throw new FunctionError("input", "function_name", message);
  }
  const working = work(entry, input);
  return { entry, read: readArguments(entry, input), working, right: working.answer as number };
}
