/** The browser sheet's engine without a browser: a workbook opened, its cells read, expressions worked on its sheets. */
import engine from "@odoo/o-spreadsheet/dist/o_spreadsheet.cjs";
import * as functions from "../../src/functions";
import type { CellContent, CellFound } from "../../src/sheet/adapter";
import { registerCatalogue } from "../../src/sheet/registration";
import { render } from "../../src/sheet/render";
import { openSheetModel } from "../../src/sheet/sheetModel";
import type { Workbook } from "../../src/workbooks/model";

export interface HeadlessSheet {
  /** Null for an empty cell. */
  value(address: string): CellContent | null;
  /** Why a cell is in error; null for any other. */
  message(address: string): string | null;
  /** What an expression is on a sheet, as rows. */
  evaluate(expression: string, sheet: string): readonly (readonly CellFound[])[];
}

let isRegistered = false;

export function openHeadless(workbook: Workbook): HeadlessSheet {
  return quietly(() => {
    if (!isRegistered) registerCatalogue(engine, functions);
    isRegistered = true;
    const { adapter } = openSheetModel(engine, render(workbook), () => {});
    return {
      value: (address) => adapter.read(address).value,
      message: (address) => adapter.read(address).message,
      evaluate: (expression, sheet) => quietly(() => adapter.evaluate(expression, sheet)),
    };
  });
}

/** The engine tells console.debug of each evaluation. */
function quietly<T>(work: () => T): T {
  const { debug } = console;
  console.debug = () => {};
  try {
    return work();
  } finally {
    console.debug = debug;
  }
}
