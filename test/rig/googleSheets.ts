/**
 * Google Sheets without Google Sheets: the built script in a context that has nothing but the language itself, called
 * with what that host sends. As in a sheet, every value is made inside the context.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext, type Context } from "node:vm";
import type { ArgumentInput, CellInput, Entry, Param } from "../../src/kernel";

export const SCRIPT_FILE = join(__dirname, "../../dist/google-sheets/Canyard.gs");
export const script = readFileSync(SCRIPT_FILE, "utf8");

type Found = { readonly value: unknown } | { readonly error: string };

export interface GoogleSheet {
  readonly context: Context;
  /** The answer of a cell, or what its #ERROR! says. */
  cell(name: string, args: readonly unknown[]): Found;
  /** The answer of a call that must have one. */
  valueOf(name: string, ...args: readonly unknown[]): unknown;
  /** The text of a call that must be refused. */
  errorOf(name: string, ...args: readonly unknown[]): string;
  /** A date as a cell of the context's own time zone holds it; the month counts from 1. */
  date(year: number, month: number, day: number, hour?: number, minute?: number): unknown;
  /** A Date of the context at a moment of universal time. */
  moment(milliseconds: number): unknown;
}

/** A table of the context as one of our own, so that they compare. */
function plain(value: unknown): unknown {
  return Array.isArray(value) ? value.map(plain) : value;
}

export function openGoogleSheet(services: Readonly<Record<string, unknown>> = {}): GoogleSheet {
  const context = createContext({ ...services });
  runInContext(script, context, { filename: "Canyard.gs" });
  const run = <T>(code: string): T => runInContext(code, context) as T;
  const callIn = run<(name: string, args: readonly unknown[]) => unknown>("(name, args) => globalThis[name](...args)");
  const ownRows = run<(rows: unknown) => unknown>("(rows) => Array.from(rows, (row) => Array.from(row))");
  const DateThere = run<DateConstructor>("Date");
  const cell = (name: string, args: readonly unknown[]): Found => {
    const given = args.map((arg) => (Array.isArray(arg) ? ownRows(arg) : arg));
    try {
      return { value: plain(callIn(name, given)) };
    } catch (error) {
      return { error: (error as Error).message };
    }
  };
  return {
    context,
    cell,
    valueOf(name, ...args) {
      const found = cell(name, args);
      if ("error" in found) throw new Error(found.error);
      return found.value;
    },
    errorOf(name, ...args) {
      const found = cell(name, args);
      if ("error" in found) return found.error;
      throw new Error(`${name} answered ${JSON.stringify(found.value)} where an error was due`);
    },
    date: (year, month, day, hour = 0, minute = 0) => new DateThere(year, month - 1, day, hour, minute),
    moment: (milliseconds) => new DateThere(milliseconds),
  };
}

const MILLISECONDS_PER_DAY = 86_400_000;

function dateOf(serial: number, sheet: GoogleSheet): unknown {
  const days = Math.floor(serial);
  const minutes = Math.round(((serial - days) * MILLISECONDS_PER_DAY) / 60_000);
  return sheet.date(1899, 12, 30 + days, 0, minutes);
}

function holdsDates(param: Param): boolean {
  return "quantity" in param && (param.quantity === "date" || param.quantity === "time of day");
}

/** An empty cell is an empty text. */
function cellSent(cell: CellInput): unknown {
  return cell ?? "";
}

/** A range of one cell is its value; the first column of a weather table holds dates. */
function rangeSent(rows: readonly (readonly CellInput[])[], param: Param | undefined, sheet: GoogleSheet): unknown {
  const table = rows.map((row) =>
    row.map((cell, column) =>
      param?.kind === "cells" && column === 0 && typeof cell === "number" ? dateOf(cell, sheet) : cellSent(cell),
    ),
  );
  return table.length === 1 && table[0]?.length === 1 ? table[0][0] : table;
}

/** The arguments of a call as that host sends them: what is left out at the end is not there at all. */
export function argumentsSent(entry: Entry, args: readonly ArgumentInput[], sheet: GoogleSheet): readonly unknown[] {
  const params = Object.values(entry.params);
  const last = args.reduce<number>((found, arg, index) => (arg === undefined ? found : index), -1);
  return args.slice(0, last + 1).map((arg, index) => {
    const param = params[index];
    if (Array.isArray(arg)) return rangeSent(arg as readonly (readonly CellInput[])[], param, sheet);
    if (typeof arg === "number" && param !== undefined && holdsDates(param)) return dateOf(arg, sheet);
    return cellSent(arg as CellInput);
  });
}
