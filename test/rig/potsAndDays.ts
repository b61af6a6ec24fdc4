/**
 * A small workbook for the files: each kind of cell, style and format, validation, chart and print set-up. Worked by hand:
 *   pot: pi x 10.5 / 12 x (14^2 + 14 x 12 + 12^2) = 1396.4 in3, / 231 = 6.0450 gal; two halves of it are the whole
 *   1000 at 250 a year is paid back in 4 years
 *   balance of four days with room for 2.0: 0.5, 0.9, 0.9 + 0.5 - 1.0 = 0.4, 1.0; "irrigate" at 0.4 x 2.0 = 0.8 and more
 */
import { columnLetters } from "../../src/workbooks/kit";
import { FORMAT_NAMES, STYLE_NAMES, type Cell, type Chart, type Sheet, type Workbook } from "../../src/workbooks/model";

const DAYS: readonly (readonly [name: string, et: number, rain: number])[] = [
  ["Mon", 0.5, 0],
  ["Tue", 0.4, 0],
  ["Wed", 0.5, 1],
  ["Thu", 0.6, 0],
];

function days(): Record<string, Cell> {
  return Object.fromEntries(
    DAYS.flatMap(([name, et, rain], at): [string, Cell][] => [
      [`A${12 + at}`, { value: name, style: "input" }],
      [`B${12 + at}`, { value: et, style: "input", format: "decimals2" }],
      [`C${12 + at}`, { value: rain, style: "input", format: "decimals2" }],
    ]),
  );
}

const inputs: Sheet = {
  name: "Inputs & more",
  columnWidths: { A: 30, B: 12, C: 12, D: 14, E: 60 },
  frozen: { rows: 3, columns: 1 },
  print: { landscape: true, repeatedRows: [1, 3], area: "A1:E17" },
  validations: [
    { range: "B5", least: 1, most: 60, message: "Top diameter must be a number from 1 to 60 in." },
    {
      range: "B6",
      least: 1,
      most: 60,
      whole: true,
      message: "Bottom diameter must be a whole number from 1 to 60 in.",
    },
    { range: "B8", words: ["us"], message: "This workbook is in US units." },
    { range: "B9", list: "Lists!$A$2:$A$3", message: "Answer with a word of the sheet Lists." },
    { range: "B12:C15", least: 0, most: 5, message: "ET and rain are numbers from 0 to 5 in." },
  ],
  cells: {
    A1: { value: "Every feature", style: "title" },
    A2: { formula: "=Work!A2", style: "check" },
    A3: { value: 'Not "in earnest" <at all> & never', style: "caution" },
    A5: { value: "Top diameter" },
    B5: { value: 14, style: "input", format: "decimals1" },
    A6: { value: "Bottom diameter" },
    B6: { value: 12, style: "input", format: "decimals0" },
    A7: { value: "Height" },
    B7: { value: 10.5, style: "input", format: "decimals2" },
    A8: { value: "Units" },
    B8: { value: "us", style: "locked" },
    A9: { value: "Show" },
    B9: { value: "yes", style: "input" },
    C9: { style: "input" },
    A10: { value: "A day's water" },
    ...days(),
  },
};

const work: Sheet = {
  name: "Work",
  columnWidths: { A: 34, B: 14, C: 14, D: 14, E: 14, F: 40 },
  cells: {
    A1: { value: "Work", style: "title" },
    A2: { formula: '=IF(COUNTIF(B9:B10, "OK")=ROWS(B9:B10), "All checks OK", "See Checks")', style: "check" },
    A5: { value: "Volume" },
    B5: {
      formula: "=CANYARD.CONTAINER_VOLUME('Inputs & more'!B5, 'Inputs & more'!B6, 'Inputs & more'!B7, units)",
      style: "result",
      format: "decimals3",
    },
    C5: { words: "a cone without its point", plainOf: "B5", style: "note", wraps: true },
    A6: { value: "Twice the half of it" },
    B6: { formula: "=2 * CANYARD.WATER_HELD(B5, 1 - 0.5)", style: "result" },
    C6: { words: "volume x capacity, twice over", plainOf: "B6", style: "note" },
    A7: { value: "Whether that is usual" },
    B7: { formula: '=CANYARD.CHECK_RANGE(B5, "WATER_HELD", "volume", units)' },
    C7: { words: "a judgement in words", plainOf: "B7", style: "note" },
    A8: { value: "Is it more than six" },
    B8: { formula: "=B5 > 6" },
    A9: { value: "First check" },
    B9: { formula: '=IF(B8, "OK", "LOOK")', style: "check" },
    A10: { value: "Second check" },
    B10: { formula: '=IF(B13 = "", "OK", "LOOK")', style: "check" },
    A12: { value: "A row with a name, and one without", style: "heading" },
    B13: { formula: '=IF(A13 = "", "", CANYARD.WATER_HELD(A13, 0.5))' },
    A14: { value: 3, style: "input" },
    B14: { formula: '=IF(A14 = "", "", CANYARD.WATER_HELD(A14, 0.5))' },
    A16: { value: "Balance of the days", style: "heading" },
    A17: {
      table: "=CANYARD.WATER_BALANCE('Inputs & more'!B12:B15, 'Inputs & more'!C12:C15, 'Inputs & more'!D12:D15, 2)",
      rows: 6,
      columns: 5,
      style: "heading",
      plain: [
        ["", "", "", "", ""],
        ["", "='Inputs & more'!B12 - 'Inputs & more'!C12"],
      ],
    },
    ...Object.fromEntries(["B17", "C17", "D17", "E17"].map((at) => [at, { style: "heading" } as const])),
    ...Object.fromEntries([18, 19, 20, 21].map((row) => [`B${row}`, { format: "decimals2" } as const])),
    A24: { value: "Start and length of two zones" },
    ...strip(),
    A30: { value: "Money" },
    B30: { formula: "=CANYARD.PAYBACK_YEARS(1000, 250)", format: "decimals1", style: "total" },
    ...looks(),
  },
};

function strip(): Record<string, Cell> {
  const zones: readonly (readonly [string, number, number])[] = [
    ["North", 0.25, 0.05],
    ["South", 0.3, 0.1],
  ];
  return Object.fromEntries(
    zones.flatMap(([zone, start, length], at): [string, Cell][] => [
      [`A${25 + at}`, { value: zone }],
      [`B${25 + at}`, { value: start, format: "time" }],
      [`C${25 + at}`, { value: length, format: "time" }],
    ]),
  );
}

function looks(): Record<string, Cell> {
  const styles = STYLE_NAMES.map((style, at): [string, Cell] => [
    `${columnLetters(at + 1)}33`,
    { value: style, style },
  ]);
  const formats = FORMAT_NAMES.map((format, at): [string, Cell] => [
    `${columnLetters(at + 1)}34`,
    { value: format === "text" ? "007" : 0.75, format },
  ]);
  return Object.fromEntries([...styles, ...formats]);
}

const position = (at: number) => ({ cell: `A${3 + at * 18}`, width: 460, height: 320 });
const labels = "'Inputs & more'!A12:A15";
const et = { name: "water used", values: "'Inputs & more'!$B$12:$B$15" };
const rain = { name: "rain & more", values: "'Inputs & more'!C12:C15" };
const deficit = { name: "deficit", values: "Work!B18:B21" };

const CHARTS: readonly Chart[] = [
  {
    type: "columns",
    title: "Water used, with the deficit",
    description: "Columns of water used and of rain by day, a line of the deficit.",
    labels,
    series: [et, rain, { ...deficit, as: "line" }],
    axisTitles: { labels: "day", values: "inches" },
    position: position(0),
  },
  {
    type: "columns",
    stacked: true,
    title: "Both stacked",
    description: "Two stacked columns for each day.",
    labels,
    series: [et, rain],
    position: position(1),
  },
  {
    type: "bars",
    stacked: true,
    topDown: true,
    title: "When each zone runs",
    description: "A lying bar for each zone from its start to its end, the first zone on top.",
    labels: "Work!A25:A26",
    series: [
      { name: "start", values: "Work!B25:B26", unseen: true },
      { name: "runs", values: "Work!C25:C26" },
    ],
    axisTitles: { values: "time of day" },
    position: position(2),
  },
  {
    type: "bars",
    title: "Lying bars",
    description: "Two lying bars for each day.",
    labels,
    series: [et, rain],
    position: position(3),
  },
  {
    type: "lines",
    title: "Lines over days",
    description: "Water used, rain and deficit as lines over the days.",
    labels,
    series: [et, rain, deficit],
    axisTitles: { labels: "day", values: "inches" },
    position: position(4),
  },
  {
    type: "points",
    title: "Deficit by water used",
    description: "Points of deficit over water used, and a line of the rain.",
    labels: "'Inputs & more'!B12:B15",
    series: [deficit, { ...rain, as: "line" }],
    axisTitles: { labels: "water used, in", values: "deficit, in" },
    position: position(5),
  },
];

export const potsAndDays: Workbook = {
  name: "Pots and days",
  namedRanges: { units: "'Inputs & more'!$B$8", days: "'Inputs & more'!$A$12:$A$15" },
  sheets: [
    inputs,
    work,
    { name: "Charts", cells: { A1: { value: "Charts", style: "title" } }, charts: CHARTS },
    { name: "Lists", cells: { A1: { value: "Words", style: "heading" }, A2: { value: "yes" }, A3: { value: "no" } } },
  ],
};
