/** A sheet in memory beside the pane: it reads cells and blocks by their reference and, as Excel, no expressions. */
import type { CellFound, FormulaCell, Rows, SheetHost } from "../../src/taskpane/sheetHost";

export type Cells = Readonly<Record<string, CellFound>>;

interface MemorySheet {
  readonly cells: Cells;
  readonly formulas?: Readonly<Record<string, string>>;
}

const REFERENCE = /^(?:(?:'((?:[^']|'')+)'|(\w+))!)?([A-Z]\d+)(?::([A-Z]\d+))?$/;

function span(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_each, index) => from + index);
}

/** Rows of cells from "B2" to "C3". */
function block(cells: Cells, first: string, last: string): Rows {
  const [left, right] = [first.charCodeAt(0), last.charCodeAt(0)];
  return span(Number(first.slice(1)), Number(last.slice(1))).map((row) =>
    span(left, right).map((column) => cells[`${String.fromCharCode(column)}${row}`] ?? null),
  );
}

export class MemoryHost implements SheetHost {
  readonly kind = "Excel";
  readonly asked: string[] = [];
  readonly entered: string[] = [];
  /** What a cell shows after a formula was entered anew. */
  afterEntering: CellFound = 0;

  constructor(
    private readonly sheets: Readonly<Record<string, MemorySheet>>,
    private readonly selected: { readonly sheet: string; readonly cell: string },
  ) {}

  selection: SheetHost["selection"] = async () => {
    const { sheet, cell } = this.selected;
    const formula = this.sheets[sheet]?.formulas?.[cell] ?? null;
    return { sheet, range: cell, cells: 1, formula, found: this.sheets[sheet]?.cells[cell] ?? null };
  };

  evaluate: SheetHost["evaluate"] = async (expression, sheet) => {
    this.asked.push(expression);
    const [, quoted, bare, first = "", last = first] = REFERENCE.exec(expression.replace(/\$/g, "")) ?? [];
    const place = this.sheets[quoted?.replace(/''/g, "'") ?? bare ?? sheet];
    return first === "" || place === undefined ? null : block(place.cells, first, last);
  };

  writeFormula: SheetHost["writeFormula"] = async () => ({ written: this.selected.cell });

  formulas: SheetHost["formulas"] = async () => {
    const { sheet } = this.selected;
    const { formulas = {}, cells = {} } = this.sheets[sheet] ?? {};
    const found = (address: string): CellFound =>
      this.entered.includes(address) ? this.afterEntering : (cells[address] ?? null);
    return {
      sheet,
      cells: Object.entries(formulas).map(([address, formula]): FormulaCell => ({
        address,
        formula,
        found: found(address),
      })),
    };
  };

  enter: SheetHost["enter"] = async (_sheet, cells) => {
    this.entered.push(...cells.map(({ address }) => address));
    this.lastFormulas = cells.map(({ formula }) => formula);
  };

  lastFormulas: readonly string[] = [];

  onSelection: SheetHost["onSelection"] = () => () => undefined;
}

/** A host with one sheet, Plan, on which the cell with the formula is selected. */
export function hostWith(
  formula: string,
  cells: Cells = {},
  others: Readonly<Record<string, MemorySheet>> = {},
): MemoryHost {
  return new MemoryHost({ Plan: { cells, formulas: { Z1: formula } }, ...others }, { sheet: "Plan", cell: "Z1" });
}
