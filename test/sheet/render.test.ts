import * as functions from "../../src/functions";
import type { Workbook } from "../../src/workbooks/model";
import { createHeadlessSheet } from "../rig/sheetEngine";

const sample: Workbook = {
  name: "Sample block",
  sheets: [
    {
      name: "Plan",
      columnWidths: { A: 24 },
      frozen: { rows: 3 },
      cells: {
        A1: { value: "Run times", style: "title" },
        A4: { value: "Volume per plant" },
        B4: { value: 0.275, style: "input", format: "decimals3" },
        A5: { value: "Units" },
        B5: { value: "us", style: "input" },
        A6: { value: "Date" },
        B6: { value: 45292, style: "input", format: "date" },
        A7: { value: "Run time" },
        B7: { formula: "=CANYARD.RUN_MINUTES(Volume, 6)", style: "result", format: "decimals2" },
        B8: { value: "1-2" },
        B9: { value: "=not a formula" },
        B10: { value: true },
      },
      validations: [{ range: "B5", allowed: ["us", "metric"] }],
      charts: [
        {
          type: "bar",
          title: "Volumes",
          labels: "A4:A5",
          series: [{ name: "Volume", values: "B4:B5" }],
          position: { cell: "D4", width: 300, height: 200 },
        },
      ],
    },
    { name: "It's data", cells: { A1: { formula: "=Plan!B7*2" }, AB120: { value: 1 } } },
  ],
  namedRanges: { Volume: "Plan!$B$4" },
};

const { open } = createHeadlessSheet(functions);

it("works out formulas over names and sheets", () => {
  const { value } = open(sample);
  expect(value("B7")).toBeCloseTo(2.75, 12);
  expect(value("'It''s data'!A1")).toBeCloseTo(5.5, 12);
});

it("shows numbers and dates in their format", () => {
  const { read } = open(sample).sheet.adapter;
  expect(read("B4").shown).toBe("0.275");
  expect(read("B6")).toMatchObject({ value: 45292, shown: "2024-01-01" });
  expect(read("B7").shown).toBe("2.75");
});

it("keeps a text a text, however it begins", () => {
  const { value } = open(sample);
  expect([value("B8"), value("B9"), value("B10")]).toEqual(["1-2", "=not a formula", true]);
});

it("lets a list take its words only", () => {
  const { sheet } = open(sample);
  const rules = sheet.exportData().sheets[0]!["dataValidationRules"] as object[];
  expect(rules).toEqual([expect.objectContaining({ ranges: ["B5"], isBlocking: true })]);
});

it("makes room for every cell", () => {
  expect(open(sample).sheet.exportData().sheets[1]).toMatchObject({ colNumber: 28, rowNumber: 120 });
});

it("keeps chart, frozen rows, widths and names through saving and opening", () => {
  const data = open(sample).sheet.exportData();
  const [plan] = data.sheets;
  expect(plan!["figures"]).toEqual([expect.objectContaining({ tag: "chart", col: 3, row: 3, width: 300 })]);
  expect(plan!["panes"]).toEqual({ xSplit: 0, ySplit: 3 });
  expect(plan!["cols"]).toEqual({ "0": { size: 173 } });
  expect(data["namedRanges"]).toEqual({ Volume: "Plan!B4" });
});
