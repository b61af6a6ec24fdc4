import type { Cell, Chart, FormatName, ListValidation, Sheet, StyleName, Workbook } from "../workbooks/model";
import { STYLE_NAMES, FORMAT_NAMES } from "../workbooks/model";
import type { EngineData, EngineSheet } from "./engine";

// The engine brings data of an older version up to date by itself, so this says what the shapes below were written for.
const DATA_VERSION = "19.3.2";

// Inputs are boxed and results bold: the mark does not rest on colour.
const STYLES: Readonly<Record<StyleName, object>> = {
  title: { bold: true, fontSize: 16, textColor: "#1B3A2B" },
  heading: { bold: true, fillColor: "#DCE8E0", textColor: "#1B3A2B", wrapping: "wrap", verticalAlign: "middle" },
  input: { fillColor: "#FFF7D6", textColor: "#1F2937" },
  result: { bold: true, textColor: "#1F2937" },
  note: { italic: true, textColor: "#4B5563" },
  check: { bold: true, align: "center", fillColor: "#E8EEF7", textColor: "#1F2937" },
};

const FORMATS: Readonly<Record<FormatName, string>> = {
  decimals0: "#,##0",
  decimals1: "#,##0.0",
  decimals2: "#,##0.00",
  decimals3: "#,##0.000",
  percent: "0.0%",
  date: "yyyy-mm-dd",
  time: "hh:mm",
  money: "#,##0.00",
  text: "@",
};

const EDGE = { style: "thin", color: "#6B7280" };
const BOX_ID = 1;
const BORDERS = { [BOX_ID]: { top: EDGE, bottom: EDGE, left: EDGE, right: EDGE } };

const LEAST_ROWS = 100;
const LEAST_COLUMNS = 26;

/** Turns a workbook into what the engine opens. */
export function render(workbook: Workbook): EngineData {
  return {
    version: DATA_VERSION,
    sheets: workbook.sheets.map(renderSheet),
    styles: numbered(STYLE_NAMES, STYLES),
    formats: numbered(FORMAT_NAMES, FORMATS),
    borders: BORDERS,
    namedRanges: Object.fromEntries(
      Object.entries(workbook.namedRanges ?? {}).map(([name, range]) => [name, range.replaceAll("$", "")]),
    ),
  };
}

function renderSheet(sheet: Sheet, index: number): EngineSheet {
  const id = `sheet${index + 1}`;
  const cells = Object.entries(sheet.cells);
  return {
    id,
    name: sheet.name,
    rowNumber: Math.max(LEAST_ROWS, sheet.rows ?? 0, ...cells.map(([address]) => rowOf(address))),
    colNumber: Math.max(LEAST_COLUMNS, sheet.columns ?? 0, ...cells.map(([address]) => columnOf(address) + 1)),
    cells: Object.fromEntries(
      cells.map(([address, cell]) => [address, contentOf(cell)]).filter(([, content]) => content !== ""),
    ),
    styles: byAddress(cells, ({ style }) => style && numberOf(STYLE_NAMES, style)),
    formats: byAddress(cells, ({ format }) => format && numberOf(FORMAT_NAMES, format)),
    borders: byAddress(cells, ({ style }) => (style === "input" ? BOX_ID : undefined)),
    cols: Object.fromEntries(
      Object.entries(sheet.columnWidths ?? {}).map(([letter, width]) => [columnOf(letter), { size: pixelsOf(width) }]),
    ),
    panes: { xSplit: sheet.frozen?.columns ?? 0, ySplit: sheet.frozen?.rows ?? 0 },
    dataValidationRules: (sheet.validations ?? []).map((validation, at) =>
      renderValidation(validation, `${id}-list${at + 1}`),
    ),
    figures: (sheet.charts ?? []).map((chart, at) => renderChart(chart, sheet.name, `${id}-chart${at + 1}`)),
  };
}

function contentOf({ value, formula }: Cell): string {
  if (formula !== undefined) return formula;
  if (typeof value === "boolean") return String(value).toUpperCase();
  if (typeof value !== "string") return String(value ?? "");
  // An apostrophe keeps a text that starts like a number, a date or a formula a text.
  return /^[\d=+'.-]/.test(value) ? `'${value}` : value;
}

function renderValidation({ range, allowed }: ListValidation, id: string): object {
  return {
    id,
    ranges: [range],
    isBlocking: true,
    criterion: { type: "isValueInList", values: allowed, displayStyle: "arrow" },
  };
}

function renderChart(chart: Chart, sheetName: string, id: string): object {
  const { cell, width, height } = chart.position;
  return {
    id,
    tag: "chart",
    col: columnOf(cell),
    row: rowOf(cell) - 1,
    offset: { x: 0, y: 0 },
    width,
    height,
    data: { chartId: id, ...chartDefinition(chart, sheetName) },
  };
}

function chartDefinition(chart: Chart, sheetName: string): object {
  const onSheet = (range: string) => (range.includes("!") ? range : `'${sheetName.replaceAll("'", "''")}'!${range}`);
  return {
    type: chart.type === "line" ? "line" : "bar",
    ...(chart.type === "line" ? { labelsAsText: true, cumulative: false } : { horizontal: chart.type === "bar" }),
    stacked: false,
    title: { text: chart.title },
    legendPosition: chart.series.length > 1 ? "top" : "none",
    background: "#FFFFFF",
    axesDesign: axesDesign(chart),
    dataSource: {
      type: "range",
      dataSetsHaveTitle: false,
      labelRange: onSheet(chart.labels),
      dataSets: chart.series.map(({ values }, index) => ({ dataSetId: String(index), dataRange: onSheet(values) })),
    },
    dataSetStyles: Object.fromEntries(chart.series.map(({ name }, index) => [String(index), { label: name }])),
  };
}

function axesDesign({ type, axisTitles }: Chart): object {
  const labels = { title: { text: axisTitles?.labels ?? "" } };
  const values = { title: { text: axisTitles?.values ?? "" } };
  return type === "bar" ? { x: values, y: labels } : { x: labels, y: values };
}

function byAddress(
  cells: readonly (readonly [string, Cell])[],
  numberFor: (cell: Cell) => number | undefined,
): Record<string, number> {
  return Object.fromEntries(
    cells
      .map(([address, cell]) => [address, numberFor(cell)] as const)
      .filter((entry): entry is [string, number] => entry[1] !== undefined),
  );
}

function numbered<Name extends string, Value>(
  names: readonly Name[],
  values: Readonly<Record<Name, Value>>,
): Record<number, Value> {
  return Object.fromEntries(names.map((name) => [numberOf(names, name), values[name]]));
}

function numberOf<Name extends string>(names: readonly Name[], name: Name): number {
  return names.indexOf(name) + 1;
}

/** Excel counts a column's width in characters of 7 pixels, with 5 pixels to spare. */
function pixelsOf(characters: number): number {
  return Math.round(characters * 7 + 5);
}

function columnOf(address: string): number {
  const letters = address.replace(/[^A-Za-z]/g, "").toUpperCase();
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

function rowOf(address: string): number {
  return Number(address.replace(/[^0-9]/g, ""));
}
