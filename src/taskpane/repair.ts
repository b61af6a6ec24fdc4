/** Cells of ours whose names the host has not bound, or that carry the form in which a file stores them. */
import { holdsOurs, withShownNames } from "./formula";
import { isError } from "./shown";
import type { FormulaCell, SheetHost } from "./sheetHost";

/** What a sheet shows for a name that it does not know. */
const UNKNOWN_NAME = ["#NAME?", "#BAD_EXPR"];

export interface Repaired {
  readonly sheet: string;
  /** Addresses of the cells that were entered anew. */
  readonly entered: readonly string[];
  /** Those of them that the sheet still does not know. */
  readonly stillUnknown: readonly string[];
}

function isUnknown({ found }: FormulaCell): boolean {
  return isError(found) && UNKNOWN_NAME.includes(found.code);
}

/** Enters them anew, so that the host binds their names. */
export async function repairSheet(host: SheetHost): Promise<Repaired> {
  const { sheet, cells } = await host.formulas();
  const mended = cells
    .filter((cell) => holdsOurs(cell.formula) && (withShownNames(cell.formula) !== null || isUnknown(cell)))
    .map(({ address, formula }) => ({ address, formula: withShownNames(formula) ?? formula }));
  if (mended.length === 0) return { sheet, entered: [], stillUnknown: [] };
  await host.enter(sheet, mended);
  const entered = mended.map(({ address }) => address);
  const after = await host.formulas();
  const stillUnknown = after.cells.filter((cell) => entered.includes(cell.address) && isUnknown(cell));
  return { sheet, entered, stillUnknown: stillUnknown.map(({ address }) => address) };
}
