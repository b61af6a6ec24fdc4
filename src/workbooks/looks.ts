/** How each style and format of the model looks, for whatever draws a workbook. Colours are RRGGBB. */
import type { FormatName, StyleName } from "./model";

export interface Look {
  readonly text: string;
  readonly fill?: string;
  readonly bold?: true;
  readonly italic?: true;
  readonly size?: number;
  readonly centred?: true;
  readonly wraps?: true;
  readonly middle?: true;
  /** A line around the cell. */
  readonly boxed?: true;
}

// Inputs are boxed and results bold: the mark does not rest on colour.
export const LOOKS: Readonly<Record<StyleName, Look>> = {
  title: { text: "1B3A2B", bold: true, size: 16 },
  heading: { text: "1B3A2B", fill: "DCE8E0", bold: true, wraps: true, middle: true },
  input: { text: "1F2937", fill: "FFF7D6", boxed: true },
  locked: { text: "1F2937", fill: "E5E7EB" },
  result: { text: "1F2937", bold: true },
  note: { text: "4B5563", italic: true },
  caution: { text: "7A2E0E", bold: true },
  check: { text: "1F2937", fill: "E8EEF7", bold: true, centred: true },
  mark: { text: "4B5563", italic: true, centred: true },
  total: { text: "1F2937", fill: "F1F5F2", bold: true },
};

export const BOX_COLOUR = "6B7280";

/** What a check says, and the colours that go with it. */
export const CHECK_COLOURS = [
  { words: ["OK", "All checks OK"], text: "14532D", fill: "D3F0DC" },
  { words: ["LOOK", "See Checks"], text: "7F1D1D", fill: "FBD9D9" },
] as const;

/** Series of a chart in their order: apart in lightness as well, for those who do not tell red from green. */
export const SERIES_COLOURS = ["1F6F54", "2F6DB5", "B7791F", "8E3B46", "5B4B8A", "4B5563", "0F766E", "9A3412"] as const;

export const NUMBER_FORMATS: Readonly<Record<FormatName, string>> = {
  decimals0: "#,##0",
  decimals1: "#,##0.0",
  decimals2: "#,##0.00",
  decimals3: "#,##0.000",
  decimals4: "#,##0.0000",
  percent: "0.0%",
  percent0: "0%",
  date: "yyyy-mm-dd",
  time: "hh:mm",
  money: "#,##0.00",
  money0: "#,##0",
  text: "@",
};
