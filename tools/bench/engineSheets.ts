/** Sheets of many rows, opened in the engine of the browser sheet without a page. */
import engine from "@odoo/o-spreadsheet/dist/o_spreadsheet.cjs";
import type { CellContent } from "../../src/sheet/adapter";
import type { Engine, EngineCommand, EngineData, Position } from "../../src/sheet/engine";
import { prepareEngine } from "../../src/sheet/prepare";
import type { SheetModel } from "../../src/sheet/sheetModel";
import { openSheetModel } from "../../src/sheet/sheetModel";
import { quietly } from "../../test/rig/sheetEngine";
import { builtFunctions } from "./engineFunctions";

export type Cells = Record<string, string>;

const SHEET = "sheet1";
const FILL = "FILL_FIRST_COLUMN";

type Fill = EngineCommand & { readonly top: number; readonly values: readonly number[] };

let isPrepared = false;

function prepareOnce(): void {
  if (isPrepared) return;
  prepareEngine(engine, builtFunctions());
  engine.registries.featurePluginRegistry.replace("fill_first_column", fillPlugin(engine));
  isPrepared = true;
}

/** As in the page, where what changes many cells at once is a command of a plugin: one change, worked once. */
function fillPlugin({ UIPlugin }: Engine): unknown {
  return class FillFirstColumn extends UIPlugin {
    override handle(command: EngineCommand): void {
      if (command.type !== FILL) return;
      const { top, values } = command as Fill;
      values.forEach((value, at) => {
        const place: Position = { sheetId: SHEET, col: 0, row: top - 1 + at };
        this.dispatch("UPDATE_CELL", { ...place, content: String(value) });
      });
    }
  };
}

/** Letters of a column, from 0. */
export function lettersOf(column: number): string {
  return engine.helpers.toXC(column, 0).replace(/\d+/, "");
}

export function dataOf(cells: Cells, rows: number, columns: number): EngineData {
  return {
    version: "19.3.2",
    sheets: [{ id: SHEET, name: "Sheet1", rowNumber: rows, colNumber: columns, cells }],
  };
}

/** Builds the model; all of it is worked when this returns. */
export function opened(data: EngineData): SheetModel {
  prepareOnce();
  return quietly(() => openSheetModel(engine, data, () => {}));
}

export function write({ adapter }: SheetModel, address: string, content: CellContent): void {
  quietly(() => adapter.write(address, content));
}

/** Puts the values into column A from a row down, as one change. */
export function fillFirstColumn({ model }: SheetModel, top: number, values: readonly number[]): void {
  const { isSuccessful } = quietly(() => model.dispatch(FILL, { top, values }));
  if (!isSuccessful) throw new Error("the sheet did not take the values");
}

/** The number in a cell; anything else is a fault of the benchmark. */
export function numberAt({ adapter }: SheetModel, address: string): number {
  const { value, message } = adapter.read(address);
  if (typeof value !== "number") throw new Error(`${address} is ${String(value)}: ${message ?? "not a number"}`);
  return value;
}
