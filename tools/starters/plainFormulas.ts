/** A formula with each call of ours replaced by what it is in built-in functions, as the call itself recorded it. */
import { isCallNode, isIdentifierNode, isLiteralNode, isReferenceNode, parse, tokenize } from "@borgar/fx";
import { find } from "../../src/functions";
import {
  fullNumber,
  isBlank,
  isOptional,
  isRange,
  plainFormula,
  work,
  type ArgumentInput,
  type Entry,
  type Param,
  type Working,
} from "../../src/kernel";
import { holdsOurs, ourCalls, type OurCall } from "../../src/taskpane/formula";

/** What an expression is where the formula stands, as rows. */
export type Evaluate = (expression: string) => readonly (readonly ArgumentInput[])[];

/** Without a formula: whether no cell can hold one, or the numbers at hand led to no working. */
export type Plain = { readonly formula: string } | { readonly none: "no equivalent" | "not worked" };

/** More than this no cell of a spreadsheet takes. */
const LONGEST_FORMULA = 8000;
/** Stands for an argument that was left out and has no value of its own; no formula that names it can be used. */
const LEFT_OUT = "LEFT_OUT_";

class NoPlain extends Error {
  constructor(readonly why: "no equivalent" | "not worked") {
    super(why);
  }
}

export function plainOf(formula: string, evaluate: Evaluate): Plain {
  try {
    const plain = withoutOurs(formula, evaluate);
    return plain.length > LONGEST_FORMULA ? { none: "no equivalent" } : { formula: plain };
  } catch (thrown) {
    if (thrown instanceof NoPlain) return { none: thrown.why };
    throw thrown;
  }
}

function withoutOurs(formula: string, evaluate: Evaluate): string {
  let plain = formula;
  while (holdsOurs(plain)) {
    const call = ourCalls(plain)?.at(-1);
    if (call === undefined) throw new Error(`cannot be read: ${formula}`);
    plain = replaced(plain, call, plainCall(call, evaluate));
  }
  return plain;
}

/** In brackets, unless what stands around it keeps it together. */
function replaced(formula: string, { text }: OurCall, plain: string): string {
  const at = formula.lastIndexOf(text);
  const before = formula.slice(0, at);
  const after = formula.slice(at + text.length);
  const standsAlone = /(^=|[(,])\s*$/.test(before) && /^\s*($|[,)])/.test(after);
  return `${before}${standsAlone ? plain : inBrackets(plain)}${after}`;
}

function plainCall({ name, args }: OurCall, evaluate: Evaluate): string {
  const entry = find(name);
  if (entry === undefined) throw new Error(`there is no function ${name}`);
  const names = Object.keys(entry.params);
  const inputs = args.map(({ text }, at) => inputOf(text, entry.params[names[at] ?? names.at(-1)!], evaluate));
  const working = workingOf(entry, inputs);
  const formula = plainFormula(entry, working, (parameter, param) => {
    const at = names.indexOf(parameter);
    return argumentText(args[at]?.text ?? "", inputs[at], param, evaluate);
  });
  if (formula === null || formula.includes(LEFT_OUT)) throw new NoPlain("no equivalent");
  return formula.slice(1);
}

function workingOf(entry: Entry, inputs: readonly ArgumentInput[]): Working {
  if (entry.native === null) throw new NoPlain("no equivalent");
  try {
    return work(entry, inputs);
  } catch {
    throw new NoPlain("not worked");
  }
}

function inputOf(text: string, param: Param | undefined, evaluate: Evaluate): ArgumentInput {
  if (text === "") return undefined;
  const rows = evaluate(text) as readonly (readonly (string | number | boolean | null)[])[];
  const isCell = rows.length === 1 && rows[0]!.length === 1;
  return isCell && !(param && isRange(param)) ? rows[0]![0] : rows;
}

function argumentText(text: string, input: ArgumentInput, param: Param, evaluate: Evaluate): string {
  if (text === "") return defaultText(param);
  const own = inBrackets(withoutOurs(`=${text}`, evaluate).slice(1));
  const isLeftBlank = isOptional(param) && !Array.isArray(input) && isBlank(input as string | null);
  return isLeftBlank ? `IF(${own}="", ${defaultText(param)}, ${own})` : own;
}

function defaultText(param: Param): string {
  const value = "default" in param ? param.default : undefined;
  if (value === undefined) return LEFT_OUT;
  if (typeof value === "number") return fullNumber(value);
  return typeof value === "string" ? `"${value}"` : String(value).toUpperCase();
}

/** Brackets around whatever another operator could pull apart. */
function inBrackets(expression: string): string {
  const node = parse(tokenize(expression, { withLocation: true }));
  const holds = isReferenceNode(node) || isIdentifierNode(node) || isLiteralNode(node) || isCallNode(node);
  return holds ? expression : `(${expression})`;
}
