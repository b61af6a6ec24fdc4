/**
 * Makes an .xlsx file ready for the engine, whose reader takes much but not all: what it would misread is rewritten,
 * what it does not read at all is read here.
 */
import { translateFormulaToA1, translateFormulaToR1C1 } from "@borgar/fx";
import { asText } from "../asText";
import { fromFile } from "./functionNames";
import { Package, relative, relsOf } from "./package";
import type { Bytes } from "./package";
import { readChart, type ReadChart } from "./readCharts";
import { readRules, type FileRule } from "./readRules";
import { all, attribute, child, first, written } from "./xml";

export interface FileWorkbook {
  /** What the engine reads. */
  readonly parts: Readonly<Record<string, string | { readonly imageSrc: string }>>;
  /** Of every part, also of those that the engine does not read. */
  readonly paths: readonly string[];
  readonly sheets: readonly FileSheet[];
  /** Names that stand for one block of cells. */
  readonly names: Readonly<Record<string, string>>;
  readonly otherNames: readonly string[];
  readonly isProtected: boolean;
  readonly hasWhatIfTables: boolean;
  /** Areas to print, or rows that head every page. */
  readonly hasPrintNames: boolean;
}

export interface FileSheet {
  readonly name: string;
  readonly path: string;
  /** What each cell with a formula showed last. */
  readonly shown: ReadonlyMap<string, FileValue>;
  readonly rules: readonly FileRule[];
  readonly charts: readonly PlacedChart[];
}

export type FileValue = number | string | boolean | { readonly error: string };

export interface PlacedChart {
  readonly column: number;
  readonly row: number;
  readonly chart: ReadChart | undefined;
}

/** Not a workbook that can be read; the message is a sentence for the page. */
export class UnreadableFile extends Error {}

export function readParts(bytes: Bytes): FileWorkbook {
  const file = new Package(bytes);
  const workbook = file.relationships("").find(({ kind }) => kind === "officeDocument")?.target;
  if (workbook === undefined || !file.has(workbook))
    throw new UnreadableFile("It is a packed file without a workbook in it.");
  const book = file.document(workbook);
  if (["1", "true"].includes(attributeOf(book, "workbookPr", "date1904") ?? "")) {
    throw new UnreadableFile(
      "It counts its days from 1904 and not from 1900, so its dates would come out four years wrong.",
    );
  }
  const names = readNames(book);
  const strings = sharedStrings(file, workbook);
  const sheets = sheetsOf(file, workbook).map((sheet) => readSheet(file, sheet, strings, names.ranges));
  makeTargetsRelative(file);
  return {
    parts: engineParts(file),
    paths: file.paths,
    sheets: sheets.map(({ sheet }) => sheet),
    names: names.ranges,
    otherNames: names.others,
    hasPrintNames: names.hasPrintNames,
    isProtected: sheets.some(({ isProtected }) => isProtected),
    hasWhatIfTables: sheets.some(({ hasWhatIfTables }) => hasWhatIfTables),
  };
}

function sheetsOf(file: Package, workbook: string): { name: string; path: string }[] {
  const parts = file.relationships(workbook);
  return all(file.document(workbook), "sheet").flatMap((element) => {
    const part = parts.find(({ id }) => id === attribute(element, "id"));
    return part?.kind === "worksheet" ? [{ name: attribute(element, "name") ?? "", path: part.target }] : [];
  });
}

function readSheet(
  file: Package,
  { name, path }: { name: string; path: string },
  strings: readonly string[],
  names: Readonly<Record<string, string>>,
) {
  const document = file.document(path);
  const shown = readCells(document, strings);
  const protection = first(document, "sheetProtection");
  protection?.remove();
  const sheet: FileSheet = {
    name,
    path,
    shown: shown.values,
    rules: readRules(document, names),
    charts: chartsOf(file, path),
  };
  for (const element of all(document, "formula")) translate(element);
  splitColouring(document);
  return { sheet, isProtected: protection !== undefined, hasWhatIfTables: shown.hasWhatIfTables };
}

/** Makes every cell one that the engine reads right, and tells what the formulas showed. */
function readCells(document: Document, strings: readonly string[]) {
  const values = new Map<string, FileValue>();
  const shared = new Map<string, { formula: string; at: string }>();
  let hasWhatIfTables = false;
  for (const cell of all(document, "c")) {
    const at = attribute(cell, "r") ?? "";
    const formula = child(cell, "f");
    if (!formula) {
      keepText(cell, strings);
      continue;
    }
    if (attribute(formula, "t") === "dataTable") hasWhatIfTables = true;
    else {
      writeOut(formula, at, shared);
      translate(formula);
    }
    const value = shownIn(cell, strings);
    if (value !== undefined) values.set(at, value);
  }
  return { values, hasWhatIfTables };
}

/** A formula that is written once for many cells is written out in each. */
function writeOut(formula: Element, at: string, shared: Map<string, { formula: string; at: string }>): void {
  const index = attribute(formula, "si");
  if (attribute(formula, "t") !== "shared" || index === undefined) return;
  if (formula.textContent) shared.set(index, { formula: formula.textContent, at });
  const origin = shared.get(index);
  if (origin && origin.at !== at) {
    const relativeFormula = translateFormulaToR1C1(`=${origin.formula}`, origin.at);
    formula.textContent = String(translateFormulaToA1(relativeFormula, at)).slice(1);
  }
  for (const name of ["t", "si", "ref"]) formula.removeAttribute(name);
}

/** The engine takes one rule of a block, and no word in quotes to be equal to. */
function splitColouring(document: Document): void {
  for (const element of all(document, "conditionalFormatting")) {
    for (const rule of all(element, "cfRule")) {
      const formula = child(rule, "formula");
      const word = /^"((?:[^"]|"")*)"$/.exec(formula?.textContent ?? "")?.[0];
      const isWord = attribute(rule, "type") === "cellIs" && attribute(rule, "operator") === "equal" && word;
      const ranges = (attribute(element, "sqref") ?? "").split(/\s+/);
      for (const range of isWord ? ranges : [ranges.join(" ")]) {
        const own = element.cloneNode(false) as Element;
        const ownRule = rule.cloneNode(true) as Element;
        own.setAttribute("sqref", range);
        own.append(ownRule);
        if (isWord) {
          ownRule.setAttribute("type", "expression");
          ownRule.removeAttribute("operator");
          child(ownRule, "formula")!.textContent = `${range.split(":")[0]!}=${word}`;
        }
        element.parentElement!.insertBefore(own, element);
      }
    }
    element.remove();
  }
}

function translate(formula: Element): void {
  if (formula.textContent) formula.textContent = fromFile(formula.textContent);
}

/** A text that reads like a number, a date or a formula stays a text. */
function keepText(cell: Element, strings: readonly string[]): void {
  const type = attribute(cell, "t");
  const text = type === "inlineStr" || type === "s" || type === "str" ? textIn(cell, strings) : undefined;
  if (text === undefined || (type === "s" && asText(text) === text)) return;
  for (const part of Array.from(cell.childNodes)) part.remove();
  cell.setAttribute("t", "str");
  const value = cell.ownerDocument.createElementNS(cell.namespaceURI, "v");
  value.setAttribute("xml:space", "preserve");
  value.textContent = asText(text);
  cell.append(value);
}

function textIn(cell: Element, strings: readonly string[]): string | undefined {
  if (attribute(cell, "t") === "inlineStr") return runs(cell);
  const value = child(cell, "v")?.textContent ?? undefined;
  return attribute(cell, "t") === "s" ? strings[Number(value)] : value;
}

function shownIn(cell: Element, strings: readonly string[]): FileValue | undefined {
  const type = attribute(cell, "t") ?? "n";
  const text = textIn(cell, strings);
  if (text === undefined) return undefined;
  if (type === "b") return text === "1";
  if (type === "e") return { error: text };
  return type === "n" ? Number(text) : text;
}

function sharedStrings(file: Package, workbook: string): string[] {
  const path = file.relationships(workbook).find(({ kind }) => kind === "sharedStrings")?.target;
  return path && file.has(path) ? all(file.document(path), "si").map(runs) : [];
}

/** The text of all runs, without how it is to be pronounced. */
function runs(parent: Element): string {
  return all(parent, "t")
    .filter(({ parentElement }) => parentElement?.localName !== "rPh")
    .map(({ textContent }) => textContent ?? "")
    .join("")
    .replace(/_x([0-9A-Fa-f]{4})_/g, (_, code: string) => String.fromCharCode(parseInt(code, 16)));
}

function readNames(book: Document) {
  const ranges: Record<string, string> = {};
  const others: string[] = [];
  let hasPrintNames = false;
  for (const element of all(book, "definedName")) {
    const name = attribute(element, "name") ?? "";
    if (name.startsWith("_xlnm.Print")) hasPrintNames = true;
    if (name.startsWith("_xlnm.")) continue;
    const range = element.textContent?.trim() ?? "";
    const isRange = /^(?:'(?:[^']|'')+'|[^'!,()[\]]+)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i.test(range);
    if (isRange && attribute(element, "localSheetId") === undefined) ranges[name] = range.replaceAll("$", "");
    else if (attribute(element, "hidden") !== "1") others.push(name);
  }
  return { ranges, others, hasPrintNames };
}

function chartsOf(file: Package, sheet: string): PlacedChart[] {
  const drawing = file.relationships(sheet).find(({ kind }) => kind === "drawing")?.target;
  if (drawing === undefined || !file.has(drawing)) return [];
  const parts = file.relationships(drawing);
  return all(file.document(drawing), "from").flatMap((from) => {
    const frame = from.parentElement && first(from.parentElement, "graphicFrame");
    const id = frame && first(frame, "chart") && attribute(first(frame, "chart")!, "id");
    const path = parts.find((part) => part.id === id)?.target;
    if (!frame || path === undefined || !file.has(path)) return [];
    const description = attributeOf(frame, "cNvPr", "descr") ?? "";
    const chart = readChart(file.document(path), description);
    if (chart) file.replace(path, PLACEHOLDER);
    return [{ column: numberIn(from, "col"), row: numberIn(from, "row"), chart }];
  });
}

/** In place of a chart that was read here, so that the engine gives its place and size and stumbles over nothing in it. */
const PLACEHOLDER = `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart><c:plotArea><c:barChart><c:barDir val="col"/><c:grouping val="clustered"/><c:ser><c:idx val="0"/><c:order val="0"/><c:tx><c:v>1</c:v></c:tx><c:val><c:numRef><c:f>A1</c:f></c:numRef></c:val></c:ser></c:barChart></c:plotArea></c:chart></c:chartSpace>`;

const numberIn = (parent: Element, name: string): number => Number(first(parent, name)?.textContent ?? 0);

function attributeOf(parent: Document | Element, element: string, name: string): string | undefined {
  const found = first(parent, element);
  return found && attribute(found, name);
}

/** The engine does not find a part that is called by its path from the root. */
function makeTargetsRelative(file: Package): void {
  for (const path of file.paths.filter((each) => each.endsWith(".rels") && each !== relsOf(""))) {
    const from = path.replace("_rels/", "").replace(/\.rels$/, "");
    for (const element of all(file.document(path), "Relationship")) {
      const target = attribute(element, "Target") ?? "";
      if (target.startsWith("/")) element.setAttribute("Target", relative(from, target.slice(1)));
    }
  }
}

const PICTURES: Readonly<Record<string, string>> = { png: "png", jpg: "jpeg", jpeg: "jpeg", gif: "gif", webp: "webp" };

function engineParts(file: Package): FileWorkbook["parts"] {
  const parts: Record<string, string | { imageSrc: string }> = {};
  for (const path of file.paths) {
    const type = PICTURES[path.split(".").at(-1)!.toLowerCase()];
    if (path.endsWith(".xml") || path.endsWith(".rels")) parts[path] = written(file.document(path));
    else if (type) parts[path] = { imageSrc: `data:image/${type};base64,${base64(file.raw(path))}` };
  }
  return parts;
}

function base64(bytes: Uint8Array): string {
  let text = "";
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}
