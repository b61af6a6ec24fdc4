/** A laid-out workbook as an .xlsx file; the same workbook gives the same bytes. */
import { Workbook as ExcelWorkbook, type Cell as ExcelCell, type Worksheet } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Edition } from "../../src/workbooks/kit";
import { BOX_COLOUR, CHECK_COLOURS, LOOKS, NUMBER_FORMATS, type Look } from "../../src/workbooks/looks";
import type { Print, Validation } from "../../src/workbooks/model";
import { absoluteRange, blocksOf, cellsOf } from "../../src/workbooks/addresses";
import { withCharts, type Parts } from "./drawings";
import type { PlottedCell } from "../../src/workbooks/chartXml";
import type { LaidCell, LaidSheet, LaidWorkbook } from "./layOut";
import { MARGINS, pagesOf } from "./pages";
import { rowHeights } from "./rowHeights";

export interface FileFacts {
  readonly title: string;
  readonly edition: Edition;
}

/** Letter where inches are at home, A4 elsewhere. */
const PAPER: Readonly<Record<Edition, number>> = { us: 1, metric: 9 };
/** Two builds give the same file. */
const MADE = new Date(Date.UTC(2026, 0, 1));
const ZIPPED = new Date(2026, 0, 1);
/** What a spreadsheet of today writes: with an older number it works the whole file anew on opening. */
const CALCULATION = "191029";
const AUTHOR = "Canyard";
/** LibreOffice keeps the values that come with a file only where this begins with the name of a maker that it trusts. */
const MADE_BY = "Microsoft Excel workbook made by Canyard";
/** Everywhere at hand, or one of the same measures. */
const FONT = { name: "Arial", family: 2, size: 10 };
/** What a spreadsheet takes. */
const LONGEST_ERROR = 225;
const LONGEST_LIST = 255;

/** The form in which Excel stores our functions in a file. */
const STORED_PREFIX = "_xldudf_CANYARD_";
const TEXT_OR_SHOWN_PREFIX = /"(?:[^"]|"")*"|\bCANYARD\./g;

export function storedForm(formula: string): string {
  return formula.replace(TEXT_OR_SHOWN_PREFIX, (part) => (part.startsWith('"') ? part : STORED_PREFIX)).slice(1);
}

export async function xlsxOf(laid: LaidWorkbook, facts: FileFacts): Promise<Uint8Array> {
  const book = new ExcelWorkbook();
  Object.assign(book, { creator: AUTHOR, lastModifiedBy: AUTHOR, title: facts.title, created: MADE, modified: MADE });
  for (const sheet of laid.sheets) await addSheet(book, sheet, facts);
  for (const [name, range] of Object.entries(laid.workbook.namedRanges ?? {})) {
    book.definedNames.add(absoluteRange(range, ""), name);
  }
  const parts = unzipSync(new Uint8Array(await book.xlsx.writeBuffer()));
  return zipped(withCharts(corrected(parts), chartsOf(laid)));
}

async function addSheet(book: ExcelWorkbook, { sheet, cells }: LaidSheet, { edition }: FileFacts): Promise<void> {
  const target = book.addWorksheet(sheet.name);
  for (const [letters, width] of Object.entries(sheet.columnWidths ?? {})) target.getColumn(letters).width = width;
  for (const [address, cell] of cells) fill(target.getCell(address), cell);
  for (const [row, height] of rowHeights({ sheet, cells })) target.getRow(row).height = height;
  const { rows = 0, columns = 0 } = sheet.frozen ?? {};
  if (rows + columns > 0) target.views = [{ state: "frozen", xSplit: columns, ySplit: rows }];
  for (const validation of sheet.validations ?? []) validate(target, validation);
  colourChecks(target, cells);
  setUpPrint(target, { sheet, cells }, edition);
  // Without a password: it keeps fingers off the formulas and takes nothing from anybody.
  await target.protect(undefined as unknown as string, { formatCells: true, formatColumns: true, formatRows: true });
}

function fill(target: ExcelCell, { look, value, formula }: LaidCell): void {
  if (formula !== undefined) target.value = { formula: storedForm(formula), result: value ?? "" };
  else if (value !== undefined) target.value = value;
  style(target, look);
}

function style(target: ExcelCell, look: LaidCell["look"]): void {
  if (look.format) target.numFmt = NUMBER_FORMATS[look.format];
  const named = look.style && LOOKS[look.style];
  target.alignment = {
    vertical: named?.middle ? "middle" : "top",
    ...(named?.centred && { horizontal: "center" }),
    ...((look.wraps || named?.wraps) && { wrapText: true }),
    // A space between a number and the words that explain it.
    ...(look.wraps && look.style === "note" && { horizontal: "left", indent: 1 }),
  };
  if (look.style === "input") target.protection = { locked: false };
  if (named) dress(target, named);
}

function dress(target: ExcelCell, { text, fill: colour, bold, italic, size = FONT.size, boxed }: Look): void {
  target.font = { ...FONT, size, color: argb(text), ...(bold && { bold }), ...(italic && { italic }) };
  if (colour) target.fill = { type: "pattern", pattern: "solid", fgColor: argb(colour) };
  if (boxed) {
    const edge = { style: "thin", color: argb(BOX_COLOUR) } as const;
    target.border = { top: edge, bottom: edge, left: edge, right: edge };
  }
}

function argb(colour: string): { argb: string } {
  return { argb: `FF${colour}` };
}

function validate(target: Worksheet, validation: Validation): void {
  const { range, message } = validation;
  if (message.length > LONGEST_ERROR) throw new Error(`longer than ${LONGEST_ERROR} characters: ${message}`);
  const rule = {
    ...ruleOf(validation),
    allowBlank: true,
    showErrorMessage: true,
    errorStyle: "stop",
    errorTitle: "Not taken",
    error: message,
    showInputMessage: true,
    prompt: message,
  };
  for (const address of cellsOf(range).addresses) target.getCell(address).dataValidation = rule;
}

function ruleOf(validation: Validation) {
  if ("words" in validation) {
    const list = validation.words.join(",");
    if (list.length > LONGEST_LIST || validation.words.some((word) => word.includes(","))) {
      throw new Error(`no validation takes this list of words: ${list}`);
    }
    return { type: "list" as const, formulae: [`"${list.replaceAll('"', '""')}"`] };
  }
  if ("list" in validation) return { type: "list" as const, formulae: [validation.list] };
  const { least, most, whole } = validation;
  const type = whole ? ("whole" as const) : ("decimal" as const);
  return { type, operator: "between" as const, formulae: [least, most] };
}

function colourChecks(target: Worksheet, cells: ReadonlyMap<string, LaidCell>): void {
  const checks = [...cells].filter(([, { look }]) => look.style === "check").map(([address]) => address);
  if (checks.length === 0) return;
  const rules = CHECK_COLOURS.flatMap(({ words, text, fill: colour }) => words.map((word) => ({ word, text, colour })));
  target.addConditionalFormatting({
    ref: blocksOf(checks).replaceAll(", ", " "),
    rules: rules.map(({ word, text, colour }, at) => ({
      type: "cellIs",
      operator: "equal",
      formulae: [`"${word}"`],
      priority: at + 1,
      style: { font: { color: argb(text) }, fill: { type: "pattern", pattern: "solid", bgColor: argb(colour) } },
    })),
  });
}

function setUpPrint(target: Worksheet, laid: LaidSheet, edition: Edition): void {
  const { landscape, repeatedRows, area }: Print = laid.sheet.print ?? {};
  const { isOne, breaksBefore } = pagesOf(laid, edition);
  Object.assign(target.pageSetup, {
    paperSize: PAPER[edition],
    orientation: landscape ? "landscape" : "portrait",
    margins: MARGINS,
    fitToPage: true,
    fitToWidth: 1,
    fitToHeight: isOne ? 1 : 0,
    ...(repeatedRows && { printTitlesRow: repeatedRows.join(":") }),
    ...(area && { printArea: printArea(area) }),
  });
  for (const row of breaksBefore) target.getRow(row - 1).addPageBreak();
  target.headerFooter.oddFooter = "&L&A&R&P of &N";
}

/** The library adds the dollar before the letters only. */
function printArea(area: string): string {
  return cellsOf(area)
    .addresses.filter((_address, at, all) => at === 0 || at === all.length - 1)
    .map((address) => address.replace(/(\d+)$/, "$$$1"))
    .join(":");
}

function chartsOf({ sheets }: LaidWorkbook) {
  const plotted = (own: string) => (range: string) => {
    const { sheet: named, addresses } = cellsOf(range);
    const found = sheets.find(({ sheet }) => sheet.name === (named ?? own));
    if (!found) throw new Error(`a chart of ${own} draws ${range}, which is on no sheet`);
    return addresses.map((address) => plottedCell(found.cells.get(address)));
  };
  return sheets.map(({ sheet }) => ({
    sheet: sheet.name,
    charts: sheet.charts ?? [],
    plotted: plotted(sheet.name),
  }));
}

function plottedCell(cell: LaidCell | undefined): PlottedCell {
  return { value: cell?.value, format: cell?.look.format ? NUMBER_FORMATS[cell.look.format] : "General" };
}

/** What the library writes otherwise than wanted: when to work the file anew, who made it, the font of cells without a style. */
function corrected(parts: Parts): Parts {
  const replace = (name: string, part: RegExp, by: string): Uint8Array => {
    const text = strFromU8(parts[name]!);
    if (!part.test(text)) throw new Error(`${name} does not hold ${part.source}`);
    return strToU8(text.replace(part, by));
  };
  const font = `<font><sz val="${FONT.size}"/><color theme="1"/><name val="${FONT.name}"/><family val="${FONT.family}"/></font>`;
  return {
    ...parts,
    "xl/workbook.xml": replace("xl/workbook.xml", /<calcPr [^>]*\/>/, `<calcPr calcId="${CALCULATION}"/>`),
    "docProps/app.xml": replace(
      "docProps/app.xml",
      /<Application>.*?<\/Application>/,
      `<Application>${MADE_BY}</Application>`,
    ),
    "xl/styles.xml": replace("xl/styles.xml", /<font>.*?<\/font>/, font),
  };
}

function zipped(parts: Parts): Uint8Array {
  const types = "[Content_Types].xml";
  const names = [
    types,
    ...Object.keys(parts)
      .filter((name) => name !== types)
      .sort(),
  ];
  return zipSync(Object.fromEntries(names.map((name) => [name, parts[name]!])), { mtime: ZIPPED, level: 6 });
}
