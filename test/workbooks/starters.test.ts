/** What every starter workbook must do, whatever it is about. */
import * as functions from "../../src/functions";
import { columnLetters, columnNumber, rowNumber, type Edition } from "../../src/workbooks/kit";
import { isFormula, isTable, type Sheet, type Workbook } from "../../src/workbooks/model";
import { starters } from "../../src/workbooks/starters";
import { workedBySecondEngine } from "../rig/secondEngine";
import { createHeadlessSheet, type HeadlessSheet } from "../rig/sheetEngine";

const EDITIONS: readonly Edition[] = ["us", "metric"];
const CASES = starters.flatMap((kind) =>
  EDITIONS.map((edition) => ({ kind, edition, title: `${kind.id}, ${edition}` })),
);
const ERROR_CODES = /^#(ERROR|N\/A|VALUE!|REF!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CYCLE|BAD_EXPR)/;

interface WorkedCell {
  readonly address: string;
  readonly value: unknown;
  readonly message: string | null;
}

/** Every cell that is worked, blocks included. */
function workedCells(workbook: Workbook, sheet: HeadlessSheet): WorkedCell[] {
  return workbook.sheets.flatMap((each) =>
    workedAddresses(each).map((at) => {
      const address = `'${each.name}'!${at}`;
      return { address, value: sheet.value(address), message: sheet.message(address) };
    }),
  );
}

function workedAddresses({ cells }: Sheet): string[] {
  return Object.entries(cells).flatMap(([address, cell]) => {
    if (isFormula(cell)) return [address];
    if (!isTable(cell)) return [];
    return Array.from({ length: cell.rows * cell.columns }, (_each, index) => {
      const [down, across] = [Math.floor(index / cell.columns), index % cell.columns];
      return `${columnLetters(columnNumber(address) + across)}${rowNumber(address) + down}`;
    });
  });
}

const isError = ({ value }: WorkedCell): boolean => typeof value === "string" && ERROR_CODES.test(value);

const { open } = createHeadlessSheet(functions);

describe.each(CASES)("$title", ({ kind, edition }) => {
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

  test("every input at its limits gives an answer or a sentence of ours", () => {
    const wrong = workbook.sheets.flatMap((each) =>
      (each.validations ?? []).flatMap((validation) => wrongAtLimits(workbook, sheet, each, validation)),
    );
    expect(wrong.slice(0, 20)).toEqual([]);
  }, 120_000);
});

type Allowed = NonNullable<Sheet["validations"]>[number];

/** Puts the first cell of a validation to each of its limits, and tells the cells that are then in error without a sentence of ours. */
function wrongAtLimits(workbook: Workbook, sheet: HeadlessSheet, { name, cells }: Sheet, allowed: Allowed): string[] {
  const first = allowed.range.replaceAll("$", "").split(":")[0]!;
  const address = `'${name}'!${first}`;
  const before = sheet.value(address);
  if (cells[first]?.style !== "input" || before === null) return [];
  const wrong = valuesOf(allowed)
    .filter((value) => value !== before)
    .flatMap((value) => {
      sheet.set(address, value);
      return workedCells(workbook, sheet)
        .filter((cell) => isError(cell) && !/^[A-Z][A-Z0-9_]+: .+/.test(cell.message ?? ""))
        .map((cell) => `${address} = ${value}: ${cell.address} is ${String(cell.value)} (${cell.message})`);
    });
  if (sheet.value(address) !== before) sheet.set(address, before);
  return wrong;
}

function valuesOf(validation: Allowed): readonly (number | string)[] {
  if ("words" in validation) return validation.words;
  if ("list" in validation) return [];
  return [validation.least, validation.most];
}

function same(ours: unknown, theirs: unknown): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(ours));
}
