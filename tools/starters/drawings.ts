/** Puts charts into the parts of an .xlsx file whose sheets have none. */
import { strFromU8, strToU8 } from "fflate";
import type { Chart } from "../../src/workbooks/model";
import { placeOf } from "../../src/workbooks/addresses";
import { chartXml, escaped, type Plotted } from "../../src/workbooks/chartXml";

export type Parts = Record<string, Uint8Array>;

const EMU_OF_A_PIXEL = 9525;
const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const TYPES = "application/vnd.openxmlformats-officedocument.";

export interface SheetCharts {
  readonly sheet: string;
  readonly charts: readonly Chart[];
  readonly plotted: Plotted;
}

/** The sheets in their order; returns the parts with the drawings and charts added. */
export function withCharts(parts: Parts, sheets: readonly SheetCharts[]): Parts {
  const added: Parts = { ...parts };
  const overrides: string[] = [];
  let drawings = 0;
  let charts = 0;
  sheets.forEach(({ sheet, charts: wanted, plotted }, at) => {
    if (wanted.length === 0) return;
    drawings += 1;
    const first = charts + 1;
    for (const chart of wanted) {
      charts += 1;
      added[`xl/charts/chart${charts}.xml`] = strToU8(chartXml(chart, sheet, plotted));
      overrides.push(override(`/xl/charts/chart${charts}.xml`, "drawingml.chart+xml"));
    }
    added[`xl/drawings/drawing${drawings}.xml`] = strToU8(drawingXml(wanted));
    added[`xl/drawings/_rels/drawing${drawings}.xml.rels`] = strToU8(
      relations(wanted.map((_chart, index) => ["chart", `../charts/chart${first + index}.xml`])),
    );
    overrides.push(override(`/xl/drawings/drawing${drawings}.xml`, "drawing+xml"));
    attach(added, at + 1, drawings);
  });
  const types = "[Content_Types].xml";
  added[types] = strToU8(strFromU8(parts[types]!).replace("</Types>", `${overrides.join("")}</Types>`));
  return added;
}

function attach(parts: Parts, sheetNumber: number, drawing: number): void {
  const sheet = `xl/worksheets/sheet${sheetNumber}.xml`;
  const links = `xl/worksheets/_rels/sheet${sheetNumber}.xml.rels`;
  const text = strFromU8(parts[sheet]!);
  if (parts[links] || /<(drawing|legacyDrawing|tableParts|extLst)\b/.test(text)) {
    throw new Error(`${sheet} has parts of its own already`);
  }
  parts[sheet] = strToU8(text.replace("</worksheet>", '<drawing r:id="rId1"/></worksheet>'));
  parts[links] = strToU8(relations([["drawing", `../drawings/drawing${drawing}.xml`]]));
}

function drawingXml(charts: readonly Chart[]): string {
  return `${HEAD}<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main">${charts.map(anchor).join("")}</xdr:wsDr>`;
}

function anchor({ title, description, position: { cell, width, height } }: Chart, at: number): string {
  const { row, column } = placeOf(cell);
  const from = `<xdr:from><xdr:col>${column - 1}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row - 1}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from>`;
  const size = `<xdr:ext cx="${width * EMU_OF_A_PIXEL}" cy="${height * EMU_OF_A_PIXEL}"/>`;
  const names = `<xdr:cNvPr id="${at + 2}" name="Chart ${at + 1}" descr="${escaped(description)}" title="${escaped(title)}"/>`;
  const graphic = `<a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:r="${OFFICE}" r:id="rId${at + 1}"/></a:graphicData></a:graphic>`;
  return `<xdr:oneCellAnchor>${from}${size}<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr>${names}<xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>${graphic}</xdr:graphicFrame><xdr:clientData/></xdr:oneCellAnchor>`;
}

function relations(targets: readonly (readonly [type: string, target: string])[]): string {
  const links = targets.map(
    ([type, target], at) => `<Relationship Id="rId${at + 1}" Type="${OFFICE}/${type}" Target="${target}"/>`,
  );
  return `${HEAD}<Relationships xmlns="${RELATIONS}">${links.join("")}</Relationships>`;
}

function override(part: string, type: string): string {
  return `<Override PartName="${part}" ContentType="${TYPES}${type}"/>`;
}
