import { freeNames } from "../../src/workbooks/freeNames";
import { follower, renameSheets } from "../../src/workbooks/renameSheets";
import type { Workbook } from "../../src/workbooks/model";
import { deepFreeze } from "../rig/deepFreeze";
import { everyFeature } from "../rig/everyFeature";

describe("a formula follows a sheet and a name to their new names", () => {
  const follow = follower({
    sheets: { Inputs: "Inputs 2", "Catch test": "Catch test 2", "O'Brien": "O'Brien 2" },
    names: { units: "units_2", rate_water: "rate_water_2" },
  });

  test.each([
    ["=Inputs!$D$4 * 2", "='Inputs 2'!$D$4 * 2"],
    ["='Inputs'!D4", "='Inputs 2'!D4"],
    ["=inputs!D4", "='Inputs 2'!D4"],
    ["=SUM('Catch test'!$B$2:$B$4)", "=SUM('Catch test 2'!$B$2:$B$4)"],
    ["='O''Brien'!A1", "='O''Brien 2'!A1"],
    ["=CANYARD.RUN_MINUTES(1, 2, units)", "=CANYARD.RUN_MINUTES(1, 2, units_2)"],
    ["=UNITS & rate_water", "=units_2 & rate_water_2"],
    ["=-units", "=-units_2"],
    ["Inputs!$A$1:$B$9", "'Inputs 2'!$A$1:$B$9"],
  ])("%s becomes %s", (before, after) => {
    expect(follow(before)).toBe(after);
  });

  test.each([
    ['="Inputs! and units" & "say ""units"""', "a text"],
    ["=Inputs(1)", "a function of the same name"],
    ["=MyInputs!A1 + Inputs2!A1", "a longer name of a sheet"],
    ["='My Inputs'!A1", "a longer name in apostrophes"],
    ["=units.of + my_units + units2", "a longer name"],
    ["=Work!D4 + D4", "other sheets and cells"],
    ["=CANYARD.units(1)", "a function of ours"],
  ])("%s stays as it is: %s", (formula) => {
    expect(follow(formula)).toBe(formula);
  });
});

describe("a whole workbook under new names", () => {
  const before = JSON.stringify(everyFeature);
  const numbered = Object.fromEntries(everyFeature.sheets.map(({ name }) => [name, `${name} 2`]));
  const renamed = renameSheets(deepFreeze(structuredClone(everyFeature)), {
    sheets: numbered,
    names: { units: "units_2", supply_flow: "supply_flow_2", catches: "catches_2" },
  });

  test("has all its sheets and named cells under the new names", () => {
    expect(renamed.sheets.map(({ name }) => name)).toEqual(Object.values(numbered));
    expect(renamed.namedRanges).toEqual({
      units_2: "'Inputs 2'!$B$1",
      supply_flow_2: "'Inputs 2'!$B$2",
      catches_2: "'Catch test 2'!$A$2:$B$4",
    });
  });

  test("no reference to an old name is left outside of texts", () => {
    const text = JSON.stringify(renamed).replaceAll("Inputs! units: 'Catch test'!", "");
    for (const { name } of everyFeature.sheets) {
      expect(text).not.toContain(`${name}!`);
      expect(text).not.toContain(`${name}'!`);
    }
    expect(text).not.toMatch(/[^\w](?:supply_flow|catches)[^\w]/);
  });

  test("formulas, tables, plain formulas and the words that end with one follow", () => {
    const cellsOf = (name: string) => renamed.sheets.find((sheet) => sheet.name === name)?.cells ?? {};
    expect(cellsOf("Work 2")["A6"]).toMatchObject({
      table: "=CANYARD.PULSE_SCHEDULE(30, 'Inputs 2'!$B$5, 60, 0.25)",
      rows: 4,
      columns: 4,
    });
    expect(cellsOf("Work 2")["A12"]).toMatchObject({
      formula: "=CANYARD.ROUGHLY(units_2, supply_flow_2)",
      plain: "=supply_flow_2 * 'Inputs 2'!$B$2",
    });
    expect(cellsOf("About 2")["A6"]).toMatchObject({ value: "twice the flow; plain: =2*'Inputs 2'!$B$2" });
    expect(cellsOf("Checks 2")["A2"]).toEqual(everyFeature.sheets.find(({ name }) => name === "Checks")?.cells["A2"]);
  });

  test("lists, charts and growing blocks follow", () => {
    const text = JSON.stringify([
      renamed.sheets.flatMap(({ validations = [], charts = [] }) => [...validations, ...charts]),
      renamed.growing,
    ]);
    expect(text).toContain("'Catch test 2'!$A$2:$A$4");
    expect(renamed.growing).toMatchObject({ inputs: "'Catch test 2'!A2:B4", following: ["'Work 2'!A2:A4"] });
    expect(renamed.sheets[4]?.charts?.[0]).toMatchObject({
      labels: "'Catch test 2'!$A$2:$A$4",
      series: [{ values: "'Catch test 2'!$B$2:$B$4" }, { values: "'Work 2'!$A$2:$A$4" }],
    });
  });

  test("with no new names is what it was, and the given one is never changed", () => {
    expect(renameSheets(everyFeature, { sheets: {}, names: {} })).toEqual(everyFeature);
    expect(JSON.stringify(everyFeature)).toBe(before);
  });
});

describe("names that are free", () => {
  const workbook = (sheets: string[], names: string[] = []): Workbook => ({
    name: "",
    sheets: sheets.map((name) => ({ name, cells: {} })),
    namedRanges: Object.fromEntries(names.map((name) => [name, `${sheets[0]}!$A$1`])),
  });

  test("are the own ones in a workbook without them", () => {
    const taken = { sheets: ["Sheet1"], names: ["price"] };
    expect(freeNames(workbook(["About", "Inputs"], ["units"]), taken)).toEqual({ sheets: {}, names: {} });
  });

  test("have one number for all the sheets, where one of them is taken in whatever letters", () => {
    const taken = { sheets: ["Sheet1", "INPUTS"], names: [] };
    expect(freeNames(workbook(["About", "Inputs"]), taken).sheets).toEqual({ About: "About 2", Inputs: "Inputs 2" });
  });

  test("pass over a number of which one is taken", () => {
    const taken = { sheets: ["About", "Inputs", "About 2", "Inputs 2", "inputs 3"], names: [] };
    expect(freeNames(workbook(["About", "Inputs"]), taken).sheets).toEqual({ About: "About 4", Inputs: "Inputs 4" });
  });

  test("pass over a number that another sheet of the same workbook has", () => {
    const taken = { sheets: ["Zone"], names: [] };
    expect(freeNames(workbook(["Zone", "Zone 2"]), taken).sheets).toEqual({ Zone: "Zone 3", "Zone 2": "Zone 2 3" });
  });

  test("of sheets are never longer than 31 letters", () => {
    const long = "A name of thirty-one letters 31";
    const { sheets } = freeNames(workbook([long]), { sheets: [long], names: [] });
    expect(sheets[long]).toBe("A name of thirty-one letters 2");
    expect(long).toHaveLength(31);
  });

  test("of cells get a number only where they are taken, and none that is taken or their own", () => {
    const taken = { sheets: [], names: ["UNITS", "units_2", "wage"] };
    const { names } = freeNames(workbook(["About"], ["units", "units_3", "supply_flow", "wage"]), taken);
    expect(names).toEqual({ units: "units_4", wage: "wage_2" });
  });
});
