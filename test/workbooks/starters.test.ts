/** What every starter workbook must do, whatever it is about. */
import * as functions from "../../src/functions";
import { rowNumber } from "../../src/workbooks/kit";
import { workedBySecondEngine } from "../rig/secondEngine";
import { createHeadlessSheet, type HeadlessSheet } from "../rig/sheetEngine";
import { isError, STARTER_CASES, workedAddresses, workedCells, type WorkedCell } from "../rig/workedCells";

const { open } = createHeadlessSheet(functions);

describe.each(STARTER_CASES)("$title", ({ kind, edition }) => {
  const { workbook } = kind.build(edition);
  let sheet: HeadlessSheet;
  let cells: WorkedCell[];
  beforeAll(() => {
    sheet = open(workbook);
    cells = workedCells(workbook, sheet);
  });

  test("no cell is in error", () => {
    expect(cells.length).toBeGreaterThan(10);
    expect(cells.filter(isError)).toEqual([]);
  });

  test("every check says OK, but for those that the demo means to show", () => {
    const checks = workbook.sheets.find(({ name }) => name === "Checks")!;
    const looks = Object.entries(checks.cells)
      .filter(([address, { style }]) => style === "check" && address !== "A2")
      .filter(([address]) => sheet.value(`Checks!${address}`) !== "OK")
      .map(([address]) => sheet.value(`Checks!A${rowNumber(address)}`));
    const expected = kind.expectedLooks ?? [];
    expect(looks).toEqual(expected);
    expect(sheet.value("Checks!A2")).toBe(expected.length === 0 ? "All checks OK" : "See Checks");
  });

  test("an independent engine finds the same in every cell", () => {
    const second = workedBySecondEngine(workbook);
    const differences = workbook.sheets.flatMap((each) => {
      const values = second.values(each.name);
      return workedAddresses(each).flatMap((at) => {
        const ours = sheet.value(`'${each.name}'!${at}`) ?? "";
        const theirs = values.get(at) ?? "";
        return same(ours, theirs) ? [] : [{ at: `${each.name}!${at}`, ours, theirs }];
      });
    });
    expect(differences.slice(0, 20)).toEqual([]);
  });

  test("it has what every starter has", () => {
    const names = workbook.sheets.map(({ name }) => name);
    expect(names[0]).toBe("About");
    expect(names).toContain("Checks");
    expect(new Set(names).size).toBe(names.length);
    expect(Object.keys(workbook.namedRanges ?? {})).toContain("units");
    for (const { cells: content } of workbook.sheets) {
      expect(content["A2"]).toMatchObject({ style: "check" });
      expect(content["A3"]).toMatchObject({
        value: "Planning estimate. Check with a bucket, a scale and a meter before relying on it.",
      });
    }
  });

  test("every chart is described, names its series and draws ranges that hold something", () => {
    const charts = workbook.sheets.flatMap(({ name, charts: drawn = [] }) => drawn.map((chart) => ({ name, chart })));
    expect(charts.length).toBeGreaterThan(0);
    for (const { name, chart } of charts) {
      expect(chart.description.length).toBeGreaterThan(20);
      for (const { values } of chart.series) {
        const range = values.includes("!") ? values : `'${name}'!${values}`;
        const block = sheet.sheet.adapter.evaluate(range.replaceAll("$", ""), name);
        expect(block.flat().some((value) => typeof value === "number")).toBe(true);
      }
    }
  });

  test("no function of ours stands in a validation, and no blank cell goes to an optional argument", () => {
    for (const { validations = [] } of workbook.sheets) {
      expect(JSON.stringify(validations)).not.toContain("CANYARD");
      for (const { message } of validations) expect(message).toMatch(/^[^.]+.*\.$/s);
    }
  });
});

function same(ours: unknown, theirs: unknown): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(ours));
}
