/** Excel takes the elements of a part in one order only, which the engine's writer does not keep everywhere. */
import { all, children } from "./xml";

const AXIS = `axId scaling delete axPos majorGridlines minorGridlines title numFmt majorTickMark minorTickMark tickLblPos
  spPr txPr crossAx crosses crossesAt auto lblAlgn lblOffset noMultiLvlLbl crossBetween majorUnit minorUnit`;
const SERIES = `idx order tx spPr invertIfNegative marker dPt dLbls trendline errBars cat val xVal yVal smooth`;

const ORDER: Readonly<Record<string, string>> = {
  worksheet: `sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetProtection autoFilter mergeCells
    conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter drawing tableParts`,
  workbook: "workbookPr bookViews sheets definedNames calcPr",
  chartSpace: "date1904 lang roundedCorners chart spPr txPr",
  chart: "title autoTitleDeleted plotArea legend plotVisOnly dispBlanksAs",
  title: "tx layout overlay spPr txPr",
  legend: "legendPos legendEntry layout overlay spPr txPr",
  barChart: "barDir grouping varyColors ser dLbls gapWidth overlap serLines axId",
  lineChart: "grouping varyColors ser dLbls dropLines hiLowLines upDownBars marker smooth axId",
  scatterChart: "scatterStyle varyColors ser dLbls axId",
  radarChart: "radarStyle varyColors ser dLbls axId",
  doughnutChart: "varyColors ser dLbls firstSliceAng holeSize",
  ser: SERIES,
  catAx: AXIS,
  valAx: AXIS,
  dateAx: AXIS,
  scaling: "logBase orientation max min",
  dLbls: `dLbl delete numFmt spPr txPr dLblPos showLegendKey showVal showCatName showSerName showPercent showBubbleSize
    separator showLeaderLines`,
};

export function putInOrder(document: Document): void {
  for (const [name, order] of Object.entries(ORDER)) {
    const places = order.split(/\s+/);
    for (const element of all(document, name)) sortChildren(element, places);
  }
}

function sortChildren(element: Element, places: readonly string[]): void {
  const place = ({ localName }: Element) => {
    const at = places.indexOf(localName);
    return at < 0 ? places.length : at;
  };
  const before = children(element);
  const after = [...before].sort((a, b) => place(a) - place(b));
  if (before.some((each, at) => each !== after[at])) element.append(...after);
}
