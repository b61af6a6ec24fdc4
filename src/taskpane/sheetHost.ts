/**
 * What the pane needs of the spreadsheet beside it. Three sheets stand behind it: Excel, the browser sheet, and none,
 * when the pane is a plain page.
 */

/** A cell as the sheet gives it: null for an empty one, code and text for one in error. */
export type CellFound = number | string | boolean | null | { readonly code: string; readonly message: string };
export type Rows = readonly (readonly CellFound[])[];

/** The selected block: its sheet, its address on it, and its first cell. */
export interface Selection {
  readonly sheet: string;
  readonly range: string;
  readonly cells: number;
  readonly formula: string | null;
  readonly found: CellFound;
}

export interface FormulaCell {
  readonly address: string;
  readonly formula: string;
  readonly found: CellFound;
}

export type Written = { readonly written: string } | { readonly occupiedBy: string; readonly address: string };

export interface SheetHost {
  readonly kind: "Excel" | "browser sheet" | "page";
  selection(): Promise<Selection>;
  /** The cells that a reference names, read on a sheet; null where this host cannot work out such an expression. */
  evaluate(expression: string, sheet: string): Promise<Rows | null>;
  /** Writes into the selected cell. One that is not empty is left alone unless `replace` is given. */
  writeFormula(formula: string, replace: boolean): Promise<Written>;
  formulas(): Promise<{ readonly sheet: string; readonly cells: readonly FormulaCell[] }>;
  /** Enters formulas anew, so that the host binds their names. */
  enter(sheet: string, cells: readonly { readonly address: string; readonly formula: string }[]): Promise<void>;
  onSelection(listener: () => void): () => void;
}

/** A sentence for the pane: what could not be done, and what would help. */
export class HostFailure extends Error {}
