import { catalogue } from "../../src/functions/catalogue";
import { evaluate, FunctionError, inOrder, work } from "../../src/kernel";
import type { Answer, ArgumentInput, Entry, Table } from "../../src/kernel";

export function entryOf(name: string): Entry {
  const entry = catalogue.find((candidate) => candidate.name === name);
  if (entry === undefined) throw new Error(`the catalogue has no ${name}`);
  return entry;
}

/** What a cell would show: the answer, or the catalogue's own error. Any other error is a fault and goes on. */
export function attempt(entry: Entry, args: readonly ArgumentInput[]): Answer | FunctionError {
  try {
    return evaluate(entry, args);
  } catch (error) {
    if (error instanceof FunctionError) return error;
    throw error;
  }
}

/** The error of a call that must be refused. */
export function refusal(entry: Entry, args: readonly ArgumentInput[]): FunctionError {
  const outcome = attempt(entry, args);
  if (outcome instanceof FunctionError) return outcome;
  throw new Error(`${entry.name} answered ${JSON.stringify(outcome)} where an error was due`);
}

/** The one number of a call with arguments by name. */
export function answerOf(name: string, byName: Readonly<Record<string, unknown>>): number {
  const entry = entryOf(name);
  const answer = evaluate(entry, inOrder(entry, byName));
  if (typeof answer !== "number") throw new Error(`${name} answered ${JSON.stringify(answer)}, not a number`);
  return answer;
}

/** The rows of a call that answers with a table, its header among them. */
export function tableOf(name: string, byName: Readonly<Record<string, unknown>>): Table {
  const entry = entryOf(name);
  const answer = evaluate(entry, inOrder(entry, byName));
  if (!Array.isArray(answer)) throw new Error(`${name} answered ${JSON.stringify(answer)}, not a table`);
  return answer as Table;
}

export function refusalOf(name: string, byName: Readonly<Record<string, unknown>>): FunctionError {
  const entry = entryOf(name);
  return refusal(entry, inOrder(entry, byName));
}

/** Reads a recorded step of a call by its symbol. */
export function stepsOf(name: string, byName: Readonly<Record<string, unknown>>): (symbol: string) => number {
  const entry = entryOf(name);
  const { steps } = work(entry, inOrder(entry, byName));
  return (symbol) => {
    const step = steps.find((candidate) => candidate.symbol === symbol);
    if (step === undefined) throw new Error(`${name} records no step ${symbol}`);
    return step.value;
  };
}

/** The arguments with one of them replaced. */
export function withArgument(
  entry: Entry,
  args: readonly ArgumentInput[],
  name: string,
  input: ArgumentInput,
): ArgumentInput[] {
  return Object.keys(entry.params).map((param, index) => (param === name ? input : args[index]));
}
