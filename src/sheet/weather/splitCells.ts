/**
 * A text of separated values as lines of cells: quotation marks around a cell may hold separators, line ends and, doubled,
 * quotation marks. Written here because the libraries for it also fetch from addresses, which no page of ours may.
 */
export interface TextRow {
  /** Of the text, counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

const QUOTE = '"';

export function splitCells(text: string, delimiter: string): TextRow[] {
  const rows: TextRow[] = [];
  let [line, start] = [1, 1];
  let cells: string[] = [];
  let at = 0;
  while (at < text.length) {
    const { cell, next } = text[at] === QUOTE ? quotedCell(text, at, delimiter) : plainCell(text, at, delimiter);
    cells.push(cell);
    line += lineEndsIn(text.slice(at, next));
    at = next;
    if (text[at] === delimiter) {
      at += 1;
      // A separator at the very end, or before a line end, has an empty cell behind it.
      if (at < text.length && !isLineEnd(text[at]!)) continue;
      cells.push("");
    }
    rows.push({ line: start, cells });
    cells = [];
    if (at < text.length) line += 1;
    at += text.startsWith("\r\n", at) ? 2 : 1;
    start = line;
  }
  return rows;
}

interface Cell {
  readonly cell: string;
  readonly next: number;
}

function plainCell(text: string, from: number, delimiter: string): Cell {
  let next = from;
  while (next < text.length && text[next] !== delimiter && !isLineEnd(text[next]!)) next += 1;
  return { cell: text.slice(from, next), next };
}

/** What stands behind the closing mark belongs to the cell as well, as in `"a" b`. */
function quotedCell(text: string, from: number, delimiter: string): Cell {
  let end = from + 1;
  while (end < text.length && (text[end] !== QUOTE || text[end + 1] === QUOTE)) end += text[end] === QUOTE ? 2 : 1;
  const inside = text.slice(from + 1, end).replaceAll(QUOTE + QUOTE, QUOTE);
  const rest = plainCell(text, Math.min(end + 1, text.length), delimiter);
  return { cell: inside + rest.cell, next: rest.next };
}

const isLineEnd = (character: string): boolean => character === "\n" || character === "\r";

function lineEndsIn(text: string): number {
  return text.match(/\r\n|\n|\r/g)?.length ?? 0;
}
