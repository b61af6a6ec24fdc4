import { SERIES_COLOURS } from "../workbooks/looks";
import type { Chart, Series } from "../workbooks/model";
import { columnOf, plain, rowOf } from "./addresses";

export const UNSEEN = "#00000000";
/** With more points than this, a mark at each would hide the line. */
const MOST_MARKS = 31;

export function renderChart(chart: Chart, id: string): object {
  const { cell, width, height } = chart.position;
  return {
    id,
    tag: "chart",
    col: columnOf(cell),
    row: rowOf(cell),
    offset: { x: 0, y: 0 },
    width,
    height,
    data: { chartId: id, ...chartDefinition(chart) },
  };
}

type Shown = Omit<Chart, "position">;

/** The chart without its place, as the engine describes it. */
export function chartDefinition(chart: Shown): object {
  return {
    ...kindOf(chart),
    // The description is for the page (accessible name); the engine hands it on.
    title: { text: chart.title, description: chart.description },
    legendPosition: chart.series.filter(({ unseen }) => !unseen).length > 1 ? "top" : "none",
    background: "#FFFFFF",
    axesDesign: axesDesign(chart),
    dataSource: {
      type: "range",
      dataSetsHaveTitle: false,
      labelRange: plain(chart.labels),
      dataSets: chart.series.map(({ values }, index) => ({ dataSetId: String(index), dataRange: plain(values) })),
    },
    dataSetStyles: Object.fromEntries(chart.series.map((series, at) => [String(at), seriesStyle(chart, series, at)])),
  };
}

/** Colours are counted among the series that are seen. */
function colourOf({ series }: Shown, index: number): string {
  const seen = series.slice(0, index).filter(({ unseen }) => !unseen).length;
  return `#${SERIES_COLOURS[seen % SERIES_COLOURS.length]!}`;
}

function kindOf({ type, series, labels, ...chart }: Shown): object {
  const stacked = chart.stacked ?? false;
  const hideDataMarkers = lengthOf(labels) > MOST_MARKS;
  if (type === "lines") return { type: "line", labelsAsText: true, cumulative: false, stacked, hideDataMarkers };
  if (type === "points") return { type: "scatter", labelsAsText: false };
  const isMixed = series.some(({ as }) => as === "line");
  if (type === "columns" && isMixed) return { type: "combo", stacked, hideDataMarkers };
  return { type: "bar", horizontal: type === "bars", stacked };
}

function seriesStyle(chart: Shown, { name, as, unseen }: Series, index: number): object {
  return {
    // Without a label it is left out of the legend.
    label: unseen ? "" : name,
    backgroundColor: unseen ? UNSEEN : colourOf(chart, index),
    ...(chart.type === "columns" && { type: as === "line" ? "line" : "bar" }),
    ...(chart.type === "points" && as === "line" && { type: "line" }),
  };
}

function axesDesign({ type, axisTitles }: Shown): object {
  const labels = { title: { text: axisTitles?.labels ?? "" } };
  const values = { title: { text: axisTitles?.values ?? "" } };
  return type === "bars" ? { x: values, y: labels } : { x: labels, y: values };
}

function lengthOf(range: string): number {
  const [first, last = first] = plain(range).split("!").at(-1)!.split(":");
  return Math.max(rowOf(last!) - rowOf(first!), columnOf(last!) - columnOf(first!)) + 1;
}
