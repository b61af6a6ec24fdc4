import { excel } from "../../../src/taskpane/excel";
import { HostFailure, type Addition, type StarterWorkbook } from "../../../src/taskpane/sheetHost";
import { CHECK_COLOURS, LOOKS, NUMBER_FORMATS, SERIES_COLOURS } from "../../../src/workbooks/looks";
import { FORMAT_NAMES, STYLE_NAMES } from "../../../src/workbooks/model";
import { renameSheets } from "../../../src/workbooks/renameSheets";
import { addedTo, cellsOf, modelCells } from "../../rig/addedSheets";
import { everyFeature, TELLING_TEXTS } from "../../rig/everyFeature";
import { FakeExcel } from "../../rig/fakeExcel";
import { setGlobal } from "../../rig/pageGlobals";

const US: StarterWorkbook = {
  id: "everything",
  edition: "us",
  title: "Everything",
  purpose: "",
  workbook: everyFeature,
};
const METRIC: StarterWorkbook = { ...US, edition: "metric" };
const SHEETS = everyFeature.sheets.map(({ name }) => name);

let fake: FakeExcel;

beforeEach(() => {
  fake = new FakeExcel();
  fake.workbook.addSheet("My plan").put("A1", "mine").put("B2", "=A1", "mine");
  fake.workbook.select("My plan", "A1");
  setGlobal("Excel", fake.global);
  setGlobal("Office", fake.office);
});

afterEach(() => {
  setGlobal("Excel", undefined);
  setGlobal("Office", undefined);
  expect(fake.misuses).toEqual([]);
  expect(fake.workbook.misread).toEqual([]);
});

function add(starter = US): Promise<Addition> {
  return excel.addWorkbook!(starter);
}

async function sentenceOf(failing: Promise<unknown>): Promise<string> {
  const error: unknown = await failing.then(
    () => new Error("nothing failed"),
    (thrown: unknown) => thrown,
  );
  if (error instanceof HostFailure) return error.message;
  throw error;
}

const settings = (sheet: string, what: string) =>
  fake.workbook.sheet(sheet).settings.filter((each) => each.what.startsWith(what));

const chart = (title: string) => fake.workbook.sheet("Result").charts.find(({ set }) => set["name"] === title)!;

describe("a starter in a workbook where its names are free", () => {
  test("adds its sheets behind those that are there, in order, and shows the first", async () => {
    expect(await add()).toEqual({ sheets: SHEETS, leftOut: [], isOneUndoStep: true });
    expect(fake.workbook.sheets.map(({ name }) => name)).toEqual(["My plan", ...SHEETS]);
    expect(fake.workbook.activeSheet().name).toBe("About");
  });

  test("writes every value and every formula as the model has it, and nothing else", async () => {
    await add();
    for (const sheet of everyFeature.sheets) {
      expect(cellsOf(fake.workbook.sheet(sheet.name))).toEqual(modelCells(sheet));
    }
  });

  test("writes the cells of a sheet in one block, and each table by its first cell", async () => {
    await add();
    const blocks = fake.calls.filter((call) => call.startsWith('Worksheet.getRange("A1:'));
    expect(blocks.length).toBeGreaterThanOrEqual(SHEETS.length);
    const writes = fake.writes.filter(({ sheet, content }) => sheet === "Work" && content !== "");
    expect(writes[writes.length - 1]).toEqual({
      sheet: "Work",
      address: "A6",
      content: "=CANYARD.PULSE_SCHEDULE(30, Inputs!$B$5, 60, 0.25)",
    });
  });

  test("leaves the cells free that a table fills: its answer spills", async () => {
    const answer = Array.from({ length: 4 }, (_, row) => [row, 0.25, 0.5, 15]);
    fake.workbook.calculate = (formula) => (formula.includes("PULSE_SCHEDULE") ? answer : 0);
    await add();
    const work = fake.workbook.sheet("Work");
    expect([5, 6, 7, 8].map((row) => work.cell(row, 3).value)).toEqual([15, 15, 15, 15]);
  });

  test("keeps texts texts that Excel would take for a time, a date, a number or a formula", async () => {
    await add();
    const about = fake.workbook.sheet("About");
    expect(TELLING_TEXTS.map((_text, index) => about.cell(9 + index, 4).value)).toEqual(TELLING_TEXTS);
    expect(TELLING_TEXTS.every((_text, index) => about.cell(9 + index, 4).isText)).toBe(true);
    expect(about.cell(0, 0)).toMatchObject({ content: "Everything", isText: false });
  });

  test("gives every format, but never the one for text to a formula, which Excel would then show as such", async () => {
    await add();
    const about = fake.workbook.sheet("About");
    expect(FORMAT_NAMES.map((_name, index) => about.setting(`C${10 + index}`, "numberFormat"))).toEqual(
      FORMAT_NAMES.map((name) => NUMBER_FORMATS[name]),
    );
    expect(about.setting("A1", "numberFormat")).toBe("General");
    expect(fake.workbook.sheet("Inputs").setting("B4", "numberFormat")).toBe("@");
    expect(fake.workbook.sheet("Work").setting("A11", "numberFormat")).toBe("General");
    expect(fake.workbook.sheet("Work").setting("B7", "numberFormat")).toBe("hh:mm");
  });

  test("gives every style as direct formats, inputs with a line around each cell", async () => {
    await add();
    const about = fake.workbook.sheet("About");
    STYLE_NAMES.forEach((style, index) => {
      const set = (what: string) => about.setting(`A${10 + index}`, `format.${what}`);
      const { text, fill, bold, italic, size } = LOOKS[style];
      expect([set("font.color"), set("font.bold"), set("font.italic"), set("font.size")]).toEqual([
        `#${text}`,
        bold,
        italic,
        size,
      ]);
      expect(set("fill.color")).toBe(fill && `#${fill}`);
    });
    const inputs = fake.workbook.sheet("Inputs");
    for (const side of ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight", "InsideHorizontal", "InsideVertical"]) {
      expect(inputs.setting("E2:F3", `format.borders.${side}.style`)).toBe("Continuous");
    }
    expect(fake.calls.filter((call) => /\.style/.test(call))).toEqual([]);
  });

  test("converts the widths of columns from characters to points, and wraps what goes on in further lines", async () => {
    await add();
    const about = fake.workbook.sheet("About");
    // Excel's own standard: 8.43 characters are 64 pixels, 64 x 0.75 = 48 points. 100 x 7 + 5 = 705; x 0.75 = 528.75.
    expect(about.setting("B:B", "format.columnWidth")).toBe(48);
    expect(about.setting("A:A", "format.columnWidth")).toBe(528.75);
    expect(about.setting("A3", "format.wrapText")).toBe(true);
    expect(about.setting("A4", "format.wrapText")).toBeUndefined();
  });

  test("freezes rows, columns or both", async () => {
    await add();
    expect(settings("About", "freezePanes")).toMatchObject([{ what: "freezePanes.rows", value: 3 }]);
    expect(settings("Catch test", "freezePanes")).toMatchObject([{ what: "freezePanes.columns", value: 1 }]);
    expect(settings("Inputs", "freezePanes")).toMatchObject([{ what: "freezePanes.at", value: "A1:A2" }]);
    expect(settings("Work", "freezePanes")).toEqual([]);
  });

  test("limits the inputs, with our sentence before and after something else is typed", async () => {
    await add();
    const inputs = fake.workbook.sheet("Inputs");
    const of = (cell: string, what: string) => inputs.setting(cell, `dataValidation.${what}`);
    expect(of("B1", "rule")).toEqual({ list: { inCellDropDown: true, source: "us" } });
    expect(of("B2", "rule")).toEqual({ decimal: { operator: "Between", formula1: 0.5, formula2: 400 } });
    expect(of("B3", "rule")).toEqual({ list: { inCellDropDown: true, source: "stake,drip line,boom" } });
    expect(of("B4", "rule")).toEqual({ list: { inCellDropDown: true, source: "'Catch test'!A2:A4" } });
    expect(of("C6", "rule")).toEqual({ wholeNumber: { operator: "Between", formula1: 1, formula2: 12 } });
    const message = "Supply flow must be a number from 0.5 to 400 gal/min.";
    expect(of("B2", "errorAlert")).toEqual({ showAlert: true, style: "Stop", title: "Not taken", message });
    expect(of("B2", "prompt")).toEqual({ showPrompt: true, title: "What goes here", message });
  });

  test("shortens a sentence that is longer than Excel takes", async () => {
    await add();
    const { message } = fake.workbook.sheet("Inputs").setting("B5", "dataValidation.errorAlert") as { message: string };
    expect(message).toMatch(/^Pulses: a whole number .*…$/);
    expect(message).toHaveLength(225);
  });

  test("colours the checks by what they say", async () => {
    await add();
    const rules = settings("Checks", "conditionalFormats").filter(({ what }) => what.endsWith("formula"));
    expect(rules.map(({ at, value }) => [at, value])).toEqual([
      ["A2", '=OR(A2="OK", A2="All checks OK")'],
      ["A2", '=OR(A2="LOOK", A2="See Checks")'],
      ["D6:D7", '=OR(D6="OK", D6="All checks OK")'],
      ["D6:D7", '=OR(D6="LOOK", D6="See Checks")'],
    ]);
    const fills = settings("Checks", "conditionalFormats").filter(({ what }) => what.endsWith("fill.color"));
    expect(fills.slice(0, 2).map(({ value }) => value)).toEqual(CHECK_COLOURS.map(({ fill }) => `#${fill}`));
  });

  test("names its cells", async () => {
    await add();
    expect(Object.fromEntries(fake.workbook.names)).toEqual({
      units: { cells: "B1", on: "Inputs" },
      supply_flow: { cells: "B2", on: "Inputs" },
      catches: { cells: "A2:B4", on: "Catch test" },
    });
  });

  test.each([
    [US, "Letter"],
    [METRIC, "A4"],
  ])("prints one page wide on the paper of its edition, headings on every page", async (starter, paper) => {
    await add(starter);
    const result = fake.workbook.sheet("Result");
    const of = (what: string) => result.setting("", `pageLayout.${what}`);
    expect([of("paperSize"), of("orientation"), of("zoom")]).toEqual([paper, "Portrait", { horizontalFitToPages: 1 }]);
    expect([of("printTitleRows"), of("printArea")]).toEqual(["$1:$3", "A1:G40"]);
    expect([of("leftFooter"), of("rightFooter")]).toEqual(["&A", "&P of &N"]);
    expect(of("printMargins")).toMatchObject({ unit: "Inches", left: 0.5, right: 0.5 });
    expect(settings("Result", "pageLayout.breaks").map(({ value }) => value)).toEqual(["A19", "A39"]);
    expect(fake.workbook.sheet("About").setting("", "pageLayout.zoom")).toEqual({
      horizontalFitToPages: 1,
      verticalFitToPages: 1,
    });
    expect(fake.workbook.sheet("Inputs").setting("", "pageLayout.orientation")).toBe("Landscape");
    for (const name of SHEETS) expect(fake.workbook.sheet(name).setting("", "pageLayout.paperSize")).toBe(paper);
  });

  test("is one step of the undo, with all that was changed", async () => {
    await add();
    expect(fake.undo).toHaveLength(1);
    const kinds = new Set(fake.undo[0]?.map((change) => ("content" in change ? "cells" : change.what.split(".")[0])));
    expect([...kinds]).toEqual(
      expect.arrayContaining([
        "added",
        "named",
        "cells",
        "numberFormat",
        "format",
        "dataValidation",
        "chart",
        "pageLayout",
      ]),
    );
    expect(fake.calls).toContain('Excel.run({"delayForCellEdit":true,"mergeUndoGroup":true})');
  });

  test("waits for a cell that is being edited", async () => {
    fake.startEditing();
    const adding = add();
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(fake.workbook.sheets).toHaveLength(1);
    fake.endEditing();
    await adding;
    expect(fake.workbook.sheets).toHaveLength(1 + SHEETS.length);
  });
});

describe("its charts", () => {
  test("are of the kind that the model says, titled, named and in their place, in points", async () => {
    await add();
    const all = fake.workbook.sheet("Result").charts;
    expect(all.map(({ type }) => type)).toEqual([
      "ColumnClustered",
      "BarStacked",
      "Line",
      "XYScatter",
      "ColumnStacked",
    ]);
    // 480 x 320 pixels, at 0.75 points a pixel
    expect(chart("Minutes by zone").set).toMatchObject({
      "title.text": "Minutes by zone",
      "categoryAxis.title.text": "can",
      "valueAxis.title.text": "mL",
      "legend.visible": true,
      position: "H2",
      width: 360,
      height: 240,
      altTextDescription: "Upright bars, one a can, with the mean as a line.",
    });
  });

  test("have the model's series and no other, each with its name, values and labels", async () => {
    for (const made of [null, 0, 3]) {
      fake = new FakeExcel();
      fake.workbook.seriesOfNewChart = made;
      fake.workbook.addSheet("My plan");
      fake.workbook.select("My plan", "A1");
      setGlobal("Excel", fake.global);
      setGlobal("Office", fake.office);
      await add();
      expect(chart("Minutes by zone").series).toMatchObject([
        { name: "caught", values: "'Catch test'!B2:B4", labels: "'Catch test'!A2:A4" },
        { name: "mean", values: "Work!A2:A4", labels: "'Catch test'!A2:A4", set: { chartType: "Line" } },
      ]);
      expect(chart("The day").series.map(({ name }) => name)).toEqual(["start", "first", "second"]);
      expect(chart("Course").series).toHaveLength(1);
      expect(chart("Cost by line").series).toMatchObject([{ values: "Work!A7:D7", labels: "Work!A6:D6" }]);
    }
  });

  test("draw what the next series stands on without fill and without a name, and lying bars from the top down", async () => {
    await add();
    const { series, hiddenEntries, set } = chart("The day");
    expect(series.map((each) => each.set)).toEqual([
      { fill: "none", line: "none" },
      { fill: `#${SERIES_COLOURS[0]}` },
      { fill: `#${SERIES_COLOURS[1]}` },
    ]);
    expect(hiddenEntries).toEqual([0]);
    expect(set).toMatchObject({ "categoryAxis.reversePlotOrder": true, "categoryAxis.position": "Maximum" });
    expect(set).toMatchObject({ "categoryAxis.title.visible": false, "valueAxis.title.text": "share" });
  });

  test("draw a line among dots as a line, name their points by text, and need no legend for one series", async () => {
    await add();
    const [dots, target] = chart("Leaching by date").series.map(({ set }) => set);
    expect(dots).toMatchObject({ markerStyle: "Circle", markerBackgroundColor: `#${SERIES_COLOURS[0]}` });
    expect(target).toMatchObject({ chartType: "XYScatterLinesNoMarkers", "line.lineStyle": "Dash" });
    expect(chart("Leaching by date").set).not.toHaveProperty("categoryAxis.categoryType");
    expect(chart("Course").set).toMatchObject({ "categoryAxis.categoryType": "TextAxis", "legend.visible": false });
  });

  test("have no words for screen readers where Excel does not count them as shapes, and it is told", async () => {
    fake.workbook.chartsAreShapes = false;
    expect((await add()).leftOut).toEqual(["the descriptions of the charts for screen readers"]);
    expect(fake.workbook.sheet("Result").charts).toHaveLength(5);
  });
});

describe("a starter in a workbook that has its names already", () => {
  beforeEach(() => {
    fake.workbook.addSheet("inputs").put("B2", 7).putText("A1", "=not a formula");
    fake.workbook.names.set("Units", { cells: "B2", on: "inputs" });
    fake.workbook.names.set("rate", { value: 0.12 });
    fake.workbook.tables.push("catches");
  });

  test("touches no cell, no format, no name of what is there", async () => {
    const before = ["My plan", "inputs"].map((name) => fake.workbook.sheet(name).state);
    const names = new Map(fake.workbook.names);
    await add();
    expect(["My plan", "inputs"].map((name) => fake.workbook.sheet(name).state)).toEqual(before);
    for (const [name, thing] of names) expect(fake.workbook.names.get(name)).toEqual(thing);
    const own = new Set(SHEETS.map((name) => `${name} 2`));
    expect(fake.undo.flat().filter(({ sheet }) => sheet !== "" && !own.has(sheet))).toEqual([]);
  });

  test("has one number on all its sheets, and one on each name that was taken; formulas follow", async () => {
    const { sheets } = await add();
    expect(sheets).toEqual(SHEETS.map((name) => `${name} 2`));
    expect([...fake.workbook.names.keys()]).toEqual(["Units", "rate", "units_2", "supply_flow", "catches_2"]);
    const renamed = renameSheets(everyFeature, {
      sheets: Object.fromEntries(SHEETS.map((name) => [name, `${name} 2`])),
      names: { units: "units_2", catches: "catches_2" },
    });
    for (const sheet of renamed.sheets) {
      expect(cellsOf(fake.workbook.sheet(sheet.name))).toEqual(modelCells(sheet));
    }
    expect(fake.workbook.sheet("Work 2").cell(1, 0).content).toBe("='Catch test 2'!B2 / SUM('Catch test 2'!$B$2:$B$4)");
    const inputs = fake.workbook.sheet("Inputs 2");
    expect(inputs.setting("B4", "dataValidation.rule")).toMatchObject({ list: { source: "'Catch test 2'!A2:A4" } });
    expect(fake.workbook.sheet("Result 2").charts[0]?.series[0]?.values).toBe("'Catch test 2'!B2:B4");
  });

  test("can be added twice, each set of sheets with its own names", async () => {
    await add();
    const { sheets } = await add();
    expect(sheets).toEqual(SHEETS.map((name) => `${name} 3`));
    expect(fake.workbook.names.get("units_3")).toEqual({ cells: "B1", on: "Inputs 3" });
    expect(fake.workbook.names.get("supply_flow_2")).toEqual({ cells: "B2", on: "Inputs 3" });
    expect(fake.undo).toHaveLength(2);
  });
});

describe("an older Excel", () => {
  test.each([
    ["1.13", ["the descriptions of the charts for screen readers"]],
    ["1.8", ["the set-up for printing", "the descriptions of the charts for screen readers"]],
    [
      "1.7",
      [
        "the limits on what the inputs take",
        "the set-up for printing",
        "the descriptions of the charts for screen readers",
      ],
    ],
    [
      "1.6",
      [
        "headings that stay in view",
        "the charts",
        "the limits on what the inputs take",
        "the set-up for printing",
        "the descriptions of the charts for screen readers",
      ],
    ],
  ])("of version %s gets what it can, and what it cannot is told", async (version, leftOut) => {
    fake.version = version;
    const addition = await add();
    expect(addition.leftOut).toEqual(leftOut);
    expect(addition.isOneUndoStep).toBe(false);
    for (const sheet of everyFeature.sheets) {
      expect(cellsOf(fake.workbook.sheet(sheet.name))).toEqual(modelCells(sheet));
    }
  });

  test("of version 1.5 has no colours of checks either", async () => {
    fake.version = "1.5";
    expect((await add()).leftOut[0]).toBe("the colours of the checks, which say OK or LOOK all the same");
  });

  test("before 1.4 is told that it is too old, and nothing is added", async () => {
    fake.version = "1.3";
    expect(await sentenceOf(add())).toMatch(/^This version of Excel is too old/);
    expect(fake.calls).toEqual([]);
  });

  test("that knows no groups of undo gets the sheets all the same, and it is told", async () => {
    fake.undoSupport = "refuses";
    expect(await add()).toEqual({ sheets: SHEETS, leftOut: [], isOneUndoStep: false });
    expect(addedTo(fake, "My plan")).toEqual(SHEETS);
    expect([...fake.workbook.names.keys()]).toEqual(["units", "supply_flow", "catches"]);
  });

  test("that refuses one step of a group late takes away the first attempt before the second", async () => {
    fake.withoutUndo.push("pageLayout.zoom");
    expect(await add()).toEqual({ sheets: SHEETS, leftOut: [], isOneUndoStep: false });
    expect(addedTo(fake, "My plan")).toEqual(SHEETS);
    expect(fake.workbook.sheet("Result").charts).toHaveLength(5);
  });
});

describe("a failure", () => {
  const TAKEN_AWAY = "The sheets that were added have been taken away again";

  test.each([
    ["at the first sync", 0],
    ["at the first sheet", 1],
    ["at the fourth sheet", 4],
    ["at the names", 1 + SHEETS.length],
    ["at the cells", 2 + SHEETS.length],
    ["when charts are added", 3 + SHEETS.length],
    ["when charts are filled", 4 + SHEETS.length],
    ["at the very end", 8 + SHEETS.length],
  ])("%s leaves nothing behind, and says so", async (_when, syncs) => {
    const before = fake.workbook.sheet("My plan").state;
    fake.failures.push(...Array.from({ length: syncs }, () => ""), "GeneralException");
    const sentence = await sentenceOf(add());
    expect(sentence).toMatch(/^Excel did not take that/);
    expect(sentence).toContain(syncs < 2 ? "Nothing was added." : TAKEN_AWAY);
    expect(fake.failures).toEqual([]);
    expect(addedTo(fake, "My plan")).toEqual([]);
    expect([...fake.workbook.names.keys()]).toEqual([]);
    expect(fake.workbook.sheet("My plan").state).toEqual(before);
  });

  test("takes away only what it has added itself: a sheet of the same name that came in between stays", async () => {
    const come = fake.workbook.newSheet.bind(fake.workbook);
    fake.workbook.newSheet = (name) => {
      if (name === "Work" && fake.workbook.find("Work") === null) come("Work").put("A1", "a colleague's");
      return come(name);
    };
    expect(await sentenceOf(add())).toBe(
      "Something in this workbook has one of the names that the new sheets need. " +
        "The sheets that were added have been taken away again; Excel's list of steps to undo begins anew.",
    );
    expect(addedTo(fake, "My plan")).toEqual(["Work"]);
    expect(fake.workbook.sheet("Work").cell(0, 0).value).toBe("a colleague's");
  });

  test("that cannot be cleared up names the sheets that stay behind", async () => {
    fake.failures.push("", "", "", "GeneralException", "GeneralException");
    expect(await sentenceOf(add())).toMatch(/could not be taken away again: delete them by hand\. About, Inputs\.$/);
  });

  test("of a protected workbook says what to unprotect", async () => {
    fake.workbook.isProtected = true;
    expect(await sentenceOf(add())).toBe(
      "This workbook's structure is protected. Unprotect it, then try again. Nothing was added.",
    );
  });

  test("of the set-up for printing costs that alone, as without a printer", async () => {
    fake.refused.set("pageLayout", "GeneralException");
    expect(await add()).toEqual({ sheets: SHEETS, leftOut: ["the set-up for printing"], isOneUndoStep: true });
    expect(fake.workbook.activeSheet().name).toBe("About");
  });

  test("of a chart takes everything away", async () => {
    fake.refused.set("chart.title", "InvalidArgument");
    expect(await sentenceOf(add())).toContain(TAKEN_AWAY);
    expect(addedTo(fake, "My plan")).toEqual([]);
  });
});
