/** Formulas as the sheet writes them: which calls of ours stand in one, and what each is given. */
import {
  isArrayNode,
  isBinaryNode,
  isCallNode,
  isLiteralNode,
  isUnaryNode,
  parse,
  tokenize,
  type AstExpression,
} from "@borgar/fx";

/** The form in which Excel stores our functions in a file. */
const STORED = "_xldudf_CANYARD_";
const SHOWN = "CANYARD.";

export interface OurCall {
  readonly name: string;
  /** The call as it stands in the formula. */
  readonly text: string;
  readonly args: readonly CallArgument[];
}

export interface CallArgument {
  readonly text: string;
  readonly node: AstExpression | null;
}

export function ourName(callee: string): string | null {
  const upper = callee.toUpperCase();
  if (upper.startsWith(SHOWN)) return upper.slice(SHOWN.length);
  return upper.startsWith(STORED.toUpperCase()) ? upper.slice(STORED.length) : null;
}

function textOf(node: AstExpression | null, formula: string): string {
  const [start, end] = node?.loc ?? [0, 0];
  return formula.slice(start, end);
}

function childrenOf(node: AstExpression): readonly (AstExpression | null)[] {
  if (isCallNode(node) || isBinaryNode(node) || isUnaryNode(node)) return node.arguments as (AstExpression | null)[];
  return isArrayNode(node) ? (node.elements as unknown as AstExpression[][]).flat() : [];
}

function collect(node: AstExpression | null, formula: string, found: OurCall[]): void {
  if (node === null || node === undefined) return;
  for (const child of childrenOf(node)) collect(child, formula, found);
  if (!isCallNode(node) || !("name" in node.callee)) return;
  const name = ourName(String(node.callee.name));
  if (name === null) return;
  const args = (node.arguments as (AstExpression | null)[]).map((each) => ({
    text: textOf(each, formula),
    node: each,
  }));
  found.push({ name, text: textOf(node, formula), args });
}

/** Our calls in the order in which a sheet works them, inner ones first; null where the formula cannot be read. */
export function ourCalls(formula: string): readonly OurCall[] | null {
  try {
    const found: OurCall[] = [];
    collect(parse(tokenize(formula, { withLocation: true })), formula, found);
    return found;
  } catch {
    return null;
  }
}

type Scalar = number | string | boolean;

const OPERATORS: Readonly<Record<string, (a: number, b: number) => number | boolean>> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
  "<": (a, b) => a < b,
  ">": (a, b) => a > b,
  "<=": (a, b) => a <= b,
  ">=": (a, b) => a >= b,
};

/** A literal, or a simple sum of literals and of cells that were read; undefined for anything else. */
export function simpleValue(
  node: AstExpression,
  cell: (text: string) => Scalar | undefined,
  formula: string,
): Scalar | undefined {
  if (isLiteralNode(node)) return node.value as Scalar;
  const operands = isUnaryNode(node) || isBinaryNode(node) ? node.arguments : null;
  if (operands === null) return cell(textOf(node, formula));
  const values = (operands as AstExpression[]).map((operand) => simpleValue(operand, cell, formula));
  if (!values.every((value): value is number => typeof value === "number")) return undefined;
  const [first = 0, second = 0] = values;
  if (isBinaryNode(node)) return OPERATORS[node.operator]?.(first, second);
  return { "-": -first, "+": first, "%": first / 100 }[(node as { operator: string }).operator];
}

export function isLiteral(node: AstExpression): boolean {
  return isLiteralNode(node);
}

/** The same formula with our names as a sheet shows them; null where nothing is to be mended. */
export function withShownNames(formula: string): string | null {
  const mended = formula.replace(/(?:\[\d+\]!)?_xldudf_CANYARD_/gi, SHOWN);
  return mended === formula ? null : mended;
}

export function holdsOurs(formula: string): boolean {
  return /CANYARD\.[A-Z0-9_]|_xldudf_CANYARD_/i.test(formula);
}
