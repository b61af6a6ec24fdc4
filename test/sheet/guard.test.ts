import * as functions from "../../src/functions";
import { openSheetModel } from "../../src/sheet/sheetModel";
import { render } from "../../src/sheet/render";
import type { Workbook } from "../../src/workbooks/model";
import { createHeadlessSheet, quietly } from "../rig/sheetEngine";

const workbook: Workbook = {
  name: "Guarded",
  sheets: [
    {
      name: "Inputs",
      cells: { B2: { value: "us", style: "locked" }, B3: { value: 12 }, B4: { value: "drip" }, B5: { value: 0.2 } },
      validations: [
        { range: "$B$2", words: ["us"], message: "The word is fixed." },
        { range: "B3", least: 1, most: 1000, whole: true, message: "Plants must be a whole number from 1 to 1000." },
        { range: "B4", list: "Lists!$A$1:$A$2", message: "System must be one of the words on the sheet Lists." },
        { range: "B5", least: 0, most: 0.9, message: "Leaching must be a number from 0 to 0.9." },
      ],
    },
    { name: "Lists", cells: { A1: { value: "drip" }, A2: { value: "boom" } } },
  ],
};

const { engine } = createHeadlessSheet(functions);

function opened() {
  const told: string[] = [];
  const refuse = (sentence: string) => void told.push(sentence);
  const { model } = quietly(() => openSheetModel(engine, render(workbook), () => {}, refuse));
  const at = (address: string) => ({ sheetId: "sheet1", ...engine.helpers.toCartesian(address) });
  const { left, top, right, bottom } = model.getters.getRangeFromSheetXC("sheet1", "B1:B4").zone;
  return {
    told,
    contents: (address: string) => model.getters.getCellText(at(address), { showFormula: true }),
    edit: (address: string, content: string) =>
      quietly(() => model.dispatch("UPDATE_CELL", { ...at(address), content })).isSuccessful,
    clear: () =>
      quietly(() => model.dispatch("DELETE_CONTENT", { sheetId: "sheet1", target: [{ left, top, right, bottom }] })),
    /** What the cell editor asks before it takes what was typed. */
    takes: (address: string, value: number | string) =>
      (
        model.getters as unknown as {
          getValidationResultForCellValue(value: unknown, at: object): { readonly isValid: boolean };
        }
      ).getValidationResultForCellValue(value, at(address)).isValid,
    shownAt: (address: string) => model.getters.getInvalidDataValidationMessage(at(address)),
  };
}

it("leaves a locked cell as it is, whether another word is typed, pasted or the cell deleted", () => {
  const { edit, clear, contents, told } = opened();
  expect(edit("B2", "metric")).toBe(false);
  expect(edit("B2", "")).toBe(false);
  clear();
  expect(contents("B2")).toBe("us");
  expect(told).toEqual(Array(3).fill("B2 was not changed. The word is fixed."));
});

it("takes whole numbers only where the rule says so", () => {
  const { edit, contents, told } = opened();
  expect(edit("B3", "13")).toBe(true);
  expect(edit("B3", "12.5")).toBe(false);
  expect(edit("B3", "=25/2")).toBe(false);
  expect(edit("B3", "=26/2")).toBe(true);
  expect(contents("B3")).toBe("=26/2");
  expect(told).toEqual(Array(2).fill("B3 was not changed. Plants must be a whole number from 1 to 1000."));
});

test.each([
  ["B2", "us", true],
  ["B2", "metric", false],
  ["B3", 1000, true],
  ["B3", 0, false],
  ["B4", "boom", true],
  ["B4", "mat", false],
  ["B5", 0.9, true],
  ["B5", 0.91, false],
])("the editor of %s asked about %s says %s", (address, value, isTaken) => {
  expect(opened().takes(address, value)).toBe(isTaken);
});

it("shows our sentence, not the engine's, at a cell that holds what it should not", () => {
  const { edit, shownAt } = opened();
  expect(shownAt("B5")).toBeUndefined();
  edit("B5", "15");
  expect(shownAt("B5")).toBe("Leaching must be a number from 0 to 0.9.");
});
