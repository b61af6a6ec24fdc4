/** An open workbook as an .xlsx file, with a list in words of what the file could not be given. */
import { zipSync } from "fflate";
import type { Engine, EngineModel, ExportedPart } from "../engine";
import { exportData } from "../sheetModel";
import { unlikeOpen } from "./unlike";
import { chartPart, chartsOf } from "./writeCharts";
import { writeCells, type Names } from "./writeCells";
import { writeNames } from "./writeNames";
import { writeRules } from "./writeRules";
import { putInOrder } from "./schemaOrder";
import { add, all, attribute, child, parse, written } from "./xml";

export interface SavedFile {
  readonly bytes: Uint8Array;
  readonly leftOut: readonly string[];
}

/** The colour words of a file have eight digits, the first two for how opaque it is. */
const OPAQUE = "FF";

export async function saveXlsx(engine: Engine, model: EngineModel): Promise<SavedFile> {
  const { files } = await model.exportXLSX();
  const parts = new Map(files.filter(isText).map(({ path, content }) => [path, content]));
  const leftOut: string[] = [];
  const names = (exportData(model)["namedRanges"] ?? {}) as Names;
  const change = (path: string, work: (document: Document) => void) => {
    const document = parse(parts.get(path)!);
    work(document);
    putInOrder(document);
    parts.set(path, written(document));
  };
  model.getters.getSheetIds().forEach((sheetId, at) => {
    change(`xl/worksheets/sheet${at}.xml`, (document) => {
      writeCells(document, engine, model, sheetId, names);
      leftOut.push(...writeRules(document, model, sheetId));
      printOnePageWide(document.documentElement);
      keepRowHeights(document, model, sheetId);
    });
  });
  writeCharts(model, parts);
  change("xl/workbook.xml", (document) => writeNames(document, names));
  change("xl/styles.xml", (document) => {
    for (const element of all(document, "*")) {
      const rgb = attribute(element, "rgb");
      if (rgb?.length === 6) element.setAttribute("rgb", OPAQUE + rgb);
    }
  });
  addProperties(parts);
  const bytes = zipped(parts, files.filter(isPicture));
  return { bytes, leftOut: [...leftOut, ...unlikeOpen(engine, model, bytes)] };
}

const USUAL_HEIGHT = 23;
const POINTS_PER_PIXEL = 0.75;

/** Rows are as high as their words need; not every program works that out on opening. */
function keepRowHeights(document: Document, model: EngineModel, sheetId: string): void {
  for (const row of all(document, "row")) {
    const pixels = model.getters.getRowSize(sheetId, Number(attribute(row, "r")) - 1);
    if (Math.round(pixels) === USUAL_HEIGHT || row.hasAttribute("ht")) continue;
    row.setAttribute("ht", String(Math.round(pixels * POINTS_PER_PIXEL * 4) / 4));
    row.setAttribute("customHeight", "1");
  }
}

function printOnePageWide(sheet: Element): void {
  const properties = child(sheet, "sheetPr") ?? add(sheet, "sheetPr");
  add(properties, "pageSetUpPr", { fitToPage: "1" });
  add(sheet, "pageSetup", { orientation: "landscape", fitToWidth: "1", fitToHeight: "0" });
}

type TextPart = Extract<ExportedPart, { content: string }>;
type Picture = Extract<ExportedPart, { imageSrc: string }>;

const isText = (part: ExportedPart): part is TextPart => "content" in part;
const isPicture = (part: ExportedPart): part is Picture => "imageSrc" in part;

/** The engine numbers its chart parts from 1 through all sheets. */
function writeCharts(model: EngineModel, parts: Map<string, string>): void {
  let number = 0;
  for (const sheetId of model.getters.getSheetIds()) {
    for (const chartId of chartsOf(model, sheetId)) {
      number += 1;
      const path = `xl/charts/chart${number}.xml`;
      const theirs = parts.get(path);
      if (theirs === undefined) continue;
      const document = parse(theirs);
      putInOrder(document);
      parts.set(path, chartPart(model, sheetId, chartId) ?? written(document));
    }
  }
}

const PROPERTIES = "docProps/app.xml";
const PROPERTIES_TYPE = "application/vnd.openxmlformats-officedocument.extended-properties+xml";
const PROPERTIES_RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/extended-properties";

/** Other programs keep the last values of a file only when it says that it is one of Excel's kind. */
function addProperties(parts: Map<string, string>): void {
  parts.set(
    PROPERTIES,
    `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>
<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>Microsoft Excel</Application><AppVersion>16.0300</AppVersion></Properties>`,
  );
  const types = parse(parts.get("[Content_Types].xml")!);
  add(types.documentElement, "Override", { PartName: `/${PROPERTIES}`, ContentType: PROPERTIES_TYPE });
  parts.set("[Content_Types].xml", written(types));
  const root = parse(parts.get("_rels/.rels")!);
  add(root.documentElement, "Relationship", { Id: "rId2", Type: PROPERTIES_RELATION, Target: PROPERTIES });
  parts.set("_rels/.rels", written(root));
}

function zipped(parts: ReadonlyMap<string, string>, pictures: readonly Picture[]): Uint8Array {
  const utf8 = new TextEncoder();
  return zipSync({
    ...Object.fromEntries([...parts].map(([path, text]) => [path, utf8.encode(text)])),
    ...Object.fromEntries(pictures.map(({ path, imageSrc }) => [path, bytesOf(imageSrc)])),
  });
}

/** A picture of this page is written out in its address; one from elsewhere is not fetched. */
function bytesOf(address: string): Uint8Array {
  const [, base64 = ""] = /^data:[^,]*;base64,(.*)$/s.exec(address) ?? [];
  return Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));
}
