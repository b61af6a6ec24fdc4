/** The known mistakes of a function, each held to a number that its words and the published formula give by hand. */
import { evaluate, inOrder, type Table } from "../../src/kernel";
import { entryOf } from "./calls";
import { isClose } from "./closeness";

/** `answer` is NaN where the slip cannot be made on these inputs, so that COMMON_MISTAKES leaves it out. */
export type MistakeRow = readonly [slip: string, given: Readonly<Record<string, unknown>>, answer: number];

const CLOSE = 1e-9;

/** What COMMON_MISTAKES shows for a slip on these inputs; NaN where it leaves it out. */
function shownFor(name: string, slip: string, given: Readonly<Record<string, unknown>>): unknown {
  const inputs = inOrder(entryOf(name), given);
  const [, ...rows] = evaluate(entryOf("COMMON_MISTAKES"), [name, ...inputs]) as Table;
  const row = rows.find(([words]) => words === slip);
  return row === undefined ? NaN : row[1];
}

/** Registers the tests of one function's mistakes: each row by itself, and that the rows hold all mistakes and no other. */
export function expectMistakes(name: string, rows: readonly MistakeRow[]): void {
  describe(`${name}: what its mistakes come to`, () => {
    test("each of them is held to a number, and every one of the table is one of them", () => {
      const slips = entryOf(name).mistakes.map(({ slip }) => slip);
      const held = rows.filter(([, , answer]) => !Number.isNaN(answer)).map(([slip]) => slip);
      expect([...new Set(held)].sort()).toEqual([...slips].sort());
      for (const [slip] of rows) expect(slips).toContain(slip);
    });

    test.each(rows.map((row) => [...row]))("%s, on %j: %d", (slip, given, answer) => {
      const shown = shownFor(name, slip, given);
      if (Number.isNaN(answer)) expect(shown).toBeNaN();
      else if (!isClose(shown, answer, CLOSE)) expect(shown).toBe(answer);
    });
  });
}
