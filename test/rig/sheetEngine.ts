import engine from "@odoo/o-spreadsheet/dist/o_spreadsheet.cjs";
import type { CellContent } from "../../src/sheet/adapter";
import type { Engine, EngineData } from "../../src/sheet/engine";
import type { Functions } from "../../src/sheet/functions";
import { prepareEngine } from "../../src/sheet/prepare";
import { render } from "../../src/sheet/render";
import type { SheetModel } from "../../src/sheet/sheetModel";
import { openSheetModel } from "../../src/sheet/sheetModel";
import type { Cell, Workbook } from "../../src/workbooks/model";

export interface HeadlessSheet {
  value(address: string): CellContent | null;
  message(address: string): string | null;
  set(address: string, content: CellContent): void;
  /** What lies behind, for tests of the adapter and of saving. */
  readonly sheet: SheetModel;
}

let isRegistered = false;

/** The browser sheet's engine without a browser. In one test file the first call decides which functions it has. */
export function createHeadlessSheet(functions: Functions): {
  readonly engine: Engine;
  open(workbook: Workbook | Record<string, CellContent>): HeadlessSheet;
  /** What was saved or read from a file. */
  opened(data: EngineData): HeadlessSheet;
} {
  if (!isRegistered) prepareEngine(engine, functions);
  isRegistered = true;
  const opened = (data: EngineData) => headless(quietly(() => openSheetModel(engine, data, () => {})));
  return {
    engine,
    open: (given) => opened(render(isWorkbook(given) ? given : asWorkbook(given))),
    opened,
  };
}

function headless(sheet: SheetModel): HeadlessSheet {
  return {
    sheet: { ...sheet, exportData: () => quietly(sheet.exportData) },
    value: (address) => sheet.adapter.read(address).value,
    message: (address) => sheet.adapter.read(address).message,
    set: (address, content) => quietly(() => sheet.adapter.write(address, content)),
  };
}

function isWorkbook(given: Workbook | Record<string, CellContent>): given is Workbook {
  return Array.isArray(given["sheets"]);
}

function asWorkbook(contents: Record<string, CellContent>): Workbook {
  const cells = Object.entries(contents).map(([address, content]): [string, Cell] => [address, asCell(content)]);
  return { name: "Test", sheets: [{ name: "Sheet1", cells: Object.fromEntries(cells) }] };
}

function asCell(content: CellContent): Cell {
  return typeof content === "string" && content.startsWith("=") ? { formula: content } : { value: content };
}

// The engine tells console.debug of each evaluation.
export function quietly<T>(work: () => T): T {
  const { debug } = console;
  console.debug = () => {};
  try {
    return work();
  } finally {
    console.debug = debug;
  }
}
