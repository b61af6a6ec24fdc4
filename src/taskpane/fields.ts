/** From what stands in a field of the form to an argument, and to its text in a formula. */
import { calendarText, datePartsOf, dayFraction, serialOf, timePartsOf } from "./dates";
import type { Argument, FunctionHelp, Parameter, UnitSystem } from "./library";
import { placeOf } from "./reference";
import { HostFailure, type SheetHost } from "./sheetHost";

/** Texts by the fields' keys; a missing or empty one is left out. */
export type FieldTexts = Readonly<Record<string, string>>;

export interface FormField {
  readonly key: string;
  readonly parameter: Parameter;
}

function keyAt({ name }: Parameter, place: number): string {
  return place === 0 ? name : `${name}_${place + 1}`;
}

/** How many fields a parameter that takes all further arguments has: those filled in and one more, the example's at least. */
function repeats(entry: FunctionHelp, parameter: Parameter, texts: FieldTexts): number {
  const before = entry.params.indexOf(parameter);
  let count = Math.max(1, ...entry.examples.map(({ args }) => args.length - before));
  while ((texts[keyAt(parameter, count - 1)] ?? "") !== "") count += 1;
  return count;
}

/** One field for each argument. */
export function fieldsOf(entry: FunctionHelp, texts: FieldTexts): readonly FormField[] {
  return entry.params.flatMap((parameter) =>
    Array.from({ length: parameter.repeating ? repeats(entry, parameter, texts) : 1 }, (_field, place) => ({
      key: keyAt(parameter, place),
      parameter,
    })),
  );
}

const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
const PERCENT = /^([-+]?(?:\d+\.?\d*|\.\d+))\s*%$/;
const SWITCH = /^(?:true|false)$/i;
const QUOTED = /^"((?:[^"]|"")*)"$/;

/** Whether a field names cells. Bare rows as 1:5 are not taken for a reference: a person means a ratio or a time. */
export function isReference(text: string): boolean {
  return placeOf(text) !== null && !/^\d/.test(text.trim());
}

/** A word to choose, such as NO3, is that word even where it reads like a cell. */
function namesCells(text: string, { words }: Partial<Parameter>): boolean {
  return isReference(text) && words?.includes(text.trim()) !== true;
}

function isNumber(text: string): boolean {
  return NUMBER.test(text) && Number.isFinite(Number(text));
}

/** One value as typed: a number, a percentage, a date or time, TRUE or FALSE, otherwise text. */
function literal(text: string): number | string | boolean {
  const bare = text.trim();
  if (isNumber(bare)) return Number(bare);
  const percent = PERCENT.exec(bare);
  if (percent !== null) return Number((Number(percent[1]) / 100).toPrecision(15));
  const date = datePartsOf(bare);
  if (date !== null) return serialOf(...date);
  const time = timePartsOf(bare);
  if (time !== null) return dayFraction(...time);
  if (SWITCH.test(bare)) return bare.toLowerCase() === "true";
  return QUOTED.exec(bare)?.[1]?.replace(/""/g, '"') ?? bare;
}

/** A value as a formula writes it where no function and no percent sign may stand: in braces. */
function constantText(text: string): string {
  const value = literal(text);
  if (typeof value === "string") return `"${value.replace(/"/g, '""')}"`;
  return String(value).toUpperCase();
}

function literalText(text: string): string {
  const bare = text.trim();
  const date = datePartsOf(bare);
  const time = timePartsOf(bare);
  if (PERCENT.test(bare)) return bare.replace(/\s/g, "");
  if (date !== null) return `DATE(${date.join(", ")})`;
  if (time !== null) return `TIME(${time.join(", ")}, 0)`;
  return constantText(bare);
}

const SEPARATORS = { ",": /,/, "\t": /\t/, " ": /\s/ } as const;

/** Splits at a separator, but not within quotation marks. */
function split(text: string, separator: RegExp): readonly string[] {
  const parts = [""];
  let isQuoted = false;
  for (const letter of text) {
    if (letter === '"') isQuoted = !isQuoted;
    if (!isQuoted && separator.test(letter)) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts.map((part) => part.trim());
}

/** Tabs part the cells where there are any, else commas, else spaces. */
function cellsOf(row: string): readonly string[] {
  if (row.includes("\t")) return split(row, SEPARATORS["\t"]);
  const byComma = split(row, SEPARATORS[","]);
  return byComma.length > 1 ? byComma : split(row, SEPARATORS[" "]).filter((cell) => cell !== "");
}

/** A range typed by hand, with braces or without: semicolons or lines part the rows. Short rows end in blanks. */
function typedRows(text: string): readonly (readonly string[])[] {
  const bare = text
    .trim()
    .replace(/^\{(.*)\}$/s, "$1")
    .replace(/[;\s]+$/, "");
  const rows = split(bare, /[;\n]/).map(cellsOf);
  const width = Math.max(1, ...rows.map((row) => row.length));
  return rows.map((row) => [...row, ...Array<string>(width - row.length).fill("")]);
}

export function formulaText(text: string, parameter: Pick<Parameter, "shape"> & Partial<Parameter>): string {
  const bare = text.trim();
  if (bare === "") return "";
  if (namesCells(bare, parameter)) return bare.includes("!") ? bare : bare.toUpperCase();
  const rows = parameter.shape === "cell" ? [[bare]] : typedRows(bare);
  if (rows.flat().length === 1) return literalText(rows[0]?.[0] ?? "");
  return `{${rows.map((row) => row.map(constantText).join(",")).join(";")}}`;
}

/** The whole formula, in English names and with commas; arguments left out at the end are dropped. */
export function formulaOf(entry: FunctionHelp, texts: FieldTexts, namespace: string): string {
  const args = fieldsOf(entry, texts).map(({ key, parameter }) => formulaText(texts[key] ?? "", parameter));
  while (args.length > 0 && args[args.length - 1] === "") args.pop();
  return `=${namespace}.${entry.name}(${args.join(", ")})`;
}

async function cellsAt(reference: string, host: SheetHost, sheet: string): Promise<Argument> {
  const rows = await host.evaluate(reference, sheet);
  if (rows === null) throw new HostFailure(`Only a sheet can read ${reference}. The answer comes there.`);
  return rows;
}

/** The arguments as the library takes them; references are read from the sheet. */
export async function argumentsOf(
  entry: FunctionHelp,
  texts: FieldTexts,
  host: SheetHost,
  sheet: string,
): Promise<Argument[]> {
  const args = await Promise.all(
    fieldsOf(entry, texts).map(async ({ key, parameter }): Promise<Argument> => {
      const text = (texts[key] ?? "").trim();
      if (text === "") return undefined;
      if (namesCells(text, parameter)) return cellsAt(text, host, sheet);
      return parameter.shape === "cell" ? literal(text) : typedRows(text).map((row) => row.map(literal));
    }),
  );
  while (args.length > entry.params.length && args[args.length - 1] === undefined) args.pop();
  return args;
}

const EXAMPLE_DIGITS = 12;

function numberText(value: number, unit: string): string {
  const onCalendar = calendarText(value, unit);
  const isReadAgain = onCalendar !== null && typeof literal(onCalendar) === "number";
  return isReadAgain ? onCalendar : String(Number(value.toPrecision(EXAMPLE_DIGITS)));
}

/** Text as a field takes it for text: in quotation marks where it would be read as something else. */
function plainOrQuoted(text: string, isWhole: (text: string) => boolean): string {
  return text !== "" && isWhole(text) && literal(text) === text ? text : `"${text.replace(/"/g, '""')}"`;
}

const ONE_CELL = /^[^\s,;"]+$/;

/** A cell of a range; quotation marks keep a blank, and text with spaces or commas, in one piece. */
function cellText(cell: unknown): string {
  if (typeof cell === "number") return numberText(cell, "");
  if (typeof cell === "boolean") return String(cell);
  return plainOrQuoted(String(cell ?? ""), (text) => ONE_CELL.test(text));
}

function exampleText(value: unknown, unit: string): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "number") return numberText(value, unit);
  if (typeof value === "boolean") return String(value);
  if (!Array.isArray(value)) return plainOrQuoted(String(value), () => true);
  return (value as readonly (readonly unknown[])[]).map((row) => row.map(cellText).join(", ")).join("; ");
}

/** The first worked example in the units shown: its arguments themselves, so that nothing is lost between text and number. */
export function exampleArguments({ params, examples }: FunctionHelp, system: UnitSystem): readonly Argument[] {
  const at = params.findIndex(({ name }) => name === "units");
  return (examples.find(({ args }) => at < 0 || args[at] === system) ?? examples[0])?.args ?? [];
}

/** The same example as texts of the fields. */
export function exampleTexts(entry: FunctionHelp, system: UnitSystem): FieldTexts {
  const args = exampleArguments(entry, system);
  const fields = fieldsOf(entry, {});
  return Object.fromEntries(fields.map(({ key, parameter }, index) => [key, exampleText(args[index], parameter.unit)]));
}
