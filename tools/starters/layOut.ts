/** A finished workbook cell by cell, as a file holds it: with our functions, or as its plain twin. */
import { LONGEST_NOTE } from "../../src/workbooks/kit";
import { isFormula, isTable, isValue, type Cell, type Sheet, type Workbook } from "../../src/workbooks/model";
import { blocksOf, placeOf } from "../../src/workbooks/addresses";
import { tableCells, type CellValue, type Finished, type FinishedSheet } from "./finish";

export interface LaidCell {
  readonly look: Pick<Cell, "style" | "format" | "wraps">;
  /** Left out: an empty cell. With a formula, what it shows. */
  readonly value?: CellValue;
  readonly formula?: string;
}

export interface LaidSheet {
  readonly sheet: Sheet;
  readonly cells: ReadonlyMap<string, LaidCell>;
}

export interface LaidWorkbook {
  readonly workbook: Workbook;
  readonly sheets: readonly LaidSheet[];
}

/** Tables become one formula a cell: a spilled array of functions that are not known turns into errors elsewhere. */
export function withOurFunctions(finished: Finished): LaidWorkbook {
  const ours = laid(finished, (sheet, { values }) => {
    const cells = new Map<string, LaidCell>();
    for (const [address, cell] of Object.entries(sheet.cells)) {
      if (!isTable(cell)) cells.set(address, laidCell(cell, values.get(address)));
    }
    for (const [corner, cell] of Object.entries(sheet.cells)) {
      if (!isTable(cell)) continue;
      tableCells(corner, cell.rows, cell.columns).forEach((at, index) => {
        const formula = partOf(cell.table, Math.floor(index / cell.columns) + 1, (index % cell.columns) + 1);
        cells.set(at, { look: lookOf(sheet.cells[at]), formula, value: values.get(at) ?? "" });
      });
    }
    return cells;
  });
  return withAbout(ours, []);
}

/** Only the corner shows an error, as where the table spills; what lies beyond the answer is empty. */
function partOf(table: string, row: number, column: number): string {
  const part = `INDEX(${table.slice(1)}, ${row}, ${column})`;
  return row === 1 && column === 1 ? `=${part}` : `=IFERROR(${part}, "")`;
}

/** Built-in functions only; what has none of these carries its value, and the sheet says so. */
export function plainTwin(finished: Finished): LaidWorkbook {
  const carried: string[] = [];
  const twin = laid(finished, (sheet, worked) => {
    const cells = new Map<string, LaidCell>();
    for (const [address, cell] of Object.entries(sheet.cells)) {
      if (!isTable(cell)) cells.set(address, plainCell(cell, address, worked));
    }
    for (const [corner, cell] of Object.entries(sheet.cells)) {
      if (!isTable(cell)) continue;
      for (const at of tableCells(corner, cell.rows, cell.columns)) {
        cells.set(at, plainCell({ ...cell, ...lookOf(sheet.cells[at]) }, at, worked));
      }
    }
    const blocks = sheet.name === ABOUT ? "" : blocksOf(carriedCells(sheet, worked));
    if (blocks) {
      carried.push(`${sheet.name} ${blocks}`);
      cells.set(freeCell(cells), note(`${CARRIED}: ${blocks}.`));
    }
    return cells;
  });
  return withAbout(twin, [plainWords(carried)]);
}

const ABOUT = "About";
/** The row between the caution and the first block. */
const NOTE = "A4";

function plainCell(cell: Cell, address: string, { plain, values }: FinishedSheet): LaidCell {
  const value = values.get(address);
  const formula = plain.get(address) ?? null;
  if (formula !== null) return { look: lookOf(cell), formula, value: value ?? "" };
  return { look: lookOf(cell), ...(value !== undefined && value !== "" && { value }) };
}

/** Cells with a value of our functions. A table's first row of words names its columns and never changes. */
function carriedCells(sheet: Sheet, { plain, values }: FinishedSheet): readonly string[] {
  const headings = Object.entries(sheet.cells).flatMap(([corner, cell]) => {
    if (!isTable(cell)) return [];
    const first = tableCells(corner, 1, cell.columns);
    return first.every((at) => typeof values.get(at) === "string") ? first : [];
  });
  return [...plain]
    .filter(([at, formula]) => formula === null && (values.get(at) ?? "") !== "" && !headings.includes(at))
    .map(([at]) => at);
}

function freeCell(cells: ReadonlyMap<string, LaidCell>): string {
  const isFree = (cell: LaidCell | undefined) => cell === undefined || (cell.value ?? "") === "";
  if (isFree(cells.get(NOTE))) return NOTE;
  return `A${Math.max(...[...cells.keys()].map((address) => placeOf(address).row)) + 2}`;
}

const CARRIED = "Values only, which do not follow the inputs, nor does what rests on them";

function note(value: string): LaidCell {
  return { look: { style: "caution", ...(value.length > LONGEST_NOTE && { wraps: true }) }, value };
}

/** What the reader of the file must know of it, on the first sheet. */
function withAbout({ workbook, sheets }: LaidWorkbook, words: readonly string[]): LaidWorkbook {
  const about = (laidSheet: LaidSheet): LaidSheet => {
    const { sheet, cells } = laidSheet;
    if (sheet.name !== ABOUT) return laidSheet;
    const value = [...words, PROTECTED].join(" ");
    return { sheet, cells: new Map([...cells, [freeCell(cells), { look: { style: "caution", wraps: true }, value }]]) };
  };
  return { workbook, sheets: sheets.map(about) };
}

const PROTECTED =
  "The sheets of this file are protected without a password, to keep formulas whole: boxed cells take input, Unprotect Sheet opens the rest.";

function plainWords(carried: readonly string[]): string {
  if (carried.length === 0) return "Plain workbook: built-in functions only, and every result follows the inputs.";
  return `Plain workbook: built-in functions only. ${CARRIED}: ${carried.join("; ")}.`;
}

function laid(
  { workbook, sheets }: Finished,
  cellsOf: (sheet: Sheet, worked: FinishedSheet) => ReadonlyMap<string, LaidCell>,
): LaidWorkbook {
  return { workbook, sheets: workbook.sheets.map((sheet, at) => ({ sheet, cells: cellsOf(sheet, sheets[at]!) })) };
}

function laidCell(cell: Cell, value: CellValue | undefined): LaidCell {
  const look = lookOf(cell);
  if (isFormula(cell)) return { look, formula: cell.formula, value: value ?? "" };
  return isValue(cell) && cell.value !== "" ? { look, value: cell.value } : { look };
}

function lookOf(cell: Cell | undefined): LaidCell["look"] {
  const { style, format, wraps } = cell ?? {};
  return { ...(style && { style }), ...(format && { format }), ...(wraps && { wraps }) };
}
