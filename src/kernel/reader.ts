/** How the arguments of an entry are taken, one by one: worked out once for each entry and system of units. */
import {
  boundsIn,
  rowsOf,
  takeCell,
  takeColumn,
  takeNumber,
  takeNumbers,
  takeSwitch,
  takeText,
  takeTexts,
  takeWord,
  type Checker,
  type ZerosWord,
} from "./coerce";
import type {
  ArgumentInput,
  Around,
  ColumnParam,
  Entry,
  Given,
  NumberParam,
  NumbersParam,
  Param,
  Params,
  Show,
  SwitchParam,
  TextParam,
  WordParam,
} from "./define";
import { isRange, isRepeating } from "./define";
import { BEYOND_CELLS, FunctionError } from "./errors";
import { shownValue } from "./format";
import { silentShowFor } from "./show";
import { unitConstant, type UnitSystem } from "./units";

export type GivenValues = Given<Params>;
export type TakeArgument = (input: ArgumentInput, zeros: ZerosWord | null) => unknown;

/** How the arguments of an entry are read in one system of units; all of it is worked out once, not at each call. */
export interface Reader {
  readonly system: UnitSystem | null;
  readonly takers: readonly TakeArgument[];
  /** A number between these two is taken as it is, without its taker; NaN, which nothing passes, where none is. */
  readonly above: Float64Array;
  readonly below: Float64Array;
  /** 1 where that holds for whole numbers only. */
  readonly wholeOnly: Uint8Array;
  readonly around: Around<string, string>;
  /** Whether the function has the word `zeros`. */
  readonly asksZeros: boolean;
  readonly silent: Show;
}

export interface Prepared {
  readonly names: readonly string[];
  readonly unitsIndex: number;
  readonly zerosIndex: number;
  /** Whether an argument may be a range, or anything: errors in its cells must be looked for before it is read. */
  readonly hasRange: boolean;
  /** Whether the last parameter takes all further arguments. */
  readonly repeats: boolean;
  /** Arguments that are columns of one table. */
  readonly columns: readonly number[];
  /** Those of which the word "skip" leaves whole rows out; none where a single column has the word. */
  readonly rowsSkipped: readonly number[];
  readonly Named: new (values: readonly unknown[]) => GivenValues;
  readonly us: Reader;
  readonly metric: Reader;
  readonly none: Reader;
}

/** Words about numbers that ran out on the way to them say nothing to a person; this does. */
function inPlainNumbers(words: string): string {
  return /\b(?:Infinity|NaN)\b/.test(words) ? BEYOND_CELLS : words;
}

function aroundOf(entry: Entry, system: UnitSystem | "none"): Around<string, string> {
  const unitSystem = system === "none" ? "metric" : system;
  const constants = Object.fromEntries(
    Object.entries(entry.unitConstants ?? {}).map(([symbol, name]) => [symbol, unitConstant(name, unitSystem)]),
  );
  return {
    constants,
    system: unitSystem,
    blanksMet: () => 0,
    refuse: (argument, value, itMust) =>
      new FunctionError(
        "input",
        argument,
        `${entry.name}: ${argument} is ${shownValue(value)}; ${inPlainNumbers(itMust)}`,
      ),
    noAnswer: (why, argument) =>
      new FunctionError("no answer", argument ?? null, `${entry.name}: ${inPlainNumbers(why)}`),
  };
}

function takerOf(entry: Entry, name: string, param: Param, system: UnitSystem | null): TakeArgument {
  const checker: Checker = { param, name, functionName: entry.name };
  switch (param.kind) {
    case "word": {
      const wordChecker = checker as Checker & { param: WordParam };
      return (input) => takeWord(wordChecker, input);
    }
    case "switch": {
      const switchChecker = checker as Checker & { param: SwitchParam };
      return (input) => takeSwitch(switchChecker, input);
    }
    case "text": {
      const textChecker = checker as Checker & { param: TextParam };
      return (input) => takeText(textChecker, input);
    }
    case "cells":
      return rowsOf;
    case "texts":
      return takeTexts;
    case "cell":
      return (input) => takeCell(checker, input) ?? null;
    case "inputs":
      return () => null;
    case "column": {
      const columnChecker = checker as Checker & { param: ColumnParam };
      const bounds = boundsIn(param, system);
      return (input) => takeColumn(columnChecker, input, bounds, system);
    }
    case "numbers": {
      const numbersChecker = checker as Checker & { param: NumbersParam };
      const bounds = boundsIn(param, system);
      return (input, zeros) => takeNumbers(numbersChecker, input, bounds, system, asksZeros(param) ? zeros : null);
    }
    default: {
      const numberChecker = checker as Checker & { param: NumberParam };
      const bounds = boundsIn(param, system);
      const wholeDays = param.quantity === "date";
      return (input) => {
        const value = takeNumber(numberChecker, input, bounds, system);
        return wholeDays && value !== null ? Math.floor(value) : value;
      };
    }
  }
}

function isNumber(param: Param): param is NumberParam {
  return param.kind === undefined;
}

/** Whether only a whole number is the value as it is: another is refused, or of a date the whole part taken. */
function isWholeOnly(param: Param): boolean {
  return isNumber(param) && (param.whole === true || param.quantity === "date");
}

function readerOf(entry: Entry, system: UnitSystem | null): Reader {
  const params = Object.entries(entry.params);
  const bounds = params.map(([, param]) => (isNumber(param) ? boundsIn(param, system) : null));
  return {
    system,
    takers: params.map(([name, param]) => takerOf(entry, name, param, system)),
    above: Float64Array.from(bounds, (limits) => limits?.low ?? NaN),
    below: Float64Array.from(bounds, (limits) => limits?.high ?? NaN),
    wholeOnly: Uint8Array.from(params, ([, param]) => (isWholeOnly(param) ? 1 : 0)),
    around: aroundOf(entry, system ?? "none"),
    asksZeros: "zeros" in entry.params,
    silent: silentShowFor(system),
  };
}

function asksZeros(param: NumbersParam): boolean {
  return param.blanks === "zeros" || param.blanks === "by row";
}

/**
 * The values of a call under their names. They stand in a list that the names look into: to set eleven properties by
 * name takes half as long as all of Penman-Monteith. What was left out is null there as well.
 */
function namedValues(names: readonly string[]): Prepared["Named"] {
  class Named {
    constructor(readonly inOrder: readonly unknown[]) {}
  }
  names.forEach((name, index) => {
    Object.defineProperty(Named.prototype, name, {
      get(this: Named) {
        return this.inOrder[index] ?? null;
      },
    });
  });
  return Named as unknown as Prepared["Named"];
}

function isColumn(param: Param): boolean {
  return param.kind === "column" || param.kind === "texts" || (param.kind === "numbers" && param.column === true);
}

/** The columns that share one word in `zeros`; one alone needs no other to be kept in step with. */
function columnsInStep(entry: Entry): number[] {
  const found = Object.values(entry.params).flatMap((param, index) =>
    param.kind === "numbers" && param.column === true && asksZeros(param) ? [index] : [],
  );
  return found.length > 1 ? found : [];
}

const prepared = new WeakMap<Entry, Prepared>();

function prepare(entry: Entry): Prepared {
  const names = Object.keys(entry.params);
  return {
    names,
    unitsIndex: names.indexOf("units"),
    zerosIndex: names.indexOf("zeros"),
    hasRange: Object.values(entry.params).some(isRange),
    repeats: Object.values(entry.params).some(isRepeating),
    columns: Object.values(entry.params).flatMap((param, index) => (isColumn(param) ? [index] : [])),
    rowsSkipped: columnsInStep(entry),
    Named: namedValues(names),
    us: readerOf(entry, "us"),
    metric: readerOf(entry, "metric"),
    none: readerOf(entry, null),
  };
}

export function preparedOf(entry: Entry): Prepared {
  const known = prepared.get(entry);
  if (known !== undefined) return known;
  const made = prepare(entry);
  prepared.set(entry, made);
  return made;
}
