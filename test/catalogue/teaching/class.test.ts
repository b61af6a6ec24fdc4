/**
 * A class of 200 students and eight items: nobody has another's numbers, every key lies in what the trade usually sees,
 * and the key by a second route, the plain-spreadsheet formula in another engine, is the same.
 */
import { HyperFormula } from "hyperformula";
import * as functions from "../../../src/functions";
import { evaluate } from "../../../src/kernel";
import { entryOf } from "../../rig/calls";
import { createHeadlessSheet, type HeadlessSheet } from "../../rig/sheetEngine";

const STUDENTS = Array.from({ length: 200 }, (_each, index) => `S${index + 1}`);
const SEED = "elm 2026";

/** Item, low, high, step; inches, ft2, gal/h. Invented, in the spirit of spray stakes on #5 to #7 pots. */
const ITEMS = [
  ["reference_et", 0.2, 0.3, 0.01],
  ["crop_coefficient", 0.9, 1.3, 0.05],
  ["area_per_plant", 2.5, 4.5, 0.25],
  ["leaching_fraction", 0.05, 0.2, 0.01],
  ["uniformity", 0.7, 0.95, 0.01],
  ["emitter_flow", 4, 8, 0.5],
  ["emitters_per_plant", 1, 2, 1],
  ["minutes_now", 15, 60, 5],
] as const;

function draws(student: string): number[] {
  return ITEMS.map(
    ([item, low, high, step]) => evaluate(entryOf("EXERCISE_NUMBER"), [SEED, student, item, low, high, step]) as number,
  );
}

const class200 = STUDENTS.map(draws);

function keyInput([et, kc, area, lf, du, flow, emitters]: readonly number[]): number[] {
  return [et, kc, area, lf, du, flow, emitters] as number[];
}

describe("a class of 200", () => {
  test("no two students have the same numbers", () => {
    expect(new Set(class200.map(String)).size).toBe(STUDENTS.length);
  });

  test("every drawn number and every key is what the trade usually sees", () => {
    const verdicts = class200.flatMap((row) => {
      const key = functions.call("RUN_MINUTES_FROM_ET", [...keyInput(row), "us"]) as number;
      const inputs = ITEMS.slice(0, 7).map(([item], at) =>
        functions.verdict("RUN_MINUTES_FROM_ET", item, row[at] as number, "us"),
      );
      return [...inputs, functions.verdict("RUN_MINUTES", "", key, "us")];
    });
    expect([...new Set(verdicts)].filter((verdict) => verdict !== "ok" && verdict !== "")).toEqual([]);
  });

  test("the key by the plain-spreadsheet formula, in another engine, is the same", () => {
    for (const row of class200) {
      const input = [...keyInput(row), "us"];
      const rows = functions.call("SHOW_WORKING", ["RUN_MINUTES_FROM_ET", ...input]) as readonly (readonly unknown[])[];
      const plain = rows.find(([label]) => label === "spreadsheet alone")?.[1] as string;
      const engine = HyperFormula.buildFromArray([[plain]], { licenseKey: "gpl-v3", smartRounding: false });
      const key = functions.call("RUN_MINUTES_FROM_ET", input) as number;
      expect(engine.getCellValue({ sheet: 0, row: 0, col: 0 })).toBeCloseTo(key, 9);
      engine.destroy();
    }
  });
});

/** A small class sheet: the student's numbers in B, the answers in C, the marks and words beside them. */
function classSheet(answer: string | number): HeadlessSheet {
  return createHeadlessSheet(functions).open({
    B1: '=CANYARD.EXERCISE_NUMBER("elm 2026", "S7", "volume", 0.2, 0.6, 0.05)',
    B2: '=CANYARD.EXERCISE_NUMBER("elm 2026", "S7", "flow", 4, 8, 0.5)',
    B3: "=CANYARD.RUN_MINUTES(B1, B2)",
    C3: answer,
    D3: "=CANYARD.CHECK_ANSWER(C3, B3)",
    E3: '=CANYARD.DIAGNOSE_ANSWER(C3, "RUN_MINUTES", 0.02, 2, B1, B2)',
    A6: '=CANYARD.SHOW_WORKING("RUN_MINUTES", B1, B2)',
    A16: '=CANYARD.COMMON_MISTAKES("RUN_MINUTES", B1, B2)',
  });
}

describe("a student's sheet", () => {
  const key = classSheet("").value("B3") as number;

  test("filled in right", () => {
    const sheet = classSheet(Number(key.toFixed(2)));
    expect(sheet.value("D3")).toBe("right");
    expect(sheet.value("E3")).toMatch(/^right/);
  });

  test("filled in with a slip: per hour taken as per minute", () => {
    const sheet = classSheet(Number((key / 60).toPrecision(3)));
    expect(sheet.value("D3")).toBe("wrong");
    expect(sheet.value("E3")).toMatch(/is what comes out when the flow per hour was taken as flow per minute$/);
  });

  test("left blank", () => {
    const sheet = classSheet("");
    expect(sheet.value("D3")).toBe("not answered");
    expect(sheet.value("E3")).toBe("not answered");
  });

  test("the working and the mistakes spill beside it", () => {
    const sheet = classSheet("");
    expect(sheet.value("B7")).toBe("Flow to one plant");
    expect(sheet.value("E8")).toBe(key);
    expect(sheet.value("A16")).toBe("mistake");
    expect(sheet.value("C17")).toBeCloseTo(1 / 60, 12);
  });
});
