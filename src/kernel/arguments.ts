/** The arguments of a call, checked and converted before anything is calculated. */
import { blankTogether, cellCount, isCellError, isUnitSystem, PassedError, rowsOf, type ZerosWord } from "./coerce";
import type { ArgumentInput, Entry } from "./define";
import { FunctionError } from "./errors";
import { preparedOf, type GivenValues, type Prepared, type Reader, type TakeArgument } from "./reader";
import type { UnitSystem } from "./units";

export interface Arguments {
  /** As they came, in the entry's order. */
  readonly args: readonly ArgumentInput[];
  readonly given: GivenValues;
  readonly system: UnitSystem | null;
  readonly reader: Reader;
}

function tooMany({ name }: Entry, { names }: Prepared, count: number): FunctionError {
  return new FunctionError("input", null, `${name}: ${count} arguments were given; it takes ${names.length}`);
}

function passErrorsOn(args: readonly ArgumentInput[]): void {
  for (const input of args) {
    if (typeof input !== "object" || input === null) continue;
    for (const row of rowsOf(input)) for (const cell of row) if (isCellError(cell)) throw new PassedError(cell);
  }
}

/** Columns of one table must have equal lengths; the error gives both. */
function sameLengths({ name }: Entry, { names, columns }: Prepared, args: readonly ArgumentInput[]): void {
  const first = columns[0] as number;
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

function readerFor({ unitsIndex, us, metric, none }: Prepared, args: readonly ArgumentInput[]): Reader {
  if (unitsIndex < 0) return none;
  const input = args[unitsIndex];
  const word = isUnitSystem(input) ? input : (none.takers[unitsIndex] as TakeArgument)(input, null);
  if (word === "us") return us;
  return word === "metric" ? metric : none;
}

function zerosWordOf({ zerosIndex, none }: Prepared, args: readonly ArgumentInput[]): ZerosWord | null {
  if (zerosIndex < 0) return null;
  return (none.takers[zerosIndex] as TakeArgument)(args[zerosIndex], null) as ZerosWord;
}

/** The values of all arguments; the arguments themselves where none of them had to be changed. */
function valuesOf(
  { takers, above, below, wholeOnly }: Reader,
  inputs: readonly ArgumentInput[],
  zeros: ZerosWord | null,
): readonly unknown[] {
  let changed: unknown[] | null = null;
  for (let index = 0; index < takers.length; index += 1) {
    const input = inputs[index];
    if (
      typeof input === "number" &&
      input > (above[index] as number) &&
      input < (below[index] as number) &&
      (wholeOnly[index] === 0 || Number.isInteger(input))
    ) {
      continue;
    }
    const value = (takers[index] as TakeArgument)(input, zeros);
    if (value === input || (value === null && input === undefined)) continue;
    changed ??= [...inputs];
    changed[index] = value;
  }
  return changed ?? inputs;
}

function read(entry: Entry, known: Prepared, args: readonly ArgumentInput[]): Arguments {
  const { names, columns, hasRange, repeats, Named } = known;
  if (hasRange) passErrorsOn(args);
  if (columns.length > 0) sameLengths(entry, known, args);
  const reader = readerFor(known, args);
  const zeros = zerosWordOf(known, args);
  const inputs = zeros === "skip" ? withoutSkippedRows(known, args) : args;
  const values = valuesOf(reader, inputs, zeros);
  const all = repeats ? [...values.slice(0, names.length - 1), args.slice(names.length - 1)] : values;
  return { args, given: new Named(all), system: reader.system, reader };
}

/**
 * Checks and converts the arguments for one calculation, which looks its values up and does not copy them. An error in
 * any cell pointed at comes back as it is, before anything else that is wrong, as spreadsheets do it.
 */
export function readOnce(entry: Entry, args: readonly ArgumentInput[]): Arguments {
  const known = preparedOf(entry);
  if (args.length > known.names.length && !known.repeats) throw tooMany(entry, known, args.length);
  try {
    return read(entry, known, args);
  } catch (error) {
    passErrorsOn(args);
    throw error;
  }
}

/** Checks and converts the arguments of a call; throws the error of the first that is wrong. */
export function readArguments(entry: Entry, args: readonly ArgumentInput[]): Arguments {
  const read = readOnce(entry, args);
  const own = Object.fromEntries(preparedOf(entry).names.map((name) => [name, read.given[name]]));
  return { ...read, given: own as GivenValues };
}

/** What a taker gives, or the error with which it refuses. */
function attempted<Value>(take: () => Value): Value | FunctionError {
  try {
    return take();
  } catch (error) {
    if (error instanceof FunctionError) return error;
    throw error;
  }
}

/**
 * What is wrong with each argument by itself, for a form that has a field for each. The words in `units` and `zeros`
 * count here as in the call itself, unless they are wrong themselves.
 */
export function argumentFaults(entry: Entry, args: readonly ArgumentInput[]): readonly FunctionError[] {
  const known = preparedOf(entry);
  const reader = attempted(() => readerFor(known, args));
  const { takers } = reader instanceof FunctionError ? known.none : reader;
  const word = attempted(() => zerosWordOf(known, args));
  const zeros = word instanceof FunctionError ? null : word;
  const inputs = zeros === "skip" ? withoutSkippedRows(known, args) : args;
  return takers
    .map((take, index) => attempted(() => take(inputs[index], zeros)))
    .filter((outcome) => outcome instanceof FunctionError);
}
