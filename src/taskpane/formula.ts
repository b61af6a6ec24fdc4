/** Formulas as the sheet writes them: which calls of ours stand in one, and what each is given. */
import {
  isArrayNode,
  isBinaryNode,
  isCallNode,
  isErrorNode,
  isLambdaNode,
  isLetNode,
  isLiteralNode,
  isUnaryNode,
  parse,
  tokenize,
  type AstExpression,
  type Token,
} from "@borgar/fx";
import { dayFraction, serialOf } from "./dates";
import type { CellFound, Rows } from "./sheetHost";

const SHOWN = "CANYARD.";
const TEXT_IN_FORMULA = /"(?:[^"]|"")*"/g;
/** The form in which Excel stores our functions in a file; beside other add-ins it may carry a number in brackets. */
const TEXT_OR_STORED = /"(?:[^"]|"")*"|(?:\[\d+\]!)?_xldudf_CANYARD_/gi;

export interface CallArgument {
  readonly text: string;
  readonly node: AstExpression | null;
  /** The formula in which the argument stands. */
  readonly formula: string;
}

export interface OurCall {
  readonly name: string;
  /** The call as it stands in the formula. */
  readonly text: string;
  readonly args: readonly CallArgument[];
}

/** The same formula with our names as a sheet shows them; null where nothing is to be mended. */
export function withShownNames(formula: string): string | null {
  const mended = formula.replace(TEXT_OR_STORED, (part) => (part.startsWith('"') ? part : SHOWN));
  return mended === formula ? null : mended;
}

export function holdsOurs(formula: string): boolean {
  return /CANYARD\.[A-Z0-9_]|_xldudf_CANYARD_/i.test(formula.replace(TEXT_IN_FORMULA, '""'));
}

/** The name of a function of ours behind its prefix; null for any other. */
function ourName(callee: string): string | null {
  const upper = callee.toUpperCase();
  return upper.startsWith(SHOWN) ? upper.slice(SHOWN.length) : null;
}

function calleeOf(node: AstExpression): string | null {
  return isCallNode(node) && "name" in node.callee ? String(node.callee.name) : null;
}

type Child = AstExpression | null;

function childrenOf(node: AstExpression): readonly Child[] {
  if (isCallNode(node)) return [node.callee as unknown as Child, ...(node.arguments as Child[])];
  if (isBinaryNode(node) || isUnaryNode(node)) return node.arguments as Child[];
  if (isLetNode(node)) return [...node.declarations.map(({ init }) => init as Child), node.body as Child];
  if (isLambdaNode(node)) return [node.body as Child];
  return isArrayNode(node) ? (node.elements as unknown as Child[][]).flat() : [];
}

function textOf(node: Child, formula: string): string {
  const [start, end] = node?.loc ?? [0, 0];
  return formula.slice(start, end);
}

interface Read {
  readonly formula: string;
  readonly tokens: readonly Token[];
}

/** The texts between the commas of a call. The parser's own places leave out brackets around an argument. */
function argumentTexts(call: AstExpression, { formula, tokens }: Read): readonly string[] {
  const [begin = 0, end = 0] = call.loc ?? [];
  const marks = tokens
    .filter(({ value }) => ["(", ")", "{", "}", ","].includes(value))
    .map(({ value, loc }) => ({ value, at: loc?.[0] ?? 0 }))
    .filter(({ at }) => at >= begin && at < end);
  const cuts: number[] = [];
  let depth = 0;
  for (const { value, at } of marks) {
    if (value === ")" || value === "}") depth -= 1;
    if (depth === (value === "," ? 1 : 0)) cuts.push(at);
    if (value === "(" || value === "{") depth += 1;
  }
  return cuts.slice(1).map((cut, index) => formula.slice((cuts[index] ?? 0) + 1, cut).trim());
}

function collect(node: Child | undefined, read: Read, found: OurCall[]): void {
  if (node === null || node === undefined) return;
  for (const child of childrenOf(node)) collect(child, read, found);
  const name = ourName(calleeOf(node) ?? "");
  if (name === null || !isCallNode(node)) return;
  const { formula } = read;
  const texts = argumentTexts(node, read);
  const args = (node.arguments as Child[]).map((each, at) => ({ text: texts[at] ?? "", node: each, formula }));
  found.push({ name, text: textOf(node, formula), args });
}

/** Our calls in the order in which a sheet works them, inner ones first; null where the formula cannot be read. */
export function ourCalls(formula: string): readonly OurCall[] | null {
  const shown = withShownNames(formula) ?? formula;
  try {
    const found: OurCall[] = [];
    const tokens = tokenize(shown, { withLocation: true });
    collect(parse(tokens), { formula: shown, tokens }, found);
    return found;
  } catch {
    return null;
  }
}

type Scalar = number | string | boolean;

function constantCell(node: AstExpression): CellFound | undefined {
  if (isLiteralNode(node)) return node.value as Scalar;
  return isErrorNode(node) ? { code: String(node.value), message: "" } : undefined;
}

/** A number, text, TRUE or FALSE, an error, or a list of these in braces; null for anything else. */
export function constantRows({ node }: CallArgument): Rows | null {
  if (node === null) return null;
  const rows = isArrayNode(node) ? (node.elements as unknown as AstExpression[][]) : [[node]];
  const cells = rows.map((row) => row.map(constantCell));
  return cells.flat().includes(undefined) ? null : (cells as Rows);
}

type Work = (...given: number[]) => number | boolean;

const OPERATORS: Readonly<Record<string, Work>> = {
  "+": (a = 0, b = 0) => a + b,
  "-": (a = 0, b = 0) => a - b,
  "*": (a = 0, b = 0) => a * b,
  "/": (a = 0, b = 0) => a / b,
  "^": (a = 0, b = 0) => a ** b,
  "<": (a = 0, b = 0) => a < b,
  ">": (a = 0, b = 0) => a > b,
  "<=": (a = 0, b = 0) => a <= b,
  ">=": (a = 0, b = 0) => a >= b,
};

const SIGNS: Readonly<Record<string, Work>> = {
  "-": (a = 0) => -a,
  "+": (a = 0) => a,
  "%": (a = 0) => a / 100,
};

/** The built-in functions that stand in the formulas that the pane itself writes. */
const BUILT_IN: Readonly<Record<string, Work>> = {
  DATE: (year = 0, month = 0, day = 0) => serialOf(year, month, day),
  TIME: (hours = 0, minutes = 0, seconds = 0) => dayFraction(hours, minutes + seconds / 60),
};

function workOf(node: AstExpression): { readonly work: Work; readonly operands: readonly AstExpression[] } | null {
  const table = isBinaryNode(node) ? OPERATORS : isUnaryNode(node) ? SIGNS : BUILT_IN;
  const key = isBinaryNode(node) || isUnaryNode(node) ? node.operator : calleeOf(node)?.toUpperCase();
  const work = key === undefined ? undefined : table[key];
  if (work === undefined) return null;
  return { work, operands: (node as unknown as { arguments: AstExpression[] }).arguments };
}

/** A literal, or a simple sum of literals and of cells that were read; undefined for anything else. */
export function simpleValue(
  { node, formula }: CallArgument,
  cell: (text: string) => Scalar | undefined,
): Scalar | undefined {
  if (node === null) return undefined;
  if (isLiteralNode(node)) return node.value as Scalar;
  const sum = workOf(node);
  if (sum === null) return cell(textOf(node, formula));
  const values = sum.operands.map((operand) => simpleValue({ node: operand, formula, text: "" }, cell));
  if (!values.every((value): value is number => typeof value === "number")) return undefined;
  const result = sum.work(...values);
  return typeof result === "number" && !Number.isFinite(result) ? undefined : result;
}
