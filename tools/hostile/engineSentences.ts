/** What the sheet's engine says by itself, before a function of ours is asked: a short list, and when each may be said. */
import { find } from "../../src/functions";
import { isOptional, isRepeating } from "../../src/kernel";
import type { CellError, HostileCall } from "./call";

export type RoadName = "official runtime" | "browser sheet";

interface Sentence {
  readonly says: RegExp;
  /** For people. */
  readonly words: string;
  readonly code: string;
  mayBeSaidOf(call: HostileCall): boolean;
}

/** How many arguments stand in the formula: what is left out at the end does not. */
export function writtenCount({ args }: HostileCall): number {
  return args.reduce<number>((count, input, at) => (input === undefined ? count : at + 1), 0);
}

function hasWrongCount(call: HostileCall): boolean {
  const params = find(call.name)?.params ?? {};
  const all = Object.values(params);
  const repeats = all.some(isRepeating);
  const needed = all.filter((param) => isRepeating(param) || !isOptional(param) || repeats).length;
  const count = writtenCount(call);
  return count < needed || (count > all.length && !repeats);
}

export const SENTENCES: readonly Sentence[] = [
  {
    says: /^Invalid number of arguments for the CANYARD\.[A-Z0-9_]+ function\. Expected \d+ (minimum|maximum), but got \d+ instead\.$/,
    words:
      "Invalid number of arguments for the CANYARD.NAME function. Expected N minimum (or maximum), but got N instead.",
    code: "#BAD_EXPR",
    mayBeSaidOf: hasWrongCount,
  },
  {
    says: /^Unknown function: "CANYARD\.[A-Z0-9_]+"$/,
    words: 'Unknown function: "CANYARD.NAME"',
    code: "#NAME?",
    mayBeSaidOf: ({ name }) => find(name) === undefined,
  },
];

export function saidByEngine(road: RoadName, call: HostileCall, { code, message }: CellError): boolean {
  if (road !== "browser sheet") return false;
  return SENTENCES.some((one) => one.code === code && one.says.test(message) && one.mayBeSaidOf(call));
}
