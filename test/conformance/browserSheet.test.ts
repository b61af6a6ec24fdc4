import * as functions from "../../src/functions";
import { createHeadlessSheet, type HeadlessSheet } from "../rig/sheetEngine";
import { expectOutcome, type Outcome } from "./expectOutcome";
import { conformance, type Given, type Row } from "./table";

const FIRST_ROW = 20;
const WIDTH = 4;
const ERRORS: Record<string, string> = { "#N/A": "=NA()", "#DIV/0!": "=1/0" };

function column(index: number): string {
  return String.fromCharCode("A".charCodeAt(0) + index);
}

type Cells = Record<string, string | number | boolean>;

/** The engine takes no exponent as typed, so a huge number is written as a product. */
function typed(value: number | string | boolean): number | string | boolean {
  const [digits, exponent] = typeof value === "number" ? String(value).split("e+") : [];
  return exponent === undefined ? value : `=${digits} * 10^${exponent}`;
}

/** Puts an argument into cells of its own and gives the reference that stands in the formula. */
function place(given: Given, index: number, cells: Cells): string {
  const first = index * WIDTH;
  const address = `${column(first)}${FIRST_ROW}`;
  if ("leftOut" in given) return "";
  if ("cell" in given) cells[address] = typed(given.cell);
  if ("errorCell" in given) cells[address] = ERRORS[given.errorCell] as string;
  if (!("block" in given)) return address;
  given.block.forEach((row, at) =>
    row.forEach((value, across) => {
      if (value !== null) cells[`${column(first + across)}${FIRST_ROW + at}`] = value;
    }),
  );
  const [top] = given.block;
  return `${address}:${column(first + (top?.length ?? 1) - 1)}${FIRST_ROW + given.block.length - 1}`;
}

function cellOf(sheet: HeadlessSheet, address: string): unknown {
  const value = sheet.value(address);
  const message = sheet.message(address);
  return message === null ? value : { code: value, message };
}

function readTable(sheet: HeadlessSheet, rows: number, columns: number): unknown[][] {
  return Array.from({ length: rows }, (_row, row) =>
    Array.from({ length: columns }, (_column, across) => cellOf(sheet, `${column(across)}${row + 1}`)),
  );
}

function outcomeOf({ name, given, gives }: Row): Outcome {
  const cells: Cells = {};
  const references = given.map((each, index) => place(each, index, cells));
  while (references[references.length - 1] === "") references.pop();
  cells["A1"] = `=CANYARD.${name}(${references.join(", ")})`;
  const sheet = createHeadlessSheet(functions).open(cells);
  const value = sheet.value("A1");
  const message = sheet.message("A1");
  if (message !== null || (typeof value === "string" && /^#(N\/A|DIV\/0!|ERROR)/.test(value))) {
    return { code: String(value), message: message ?? "" };
  }
  if (!("table" in gives)) return { value };
  return { table: readTable(sheet, gives.table.length, gives.table[0]?.length ?? 1) };
}

describe("in the browser sheet's engine", () => {
  test.each(conformance.map((row) => [row.title, row] as const))("%s", (_title, row) => {
    expectOutcome(outcomeOf(row), row.gives, { valueError: "#ERROR" });
  });
});
