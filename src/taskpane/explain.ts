/** Explains the selected cell: each call of ours in it with its real numbers, its working, and what is wrong with it. */
import { ourCalls, type OurCall } from "./formula";
import {
  unitFor,
  type Answer,
  type Argument,
  type FunctionHelp,
  type Library,
  type Parameter,
  type Step,
  type UnitSystem,
} from "./library";
import { Resolver, type Resolved } from "./resolver";
import type { Selection, SheetHost } from "./sheetHost";
import { isError, shownRows } from "./shown";

export interface ExplainedArgument {
  readonly name: string;
  readonly text: string;
  /** What stands there now, in words. */
  readonly shown: string;
  readonly unit: string;
  readonly verdict: string;
}

export interface CallError {
  readonly code: string;
  readonly message: string;
  readonly argument: string | null;
}

export interface ExplainedCall {
  readonly entry: FunctionHelp;
  readonly text: string;
  readonly args: readonly ExplainedArgument[];
  readonly system: UnitSystem | null;
  readonly answer: Answer | null;
  readonly verdict: string;
  readonly steps: readonly Step[];
  readonly error: CallError | null;
  /** Arguments that could not be read here, and why; "" where only the sheet can work them out. */
  readonly unresolved: readonly { readonly text: string; readonly reason: string }[];
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

function argumentOf(resolved: Resolved): Argument {
  if (resolved.kind !== "cells") return undefined;
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
  readonly error: CallError | null;
}

const NOTHING: Outcome = { answer: null, steps: [], error: null };

export function workOut(library: Library, name: string, given: readonly Argument[]): Outcome {
  try {
    return { answer: library.call(name, given), steps: library.working(name, given), error: null };
  } catch (thrown) {
    const { code = "#VALUE!", message, argument = null } = thrown as Partial<CallError> & Error;
    return { ...NOTHING, error: { code, message, argument } };
  }
}

function parameterAt({ params }: FunctionHelp, index: number): Parameter | undefined {
  const last = params[params.length - 1];
  return params[index] ?? (last?.repeating === true ? last : undefined);
}

/** An error that came with an argument says by itself neither which one nor what to do. */
function withItsArgument(entry: FunctionHelp, outcome: Outcome, resolved: readonly Resolved[]): Outcome {
  const { error } = outcome;
  if (error === null || error.argument !== null) return outcome;
  const holdsIt = (found: Resolved): boolean =>
    found.kind === "cells" && found.rows.flat().some((cell) => isError(cell) && cell.code === error.code);
  const parameter = parameterAt(entry, resolved.findIndex(holdsIt));
  if (parameter === undefined) return outcome;
  const message = `${parameter.name} comes with the error ${error.code}. Mend that first.`;
  return { ...outcome, error: { ...error, message } };
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
  const unresolved = resolved.flatMap((found, index) =>
    found.kind === "unresolved" ? [{ text: call.args[index]?.text ?? "", reason: found.reason }] : [],
  );
  const outcome =
    unresolved.length > 0 ? NOTHING : withItsArgument(entry, workOut(library, call.name, given), resolved);
  const result = outcome.answer ?? outcome.error;
  if (result !== null) resolver.remember(call.text, result);
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
      const parameter = parameterAt(entry, index);
      const found = resolved[index];
      return {
        name: parameter?.name ?? `argument ${index + 1}`,
        text,
        shown: found?.kind === "cells" ? shownRows(found.rows, parameter?.unit) : (found?.kind ?? "left out"),
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
  const resolver = new Resolver(host, selection.sheet);
  const explained: ExplainedCall[] = [];
  const unknown: string[] = [];
  for (const call of calls) {
    const entry = library.catalogue.find(({ name }) => name === call.name);
    if (entry === undefined) unknown.push(call.name);
    else explained.push(await explainCall(library, resolver, call, entry));
  }
  return { kind: "calls", selection, calls: explained, unknown };
}
