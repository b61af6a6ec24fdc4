/**
 * A function's known mistakes, held one by one to numbers that a test worked out from the words of the slip and the
 * published formula. They come from COMMON_MISTAKES, as an instructor gets them.
 */
import { inOrder } from "../../src/kernel";
import { entryOf, tableOf } from "./calls";
import { expectClose } from "./closeness";

/** A slip in its own words, a call by the names of its arguments, and the number; NaN where the slip gives none. */
export type MistakeRow = readonly [slip: string, given: Readonly<Record<string, unknown>>, answer: number];

/** Two ways of working out one number differ by the rounding of their steps. */
const REORDERED = 1e-9;

/** What COMMON_MISTAKES gives for the slip; undefined where it leaves it out. */
function answerOfSlip(name: string, slip: string, given: MistakeRow[1]): unknown {
  const input = inOrder(entryOf(name), given);
  const found = tableOf("COMMON_MISTAKES", { function_name: name, input }).filter(([words]) => words === slip);
  expect(found.length).toBeLessThanOrEqual(1);
  return found[0]?.[1];
}

/** Registers the tests of one function: the table holds every mistake of its entry and no other, each with its number. */
export function expectMistakes(name: string, rows: readonly MistakeRow[]): void {
  describe(`${name}: known mistakes`, () => {
    test("are those of the table, each with a number", () => {
      const numbered = rows.filter(([, , answer]) => Number.isFinite(answer)).map(([slip]) => slip);
      expect([...new Set(numbered)].sort()).toEqual(
        entryOf(name)
          .mistakes.map(({ slip }) => slip)
          .sort(),
      );
    });

    for (const [slip, given, answer] of rows) {
      test(`${slip}: ${JSON.stringify(given)}`, () => {
        expect(entryOf(name).mistakes.map((mistake) => mistake.slip)).toContain(slip);
        const gives = answerOfSlip(name, slip, given);
        if (Number.isNaN(answer)) expect(gives).toBeUndefined();
        else expectClose(gives, answer, REORDERED);
      });
    }
  });
}
