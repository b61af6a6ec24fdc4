/** The charts of a workbook as parts of a file; the engine's own writer keeps neither lines over columns nor unseen bars. */
import { chartXml, type PlottedCell } from "../../workbooks/chartXml";
import type { Series } from "../../workbooks/model";
import type { EngineChart, EngineModel, EngineRange } from "../engine";
import { UNSEEN } from "../renderChart";
import type { ReadChart } from "./readCharts";

/** Undefined for a chart of a kind that our own writer does not have. */
export function chartPart(model: EngineModel, sheetId: string, chartId: string): string | undefined {
  const chart = asOurs(model, sheetId, model.getters.getChartDefinition(chartId));
  if (!chart) return undefined;
  const position = { cell: "A1", width: 1, height: 1 };
  return chartXml({ ...chart, position }, model.getters.getSheetName(sheetId), (range) =>
    plotted(model, sheetId, range),
  );
}

/** The charts of a sheet in the order in which the engine writes them. */
export function chartsOf(model: EngineModel, sheetId: string): string[] {
  const { getters } = model;
  const ids = getters.getChartIds(sheetId);
  return getters
    .getFigures(sheetId)
    .filter(({ tag }) => tag === "chart")
    .flatMap(({ id }) => ids.filter((chart) => getters.getFigureIdFromChartId(chart) === id).slice(0, 1));
}

const KINDS: Readonly<Record<string, ReadChart["type"]>> = {
  bar: "columns",
  combo: "columns",
  line: "lines",
  scatter: "points",
};

function asOurs(model: EngineModel, sheetId: string, chart: EngineChart): ReadChart | undefined {
  const type = KINDS[chart.type];
  const { dataSource } = chart;
  if (!type || !isWithinOurs(chart) || !dataSource?.labelRange || !dataSource.dataSets?.length) return undefined;
  const skipped = dataSource.dataSetsHaveTitle ? 1 : 0;
  const isLying = chart.horizontal === true;
  return {
    type: isLying ? "bars" : type,
    title: chart.title.text ?? "",
    description: chart.title.description ?? "",
    labels: written(model, skip(rangeOf(model, sheetId, dataSource.labelRange), skipped)),
    series: dataSource.dataSets.flatMap(({ dataSetId, dataRange }, index) =>
      columnsOf(rangeOf(model, sheetId, dataRange)).map((range) => ({
        name: nameOf(model, chart, dataSetId, index, skipped ? range : undefined),
        values: written(model, skip(range, skipped)),
        ...lookOf(chart, dataSetId, index),
      })),
    ),
    axisTitles: axisTitles(chart, isLying),
    ...(chart.stacked && { stacked: true }),
    ...(isLying && { topDown: true }),
  };
}

function axisTitles({ axesDesign }: EngineChart, isLying: boolean): ReadChart["axisTitles"] & object {
  const titleOf = (axis: string) => axesDesign?.[axis]?.title?.text ?? "";
  return { labels: titleOf(isLying ? "y" : "x"), values: titleOf(isLying ? "x" : "y") };
}

function isWithinOurs({ dataSource, dataSetStyles = {}, cumulative, fillArea }: EngineChart): boolean {
  const isPlain = Object.values(dataSetStyles).every(({ yAxisId = "y", trend }) => yAxisId === "y" && !trend?.display);
  return dataSource?.type === "range" && isPlain && !cumulative && !fillArea;
}

function lookOf({ type, dataSetStyles }: EngineChart, id: string, index: number): Pick<Series, "as" | "unseen"> {
  const style = dataSetStyles?.[id];
  const isLine = style?.type === undefined ? type === "combo" && index > 0 : style.type === "line";
  const canHaveLines = type === "combo" || type === "scatter";
  return {
    ...(canHaveLines && isLine && { as: "line" }),
    ...(style?.backgroundColor === UNSEEN && { unseen: true }),
  };
}

function nameOf(model: EngineModel, chart: EngineChart, id: string, index: number, titled?: EngineRange): string {
  const given = chart.dataSetStyles?.[id]?.label;
  if (given !== undefined && given !== "") return given;
  const title = titled && cellsOf(titled)[0];
  return (title && model.getters.getEvaluatedCell(title).formattedValue) || `Series ${index + 1}`;
}

function plotted(model: EngineModel, sheetId: string, range: string): PlottedCell[] {
  return cellsOf(rangeOf(model, sheetId, range)).map((position) => {
    const { value, type, format = "General" } = model.getters.getEvaluatedCell(position);
    return { value: value === null || type === "error" ? undefined : value, format };
  });
}

function cellsOf({ sheetId, zone }: EngineRange) {
  const cells = [];
  for (let row = zone.top; row <= zone.bottom; row += 1) {
    for (let col = zone.left; col <= zone.right; col += 1) cells.push({ sheetId, col, row });
  }
  return cells;
}

/** A block of several columns is several series. */
function columnsOf({ sheetId, zone }: EngineRange): EngineRange[] {
  if (zone.top === zone.bottom) return [{ sheetId, zone }];
  const width = zone.right - zone.left + 1;
  return Array.from({ length: width }, (_, at) => {
    const column = zone.left + at;
    return { sheetId, zone: { ...zone, left: column, right: column } };
  });
}

function skip({ sheetId, zone }: EngineRange, cells: number): EngineRange {
  const isRow = zone.top === zone.bottom && zone.left < zone.right;
  return { sheetId, zone: isRow ? { ...zone, left: zone.left + cells } : { ...zone, top: zone.top + cells } };
}

function rangeOf(model: EngineModel, sheetId: string, range: string): EngineRange {
  return model.getters.getRangeFromSheetXC(sheetId, range);
}

function written(model: EngineModel, { sheetId, zone }: EngineRange): string {
  const letters = (column: number): string =>
    (column >= 26 ? letters(Math.floor(column / 26) - 1) : "") + String.fromCharCode(65 + (column % 26));
  const sheet = model.getters.getSheetName(sheetId).replaceAll("'", "''");
  return `'${sheet}'!${letters(zone.left)}${zone.top + 1}:${letters(zone.right)}${zone.bottom + 1}`;
}
