/** A sheet as the day's page shows it: what is typed into each cell, and what it answers through the library. */
import { call } from "../../src/functions";

export type Value = number | string;

/** A piece of a formula with what it is worth; a range is worth its rows. */
export interface Piece {
  readonly text: string;
  readonly value: Value | readonly (readonly Value[])[];
}

export interface SheetCell {
  /** What is typed, for a cell that holds a formula. */
  readonly formula: string | null;
  readonly value: Value;
  /** Filled by the table of another cell. */
  readonly isSpilled: boolean;
}

const ADDRESS = /^\$?([A-Z])\$?(\d+)$/;

function place(address: string): { column: number; row: number } {
  const [, letter = "", row = ""] = ADDRESS.exec(address) ?? [];
  if (letter === "") throw new Error(`${address} is no address of this sheet`);
  return { column: letter.charCodeAt(0) - 65, row: Number(row) };
}

function addressOf(column: number, row: number): string {
  return `${String.fromCharCode(65 + column)}${row}`;
}

export class DaySheet {
  private readonly cells = new Map<string, SheetCell>();

  entries(): readonly (readonly [address: string, cell: SheetCell])[] {
    return [...this.cells];
  }

  input(address: string, value: Value): void {
    this.cells.set(address, { formula: null, value, isSpilled: false });
  }

  /** Puts a formula into a cell; a table spills to the right and down. */
  put(address: string, { text, value }: Piece): void {
    const rows = Array.isArray(value) ? (value as readonly (readonly Value[])[]) : [[value as Value]];
    const { column, row } = place(address);
    rows.forEach((cells, down) => {
      cells.forEach((cell, right) => {
        const isFirst = down === 0 && right === 0;
        const spot = addressOf(column + right, row + down);
        this.cells.set(spot, { formula: isFirst ? `=${text}` : null, value: cell, isSpilled: !isFirst });
      });
    });
  }

  private find(address: string): SheetCell | undefined {
    const { column, row } = place(address);
    return this.cells.get(addressOf(column, row));
  }

  has(address: string): boolean {
    return this.find(address) !== undefined;
  }

  cell(address: string): SheetCell {
    const found = this.find(address);
    if (found === undefined) throw new Error(`nothing stands in ${address}`);
    return found;
  }

  value(address: string): Value {
    return this.cell(address).value;
  }

  number(address: string): number {
    const value = this.value(address);
    if (typeof value !== "number") throw new Error(`${address} holds ${value}, not a number`);
    return value;
  }

  at(address: string): Piece {
    return { text: address, value: this.value(address) };
  }

  /** A column of cells, "A5:A9". */
  range(addresses: string): Piece {
    const [first = "", last = ""] = addresses.split(":");
    const { column, row } = place(first);
    const length = place(last).row - row + 1;
    const value = Array.from({ length }, (_, down) => [this.value(addressOf(column, row + down))]);
    return { text: addresses, value };
  }

  /** A function of the library on cells, numbers and other formulas. */
  canyard(name: string, ...args: readonly (Piece | number | string)[]): Piece {
    const pieces = args.map((arg): Piece => {
      if (typeof arg === "number") return { text: String(arg), value: arg };
      return typeof arg === "string" ? this.at(arg) : arg;
    });
    return {
      text: `CANYARD.${name}(${pieces.map(({ text }) => text).join(", ")})`,
      value: call(
        name,
        pieces.map(({ value }) => value),
      ) as Piece["value"],
    };
  }
}
