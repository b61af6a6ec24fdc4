/** Addresses in A1 form as rows and columns, counted from 1, and back. */
import { columnLetters, columnNumber, rowNumber } from "./kit";

export interface Place {
  readonly row: number;
  readonly column: number;
}

export function placeOf(address: string): Place {
  return { row: rowNumber(address), column: columnNumber(address) };
}

export function addressOf({ row, column }: Place): string {
  return `${columnLetters(column)}${row}`;
}

/** The cell so many rows and columns from another. */
export function beside(address: string, rows: number, columns: number): string {
  const { row, column } = placeOf(address);
  return addressOf({ row: row + rows, column: column + columns });
}

/** `Plan!A1`, or `'Catch test'!A1`. */
export function onSheet(sheet: string, address: string): string {
  return `'${sheet.replaceAll("'", "''")}'!${address}`;
}

/** A range with or without its sheet, cell by cell, row by row. */
export function cellsOf(range: string): { readonly sheet: string | null; readonly addresses: readonly string[] } {
  const [, name, cells = ""] = /^(?:(.+)!)?(.+)$/.exec(range.replaceAll("$", "")) ?? [];
  const sheet = name === undefined ? null : name.replace(/^'(.*)'$/, "$1").replaceAll("''", "'");
  const [first = "", last = first] = cells.split(":");
  const from = placeOf(first);
  const to = placeOf(last);
  const addresses: string[] = [];
  for (let row = from.row; row <= to.row; row += 1) {
    for (let column = from.column; column <= to.column; column += 1) addresses.push(addressOf({ row, column }));
  }
  return { sheet, addresses };
}

/** Single cells gathered into as few blocks as they make: `B4:D9, F2`. */
export function blocksOf(addresses: readonly string[]): string {
  const columns = new Map<number, number[]>();
  for (const { row, column } of addresses.map(placeOf)) columns.set(column, [...(columns.get(column) ?? []), row]);
  const runs = [...columns].sort(([a], [b]) => a - b).flatMap(([column, rows]) => runsOf(rows, column));
  const blocks: Block[] = [];
  for (const run of runs) {
    const left = blocks.find(({ to, from }) => to.column === run.from.column - 1 && sameRows({ from, to }, run));
    if (left) left.to = run.to;
    else blocks.push({ ...run });
  }
  return blocks
    .map(({ from, to }) =>
      addressOf(from) === addressOf(to) ? addressOf(from) : `${addressOf(from)}:${addressOf(to)}`,
    )
    .join(", ");
}

interface Block {
  from: Place;
  to: Place;
}

function runsOf(rows: readonly number[], column: number): Block[] {
  const runs: Block[] = [];
  for (const row of [...rows].sort((a, b) => a - b)) {
    const last = runs[runs.length - 1];
    if (last && last.to.row === row - 1) last.to = { row, column };
    else runs.push({ from: { row, column }, to: { row, column } });
  }
  return runs;
}

function sameRows(one: Block, other: Block): boolean {
  return one.from.row === other.from.row && one.to.row === other.to.row;
}

/** `'Result'!$B$4:$B$9`, of a range that may name its sheet and may be absolute already. */
export function absoluteRange(range: string, sheet: string): string {
  const { sheet: named, addresses } = cellsOf(range);
  const [first, last] = [addresses[0]!, addresses[addresses.length - 1]!].map((at) =>
    at.replace(/^([A-Z]+)/, "$$$1$$"),
  );
  return onSheet(named ?? sheet, first === last ? first! : `${first}:${last}`);
}
