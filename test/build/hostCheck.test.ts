/** The workbook by which a person with the real host sees at one look whether every function answers there. */
import * as functions from "../../src/functions";
import { hostCheck } from "../../tools/hostCheck/workbook";
import { createHeadlessSheet } from "../rig/sheetEngine";

const workbook = hostCheck();
const examples = workbook.sheets.find(({ name }) => name === "Examples")!;
const { open } = createHeadlessSheet(functions);

test("every function of the catalogue is in it, and five calls that must be refused", () => {
  const named = Object.entries(examples.cells)
    .filter(([address]) => address.startsWith("A"))
    .map(([, cell]) => ("value" in cell ? cell.value : ""));
  for (const { name } of functions.catalogue) expect(named).toContain(name);
  expect(named.filter((name) => name === "must be refused")).toHaveLength(5);
});

test("in the browser sheet all pass", () => {
  expect(open(workbook).value("Examples!A2")).toMatch(/^All \d{3,} pass$/);
});

test("an answer that differs is a FAIL, and the first line counts it", () => {
  const sheet = open(workbook);
  sheet.set("Examples!D5", 1234);
  expect(sheet.value("Examples!F5")).toBe("FAIL");
  expect(sheet.value("Examples!A2")).toMatch(/^\d+ of \d+ pass: look for FAIL in column F$/);
});

test("a function that is not there is a FAIL, not an error in the verdict", () => {
  const sheet = open(workbook);
  sheet.set("Examples!C5", "=CANYARD.NOT_THERE(1)");
  expect(sheet.value("Examples!F5")).toBe("FAIL");
});
