/**
 * The working, as the calculation itself recorded it: each step in words, in symbols, with the numbers filled in.
 * The same steps, put into one another, are the plain-spreadsheet formula.
 */
import type { Answer, ArgumentInput, Entry, Param, Show } from "./define";
import { isScalar } from "./define";
import { readArguments, type Arguments } from "./arguments";
import { compute } from "./evaluate";
import { fullNumber, shortNumber } from "./format";
import { showOf, silentShowFor } from "./show";
import { fromMetric, metricFactor, toMetric, unitConstant, unitOf, type QuantityName, type UnitSystem } from "./units";

export interface Step {
  readonly symbol: string;
  readonly words: string;
  /** The right side, in symbols: "60 * V / q"; empty for a number read from a range. */
  readonly formula: string;
  readonly value: number;
  readonly quantity: QuantityName;
  readonly unit: string;
  /** A conversion that changes nothing in this system: kept for the links, not for the eye. */
  readonly silent: boolean;
}

export interface Working {
  readonly steps: readonly Step[];
  readonly answer: Answer;
  readonly system: UnitSystem | null;
  readonly given: Arguments["given"];
  /** What each symbol of an argument or a unit constant stands for in this call. */
  readonly values: ReadonlyMap<string, number | readonly number[]>;
}

const TEXT_OR_IDENTIFIER = /"[^"]*"|[A-Za-z_][A-Za-z0-9_]*/g;

/** Replaces every symbol of a formula; texts, and names of spreadsheet functions, which an opening bracket follows, stay. */
export function replaceSymbols(formula: string, replacement: (symbol: string) => string): string {
  return formula.replace(TEXT_OR_IDENTIFIER, (symbol, offset: number) => {
    const isText = symbol.startsWith('"');
    const isFunction = formula[offset + symbol.length] === "(";
    const isExponent = /[0-9.]/.test(formula.charAt(offset - 1));
    return isText || isFunction || isExponent ? symbol : replacement(symbol);
  });
}

export function symbolsIn(formula: string): readonly string[] {
  const found: string[] = [];
  replaceSymbols(formula, (symbol) => {
    found.push(symbol);
    return symbol;
  });
  return found;
}

function split(equation: string): { symbol: string; formula: string } {
  const at = equation.indexOf("=");
  if (at < 0) return { symbol: equation.trim(), formula: "" };
  return { symbol: equation.slice(0, at).trim(), formula: equation.slice(at + 1).trim() };
}

function bracketed(formula: string): string {
  return /^[\w.]+$|^\w+\([^()]*\)$/.test(formula) ? formula : `(${formula})`;
}

function toMetricFormula(formula: string, quantity: QuantityName): string {
  if (quantity === "temperature") return `(${formula} - 32) / 1.8`;
  return `${bracketed(formula)} * ${fullNumber(metricFactor(quantity))}`;
}

function fromMetricFormula(formula: string, quantity: QuantityName): string {
  if (quantity === "temperature") return `${bracketed(formula)} * 1.8 + 32`;
  return `${bracketed(formula)} / ${fullNumber(metricFactor(quantity))}`;
}

class Recorder {
  readonly steps: Step[] = [];

  constructor(private readonly system: UnitSystem | null) {}

  show(): Show {
    return showOf(
      {
        step: (equation, value, quantity, words) => {
          const { symbol, formula } = split(equation);
          return this.add({
            symbol,
            formula,
            value,
            quantity,
            words,
            unit: unitOf(quantity, this.system),
            silent: false,
          });
        },
        toMetric: this.converter(toMetric, toMetricFormula, "metric"),
        fromMetric: this.converter(fromMetric, fromMetricFormula, "asked"),
      },
      silentShowFor(this.system),
    );
  }

  private asked(): UnitSystem {
    return this.system ?? "metric";
  }

  private add(step: Step): number {
    this.steps.push(step);
    return step.value;
  }

  private converter(
    convert: typeof toMetric,
    inWords: typeof toMetricFormula,
    to: "metric" | "asked",
  ): Show["toMetric"] {
    return (equation, value, quantity, words) => {
      const { symbol, formula } = split(equation);
      const unchanged = this.asked() === "metric";
      return this.add({
        symbol,
        formula: unchanged ? formula : inWords(formula, quantity),
        value: convert(quantity, value, this.asked()),
        quantity,
        words,
        unit: unitOf(quantity, to === "metric" ? "metric" : this.system),
        silent: unchanged,
      });
    };
  }
}

function symbolOf(param: Param): string | null {
  return "symbol" in param ? param.symbol : null;
}

function knownValues(entry: Entry, { given, system }: Arguments): Map<string, number | readonly number[]> {
  const values = new Map<string, number | readonly number[]>();
  for (const [name, param] of Object.entries(entry.params)) {
    const symbol = symbolOf(param);
    const value = given[name];
    if (symbol !== null && (typeof value === "number" || Array.isArray(value))) {
      values.set(symbol, value as number | readonly number[]);
    }
  }
  for (const [symbol, constant] of Object.entries(entry.unitConstants ?? {})) {
    values.set(symbol, unitConstant(constant, system ?? "metric"));
  }
  return values;
}

/** Runs the function and records its steps; the answer is the same as without. */
export function work(entry: Entry, args: readonly ArgumentInput[]): Working {
  const read = readArguments(entry, args);
  const recorder = new Recorder(read.system);
  const answer = compute(entry, read, recorder.show());
  return { steps: recorder.steps, answer, system: read.system, given: read.given, values: knownValues(entry, read) };
}

function inFormula(value: number): string {
  return value < 0 ? `(${shortNumber(value)})` : shortNumber(value);
}

const RAN_OUT = "a number here is beyond what a cell can hold";

/** The formula of one step with the numbers of this call in it, four digits each; words where one of them ran out. */
export function numbersOf(step: Step, working: Working): string {
  const results = new Map(working.steps.map(({ symbol, value }) => [symbol, value]));
  let hasRunOut = false;
  const written = replaceSymbols(step.formula, (symbol) => {
    const found = results.get(symbol) ?? working.values.get(symbol);
    if (found === undefined) return symbol;
    const numbers = typeof found === "number" ? [found] : found;
    if (numbers.length !== 1) return `${numbers.length} values`;
    const value = numbers[0] as number;
    hasRunOut ||= !Number.isFinite(value);
    return inFormula(value);
  });
  return hasRunOut ? RAN_OUT : written;
}

/** The last step with all earlier ones put in its place: one spreadsheet formula in the symbols of the arguments. */
export function singleFormula(working: Working): string {
  const formulas = new Map<string, string>();
  let last = "";
  for (const { symbol, formula } of working.steps) {
    last = formula === "" ? symbol : replaceSymbols(formula, (used) => bracketed(formulas.get(used) ?? used));
    formulas.set(symbol, last);
  }
  return last;
}

export type SymbolText = (name: string, param: Param) => string;

/**
 * The plain-spreadsheet equivalent: built-in functions only. `textOf` says what stands for an argument: its name, a cell,
 * a number. Null where one cell cannot hold it, as where a step was read from a range by counting through it.
 */
export function plainFormula(entry: Entry, working: Working, textOf: SymbolText): string | null {
  if (entry.native === null || (entry.native === undefined && !isScalar(entry.result))) return null;
  const bySymbol = new Map<string, string>();
  for (const [name, param] of Object.entries(entry.params)) {
    const symbol = symbolOf(param);
    bySymbol.set(symbol ?? name, textOf(name, param));
  }
  for (const symbol of Object.keys(entry.unitConstants ?? {})) {
    bySymbol.set(symbol, fullNumber(working.values.get(symbol) as number));
  }
  const formula = entry.native ?? singleFormula(working);
  if (symbolsIn(formula).some((symbol) => !bySymbol.has(symbol))) return null;
  return `=${replaceSymbols(formula, (symbol) => bySymbol.get(symbol) ?? symbol)}`;
}
