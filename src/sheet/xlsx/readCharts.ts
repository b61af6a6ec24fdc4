/** A chart of an .xlsx file as a chart of ours, where it is one of the kinds that we have. */
import type { Chart, Series } from "../../workbooks/model";
import { all, attribute, child, children, first } from "./xml";

export type ReadChart = Omit<Chart, "position">;

const KINDS = ["barChart", "lineChart", "scatterChart"];

/** Undefined for a chart of another kind. */
export function readChart(document: Document, description: string): ReadChart | undefined {
  const plot = first(document, "plotArea");
  const groups = plot ? children(plot).filter(({ localName }) => localName.endsWith("Chart")) : [];
  if (groups.length === 0 || !groups.every(({ localName }) => KINDS.includes(localName))) return undefined;
  const bars = groups.find(({ localName }) => localName === "barChart");
  const type = typeOf(groups, bars);
  const series = groups.flatMap((group) => all(group, "ser").map((each) => placed(each, group, type)));
  const labels = series.map(({ labels }) => labels).find((range) => range !== undefined);
  if (labels === undefined || series.some(({ values }) => values === undefined)) return undefined;
  return {
    type,
    title: words(chartTitle(document)),
    description,
    labels,
    series: series
      .sort((a, b) => a.order - b.order)
      .map(({ name, values, look }) => ({ name, values: values!, ...look })),
    ...(value(bars ?? groups[0]!, "grouping") === "stacked" && { stacked: true }),
    ...(type === "bars" && isReversed(plot!) && { topDown: true }),
    axisTitles: axisTitles(plot!, type),
  };
}

function typeOf(groups: readonly Element[], bars: Element | undefined): Chart["type"] {
  if (bars) return value(bars, "barDir") === "bar" ? "bars" : "columns";
  return groups[0]!.localName === "lineChart" ? "lines" : "points";
}

function placed(element: Element, { localName: group }: Element, type: Chart["type"]) {
  const look: Pick<Series, "as" | "unseen"> = {
    ...(group === "lineChart" && type !== "lines" && { as: "line" }),
    ...(group === "scatterChart" && hasLine(element) && { as: "line" }),
    ...(group === "barChart" && isUnseen(element) && { unseen: true }),
  };
  return {
    order: Number(value(element, "order") ?? 0),
    name: text(child(element, "tx")),
    labels: range(child(element, "cat") ?? child(element, "xVal")),
    values: range(child(element, "val") ?? child(element, "yVal")),
    look,
  };
}

function isUnseen(series: Element): boolean {
  const shape = child(series, "spPr");
  return shape !== undefined && child(shape, "noFill") !== undefined;
}

function hasLine(series: Element): boolean {
  const line = child(series, "spPr") && child(child(series, "spPr")!, "ln");
  return line !== undefined && child(line, "noFill") === undefined;
}

/** One block of cells, with or without its sheet; not several in one. */
function range(holder: Element | undefined): string | undefined {
  const formula = holder && first(holder, "f")?.textContent?.trim();
  return formula && /^(?:'(?:[^']|'')+'!|[^'!,()]+!)?\$?[A-Z]+\$?\d+(?::\$?[A-Z]+\$?\d+)?$/i.test(formula)
    ? formula
    : undefined;
}

/** The name as it was last shown, when it stands in a cell. */
function text(holder: Element | undefined): string {
  return (holder && first(holder, "v")?.textContent) ?? "";
}

function value(parent: Element, name: string): string | undefined {
  const element = child(parent, name);
  return element && attribute(element, "val");
}

function chartTitle(document: Document): Element | undefined {
  const chart = first(document, "chart");
  return chart && child(chart, "title");
}

function words(title: Element | undefined): string {
  return title
    ? all(title, "t")
        .map(({ textContent }) => textContent ?? "")
        .join("")
    : "";
}

function axes(plot: Element): Element[] {
  return children(plot).filter(({ localName }) => /^(cat|val|date)Ax$/.test(localName));
}

function axisTitles(plot: Element, type: Chart["type"]) {
  const all = axes(plot);
  const labels = type === "points" ? all[0] : all.find(({ localName }) => localName !== "valAx");
  const values = all.find((axis) => axis !== labels && axis.localName === "valAx");
  const titleOf = (axis: Element | undefined) => words(axis && child(axis, "title"));
  return { labels: titleOf(labels), values: titleOf(values) };
}

function isReversed(plot: Element): boolean {
  const labels = axes(plot).find(({ localName }) => localName === "catAx");
  const scaling = labels && child(labels, "scaling");
  return scaling !== undefined && value(scaling, "orientation") === "maxMin";
}
