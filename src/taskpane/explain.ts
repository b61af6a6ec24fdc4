/** Explains the selected cell: each call of ours in it with its real numbers, its working, and what is wrong with it. */
import { isLiteral, ourCalls, simpleValue, type CallArgument, type OurCall } from "./formula";
import {
  unitFor,
  type Answer,
  type Argument,
  type FunctionHelp,
  type Library,
  type Step,
  type UnitSystem,
} from "./library";
import type { CellFound, Rows, Selection, SheetHost } from "./sheetHost";

export interface ExplainedArgument {
  readonly name: string;
  readonly text: string;
  /** What stands there now, in words. */
  readonly shown: string;
  readonly unit: string;
  readonly verdict: string;
}

export interface ExplainedCall {
  readonly entry: FunctionHelp;
  readonly text: string;
  readonly args: readonly ExplainedArgument[];
  readonly system: UnitSystem | null;
  readonly answer: Answer | null;
  readonly verdict: string;
  readonly steps: readonly Step[];
  readonly error: { readonly code: string; readonly message: string; readonly argument: string | null } | null;
  /** Arguments that only the sheet itself can work out. */
  readonly unresolved: readonly string[];
}

export type Explanation =
  | { readonly kind: "nothing of ours"; readonly selection: Selection }
  | { readonly kind: "not readable"; readonly selection: Selection }
  | {
      readonly kind: "calls";
      readonly selection: Selection;
      readonly calls: readonly ExplainedCall[];
      readonly unknown: readonly string[];
    };

function isError(found: CellFound): found is { readonly code: string; readonly message: string } {
  return typeof found === "object" && found !== null;
}

const MOST_SHOWN = 6;

export function shownCell(found: CellFound): string {
  if (found === null) return "empty";
  if (isError(found)) return found.message === "" ? found.code : `${found.code}: ${found.message}`;
  if (typeof found === "number") return String(Number(found.toPrecision(6)));
  return typeof found === "boolean" ? String(found).toUpperCase() : found;
}

export function shownRows(rows: Rows): string {
  const cells = rows.flat();
  if (cells.length === 1) return shownCell(cells[0] ?? null);
  const some = cells.slice(0, MOST_SHOWN).map(shownCell).join(", ");
  return `${cells.length} cells: ${some}${cells.length > MOST_SHOWN ? ", ..." : ""}`;
}

type Resolved = { readonly rows: Rows } | "left out" | "unresolved";

class Resolver {
  constructor(
    private readonly host: SheetHost,
    private readonly sheet: string,
    private readonly formula: string,
  ) {}

  async resolve({ node, text }: CallArgument): Promise<Resolved> {
    if (node === null || text === "") return "left out";
    if (isLiteral(node)) return { rows: [[simpleValue(node, () => undefined, this.formula) ?? null]] };
    const rows = await this.host.evaluate(text, this.sheet);
    if (rows !== null) return { rows };
    const value = await this.simple({ node, text });
    return value === undefined ? "unresolved" : { rows: [[value]] };
  }

  /** Operators on cells, where the host cannot work out an expression by itself. */
  private async simple({ node }: CallArgument): Promise<number | string | boolean | undefined> {
    const cells = new Map<string, number | string | boolean | undefined>();
    const wanted: string[] = [];
    if (node === null) return undefined;
    simpleValue(node, (text) => (wanted.push(text), 0), this.formula);
    for (const text of wanted) {
      const found = (await this.host.evaluate(text, this.sheet))?.[0]?.[0];
      cells.set(text, typeof found === "object" ? undefined : found);
    }
    return simpleValue(node, (text) => cells.get(text), this.formula);
  }
}

function argumentOf(resolved: Resolved): Argument {
  if (typeof resolved === "string") return undefined;
  const { rows } = resolved;
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

function systemOf(entry: FunctionHelp, given: readonly Argument[]): UnitSystem | null {
  const word = given[entry.params.findIndex(({ name }) => name === "units")];
  const units = typeof word === "string" ? word.trim().toLowerCase() : null;
  return units === "us" || units === "metric" ? units : null;
}

interface Outcome {
  readonly answer: Answer | null;
  readonly steps: readonly Step[];
  readonly error: ExplainedCall["error"];
}

export function workOut(library: Library, name: string, given: readonly Argument[]): Outcome {
  try {
    return { answer: library.call(name, given), steps: library.working(name, given), error: null };
  } catch (thrown) {
    const {
      code = "#VALUE!",
      message,
      argument = null,
    } = thrown as { code?: string; message: string; argument?: string | null };
    return { answer: null, steps: [], error: { code, message, argument } };
  }
}

async function explainCall(
  library: Library,
  resolver: Resolver,
  call: OurCall,
  entry: FunctionHelp,
): Promise<ExplainedCall> {
  const resolved = await Promise.all(call.args.map((argument) => resolver.resolve(argument)));
  const given = resolved.map(argumentOf);
  const system = systemOf(entry, given);
  const unresolved = call.args.filter((_argument, index) => resolved[index] === "unresolved").map(({ text }) => text);
  const outcome: Outcome =
    unresolved.length > 0 ? { answer: null, steps: [], error: null } : workOut(library, call.name, given);
  const verdictOf = (argument: string, value: unknown): string =>
    typeof value === "number" ? library.verdict(call.name, argument, value, system ?? "us") : "";
  return {
    entry,
    text: call.text,
    system,
    unresolved,
    ...outcome,
    verdict: verdictOf("", outcome.answer),
    args: call.args.map(({ text }, index) => {
      const parameter = entry.params[index];
      const found = resolved[index] ?? "left out";
      return {
        name: parameter?.name ?? `argument ${index + 1}`,
        text,
        shown: typeof found === "string" ? found : shownRows(found.rows),
        unit: parameter === undefined ? "" : unitFor(parameter, system),
        verdict: parameter === undefined ? "" : verdictOf(parameter.name, given[index]),
      };
    }),
  };
}

export async function explainSelected(library: Library, host: SheetHost): Promise<Explanation> {
  const selection = await host.selection();
  if (selection.formula === null) return { kind: "nothing of ours", selection };
  const calls = ourCalls(selection.formula);
  if (calls === null) return { kind: "not readable", selection };
  if (calls.length === 0) return { kind: "nothing of ours", selection };
  const resolver = new Resolver(host, selection.sheet, selection.formula);
  const explained: ExplainedCall[] = [];
  const unknown: string[] = [];
  for (const call of calls) {
    const entry = library.catalogue.find(({ name }) => name === call.name);
    if (entry === undefined) unknown.push(call.name);
    else explained.push(await explainCall(library, resolver, call, entry));
  }
  return { kind: "calls", selection, calls: explained, unknown };
}
