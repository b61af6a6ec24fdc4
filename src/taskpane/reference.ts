/** References as a sheet writes them: a cell, a block, whole columns or rows, on the sheet itself or on another. */

export interface Place {
  /** Null for the sheet on which the reference stands. */
  readonly sheet: string | null;
  readonly range: string;
}

const LAST_COLUMN = "XFD";
const LAST_ROW = 1_048_576;

const BARE_SHEET = "[\\p{L}_][\\p{L}\\p{N}_.]*";
/** Brackets, colons and the like cannot stand in a sheet's name: they would name another workbook or several sheets. */
const QUOTED_SHEET = "(?:[^'\\[\\]:*?/\\\\]|'')+";
const REFERENCE = new RegExp(`^(?:(?:'(${QUOTED_SHEET})'|(${BARE_SHEET}))!)?([$A-Z0-9:]+)$`, "iu");
const CELL = /^\$?([A-Z]{1,3})\$?(\d{1,7})$/i;
const COLUMN = /^\$?([A-Z]{1,3})$/i;
const ROW = /^\$?(\d{1,7})$/;

function isColumn(letters: string): boolean {
  return letters.length < LAST_COLUMN.length || letters.toUpperCase() <= LAST_COLUMN;
}

function isRow(digits: string): boolean {
  return Number(digits) >= 1 && Number(digits) <= LAST_ROW;
}

function isCell(text: string): boolean {
  const [, column = "", row = ""] = CELL.exec(text) ?? [];
  return column !== "" && isColumn(column) && isRow(row);
}

function isRange(text: string): boolean {
  const [first = "", last, more] = text.split(":");
  if (more !== undefined) return false;
  if (last === undefined) return isCell(first);
  if (isCell(first)) return isCell(last);
  const columns = [COLUMN.exec(first)?.[1], COLUMN.exec(last)?.[1]];
  const rows = [ROW.exec(first)?.[1], ROW.exec(last)?.[1]];
  return (
    columns.every((each) => each !== undefined && isColumn(each)) ||
    rows.every((each) => each !== undefined && isRow(each))
  );
}

/** Null for anything that is not a reference to cells of this workbook, such as a name or a sum. */
export function placeOf(text: string): Place | null {
  const [whole, quoted, bare, range = ""] = REFERENCE.exec(text.trim()) ?? [];
  if (whole === undefined || !isRange(range)) return null;
  return { sheet: quoted?.replace(/''/g, "'") ?? bare ?? null, range };
}

/** Like a cell in either style of reference, which a formula would take for one. */
const LIKE_A_CELL = /^(?:[A-Z]{1,3}\d+|R\d*(?:C\d*)?|C\d*|true|false)$/i;

/** The reference with its sheet, in quotation marks where the sheet's name needs them. */
export function onSheet(sheet: string, range: string): string {
  const isPlain = new RegExp(`^${BARE_SHEET}$`, "u").test(sheet) && !LIKE_A_CELL.test(sheet);
  return isPlain ? `${sheet}!${range}` : `'${sheet.replace(/'/g, "''")}'!${range}`;
}

const LETTERS = 26;
const LETTER_A = 65;

/** The letters of a column, counted from 0. */
export function columnName(index: number): string {
  const last = String.fromCharCode(LETTER_A + (index % LETTERS));
  return index < LETTERS ? last : columnName(Math.floor(index / LETTERS) - 1) + last;
}
