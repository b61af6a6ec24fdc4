/**
 * What SHOW_WORKING writes, typed into spreadsheets as it stands: the formula for a sheet alone gives the function's
 * answer, and the numbers of every step give its result as far as the digits shown allow.
 */
import fc from "fast-check";
import { catalogue } from "../../../src/functions/catalogue";
import { evaluate, inOrder, isRange, isScalar, type ArgumentInput, type Entry } from "../../../src/kernel";
import { attempt, entryOf } from "../../rig/calls";
import { isClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { ENGINES, type PlainCell } from "../../rig/plainSheet";
import { SEED, systemsOf, validInputs } from "../../rig/validInputs";

type Row = readonly (string | number | boolean)[];

const PLAIN = "spreadsheet alone";
const PLAIN_CLOSE = 1e-9;
/** Numbers of a step are shown to four digits: half a unit of the fourth is 0.05 %, of a few numbers together 0.2 %. */
const SHOWN_CLOSE = 0.002;
const CALLS = 6;
const TRIES = 60;

const others: readonly Entry[] = catalogue.filter(({ group }) => group !== "Teaching and audit");

const shown = (name: string, input: readonly ArgumentInput[]): readonly Row[] =>
  evaluate(entryOf("SHOW_WORKING"), [name, ...input]) as readonly Row[];

/** HyperFormula reads 2e-5 and not 2E-5. */
const spelt = (formula: string): string => formula.replace(/(?<=[\d.])E(?=[-+]?\d)/g, "e");

interface Check {
  readonly title: string;
  readonly formula: string;
  readonly result: number;
  readonly close: number;
}

/** Functions of single numbers, whose formula holds every number of the call; examples and random calls. */
function plainChecks(): Check[] {
  const checks: Check[] = [];
  for (const entry of others.filter(({ result, params }) => isScalar(result) && !Object.values(params).some(isRange))) {
    const calls = entry.examples.map(({ given }) => inOrder(entry, given));
    for (const system of systemsOf(entry)) {
      const tried = fc.sample(validInputs(entry, system), { seed: SEED, numRuns: TRIES });
      calls.push(...tried.filter((input) => typeof attempt(entry, input) === "number").slice(0, CALLS));
    }
    for (const input of calls) {
      const plain = shown(entry.name, input).find(([label]) => label === PLAIN)?.[1];
      if (typeof plain !== "string") continue;
      const result = evaluate(entry, input) as number;
      checks.push({ title: `${entry.name}: ${plain}`, formula: plain, result, close: PLAIN_CLOSE });
    }
  }
  return checks;
}

/** The numbers of every step of every example; a long range is told by its count and cannot be typed. */
function stepChecks(): Check[] {
  return others.flatMap((entry) =>
    entry.examples.flatMap(({ given }) =>
      shown(entry.name, inOrder(entry, given)).flatMap(([step, , , numbers, result]) =>
        typeof step !== "number" || typeof numbers !== "string" || numbers === "" || /\bvalues\b/.test(numbers)
          ? []
          : [
              {
                title: `${entry.name}: ${numbers}`,
                formula: `=${numbers}`,
                result: result as number,
                close: SHOWN_CLOSE,
              },
            ],
      ),
    ),
  );
}

const plain = plainChecks();
const steps = stepChecks();

describe.each(ENGINES)("the working typed into %s", (engine, worked) => {
  const isHyperFormula = engine.startsWith("HyperFormula");

  const wrongOf = (checks: readonly Check[]): string[] => {
    const rows = checks.map(({ formula }): PlainCell[] => [isHyperFormula ? spelt(formula) : formula]);
    const values = worked(rows);
    return checks.flatMap(({ title, result, close }, index) => {
      const value = values[index]?.[0];
      return isClose(value, result, close) ? [] : [`${title} is ${value}, not ${result}`];
    });
  };

  describe(against("SHOW_WORKING", engine), () => {
    test("the formula for a sheet alone gives the answer, for all functions of single numbers", () => {
      expect(new Set(plain.map(({ title }) => title.split(":")[0])).size).toBeGreaterThan(50);
      expect(wrongOf(plain)).toEqual([]);
    });

    test("the numbers of each step give its result, as far as four digits go", () => {
      expect(steps.length).toBeGreaterThan(600);
      expect(wrongOf(steps)).toEqual([]);
    });
  });
});
