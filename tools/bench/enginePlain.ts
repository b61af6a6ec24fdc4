/** A function's plain-spreadsheet equivalent, as its own working gives it, on the cells of a row. */
import { find } from "../../src/functions";
import { inOrder, plainFormula, work } from "../../src/kernel";

/** `given` decides the branch, as an example would; `cells` says where each argument stands, the others stay as given. */
export function plainIn(
  name: string,
  given: Readonly<Record<string, unknown>>,
  cells: Readonly<Record<string, string>>,
): string {
  const entry = find(name);
  if (entry === undefined) throw new Error(`there is no function ${name}`);
  const working = work(entry, inOrder(entry, given));
  const formula = plainFormula(entry, working, (argument) => cells[argument] ?? String(given[argument]));
  if (formula === null) throw new Error(`${name} has no plain equivalent`);
  return formula;
}
