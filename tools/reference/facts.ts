/** All that is known of a function, as texts in the order in which its page tells them. */
import { call, NAMESPACE, type FunctionHelp, type Parameter } from "../../src/functions";
import { citationText, isTable, unitOf, type Answer, type Citation, type Entry } from "../../src/kernel";
import { takesUnits, unitFor, type UnitSystem } from "../../src/taskpane/library";
import { argumentFacts, type ArgumentFacts } from "./argumentFacts";
import { exampleFormula, systemOf } from "./exampleFormula";
import { mistakeFacts, type MistakeFacts } from "./mistakeFacts";
import { numberFact, rowsFact } from "./numberFacts";
import { usualFacts, type UsualFacts } from "./usualFacts";
import { workingFacts, type StepFacts } from "./workingFacts";

export interface ColumnFacts {
  readonly name: string;
  readonly us: string;
  readonly metric: string;
}

export interface ExampleFacts {
  readonly formula: string;
  /** One answer, with its unit; "" where it is a table. */
  readonly answer: string;
  /** A table as it is read; the first row names the columns where `header` says so. */
  readonly rows: readonly (readonly string[])[];
  readonly header: boolean;
  /** What the cell shows, where the source prints a rounded number. */
  readonly exact: string;
  readonly source: string;
}

export interface PageFacts {
  readonly name: string;
  readonly group: string;
  readonly summary: string;
  readonly questions: readonly string[];
  readonly caution: string;
  /** As it is typed: arguments in square brackets may be left out. */
  readonly call: string;
  readonly formula: string;
  readonly args: readonly ArgumentFacts[];
  readonly takesUnits: boolean;
  readonly result: { readonly about: string; readonly us: string; readonly metric: string };
  readonly columns: readonly ColumnFacts[];
  readonly examples: readonly ExampleFacts[];
  readonly working: readonly StepFacts[];
  readonly assumptions: readonly string[];
  readonly mistakes: readonly MistakeFacts[];
  readonly usual: readonly UsualFacts[];
  readonly plain: readonly { readonly system: UnitSystem | "any"; readonly formula: string }[];
  readonly sources: readonly string[];
  readonly seeAlso: readonly string[];
}

function callLine({ name, params }: FunctionHelp): string {
  const shown = ({ name: argument, optional, repeating }: Parameter): string => {
    if (repeating) return `[${argument}, ...]`;
    return optional ? `[${argument}]` : argument;
  };
  return `=${NAMESPACE}.${name}(${params.map(shown).join(", ")})`;
}

function columnFacts({ result }: Entry): readonly ColumnFacts[] {
  if (!isTable(result)) return [];
  return result.table.map(({ name, quantity }) => {
    if (quantity === "text") return { name, us: "", metric: "" };
    return { name, us: unitOf(quantity, "us"), metric: unitOf(quantity, "metric") };
  });
}

/** Where the example's print is rounded, what the cell shows. */
function exactFact(name: string, example: FunctionHelp["examples"][number], unit: string): string {
  const exact = call(name, example.args);
  if (typeof exact !== "number" || typeof example.gives !== "number") return "";
  const shown = numberFact(exact, unit);
  return shown === numberFact(example.gives, unit) ? "" : shown;
}

function exampleFacts(entry: Entry, help: FunctionHelp): readonly ExampleFacts[] {
  return help.examples.map((example) => {
    const system = systemOf(help, example.args);
    const unit = unitFor(help.result, system);
    const isRows = Array.isArray(example.gives);
    return {
      formula: exampleFormula(help, example),
      answer: isRows ? "" : numberFact(example.gives as Exclude<Answer, readonly unknown[]>, unit),
      rows: isRows ? rowsFact(entry, example.gives) : [],
      header: isTable(entry.result) && entry.result.header,
      exact: exactFact(help.name, example, unit),
      source: example.source,
    };
  });
}

function plainFacts({ spreadsheetAlone: formulas }: FunctionHelp): PageFacts["plain"] {
  return (["any", "us", "metric"] as const).flatMap((system) => {
    const formula = formulas[system];
    return formula === undefined ? [] : [{ system, formula }];
  });
}

export function factsOf(entry: Entry, help: FunctionHelp): PageFacts {
  const { name, group, summary, questions, caution, formula, assumptions, seeAlso } = help;
  const { about, unitUs, unitMetric } = help.result;
  return {
    name,
    group,
    summary,
    questions,
    caution,
    call: callLine(help),
    formula,
    args: help.params.map((parameter) => argumentFacts(entry, parameter)),
    takesUnits: takesUnits(help),
    result: { about, us: unitUs, metric: unitMetric },
    columns: columnFacts(entry),
    examples: exampleFacts(entry, help),
    working: workingFacts(help),
    assumptions,
    mistakes: mistakeFacts(entry, help),
    usual: usualFacts(entry, help),
    plain: plainFacts(help),
    sources: [entry.source].flat().map((source) => citationText(source as Citation)),
    seeAlso,
  };
}
