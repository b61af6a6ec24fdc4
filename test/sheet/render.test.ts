import * as functions from "../../src/functions";
import type { Chart, Workbook } from "../../src/workbooks/model";
import { createHeadlessSheet } from "../rig/sheetEngine";

const GANTT: Chart = {
  type: "bars",
  title: "Day",
  description: "When each zone runs.",
  stacked: true,
  topDown: true,
  labels: "A4:A5",
  series: [
    { name: "Start", values: "B4:B5", unseen: true },
    { name: "Minutes", values: "$B$4:$B$5" },
  ],
  axisTitles: { labels: "Zone", values: "Minute of the day" },
  position: { cell: "D4", width: 300, height: 200 },
};

const sample: Workbook = {
  name: "Sample block",
  sheets: [
    {
      name: "Plan",
      columnWidths: { A: 24 },
      frozen: { rows: 3 },
      cells: {
        A1: { value: "Run times", style: "title" },
        A2: { formula: '=IF(B7>0, "All checks OK", "See Checks")', style: "check" },
        A4: { value: "Volume per plant" },
        B4: { value: 0.275, style: "input", format: "decimals3" },
        A5: { value: "Units" },
        B5: { value: "us", style: "locked" },
        A6: { value: "Date" },
        B6: { value: 45292, style: "input", format: "date" },
        A7: { value: "Run time" },
        B7: { formula: "=CANYARD.RUN_MINUTES(Volume, 6)", style: "result", format: "decimals2" },
        C7: { words: "60 x volume / flow", plainOf: "B7", style: "note", wraps: true },
        B8: { value: "1-2" },
        B9: { value: "=not a formula" },
        B10: { value: true },
        B11: { value: "true" },
        B12: { value: 0.25, format: "time" },
        B13: { value: 0.125, format: "percent" },
        B14: { value: 1234.5, format: "money" },
        B15: { value: 1.23456, format: "decimals4" },
        A20: { table: "=CANYARD.PULSE_SCHEDULE(45, 3, 60, 0.25)", rows: 4, columns: 4 },
        B21: { format: "time" },
      },
      validations: [{ range: "B5", words: ["us"], message: "This workbook is in US units." }],
      charts: [GANTT],
    },
    { name: "It's data", cells: { A1: { formula: "=Plan!B7*2" }, AB120: { value: 1 } } },
  ],
  namedRanges: { Volume: "Plan!$B$4" },
};

const { open } = createHeadlessSheet(functions);

interface ChartConfig {
  readonly type: string;
  readonly data: { readonly labels: unknown[]; readonly datasets: readonly Record<string, unknown>[] };
  readonly options: {
    readonly indexAxis?: string;
    readonly scales: Readonly<
      Record<string, { readonly title?: { readonly text: string }; readonly stacked?: boolean }>
    >;
    readonly plugins: { readonly legend: { readonly display: boolean } };
  };
}

/** What the engine hands to its chart library. */
function drawn(chart: Chart, cells: Workbook["sheets"][number]["cells"]): ChartConfig {
  const { sheet } = open({ name: "Drawn", sheets: [{ name: "Yard one", cells, charts: [chart] }] });
  const getters = sheet.model.getters as unknown as { getChartRuntime(id: string): { chartJsConfig: ChartConfig } };
  return getters.getChartRuntime("sheet1-chart1").chartJsConfig;
}

it("works out formulas over names and sheets", () => {
  const { value } = open(sample);
  expect(value("B7")).toBeCloseTo(2.75, 12);
  expect(value("'It''s data'!A1")).toBeCloseTo(5.5, 12);
});

test.each([
  ["B4", "0.275"],
  ["B6", "2024-01-01"],
  ["B7", "2.75"],
  ["B12", "06:00"],
  ["B13", "12.5%"],
  ["B14", "1,234.50"],
  ["B15", "1.2346"],
  ["B21", "06:00"],
])("shows %s in its format, %s", (address, shown) => {
  expect(open(sample).sheet.adapter.read(address).shown).toBe(shown);
});

it("keeps a text a text, however it begins", () => {
  const { value } = open(sample);
  expect(["B8", "B9", "B10", "B11", "C7"].map(value)).toEqual([
    "1-2",
    "=not a formula",
    true,
    "true",
    "60 x volume / flow",
  ]);
});

it("spills a table from its corner", () => {
  const { value } = open(sample);
  expect(["A20", "B20", "A23", "D23"].map(value)).toEqual(["pulse", "start", 3, 15]);
});

it("makes room for every cell", () => {
  expect(open(sample).sheet.exportData().sheets[1]).toMatchObject({ colNumber: 28, rowNumber: 120 });
});

it("makes room for a chart below the last cell", () => {
  const chart = { ...GANTT, position: { cell: "A150", width: 300, height: 230 } };
  const [sheet] = open({
    name: "Low",
    sheets: [{ name: "Plan", cells: { A1: { value: 1 } }, charts: [chart] }],
  }).sheet.exportData().sheets;
  expect(sheet).toMatchObject({ rowNumber: 160, figures: [expect.objectContaining({ row: 149 })] });
});

it("keeps chart, frozen rows, widths and names through saving and opening", () => {
  const data = open(sample).sheet.exportData();
  const [plan] = data.sheets;
  expect(plan!["figures"]).toEqual([
    expect.objectContaining({
      tag: "chart",
      col: 3,
      row: 3,
      width: 300,
      data: expect.objectContaining({ title: { text: "Day", description: "When each zone runs." } }),
    }),
  ]);
  expect(plan!["panes"]).toEqual({ xSplit: 0, ySplit: 3 });
  expect(plan!["cols"]).toEqual({ "0": { size: 173 } });
  expect(data["namedRanges"]).toEqual({ Volume: "Plan!B4" });
});

it("can be saved where one formula refers to a cell and the next like it to a block", () => {
  const sheet = open({ A1: 1, A2: 2, B1: "=SUM(A1)", B2: "=SUM(A1:A2)" });
  const [saved] = sheet.sheet.exportData().sheets;
  expect(saved!["cells"]).toMatchObject({ B1: "=SUM(A1)", B2: "=SUM(A1:A2)" });
});

test("a check is green when all is well and red when it is not, in addition to its words", () => {
  const sheet = open(sample);
  const fill = () => {
    const getters = sheet.sheet.model.getters as unknown as {
      getCellComputedStyle(position: object): { readonly fillColor?: string };
    };
    return getters.getCellComputedStyle({ sheetId: "sheet1", col: 0, row: 1 }).fillColor;
  };
  expect(fill()).toBe("#D3F0DC");
  sheet.set("B4", "-1");
  sheet.set("A2", '="LOOK"');
  expect(fill()).toBe("#FBD9D9");
  sheet.set("A2", '="See Checks"');
  expect(fill()).toBe("#FBD9D9");
});

describe("charts", () => {
  const cells = {
    A1: { value: "Zone A" },
    A2: { value: "Zone B" },
    B1: { value: 10 },
    B2: { value: 20 },
    C1: { value: 5 },
    C2: { value: 5 },
  };
  const chart: Chart = {
    type: "columns",
    title: "Minutes",
    description: "Minutes by zone.",
    labels: "$A$1:$A$2",
    series: [
      { name: "Minutes", values: "$B$1:$B$2" },
      { name: "Limit", values: "'Yard one'!$C$1:$C$2" },
    ],
    axisTitles: { labels: "Zone", values: "min" },
    position: { cell: "E1", width: 300, height: 200 },
  };

  test("columns stand beside one another under their names and titles", () => {
    const { type, data, options } = drawn(chart, cells);
    expect(type).toBe("bar");
    expect(data.labels).toEqual(["Zone A", "Zone B"]);
    expect(data.datasets.map(({ label, data: values }) => [label, values])).toEqual([
      ["Minutes", [10, 20]],
      ["Limit", [5, 5]],
    ]);
    expect(options.scales["x"]?.title?.text).toBe("Zone");
    expect(options.scales["y"]?.title?.text).toBe("min");
    expect(options.plugins.legend.display).toBe(true);
  });

  test("stacked columns stand on one another", () => {
    expect(drawn({ ...chart, stacked: true }, cells).options.scales["y"]?.stacked).toBe(true);
  });

  test("a line runs among columns", () => {
    const series = [chart.series[0]!, { ...chart.series[1]!, as: "line" as const }];
    expect(drawn({ ...chart, series }, cells).data.datasets.map(({ type }) => type)).toEqual(["bar", "line"]);
  });

  test("a line runs over stacked columns, which stay stacked", () => {
    const more = { name: "More", values: "C1:C2" };
    const series = [chart.series[0]!, more, { name: "Limit", values: "C1:C2", as: "line" as const }];
    const { data, options } = drawn({ ...chart, stacked: true, series }, cells);
    expect(data.datasets.map(({ type }) => type)).toEqual(["bar", "bar", "line"]);
    expect(options.scales["x"]?.stacked).toBe(true);
    expect(options.scales["y"]?.stacked).toBe(true);
  });

  test("lying bars start where the unseen ones end, and the unseen ones have no name in the legend", () => {
    const [unseen, seen] = chart.series;
    const { options, data } = drawn(
      { ...chart, type: "bars", stacked: true, series: [{ ...unseen!, unseen: true }, seen!] },
      cells,
    );
    expect(options.indexAxis).toBe("y");
    expect(options.scales["x"]).toMatchObject({ stacked: true, title: { text: "min" } });
    expect(data.datasets.map(({ label, backgroundColor }) => [label, String(backgroundColor).length])).toEqual([
      ["", "#00000000".length],
      ["Limit", "#123456".length],
    ]);
    expect(options.plugins.legend.display).toBe(false);
  });

  test("points of a scatter lie at their own numbers", () => {
    const { data } = drawn({ ...chart, type: "points", labels: "C1:C2", series: [chart.series[0]!] }, cells);
    expect(data.datasets[0]?.["data"]).toEqual([
      { x: "5", y: 10 },
      { x: "5", y: 20 },
    ]);
  });

  test("a line may run among the points", () => {
    const series = [chart.series[0]!, { ...chart.series[1]!, as: "line" as const }];
    const { data } = drawn({ ...chart, type: "points", labels: "C1:C2", series }, cells);
    expect(data.datasets.map(({ showLine }) => showLine)).toEqual([false, true]);
  });

  test("a line over many points has no marks on it", () => {
    const long = Object.fromEntries(Array.from({ length: 40 }, (_, at) => [`A${at + 1}`, { value: at }]));
    const { data } = drawn(
      { ...chart, type: "lines", labels: "A1:A40", series: [{ name: "Course", values: "A1:A40" }] },
      long,
    );
    expect(data.datasets[0]).toMatchObject({ label: "Course", pointRadius: 0 });
  });
});
