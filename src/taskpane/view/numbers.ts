import type { Answer } from "../library";

const DIGITS = 6;

/** A number for reading: six digits, no exponent where it can be helped. */
export function shownNumber(value: number): string {
  if (Number.isInteger(value)) return String(value);
  const size = Math.abs(value);
  if (size >= 1e-4 && size < 1e15) return String(Number(value.toPrecision(DIGITS)));
  return value.toExponential(DIGITS - 1);
}

type Cell = Exclude<Answer, readonly unknown[]>;

export function shownCell(cell: Cell): string {
  if (typeof cell === "number") return shownNumber(cell);
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "string" ? cell : cell.message;
}
