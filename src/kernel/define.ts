/**
 * What an entry of the catalogue is. `defineFunction` types the whole entry from its own arguments: a misspelt unit,
 * argument, example key, unit constant or source does not compile.
 */
import type { FunctionError } from "./errors";
import type { Citation } from "./sources";
import type { QuantityName, UnitConstantName, UnitSystem } from "./units";
import { UNIT_WORDS } from "./units";

/** One cell as any host gives it. */
export type CellInput = number | string | boolean | null | undefined | CellErrorInput;
/** An error that stands in a cell that a function was pointed at: it comes back unchanged. */
export interface CellErrorInput {
  readonly code: string;
  readonly message?: string;
}
export type ArgumentInput = CellInput | readonly (readonly CellInput[])[];
/** One cell of an answer; an error inside a table stands in its own cell. */
export type CellAnswer = number | string | boolean | FunctionError;
export type Answer = CellAnswer | readonly (readonly CellAnswer[])[];

/** Limits in the metric unit of the quantity. Each is physical, or a guard whose reason is given. */
export interface Limits {
  readonly above?: number;
  readonly atLeast?: number;
  readonly below?: number;
  readonly atMost?: number;
  readonly whole?: true;
  /** Why a limit stands where it does, when it is a guard against a slip and not physics. */
  readonly guard?: string;
}

/** What the trade usually sees; outside is a warning for a person, never an error. */
export interface UsualRange {
  readonly us: readonly [low: number, high: number];
  readonly metric: readonly [low: number, high: number];
  /** The likely slip behind a number below or above. */
  readonly low?: string;
  readonly high?: string;
  readonly source: Citation;
}

interface Described {
  readonly about: string;
}

export interface NumberParam extends Described, Limits {
  readonly kind?: undefined;
  readonly quantity: QuantityName;
  /** The trade's symbol, as it stands in the formula and in the working. */
  readonly symbol: string;
  readonly default?: number;
  /** May be left out although no default number stands for it. */
  readonly mayBeLeftOut?: true;
  /** Required, yet a blank reaches the function, which has its own words for it. */
  readonly blankIsAnswered?: true;
  /** A word that may stand in the number's place and means the same as leaving it out. */
  readonly orWord?: string;
  readonly usual?: UsualRange;
  /** Added to the error text of a number beyond the limits: what was probably meant. */
  readonly hint?: string;
}

export interface WordParam extends Described {
  readonly kind: "word";
  readonly words: readonly string[];
  readonly default?: string;
  /** May be left out although no word stands for it: it is "" then. */
  readonly mayBeLeftOut?: true;
}

/** TRUE or FALSE. */
export interface SwitchParam extends Described {
  readonly kind: "switch";
  readonly default: boolean;
}

/** Free text, such as the name of a function. */
export interface TextParam extends Described {
  readonly kind: "text";
  /** A blank is a text of its own. */
  readonly mayBeBlank?: true;
  /** A number is taken as its text. */
  readonly orNumber?: true;
}

/** Numbers in cells, read row by row. */
export interface NumbersParam extends Described, Limits {
  readonly kind: "numbers";
  readonly quantity: QuantityName;
  readonly symbol: string;
  /**
   * What an empty cell is: refused by name, or taken as 0. "zeros" asks the argument of that name. Where that
   * says "skip", a row is left out of all columns with "zeros" or "by row" when it is blank or 0 in one of them; a column
   * "by row" refuses a blank otherwise.
   */
  readonly blanks: "refused" | "zero" | "zeros" | "by row";
  readonly fewest?: number;
  /** One number a row: every column of a call must have as many cells. */
  readonly column?: true;
}

/**
 * A column whose faulty cells do not fail the call: each cell is a number within the limits, or the error that says why
 * not, so that the row can carry its reason.
 */
export interface ColumnParam extends Described, Limits {
  readonly kind: "column";
  readonly quantity: QuantityName;
  readonly symbol: string;
  /** What an empty cell is: an error of its row, or 0. */
  readonly blanks: "refused" | "zero";
}

/** A column of names; a number is taken as its text, an empty cell as "". */
export interface TextsParam extends Described {
  readonly kind: "texts";
}

/** One cell with whatever stands in it, for functions that judge it themselves. */
export interface CellParam extends Described {
  readonly kind: "cell";
}

/** Any further arguments, cells or ranges, as they came: the last parameter of its function. */
export interface InputsParam extends Described {
  readonly kind: "inputs";
}

/** Rows of mixed cells that the function reads itself. */
export interface CellsParam extends Described {
  readonly kind: "cells";
}

export type Param =
  | NumberParam
  | WordParam
  | SwitchParam
  | TextParam
  | NumbersParam
  | ColumnParam
  | TextsParam
  | CellsParam
  | CellParam
  | InputsParam;
export type Params = Readonly<Record<string, Param>>;

type Optional<P extends Param> = P extends { readonly default: unknown } | { readonly mayBeLeftOut: true }
  ? true
  : false;
type RangeValueOf<P extends Param> = P extends NumbersParam
  ? readonly number[]
  : P extends ColumnParam
    ? readonly (number | FunctionError)[]
    : P extends TextsParam
      ? readonly string[]
      : P extends InputsParam
        ? readonly ArgumentInput[]
        : readonly (readonly CellInput[])[];
type ValueOf<P extends Param> = P extends WordParam
  ? P["words"][number] | (P extends { readonly mayBeLeftOut: true } ? "" : never)
  : P extends SwitchParam
    ? boolean
    : P extends TextParam
      ? string
      : P extends NumbersParam | ColumnParam | TextsParam | CellsParam | InputsParam
        ? RangeValueOf<P>
        : P extends { readonly mayBeLeftOut: true } | { readonly blankIsAnswered: true }
          ? number | null
          : number;

/** The arguments as `compute` gets them: checked, defaults filled in, in the user's own units. */
export type Given<P extends Params> = { readonly [K in keyof P]: ValueOf<P[K]> };

type InputOf<P extends Param> = P extends WordParam
  ? P["words"][number]
  : P extends CellParam
    ? CellInput
    : P extends SwitchParam
      ? boolean
      : P extends TextParam
        ? P extends { readonly orNumber: true }
          ? string | number
          : string
        : P extends InputsParam
          ? readonly ArgumentInput[]
          : P extends NumbersParam | ColumnParam | TextsParam | CellsParam
            ? readonly (readonly CellInput[])[] | number
            : P extends { readonly orWord: string }
              ? number | P["orWord"]
              : P extends { readonly blankIsAnswered: true }
                ? number | null
                : number;
type RequiredKeys<P extends Params> = { [K in keyof P]: Optional<P[K]> extends true ? never : K }[keyof P];

/** The arguments as an example writes them. */
export type Inputs<P extends Params> = { readonly [K in RequiredKeys<P>]: InputOf<P[K]> } & {
  readonly [K in keyof P]?: InputOf<P[K]>;
};

/**
 * Records one step of the working and returns its value, so that taking away every `show` leaves the bare arithmetic.
 * The equation reads "symbol = formula", in symbols of arguments, unit constants and earlier steps, as a spreadsheet
 * would take it; a bare symbol names a number that was read from a range.
 */
export interface Show {
  (equation: string, value: number, quantity: QuantityName, words: string): number;
  /** Converts to the metric unit: "T = Tmax". In the metric system nothing is recorded. */
  toMetric(equation: string, value: number, quantity: QuantityName, words: string): number;
  /** Converts a metric result to the unit asked for: "ET = ETmm". */
  fromMetric(equation: string, value: number, quantity: QuantityName, words: string): number;
  /** The same recorder, silent: for the other rows of a table. */
  readonly silent: Show;
}

export interface Around<K extends string, A extends string> {
  /** The unit constants that the entry names, in the system asked for. */
  readonly constants: { readonly [Key in K]: number };
  readonly system: UnitSystem;
  /** In a function with the word `zeros`: how many cells of a range were blank or 0, before that word decides. */
  blanksMet(argument: A): number;
  /** A wrong input that only two arguments together can show: `throw refuse("tmin", tmin, "it must be ...")`. */
  refuse(argument: A, value: unknown, itMust: string): FunctionError;
  /** A right question without an answer. */
  noAnswer(why: string, argument?: A): FunctionError;
}

export type Table = readonly (readonly CellAnswer[])[];

export interface ScalarResult {
  readonly quantity: QuantityName;
  readonly symbol: string;
  readonly about: string;
  readonly usual?: UsualRange;
}

/** An answer in words. */
export interface TextResult {
  readonly text: true;
  readonly about: string;
}

export interface TableResult {
  readonly table: readonly { readonly name: string; readonly quantity: QuantityName | "text" }[];
  /** Whether the first row holds the columns' names. */
  readonly header: boolean;
  readonly about: string;
}

export interface Example<P extends Params> {
  readonly given: Inputs<P>;
  readonly gives: number | string | Table;
  /** How far the printed answer may lie from the exact one; left out, it is exact to 1e-9. */
  readonly within?: number;
  readonly from: Citation;
}

/** Two or more; a function without arguments has one call only. */
type Examples<P extends Params> = keyof P extends never
  ? readonly [Example<P>]
  : readonly [Example<P>, Example<P>, ...Example<P>[]];

/** A slip that people really make: its words, and the answer it leads to, by its own arithmetic or by altered arguments. */
export type Mistake<P extends Params, K extends string> = { readonly slip: string } & (
  | {
      readonly answer: (given: Given<P>, constants: { readonly [Key in K]: number }, right: number) => number;
    }
  | { readonly instead: (given: Given<P>) => Partial<Given<P>> }
);

/** The steps of the job, in the order in which it is done. */
export const GROUPS = [
  "Container and substrate",
  "Weather and demand",
  "Flow and uniformity",
  "Leaching",
  "Run time, zones, booms, mats",
  "Flood benches, tanks, supply",
  "Feed and water quality",
  "Pipe, emitter, pump",
  "Money",
  "Teaching and audit",
] as const;
export type GroupName = (typeof GROUPS)[number];

export interface Definition<P extends Params, K extends string> {
  readonly name: string;
  readonly group: GroupName;
  readonly summary: string;
  readonly formula: string;
  readonly source: Citation | readonly Citation[];
  readonly assumptions: readonly string[];
  readonly params: P;
  readonly unitConstants?: { readonly [Key in K]: UnitConstantName };
  readonly result: ScalarResult | TextResult | TableResult;
  readonly examples: Examples<P>;
  readonly mistakes: readonly Mistake<P, K>[];
  readonly seeAlso: readonly string[];
  readonly caution?: string;
  /** The plain-spreadsheet formula, where it is not simply the steps put into one another; null where no cell can hold it. */
  readonly native?: string | null;
  compute(given: Given<P>, show: Show, around: Around<K, Extract<keyof P, string>>): CellAnswer | Table;
}

/** An entry with its own types laid aside, as the hosts, the pane and the tests see it. */
export type Entry = Definition<Params, string>;

export function defineFunction<const P extends Params, const K extends string = never>(
  definition: Definition<P, K>,
): Entry {
  return definition as unknown as Entry;
}

/** The `units` argument, the last required one of every function whose numbers carry a unit that matters. */
export const UNITS_PARAM = {
  kind: "word",
  words: UNIT_WORDS,
  about: 'The units of all numbers of this call: "us" or "metric"',
} as const satisfies WordParam;

export function isOptional(param: Param): boolean {
  if (isRepeating(param)) return true;
  return "default" in param || "mayBeLeftOut" in param;
}

export function isRepeating(param: Param): boolean {
  return param.kind === "inputs";
}

const RANGE_KINDS: readonly (string | undefined)[] = ["numbers", "column", "texts", "cells", "inputs"];

export function isRange(param: Param): boolean {
  return RANGE_KINDS.includes(param.kind);
}

export function isTable(result: Entry["result"]): result is TableResult {
  return "table" in result;
}

export function isScalar(result: Entry["result"]): result is ScalarResult {
  return "quantity" in result;
}
