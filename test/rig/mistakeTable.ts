/** Every mistake of a function, held to numbers that were worked out by hand from the words of the slip. */
import type { CellAnswer } from "../../src/kernel";
import { inOrder } from "../../src/kernel";
import { entryOf, tableOf } from "./calls";
import { expectClose } from "./closeness";

/** A slip in the entry's words, the call in which it was made, and what it then gives; NaN where it can give nothing. */
export type MistakeRow = readonly [slip: string, given: Readonly<Record<string, unknown>>, answer: number];

const CLOSE = 1e-9;

/** What COMMON_MISTAKES says that each slip gives in a call; without the slips that give no number there. */
export function mistakesIn(name: string, given: Readonly<Record<string, unknown>>): ReadonlyMap<string, CellAnswer> {
  const rows = tableOf("COMMON_MISTAKES", { function_name: name, input: inOrder(entryOf(name), given) });
  return new Map(rows.slice(1).map(([slip, gives]) => [slip as string, gives as CellAnswer]));
}

/** The tests of one function: each row, and that every mistake of the entry has a row. */
export function expectMistakes(name: string, rows: readonly MistakeRow[]): void {
  describe(`${name}: mistakes`, () => {
    test("all of the entry's, and no others, stand in the table", () => {
      const numbered = rows.filter(([, , answer]) => !Number.isNaN(answer)).map(([slip]) => slip);
      const inTable = [...new Set(numbered)].sort();
      expect(inTable).toEqual(
        entryOf(name)
          .mistakes.map(({ slip }) => slip)
          .sort(),
      );
    });

    test.each(rows)("%s, given %j: %d", (slip, given, answer) => {
      expect(entryOf(name).mistakes.map((mistake) => mistake.slip)).toContain(slip);
      const gives = mistakesIn(name, given).get(slip);
      if (Number.isNaN(answer)) expect(gives).toBeUndefined();
      else expectClose(gives, answer, CLOSE);
    });
  });
}
