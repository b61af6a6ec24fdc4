/** Reads a starter workbook as a person does: a line by its label, a table's column by its heading. */
import * as functions from "../../src/functions";
import type { CellContent } from "../../src/sheet/adapter";
import { columnLetters, columnNumber, rowNumber, type Edition } from "../../src/workbooks/kit";
import type { Cell, Sheet, Workbook } from "../../src/workbooks/model";
import { isTable, isValue } from "../../src/workbooks/model";
import type { StarterKind } from "../../src/workbooks/starters/kinds";
import { createHeadlessSheet, type HeadlessSheet } from "./sheetEngine";

export interface StarterReader {
  readonly workbook: Workbook;
  /** What the line with this label shows. */
  line(sheet: string, label: string): CellContent | null;
  message(sheet: string, label: string): string | null;
  /** Types into the line with this label. */
  setLine(sheet: string, label: string, content: CellContent): void;
  /** The cells below a heading, down to the first cell that the workbook leaves out; `nth` counts equal headings from 0. */
  column(sheet: string, heading: string, nth?: number): readonly (CellContent | null)[];
  /** The cell so many rows into the column below a heading. */
  setInColumn(sheet: string, heading: string, row: number, content: CellContent, nth?: number): void;
  /** The block that a call fills, found by the label above it, row by row. */
  block(sheet: string, label: string): readonly (readonly (CellContent | null)[])[];
  check(label: string): CellContent | null;
  overall(): CellContent | null;
  readonly headless: HeadlessSheet;
}

/** The three heading rows of a table: name, unit, input or worked. */
const HEADING_ROWS = 3;

export function openStarter(kind: StarterKind, edition: Edition): StarterReader {
  const { workbook } = kind.build(edition);
  const headless = createHeadlessSheet(functions).open(workbook);
  const sheetOf = (name: string): Sheet => {
    const sheet = workbook.sheets.find((each) => each.name === name);
    if (sheet === undefined) throw new Error(`there is no sheet ${name}`);
    return sheet;
  };
  const at = (sheet: string, address: string): string => `'${sheet}'!${address}`;
  const lineAt = (sheet: string, label: string): string => {
    const row = rowNumber(addressOf(sheetOf(sheet), label, 0, (address) => address.startsWith("A")));
    return at(sheet, `D${row}`);
  };
  const headingAt = (sheet: string, heading: string, nth: number): string =>
    addressOf(sheetOf(sheet), heading, nth, (_address, cell) => cell.style === "heading");
  return {
    workbook,
    headless,
    line: (sheet, label) => headless.value(lineAt(sheet, label)),
    message: (sheet, label) => headless.message(lineAt(sheet, label)),
    setLine: (sheet, label, content) => headless.set(lineAt(sheet, label), content),
    column(sheet, heading, nth = 0) {
      const { cells } = sheetOf(sheet);
      const start = headingAt(sheet, heading, nth);
      const letters = start.replace(/\d/g, "");
      const values: (CellContent | null)[] = [];
      for (let row = rowNumber(start) + HEADING_ROWS; ; row += 1) {
        const address = `${letters}${row}`;
        const cell = cells[address];
        if (cell === undefined || "plainOf" in cell) return values;
        values.push(headless.value(at(sheet, address)));
      }
    },
    setInColumn(sheet, heading, row, content, nth = 0) {
      const start = headingAt(sheet, heading, nth);
      headless.set(at(sheet, `${start.replace(/\d/g, "")}${rowNumber(start) + HEADING_ROWS + row}`), content);
    },
    block(sheet, label) {
      const { cells } = sheetOf(sheet);
      const above = addressOf(sheetOf(sheet), label, 0);
      const letters = above.replace(/\d/g, "");
      const corner = [1, 2]
        .map((down) => `${letters}${rowNumber(above) + down}`)
        .find((each) => {
          const cell = cells[each];
          return cell !== undefined && isTable(cell);
        });
      const cell = corner === undefined ? undefined : cells[corner];
      if (corner === undefined || cell === undefined || !isTable(cell)) throw new Error(`no block below ${label}`);
      return Array.from({ length: cell.rows }, (_row, down) =>
        Array.from({ length: cell.columns }, (_column, across) =>
          headless.value(at(sheet, `${columnLetters(columnNumber(corner) + across)}${rowNumber(corner) + down}`)),
        ),
      );
    },
    check: (label) => headless.value(lineAt("Checks", label)),
    overall: () => headless.value("Checks!A2"),
  };
}

function addressOf(
  sheet: Sheet,
  text: string,
  nth: number,
  counts: (address: string, cell: Cell) => boolean = () => true,
): string {
  const found = Object.entries(sheet.cells).filter(
    ([address, cell]) => isValue(cell) && cell.value === text && counts(address, cell),
  );
  const [address] = found[nth] ?? [];
  if (address === undefined) throw new Error(`${sheet.name} has no ${text}`);
  return address;
}
