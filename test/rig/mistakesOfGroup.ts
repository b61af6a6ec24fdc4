/** The mistake tables of a whole group: no function of it that names mistakes may go without one. */
import { catalogue } from "../../src/functions/catalogue";
import { expectMistakes, type MistakeRow } from "./mistakeTable";

export function expectMistakesOfGroup(group: string, tables: Readonly<Record<string, readonly MistakeRow[]>>): void {
  test(`every function of "${group}" that names mistakes has its table`, () => {
    const named = catalogue.filter((entry) => entry.group === group && entry.mistakes.length > 0);
    expect(Object.keys(tables).sort()).toEqual(named.map(({ name }) => name).sort());
  });

  for (const [name, rows] of Object.entries(tables)) expectMistakes(name, rows);
}
