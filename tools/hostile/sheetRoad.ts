/** The road of the browser sheet: its adapter, in its own engine. */
import engine from "@odoo/o-spreadsheet/dist/o_spreadsheet.cjs";
import * as functions from "../../src/functions";
import type { CellFound, SheetAdapter } from "../../src/sheet/adapter";
import type { EngineArgument, EngineCell, EngineResult } from "../../src/sheet/engine";
import { withoutDoubledQuotes } from "../../src/sheet/quotes";
import { createHeadlessSheet, quietly } from "../../test/rig/sheetEngine";
import { isCellError, isDataType, isRows, type HostileCall, type HostileInput, type Outcome } from "./call";
import { codeOn } from "./passedErrors";

const GIVEN = "HOSTILE.GIVEN";
const SHEET = "Sheet1";

/** What the calls in hand are given, by number: the function above hands it into a formula, whatever it is. */
let inHand: EngineArgument[] = [];

function engineCell(cell: HostileInput): EngineCell {
  if (isCellError(cell)) return { value: codeOn("browser sheet", cell.code) };
  if (typeof cell === "object" && cell !== null && isDataType(cell)) return { value: cell.basicValue ?? null };
  return { value: (cell ?? null) as EngineCell["value"] };
}

/** Row first to column first. */
function engineArgument(input: HostileInput): EngineArgument {
  if (input === undefined) return undefined;
  if (!isRows(input)) return engineCell(input);
  return (input[0] ?? []).map((_cell, column) => input.map((row) => engineCell(row[column])));
}

const LONGEST_WRITTEN = 200;

/** The input as it is typed into a formula; null where it cannot be, or not so that it is the same. */
function written(input: HostileInput): string | null {
  if (input === undefined) return "";
  if (typeof input === "boolean") return input ? "TRUE" : "FALSE";
  if (typeof input === "number") return Number.isFinite(input) && !Object.is(input, -0) ? String(input) : null;
  if (typeof input !== "string" || input.length > LONGEST_WRITTEN || /[\\\0\r\uD83C\u202E]/.test(input)) return null;
  return `"${input.replaceAll('"', '""')}"`;
}

const IN_THREE = 3;

/** The call as a formula: one argument in three as typed where it can be, the others through the function above. */
function formulaOf({ name, args, index }: HostileCall): string {
  const texts = args.map((input, at) => {
    const typed = (index + at) % IN_THREE === 0 || input === undefined ? written(input) : null;
    if (typed !== null) return typed;
    inHand.push(engineArgument(input));
    return `${GIVEN}(${inHand.length - 1})`;
  });
  // What is left out at the end has no comma before it.
  while (texts.length > 1 && texts[texts.length - 1] === "") texts.pop();
  return `CANYARD.${name}(${texts.join(", ")})`;
}

const codes = new Set<unknown>(Object.values(engine.CellErrorType));

function cellOf({ value, message }: EngineCell): unknown {
  return codes.has(value) ? { code: value, message: message ?? "" } : value;
}

function outcomeOf(rows: readonly (readonly unknown[])[], isTable: boolean): Outcome {
  const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : undefined;
  if (isCellError(only)) return { kind: "error", code: only.code, message: only.message };
  return { kind: "answer", value: only === undefined || isTable ? rows : only };
}

const tables = new Set(functions.catalogue.filter(({ result }) => result.shape === "table").map(({ name }) => name));

function caught(work: () => Outcome): Outcome {
  try {
    return work();
  } catch (error) {
    return { kind: "thrown", text: error instanceof Error ? error.message : String(error) };
  }
}

/** The way of each call: how the sheet is asked. */
export const WAYS = ["worked out as an expression", "in a cell, spilling", "handed to the function itself"] as const;
export type Way = (typeof WAYS)[number];

export interface SheetRoad {
  /** One call; nothing else happens meanwhile. */
  run(call: HostileCall, way: Exclude<Way, "in a cell, spilling">): Outcome;
  /** Many calls, each a formula in a cell of one workbook. */
  runInCells(calls: readonly HostileCall[]): Outcome[];
}

/** Columns and rows that a formula has for its table; one that needs more is refused by the engine, and is then worked out as an expression. */
const ROOM = { columns: 16, rows: 80 };

export function openSheetRoad(): SheetRoad {
  const headless = createHeadlessSheet(functions);
  if (!engine.registries.functionRegistry.contains(GIVEN)) engine.addFunction(GIVEN, givenFunction());
  const { adapter } = headless.open({}).sheet;
  return {
    run: (call, way) => {
      inHand = [];
      return quietlyAll(() => caught(() => (way === WAYS[2] ? direct(call) : expression(adapter, call))));
    },
    runInCells: (calls) => {
      inHand = [];
      return quietlyAll(() => inCells(headless, calls, adapter));
    },
  };
}

function givenFunction(): Parameters<typeof engine.addFunction>[1] {
  const compute = (which: EngineArgument): EngineResult =>
    inHand[(which as { value: number }).value] ?? { value: null };
  const args = [{ name: "which", description: "", type: ["ANY"], acceptMatrix: false, acceptErrors: true }];
  return { description: "", category: "", args, compute };
}

function expression(adapter: SheetAdapter, call: HostileCall): Outcome {
  const rows: readonly (readonly (CellFound | undefined)[])[] = adapter.evaluate(formulaOf(call), SHEET);
  return outcomeOf(rows, tables.has(call.name));
}

/** As the engine calls it, so that no part of the engine mends what comes out. */
function direct(call: HostileCall): Outcome {
  const name = `CANYARD.${call.name}`;
  if (!engine.registries.functionRegistry.contains(name)) {
    return { kind: "error", code: "#NAME?", message: `Unknown function: "${name}"` };
  }
  const found = engine.registries.functionRegistry.get(name).compute(...call.args.map(engineArgument));
  if (!Array.isArray(found)) return outcomeOf([[cellOf(found)]], tables.has(call.name));
  return outcomeOf(
    (found[0] ?? []).map((_cell: EngineCell, row: number) => found.map((column) => cellOf(column[row]!))),
    tables.has(call.name),
  );
}

function inCells(
  headless: ReturnType<typeof createHeadlessSheet>,
  calls: readonly HostileCall[],
  adapter: SheetAdapter,
): Outcome[] {
  const width = (call: HostileCall): number => (tables.has(call.name) ? ROOM.columns : 1);
  const columns: number[] = [];
  const cells: Record<string, string> = {};
  let next = 0;
  for (const call of calls) {
    columns.push(next);
    cells[engine.helpers.toXC(next, 0)] = withoutDoubledQuotes(`=${formulaOf(call)}`);
    next += width(call);
  }
  const sheet = { id: "s", name: SHEET, colNumber: next + 1, rowNumber: ROOM.rows, cells };
  const { sheet: opened } = headless.opened({ sheets: [sheet] });
  return calls.map((call, index) => {
    const column = columns[index]!;
    const zone = opened.model.getters.getSpreadZone({ sheetId: "s", col: column, row: 0 });
    const [right, bottom] = zone === undefined ? [column, 0] : [zone.right, zone.bottom];
    const rows = Array.from({ length: bottom + 1 }, (_row, row) =>
      Array.from({ length: right - column + 1 }, (_column, across) => {
        const { value, message } = opened.adapter.read(engine.helpers.toXC(column + across, row));
        return cellOf({ value, ...(message === null ? {} : { message }) });
      }),
    );
    const outcome = outcomeOf(rows, tables.has(call.name));
    return isOutOfRoom(outcome) ? caught(() => expression(adapter, call)) : outcome;
  });
}

const isOutOfRoom = (outcome: Outcome): boolean =>
  outcome.kind === "error" && /^Result couldn't be automatically expanded/.test(outcome.message);

/** The engine and the adapter tell the console of what went wrong inside; the text of the cell says it too. */
function quietlyAll<T>(work: () => T): T {
  const { error } = console;
  console.error = () => {};
  try {
    return quietly(work);
  } finally {
    console.error = error;
  }
}
