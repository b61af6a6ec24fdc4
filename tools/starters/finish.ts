/**
 * A starter workbook worked in the sheet's engine: what each cell shows, what each formula is in built-in functions,
 * and the words that explain a cell completed by its plain formula.
 */
import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { LONGEST_NOTE } from "../../src/workbooks/kit";
import {
  isExplaining,
  isFormula,
  isTable,
  isValue,
  type Cell,
  type Sheet,
  type Workbook,
} from "../../src/workbooks/model";
import { holdsOurs } from "../../src/taskpane/formula";
import { beside, onSheet } from "../../src/workbooks/addresses";
import { openHeadless, type HeadlessSheet } from "./headlessSheet";
import { plainOf } from "./plainFormulas";

export type CellValue = number | string | boolean;
type ByAddress<T> = ReadonlyMap<string, T>;

export interface FinishedSheet {
  readonly name: string;
  /** What each cell shows; an empty one is not in it. */
  readonly values: ByAddress<CellValue>;
  /** Each formula and each cell of a table in built-in functions; null where there is none. */
  readonly plain: ByAddress<string | null>;
}

export interface Finished {
  /** With the explaining words completed, and without `plain`. */
  readonly workbook: Workbook;
  readonly sheets: readonly FinishedSheet[];
}

/** Lines that words may fill in a cell that wraps. */
const MOST_LINES = 5;

export function finish(workbook: Workbook): Finished {
  const headless = openHeadless(workbook);
  const faults = workbook.sheets.flatMap((sheet) => faultsOn(sheet, headless));
  if (faults.length > 0) throw new Error(faults.join("\n"));
  const sheets = workbook.sheets.map((sheet): FinishedSheet => ({
    name: sheet.name,
    values: valuesOf(sheet, headless),
    plain: plainFormulasOf(sheet, headless),
  }));
  return {
    workbook: { ...workbook, sheets: workbook.sheets.map((sheet, at) => explained(sheet, sheets[at]!.plain)) },
    sheets,
  };
}

/** A file must not carry an error. */
function faultsOn(sheet: Sheet, headless: HeadlessSheet): readonly string[] {
  return Object.entries(sheet.cells).flatMap(([address, cell]) => {
    const places = isTable(cell) ? tableCells(address, cell.rows, cell.columns) : [address];
    return places.flatMap((at) => {
      const place = onSheet(sheet.name, at);
      const message = headless.message(place);
      return message === null ? [] : [`${place} is in error: ${message}`];
    });
  });
}

function valuesOf(sheet: Sheet, headless: HeadlessSheet): ByAddress<CellValue> {
  const values = new Map<string, CellValue>();
  for (const [address, cell] of Object.entries(sheet.cells)) {
    if (isExplaining(cell)) continue;
    for (const at of isTable(cell) ? tableCells(address, cell.rows, cell.columns) : [address]) {
      const value = isValue(cell) ? cell.value : headless.value(onSheet(sheet.name, at));
      if (value !== null) values.set(at, value);
      else if (isFormula(cell)) values.set(at, 0);
    }
  }
  return values;
}

export function tableCells(corner: string, rows: number, columns: number): readonly string[] {
  return Array.from({ length: rows * columns }, (_, at) => beside(corner, Math.floor(at / columns), at % columns));
}

function plainFormulasOf(sheet: Sheet, headless: HeadlessSheet): ByAddress<string | null> {
  const plain = new Map<string, string | null>();
  const notWorked: string[] = [];
  const evaluate = (expression: string) => headless.evaluate(expression, sheet.name);
  for (const [address, cell] of Object.entries(sheet.cells)) {
    if (isTable(cell)) {
      tableCells(address, cell.rows, cell.columns).forEach((at, index) => {
        const given = cell.plain?.[Math.floor(index / cell.columns)]?.[index % cell.columns];
        plain.set(at, given ? asFormula(given) : null);
      });
    }
    if (!isFormula(cell)) continue;
    if (cell.plain !== undefined) plain.set(address, cell.plain === "" ? null : asFormula(cell.plain));
    else if (!holdsOurs(cell.formula)) plain.set(address, asFormula(cell.formula));
    else {
      const made = plainOf(cell.formula, evaluate);
      plain.set(address, "formula" in made ? made.formula : null);
      if ("none" in made && made.none === "not worked") notWorked.push(address);
    }
  }
  for (const address of notWorked) plain.set(address, fromAlike(address, sheet, plain));
  return plain;
}

/** A row of a table that has no inputs yet: its formula is that of a row that has. */
function fromAlike(address: string, sheet: Sheet, plain: ByAddress<string | null>): string | null {
  const relative = relativeFormula(sheet, address);
  for (const [other, formula] of plain) {
    if (formula === null || relativeFormula(sheet, other) !== relative) continue;
    return String(translateFormulaToA1(translateFormulaToR1C1(formula, other), address));
  }
  return null;
}

function relativeFormula(sheet: Sheet, address: string): string | null {
  const cell = sheet.cells[address];
  return cell && isFormula(cell) ? String(translateFormulaToR1C1(cell.formula, address)) : null;
}

function asFormula(text: string): string {
  return text.startsWith("=") ? text : `=${text}`;
}

function explained(sheet: Sheet, plain: ByAddress<string | null>): Sheet {
  const cells = Object.entries(sheet.cells).map(([address, cell]): [string, Cell] => [
    address,
    explainedCell(cell, plain, roomIn(cell, sheet.columnWidths?.[address.replace(/\d+$/, "")])),
  ]);
  return { ...sheet, cells: Object.fromEntries(cells) };
}

function roomIn({ wraps }: Cell, width = 0): number {
  return wraps ? MOST_LINES * width : LONGEST_NOTE;
}

function explainedCell(cell: Cell, plain: ByAddress<string | null>, room: number): Cell {
  if (isExplaining(cell)) {
    const { words, plainOf: of, ...look } = cell;
    return { value: withPlain(words, of, plain.get(of) ?? null, room), ...look };
  }
  if (!isFormula(cell) && !isTable(cell)) return cell;
  const { plain: _plain, ...rest } = cell;
  return rest;
}

function withPlain(words: string, of: string, formula: string | null, room: number): string {
  if (formula === null) return words;
  const whole = `${words}; plain: ${formula}`;
  if (whole.length <= room) return whole;
  return `${words} (plain formula: cell ${of} of the plain workbook)`;
}
