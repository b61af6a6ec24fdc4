export type CellContent = string | number | boolean;

export interface CellReading {
  /** The formula as typed, or null for a cell without one. */
  readonly formula: string | null;
  /** Null for an empty cell; the error code for a cell in error. */
  readonly value: CellContent | null;
  /** The value as the grid shows it. */
  readonly shown: string;
  /** The whole error text, or null. */
  readonly message: string | null;
}

/** What stands in a cell, for someone who reads many: null for an empty one, code and text for one in error. */
export type CellFound = CellContent | null | { readonly code: string; readonly message: string };

export interface FormulaCell {
  readonly address: string;
  readonly formula: string;
  readonly found: CellFound;
}

/** A spreadsheet as the rest of Canyard sees it. An address is `B4` on the sheet in view, or `Plan!B4`. */
export interface SheetAdapter {
  selected(): string;
  /** The sheet in view and the selected block on it: `A6:D9`, or `B4` for one cell. */
  selection(): { readonly sheet: string; readonly range: string };
  /** What an expression is on a sheet, as rows: a reference gives its cells, anything else what it works out to. */
  evaluate(expression: string, sheet: string): readonly (readonly CellFound[])[];
  /** Every formula of a sheet. */
  formulas(sheet: string): readonly FormulaCell[];
  select(address: string): void;
  read(address: string): CellReading;
  write(address: string, content: CellContent): void;
  /** Calls the listener after each change of a cell or of the selection; returns how to stop. */
  watch(listener: () => void): () => void;
}
