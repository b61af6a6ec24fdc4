import type { CellReading, SheetAdapter } from "../adapter";
import type { FileSheet, FileValue } from "./readParts";
import { listed } from "./wordsFor";

const MOST_NAMED = 6;
/** Two programs may round the last digits otherwise. */
const SAME = 1e-9;
/** These give something else every time. */
const CHANGING = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/i;

/** In words, which formulas now show something else than they did in the file. */
export function differences(sheets: readonly FileSheet[], open: SheetAdapter): string[] {
  const changed: string[] = [];
  for (const { name, shown } of sheets) {
    for (const [at, before] of shown) {
      const address = `${quoted(name)}!${at}`;
      const now = open.read(address);
      if (CHANGING.test(now.formula ?? "") || isSame(before, now)) continue;
      changed.push(`${address} (${inWords(before)} in the file, ${now.value === null ? "nothing" : now.shown} here)`);
    }
  }
  if (changed.length === 0) return [];
  const rest = changed.length - MOST_NAMED;
  const more = rest > 0 ? ` and ${rest} more` : "";
  return [`Cells that show something else than in the file: ${listed(changed.slice(0, MOST_NAMED))}${more}.`];
}

function isSame(before: FileValue, { value, formula, message }: CellReading): boolean {
  if (typeof before === "object") return message !== null || String(value).startsWith("#");
  if (typeof before === "number" && typeof value === "number") {
    return Math.abs(before - value) <= SAME * Math.max(1, Math.abs(before), Math.abs(value));
  }
  // A formula that has moved into the table above it, and one that gives nothing.
  if (value === null) return before === "" || (before === 0 && formula !== null);
  return before === value;
}

function inWords(value: FileValue): string {
  if (typeof value === "object") return value.error;
  return typeof value === "string" ? `“${value}”` : String(value);
}

const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;
