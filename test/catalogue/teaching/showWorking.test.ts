import fc from "fast-check";
import { catalogue } from "../../../src/functions/catalogue";
import { evaluate, inOrder, isScalar, isTable, type ArgumentInput, type Entry } from "../../../src/kernel";
import { attempt, entryOf, refusal } from "../../rig/calls";
import { byAnotherRoute } from "../../rig/evidence";
import { validInputs } from "../../rig/validInputs";

type Row = readonly (string | number | boolean)[];

function shown(name: string, input: readonly ArgumentInput[]): readonly Row[] {
  return evaluate(entryOf("SHOW_WORKING"), [name, ...input]) as readonly Row[];
}

const LAST_ROWS = ["source", "limits", "spreadsheet alone"];
const others: readonly Entry[] = catalogue.filter(({ group }) => group !== "Teaching and audit");

function stepsOf(rows: readonly Row[]): readonly Row[] {
  return rows.slice(1).filter(([label]) => typeof label === "number");
}

describe("the working of every function", () => {
  test.each(others.map((entry) => [entry.name, entry] as const))(
    "%s: a header, steps, source and limits; the last result is the function's own to the last bit",
    (name, entry) => {
      for (const { given } of entry.examples) {
        const input = inOrder(entry, given);
        const rows = shown(name, input);
        expect(rows[0]).toEqual(["step", "words", "symbols", "numbers", "result", "unit"]);
        expect(new Set(rows.map((row) => row.length))).toEqual(new Set([6]));
        const steps = stepsOf(rows);
        expect(steps.map(([number]) => number)).toEqual(steps.map((_step, index) => index + 1));
        const labels = rows.slice(1).map(([label]) => label);
        expect(labels).toEqual(expect.arrayContaining(["source", "limits"]));
        const last = steps[steps.length - 1];
        if (!isTable(entry.result)) expect(last?.[4]).toBe(evaluate(entry, input));
        if (isScalar(entry.result))
          expect(labels.filter((label) => LAST_ROWS.includes(String(label))).length).toBeGreaterThanOrEqual(2);
      }
    },
  );

  test.each(others.filter(({ result }) => isScalar(result)).map((entry) => [entry.name, entry] as const))(
    "%s: the same over random valid inputs",
    (name, entry) => {
      for (const system of entry.params["units"] === undefined ? [null] : (["us", "metric"] as const)) {
        fc.assert(
          fc.property(validInputs(entry, system), (input) => {
            const answer = attempt(entry, input);
            if (typeof answer !== "number") return true;
            const steps = stepsOf(shown(name, input));
            return Object.is(steps[steps.length - 1]?.[4], answer);
          }),
          { seed: 8, numRuns: 40 },
        );
      }
    },
  );

  test("a long range is summarised, not listed", () => {
    const readings = Array.from({ length: 500 }, (_row, index) => [50 + (index % 7)]);
    const rows = shown("DU_LOW_QUARTER", [readings]);
    for (const row of rows) for (const cell of row) expect(String(cell).length).toBeLessThan(700);
    expect(rows.flat().some((cell) => String(cell).includes("500 values"))).toBe(true);
  });

  test("a table shows its first row and says that the others go the same way", () => {
    expect(shown("PULSE_SCHEDULE", [45, 3, 60, 0.25]).map((row) => row[1])).toContain("other rows the same way");
  });
});

describe(byAnotherRoute("SHOW_WORKING"), () => {
  test("GROSS_WATER(0.6, 0.15, 0.88) as a textbook would write it", () => {
    expect(shown("GROSS_WATER", [0.6, 0.15, 0.88]).slice(1, 3)).toEqual([
      [1, "The one that asks for more water", "d = MIN(1 - LF, DU)", "MIN(1 - 0.15, 0.88)", 0.85, expect.any(String)],
      [2, "Gross water", "G = N / d", "0.6 / 0.85", 0.6 / 0.85, expect.any(String)],
    ]);
  });

  test("the plain-spreadsheet formula carries the numbers at full precision", () => {
    const rows = shown("RUN_MINUTES", [0.123456789012, 6, 2]);
    expect(rows.find(([label]) => label === "spreadsheet alone")?.[1]).toBe("=60 * 0.123456789012 / (6 * 2)");
  });

  test("the constant that the units bring is shown: 0.6234 gal on 1 ft2 per in", () => {
    const numbers = shown("PLANT_WATER_DEMAND", [0.25, 1.1, 3.5, "us"]).map((row) => row[3]);
    expect(numbers.join(" ")).toContain("0.6234");
  });

  test("a wrong input is the last row, in the function's own words", () => {
    expect(shown("RUN_MINUTES", [0.275, null])).toEqual([
      ["step", "words", "symbols", "numbers", "result", "unit"],
      ["error", "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)", "", "", "", ""],
    ]);
  });

  test("a blank input is an optional argument left out", () => {
    expect(shown("RUN_MINUTES", [0.275, 6, null])).toEqual(shown("RUN_MINUTES", [0.275, 6]));
  });

  test("an unknown function is answered with the nearest names", () => {
    expect(refusal(entryOf("SHOW_WORKING"), ["GROS_WATER", 1]).message).toMatch(
      /there is no function GROS_WATER\b.*did you mean GROSS_WATER/,
    );
  });
});
