import fc from "fast-check";
import { evaluate, fromMetric, FunctionError, isBlank, quantities, toMetric, isRepeating } from "../../src/kernel";
import type { Answer, ArgumentInput, CellAnswer, CellInput, QuantityName, Table, UnitSystem } from "../../src/kernel";
import { attempt, entryOf } from "../rig/calls";
import { callText, catalogueExamples } from "../rig/catalogueExamples";
import { expectClose } from "../rig/closeness";
import { answerInOtherSystem, inOtherSystem, otherSystem } from "../rig/otherSystem";
import { SEED, validInputs } from "../rig/validInputs";

const SAME_CASE = 1e-9;

/** Examples whose left-out argument has a round default in each system, so that the two calls are not one case. */
const ROUND_DEFAULTS: ReadonlySet<string> = new Set(['FLUSH_FLOW(12, "us") = 350', 'FLUSH_FLOW(16, "metric") = 3.619']);

/** Functions that are asked about a system and not worked in it: the same number is another one there. */
const ABOUT_A_SYSTEM: ReadonlySet<string> = new Set(["CHECK_RANGE", "UNIT_LABEL"]);

const withUnits = catalogueExamples.flatMap((example) => {
  const index = Object.keys(example.entry.params).indexOf("units");
  if (index < 0 || ROUND_DEFAULTS.has(example.title) || ABOUT_A_SYSTEM.has(example.entry.name)) return [];
  const system = example.args[index] as UnitSystem;
  const converted = inOtherSystem(example.entry, example.args, system);
  return [{ ...example, system, converted, other: callText(example.entry, converted) }];
});

function expectSameCell(cell: CellAnswer | undefined, expected: CellAnswer): void {
  if (typeof expected === "number") expectClose(cell, expected, SAME_CASE, SAME_CASE);
  else expect(cell).toEqual(expected);
}

function expectSame(answer: Answer, expected: Answer): void {
  if (!Array.isArray(expected)) return expectSameCell(answer as CellAnswer, expected as CellAnswer);
  const rows = answer as Table;
  const expectedRows = expected as Table;
  expect(rows.map((row) => row.length)).toEqual(expectedRows.map((row) => row.length));
  expectedRows.forEach((row, index) => row.forEach((cell, column) => expectSameCell(rows[index]?.[column], cell)));
}

describe("the same case in the other units gives the same physical answer", () => {
  test.each(withUnits)("$title, as $other", ({ entry, args, system, converted }) => {
    const there = evaluate(entry, converted);
    expectSame(answerInOtherSystem(entry, there, otherSystem(system)), evaluate(entry, args));
  });

  test("every function that takes units is among them", () => {
    const functions = new Set(
      catalogueExamples.filter(({ entry }) => "units" in entry.params).map(({ entry }) => entry.name),
    );
    for (const name of ABOUT_A_SYSTEM) functions.delete(name);
    expect(new Set(withUnits.map(({ entry }) => entry.name))).toEqual(functions);
  });
});

describe("so do random calls within the limits, for every function that takes units", () => {
  const RUNS = 150;
  const FEWEST = 40;
  const names = [...new Set(withUnits.map(({ entry }) => entry.name))];

  /** A left-out argument with a round default of its own in each system makes two cases of one. */
  const isTwoCases = (name: string, args: readonly ArgumentInput[]): boolean =>
    name === "FLUSH_FLOW" && isBlank(args[2] as CellInput);

  test.each(names)("%s", (name) => {
    const entry = entryOf(name);
    let compared = 0;
    for (const system of ["us", "metric"] as const) {
      for (const args of fc.sample(validInputs(entry, system), { seed: SEED, numRuns: RUNS })) {
        const here = attempt(entry, args);
        if (here instanceof FunctionError || isTwoCases(name, args)) continue;
        const there = attempt(entry, inOtherSystem(entry, args, system));
        // A number on its limit may lie beyond it by the last digit of the conversion.
        if (there instanceof FunctionError) continue;
        const back = answerInOtherSystem(entry, there, otherSystem(system));
        const cells = [here].flat(2);
        [back].flat(2).forEach((cell, index) => {
          // A row with a number on its limit may be left out in one of them, and the words of a reason name its numbers.
          const expected = cells[index];
          if (typeof cell === "number" && typeof expected === "number") expectSameCell(cell, expected);
        });
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(FEWEST);
  });
});

describe("a function that takes no units is right in gallons and in litres alike", () => {
  const withoutUnits = catalogueExamples.flatMap((example) => {
    if ("units" in example.entry.params || Object.values(example.entry.params).some(isRepeating)) return [];
    const converted = inOtherSystem(example.entry, example.args, "us");
    if (callText(example.entry, converted) === callText(example.entry, example.args)) return [];
    return [{ ...example, converted, other: callText(example.entry, converted) }];
  });

  test.each(withoutUnits)("$title, as $other", ({ entry, args, converted }) => {
    expectSame(answerInOtherSystem(entry, evaluate(entry, converted), "metric"), evaluate(entry, args));
  });
});

describe("a quantity comes back from the other system as it went", () => {
  test.each(Object.keys(quantities) as QuantityName[])("%s", (quantity) => {
    for (const value of [0.001, 1, 37.5, 1e6]) {
      expectClose(toMetric(quantity, fromMetric(quantity, value, "us"), "us"), value, 1e-12, 1e-12);
    }
  });
});
