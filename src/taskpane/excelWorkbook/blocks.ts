/** Blocks of cells, counted from 0, and the fewest of them that cover a set of cells. */
import { columnLetters, columnNumber, rowNumber } from "../../workbooks/kit";

export interface Block {
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

/** The block of an address such as `B2` or `$B$2:$D$9`. */
export function blockOf(address: string): Block {
  const [first = "", last = first] = address.split(":");
  const [row, column] = [rowNumber(first) - 1, columnNumber(first) - 1];
  return { row, column, rows: rowNumber(last) - row, columns: columnNumber(last) - column };
}

export function addressOf({ row, column, rows, columns }: Block): string {
  const first = `${columnLetters(column + 1)}${row + 1}`;
  const last = `${columnLetters(column + columns)}${row + rows}`;
  return first === last ? first : `${first}:${last}`;
}

/** The smallest block from the first cell of the sheet that holds them all. */
export function usedBlock(addresses: readonly string[]): Block {
  const blocks = addresses.map(blockOf);
  return {
    row: 0,
    column: 0,
    rows: Math.max(1, ...blocks.map(({ row, rows }) => row + rows)),
    columns: Math.max(1, ...blocks.map(({ column, columns }) => column + columns)),
  };
}

/** Cells below each other make a run; equal runs beside each other make a block. */
export function covering(addresses: readonly string[]): readonly Block[] {
  const blocks: Block[] = [];
  for (const run of runsDown(addresses.map(blockOf))) {
    const left = blocks.findIndex(
      ({ row, rows, column, columns }) => row === run.row && rows === run.rows && column + columns === run.column,
    );
    if (left < 0) blocks.push(run);
    else blocks[left] = { ...blocks[left]!, columns: blocks[left]!.columns + 1 };
  }
  return blocks;
}

function runsDown(cells: readonly Block[]): readonly Block[] {
  const runs: Block[] = [];
  for (const cell of [...cells].sort((a, b) => a.column - b.column || a.row - b.row)) {
    const last = runs[runs.length - 1];
    const isNext = last !== undefined && last.column === cell.column && last.row + last.rows === cell.row;
    if (isNext) runs[runs.length - 1] = { ...last, rows: last.rows + 1 };
    else runs.push(cell);
  }
  return runs;
}
