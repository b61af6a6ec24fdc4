import type { Engine, EngineCommand, EngineModel, EnginePlugin, EngineRange } from "./engine";
import type { GrowingBlock } from "./growingBlock";
import { growingBlockOf } from "./growingBlock";

/** One value for each field of the growing block, in their order; null leaves the cell empty. */
export type BlockRow = readonly (number | string | null)[];

export const LEAST_ROWS = 2;
/** A formula may look at the days around; in a block shorter than this it would lose them. */
const LEAST_KEPT = 8;
const COMMAND = "BRING_IN_ROWS";

/** Puts the rows in the place of those in the growing block, as one change that one undo takes back. */
export function bringIn(model: EngineModel, rows: readonly BlockRow[]): void {
  if (rows.length < LEAST_ROWS) throw new Error(`a growing block has at least ${LEAST_ROWS} rows`);
  const { isSuccessful } = model.dispatch(COMMAND, { rows });
  if (!isSuccessful) throw new Error("the sheet did not take the rows");
}

type BringIn = EngineCommand & { readonly rows: readonly BlockRow[] };

export function bringInPlugin(engine: Engine): unknown {
  return class BringInRows extends engine.UIPlugin {
    override handle(command: EngineCommand): void {
      if (command.type !== COMMAND) return;
      const { rows } = command as BringIn;
      // Read anew each time: what is put in or taken out in one block moves the others.
      const block = (): GrowingBlock => growingBlockOf(this as unknown as EngineModel)!;
      const blocks = [() => block().inputs, ...block().following.map((_, at) => () => block().following[at]!)];
      for (const range of blocks) fit(this, range(), rows.length);
      write(this, block(), rows);
      for (const { sheetId, zone } of block().following) fillColumns(this, { sheetId, zone });
    }
  };
}

function fit({ dispatch, getters }: EnginePlugin, { sheetId, zone }: EngineRange, days: number): void {
  const present = zone.bottom - zone.top + 1;
  const wanted = Math.max(days, Math.min(present, LEAST_KEPT));
  const about = { sheetId, sheetName: getters.getSheetName(sheetId), dimension: "ROW" };
  // Below the first row and above the last, so that every range over the block grows or shrinks with it.
  if (wanted > present) {
    dispatch("ADD_COLUMNS_ROWS", { ...about, base: zone.top, position: "after", quantity: wanted - present });
  } else if (wanted < present) {
    const elements = Array.from({ length: present - wanted }, (_, at) => zone.top + 1 + at);
    dispatch("REMOVE_COLUMNS_ROWS", { ...about, elements });
  }
}

function write({ dispatch }: EnginePlugin, { inputs, fields }: GrowingBlock, rows: readonly BlockRow[]): void {
  const { sheetId, zone } = inputs;
  for (let row = zone.top; row <= zone.bottom; row += 1) {
    fields.forEach(({ column }, at) => {
      const content = String(rows[row - zone.top]?.[at] ?? "");
      dispatch("UPDATE_CELL", { sheetId, col: column.zone.left, row, content });
    });
  }
}

/**
 * One formula per column: that of the last row in every row but the first. It is as that of the first, save that the
 * engine forgets of `$D$8:D8` in a first row that it is the start of a block. A table that spills fills its rows itself.
 */
function fillColumns({ dispatch, getters }: EnginePlugin, { sheetId, zone }: EngineRange): void {
  for (let col = zone.left; col <= zone.right; col += 1) {
    const hasFirst = getters.getCell({ sheetId, col, row: zone.top })?.isFormula;
    const last = getters.getCell({ sheetId, col, row: zone.bottom });
    if (!hasFirst || !last?.isFormula) continue;
    for (let row = zone.top + 1; row < zone.bottom; row += 1) {
      const content = getters.getTranslatedCellFormula(sheetId, 0, row - zone.bottom, last.compiledFormula);
      dispatch("UPDATE_CELL", { sheetId, col, row, content });
    }
  }
}
