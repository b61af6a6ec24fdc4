/** Each starter in each edition, as the built site hands it out, added to the fake of Excel. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { excel } from "../../../src/taskpane/excel";
import type { StarterWorkbook } from "../../../src/taskpane/sheetHost";
import type { StarterLine } from "../../../src/taskpane/starters";
import { freeNames } from "../../../src/workbooks/freeNames";
import { isTable } from "../../../src/workbooks/model";
import { renameSheets } from "../../../src/workbooks/renameSheets";
import { starters } from "../../../src/workbooks/starters";
import { cellsOf, modelCells } from "../../rig/addedSheets";
import { FakeExcel } from "../../rig/fakeExcel";
import { setGlobal } from "../../rig/pageGlobals";

const SITE = join(__dirname, "../../../dist/starters");

function fetched<T>(name: string): T {
  return JSON.parse(readFileSync(join(SITE, `${name}.json`), "utf8")) as T;
}

const names = starters.flatMap(({ id }) => [`${id}-us`, `${id}-metric`]);
const made = names.map((name) => [name, fetched<StarterWorkbook>(name)] as const);

function fakeHost(...sheets: readonly string[]): FakeExcel {
  const fake = new FakeExcel();
  for (const name of sheets) fake.workbook.addSheet(name).put("A1", "mine");
  fake.workbook.select(sheets[0] ?? "", "A1");
  setGlobal("Excel", fake.global);
  setGlobal("Office", fake.office);
  return fake;
}

afterEach(() => {
  setGlobal("Excel", undefined);
  setGlobal("Office", undefined);
});

/** Tables fill their block, so that a cell in their way shows. */
function fillTables(fake: FakeExcel, { workbook }: StarterWorkbook): void {
  const cells = workbook.sheets.flatMap((sheet) => Object.values(sheet.cells));
  const sizes = new Map(cells.filter(isTable).map(({ table, rows, columns }) => [table, { rows, columns }]));
  fake.workbook.calculate = (formula) => {
    const size = sizes.get(formula);
    if (size === undefined) return 0;
    return Array.from({ length: size.rows }, () => Array.from({ length: size.columns }, () => 1));
  };
}

test("the site's list names each starter with its editions and its sheets", () => {
  const sheetsOf = (id: string) =>
    made.find(([name]) => name === `${id}-us`)?.[1].workbook.sheets.map(({ name }) => name);
  expect(fetched<readonly StarterLine[]>("index")).toMatchObject(
    starters.map(({ id, title, purpose }) => ({
      id,
      title,
      purpose,
      editions: ["us", "metric"],
      sheets: sheetsOf(id),
    })),
  );
});

describe.each(made)("%s", (_name, starter) => {
  const { workbook } = starter;

  test("is added to an empty workbook cell by cell as it is, in one step, with nothing left out and nothing in error", async () => {
    const fake = fakeHost("Sheet1");
    fillTables(fake, starter);
    const addition = await excel.addWorkbook!(starter);
    expect(addition).toEqual({ sheets: workbook.sheets.map(({ name }) => name), leftOut: [], isOneUndoStep: true });
    expect([fake.misuses, fake.workbook.misread]).toEqual([[], []]);
    expect(fake.undo).toHaveLength(1);
    for (const sheet of workbook.sheets) {
      const added = fake.workbook.sheet(sheet.name);
      expect(cellsOf(added)).toEqual(modelCells(sheet));
      for (const [address, cell] of Object.entries(sheet.cells)) {
        if (!isTable(cell)) continue;
        const { row, column } = added.area(address);
        expect(added.cell(row, column).value).toBe(1);
      }
    }
    expect(fake.workbook.activeSheet().name).toBe("About");
  });

  test("has its charts with their series, its names, its limits and its page", async () => {
    const fake = fakeHost("Sheet1");
    await excel.addWorkbook!(starter);
    expect([...fake.workbook.names.keys()]).toEqual(Object.keys(workbook.namedRanges ?? {}));
    for (const { name, charts = [], validations = [] } of workbook.sheets) {
      const added = fake.workbook.sheet(name);
      expect(added.charts.map(({ set, series }) => [set["title.text"], series.map((each) => each.name)])).toEqual(
        charts.map(({ title, series }) => [title, series.map((each) => each.name)]),
      );
      expect(new Set(charts.map(({ title }) => title)).size).toBe(charts.length);
      for (const { range, message } of validations) {
        expect(message.length).toBeLessThanOrEqual(225);
        expect(added.setting(range.replaceAll("$", ""), "dataValidation.errorAlert")).toMatchObject({ message });
      }
      const paper = starter.edition === "us" ? "Letter" : "A4";
      expect(added.setting("", "pageLayout.paperSize")).toBe(paper);
    }
  });

  test("has no formula that is longer than Excel takes", () => {
    const contents = workbook.sheets.flatMap((sheet) => Object.values(modelCells(sheet)));
    expect(contents.filter((content) => String(content).startsWith("=") && String(content).length > 8192)).toEqual([]);
  });

  test("has lists that Excel can take: no comma within a word, and not more than 255 letters", () => {
    const lists = workbook.sheets.flatMap(({ validations = [] }) =>
      validations.flatMap((validation) => ("words" in validation ? [validation.words] : [])),
    );
    expect(lists.flat().filter((word) => String(word).includes(","))).toEqual([]);
    expect(lists.filter((words) => words.join(",").length > 255)).toEqual([]);
  });

  test("stands beside sheets and names like its own, all its formulas pointing at its own sheets", async () => {
    const own = workbook.sheets.map(({ name }) => name);
    const fake = fakeHost("Sheet1", ...own);
    const before = JSON.stringify(own.map((name) => fake.workbook.sheet(name).state));
    for (const name of Object.keys(workbook.namedRanges ?? {})) fake.workbook.names.set(name, { value: 1 });
    const taken = { sheets: ["Sheet1", ...own], names: [...fake.workbook.names.keys()] };
    const { sheets } = await excel.addWorkbook!(starter);
    expect(sheets).toEqual(own.map((name) => `${name} 2`));
    expect([fake.misuses, fake.workbook.misread]).toEqual([[], []]);
    for (const sheet of renameSheets(workbook, freeNames(workbook, taken)).sheets) {
      const added = fake.workbook.sheet(sheet.name);
      expect(cellsOf(added)).toEqual(modelCells(sheet));
      const formulas = Object.values(cellsOf(added)).filter((content) => String(content).startsWith("="));
      const withoutTexts = formulas.map((formula) => String(formula).replace(/"(?:[^"]|"")*"/g, '""'));
      const named = withoutTexts.flatMap((formula) => formula.match(/'[^']+'!|[A-Za-z_]\w*!/g) ?? []);
      expect(named.filter((reference) => !sheets.includes(reference.replace(/^'|'?!$/g, "")))).toEqual([]);
    }
    expect(JSON.stringify(own.map((name) => fake.workbook.sheet(name).state))).toBe(before);
  });
});
