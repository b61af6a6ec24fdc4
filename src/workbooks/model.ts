/**
 * A workbook as plain data: no host and no engine. Formulas are written as in Excel
 * (English names, commas, `CANYARD.` before a function of ours); every address is in A1 form.
 */
export interface Workbook {
  readonly name: string;
  readonly sheets: readonly Sheet[];
  /** Name to range with its sheet: `{ supply_flow: "Inputs!$D$4" }`. */
  readonly namedRanges?: Readonly<Record<string, string>>;
  /** Blocks of rows that grow together when a longer table is brought in. */
  readonly growing?: Growing;
}

export interface Sheet {
  readonly name: string;
  readonly cells: Readonly<Record<string, Cell>>;
  /** Column letter to width in characters, as Excel counts them. */
  readonly columnWidths?: Readonly<Record<string, number>>;
  readonly frozen?: { readonly rows?: number; readonly columns?: number };
  readonly validations?: readonly Validation[];
  readonly charts?: readonly Chart[];
  readonly print?: Print;
  /** Size of the sheet; never less than its cells need. */
  readonly rows?: number;
  readonly columns?: number;
}

export type Cell = Content & {
  readonly style?: StyleName;
  readonly format?: FormatName;
  /** Long words go on in further lines of the cell. */
  readonly wraps?: true;
};

type Content = ValueContent | FormulaContent | TableContent | ExplainingContent | EmptyContent;

interface ValueContent {
  readonly value: number | string | boolean;
}

interface FormulaContent {
  readonly formula: string;
  /** The same in built-in functions, where it cannot be made from the functions' own plain formulas. */
  readonly plain?: string;
}

/** One call whose answer fills a block, this cell its top left corner. Cells below and beside it stay empty or carry formats only. */
export interface TableContent {
  readonly table: string;
  readonly rows: number;
  readonly columns: number;
  /** Row by row what each cell is in built-in functions; "" where there is no such formula. */
  readonly plain?: readonly (readonly string[])[];
}

/** Words, followed by the plain formula of the cell named. */
interface ExplainingContent {
  readonly words: string;
  readonly plainOf: string;
}

interface EmptyContent {
  readonly value?: never;
  readonly formula?: never;
  readonly table?: never;
  readonly words?: never;
}

/**
 * title and heading explain themselves; input: boxed, to be changed; locked: a value that the edition fixes; result: bold;
 * note: an aside; caution: a warning; check: OK or LOOK, coloured as well; mark: the small word beside an input; total: the last row of a table.
 */
export const STYLE_NAMES = [
  "title",
  "heading",
  "input",
  "locked",
  "result",
  "note",
  "caution",
  "check",
  "mark",
  "total",
] as const;
export type StyleName = (typeof STYLE_NAMES)[number];

/** Places after the decimal point are in the name; dates and times are serial numbers of the 1900 system. */
export const FORMAT_NAMES = [
  "decimals0",
  "decimals1",
  "decimals2",
  "decimals3",
  "decimals4",
  "percent",
  "percent0",
  "date",
  "time",
  "money",
  "money0",
  "text",
] as const;
export type FormatName = (typeof FORMAT_NAMES)[number];

/** What the cells of the range take, and the sentence that says so when something else is typed. */
export type Validation = WordsValidation | ListedValidation | NumberValidation;

interface ValidationTarget {
  readonly range: string;
  readonly message: string;
}

/** One of these words. */
export interface WordsValidation extends ValidationTarget {
  readonly words: readonly string[];
}

/** One of the values in a range of the workbook: `Lists!$A$4:$A$10`. */
export interface ListedValidation extends ValidationTarget {
  readonly list: string;
}

/** A number between two limits, both allowed. */
export interface NumberValidation extends ValidationTarget {
  readonly least: number;
  readonly most: number;
  readonly whole?: true;
}

export interface Chart {
  /** columns: upright bars; bars: lying bars; lines: over named points; points: a scatter, its labels being numbers. */
  readonly type: "columns" | "bars" | "lines" | "points";
  readonly title: string;
  /** What the chart shows, for someone who cannot see it. */
  readonly description: string;
  readonly stacked?: true;
  readonly labels: string;
  readonly series: readonly Series[];
  readonly axisTitles?: { readonly labels?: string; readonly values?: string };
  /** Lying bars run from the top down. */
  readonly topDown?: true;
  /** Top left cell, and size in pixels. */
  readonly position: { readonly cell: string; readonly width: number; readonly height: number };
}

export interface Series {
  readonly name: string;
  readonly values: string;
  /** A line among columns: a limit, a target, a course. */
  readonly as?: "line";
  /** Drawn without colour: what the next series of a stacked bar stands on. */
  readonly unseen?: true;
}

export interface Print {
  readonly landscape?: true;
  /** Rows that head every page. */
  readonly repeatedRows?: readonly [first: number, last: number];
  /** Left out: the whole sheet. */
  readonly area?: string;
  /** All of it on one page. Worked out when a starter is finished, as the rows that begin a page so that no chart is cut. */
  readonly onePage?: true;
  readonly breaksBefore?: readonly number[];
}

/** The rows of each range belong together: row n of one is row n of every other. */
export interface Growing {
  /** What is brought in, with the column that each field has. */
  readonly fields: readonly GrowingField[];
  /** Where it is written: the block of inputs. */
  readonly inputs: string;
  /** Blocks with a row for each row of inputs; their first row is copied down. */
  readonly following: readonly string[];
}

export interface GrowingField {
  readonly field: "date" | "tmax" | "tmin" | "rh_max" | "rh_min" | "wind" | "solar" | "rain" | "irrigation" | "et";
  readonly column: string;
  /** The unit that the column is in. */
  readonly unit: string;
  /** What a missing reading is written as, where blank would be an error. */
  readonly missing?: number;
}

export const isFormula = (cell: Cell): cell is Cell & FormulaContent => "formula" in cell && cell.formula !== undefined;
export const isTable = (cell: Cell): cell is Cell & TableContent => "table" in cell && cell.table !== undefined;
export const isExplaining = (cell: Cell): cell is Cell & ExplainingContent =>
  "words" in cell && cell.words !== undefined;
export const isValue = (cell: Cell): cell is Cell & ValueContent => "value" in cell && cell.value !== undefined;
