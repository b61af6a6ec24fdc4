/** A chart of the model as the chart part of an .xlsx file, its points cached so that it is drawn without recalculation. */
import type { Chart, Series } from "./model";
import { absoluteRange } from "./addresses";
type CellValue = number | string | boolean;

export interface PlottedCell {
  readonly value: CellValue | undefined;
  /** The number format, in a spreadsheet's codes. */
  readonly format: string;
}

/** The cells of a range, which may name its sheet. */
export type Plotted = (range: string) => readonly PlottedCell[];

/** Series are told apart by hatching, dashes and markers as well. The first is plain. */
const LOOKS = [
  { colour: "1F6F54", hatch: null, dash: "solid", marker: "circle" },
  { colour: "2F6DB5", hatch: "wdUpDiag", dash: "dash", marker: "square" },
  { colour: "B7791F", hatch: "pct40", dash: "sysDot", marker: "triangle" },
  { colour: "8E3B46", hatch: "narHorz", dash: "dashDot", marker: "diamond" },
  { colour: "5B4B8A", hatch: "wdDnDiag", dash: "lgDash", marker: "x" },
  { colour: "4B5563", hatch: "lgGrid", dash: "lgDashDot", marker: "star" },
  { colour: "0E7490", hatch: "narVert", dash: "sysDash", marker: "plus" },
  { colour: "9A3412", hatch: "smCheck", dash: "sysDashDot", marker: "dash" },
] as const;
type Look = (typeof LOOKS)[number];

/** Beyond this many points markers run into one another. */
const MOST_MARKERS = 40;
const LABEL_AXIS = 111;
const VALUE_AXIS = 222;

/** The colour of each series that is seen, by its place among all. */
export function seriesColours({ series }: Chart): readonly (string | null)[] {
  return looksOf(series).map((look) => look?.colour ?? null);
}

function looksOf(series: readonly Series[]): readonly (Look | null)[] {
  let seen = 0;
  return series.map(({ unseen }) => (unseen ? null : LOOKS[seen++ % LOOKS.length]!));
}

interface Drawn {
  readonly series: Series;
  readonly at: number;
  readonly look: Look | null;
}

export function chartXml(chart: Chart, sheet: string, plotted: Plotted): string {
  const part = new ChartPart(chart, sheet, plotted);
  return `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><c:roundedCorners val="0"/><c:chart>${title(chart.title, 1200)}<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${part.groups()}${part.axes()}</c:plotArea>${part.legend()}<c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart><c:spPr><a:solidFill><a:srgbClr val="FFFFFF"/></a:solidFill><a:ln w="9525"><a:solidFill><a:srgbClr val="9CA3AF"/></a:solidFill></a:ln></c:spPr><c:txPr><a:bodyPr/><a:p><a:pPr><a:defRPr sz="900"/></a:pPr><a:endParaRPr lang="en-US"/></a:p></c:txPr></c:chartSpace>`;
}

class ChartPart {
  private readonly drawn: readonly Drawn[];

  constructor(
    private readonly chart: Chart,
    private readonly sheet: string,
    private readonly plotted: Plotted,
  ) {
    const looks = looksOf(chart.series);
    this.drawn = chart.series.map((series, at) => ({ series, at, look: looks[at]! }));
  }

  /** In a legend of lying bars programs count from either end, so there a series is not left out but has no name. */
  private get isLying(): boolean {
    return this.chart.type === "bars";
  }

  /** Bars and lines share their axes. */
  groups(): string {
    if (this.chart.type === "points") return this.scatter();
    const isLine = ({ series }: Drawn) => this.chart.type === "lines" || series.as === "line";
    const bars = this.drawn.filter((each) => !isLine(each));
    const lines = this.drawn.filter(isLine);
    return (bars.length ? this.bars(bars) : "") + (lines.length ? this.lines(lines) : "");
  }

  private bars(drawn: readonly Drawn[]): string {
    const { type, stacked } = this.chart;
    const series = drawn.map((each) => this.barSeries(each)).join("");
    return `<c:barChart><c:barDir val="${type === "bars" ? "bar" : "col"}"/><c:grouping val="${stacked ? "stacked" : "clustered"}"/><c:varyColors val="0"/>${series}<c:gapWidth val="60"/>${stacked ? '<c:overlap val="100"/>' : ""}${AXIS_IDS}</c:barChart>`;
  }

  private barSeries(each: Drawn): string {
    return `<c:ser>${this.start(each)}${barLook(each.look)}<c:invertIfNegative val="0"/>${this.labels("cat")}${this.values("val", each)}</c:ser>`;
  }

  private lines(drawn: readonly Drawn[]): string {
    const grouping = this.chart.stacked && this.chart.type === "lines" ? "stacked" : "standard";
    const series = drawn
      .map((each) => {
        const marker = each.series.as === "line" ? NO_MARKER : this.marker(each.look);
        return `<c:ser>${this.start(each)}${lineLook(each.look)}${marker}${this.labels("cat")}${this.values("val", each)}<c:smooth val="0"/></c:ser>`;
      })
      .join("");
    return `<c:lineChart><c:grouping val="${grouping}"/><c:varyColors val="0"/>${series}<c:marker val="1"/>${AXIS_IDS}</c:lineChart>`;
  }

  private scatter(): string {
    const series = this.drawn
      .map((each) => {
        const look = each.series.as === "line" ? lineLook(each.look) + NO_MARKER : NO_LINE + this.marker(each.look);
        return `<c:ser>${this.start(each)}${look}${this.labels("xVal")}${this.values("yVal", each)}<c:smooth val="0"/></c:ser>`;
      })
      .join("");
    return `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series}${AXIS_IDS}</c:scatterChart>`;
  }

  private start({ series, at }: Drawn): string {
    const name = series.unseen && this.isLying ? " " : series.name;
    return `<c:idx val="${at}"/><c:order val="${at}"/><c:tx><c:v>${escaped(name)}</c:v></c:tx>`;
  }

  private marker(look: Look | null): string {
    const isFull = this.chart.type === "lines" && this.plotted(this.chart.labels).length > MOST_MARKERS;
    if (look === null || isFull) return NO_MARKER;
    const fill = `<a:solidFill><a:srgbClr val="${look.colour}"/></a:solidFill>`;
    return `<c:marker><c:symbol val="${look.marker}"/><c:size val="7"/><c:spPr>${fill}<a:ln w="12700">${fill}</a:ln></c:spPr></c:marker>`;
  }

  private labels(element: "cat" | "xVal"): string {
    const cells = this.plotted(this.chart.labels);
    const range = absoluteRange(this.chart.labels, this.sheet);
    const isNumbers = cells.every(({ value }) => typeof value === "number");
    const reference = isNumbers || element === "xVal" ? numbersOf(range, cells) : textsOf(range, cells);
    return `<c:${element}>${reference}</c:${element}>`;
  }

  private values(element: "val" | "yVal", { series }: Drawn): string {
    return `<c:${element}>${numbersOf(absoluteRange(series.values, this.sheet), this.plotted(series.values))}</c:${element}>`;
  }

  axes(): string {
    return this.labelAxis() + this.valueAxis();
  }

  private labelAxis(): string {
    const { type, axisTitles, topDown, labels } = this.chart;
    const isNumbers = type === "points";
    return axis({
      element: isNumbers ? "valAx" : "catAx",
      id: LABEL_AXIS,
      crosses: VALUE_AXIS,
      position: this.isLying ? "l" : "b",
      title: axisTitles?.labels,
      format: this.plotted(labels)[0]?.format ?? "General",
      end: isNumbers ? NUMBERS_ALONG : namesAlong(this.isLying),
      reversed: topDown === true,
      gridlines: false,
      fromZero: false,
    });
  }

  private valueAxis(): string {
    const { type, axisTitles, topDown, series } = this.chart;
    const shown = series.find(({ unseen }) => !unseen) ?? series[0]!;
    const areBars = type === "bars" || type === "columns";
    return axis({
      element: "valAx",
      id: VALUE_AXIS,
      crosses: LABEL_AXIS,
      position: this.isLying ? "b" : "l",
      title: axisTitles?.values,
      format: this.plotted(shown.values)[0]?.format ?? "General",
      end: `<c:crosses val="${topDown ? "max" : "autoZero"}"/><c:crossBetween val="${type === "points" ? "midCat" : "between"}"/>`,
      reversed: false,
      gridlines: true,
      fromZero: areBars && this.isAllAboveZero(),
    });
  }

  private isAllAboveZero(): boolean {
    const values = this.chart.series.flatMap((series) => this.plotted(series.values).map(({ value }) => value));
    return values.every((value) => typeof value !== "number" || value > 0);
  }

  legend(): string {
    const { series } = this.chart;
    if (series.filter(({ unseen }) => !unseen).length < 2) return "";
    const hidden = series.map(({ unseen }, at) => (unseen && !this.isLying ? leftOut(at) : "")).join("");
    return `<c:legend><c:legendPos val="t"/>${hidden}<c:overlay val="0"/></c:legend>`;
  }
}

function leftOut(entry: number): string {
  return `<c:legendEntry><c:idx val="${entry}"/><c:delete val="1"/></c:legendEntry>`;
}

const NUMBERS_ALONG = '<c:crosses val="autoZero"/><c:crossBetween val="midCat"/>';
/** Beside lying bars there is room for every name. */
function namesAlong(isLying: boolean): string {
  const every = isLying ? '<c:tickLblSkip val="1"/>' : "";
  return `<c:crosses val="autoZero"/><c:auto val="0"/><c:lblAlgn val="ctr"/><c:lblOffset val="100"/>${every}<c:noMultiLvlLbl val="1"/>`;
}
const AXIS_IDS = `<c:axId val="${LABEL_AXIS}"/><c:axId val="${VALUE_AXIS}"/>`;
const NO_MARKER = '<c:marker><c:symbol val="none"/></c:marker>';
const NO_LINE = '<c:spPr><a:ln w="19050"><a:noFill/></a:ln></c:spPr>';

function barLook(look: Look | null): string {
  if (look === null) return "<c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>";
  const colour = `<a:srgbClr val="${look.colour}"/>`;
  const fill =
    look.hatch === null
      ? `<a:solidFill>${colour}</a:solidFill>`
      : `<a:pattFill prst="${look.hatch}"><a:fgClr>${colour}</a:fgClr><a:bgClr><a:srgbClr val="FFFFFF"/></a:bgClr></a:pattFill>`;
  return `<c:spPr>${fill}<a:ln w="9525"><a:solidFill>${colour}</a:solidFill></a:ln></c:spPr>`;
}

function lineLook(look: Look | null): string {
  if (look === null) return NO_LINE;
  return `<c:spPr><a:ln w="28575" cap="flat"><a:solidFill><a:srgbClr val="${look.colour}"/></a:solidFill><a:prstDash val="${look.dash}"/><a:round/></a:ln></c:spPr>`;
}

interface Axis {
  readonly element: "catAx" | "valAx";
  readonly id: number;
  readonly crosses: number;
  readonly position: "b" | "l";
  readonly title: string | undefined;
  readonly format: string;
  readonly end: string;
  readonly reversed: boolean;
  readonly gridlines: boolean;
  /** A bar that does not begin at 0 misleads. */
  readonly fromZero: boolean;
}

function axis({
  element,
  id,
  crosses,
  position,
  title: words,
  format,
  end,
  reversed,
  gridlines,
  fromZero,
}: Axis): string {
  const grid = gridlines
    ? '<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D1D5DB"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>'
    : "";
  return `<c:${element}><c:axId val="${id}"/><c:scaling><c:orientation val="${reversed ? "maxMin" : "minMax"}"/>${fromZero ? '<c:min val="0"/>' : ""}</c:scaling><c:delete val="0"/><c:axPos val="${position}"/>${grid}${words ? title(words, 900) : ""}<c:numFmt formatCode="${escaped(format)}" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="${gridlines ? "nextTo" : "low"}"/><c:crossAx val="${crosses}"/>${end}</c:${element}>`;
}

function title(words: string, size: number): string {
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="${size}" b="1"/><a:t>${escaped(words)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}

function numbersOf(range: string, cells: readonly PlottedCell[]): string {
  const points = cells
    .map(({ value }, at) => (typeof value === "number" ? `<c:pt idx="${at}"><c:v>${value}</c:v></c:pt>` : ""))
    .join("");
  const format = cells[0]?.format ?? "General";
  return `<c:numRef><c:f>${escaped(range)}</c:f><c:numCache><c:formatCode>${escaped(format)}</c:formatCode><c:ptCount val="${cells.length}"/>${points}</c:numCache></c:numRef>`;
}

function textsOf(range: string, cells: readonly PlottedCell[]): string {
  const points = cells
    .map(({ value }, at) =>
      value === undefined || value === "" ? "" : `<c:pt idx="${at}"><c:v>${escaped(String(value))}</c:v></c:pt>`,
    )
    .join("");
  return `<c:strRef><c:f>${escaped(range)}</c:f><c:strCache><c:ptCount val="${cells.length}"/>${points}</c:strCache></c:strRef>`;
}

export function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}
