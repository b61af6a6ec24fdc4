/** The audit's table: its rows are the single functions, and it counts what the word in zeros decides about. */
import { MAX, MEDIAN, MIN, STDEV } from "@formulajs/formulajs";
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellInput, Table } from "../../../src/kernel";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Rows = readonly (readonly CellInput[])[];

function audit(readings: Rows, zeros?: string): Map<string, unknown> {
  const entry = entryOf("UNIFORMITY_AUDIT");
  const table = evaluate(entry, inOrder(entry, { readings, zeros })) as Table;
  return new Map(table.map(([label, value]) => [label as string, value]));
}

const LABELS = ["readings used", "blanks or zeros met", "mean", "low-quarter mean", "min", "max", "Cv", "DU", "CU"];

const someCells = fc.array(
  fc.oneof(
    { weight: 6, arbitrary: fc.double({ min: 0.1, max: 300, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom<CellInput>(null, "", 0) },
  ),
  { minLength: 8, maxLength: 40 },
);

describe(byAnotherRoute("UNIFORMITY_AUDIT"), () => {
  test("sixteen catches: mean 300 / 16, low quarter 57 / 4, Cv sqrt(235 / 15) / 18.75, DU 0.76, CU 1 - 48 / 300", () => {
    const rows = audit([
      [12, 14, 15, 16, 16, 17, 18, 18],
      [19, 20, 20, 20, 21, 22, 24, 28],
    ]);
    expect([...rows.keys()]).toEqual(LABELS);
    expect([...rows.values()].slice(0, 6)).toEqual([16, 0, 18.75, 14.25, 12, 28]);
    expectClose(rows.get("Cv"), Math.sqrt(235 / 15) / 18.75, 1e-14);
    expectClose(rows.get("DU"), 0.76, 1e-14);
    expectClose(rows.get("CU"), 0.84, 1e-14);
  });
});

describe(against("UNIFORMITY_AUDIT", "@formulajs/formulajs 4.6.1"), () => {
  test("MIN, MAX and STDEV.S of random readings, and a mean on the right side of them", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0.1, max: 300, noNaN: true }), { minLength: 4, maxLength: 40 }),
        (cells) => {
          const rows = audit([cells]);
          expect(rows.get("min")).toBe(MIN(cells));
          expect(rows.get("max")).toBe(MAX(cells));
          const deviation = (rows.get("Cv") as number) * (rows.get("mean") as number);
          expectClose(deviation, STDEV.S(cells) as number, 1e-9, 1e-9);
          expect(rows.get("low-quarter mean")).toBeLessThanOrEqual(MEDIAN(cells) as number);
        },
      ),
      { seed: SEED },
    );
  });
});

describe("the rows of an audit", () => {
  test.each(["count", "skip"])("are the single functions to the last bit, zeros %s", (zeros) => {
    fc.assert(
      fc.property(someCells, (cells) => {
        const readings = [cells];
        const used = cells.filter((cell) => zeros === "count" || (typeof cell === "number" && cell !== 0)).length;
        fc.pre(used >= 4 && cells.some((cell) => typeof cell === "number" && cell > 0));
        const rows = audit(readings, zeros);
        const single = { readings, zeros };
        expect(rows.get("DU")).toBe(answerOf("DU_LOW_QUARTER", single));
        expect(rows.get("CU")).toBe(answerOf("CU_CHRISTIANSEN", single));
        expect(1 - (rows.get("Cv") as number)).toBe(answerOf("STATISTICAL_UNIFORMITY", single));
        const step = stepsOf("DU_LOW_QUARTER", single);
        expect([rows.get("mean"), rows.get("low-quarter mean")]).toEqual([step("m"), step("low")]);
        expect(rows.get("readings used")).toBe(used);
        expect(rows.get("blanks or zeros met")).toBe(
          cells.filter((cell) => typeof cell !== "number" || cell === 0).length,
        );
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("say how many cells were blank or 0, whichever way a host sends them", () => {
    const cells = [10, null, 20, undefined, 30, "", 40, "  ", 50, 0];
    expect(audit([cells], "skip").get("blanks or zeros met")).toBe(5);
    expect(audit([cells], "skip").get("readings used")).toBe(5);
    expect(audit([cells], "count").get("blanks or zeros met")).toBe(5);
    expect(audit([cells], "count").get("readings used")).toBe(10);
    expect(audit([[10, 20, 30, 40]]).get("blanks or zeros met")).toBe(0);
  });

  test("count over a grid as over a column", () => {
    const grid = [
      [10, 0, 20],
      [null, 30, 40],
    ];
    expect(audit(grid, "skip")).toEqual(audit([[10], [0], [20], [null], [30], [40]], "skip"));
  });

  test("carry the reason where every can stayed dry, and the rest is worked", () => {
    const rows = audit([[0, null, 0, ""]], "count");
    expect(LABELS.map((label) => rows.get(label)).slice(0, 6)).toEqual([4, 4, 0, 0, 0, 0]);
    for (const label of ["Cv", "DU", "CU"]) expect(rows.get(label)).toContain("readings are all 0");
  });

  test("are refused as a whole where a cell is blank and no word was given, by its place", () => {
    const refused = refusalOf("UNIFORMITY_AUDIT", {
      readings: [
        [10, 20],
        [30, null],
      ],
    });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "readings" });
    expect(refused.message).toContain("readings is blank or 0 in row 2, column 2 of the range");
  });

  test("want four readings, as the low quarter does", () => {
    const refused = refusalOf("UNIFORMITY_AUDIT", { readings: [[10, 20, 30, 0]], zeros: "skip" });
    expect(refused.message).toContain("it must have 4 or more");
  });
});
