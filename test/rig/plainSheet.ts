/** A sheet of plain numbers and built-in formulas at its own addresses, worked in two independent spreadsheet engines. */
import { HyperFormula } from "hyperformula";
import { fullNumber } from "../../src/kernel";
import { valuesInIronCalc } from "./ironcalc";

export type PlainCell = number | string | null;
export type PlainGrid = readonly (readonly PlainCell[])[];
export type SheetValue = number | string;
export type SheetValues = readonly (readonly SheetValue[])[];

export const ENGINES = [
  ["HyperFormula 3.5.0", inHyperFormula],
  ["IronCalc 0.8.4", inIronCalc],
] as const;

/** What every cell shows; a blank is "", an error its text. */
export function inHyperFormula(grid: PlainGrid): SheetValues {
  const engine = HyperFormula.buildFromArray(
    grid.map((row) => row.map((cell) => cell)),
    { licenseKey: "gpl-v3", smartRounding: false },
  );
  const values = grid.map((cells, row) =>
    cells.map((_cell, col): SheetValue => {
      const value = engine.getCellValue({ sheet: 0, row, col });
      if (typeof value === "number" || typeof value === "string") return value;
      if (value === null) return "";
      return typeof value === "object" ? String(value.value) : String(value).toUpperCase();
    }),
  );
  engine.destroy();
  return values;
}

/** The same in IronCalc, which tells a number to about fifteen digits. */
export function inIronCalc(grid: PlainGrid): SheetValues {
  const inputs = grid.flatMap((cells, row) =>
    cells.flatMap((cell, column) => (cell === null ? [] : [{ row: row + 1, column: column + 1, input: typed(cell) }])),
  );
  const read = grid.flatMap((cells, row) => cells.map((_cell, column) => ({ row: row + 1, column: column + 1 })));
  const flat = valuesInIronCalc({ inputs, read });
  let next = 0;
  return grid.map((cells) => cells.map(() => flat[next++] as SheetValue));
}

function typed(cell: number | string): string {
  return typeof cell === "number" ? fullNumber(cell) : cell;
}

/** The number in a cell; anything else is a fault of the sheet. */
export function numberAt(values: SheetValues, row: number, column: number): number {
  const value = values[row]?.[column];
  if (typeof value !== "number") throw new Error(`row ${row + 1}, column ${column + 1} holds ${JSON.stringify(value)}`);
  return value;
}

/** A number that must be whole, but for the last digits that an engine's text of it loses. */
export function wholeAt(values: SheetValues, row: number, column: number): number {
  const value = numberAt(values, row, column);
  const whole = Math.round(value);
  if (Math.abs(value - whole) > 1e-12 * Math.max(1, Math.abs(value))) throw new Error(`${value} is not whole`);
  return whole;
}

/** A to Z, then AA and on; 0 is A. */
export function columnName(index: number): string {
  const letter = String.fromCharCode(65 + (index % 26));
  return index < 26 ? letter : columnName(Math.floor(index / 26) - 1) + letter;
}
