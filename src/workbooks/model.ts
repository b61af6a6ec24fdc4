/**
 * A workbook as plain data: no host and no engine. Formulas are written as in Excel
 * (English names, commas); every address is in A1 form.
 */
export interface Workbook {
  readonly name: string;
  readonly sheets: readonly Sheet[];
  /** Name to range with its sheet: `{ Flow: "Plan!$B$4" }`. */
  readonly namedRanges?: Readonly<Record<string, string>>;
}

export interface Sheet {
  readonly name: string;
  readonly cells: Readonly<Record<string, Cell>>;
  /** Column letter to width in characters, as Excel counts them. */
  readonly columnWidths?: Readonly<Record<string, number>>;
  readonly frozen?: { readonly rows?: number; readonly columns?: number };
  readonly validations?: readonly ListValidation[];
  readonly charts?: readonly Chart[];
  /** Size of the sheet; never less than its cells need. */
  readonly rows?: number;
  readonly columns?: number;
}

export type Cell = Content & { readonly style?: StyleName; readonly format?: FormatName };

type Content =
  | { readonly value: number | string | boolean; readonly formula?: never }
  | { readonly formula: string; readonly value?: never }
  | { readonly value?: never; readonly formula?: never };

export const STYLE_NAMES = ["title", "heading", "input", "result", "note", "check"] as const;
export type StyleName = (typeof STYLE_NAMES)[number];

/** Places after the decimal point are in the name; dates and times are serial numbers of the 1900 system. */
export const FORMAT_NAMES = [
  "decimals0",
  "decimals1",
  "decimals2",
  "decimals3",
  "percent",
  "date",
  "time",
  "money",
  "text",
] as const;
export type FormatName = (typeof FORMAT_NAMES)[number];

/** The cells of the range take one of these words. */
export interface ListValidation {
  readonly range: string;
  readonly allowed: readonly string[];
}

export interface Chart {
  readonly type: "line" | "column" | "bar";
  readonly title: string;
  readonly labels: string;
  readonly series: readonly { readonly name: string; readonly values: string }[];
  readonly axisTitles?: { readonly labels?: string; readonly values?: string };
  /** Top left cell, and size in pixels. */
  readonly position: { readonly cell: string; readonly width: number; readonly height: number };
}
