/**
 * The opening workbook: one summer day of Yard B at the invented nursery Tern Hollow, from the pot to the pulses.
 * All figures are invented; the day is worked by hand in the tests.
 */
import type { Cell, Sheet, Workbook } from "./model";

const CAUTION = "Planning estimate. Check with a bucket, a scale and a meter before relying on it.";

/** Monday, 6 July 2026, as a serial number. */
const MONDAY = 46_209;
const WEEK: readonly (readonly [tmax: number, tmin: number])[] = [
  [88, 66],
  [91, 67],
  [93, 69],
  [92, 70],
  [86, 67],
  [84, 64],
  [89, 66],
];
const CATCHES: readonly (readonly number[])[] = [
  [63, 66, 61, 58],
  [64, 67, 62, 60],
  [65, 59, 68, 63],
  [55, 64, 66, 67],
];

const HEADING: Cell = { style: "heading" };
const MOST_PULSES_SHOWN = 12;
const FIRST_ROW = 6;
const COLUMNS = ["A", "B", "C", "D", "E", "F"] as const;

type Cells = Record<string, Cell>;

/** One line of a block: what, unit, the mark of an input, the number, and how it is worked in plain words. */
interface Line {
  readonly label: string;
  readonly unit?: string;
  readonly cell: Cell;
  readonly how?: string;
}

function heading(row: number, text: string): Cells {
  const style = "heading";
  return {
    [`A${row}`]: { value: text, style },
    [`B${row}`]: { value: "unit", style },
    [`C${row}`]: { value: "", style },
    [`D${row}`]: { value: "value", style },
    [`E${row}`]: { value: "how it is worked", style },
  };
}

function line(row: number, { label, unit = "", cell, how = "" }: Line): Cells {
  return {
    [`A${row}`]: { value: label },
    [`B${row}`]: { value: unit },
    ...(cell.style === "input" ? { [`C${row}`]: { value: "input", style: "note" as const } } : {}),
    [`D${row}`]: cell,
    [`E${row}`]: { value: how, style: "note" },
  };
}

function block(first: number, title: string, lines: readonly Line[]): Cells {
  return Object.assign(heading(first, title), ...lines.map((each, index) => line(first + 1 + index, each))) as Cells;
}

const input = (value: number, format: Cell["format"] = "decimals2"): Cell => ({ value, style: "input", format });
const result = (formula: string, format: Cell["format"] = "decimals2"): Cell => ({ formula, style: "result", format });

const plan: Sheet = {
  name: "Plan",
  columnWidths: { A: 34, B: 9, C: 6, D: 11, E: 52 },
  frozen: { rows: 3 },
  cells: {
    A1: { value: "Tern Hollow, Yard B: how long to run today", style: "title" },
    A2: { value: `Change the boxed cells marked "input"; everything else follows. ${CAUTION}`, style: "note" },
    A3: { formula: '=IF(COUNTIF(D46:D50,"OK")=5,"All checks OK","See the checks below")', style: "check" },
    B3: {
      formula:
        '="Run " & TEXT(D27, "0.0") & " minutes in " & D28 & " pulses from " & TEXT(D30, "hh:mm") & "; the table is on the sheet Pulses"',
      style: "result",
    },

    ...block(5, "Pot, a #7 measured inside", [
      {
        label: "Units of all numbers",
        cell: { value: "us", style: "result" },
        how: "The word that the functions are told; it converts nothing.",
      },
      { label: "Top diameter at the fill line", unit: "in", cell: input(14) },
      { label: "Bottom diameter", unit: "in", cell: input(12) },
      { label: "Height to the fill line", unit: "in", cell: input(10.5) },
      {
        label: "Volume",
        unit: "gal",
        cell: result("=CANYARD.CONTAINER_VOLUME(D7, D8, D9, D6)"),
        how: "pi x height x (T2 + T x B + B2) / 12, then / 231",
      },
      { label: "Container capacity", unit: "fraction", cell: input(0.5) },
      {
        label: "Water held after drainage",
        unit: "gal",
        cell: result("=CANYARD.WATER_HELD(D10, D11)"),
        how: "volume x capacity",
      },
    ]),

    ...block(14, "What a plant uses", [
      {
        label: "Highest reference ET of the week",
        unit: "in/day",
        cell: result("=MAX(Weather!D6:D12)", "decimals3"),
        how: "the largest of the seven days on the sheet Weather",
      },
      { label: "Crop coefficient", unit: "factor", cell: input(1.1) },
      { label: "Area per plant", unit: "ft2", cell: input(3.5) },
      {
        label: "Net water for one plant",
        unit: "gal",
        cell: result("=CANYARD.PLANT_WATER_DEMAND(D15, D16, D17, D6)", "decimals3"),
        how: "ET x crop coefficient x area x 0.6234",
      },
      {
        label: "Part of the water held",
        unit: "%",
        cell: result("=D18/D12", "percent"),
        how: "net water / water held; near 100 % asks for two waterings a day",
      },
    ]),

    ...block(21, "What to give", [
      {
        label: "Uniformity of the emitters",
        unit: "fraction",
        cell: result("=CANYARD.DU_LOW_QUARTER('Catch test'!A6:D9)", "decimals3"),
        how: "mean of the lowest quarter / mean of all, sheet Catch test",
      },
      { label: "Leaching fraction wanted", unit: "fraction", cell: input(0.15) },
      {
        label: "Gross water for one plant",
        unit: "gal",
        cell: result("=CANYARD.GROSS_WATER(D18, D23, D22)", "decimals3"),
        how: "net / the smaller of 1 - leaching fraction and uniformity",
      },
      {
        label: "Measured flow of an emitter",
        unit: "gal/h",
        cell: result("='Catch test'!C12", "decimals3"),
        how: "from the catch test, not from the label",
      },
      { label: "Emitters for one plant", unit: "count", cell: input(2, "decimals0") },
      {
        label: "Minutes for the day",
        unit: "min",
        cell: result("=CANYARD.RUN_MINUTES(D24, D25, D26)", "decimals1"),
        how: "60 x gross / (flow x emitters)",
      },
      { label: "Pulses", unit: "count", cell: input(3, "decimals0") },
      { label: "Rest between pulses", unit: "min", cell: input(60, "decimals0") },
      { label: "First start", unit: "time", cell: input(0.25, "time") },
      { label: "Minutes to fill the line", unit: "min", cell: input(1, "decimals1"), how: "added to every pulse" },
    ]),

    ...block(33, "Does it pay", [
      {
        label: "Investment, spray heads to emitters",
        unit: "$",
        cell: input(7680, "money"),
        how: "2,400 pots at 3.20",
      },
      { label: "Water and pumping saved a year", unit: "$", cell: input(620, "money") },
      { label: "Fertiliser saved a year", unit: "$", cell: input(480, "money") },
      {
        label: "Labour saved a year",
        unit: "$",
        cell: input(1560, "money"),
        how: "less the new task of walking the lines",
      },
      { label: "Plants not lost, a year", unit: "$", cell: input(640, "money") },
      {
        label: "Filters, and emitters worn out in 5 years",
        unit: "$",
        cell: input(-996, "money"),
        how: "420 for filters; 4,800 emitters at 0.60 / 5 years",
      },
      { label: "Saving a year", unit: "$", cell: result("=SUM(D35:D39)", "money") },
      { label: "Interest a year", unit: "fraction", cell: input(0.08) },
      {
        label: "Years to pay back, simple",
        unit: "years",
        cell: result("=CANYARD.PAYBACK_YEARS(D34, D40)"),
        how: "investment / saving",
      },
      {
        label: "Years to pay back, with interest",
        unit: "years",
        cell: result("=CANYARD.PAYBACK_YEARS(D34, D40, D41)"),
        how: "-ln(1 - interest x investment / saving) / ln(1 + interest)",
      },
    ]),

    ...block(45, "Checks", [
      {
        label: "Every day of the week has weather",
        cell: check("COUNT(Weather!D6:D12)=7"),
        how: "counts the days that gave a reference ET",
      },
      {
        label: "Every emitter was read",
        cell: check("COUNT('Catch test'!A6:D9)=16"),
        how: "a blank is not a dry emitter",
      },
      { label: "Emitters are even enough", cell: check("D22>=0.7"), how: "below 0.70 mend the system first" },
      {
        label: "Minutes look like this system",
        cell: check("AND(D27>=5,D27<=60)"),
        how: "beyond 5 to 60 look for a slip of units",
      },
      { label: "The pot holds a day's water", cell: check("D19<=0.5"), how: "at half and more, water twice a day" },
    ]),
  },
  charts: [
    {
      type: "columns",
      title: "Minutes by day of this week",
      description: "A column for each of the seven days: the minutes to run, following that day's reference ET.",
      labels: "Weather!A6:A12",
      series: [{ name: "minutes", values: "Weather!E6:E12" }],
      axisTitles: { values: "minutes" },
      position: { cell: "F5", width: 400, height: 320 },
    },
  ],
};

function check(test: string): Cell {
  return { formula: `=IF(${test},"OK","LOOK")`, style: "check" };
}

const weather: Sheet = {
  name: "Weather",
  columnWidths: { A: 13, B: 13, C: 13, D: 16, E: 16, F: 44 },
  frozen: { rows: 5 },
  cells: {
    A1: { value: "A week of weather", style: "title" },
    A2: {
      value: "Type or paste the station's days. Reference ET spills from one cell, D6: leave the rows below it free.",
      style: "note",
    },
    A3: { value: "Latitude, degrees (south negative)" },
    C3: { value: "input", style: "note" },
    D3: input(38, "decimals1"),
    E3: { value: "Elevation, ft" },
    F3: input(900, "decimals0"),
    A5: { value: "date", style: "heading" },
    B5: { value: "highest, F", style: "heading" },
    C5: { value: "lowest, F", style: "heading" },
    D5: { value: "reference ET, in/day", style: "heading" },
    E5: { value: "minutes that day", style: "heading" },
    F5: { value: "how it is worked", style: "heading" },
    ...weekCells(),
    D6: { formula: "=CANYARD.ET0_TABLE(A6:C12, D3, F3, Plan!D6)", style: "result", format: "decimals3" },
    F6: { value: "D: one call for the week, from the two temperatures and the date (Hargreaves)", style: "note" },
    F7: { value: "E: minutes of the plan x this day's ET / the highest ET", style: "note" },
  },
};

function weekCells(): Cells {
  const cells: Cells = {};
  WEEK.forEach(([tmax, tmin], index) => {
    const row = FIRST_ROW + index;
    cells[`A${row}`] = input(MONDAY + index, "date");
    cells[`B${row}`] = input(tmax, "decimals0");
    cells[`C${row}`] = input(tmin, "decimals0");
    cells[`D${row}`] = { format: "decimals3" };
    cells[`E${row}`] = result(`=IF(ISNUMBER(D${row}), Plan!D$27 * D${row} / Plan!D$15, "")`, "decimals1");
  });
  return cells;
}

const catchTest: Sheet = {
  name: "Catch test",
  columnWidths: { A: 12, B: 12, C: 12, D: 12, E: 44 },
  cells: {
    A1: { value: "Sixteen emitters, caught in a cylinder", style: "title" },
    A2: {
      value: "Head, middle and tail of the zone, four each and more. A blank is refused: write what was caught.",
      style: "note",
    },
    A3: { value: "Seconds" },
    B3: input(60, "decimals0"),
    A5: { value: "mL", style: "heading" },
    B5: { value: "mL", style: "heading" },
    C5: { value: "mL", style: "heading" },
    D5: { value: "mL", style: "heading" },
    ...catchCells(),
    A11: { value: "Mean catch, mL" },
    C11: result("=AVERAGE(A6:D9)", "decimals1"),
    A12: { value: "Mean flow, gal/h" },
    C12: result("=C11 * 3600 / B3 / 3785.411784", "decimals3"),
    E12: { value: "mL x 3600 / seconds / 3785.411784 mL to the gallon", style: "note" },
  },
};

function catchCells(): Cells {
  const cells: Cells = {};
  CATCHES.forEach((row, index) => {
    row.forEach((caught, column) => {
      cells[`${COLUMNS[column]}${FIRST_ROW + index}`] = input(caught, "decimals0");
    });
  });
  return cells;
}

const today: Sheet = {
  name: "Pulses",
  columnWidths: { A: 12, B: 12, C: 12, D: 12, E: 44 },
  cells: {
    A1: { value: "Yard B today, pulse by pulse", style: "title" },
    A2: {
      value:
        "The table spills from A5: leave the cells below and beside it free. One emitter has no neighbour: walk the lines.",
      style: "note",
    },
    ...pulseCells(),
  },
};

function pulseCells(): Cells {
  const cells: Cells = {};
  for (let row = FIRST_ROW; row < FIRST_ROW + MOST_PULSES_SHOWN; row += 1) {
    cells[`B${row}`] = { format: "time" };
    cells[`C${row}`] = { format: "time" };
    cells[`D${row}`] = { format: "decimals1" };
  }
  const schedule = "=CANYARD.PULSE_SCHEDULE(Plan!D27, Plan!D28, Plan!D29, Plan!D30, Plan!D31)";
  return { ...cells, A5: { formula: schedule, style: "heading" }, B5: HEADING, C5: HEADING, D5: HEADING };
}

export const ternHollow: Workbook = {
  name: "Tern Hollow, Yard B",
  sheets: [plan, weather, catchTest, today],
};
