import { evaluate, FunctionError, inOrder, readArguments, unitConstant } from "../../src/kernel";
import type { ArgumentInput, Entry } from "../../src/kernel";

type AnyMistake = Entry["mistakes"][number];

/** What a slip leads to for these arguments; null where it leads to no number. */
export function mistakeAnswer(entry: Entry, mistake: AnyMistake, args: readonly ArgumentInput[]): number | null {
  const { given, system } = readArguments(entry, args);
  try {
    const answer =
      "instead" in mistake
        ? evaluate(entry, inOrder(entry, asInputs({ ...given, ...mistake.instead(given) })))
        : mistake.answer(given, constantsOf(entry, system ?? "metric"), evaluate(entry, args) as number);
    return typeof answer === "number" && Number.isFinite(answer) ? answer : null;
  } catch (error) {
    if (error instanceof FunctionError) return null;
    throw error;
  }
}

function constantsOf(entry: Entry, system: "us" | "metric"): Record<string, number> {
  const constants = Object.entries(entry.unitConstants ?? {});
  return Object.fromEntries(constants.map(([symbol, name]) => [symbol, unitConstant(name, system)]));
}

/** Numbers that were read from a range go back into one. */
function asInputs(given: Readonly<Record<string, unknown>>): Record<string, unknown> {
  const inputs = Object.entries(given).map(([name, value]) => [name, isPlainList(value) ? [value] : value]);
  return Object.fromEntries(inputs);
}

function isPlainList(value: unknown): boolean {
  return Array.isArray(value) && !value.some(Array.isArray);
}
