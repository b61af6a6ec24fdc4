/** The one runner: arguments in, checked answer out, and on request the steps by which it came about. */
import {
  blankCount,
  blankTogether,
  boundsIn,
  cellCount,
  isCellError,
  isUnitSystem,
  PassedError,
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
  Answer,
  ArgumentInput,
  Around,
  CellAnswer,
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
import { isRepeating } from "./define";
import { FunctionError } from "./errors";
import { shownValue } from "./format";
import type { Bounds } from "./limits";
import { fromMetric, toMetric, unitConstant, type QuantityName, type UnitSystem } from "./units";

type GivenValues = Given<Params>;
type TakeArgument = (input: ArgumentInput, zeros: ZerosWord | null) => unknown;

interface Prepared {
  readonly names: readonly string[];
  readonly unitsIndex: number;
  readonly zerosIndex: number;
  /** Whether the last parameter takes all further arguments. */
  readonly repeats: boolean;
  /** Arguments that are columns of one table. */
  readonly columns: readonly number[];
  /** Those of which the word "skip" leaves whole rows out; none where a single column has the word. */
  readonly rowsSkipped: readonly number[];
  readonly take: Record<UnitSystem | "none", readonly TakeArgument[]>;
  readonly around: Record<UnitSystem | "none", Around<string, string>>;
}

const prepared = new WeakMap<Entry, Prepared>();

type RecordStep = (equation: string, value: number, quantity: QuantityName, words: string) => number;

/** A recorder from its three parts; what is not to be heard goes to `silent`, by default the recorder itself. */
export function showOf(parts: { step: RecordStep; toMetric: RecordStep; fromMetric: RecordStep }, silent?: Show): Show {
  const show = Object.assign((...call: Parameters<RecordStep>) => parts.step(...call), {
    toMetric: parts.toMetric,
    fromMetric: parts.fromMetric,
    silent: silent as Show,
  });
  if (silent === undefined) show.silent = show;
  return show;
}

function silentShow(system: UnitSystem): Show {
  return showOf({
    step: (_equation, value) => value,
    toMetric: (_equation, value, quantity) => toMetric(quantity, value, system),
    fromMetric: (_equation, value, quantity) => fromMetric(quantity, value, system),
  });
}

const silent = { us: silentShow("us"), metric: silentShow("metric"), none: silentShow("metric") };

export function silentShowFor(system: UnitSystem | null): Show {
  return silent[system ?? "none"];
}

const BEYOND_CELLS = "these numbers lead beyond what a cell can hold";

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
      const bounds: Bounds = boundsIn(param, system);
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

function asksZeros(param: NumbersParam): boolean {
  return param.blanks === "zeros" || param.blanks === "by row";
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

function prepare(entry: Entry): Prepared {
  const names = Object.keys(entry.params);
  const takers = (system: UnitSystem | null): readonly TakeArgument[] =>
    Object.entries(entry.params).map(([name, param]) => takerOf(entry, name, param, system));
  return {
    names,
    unitsIndex: names.indexOf("units"),
    zerosIndex: names.indexOf("zeros"),
    repeats: Object.values(entry.params).some(isRepeating),
    columns: Object.values(entry.params).flatMap((param, index) => (isColumn(param) ? [index] : [])),
    rowsSkipped: columnsInStep(entry),
    take: { us: takers("us"), metric: takers("metric"), none: takers(null) },
    around: { us: aroundOf(entry, "us"), metric: aroundOf(entry, "metric"), none: aroundOf(entry, "none") },
  };
}

function preparedOf(entry: Entry): Prepared {
  const known = prepared.get(entry);
  if (known !== undefined) return known;
  const made = prepare(entry);
  prepared.set(entry, made);
  return made;
}

/** An error in any cell pointed at comes back as it is, before anything else is looked at, as spreadsheets do it. */
function passErrorsOn(args: readonly ArgumentInput[]): void {
  for (const input of args) {
    if (typeof input !== "object" || input === null) continue;
    if (isCellError(input)) throw new PassedError(input);
    for (const row of rowsOf(input)) for (const cell of row) if (isCellError(cell)) throw new PassedError(cell);
  }
}

/** Columns of one table must have equal lengths; the error gives both. */
function sameLengths({ name }: Entry, { names, columns }: Prepared, args: readonly ArgumentInput[]): void {
  const [first] = columns;
  if (first === undefined) return;
  const wanted = cellCount(args[first]);
  for (const index of columns) {
    const found = cellCount(args[index]);
    if (found !== wanted) {
      const message = `${name}: ${names[index]} has ${found} cells; it must have ${wanted}, as ${names[first]} has`;
      throw new FunctionError("input", names[index] ?? null, message);
    }
  }
}

function withoutSkippedRows({ rowsSkipped }: Prepared, args: readonly ArgumentInput[]): readonly ArgumentInput[] {
  if (rowsSkipped.length === 0) return args;
  const columns = blankTogether(rowsSkipped.map((index) => args[index]));
  return args.map((input, index) => (rowsSkipped.includes(index) ? columns[rowsSkipped.indexOf(index)] : input));
}

export interface Arguments {
  /** As they came, in the entry's order. */
  readonly args: readonly ArgumentInput[];
  readonly given: GivenValues;
  readonly system: UnitSystem | null;
}

/** Checks and converts the arguments of a call; throws the error of the first that is wrong. */
export function readArguments(entry: Entry, args: readonly ArgumentInput[]): Arguments {
  const known = preparedOf(entry);
  const { names, unitsIndex, zerosIndex, repeats, take } = known;
  if (args.length > names.length && !repeats) {
    throw new FunctionError(
      "input",
      null,
      `${entry.name}: ${args.length} arguments were given; it takes ${names.length}`,
    );
  }
  passErrorsOn(args);
  sameLengths(entry, known, args);
  const unitsWord = unitsIndex < 0 ? null : take.none[unitsIndex]?.(args[unitsIndex], null);
  const system = typeof unitsWord === "string" && isUnitSystem(unitsWord) ? unitsWord : null;
  const zeros = zerosIndex < 0 ? null : (take.none[zerosIndex]?.(args[zerosIndex], null) as ZerosWord);
  const takers = take[system ?? "none"];
  const inputs = zeros === "skip" ? withoutSkippedRows(known, args) : args;
  const given: Record<string, unknown> = {};
  for (let index = 0; index < names.length; index += 1) {
    const name = names[index] as string;
    given[name] = (takers[index] as TakeArgument)(inputs[index], zeros);
  }
  if (repeats) given[names[names.length - 1] as string] = args.slice(names.length - 1);
  return { args, given: given as GivenValues, system };
}

function caught(take: () => unknown): FunctionError | null {
  try {
    take();
    return null;
  } catch (error) {
    if (error instanceof FunctionError) return error;
    throw error;
  }
}

/** What is wrong with each argument by itself, for a form that has a field for each. */
export function argumentFaults(entry: Entry, args: readonly ArgumentInput[]): readonly FunctionError[] {
  const { names, unitsIndex, zerosIndex, take } = preparedOf(entry);
  const unitsWord = args[unitsIndex];
  const system = typeof unitsWord === "string" && isUnitSystem(unitsWord) ? unitsWord : null;
  const zerosWord = zerosIndex < 0 ? null : "error";
  return names.flatMap((_name, index) => {
    const fault = caught(() => (take[system ?? "none"][index] as TakeArgument)(args[index], zerosWord));
    return fault === null ? [] : [fault];
  });
}

function guardedCell(entry: Entry, cell: unknown): CellAnswer {
  if (typeof cell === "number") {
    if (Number.isFinite(cell)) return cell === 0 ? 0 : cell;
    return new FunctionError("input", null, `${entry.name}: ${BEYOND_CELLS}`);
  }
  if (typeof cell === "string" || typeof cell === "boolean" || cell instanceof FunctionError) return cell;
  return "";
}

/** Nothing that is not finite ever reaches a cell. */
function guarded(entry: Entry, answer: Answer): Answer {
  if (Array.isArray(answer)) {
    return (answer as readonly (readonly CellAnswer[])[]).map((row) => row.map((cell) => guardedCell(entry, cell)));
  }
  const cell = guardedCell(entry, answer);
  if (cell instanceof FunctionError) throw cell;
  return cell;
}

/** What surrounds one call; only functions with the word `zeros` ask how many cells it decided about. */
function aroundCall(entry: Entry, { args, system }: Arguments): Around<string, string> {
  const { names, zerosIndex, around } = preparedOf(entry);
  const known = around[system ?? "none"];
  if (zerosIndex < 0) return known;
  return { ...known, blanksMet: (argument) => blankCount(args[names.indexOf(argument)]) };
}

/** The answer for arguments that were read; `show` hears every step. */
export function compute(entry: Entry, read: Arguments, show: Show): Answer {
  return guarded(entry, entry.compute(read.given, show, aroundCall(entry, read)));
}

/** The answer for arguments that were read, without a record. */
export function computeGiven(entry: Entry, read: Arguments): Answer {
  return compute(entry, read, silent[read.system ?? "none"]);
}

export function evaluate(entry: Entry, args: readonly ArgumentInput[]): Answer {
  const read = readArguments(entry, args);
  return compute(entry, read, silent[read.system ?? "none"]);
}

/** The arguments of an example, or of any call by name, in the entry's order. */
export function inOrder(entry: Entry, byName: Readonly<Record<string, unknown>>): ArgumentInput[] {
  return Object.entries(entry.params).flatMap(([name, param]) =>
    isRepeating(param) ? ((byName[name] ?? []) as ArgumentInput[]) : [byName[name] as ArgumentInput],
  );
}
