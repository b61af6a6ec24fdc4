import "../../rig/xmlInNode";
import { strFromU8, unzipSync } from "fflate";
import * as functions from "../../../src/functions";
import { openXlsx, saveXlsx } from "../../../src/sheet/xlsx";
import { unlikeOpen } from "../../../src/sheet/xlsx/unlike";
import type { Workbook } from "../../../src/workbooks/model";
import { sampleStarter } from "../../rig/sampleStarter";
import type { HeadlessSheet } from "../../rig/sheetEngine";
import { createHeadlessSheet, quietly } from "../../rig/sheetEngine";

const { engine, open, opened } = createHeadlessSheet(functions);

async function saved(given: Workbook | Record<string, string | number>) {
  const sheet = open(given);
  const { debug } = console;
  console.debug = () => {};
  const { bytes, leftOut } = await saveXlsx(engine, sheet.sheet.model);
  console.debug = debug;
  const parts = unzipSync(bytes);
  const text = (path: string) => strFromU8(parts[path]!);
  return { sheet, bytes, leftOut, text, paths: Object.keys(parts) };
}

const contents = ({ sheet: { adapter } }: HeadlessSheet, name: string) =>
  Object.fromEntries(adapter.formulas(name).map(({ address, formula }) => [address, formula]));

describe("a workbook with one of everything", () => {
  const { workbook } = sampleStarter("us");
  let file: Awaited<ReturnType<typeof saved>>;
  let again: HeadlessSheet;
  beforeAll(async () => {
    file = await saved(workbook);
    const { data } = quietly(() => openXlsx(engine, file.bytes, "again")).workbook;
    again = opened(data);
  });

  test("leaves nothing out", () => {
    expect(file.leftOut).toEqual([]);
  });

  test("has every formula when it is opened again, the table as one call", () => {
    for (const { name } of workbook.sheets) expect(contents(again, name)).toEqual(contents(file.sheet, name));
    expect(Object.values(contents(again, "Work"))).toContainEqual(expect.stringMatching(/^=CANYARD.PULSE_SCHEDULE\(/));
  });

  test("shows the same in every cell when it is opened again", () => {
    for (const { name, cells } of workbook.sheets) {
      for (const address of Object.keys(cells)) {
        const at = `${name}!${address}`;
        expect([at, again.value(at)]).toEqual([at, file.sheet.value(at)]);
      }
    }
  });

  test("keeps names, rules with their sentences and charts", () => {
    const [before, after] = [file.sheet, again].map(({ sheet }) => sheet.exportData());
    expect(after!["namedRanges"]).toEqual(before!["namedRanges"]);
    const rules = (data: typeof before) =>
      data!.sheets.flatMap((each) =>
        (each["dataValidationRules"] as object[]).map((rule) => ({
          ...rule,
          id: "",
          criterion: { ...(rule["criterion" as never] as object), displayStyle: "" },
        })),
      );
    expect(rules(after)).toEqual(rules(before));
    const charts = (data: typeof before) =>
      data!.sheets.flatMap((each) =>
        (each["figures"] as { data: Record<string, unknown> }[]).map(({ data: chart }) => chart),
      );
    const drawn = ({ type, title, stacked, horizontal, axesDesign, dataSetStyles }: Record<string, unknown>) => ({
      type,
      title: (title as { text: string }).text,
      stacked,
      horizontal,
      axesDesign,
      dataSetStyles,
    });
    expect(charts(after).map(drawn)).toEqual(charts(before).map(drawn));
  });

  test("stores our functions as Excel does, with what they show, none as an array", () => {
    const sheets = file.paths.filter((path) => /^xl\/worksheets\/sheet/.test(path)).map(file.text);
    expect(sheets.join("")).not.toMatch(/CANYARD\./);
    const ours = sheets.join("").match(/<c [^>]*><f[^>]*>[^<]*_xldudf_CANYARD_[^<]*<\/f><v[^>]*>[^<]*/g)!;
    expect(ours.length).toBeGreaterThan(15);
    for (const cell of ours) expect(cell).not.toMatch(/t="array"/);
    // 60 x 0.25 / 1 = 15 minutes
    expect(ours).toContainEqual(expect.stringMatching(/RUN_MINUTES\([^<]*<\/f><v>15$/));
  });

  test("puts the elements of each part in the order that Excel takes", () => {
    const sheet = file.text("xl/worksheets/sheet1.xml");
    const order = ["<sheetPr", "<sheetViews", "<sheetData", "<conditionalFormatting", "<dataValidations", "<pageSetup"];
    const places = order.map((element) => sheet.indexOf(element));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(0);
    expect(file.text("xl/workbook.xml").replace(/\s+/g, " ")).toMatch(
      /<\/sheets>\s*<definedNames>.*Inputs!\$D\$6.*<calcPr/,
    );
  });
});

test("a formula that needs all cells of a block stays an array, others do not become one", async () => {
  const { text } = await saved({
    A1: 1,
    A2: 2,
    B1: "=SUM(A1:A2*2)",
    B2: "=SUMPRODUCT(A1:A2*2)",
    B3: "=SUM(A1:A2)",
    D1: "=A1:A2*2",
  });
  const sheet = text("xl/worksheets/sheet0.xml").replace(/>\s+</g, "><");
  expect(sheet).toMatch(/<c r="B1"[^>]* cm="1"[^>]*><f t="array" ref="B1">SUM\(A1:A2\*2\)<\/f><v>6<\/v>/);
  expect(sheet).toMatch(/<c r="B2"[^>]*><f>SUMPRODUCT/);
  expect(sheet).toMatch(/<c r="B3"[^>]*><f>SUM\(A1:A2\)<\/f><v>3<\/v>/);
  expect(sheet).toMatch(/<f t="array" ref="D1:D2">A1:A2\*2<\/f><v>2<\/v>/);
  expect(sheet).toMatch(/<c r="D2"[^>]*><v>4<\/v>/);
});

test("brackets stay where they stand, and newer functions get the prefix that Excel wants", async () => {
  const { text, leftOut } = await saved({ A1: 3, B1: "=A1*(A1/60)*7", B2: "=STDEV.S(A1, 4)", B3: "=1-(2-3)" });
  const sheet = text("xl/worksheets/sheet0.xml");
  expect(sheet).toMatch(/<f>A1\*\(A1\/60\)\*7<\/f>/);
  expect(sheet).toMatch(/<f>_xlfn\.STDEV\.S\(A1,4\)<\/f>/);
  expect(sheet).toMatch(/<f>1-\(2-3\)<\/f>/);
  expect(leftOut).toEqual([]);
});

test("a text that looks like a number is a text in the file, an error is one that Excel has, an empty answer a formula", async () => {
  const { text, leftOut } = await saved({
    A1: "1-2",
    A2: "=CANYARD.RUN_MINUTES(1, 0)",
    A3: "=Z9",
    A4: '=IF(TRUE, "", 1)',
  });
  const sheet = text("xl/worksheets/sheet0.xml").replace(/>\s+</g, "><");
  expect(sheet).toMatch(/<c r="A1"[^>]* t="inlineStr"><is><t[^>]*>1-2<\/t>/);
  expect(sheet).toMatch(/<c r="A2"[^>]* t="e"><f>_xldudf_CANYARD_RUN_MINUTES\(1,0\)<\/f><v>#VALUE!<\/v>/);
  expect(sheet).toMatch(/<c r="A3"[^>]*><f>Z9<\/f>/);
  expect(sheet).toMatch(/<c r="A4"[^>]* t="str"><f>IF\(TRUE,"",1\)<\/f><v\/?>/);
  expect(leftOut).toEqual([]);
});

test("a function that Excel does not have, and one that nobody has, stay formulas and are named", async () => {
  const { text, leftOut } = await saved({ A1: '=SPLIT("a b", " ")', C1: "=NO_SUCH(1)" });
  const sheet = text("xl/worksheets/sheet0.xml");
  expect(sheet).toMatch(/SPLIT\(/);
  expect(sheet).toMatch(/NO_SUCH\(1\)/);
  expect(leftOut).toEqual([expect.stringMatching(/^SPLIT is a function that Excel does not have/)]);
});

test("the comparison with the file tells a formula that is not there as it stands", async () => {
  const sheet = open({ A1: 1, B1: "=A1*2", B2: "=A1*3" });
  const { bytes } = await saved({ A1: 1, B1: "=A1*2", B2: 3 });
  expect(quietly(() => unlikeOpen(engine, sheet.sheet.model, bytes))).toEqual([
    "1 formula could not be written as here, the first in Sheet1!B2.",
  ]);
});
