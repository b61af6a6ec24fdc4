/** The rows and columns of a text: commas, semicolons, tabs or bars between cells; lines above the headings left aside. */
import { readHeading } from "./headers";
import type { TextRow } from "./splitCells";
import { splitCells } from "./splitCells";
import { unitSpelt } from "./units";

export interface TextTable {
  readonly headings: readonly string[];
  /** What stands in a line of units under the headings; "" elsewhere. */
  readonly unitLine: readonly string[];
  readonly rows: readonly TextRow[];
  /** Numbers are written with a comma for the decimal point. */
  readonly hasDecimalComma: boolean;
}

export type { TextRow };

/** Not a table; the message is a sentence for the page. */
export class NoTable extends Error {}

/** Headings stand within the first lines, below the name of the station and remarks. */
const MOST_LINES_ABOVE = 60;
const DELIMITERS = [",", ";", "\t", "|"];

export function readTable(text: string): TextTable {
  const lines = linesOf(text.replace(/^\uFEFF/, ""));
  if (lines.length === 0) throw new NoTable("There is nothing in it.");
  const at = headingLine(lines);
  if (at < 0) throw new NoTable("No line of headings with a date was found in it, such as “date, tmax, tmin, rain”.");
  const headings = lines[at]!.cells.map((cell) => cell.trim());
  const below = lines.slice(at + 1).filter(({ cells }) => cells.some((cell) => cell.trim() !== ""));
  const hasUnitLine = below[0] !== undefined && isUnitLine(below[0].cells);
  const rows = hasUnitLine ? below.slice(1) : below;
  if (rows.length === 0) throw new NoTable("There are headings in it but no days.");
  return {
    headings,
    unitLine: headings.map((_, index) => (hasUnitLine ? (below[0]!.cells[index] ?? "").trim() : "")),
    rows,
    hasDecimalComma: usesDecimalComma(rows),
  };
}

function linesOf(text: string): TextRow[] {
  return splitCells(text, delimiterOf(text)).filter(({ cells }) => cells.join("").trim() !== "");
}

/** The one that cuts most lines into the same number of cells, of which there must be several. */
function delimiterOf(text: string): string {
  const start = text.split(/\r?\n/, MOST_LINES_ABOVE * 2).join("\n");
  const score = (delimiter: string): number => {
    const widths = splitCells(start, delimiter)
      .map(({ cells }) => cells.length)
      .filter((width) => width > 1);
    return Math.max(0, ...widths.map((width) => widths.filter((other) => other === width).length));
  };
  return DELIMITERS.map((delimiter) => [delimiter, score(delimiter)] as const).reduce((best, next) =>
    next[1] > best[1] ? next : best,
  )[0];
}

function headingLine(lines: readonly TextRow[]): number {
  const scores = lines.slice(0, MOST_LINES_ABOVE).map(({ cells }) => {
    const uses = cells.map((cell) => readHeading(cell.replace(/^#\s*/, "")).use).filter((use) => use !== undefined);
    const isDated = uses.some((use) => use === "date" || use === "year" || use === "day");
    return isDated && uses.length > 1 ? new Set(uses).size : 0;
  });
  const best = Math.max(...scores);
  return best === 0 ? -1 : scores.indexOf(best);
}

function isUnitLine(cells: readonly string[]): boolean {
  const filled = cells.filter((cell) => cell.trim() !== "");
  const units = filled.filter((cell) => unitSpelt(cell.replace(/^\s*[([]|[)\]]\s*$/g, "")).length > 0);
  return (
    units.length > 0 && filled.every((cell) => !/\d/.test(cell) || unitSpelt(cell).length > 0 || /[a-z]/i.test(cell))
  );
}

function usesDecimalComma(rows: readonly TextRow[]): boolean {
  const numbers = rows.slice(0, 200).flatMap(({ cells }) => cells.filter((cell) => /^\s*-?\d+[.,]\d+\s*$/.test(cell)));
  const commas = numbers.filter((cell) => cell.includes(",")).length;
  return commas > numbers.length - commas;
}
