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

/** A spreadsheet as the rest of Canyard sees it. An address is `B4` on the sheet in view, or `Plan!B4`. */
export interface SheetAdapter {
  selected(): string;
  select(address: string): void;
  read(address: string): CellReading;
  write(address: string, content: CellContent): void;
  /** Calls the listener after each change of a cell or of the selection; returns how to stop. */
  watch(listener: () => void): () => void;
}
