/** A generated call and what came of it, the same for both roads. */
import type { ArgumentInput } from "../../src/kernel";
import type { Kind } from "./kinds";

/** A cell of one of the host's richer data types; what counts is its plain value, if it has one. */
export interface DataTypeInput {
  readonly type: string;
  readonly basicType?: string;
  readonly numberFormat?: string;
  readonly text?: string;
  readonly basicValue?: number | string | boolean;
}

export type HostileInput = ArgumentInput | DataTypeInput;

export interface HostileCall {
  /** Its place in the run: with the seed, and the function where one alone was asked for, it makes the same call again. */
  readonly index: number;
  /** As a cell has it, without the prefix; of no function where the name itself is wrong. */
  readonly name: string;
  readonly args: readonly HostileInput[];
  /** Every kind of input in it. */
  readonly kinds: readonly Kind[];
}

export interface CellError {
  readonly code: string;
  readonly message: string;
}

export type Cell = unknown;

export type Outcome =
  | { readonly kind: "answer"; readonly value: Cell | readonly (readonly Cell[])[] }
  | { readonly kind: "error"; readonly code: string; readonly message: string }
  /** An exception that reached the caller. */
  | { readonly kind: "thrown"; readonly text: string };

export function isCellError(cell: Cell): cell is CellError {
  return typeof cell === "object" && cell !== null && typeof (cell as Partial<CellError>).code === "string";
}

export function isDataType(input: HostileInput): input is DataTypeInput {
  return typeof input === "object" && input !== null && "type" in input;
}

export type Rows = readonly (readonly HostileInput[])[];

export function isRows(input: HostileInput): input is Extract<ArgumentInput, readonly unknown[]> {
  return Array.isArray(input);
}

/** All cells of all arguments. */
export function cellsOf(args: readonly HostileInput[]): HostileInput[] {
  return args.flatMap((input) => (isRows(input) ? input.flat() : [input]));
}

const SHOWN_CELLS = 40;
const SHOWN_LETTERS = 60;

function cellText(cell: unknown): string {
  if (typeof cell === "number") return Object.is(cell, -0) ? "-0" : String(cell);
  if (typeof cell === "string" && cell.length > SHOWN_LETTERS) {
    return `${JSON.stringify(cell.slice(0, SHOWN_LETTERS))} and so on, ${cell.length} letters`;
  }
  return JSON.stringify(cell) ?? "left out";
}

function inputText(input: HostileInput): string {
  if (!isRows(input)) return cellText(input);
  const cells = input.flat();
  if (cells.length > SHOWN_CELLS) {
    const first = cells.slice(0, 6).map(cellText).join(", ");
    return `{${first} and so on, ${input.length} x ${input[0]?.length ?? 0} cells}`;
  }
  return `{${input.map((row) => row.map(cellText).join(", ")).join("; ")}}`;
}

/** For a person who looks into a fault; the call itself is made again from seed and index. */
export function hostileCallText({ name, args }: HostileCall): string {
  return `${name}(${args.map(inputText).join(", ")})`;
}
