/** Every mistake of a function, held to numbers that were worked out by hand from the words of the slip. */
import type { CellAnswer } from "../../src/kernel";
import { inOrder } from "../../src/kernel";
import { entryOf, tableOf } from "./calls";
import { expectClose } from "./closeness";

/** A slip in the entry's words, the call in which it was made, and what it then gives; NaN where it can give nothing. */
export type MistakeRow = readonly [slip: string, given: Readonly<Record<string, unknown>>, answer: number];

const CLOSE = 1e-9;

/** What COMMON_MISTAKES says that each slip gives in a call; without the slips that give no number there. */
function mistakesIn(name: string, given: Readonly<Record<string, unknown>>): ReadonlyMap<string, CellAnswer> {
  const rows = tableOf("COMMON_MISTAKES", { function_name: name, input: inOrder(entryOf(name), given) });
  return new Map(rows.slice(1).map(([slip, gives]) => [slip as string, gives as CellAnswer]));
}

/** One row: the slip is one of the function's, and gives its number; none where that is NaN. */
function expectSlip(name: string, [slip, given, answer]: MistakeRow): void {
  expect(entryOf(name).mistakes.map((mistake) => mistake.slip)).toContain(slip);
  const gives = mistakesIn(name, given).get(slip);
  if (Number.isNaN(answer)) expect(gives).toBeUndefined();
  else expectClose(gives, answer, CLOSE);
}

/** The tests of one function: each row, and that every mistake of the entry has a row with a number. */
export function expectMistakes(name: string, rows: readonly MistakeRow[]): void {
  describe(`${name}: mistakes`, () => {
    test("all of the entry's, and no others, stand in the table", () => {
      const numbered = rows.filter(([, , answer]) => !Number.isNaN(answer)).map(([slip]) => slip);
      expect([...new Set(numbered)].sort()).toEqual(
        entryOf(name)
          .mistakes.map(({ slip }) => slip)
          .sort(),
      );
    });

    test.each(rows)("%s, given %j: %d", (...row) => expectSlip(name, row));
  });
}

/** Slips that nobody can make in a call: COMMON_MISTAKES leaves them out. */
export function expectNoMistake(
  name: string,
  rows: readonly (readonly [slip: string, given: Readonly<Record<string, unknown>>])[],
): void {
  describe(`${name}: mistakes that a call leaves no room for`, () => {
    test.each(rows)("%s, given %j", (slip, given) => expectSlip(name, [slip, given, NaN]));
  });
}
