/** The mark in built-in functions is the mark of CHECK_ANSWER, whatever is typed. */
import fc from "fast-check";
import * as functions from "../../src/functions";
import { plainMark } from "../../src/workbooks/starters/shared/plainMark";
import { createHeadlessSheet } from "../rig/sheetEngine";

const { open } = createHeadlessSheet(functions);

/** Typed with few digits, around the right answer, as students do. */
const typed = fc.record({
  right: fc.double({ min: 0.02, max: 5000, noNaN: true }),
  off: fc.oneof(
    fc.constantFrom(0, 0.005, -0.02, 0.02, 0.05, -0.1, 0.1),
    fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  ),
  digits: fc.integer({ min: 1, max: 5 }),
  relative: fc.constantFrom(0.005, 0.01, 0.02),
  absolute: fc.constantFrom(0, 0.5),
});

test("500 typed answers get the same mark by both", () => {
  const cells: Record<string, string | number> = {};
  const samples = fc.sample(typed, { numRuns: 500, seed: 8 });
  samples.forEach(({ right, off, digits, relative, absolute }, at) => {
    const row = at + 1;
    cells[`A${row}`] = Number((right * (1 + off)).toPrecision(digits));
    cells[`B${row}`] = right;
    cells[`C${row}`] = `=CANYARD.CHECK_ANSWER(A${row}, B${row}, ${relative}, ${absolute})`;
    cells[`D${row}`] = `=${plainMark(`A${row}`, `B${row}`, String(relative), String(absolute))}`;
  });
  const sheet = open(cells);
  const found = samples.map((_sample, at) => sheet.value(`Sheet1!C${at + 1}`));
  expect(samples.map((_sample, at) => sheet.value(`Sheet1!D${at + 1}`))).toEqual(found);
  expect(new Set(found)).toEqual(new Set(["right", "close", "wrong"]));
});

test.each([
  ["a blank", ""],
  ["0", 0],
  ["a number with its unit", "2.75 min"],
  ["a single digit that is rounded", 3],
  ["two digits that are rounded", 2.8],
])("%s gets the same mark by both", (_what, answer) => {
  const sheet = open({
    A1: answer,
    B1: 2.75,
    C1: "=CANYARD.CHECK_ANSWER(A1, B1, 0.001, 0)",
    D1: `=${plainMark("A1", "B1", "0.001", "0")}`,
  });
  expect(sheet.value("Sheet1!D1")).toBe(sheet.value("Sheet1!C1"));
});
