/** Cells of a table's column above and around one of its rows, written so that the formula can be copied down. */
import { columnLetters, columnNumber, rowNumber } from "../../kit";

/** The cell so many rows further down; above with a negative number. */
function moved(address: string, rows: number): string {
  return `${columnLetters(columnNumber(address))}${rowNumber(address) + rows}`;
}

/** The same with a row that stays. */
function staying(address: string, rows: number): string {
  return `${columnLetters(columnNumber(address))}$${rowNumber(address) + rows}`;
}

/** The cell above. */
export function above(address: string): string {
  return moved(address, -1);
}

/** The column's first cell, from one that stands so many rows below it. */
export function firstOf(address: string, row: number): string {
  return staying(address, -row);
}

/** From the mark over the column, which is no number, down to the cell above. */
export function allAbove(address: string, row: number): string {
  return `${staying(address, -row - 1)}:${above(address)}`;
}

/** So many rows up to so many rows down. */
export function around(address: string, rows: number): string {
  return `${moved(address, -rows)}:${moved(address, rows)}`;
}

/** All rows of the column, from a cell that stands so many rows below its first. */
export function wholeColumn(address: string, row: number, rows: number): string {
  return `${staying(address, -row)}:${staying(address, rows - 1 - row)}`;
}
