import fc from "fast-check";
import { catalogue } from "../../src/functions/catalogue";
import {
  FunctionError,
  fullNumber,
  isScalar,
  isTable,
  plainFormula,
  readArguments,
  replaceSymbols,
  work,
} from "../../src/kernel";
import type { ArgumentInput, CellAnswer, CellInput, Entry, Step, Working } from "../../src/kernel";
import { attempt } from "../rig/calls";
import { callText, catalogueExamples, scalarExamples, type CatalogueExample } from "../rig/catalogueExamples";
import { expectClose, isClose } from "../rig/closeness";
import { FormulaSheet } from "../rig/spreadsheetEngines";
import { SEED, systemsOf, validInputs } from "../rig/validInputs";

/** The longest formula that a cell of the usual spreadsheets takes. */
const LONGEST_FORMULA = 8192;

const RANDOM_CALLS = 20;
/** Rules between arguments refuse many a random call: so many are tried. */
const RANDOM_TRIES = 300;

const STEP_CLOSENESS = 1e-12;
/** LN(1 + r) of a small rate loses digits that the code keeps; no other step differs by as much. */
const RANDOM_STEP_CLOSENESS = 1e-9;
const PLAIN_CLOSENESS = 1e-9;

/** Functions whose examples have no plain-spreadsheet equivalent although they answer with one cell, and why. */
const WITHOUT_PLAIN_FORMULA: Readonly<Record<string, string>> = {
  "PAYBACK_YEARS(10000, {3000; 4000; 5000}) = 2.6": "the year of the crossing is found by counting through the savings",
};

/** Functions that tell about another function or mark a number: they have no working of their own. */
function calculatesNothing({ group, result }: Entry): boolean {
  return group === "Teaching and audit" && !isScalar(result);
}

type EngineName = "HyperFormula" | "IronCalc";

/** Functions whose plain formula an engine cannot work, and which built-in it lacks. At least one engine checks each. */
const BEYOND_ENGINE: Readonly<Record<string, { readonly engine: EngineName; readonly lacks: string }>> = {};

function isList(value: number | readonly number[]): value is readonly number[] {
  return typeof value !== "number";
}

/** Number and address of what a symbol stands for, ranges in cells of the sheet. */
function knownTexts(sheet: FormulaSheet, { values }: Working): Map<string, string> {
  const texts = new Map<string, string>();
  for (const [symbol, value] of values) {
    texts.set(symbol, isList(value) ? sheet.put(value.map((number) => [number])) : literal(value));
  }
  return texts;
}

/** A number as it stands in a formula, every digit of it. */
function literal(value: number): string {
  return value < 0 ? `(${fullNumber(value)})` : fullNumber(value);
}

interface StepCheck {
  readonly title: string;
  readonly step: Step;
  /** The same step of the same call, worked when the test runs. */
  readonly again: () => Step | undefined;
  readonly answerAt: number;
}

function stepChecks(sheet: FormulaSheet, { title, entry, args }: CatalogueExample): StepCheck[] {
  const working = work(entry, args);
  const texts = knownTexts(sheet, working);
  const checks: StepCheck[] = [];
  for (const [index, step] of working.steps.entries()) {
    if (step.formula !== "") {
      const formula = `=${replaceSymbols(step.formula, (symbol) => texts.get(symbol) ?? symbol)}`;
      checks.push({
        title: `${title}: ${step.symbol} = ${step.formula}`,
        step,
        again: () => work(entry, args).steps[index],
        answerAt: sheet.formula(formula),
      });
    }
    texts.set(step.symbol, literal(step.value));
  }
  return checks;
}

/** Random calls that have an answer, up to 20 for each function and system. */
function randomCalls(entry: Entry): CatalogueExample[] {
  return systemsOf(entry).flatMap((system) =>
    fc
      .sample(validInputs(entry, system), { seed: SEED, numRuns: RANDOM_TRIES })
      .filter((args) => !(attempt(entry, args) instanceof FunctionError))
      .slice(0, RANDOM_CALLS)
      .map((args) => ({ title: callText(entry, args), entry, args, gives: NaN, within: undefined })),
  );
}

const randomExamples = catalogue
  .filter((entry) => !calculatesNothing(entry))
  .map((entry) => ({ name: entry.name, calls: randomCalls(entry) }));

describe("every recorded step is what a spreadsheet makes of its formula", () => {
  const sheet = new FormulaSheet();
  const checks = catalogueExamples.flatMap((example) => stepChecks(sheet, example));
  const values = sheet.inHyperFormula();

  test.each(checks)("$title", ({ step, again, answerAt }) => {
    expectClose(values[answerAt], step.value, STEP_CLOSENESS, STEP_CLOSENESS);
    expect(again()).toEqual(step);
  });

  test("every example records a step with a formula", () => {
    const titles = new Set(checks.map(({ title }) => title.split(": ")[0]));
    const wanted = catalogueExamples.filter(({ entry }) => !calculatesNothing(entry));
    expect(wanted.filter(({ title }) => !titles.has(title.split(": ")[0] ?? ""))).toEqual([]);
  });
});

describe("so is every step of random calls within the limits", () => {
  const sheet = new FormulaSheet();
  const checked = randomExamples.map(({ name, calls }) => ({
    name,
    checks: calls.flatMap((call) => stepChecks(sheet, call)),
  }));
  const values = sheet.inHyperFormula();

  test.each(checked)("$name", ({ checks }) => {
    expect(checks.length).toBeGreaterThan(0);
    for (const { title, step, again, answerAt } of checks) {
      const value = values[answerAt];
      if (!isClose(value, step.value, RANDOM_STEP_CLOSENESS))
        throw new Error(`${title}: ${value}, recorded ${step.value}`);
      expect(again()).toEqual(step);
    }
  });
});

/**
 * Address of each argument's cells. A left-out one is filled with what stands for it, and so are blanks among readings:
 * the plain formula does not know the word in `zeros`.
 */
function argumentCells(sheet: FormulaSheet, entry: Entry, args: readonly ArgumentInput[]): Map<string, string> {
  const { given } = readArguments(entry, args);
  const cells = new Map<string, string>();
  for (const [name, value] of Object.entries<unknown>(given)) {
    const isOneColumn = Array.isArray(value) && !value.some(Array.isArray);
    cells.set(name, sheet.put(isOneColumn ? value.map((cell) => [cell as CellInput]) : (value as ArgumentInput)));
  }
  return cells;
}

interface PlainCheck {
  readonly title: string;
  readonly name: string;
  readonly answer: CellAnswer;
  readonly formula: string;
  /** Formula and answer of the same call, worked when the test runs. */
  readonly again: () => { readonly formula: string | null; readonly answer: unknown };
  readonly answerAt: number;
}

function plainCheck(sheet: FormulaSheet, { title, entry, args }: CatalogueExample): PlainCheck[] {
  const working = work(entry, args);
  if (Array.isArray(working.answer)) return [];
  const cells = argumentCells(sheet, entry, args);
  const formulaOf = (worked: Working): string | null => plainFormula(entry, worked, (name) => cells.get(name) ?? name);
  const formula = formulaOf(working);
  if (formula === null) return [];
  const answer = working.answer as CellAnswer;
  const again = (): ReturnType<PlainCheck["again"]> => {
    const worked = work(entry, args);
    return { formula: formulaOf(worked), answer: worked.answer };
  };
  return [{ title, name: entry.name, answer, formula, again, answerAt: sheet.formula(formula) }];
}

function isSame(value: number | string | undefined, answer: CellAnswer): boolean {
  return typeof answer === "number" ? isClose(value, answer, PLAIN_CLOSENESS) : value === answer;
}

function expectSameAgain({ formula, answer, again }: PlainCheck): void {
  expect(again()).toEqual({ formula, answer });
}

function expectSame(
  engine: string,
  { title, formula }: PlainCheck,
  value: number | string | undefined,
  answer: CellAnswer,
): void {
  if (!isSame(value, answer))
    throw new Error(`${engine}: ${title}: ${value}, where the answer is ${String(answer)}, by ${formula}`);
}

describe("the plain-spreadsheet equivalent gives the same in two engines", () => {
  const sheet = new FormulaSheet();
  const checks = catalogueExamples.flatMap((example) => plainCheck(sheet, example));
  const randomPlain = randomExamples.flatMap(({ name, calls }) => {
    const plain = calls.flatMap((call) => plainCheck(sheet, call));
    return plain.length === 0 ? [] : [{ name, plain }];
  });
  const values: Record<EngineName, (number | string)[]> = {
    HyperFormula: sheet.inHyperFormula(),
    IronCalc: sheet.inIronCalc(),
  };
  const enginesFor = ({ name }: PlainCheck): EngineName[] =>
    (["HyperFormula", "IronCalc"] as const).filter((engine) => BEYOND_ENGINE[name]?.engine !== engine);

  test.each(checks)("$title", (check) => {
    for (const engine of enginesFor(check)) expectSame(engine, check, values[engine][check.answerAt], check.answer);
    expectSameAgain(check);
  });

  test.each(randomPlain)("of random calls within the limits: $name", ({ plain }) => {
    for (const check of plain) {
      for (const engine of enginesFor(check)) expectSame(engine, check, values[engine][check.answerAt], check.answer);
      expectSameAgain(check);
    }
  });

  test("is there for every example with one answer, but for those that say why not", () => {
    const checked = new Set(checks.map(({ title }) => title));
    const without = scalarExamples.filter(({ title, entry }) => !checked.has(title) && entry.native !== null);
    expect(without.map(({ title }) => title)).toEqual(Object.keys(WITHOUT_PLAIN_FORMULA));
  });

  test("is never made from the steps of a table", () => {
    const tables = catalogueExamples.filter(({ entry }) => isTable(entry.result) && entry.native === undefined);
    for (const { entry, args } of tables) {
      expect(plainFormula(entry, work(entry, args), (name) => name)).toBeNull();
    }
  });

  test("fits into a cell", () => {
    for (const { formula } of checks) expect(formula.length).toBeLessThanOrEqual(LONGEST_FORMULA);
  });

  test("holds built-in functions and cells alone", () => {
    for (const { formula } of checks) expect(formula).not.toMatch(/[A-Z0-9]+_[A-Z0-9_]+\(|CANYARD/);
  });
});
