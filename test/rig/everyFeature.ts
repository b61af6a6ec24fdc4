/** A workbook that uses everything the model has, made for tests only. */
import { FORMAT_NAMES, STYLE_NAMES, type Cell, type Workbook } from "../../src/workbooks/model";

/** Texts that a spreadsheet would take for something else if they were typed bare. */
export const TELLING_TEXTS = ["1:100", "3/4", "5-10", "Mar 5", "TRUE", "=not a formula", "-", "+1", "@home", "15%"];

const styled = Object.fromEntries(
  STYLE_NAMES.map((style, index): [string, Cell] => [`A${10 + index}`, { value: `a ${style}`, style }]),
);
const formatted = Object.fromEntries(
  FORMAT_NAMES.map((format, index): [string, Cell] => [`C${10 + index}`, { value: 0.5, format }]),
);
const telling = Object.fromEntries(TELLING_TEXTS.map((value, index): [string, Cell] => [`E${10 + index}`, { value }]));

const POSITION = { cell: "H2", width: 480, height: 320 };

export const everyFeature: Workbook = {
  name: "Everything",
  namedRanges: { units: "Inputs!$B$1", supply_flow: "Inputs!$B$2", catches: "'Catch test'!$A$2:$B$4" },
  growing: {
    fields: [{ field: "date", column: "A", unit: "date" }],
    inputs: "'Catch test'!A2:B4",
    following: ["Work!A2:A4"],
  },
  sheets: [
    {
      name: "About",
      cells: {
        A1: { value: "Everything", style: "title" },
        A2: { formula: "=Checks!$A$2", style: "check" },
        A3: { value: "A long line that goes on in further lines of its cell.", wraps: true },
        A4: { value: true },
        A5: { words: "twice the flow", plainOf: "B2", style: "note", wraps: true },
        A6: { value: "twice the flow; plain: =2*Inputs!$B$2", style: "note" },
        ...styled,
        ...formatted,
        ...telling,
      },
      columnWidths: { A: 100, B: 8.43 },
      frozen: { rows: 3 },
      print: { onePage: true },
    },
    {
      name: "Inputs",
      cells: {
        A1: { value: "Units" },
        B1: { value: "us", style: "locked" },
        A2: { value: "Supply flow" },
        B2: { value: 40, style: "input", format: "decimals1" },
        A3: { value: "System" },
        B3: { value: "stake", style: "input" },
        A4: { value: "Catch with the least" },
        B4: { style: "input", format: "text" },
        A5: { value: "Pulses" },
        B5: { value: 3, style: "input" },
        C5: { value: 4, style: "input" },
        B6: { value: 3, style: "input" },
        C6: { value: 4, style: "input" },
        E2: { value: 1, style: "input" },
        F2: { value: 2, style: "input" },
        E3: { value: 3, style: "input" },
        F3: { value: 4, style: "input" },
      },
      validations: [
        { range: "B1", words: ["us"], message: "The edition fixes the units." },
        { range: "B2", least: 0.5, most: 400, message: "Supply flow must be a number from 0.5 to 400 gal/min." },
        {
          range: "B3",
          words: ["stake", "drip line", "boom"],
          message: "System must be one of: stake, drip line, boom.",
        },
        { range: "B4", list: "'Catch test'!$A$2:$A$4", message: "It must be one of the cans." },
        { range: "B5:C6", least: 1, most: 12, whole: true, message: `Pulses: ${"a whole number ".repeat(20)}.` },
      ],
      frozen: { rows: 2, columns: 1 },
      print: { landscape: true },
    },
    {
      name: "Catch test",
      cells: {
        A1: { value: "can", style: "heading" },
        B1: { value: "mL", style: "heading" },
        A2: { value: "north", style: "input" },
        B2: { value: 58, style: "input" },
        A3: { value: "middle", style: "input" },
        B3: { value: 63, style: "input" },
        A4: { value: "south", style: "input" },
        B4: { value: 70, style: "input" },
      },
      frozen: { columns: 1 },
    },
    {
      name: "Work",
      cells: {
        A1: { value: "share", style: "heading" },
        A2: { formula: "='Catch test'!B2 / SUM('Catch test'!$B$2:$B$4)", format: "percent" },
        A3: { formula: "='Catch test'!B3 / SUM('Catch test'!$B$2:$B$4)", format: "percent" },
        A4: { formula: "='Catch test'!B4 / SUM('Catch test'!$B$2:$B$4)", format: "percent" },
        A6: { table: "=CANYARD.PULSE_SCHEDULE(30, Inputs!$B$5, 60, 0.25)", rows: 4, columns: 4, style: "heading" },
        B6: { style: "heading" },
        B7: { format: "time" },
        C7: { format: "time" },
        D7: { format: "decimals1" },
        A11: { formula: '=CANYARD.RUN_MINUTES(supply_flow, SUM(catches), 1) & " units of " & units', format: "text" },
        A12: { formula: "=CANYARD.ROUGHLY(units, supply_flow)", plain: "=supply_flow * Inputs!$B$2" },
      },
    },
    {
      name: "Result",
      cells: { A1: { formula: '=IF(Work!A2 > 0.3, "Inputs! units: \'Catch test\'!", "")', style: "result" } },
      charts: [
        {
          type: "columns",
          title: "Minutes by zone",
          description: "Upright bars, one a can, with the mean as a line.",
          labels: "'Catch test'!$A$2:$A$4",
          series: [
            { name: "caught", values: "'Catch test'!$B$2:$B$4" },
            { name: "mean", values: "Work!$A$2:$A$4", as: "line" },
          ],
          axisTitles: { labels: "can", values: "mL" },
          position: POSITION,
        },
        {
          type: "bars",
          title: "The day",
          description: "A strip for each zone, from its start.",
          stacked: true,
          topDown: true,
          labels: "'Catch test'!$A$2:$A$4",
          series: [
            { name: "start", values: "Work!$A$2:$A$4", unseen: true },
            { name: "first", values: "Work!$A$2:$A$4" },
            { name: "second", values: "Work!$A$2:$A$4" },
          ],
          axisTitles: { values: "share" },
          position: { ...POSITION, cell: "H20" },
        },
        {
          type: "lines",
          title: "Course",
          description: "One line.",
          labels: "'Catch test'!$A$2:$A$4",
          series: [{ name: "share", values: "Work!$A$2:$A$4" }],
          position: { ...POSITION, cell: "H40" },
        },
        {
          type: "points",
          title: "Leaching by date",
          description: "Dots, and the target as a line.",
          labels: "'Catch test'!$B$2:$B$4",
          series: [
            { name: "share", values: "Work!$A$2:$A$4" },
            { name: "target", values: "Work!$A$2:$A$4", as: "line" },
          ],
          position: { ...POSITION, cell: "H60" },
        },
        {
          type: "columns",
          title: "Cost by line",
          description: "Stacked bars.",
          stacked: true,
          labels: "Work!$A$6:$D$6",
          series: [{ name: "row", values: "Work!$A$7:$D$7" }],
          position: { ...POSITION, cell: "H80" },
        },
      ],
      print: { repeatedRows: [1, 3], area: "A1:G40", breaksBefore: [19, 39] },
    },
    {
      name: "Checks",
      cells: {
        A2: { formula: '=IF(COUNTIF(D6:D7, "OK")=ROWS(D6:D7), "All checks OK", "See Checks")', style: "check" },
        D6: { formula: '=IF(Inputs!$B$2 > 0, "OK", "LOOK")', style: "check" },
        D7: { formula: '=IF(units = "us", "OK", "LOOK")', style: "check" },
      },
    },
  ],
};
