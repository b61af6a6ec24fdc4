/** Finding another function of the catalogue by the name in a cell, for the functions that ask about functions. */
import { FunctionError, shownValue, type Entry } from "../../../kernel";

export type LookUp = (name: string) => Entry | undefined;

/** What sheets put before a name: with a dot, or with an underscore where a name may hold no dot. */
const PREFIX = /^CANYARD[._]/;

/** The name as the catalogue has it: trimmed, in capitals, without the prefix that sheets put before it. */
export function nameOf(asked: string): string {
  return asked.trim().toUpperCase().replace(PREFIX, "");
}

/** How many letters must be put in, taken out or changed to make one word of the other. */
export function editDistance(from: string, to: string): number {
  let before = Array.from({ length: to.length + 1 }, (_cell, index) => index);
  for (let row = 1; row <= from.length; row += 1) {
    const now = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const changed = (before[column - 1] as number) + (from[row - 1] === to[column - 1] ? 0 : 1);
      now.push(Math.min(changed, (before[column] as number) + 1, (now[column - 1] as number) + 1));
    }
    before = now;
  }
  return before[to.length] as number;
}

/** No name is longer; of a longer text the start is looked at, so that a cell full of text costs no second. */
const LONGEST_NAME = 40;

/** The names nearest to the one asked, nearest first, in the order given where two are as near. */
export function nearest(asked: string, names: readonly string[], count: number): string[] {
  const start = asked.slice(0, LONGEST_NAME);
  return names
    .map((name) => ({ name, distance: editDistance(start, name) }))
    .sort((a, b) => a.distance - b.distance)
    .slice(0, count)
    .map(({ name }) => name);
}

/** "A", "A or B", "A, B or C". */
export function either(words: readonly string[]): string {
  const last = words[words.length - 1] ?? "";
  return words.length < 2 ? last : `${words.slice(0, -1).join(", ")} or ${last}`;
}

const NAMES_OFFERED = 3;

/** The error for a function that does not exist; it offers the names that come nearest. */
export function noSuchFunction(ownName: string, asked: string, names: readonly string[]): FunctionError {
  const offered = either(nearest(nameOf(asked), names, NAMES_OFFERED));
  const message = `function_name is ${shownValue(asked)}; there is no function ${nameOf(asked).slice(0, LONGEST_NAME)}: did you mean ${offered}?`;
  return new FunctionError("input", "function_name", `${ownName}: ${message}`);
}
