/** Charts of a new sheet. Excel makes series of its own when a chart is added: they are taken over or away. */
import type { Chart, Series } from "../../workbooks/model";
import { SERIES_COLOURS } from "../../workbooks/looks";
import { pointsOf } from "./dress";
import type { RangeOf } from "./limits";
import type { Supports } from "./parts";

export interface Drawing {
  readonly chart: Chart;
  readonly on: Excel.Worksheet;
  readonly rangeOf: RangeOf;
}

interface Drawn extends Drawing {
  readonly object: Excel.Chart;
}

type ChartType =
  "ColumnClustered" | "ColumnStacked" | "BarClustered" | "BarStacked" | "Line" | "LineStacked" | "XYScatter";

const TYPES: Readonly<Record<Chart["type"], readonly [beside: ChartType, stacked: ChartType]>> = {
  columns: ["ColumnClustered", "ColumnStacked"],
  bars: ["BarClustered", "BarStacked"],
  lines: ["Line", "LineStacked"],
  points: ["XYScatter", "XYScatter"],
};

export async function draw(
  context: Excel.RequestContext,
  drawings: readonly Drawing[],
  supports: Supports,
): Promise<void> {
  const drawn = drawings.map((drawing): Drawn => ({ ...drawing, object: started(drawing) }));
  for (const { object } of drawn) object.series.load("count");
  await context.sync();
  for (const each of drawn) {
    fillSeries(each);
    describe(each);
    if (each.chart.topDown === true) turn(each, supports);
    place(each);
  }
  await context.sync();
}

function started({ chart, on, rangeOf }: Drawing): Excel.Chart {
  const [beside, stacked] = TYPES[chart.type];
  const [first] = chart.series;
  if (first === undefined) throw new Error(`the chart "${chart.title}" has no series`);
  return on.charts.add(chart.stacked === true ? stacked : beside, rangeOf(first.values), "Auto");
}

function fillSeries({ chart, object, rangeOf }: Drawn): void {
  const present = object.series.count;
  let seen = 0;
  chart.series.forEach((series, index) => {
    const target = index < present ? object.series.getItemAt(index) : object.series.add(series.name);
    target.name = series.name;
    target.setValues(rangeOf(series.values));
    target.setXAxisValues(rangeOf(chart.labels));
    if (series.as === "line") target.chartType = chart.type === "points" ? "XYScatterLinesNoMarkers" : "Line";
    if (series.unseen === true) hide(target);
    else tellApart(target, chart, series, seen++);
  });
  for (let index = present - 1; index >= chart.series.length; index -= 1) object.series.getItemAt(index).delete();
}

function hide({ format }: Excel.ChartSeries): void {
  format.fill.clear();
  format.line.clear();
}

const DASHES = ["Continuous", "Dash", "RoundDot", "DashDot"] as const;
const MARKERS = ["Circle", "Square", "Triangle", "Diamond"] as const;

/** By colour, and lines and dots by their dashes and their shapes as well. */
function tellApart(target: Excel.ChartSeries, { type }: Chart, { as }: Series, index: number): void {
  const colour = `#${SERIES_COLOURS[index % SERIES_COLOURS.length]}`;
  const isDots = type === "points" && as !== "line";
  const isLine = type === "lines" || as === "line";
  if (isLine) {
    target.format.line.color = colour;
    target.format.line.lineStyle = DASHES[index % DASHES.length]!;
  } else if (isDots) {
    target.markerStyle = MARKERS[index % MARKERS.length]!;
    target.markerBackgroundColor = colour;
    target.markerForegroundColor = colour;
  } else target.format.fill.setSolidColor(colour);
}

function describe({ chart, object }: Drawn): void {
  object.name = chart.title;
  object.title.text = chart.title;
  nameAxes(object, chart);
  const seen = chart.series.filter(({ unseen }) => unseen !== true).length;
  object.legend.visible = seen > 1;
  if (seen <= 1) return;
  object.legend.position = "Top";
  chart.series.forEach(({ unseen }, index) => {
    if (unseen === true) object.legend.legendEntries.getItemAt(index).visible = false;
  });
}

function nameAxes({ axes }: Excel.Chart, { type, axisTitles }: Chart): void {
  const { labels, values } = axisTitles ?? {};
  for (const [axis, words] of [[axes.categoryAxis, labels] as const, [axes.valueAxis, values] as const]) {
    if (words !== undefined) axis.title.text = words;
    else axis.title.visible = false;
  }
  // Dates would else stand at their distance, with gaps.
  if (type !== "points") axes.categoryAxis.categoryType = "TextAxis";
}

/** The first bar on top; the axis of the values, which goes up with it, comes down again. */
function turn({ object }: Drawn, supports: Supports): void {
  const { categoryAxis } = object.axes;
  categoryAxis.reversePlotOrder = true;
  if (supports("1.8")) categoryAxis.position = "Maximum";
}

function place({ chart, on, object }: Drawn): void {
  const { cell, width, height } = chart.position;
  object.setPosition(on.getRange(cell));
  object.width = pointsOf(width);
  object.height = pointsOf(height);
}

/** For people who cannot see a chart. Excel keeps such words with its shapes; not every Excel counts a chart as one. */
export async function describeForReaders(
  context: Excel.RequestContext,
  drawings: readonly Drawing[],
): Promise<boolean> {
  const shapes = drawings.map(({ chart, on }) => ({ chart, shape: on.shapes.getItemOrNullObject(chart.title) }));
  for (const { shape } of shapes) shape.load("isNullObject");
  await context.sync();
  for (const { chart, shape } of shapes) if (!shape.isNullObject) shape.altTextDescription = chart.description;
  await context.sync();
  return shapes.every(({ shape }) => !shape.isNullObject);
}
