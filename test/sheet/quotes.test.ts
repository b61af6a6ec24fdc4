import * as functions from "../../src/functions";
import { withoutDoubledQuotes } from "../../src/sheet/quotes";
import { createHeadlessSheet } from "../rig/sheetEngine";

const { open } = createHeadlessSheet(functions);

test.each([
  ['="say ""yes"""', 'say "yes"'],
  ['=""""', '"'],
  ['=""', ""],
  ['="plain" & "er"', "plainer"],
  ['=IF("""" = CHAR(34), "a", "b")', "a"],
])("%s is worked out as %s", (formula, value) => {
  expect(open({ A1: formula }).value("A1")).toBe(value);
});

test("a formula without such a text stays as it is", () => {
  const formula = `=IF('Tom''s "yard"'!A1="x", "", A2)`;
  expect(withoutDoubledQuotes(formula)).toBe(formula);
});

test("what is written into a cell, or asked of the sheet, is read so as well", () => {
  const sheet = open({ A1: 1 });
  sheet.set("B1", '="a ""b"""');
  expect(sheet.value("B1")).toBe('a "b"');
  expect(sheet.sheet.adapter.evaluate('"a ""b"""', "Sheet1")).toEqual([['a "b"']]);
});
