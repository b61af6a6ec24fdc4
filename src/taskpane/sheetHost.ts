/**
 * What the pane needs of the spreadsheet beside it. Three sheets stand behind it: Excel, the browser sheet, and none,
 * when the pane is a plain page.
 */

import type { Edition } from "../workbooks/kit";
import type { Workbook } from "../workbooks/model";

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

/** One edition of a starter, as the site hands it out. */
export interface StarterWorkbook {
  readonly id: string;
  readonly edition: Edition;
  readonly title: string;
  readonly purpose: string;
  readonly workbook: Workbook;
}

/** What came of adding a workbook's sheets to another. */
export interface Addition {
  /** Names of the new sheets. */
  readonly sheets: readonly string[];
  /** Parts that this host cannot make, in words. */
  readonly leftOut: readonly string[];
  readonly isOneUndoStep: boolean;
}

export interface Startup {
  read(): Promise<boolean>;
  set(isOn: boolean): Promise<void>;
}

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
  /** Whether the open workbook starts us by itself; only where the host has such a setting. */
  readonly startup?: Startup;
  onSelection(listener: () => void): () => void;
  /** Adds new sheets to the workbook that is open, where the host can; what is there stays as it is. */
  addWorkbook?(starter: StarterWorkbook): Promise<Addition>;
  /** Opens a starter in the place of the present workbook, where the host can; false when the person would not. */
  openStarter?(id: string, edition: Edition): Promise<boolean>;
}

/** A sentence for the pane: what could not be done, and what would help. */
export class HostFailure extends Error {}
