import { entryOf } from "./calls";
import { mistakesIn } from "./mistakeTable";

/** A slip that nobody can make in this call: COMMON_MISTAKES leaves it out. */
export type NoMistakeRow = readonly [slip: string, given: Readonly<Record<string, unknown>>];

export function expectNoMistake(name: string, rows: readonly NoMistakeRow[]): void {
  describe(`${name}: mistakes that a call leaves no room for`, () => {
    test.each(rows)("%s, given %j", (slip, given) => {
      expect(entryOf(name).mistakes.map((mistake) => mistake.slip)).toContain(slip);
      expect([...mistakesIn(name, given).keys()]).not.toContain(slip);
    });
  });
}
