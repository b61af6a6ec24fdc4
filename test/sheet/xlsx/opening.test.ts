import "../../rig/xmlInNode";
import { zipSync } from "fflate";
import * as functions from "../../../src/functions";
import { openSheetModel } from "../../../src/sheet/sheetModel";
import { openXlsx, UnreadableFile } from "../../../src/sheet/xlsx";
import { packed, type PackedBook } from "../../rig/packedFile";
import { createHeadlessSheet, quietly } from "../../rig/sheetEngine";

const { engine } = createHeadlessSheet(functions);

function opened(book: PackedBook) {
  return quietly(() => {
    const { workbook, leftOut } = openXlsx(engine, packed(book), "plan");
    const { adapter, model } = openSheetModel(engine, workbook.data, () => {});
    return { data: workbook.data, adapter, model, leftOut: leftOut(adapter) };
  });
}

const sheet = (rows: string, after?: string): PackedBook => ({ sheets: { Plan: { rows, ...(after && { after }) } } });
const cell = (at: string, formula: string, shown: string, type = "n") =>
  `<c r="${at}" t="${type}"><f>${formula}</f><v>${shown}</v></c>`;
const row = (number: number, cells: string) => `<row r="${number}">${cells}</row>`;

describe("our functions", () => {
  test.each([
    "_xldudf_CANYARD_RUN_MINUTES",
    "_xldudf_canyard_run_minutes",
    "CANYARD.RUN_MINUTES",
    "canyard.run_minutes",
  ])("are read when the file calls them %s", (name) => {
    const { adapter, leftOut } = opened(sheet(row(1, cell("A1", `${name}(0.275,6)`, "2.75"))));
    expect(adapter.read("A1")).toMatchObject({ formula: "=CANYARD.RUN_MINUTES(0.275,6)" });
    expect(adapter.read("A1").value).toBeCloseTo(2.75, 12);
    expect(leftOut).toEqual([]);
  });

  test("are one table again where the file has one formula a cell", () => {
    const call = "_xldudf_CANYARD_PULSE_SCHEDULE(45,3,60,0.25)";
    const part = (r: number, c: number) => `IFERROR(INDEX(${call},${r},${c}),"")`.replaceAll('"', "&quot;");
    const rows = [1, 2, 3, 4].map((r) =>
      row(
        r,
        ["A", "B", "C", "D"]
          .map((c, at) => cell(`${c}${r}`, part(r, at + 1), r === 1 ? "word" : "0", r === 1 ? "str" : "n"))
          .join(""),
      ),
    );
    const { adapter } = opened(sheet(rows.join("")));
    expect(adapter.read("A1").formula).toBe("=CANYARD.PULSE_SCHEDULE(45,3,60,0.25)");
    expect(adapter.read("B2").formula).toBeNull();
    expect(adapter.read("D4").value).toBe(15);
  });
});

describe("what the engine alone would misread", () => {
  test("a formula that is written once for several cells", () => {
    const shared = (at: string, text: string) =>
      `<c r="${at}"><f t="shared" si="0"${text ? ' ref="B1:B3"' : ""}>${text}</f><v>1</v></c>`;
    const { adapter } = opened(
      sheet(
        row(1, `<c r="A1"><v>10</v></c>${shared("B1", "LOG10(A1)+_xldudf_CANYARD_ET0_TABLE*0+SUM($A$1:A1)")}`) +
          row(2, `<c r="A2"><v>100</v></c>${shared("B2", "")}`),
      ),
    );
    expect(adapter.read("B2").formula).toContain("LOG10(A2)");
    expect(adapter.read("B2").formula).toContain("SUM($A$1:A2)");
  });

  test("every prefix of newer functions", () => {
    const { adapter } = opened(sheet(row(1, cell("A1", "_xlfn.STDEV.S(1,3)+_xlfn.STDEV.P(1,3)", "2.414213562373095"))));
    expect(adapter.read("A1").formula).toBe("=STDEV.S(1,3)+STDEV.P(1,3)");
  });

  test("texts that look like numbers, dates, formulas or truths, shared or in their place", () => {
    const texts = ["1-2", "0012", "=1+1", "TRUE", "plain"];
    const { adapter } = opened({
      sheets: {
        Plan: {
          rows:
            row(1, texts.map((_, at) => `<c r="${"ABCDE"[at]!}1" t="s"><v>${at}</v></c>`).join("")) +
            row(
              2,
              texts.map((text, at) => `<c r="${"ABCDE"[at]!}2" t="inlineStr"><is><t>${text}</t></is></c>`).join(""),
            ),
        },
      },
      strings: texts,
    });
    for (const line of [1, 2])
      expect(texts.map((_, at) => adapter.read(`${"ABCDE"[at]!}${line}`).value)).toEqual(texts);
  });

  test("names of cells, also in lists, and parts called by their path from the root", () => {
    const { adapter, data } = opened({
      sheets: {
        Plan: {
          rows: row(1, `<c r="A1"><v>4</v></c>${cell("B1", "supply*2", "8")}`),
          after: `<dataValidations><dataValidation type="list" sqref="A3" showErrorMessage="1"><formula1>systems</formula1></dataValidation></dataValidations>`,
        },
        Lists: { rows: row(1, '<c r="A1" t="inlineStr"><is><t>drip</t></is></c>') },
      },
      names:
        '<definedName name="supply">Plan!$A$1</definedName><definedName name="systems">Lists!$A$1:$A$4</definedName><definedName name="rate">0.08</definedName>',
      fromRoot: true,
    });
    expect(adapter.read("B1").value).toBe(8);
    expect(data.sheets[0]!["dataValidationRules"]).toEqual([
      expect.objectContaining({
        criterion: expect.objectContaining({ type: "isValueInRange", values: ["Lists!A1:A4"] }),
      }),
    ]);
  });

  test("rules for whole numbers, and the sentences of rules", () => {
    const { data } = opened(
      sheet(
        row(1, '<c r="A1"><v>3</v></c>'),
        '<dataValidations><dataValidation type="whole" operator="between" sqref="A1:A9" showErrorMessage="1" error="Whole pots only."><formula1>1</formula1><formula2>9</formula2></dataValidation><dataValidation type="decimal" operator="between" errorStyle="warning" showErrorMessage="1" sqref="B1"><formula1>0</formula1><formula2>1</formula2></dataValidation></dataValidations>',
      ),
    );
    expect(data.sheets[0]!["dataValidationRules"]).toEqual([
      expect.objectContaining({ ranges: ["A1:A9"], whole: true, message: "Whole pots only.", isBlocking: true }),
      expect.objectContaining({ ranges: ["B1"], isBlocking: false }),
    ]);
  });

  test("two colours by rules on the same cells, by the words in them", () => {
    const rule = (word: string, priority: number) =>
      `<cfRule type="cellIs" operator="equal" dxfId="0" priority="${priority}"><formula>"${word}"</formula></cfRule>`;
    const { model, leftOut } = opened(
      sheet(
        row(1, '<c r="A1" t="inlineStr"><is><t>LOOK</t></is></c>'),
        `<conditionalFormatting sqref="A1 C1">${rule("OK", 1)}${rule("LOOK", 2)}</conditionalFormatting>`,
      ),
    );
    const getters = model.getters as unknown as { getCellComputedStyle(at: object): { textColor?: string } };
    expect(getters.getCellComputedStyle({ sheetId: "Plan", col: 0, row: 0 }).textColor).toBe("#14532D");
    expect(leftOut).toEqual([]);
  });
});

describe("what cannot be carried over is said", () => {
  test("a function that is not there: the formula stays, and so does what it showed, in words", () => {
    const { adapter, leftOut } = opened(
      sheet(row(1, cell("A1", "_xlfn.ANCHORARRAY(B1)", "7") + cell("C1", "A1+1", "8"))),
    );
    expect(adapter.read("A1").formula).toBe("=ANCHORARRAY(B1)");
    expect(leftOut).toEqual([
      "ANCHORARRAY is a function that this page does not have, in Plan!A1: its formulas are kept and show an error.",
      "Cells that show something else than in the file: 'Plan'!A1 (7 in the file, #NAME? here) and 'Plan'!C1 (8 in the file, #NAME? here).",
    ]);
  });

  test("but not a clock that goes on, or the last digits of a number", () => {
    const { leftOut } = opened(sheet(row(1, cell("A1", "NOW()", "45000") + cell("B1", "1/3", "0.33333333333"))));
    expect(leftOut).toEqual([]);
  });

  test("protection, names of formulas, macros, comments", () => {
    const { leftOut } = opened({
      sheets: { Plan: { rows: row(1, '<c r="A1"><v>3</v></c>'), after: '<sheetProtection sheet="1"/>' } },
      names: '<definedName name="rate">0.08</definedName>',
      more: { "xl/comments1.xml": "<comments/>", "xl/vbaProject.bin": "" },
    });
    expect(leftOut).toEqual([
      "Comments on cells are left out.",
      "Macros are left out.",
      "Names that do not stand for one block of cells are left out: rate.",
      "The protection of sheets is lifted: here every cell can be changed.",
    ]);
  });

  test("rules about the length of texts", () => {
    const { leftOut } = opened(
      sheet(
        row(1, '<c r="A1"><v>3</v></c>'),
        '<dataValidations><dataValidation type="textLength" operator="lessThan" sqref="A1"><formula1>5</formula1></dataValidation></dataValidations>',
      ),
    );
    expect(leftOut).toEqual(["Rules about times and about the length of texts are left out."]);
  });
});

describe("what is no workbook is refused in a sentence", () => {
  const attempt = (bytes: Uint8Array) => () => openXlsx(engine, bytes, "x");

  test.each([
    ["bytes that are not packed", new Uint8Array([1, 2, 3]), /missing or damaged/],
    ["a packed file of something else", zipSync({ "a.txt": new Uint8Array([65]) }), /without a workbook/],
    [
      "one that counts its days from 1904",
      packed({ ...sheet(row(1, '<c r="A1"><v>3</v></c>')), properties: '<workbookPr date1904="1"/>' }),
      /from 1904/,
    ],
  ])("%s", (_, bytes, sentence) => {
    expect(attempt(bytes)).toThrow(UnreadableFile);
    expect(attempt(bytes)).toThrow(sentence);
  });
});
