/** From what stands in a field of the form to an argument, and to its text in a formula. */
import type { Argument, FunctionHelp, Parameter, UnitSystem } from "./library";
import type { SheetHost } from "./sheetHost";

/** Field texts by argument name; a missing or empty one is left out. */
export type FieldTexts = Readonly<Record<string, string>>;

const REFERENCE = /^(?:(?:'(?:[^']|'')+'|[^'!\s]+)!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;
const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?$/i;
const PERCENT = /^([-+]?(?:\d+\.?\d*|\.\d+))\s*%$/;
const DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const TIME = /^(\d{1,2}):(\d{2})$/;

const MILLISECONDS_PER_DAY = 86_400_000;
const SERIAL_1970 = 25_569;
const MINUTES_PER_DAY = 1440;

export function isReference(text: string): boolean {
  return REFERENCE.test(text.trim());
}

/** One value as typed: a number, a percentage, a date or time, TRUE or FALSE, otherwise text. */
function literal(text: string): number | string | boolean {
  const bare = text.trim();
  const percent = PERCENT.exec(bare);
  const date = DATE.exec(bare);
  const time = TIME.exec(bare);
  if (NUMBER.test(bare)) return Number(bare);
  if (percent !== null) return Number((Number(percent[1]) / 100).toPrecision(15));
  if (date !== null)
    return Date.UTC(Number(date[1]), Number(date[2]) - 1, Number(date[3])) / MILLISECONDS_PER_DAY + SERIAL_1970;
  if (time !== null) return (Number(time[1]) * 60 + Number(time[2])) / MINUTES_PER_DAY;
  if (/^(true|false)$/i.test(bare)) return bare.toLowerCase() === "true";
  return bare.replace(/^"(.*)"$/, "$1");
}

function literalText(text: string): string {
  const bare = text.trim();
  const date = DATE.exec(bare);
  const time = TIME.exec(bare);
  if (PERCENT.test(bare)) return bare.replace(/\s/g, "");
  if (date !== null) return `DATE(${Number(date[1])}, ${Number(date[2])}, ${Number(date[3])})`;
  if (time !== null) return `TIME(${Number(time[1])}, ${Number(time[2])}, 0)`;
  const value = literal(bare);
  if (typeof value === "string") return `"${value.replace(/"/g, '""')}"`;
  return typeof value === "boolean" ? String(value).toUpperCase() : String(value);
}

/** A range typed by hand: lines or semicolons part the rows, spaces, tabs or commas the cells. */
function typedRows(text: string): readonly (readonly string[])[] {
  return text
    .trim()
    .split(/\s*[;\n]\s*/)
    .filter((row) => row !== "")
    .map((row) => row.split(row.includes("\t") ? "\t" : /\s*,\s*|\s+/));
}

export function formulaText(text: string, { shape }: Parameter): string {
  const bare = text.trim();
  if (bare === "" || isReference(bare))
    return bare.toUpperCase() === bare || bare.includes("!") ? bare : bare.toUpperCase();
  if (shape === "cell") return literalText(bare);
  return `{${typedRows(bare)
    .map((row) => row.map(literalText).join(", "))
    .join("; ")}}`;
}

/** The whole formula, in English names and with commas; arguments left out at the end are dropped. */
export function formulaOf({ name, params }: FunctionHelp, texts: FieldTexts, namespace: string): string {
  const args = params.map((parameter) => formulaText(texts[parameter.name] ?? "", parameter));
  while (args.length > 0 && args[args.length - 1] === "") args.pop();
  return `=${namespace}.${name}(${args.join(", ")})`;
}

/** The arguments as the library takes them; references are read from the sheet. */
export async function argumentsOf(
  { params }: FunctionHelp,
  texts: FieldTexts,
  host: SheetHost,
  sheet: string,
): Promise<Argument[]> {
  return Promise.all(
    params.map(async ({ name, shape }) => {
      const text = (texts[name] ?? "").trim();
      if (text === "") return undefined;
      if (isReference(text)) return (await host.evaluate(text, sheet)) ?? undefined;
      return shape === "cell" ? literal(text) : typedRows(text).map((row) => row.map(literal));
    }),
  );
}

function exampleText(value: unknown): string {
  if (value === null || value === undefined) return "";
  if (!Array.isArray(value)) return typeof value === "number" ? String(Number(value.toPrecision(12))) : String(value);
  return (value as readonly (readonly unknown[])[])
    .map((row) => row.map((cell) => (cell === null ? "" : String(cell))).join(", "))
    .join("; ");
}

/** The first worked example in the units shown, as texts of the fields. */
export function exampleTexts({ params, examples }: FunctionHelp, system: UnitSystem): FieldTexts {
  const at = params.findIndex(({ name }) => name === "units");
  const fitting = examples.find(({ args }) => at < 0 || args[at] === system) ?? examples[0];
  return Object.fromEntries(params.map(({ name }, index) => [name, exampleText(fitting?.args[index])]));
}

/** The example's arguments themselves, so that nothing is lost between text and number. */
export function exampleArguments({ params, examples }: FunctionHelp, system: UnitSystem): readonly Argument[] {
  const at = params.findIndex(({ name }) => name === "units");
  return (examples.find(({ args }) => at < 0 || args[at] === system) ?? examples[0])?.args ?? [];
}
