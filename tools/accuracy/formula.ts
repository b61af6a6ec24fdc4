/** A formula of a spreadsheet, parsed as such, worked in big numbers. */
import { parse, tokenize, type AstExpression } from "@borgar/fx";
import { replaceSymbols } from "../../src/kernel";
import { ONE, written } from "./bigNumbers";
import type { Decisions } from "./decisions";
import { builtins, numberIn, operators, type Value } from "./spreadsheet";
import { constant, multiplied, type Traced } from "./traced";

/** What a symbol stands for, and what a number written in the formula does. */
export interface Meanings {
  readonly symbol: (symbol: string) => Traced | readonly Traced[];
  readonly number: (text: string) => Traced;
}

/** Numbers of a formula as they are written. */
export function asWritten(text: string): Traced {
  return constant(written(text));
}

const COMPARISONS = /^(=|<>|<=?|>=?)$/;
/** Before every symbol, so that none is taken for an address (P1) or a word of the syntax (R). */
const PREFIX = "symbol_";

const parsed = new Map<string, AstExpression>();

function treeOf(formula: string): AstExpression {
  const known = parsed.get(formula);
  if (known !== undefined) return known;
  const named = replaceSymbols(formula, (symbol) => `${PREFIX}${symbol}`);
  const tree = parse(tokenize(`=${named}`)) as AstExpression;
  parsed.set(formula, tree);
  return tree;
}

class Reader {
  constructor(
    private readonly meanings: Meanings,
    private readonly decisions: Decisions,
  ) {}

  value(node: AstExpression | null | undefined): Value {
    if (node === null || node === undefined) throw new Error("a formula has nothing where something belongs");
    switch (node.type) {
      case "Literal":
        return typeof node.value === "number" ? this.meanings.number(node.raw) : (node.value as string | boolean);
      case "ReferenceIdentifier":
        return this.meanings.symbol(node.value.slice(PREFIX.length));
      case "UnaryExpression":
        return this.signed(node.operator, this.number(node.arguments[0]));
      case "BinaryExpression":
        return this.joined(node.operator, node.arguments[0], node.arguments[1]);
      case "CallExpression":
        return this.called(node.callee.type === "Identifier" ? node.callee.name : "", node.arguments);
      default:
        throw new Error(`a formula holds ${node.type}`);
    }
  }

  private number(node: AstExpression | undefined): Traced {
    return numberIn(this.value(node));
  }

  private signed(operator: string, of: Traced): Traced {
    if (operator === "-") return multiplied(constant(ONE.negated()), of);
    if (operator === "+") return of;
    throw new Error(`no sign ${operator}`);
  }

  private joined(operator: string, left: AstExpression | undefined, right: AstExpression | undefined): Value {
    if (operator === "&") {
      const comparison = this.value(left);
      if (typeof comparison !== "string" || !COMPARISONS.test(comparison)) throw new Error("& joins no rule");
      return { operator: comparison, against: this.number(right) };
    }
    if (COMPARISONS.test(operator)) return this.compared(operator, this.value(left), this.value(right));
    const work = operators[operator] ?? fail(`no operator ${operator}`);
    return work(this.number(left), this.number(right));
  }

  private compared(operator: string, left: Value, right: Value): boolean {
    if (typeof left === "string" && operator === "=") return left === right;
    return this.decisions.holds(numberIn(left).value, operator, numberIn(right).value);
  }

  private called(name: string, given: readonly (AstExpression | null)[]): Value {
    if (name === "IF") return this.either(given);
    const builtin = builtins[name] ?? fail(`no built-in function ${name}`);
    return builtin(
      given.map((node) => this.value(node)),
      this.decisions,
    );
  }

  private either([test, then, otherwise]: readonly (AstExpression | null)[]): Value {
    const holds = this.value(test);
    if (typeof holds !== "boolean") throw new Error("IF has no comparison to go by");
    return this.value(holds ? then : otherwise);
  }
}

function fail(message: string): never {
  throw new Error(message);
}

/** The number that a formula comes to. */
export function worked(formula: string, meanings: Meanings, decisions: Decisions): Traced {
  return numberIn(new Reader(meanings, decisions).value(treeOf(formula)));
}
