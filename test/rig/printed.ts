import { isTable, type Answer, type CellAnswer, type Entry, type Table } from "../../src/kernel";
import { expectClose } from "./closeness";

const PRINTED_EXACTLY = 1e-9;

function expectPrintedCell(cell: unknown, printed: CellAnswer, within: number | undefined): void {
  if (typeof printed !== "number") expect(cell).toEqual(printed);
  else if (within === undefined) expectClose(cell, printed, PRINTED_EXACTLY, PRINTED_EXACTLY);
  else expectClose(cell, printed, 0, within);
}

function expectPrintedTable(rows: readonly (readonly unknown[])[], printed: Table, within: number | undefined): void {
  expect(rows.map((row) => row.length)).toEqual(printed.map((row) => row.length));
  printed.forEach((row, rowIndex) => {
    row.forEach((cell, column) => expectPrintedCell(rows[rowIndex]?.[column], cell, within));
  });
}

interface Example {
  readonly entry: Entry;
  readonly gives: number | string | Table;
  readonly within: number | undefined;
}

/** Holds an answer, from wherever it came, against the printed one, as near as the example asks. */
export function expectPrinted(answer: unknown, { entry, gives, within }: Example): void {
  expect(Array.isArray(answer)).toBe(isTable(entry.result));
  if (typeof gives === "object") expectPrintedTable(answer as readonly (readonly unknown[])[], gives, within);
  else expectPrintedCell(answer as Answer, gives, within);
}
