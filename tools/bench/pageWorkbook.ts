/** The opening workbook without our functions: the same cells, worked by built-in formulas alone. */
import { render } from "../../src/sheet/render";
import type { SheetModel } from "../../src/sheet/sheetModel";
import { holdsOurs } from "../../src/taskpane/formula";
import { isFormula, type Cell, type Sheet, type Workbook } from "../../src/workbooks/model";
import { ternHollow } from "../../src/workbooks/ternHollow";
import { plainOf, type Evaluate } from "../starters/plainFormulas";
import { plainIn } from "./enginePlain";
import { opened } from "./engineSheets";

const WEEK = [6, 7, 8, 9, 10, 11, 12];
const PULSES = [1, 2, 3];
const PULSES_HEAD_ROW = 5;

/** Whose answers fill more than their own cell: each of those gets a formula of its own. */
function spilled(): Record<string, string> {
  const cells: Record<string, string> = {};
  for (const row of WEEK) {
    cells[`Weather!D${row}`] = plainIn(
      "ET0_HARGREAVES",
      { tmax: 90, tmin: 60, latitude: 38, date: 46_209, units: "us" },
      { tmax: `B${row}`, tmin: `C${row}`, latitude: "D$3", date: `A${row}` },
    );
  }
  ["pulse", "start", "stop", "minutes"].forEach((head, at) => {
    cells[`Pulses!${"ABCD"[at]}${PULSES_HEAD_ROW}`] = `="${head}"`;
  });
  for (const pulse of PULSES) {
    const row = PULSES_HEAD_ROW + pulse;
    cells[`Pulses!A${row}`] = pulse === 1 ? "=1" : `=A${row - 1}+1`;
    cells[`Pulses!B${row}`] = `=Plan!$D$30+(A${row}-1)*(D${row}+Plan!$D$29)/1440`;
    cells[`Pulses!C${row}`] = `=B${row}+D${row}/1440`;
    cells[`Pulses!D${row}`] = "=Plan!$D$27/Plan!$D$28+Plan!$D$31";
  }
  return cells;
}

/** Both follow from most of the workbook and stand in the rows that the page shows first. */
const LAST_WORKED = ["A3", "B3"];

/** What these say when all is worked. */
export function textsInView(): string[] {
  const { adapter } = opened(render(ternHollow));
  return LAST_WORKED.map((address) => adapter.read(`Plan!${address}`).shown);
}

export interface Twin {
  readonly plain: Workbook;
  /** Every cell that is worked, with its sheet. */
  readonly worked: readonly string[];
}

export function twinOf(): Twin {
  const { adapter } = opened(render(ternHollow));
  const fills = spilled();
  const plainSheet = (sheet: Sheet): Sheet => {
    const cells: Record<string, Cell> = {};
    for (const [address, cell] of Object.entries(sheet.cells)) cells[address] = plainCell(cell, sheet.name, adapter);
    for (const [place, formula] of Object.entries(fills)) {
      const [on, address] = place.split("!") as [string, string];
      if (on === sheet.name) cells[address] = { ...sheet.cells[address], formula } as Cell;
    }
    return { ...sheet, cells };
  };
  const plain: Workbook = { ...ternHollow, sheets: ternHollow.sheets.map(plainSheet) };
  return { plain, worked: workedIn(plain) };
}

function plainCell(cell: Cell, sheet: string, adapter: SheetModel["adapter"]): Cell {
  if (!isFormula(cell) || !holdsOurs(cell.formula)) return cell;
  const evaluate: Evaluate = (expression) => adapter.evaluate(expression, sheet) as ReturnType<Evaluate>;
  const plain = plainOf(cell.formula, evaluate);
  // What fills a block is laid out cell by cell above.
  return "formula" in plain ? { ...cell, formula: plain.formula } : cell;
}

function workedIn({ sheets }: Workbook): string[] {
  return sheets.flatMap(({ name, cells }) =>
    Object.entries(cells).flatMap(([address, cell]) => {
      if (!isFormula(cell)) return [];
      if (holdsOurs(cell.formula)) throw new Error(`${name}!${address} still has a function of ours: ${cell.formula}`);
      return [`'${name}'!${address}`];
    }),
  );
}
