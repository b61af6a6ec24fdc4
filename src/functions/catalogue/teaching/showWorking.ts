import {
  citationText,
  cite,
  defineFunction,
  FunctionError,
  fullNumber,
  isRange,
  isScalar,
  isTable,
  numbersOf,
  plainFormula,
  work,
  type Answer,
  type ArgumentInput,
  type CellAnswer,
  type Entry,
  type Param,
  type Step,
  type Working,
} from "../../../kernel";
import type { LookUp } from "./lookUp";
import { entryNamed } from "./workedCall";

const HEADER = ["step", "words", "symbols", "numbers", "result", "unit"];
const OTHER_ROWS = "other rows the same way";

function stepRow(step: Step, number: number, working: Working): CellAnswer[] {
  const { symbol, formula, words, value, unit } = step;
  const symbols = formula === "" ? symbol : `${symbol} = ${formula}`;
  return [number, words, symbols, formula === "" ? "" : numbersOf(step, working), value, unit];
}

function words(label: string, text: string): CellAnswer[] {
  return [label, text, "", "", "", ""];
}

/** A function that gives words, or that records nothing, still ends with its answer. */
function answerRow({ result }: Entry, answer: Answer, number: number): CellAnswer[] {
  return [number, result.about, "", "", Array.isArray(answer) ? "" : (answer as CellAnswer), ""];
}

function argumentText(value: unknown, name: string): string {
  if (typeof value === "number") return fullNumber(value);
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "string" ? `"${value}"` : name;
}

/** The plain formula with the numbers of this call; a range stands by the name of its argument. */
function plainWithNumbers(entry: Entry, working: Working): string | null {
  return plainFormula(entry, working, (name: string, param: Param) =>
    isRange(param) ? name : argumentText(working.given[name], name),
  );
}

function stepRows(entry: Entry, working: Working): CellAnswer[][] {
  const shown = working.steps.filter(({ silent }) => !silent);
  const rows = shown.map((step, index) => stepRow(step, index + 1, working));
  const last = shown[shown.length - 1];
  const isLast = isScalar(entry.result) && last !== undefined && Object.is(last.value, working.answer);
  if (isTable(entry.result)) rows.push(words("", OTHER_ROWS));
  else if (!isLast) rows.push(answerRow(entry, working.answer, rows.length + 1));
  return rows;
}

function lastRows(entry: Entry, working: Working | null): CellAnswer[][] {
  const sources = Array.isArray(entry.source) ? entry.source : [entry.source];
  const plain = working === null ? null : plainWithNumbers(entry, working);
  return [
    words("source", sources.map(citationText).join("; ")),
    words("limits", entry.assumptions.join(" ")),
    ...(plain === null ? [] : [words("spreadsheet alone", plain)]),
  ];
}

function table(entry: Entry, input: readonly ArgumentInput[]): CellAnswer[][] {
  try {
    const working = work(entry, input);
    return [[...HEADER], ...stepRows(entry, working), ...lastRows(entry, working)];
  } catch (error) {
    if (!(error instanceof FunctionError)) throw error;
    return [[...HEADER], words("error", error.message)];
  }
}

export const showWorking = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "SHOW_WORKING",
    group: "Teaching and audit",
    summary: "Working of any function, step by step, with the numbers in it",
    formula: "step, words, symbols, numbers, result, unit",
    source: cite("DEFINITION", "the steps are those that the calculation itself recorded"),
    assumptions: [
      "An empty input is an optional argument left out.",
      "Numbers are shown to four digits and are calculated with all; the last result is the function's own, to the last digit.",
      "A wrong input gives the function's own words in the last row. A function that spills shows its first row.",
      "Practice, not exam security: who can type the function can see the working.",
    ],
    params: {
      function_name: { kind: "text", about: "Name of the function, such as RUN_MINUTES, in quotation marks" },
      input: { kind: "inputs", about: "Its arguments in its order, cells or ranges" },
    },
    result: {
      header: true,
      table: [
        { name: "step", quantity: "text" },
        { name: "words", quantity: "text" },
        { name: "symbols", quantity: "text" },
        { name: "numbers", quantity: "text" },
        { name: "result", quantity: "text" },
        { name: "unit", quantity: "text" },
      ],
      about: "One row a step, then the source, the limits and the plain-spreadsheet formula",
    },
    examples: [
      {
        given: { function_name: "RUN_MINUTES", input: [0.275, 0] },
        gives: [
          [...HEADER],
          words("error", "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)"),
        ],
        from: cite("DEFINITION", "a wrong input gives the function's own words"),
      },
      {
        given: { function_name: "WATER_HELD", input: [9, 2] },
        gives: [
          [...HEADER],
          words(
            "error",
            "WATER_HELD: container_capacity is 2; it must be more than 0, up to 1 (fraction); write 0.02 or 2%",
          ),
        ],
        from: cite("DEFINITION", "a wrong input gives the function's own words"),
      },
    ],
    mistakes: [],
    seeAlso: ["DIAGNOSE_ANSWER", "COMMON_MISTAKES", "FUNCTION_SOURCE"],
    native: null,
    compute({ function_name, input }) {
      return table(entryNamed("SHOW_WORKING", function_name, find, names), input);
    },
  });
