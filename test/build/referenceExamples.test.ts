/** What a reader types from the reference gives what the page says. */
import * as functions from "../../src/functions";
import { catalogue } from "../../src/functions/catalogue";
import { factsOf } from "../../tools/reference/facts";
import { createHeadlessSheet } from "../rig/sheetEngine";

const { open } = createHeadlessSheet(functions);

const examples = catalogue.flatMap((entry) => {
  const help = functions.catalogue.find(({ name }) => name === entry.name)!;
  const facts = factsOf(entry, help);
  return entry.examples.map(({ gives, within }, at) => ({
    title: `${entry.name}, example ${at + 1}`,
    formula: facts.examples[at]!.formula,
    gives,
    within,
    shown: facts.examples[at]!,
  }));
});

/** Far below one another: a table takes the cells right of it and below. */
const ROWS_EACH = 60;
const addressOf = (at: number): string => `A${at * ROWS_EACH + 1}`;

test("each formula, typed as it stands there, gives the answer of its example", () => {
  const sheet = open(Object.fromEntries(examples.map(({ formula }, at) => [addressOf(at), formula])));
  const faults = examples.flatMap(({ title, formula, gives, within }, at) => {
    const found = sheet.value(addressOf(at));
    const expected: unknown = Array.isArray(gives) ? (gives as readonly (readonly unknown[])[])[0]?.[0] : gives;
    const isClose =
      typeof expected === "number" && typeof found === "number"
        ? Math.abs(found - expected) <= (within ?? 1e-9 * Math.max(1, Math.abs(expected)))
        : found === expected || (expected === "" && found === null);
    return isClose ? [] : [`${title}: ${formula} gives ${String(found)}, not ${String(expected)}`];
  });
  expect(faults).toEqual([]);
  expect(examples.length).toBeGreaterThan(200);
});

/** Whether the page's text is the number, to six digits, or tells it as on the calendar. */
function tells(text: string, number: number): boolean {
  if (/^\d{4}-\d\d-\d\d$|^\d\d:\d\d/.test(text)) return true;
  return Math.abs(Number.parseFloat(text) - number) <= 1e-5 * Math.abs(number);
}

test("the answer that the page prints is the example's, each cell of a table as well", () => {
  const faults = examples.flatMap(({ title, gives, shown }) => {
    const rows = Array.isArray(gives) ? (gives as readonly (readonly unknown[])[]) : [[gives]];
    const texts = Array.isArray(gives) ? shown.rows : [[shown.answer]];
    return rows.flatMap((row, down) =>
      row.flatMap((cell, across) => {
        const text = texts[down]?.[across] ?? "";
        const isTold = typeof cell === "number" ? tells(text, cell) : text === String(cell).replace(/^true$/, "TRUE");
        return isTold ? [] : [`${title}: ${text} for ${String(cell)}`];
      }),
    );
  });
  expect(faults).toEqual([]);
});
