/**
 * A table that one call spills over a block is one formula a cell in a file, because a spilled array of functions that
 * are not known turns into errors elsewhere: `INDEX(call, row, column)`.
 */
import { columnLetters, columnNumber, rowNumber } from "../../workbooks/kit";
import { holdsOurs } from "./functionNames";

type Cells = Readonly<Record<string, string>>;

/** One cell's formula, without the equals sign. Only the corner shows an error, as where the table spills. */
export function partOf(call: string, row: number, column: number): string {
  const part = `INDEX(${call}, ${row}, ${column})`;
  return row === 1 && column === 1 ? part : `IFERROR(${part}, "")`;
}

/** The cells of a sheet with each block of parts of one call as that call in its corner. */
export function joinParts(cells: Cells): Record<string, string> {
  const joined: Record<string, string> = { ...cells };
  for (const [corner, content] of Object.entries(cells)) {
    const part = partIn(content);
    if (!part || part.row !== 1 || part.column !== 1) continue;
    const block = blockFrom(corner, part.call, cells);
    if (block.length < 2) continue;
    for (const address of block) delete joined[address];
    joined[corner] = `=${part.call}`;
  }
  return joined;
}

interface Part {
  readonly call: string;
  readonly row: number;
  readonly column: number;
}

const PART = /^=\s*INDEX\(\s*(.+?)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)$/is;
const SAFE_PART = /^=\s*IFERROR\(\s*(INDEX\(.+\))\s*,\s*""\s*\)$/is;

function partIn(content: string): Part | undefined {
  const safe = SAFE_PART.exec(content)?.[1];
  const [, call, row, column] = PART.exec(safe === undefined ? content : `=${safe}`) ?? [];
  if (call === undefined || !holdsOurs(call)) return undefined;
  return { call, row: Number(row), column: Number(column) };
}

/** The addresses of the largest block of parts of the call, its rows all of the width of the first. */
function blockFrom(corner: string, call: string, cells: Cells): string[] {
  const at = (row: number, column: number) =>
    `${columnLetters(columnNumber(corner) + column - 1)}${rowNumber(corner) + row - 1}`;
  const isPart = (row: number, column: number) => {
    const part = partIn(cells[at(row, column)] ?? "");
    return part?.call === call && part.row === row && part.column === column;
  };
  let width = 1;
  while (isPart(1, width + 1)) width += 1;
  const columns = Array.from({ length: width }, (_, index) => index + 1);
  const block: string[] = [];
  for (let row = 1; columns.every((column) => isPart(row, column)); row += 1) {
    block.push(...columns.map((column) => at(row, column)));
  }
  return block;
}
