/** Numbers and cells as a person reads them. */
import { calendarText } from "./dates";
import type { Answer } from "./library";
import type { CellFound, Rows } from "./sheetHost";

const DIGITS = 6;
const MOST_SHOWN = 6;

/** A number for reading: six digits, no exponent where it can be helped. */
export function shownNumber(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < 1e15) return String(value);
  const size = Math.abs(value);
  if (size >= 1e-4 && size < 1e15) return String(Number(value.toPrecision(DIGITS)));
  return value.toExponential(DIGITS - 1);
}

type AnswerCell = Exclude<Answer, readonly unknown[]>;

export function shownAnswer(cell: AnswerCell, unit: string): string {
  if (typeof cell === "number") return calendarText(cell, unit) ?? shownNumber(cell);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "string" ? cell : cell.message;
}

export function isError(found: unknown): found is { readonly code: string; readonly message: string } {
  return typeof found === "object" && found !== null && "code" in found;
}

/** Dates and times as a person writes them, with the number that the sheet keeps for them. */
export function shownValue(value: number, unit: string): string {
  const onCalendar = calendarText(value, unit);
  return onCalendar === null ? shownNumber(value) : `${onCalendar} (${shownNumber(value)})`;
}

export function shownCell(found: CellFound, unit = ""): string {
  if (found === null) return "empty";
  if (isError(found)) return found.message === "" ? found.code : `${found.code}: ${found.message}`;
  if (typeof found === "number") return shownValue(found, unit);
  return typeof found === "boolean" ? String(found).toUpperCase() : found;
}

export function shownRows(rows: Rows, unit = ""): string {
  const cells = rows.flat();
  if (cells.length === 1) return shownCell(cells[0] ?? null, unit);
  const some = cells
    .slice(0, MOST_SHOWN)
    .map((cell) => shownCell(cell, unit))
    .join(", ");
  return `${cells.length} cells: ${some}${cells.length > MOST_SHOWN ? ", ..." : ""}`;
}
