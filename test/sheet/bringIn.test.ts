import * as functions from "../../src/functions";
import { bringIn } from "../../src/sheet/bringIn";
import { growingBlockOf } from "../../src/sheet/growingBlock";
import { dailyDemand } from "../../src/workbooks/starters/dailyDemand";
import { SAMPLE_DAYS, sampleStarter } from "../rig/sampleStarter";
import type { HeadlessSheet } from "../rig/sheetEngine";
import { createHeadlessSheet, quietly } from "../rig/sheetEngine";

const { open } = createHeadlessSheet(functions);

const FIRST_DAY = 46_204;
const days = (count: number) =>
  Array.from({ length: count }, (_, at) => [FIRST_DAY + at, 90 + (at % 5), 60, at % 10 === 0 ? 0.5 : 0]);

function grown(count: number): HeadlessSheet {
  const sheet = open(sampleStarter("us").workbook);
  quietly(() => bringIn(sheet.sheet.model, days(count)));
  return sheet;
}

const range = (sheet: HeadlessSheet) => {
  const { model } = sheet.sheet;
  const { inputs, following } = growingBlockOf(model)!;
  return [inputs, ...following].map((each) => model.getters.getRangeString(each, ""));
};

describe("a longer table", () => {
  const sheet = grown(40);

  it("makes the block longer and writes every row", () => {
    expect(range(sheet)).toEqual(["Weather!A8:D47", "Weather!E8:F47"]);
    expect(["A8", "A47", "B47", "D38"].map((at) => sheet.value(`Weather!${at}`))).toEqual([
      FIRST_DAY,
      FIRST_DAY + 39,
      94,
      0.5,
    ]);
  });

  it("has the first row's formulas in every row", () => {
    const { read } = sheet.sheet.adapter;
    expect(read("Weather!E47")).toMatchObject({ formula: '=IF(COUNT(B47,C47)=2,B47-C47,"")', value: 34 });
    // Rain on every tenth day: four times half an inch.
    expect(read("Weather!F47")).toMatchObject({ formula: "=SUM($D$8:D47)", value: 2 });
    expect(read("Weather!F9").formula).toBe("=SUM($D$8:D9)");
  });

  it("is what the charts draw and the checks look at", () => {
    const data = sheet.sheet.exportData();
    const result = data.sheets.find(({ name }) => name === "Result")!;
    const figures = result["figures"] as { data: { dataSource: { labelRange: string } } }[];
    expect(figures[0]!.data.dataSource.labelRange).toBe("Weather!A8:A47");
    expect(sheet.value("Checks!A2")).toBe("All checks OK");
    sheet.set("Weather!D40", "");
    expect(sheet.value("Checks!A2")).toBe("See Checks");
  });

  it("goes away again with one undo", () => {
    const undone = grown(40);
    quietly(() => undone.sheet.model.dispatch("REQUEST_UNDO", {}));
    expect(range(undone)).toEqual([`Weather!A8:D${7 + SAMPLE_DAYS}`, `Weather!E8:F${7 + SAMPLE_DAYS}`]);
    expect(undone.value("Weather!B8")).toBe(88);
  });
});

it("makes the block shorter for a shorter table", () => {
  const sheet = grown(40);
  quietly(() => bringIn(sheet.sheet.model, days(12)));
  expect(range(sheet)).toEqual(["Weather!A8:D19", "Weather!E8:F19"]);
  expect(sheet.sheet.adapter.read("Weather!F19")).toMatchObject({ formula: "=SUM($D$8:D19)", value: 1 });
  expect(sheet.value("Checks!A2")).toBe("All checks OK");
});

it("leaves rows empty where a table has but a few days", () => {
  const sheet = grown(2);
  expect(range(sheet)).toEqual(["Weather!A8:D11", "Weather!E8:F11"]);
  expect(["A9", "A10", "B10"].map((at) => sheet.value(`Weather!${at}`))).toEqual([FIRST_DAY + 1, null, null]);
  expect(sheet.value("Checks!A2")).toBe("See Checks");
});

it("keeps with the workbook what it takes, through saving and opening and rows put in above", () => {
  const sheet = grown(6);
  const { model } = sheet.sheet;
  quietly(() =>
    model.dispatch("ADD_COLUMNS_ROWS", {
      sheetId: "sheet3",
      sheetName: "Weather",
      dimension: "ROW",
      base: 0,
      position: "before",
      quantity: 2,
    }),
  );
  expect(sheet.sheet.exportData()["growing"]).toMatchObject({
    inputs: "Weather!A10:D15",
    following: ["Weather!E10:F15"],
    fields: expect.arrayContaining([{ field: "rain", column: "D", unit: "in" }]),
  });
});

it("is nothing that other workbooks have", () => {
  const sheet = open({ A1: 1 });
  expect(growingBlockOf(sheet.sheet.model)).toBeUndefined();
  expect(sheet.sheet.exportData()["growing"]).toBeUndefined();
});

describe("the daily demand", () => {
  it("takes a hundred days, each of them worked", () => {
    const sheet = open(dailyDemand.build("us").workbook);
    const { fields } = growingBlockOf(sheet.sheet.model)!;
    const rows = days(100).map(([day, tmax, tmin, rain]) =>
      fields.map(({ field }) => ({ date: day, tmax, tmin, rain })[field as string] ?? null),
    );
    quietly(() => bringIn(sheet.sheet.model, rows as (number | null)[][]));
    const { model, adapter } = sheet.sheet;
    const { zone } = growingBlockOf(model)!.following[0]!;
    expect(zone.bottom - zone.top + 1).toBe(100);
    const use = adapter.formulas("Days").filter(({ formula }) => formula.includes("PLANT_WATER_DEMAND"));
    expect(use).toHaveLength(100);
    expect(use.filter(({ found }) => typeof found === "number" && found > 0)).toHaveLength(100);
  });
});
