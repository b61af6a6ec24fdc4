/** How numbers and cell values are written for people: decimal point, no separators, no exponent where it can be helped. */

const PLAIN_SMALLEST = 1e-4;
const PLAIN_LARGEST = 1e15;

function plain(text: string): string {
  const [digits = text, exponent] = text.split("e");
  const trimmed = digits.includes(".") ? digits.replace(/\.?0+$/, "") : digits;
  return exponent === undefined ? trimmed : `${trimmed}E${exponent.replace("+", "")}`;
}

/** Four significant digits; a whole number is shown whole, since a date or a count means every digit. */
export function shortNumber(value: number): string {
  if (Number.isInteger(value) && Math.abs(value) < PLAIN_LARGEST) return String(value);
  const size = Math.abs(value);
  if (size < PLAIN_SMALLEST || size >= PLAIN_LARGEST) return plain(value.toExponential(3));
  return plain(size >= 1000 ? value.toFixed(1) : value.toPrecision(4));
}

/** Every digit that matters, as a spreadsheet formula takes it. */
export function fullNumber(value: number): string {
  return plain(String(value));
}

/** A limit as the trade would write it: whole ones whole, else 6 digits, which hide the dust of a unit conversion. */
export function limitNumber(value: number): string {
  return plain(String(Number.isInteger(value) ? value : Number(value.toPrecision(6))));
}

const LONGEST_TEXT = 40;

/** What stood in the cell, for an error message. */
export function shownValue(value: unknown): string {
  if (typeof value === "number") return plain(String(value));
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (typeof value === "string") {
    return `the text "${value.length > LONGEST_TEXT ? `${value.slice(0, LONGEST_TEXT)}...` : value}"`;
  }
  return "blank";
}
