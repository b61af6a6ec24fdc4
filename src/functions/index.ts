/**
 * The library: the catalogue as data, and one way to call it. What the hosts, the pane, the browser sheet and
 * dist/library.mjs build on; no host, no page, no clock.
 */
import {
  argumentFaults,
  boundsOf,
  citationText,
  FunctionError,
  inOrder,
  isOptional,
  isRange,
  isRepeating,
  isScalar,
  isTable,
  limitsText,
  numbersOf,
  PassedError,
  plainFormula,
  unitOf,
  usualOf,
  usualVerdict,
  work,
  type Answer,
  type ArgumentInput,
  type ColumnParam,
  type Entry,
  type NumberParam,
  type NumbersParam,
  type Param,
  type UnitSystem,
  type UsualRange,
} from "../kernel";
import packageFile from "../../package.json";
import { entryOf } from "./call";
import { catalogue as entries, find } from "./catalogue";
import { questions } from "./catalogue/questions";

export { call, NAMESPACE } from "./call";
export const VERSION: string = packageFile.version;
export { find, FunctionError, PassedError };

export interface Parameter {
  readonly name: string;
  readonly about: string;
  readonly optional: boolean;
  /** Takes all further arguments. */
  readonly repeating: boolean;
  readonly shape: "cell" | "range";
  /** Unit in either system, "gal or L" where they differ; "" for words and mixed cells. */
  readonly unit: string;
  readonly unitUs: string;
  readonly unitMetric: string;
  readonly limits: string;
  readonly words?: readonly string[];
  readonly default?: number | string | boolean;
  readonly quantity?: string;
  readonly usual?: UsualHelp;
}

/** What the trade usually sees, in either system; outside is a warning, never an error. */
export interface UsualHelp {
  readonly us: readonly [number, number];
  readonly metric: readonly [number, number];
  readonly source: string;
}

/** One text where the limits are the same numbers in both systems, else one for each. */
function limitsInBoth(param: NumberParam | NumbersParam | ColumnParam): string {
  const { quantity } = param;
  const us = boundsOf(param, quantity, "us");
  const metric = boundsOf(param, quantity, "metric");
  if (us.low === metric.low && us.high === metric.high) return limitsText(param, quantity, null);
  return `${limitsText(param, quantity, "us")}; ${limitsText(param, quantity, "metric")}`;
}

function unitsOf(param: Param): { unit: string; unitUs: string; unitMetric: string; limits: string } {
  if (!("quantity" in param)) return { unit: "", unitUs: "", unitMetric: "", limits: "" };
  const { quantity } = param;
  return {
    unit: unitOf(quantity, null),
    unitUs: unitOf(quantity, "us"),
    unitMetric: unitOf(quantity, "metric"),
    limits: limitsInBoth(param),
  };
}

function usualHelp(usual: UsualRange | undefined): { readonly usual?: UsualHelp } {
  if (usual === undefined) return {};
  return { usual: { us: usual.us, metric: usual.metric, source: citationText(usual.source) } };
}

function parameter(entry: Entry, name: string, param: Param): Parameter {
  const start = "default" in param && param.default !== undefined ? { default: param.default } : {};
  const words = param.kind === "word" ? { words: param.words } : {};
  return {
    name,
    about: param.about,
    // Before further inputs none can be left out; it may be blank.
    optional: isOptional(param) && !Object.values(entry.params).some(isRepeating),
    repeating: isRepeating(param),
    shape: isRange(param) ? "range" : "cell",
    ...unitsOf(param),
    ...words,
    ...start,
    ...("quantity" in param ? { quantity: param.quantity } : {}),
    ...usualHelp(usualOf(entry, name)),
  };
}

export interface ResultHelp {
  readonly about: string;
  readonly shape: "cell" | "table";
  /** Unit in either system; "" for words and tables. */
  readonly unit: string;
  readonly unitUs: string;
  readonly unitMetric: string;
  readonly usual?: UsualHelp;
}

export interface FunctionHelp {
  readonly name: string;
  readonly group: string;
  readonly summary: string;
  /** What people ask when they look for it. */
  readonly questions: readonly string[];
  readonly formula: string;
  readonly params: readonly Parameter[];
  readonly result: ResultHelp;
  readonly examples: readonly {
    readonly args: readonly ArgumentInput[];
    readonly gives: Answer;
    readonly source: string;
  }[];
  readonly source: string;
  readonly assumptions: readonly string[];
  readonly mistakes: readonly string[];
  readonly seeAlso: readonly string[];
  readonly caution: string;
  /** The same in built-in functions, arguments by their names; "" where one cell cannot hold it. */
  readonly spreadsheetAlone: Readonly<Partial<Record<UnitSystem | "any", string>>>;
}

function sourcesText({ source }: Entry): string {
  return (Array.isArray(source) ? source : [source]).map(citationText).join("; ");
}

/** The plain formula of the first example of each system. */
function plainFormulas(entry: Entry): FunctionHelp["spreadsheetAlone"] {
  const found: Partial<Record<UnitSystem | "any", string>> = {};
  for (const { given } of entry.examples) {
    const working = work(entry, inOrder(entry, given));
    const key = working.system ?? "any";
    const formula = plainFormula(entry, working, (name) => name);
    if (formula !== null && found[key] === undefined) found[key] = formula;
  }
  return found;
}

function resultHelp(entry: Entry): ResultHelp {
  const { result } = entry;
  const unit = (system: UnitSystem | null): string => (isScalar(result) ? unitOf(result.quantity, system) : "");
  return {
    about: result.about,
    shape: isTable(result) ? "table" : "cell",
    unit: unit(null),
    unitUs: unit("us"),
    unitMetric: unit("metric"),
    ...usualHelp(usualOf(entry, "")),
  };
}

function help(entry: Entry): FunctionHelp {
  return {
    name: entry.name,
    group: entry.group,
    summary: entry.summary,
    questions: questions[entry.name] ?? [],
    formula: entry.formula,
    params: Object.entries(entry.params).map(([name, param]) => parameter(entry, name, param)),
    result: resultHelp(entry),
    examples: entry.examples.map(({ given, gives, from }) => ({
      args: inOrder(entry, given),
      gives,
      source: citationText(from),
    })),
    source: sourcesText(entry),
    assumptions: entry.assumptions,
    mistakes: entry.mistakes.map(({ slip }) => slip),
    seeAlso: entry.seeAlso,
    caution: entry.caution ?? "",
    get spreadsheetAlone() {
      return plainFormulas(entry);
    },
  };
}

/** Every function with all that is known of it, in the order of the job. */
export const catalogue: readonly FunctionHelp[] = entries.map(help);

/**
 * "ok", or in words which way a number lies outside of what the trade usually sees; "" where no usual range is known.
 * The argument "" is the answer.
 */
export function verdict(name: string, argument: string, value: number, system: UnitSystem): string {
  const entry = find(name);
  const usual = entry === undefined ? undefined : usualOf(entry, argument);
  return usual === undefined ? "" : usualVerdict(usual, value, system);
}

/** What is wrong with each argument by itself: for a form with a field for each. */
export function faults(name: string, args: readonly ArgumentInput[]): readonly FunctionError[] {
  const entry = find(name);
  return entry === undefined ? [] : argumentFaults(entry, args);
}

export interface WorkedStep {
  readonly words: string;
  readonly symbols: string;
  readonly numbers: string;
  readonly value: number;
  readonly unit: string;
}

/** The steps by which the answer came about, as the calculation recorded them. */
export function working(name: string, args: readonly ArgumentInput[]): readonly WorkedStep[] {
  const worked = work(entryOf(name), args);
  return worked.steps
    .filter(({ silent }) => !silent)
    .map((step) => ({
      words: step.words,
      symbols: step.formula === "" ? step.symbol : `${step.symbol} = ${step.formula}`,
      numbers: step.formula === "" ? "" : numbersOf(step, worked),
      value: step.value,
      unit: step.unit,
    }));
}
