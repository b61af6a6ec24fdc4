/** From what a host puts into a cell to what a formula can rely on: blanks, single values, ranges, words, limits. */
import type {
  ArgumentInput,
  CellErrorInput,
  CellInput,
  ColumnParam,
  NumberParam,
  NumbersParam,
  Param,
  SwitchParam,
  TextParam,
  WordParam,
} from "./define";
import { FunctionError } from "./errors";
import { shownValue } from "./format";
import { boundsOf, limitsText, within, type Bounds } from "./limits";
import { UNIT_WORDS, type UnitSystem } from "./units";

/** An error in a cell that a function was pointed at; the hosts give it back as it came. */
export class PassedError extends Error {
  readonly code: string;
  readonly original: CellErrorInput;

  constructor(original: CellErrorInput) {
    super(original.message ?? original.code);
    this.name = "PassedError";
    this.code = original.code;
    this.original = original;
  }
}

export type ZerosWord = "error" | "count" | "skip";

type Rows = readonly (readonly CellInput[])[];

function isRows(input: ArgumentInput): input is Rows {
  return Array.isArray(input);
}

export function isCellError(input: unknown): input is CellErrorInput {
  return typeof input === "object" && input !== null && typeof (input as { code?: unknown }).code === "string";
}

export function isBlank(input: CellInput): input is null | undefined | "" {
  return input === null || input === undefined || (typeof input === "string" && input.trim() === "");
}

export function rowsOf(input: ArgumentInput): Rows {
  return isRows(input) ? input : [[input]];
}

/** The one cell of an argument that takes one cell. */
function singleCell(input: ArgumentInput, name: string, functionName: string): CellInput {
  if (!isRows(input)) return input;
  const [first = []] = input;
  const rows = input.length;
  const columns = first.length;
  if (rows === 1 && columns === 1) return first[0];
  if (columns === 0) return null;
  throw new FunctionError(
    "input",
    name,
    `${functionName}: ${name} is a range of ${rows} x ${columns} cells; it must be a single value`,
  );
}

export interface Checker {
  readonly param: Param;
  readonly name: string;
  readonly functionName: string;
}

type LimitedChecker = Checker & { param: NumberParam | NumbersParam | ColumnParam };

const PERCENT_LARGEST = 100;

/** What was probably meant by a number beyond the limits: a fraction written as a percentage, or the entry's own hint. */
function hints(
  value: unknown,
  bounds: Bounds,
  { quantity, hint }: { readonly quantity: string; readonly hint?: string },
): string {
  if (typeof value !== "number") return "";
  return `${quantity === "fraction" ? percentHint(value, bounds) : ""}${hint === undefined ? "" : `; ${hint}`}`;
}

function percentHint(value: number, bounds: Bounds): string {
  if (value < bounds.high || value <= 1 || value > PERCENT_LARGEST) return "";
  return `; write ${shownValue(Number((value / 100).toPrecision(12)))} or ${shownValue(value)}%`;
}

function numberRefused(
  { param, name, functionName }: LimitedChecker,
  shown: string,
  value: unknown,
  bounds: Bounds,
  system: UnitSystem | null,
  where: string,
): FunctionError {
  const text = typeof value === "string" ? ": a number, not text" : "";
  const itMust = `it must be ${limitsText(param, param.quantity, system)}${text}`;
  const message = `${functionName}: ${name} is ${shown}${where}; ${itMust}${hints(value, bounds, param)}`;
  return new FunctionError("input", name, message);
}

/** A number within its limits, or the error that says what it must be. */
function checkedNumber(
  checker: LimitedChecker,
  cell: CellInput,
  bounds: Bounds,
  system: UnitSystem | null,
  where = "",
): number {
  if (isCellError(cell)) throw new PassedError(cell);
  if (typeof cell === "number" && within(cell, bounds)) return cell;
  const zeroRefused = !within(0, bounds);
  if (isBlank(cell) || (cell === 0 && zeroRefused)) {
    throw numberRefused(checker, zeroRefused ? "blank or 0" : "blank", null, bounds, system, where);
  }
  throw numberRefused(checker, shownValue(cell), cell, bounds, system, where);
}

export function boundsIn(param: NumberParam | NumbersParam | ColumnParam, system: UnitSystem | null): Bounds {
  return boundsOf(param, param.quantity, system);
}

export function takeNumber(
  checker: Checker & { param: NumberParam },
  input: ArgumentInput,
  bounds: Bounds,
  system: UnitSystem | null,
): number | null {
  if (typeof input === "number" && within(input, bounds)) return input;
  const { param, name, functionName } = checker;
  const cell = singleCell(input, name, functionName);
  const blankAllowed = param.default !== undefined || param.mayBeLeftOut === true || param.blankIsAnswered === true;
  if (isBlank(cell) && blankAllowed) return param.default ?? null;
  if (isWord(cell, param.orWord)) return null;
  return checkedNumber(checker, cell, bounds, system);
}

function isWord(cell: CellInput, word: string | undefined): boolean {
  return typeof cell === "string" && cell.trim().toLowerCase() === word;
}

function wordsList(words: readonly string[]): string {
  const quoted = words.map((word) => `"${word}"`);
  const last = quoted.pop() as string;
  return quoted.length === 0 ? last : `${quoted.join(", ")} or ${last}`;
}

export function takeWord({ param, name, functionName }: Checker & { param: WordParam }, input: ArgumentInput): string {
  if (typeof input === "string" && param.words.includes(input)) return input;
  const cell = singleCell(input, name, functionName);
  if (isCellError(cell)) throw new PassedError(cell);
  if (isBlank(cell) && param.default !== undefined) return param.default;
  if (isBlank(cell) && param.mayBeLeftOut === true) return "";
  const wanted = typeof cell === "string" ? cell.trim().toLowerCase() : cell;
  const word = param.words.find((known) => known.toLowerCase() === wanted);
  if (word !== undefined) return word;
  const shown = isBlank(cell) || cell === 0 ? "blank or 0" : shownValue(cell);
  throw new FunctionError("input", name, `${functionName}: ${name} is ${shown}; it must be ${wordsList(param.words)}`);
}

export function takeSwitch(
  { param, name, functionName }: Checker & { param: SwitchParam },
  input: ArgumentInput,
): boolean {
  const cell = singleCell(input, name, functionName);
  if (isCellError(cell)) throw new PassedError(cell);
  if (typeof cell === "boolean") return cell;
  if (isBlank(cell)) return param.default;
  throw new FunctionError("input", name, `${functionName}: ${name} is ${shownValue(cell)}; it must be TRUE or FALSE`);
}

export function takeText({ param, name, functionName }: Checker & { param: TextParam }, input: ArgumentInput): string {
  const cell = singleCell(input, name, functionName);
  if (isCellError(cell)) throw new PassedError(cell);
  if (typeof cell === "string" && cell.trim() !== "") return cell.trim();
  if (typeof cell === "number" && param.orNumber === true) return String(cell);
  if (isBlank(cell) && param.mayBeBlank === true) return "";
  const shown = isBlank(cell) ? "blank" : shownValue(cell);
  throw new FunctionError("input", name, `${functionName}: ${name} is ${shown}; it must be a text`);
}

/** One cell as it is. */
export function takeCell({ name, functionName }: Checker, input: ArgumentInput): CellInput {
  const cell = singleCell(input, name, functionName);
  if (isCellError(cell)) throw new PassedError(cell);
  return cell;
}

/** The cells of a range, row by row, each taken by itself; plain loops, since a range may have a million rows. */
function cellByCell<Taken>(input: ArgumentInput, take: (cell: CellInput) => Taken): Taken[] {
  const taken: Taken[] = [];
  for (const row of rowsOf(input)) for (const cell of row) taken.push(take(cell));
  return taken;
}

/** The cells of a range as one column, read row by row. */
export function takeTexts(input: ArgumentInput): readonly string[] {
  return cellByCell(input, (cell) => (isBlank(cell) ? "" : String(cell).trim()));
}

/**
 * A column cell by cell: a number within the limits, or the error that its row will carry. Equal cells share one error: a
 * whole column of a sheet has a million blanks.
 */
export function takeColumn(
  checker: Checker & { param: ColumnParam },
  input: ArgumentInput,
  bounds: Bounds,
  system: UnitSystem | null,
): readonly (number | FunctionError)[] {
  const refused = new Map<CellInput, FunctionError>();
  return cellByCell(input, (cell) => {
    if (typeof cell === "number" && within(cell, bounds)) return cell;
    if (isBlank(cell) && checker.param.blanks === "zero") return 0;
    const known = refused.get(cell);
    if (known !== undefined) return known;
    try {
      return checkedNumber(checker, cell, bounds, system);
    } catch (error) {
      if (!(error instanceof FunctionError)) throw error;
      refused.set(cell, error);
      return error;
    }
  });
}

/** How many cells an argument has; one value is one cell. */
export function cellCount(input: ArgumentInput): number {
  let count = 0;
  for (const row of rowsOf(input)) count += row.length;
  return count;
}

function isBlankOrZero(cell: CellInput): boolean {
  return isBlank(cell) || cell === 0;
}

/** How many cells of an argument are blank or 0: what the word in `zeros` decides about. */
export function blankCount(input: ArgumentInput): number {
  return rowsOf(input).reduce((count, row) => count + row.filter(isBlankOrZero).length, 0);
}

/** Columns of one table in which a row that is blank or 0 in one of them is blank in all. */
export function blankTogether(columns: readonly ArgumentInput[]): ArgumentInput[] {
  const blank: boolean[] = [];
  for (const column of columns) {
    let at = 0;
    for (const row of rowsOf(column)) for (const cell of row) blank[at] = blank[at++] === true || isBlankOrZero(cell);
  }
  return columns.map((column) => {
    let at = 0;
    return rowsOf(column).map((row) => row.map((cell) => (blank[at++] === true ? null : cell)));
  });
}

export function isUnitSystem(word: unknown): word is UnitSystem {
  return (UNIT_WORDS as readonly unknown[]).includes(word);
}

function place(row: number, column: number, { rows, columns }: { rows: number; columns: number }): string {
  if (rows === 1 && columns === 1) return "";
  if (columns === 1) return ` in row ${row + 1} of the range`;
  if (rows === 1) return ` in column ${column + 1} of the range`;
  return ` in row ${row + 1}, column ${column + 1} of the range`;
}

/** What an empty cell of this argument is; "zeros" leaves it to the word in the argument of that name. */
function blankRule(param: NumbersParam, zeros: ZerosWord | null): ZerosWord {
  switch (param.blanks) {
    case "zeros":
      return zeros ?? "error";
    case "by row":
      return zeros === "skip" ? zeros : "error";
    case "zero":
      return "count";
    case "refused":
      return "error";
  }
}

type NumbersChecker = Checker & { param: NumbersParam };

function tooFew({ param, name, functionName }: NumbersChecker, found: number): FunctionError {
  const fewest = param.fewest ?? 1;
  const numbers = found === 1 ? "1 number" : `${found} numbers`;
  return new FunctionError(
    "input",
    name,
    `${functionName}: ${name} has ${found === 0 ? "no number" : numbers}; it must have ${fewest} or more`,
  );
}

/** The numbers of a range, row by row; what a blank is depends on the argument, or on the word in `zeros`. */
export function takeNumbers(
  checker: NumbersChecker,
  input: ArgumentInput,
  bounds: Bounds,
  system: UnitSystem | null,
  zeros: ZerosWord | null,
): readonly number[] {
  const rows = rowsOf(input);
  const size = { rows: rows.length, columns: rows[0]?.length ?? 0 };
  const rule = blankRule(checker.param, zeros);
  const numbers: number[] = [];
  for (let row = 0; row < rows.length; row += 1) {
    const cells = rows[row] as Rows[number];
    for (let column = 0; column < cells.length; column += 1) {
      const cell = cells[column];
      if (rule !== "error" && isBlankOrZero(cell)) {
        if (rule === "count") numbers.push(0);
      } else if (typeof cell === "number" && within(cell, bounds)) numbers.push(cell);
      else numbers.push(checkedNumber(checker, cell, bounds, system, place(row, column, size)));
    }
  }
  if (numbers.length < (checker.param.fewest ?? 1)) throw tooFew(checker, numbers.length);
  return numbers;
}
