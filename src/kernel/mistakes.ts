/** What a slip leads to on the numbers of a call. */
import type { Arguments } from "./arguments";
import type { Entry } from "./define";
import { FunctionError } from "./errors";
import { computeGiven } from "./evaluate";
import { unitConstant } from "./units";

export type AnyMistake = Entry["mistakes"][number];

function constantsOf(entry: Entry, { system }: Arguments): Record<string, number> {
  const constants = Object.entries(entry.unitConstants ?? {});
  return Object.fromEntries(constants.map(([symbol, name]) => [symbol, unitConstant(name, system ?? "metric")]));
}

function answerOf(entry: Entry, read: Arguments, mistake: AnyMistake, right: number): unknown {
  if ("answer" in mistake) return mistake.answer(read.given, constantsOf(entry, read), right);
  const altered = { ...read.given, ...mistake.instead(read.given) } as Arguments["given"];
  return computeGiven(entry, { ...read, given: altered });
}

/** The answer to which a slip leads for these arguments; null where it leads to no number. */
export function mistakeAnswer(entry: Entry, read: Arguments, mistake: AnyMistake, right: number): number | null {
  try {
    const answer = answerOf(entry, read, mistake, right);
    return Number.isFinite(answer) ? (answer as number) : null;
  } catch (error) {
    if (error instanceof FunctionError) return null;
    throw error;
  }
}
