/** Excel through Office.js: the only file that names Excel and Office. */
import { HostFailure, type CellFound, type FormulaCell, type Rows, type SheetHost } from "./sheetHost";

const MOST_CELLS = 100_000;

const SENTENCES: Readonly<Record<string, string>> = {
  InvalidSelection: "Click a cell of this workbook first: another workbook or a drawing is selected.",
  InvalidOperationInCellEditMode: "A cell is being edited. Finish it with Enter or Escape, then try again.",
  AccessDenied: "This sheet is protected. Unprotect it, or choose a cell that is open.",
  GeneralException: "Excel did not take that. Choose a single cell of an open sheet and try again.",
  ItemNotFound: "That sheet, range or name is not in this workbook.",
  InvalidReference: "That is not a range of this workbook.",
  InvalidArgument: "Excel did not take that formula. Check the cells that it names.",
};

function sentenceFor(error: unknown): HostFailure {
  if (error instanceof HostFailure) return error;
  const code = (error as { code?: string }).code ?? "";
  return new HostFailure(SENTENCES[code] ?? `Excel could not do that (${code === "" ? "no reason given" : code}).`);
}

async function run<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  try {
    return await Excel.run({ delayForCellEdit: true }, work);
  } catch (error) {
    throw sentenceFor(error);
  }
}

/** A change as one step of the host's undo; older hosts do not know the option and take the change as it is. */
async function change<T>(work: (context: Excel.RequestContext) => Promise<T>): Promise<T> {
  const options = { delayForCellEdit: true, mergeUndoGroup: true };
  try {
    return await Excel.run(options, work);
  } catch (error) {
    if ((error as { code?: string }).code === "UndoNotSupported") return run(work);
    throw sentenceFor(error);
  }
}

const ERROR_VALUE = /^#(?:VALUE!|N\/A|REF!|DIV\/0!|NUM!|NAME\?|NULL!|BUSY!|SPILL!|CALC!|CONNECT!)/;

function foundIn(value: unknown): CellFound {
  if (typeof value === "string" && ERROR_VALUE.test(value)) return { code: value, message: "" };
  if (value === "" || value === null || value === undefined) return null;
  return value as CellFound;
}

function formulaIn(content: unknown): string | null {
  return typeof content === "string" && content.startsWith("=") ? content : null;
}

interface Place {
  readonly sheet: string | null;
  readonly range: string;
}

/** Splits "Plan!A1:B2" and "'Catch test'!A1"; Excel gives and takes both. */
function placeOf(address: string): Place {
  const at = address.lastIndexOf("!");
  if (at < 0) return { sheet: null, range: address };
  const name = address.slice(0, at);
  const bare = name.startsWith("'") ? name.slice(1, -1).replace(/''/g, "'") : name;
  return { sheet: bare, range: address.slice(at + 1) };
}

const REFERENCE = /^(?:(?:'(?:[^']|'')+'|[^'!\s]+)!)?\$?[A-Z]{1,3}\$?\d*(?::\$?[A-Z]{1,3}\$?\d*)?$/i;
const NAME = /^[A-Za-z_\\][\w.\\]*$/;

async function rangeOf(context: Excel.RequestContext, expression: string, sheet: string): Promise<Excel.Range | null> {
  if (REFERENCE.test(expression)) {
    const place = placeOf(expression);
    return context.workbook.worksheets.getItem(place.sheet ?? sheet).getRange(place.range.replace(/\$/g, ""));
  }
  if (!NAME.test(expression)) return null;
  const named = context.workbook.names.getItemOrNullObject(expression);
  named.load("isNullObject");
  await context.sync();
  return named.isNullObject ? null : named.getRange();
}

async function valuesOf(context: Excel.RequestContext, range: Excel.Range): Promise<Rows> {
  range.load("cellCount");
  await context.sync();
  if (range.cellCount > MOST_CELLS || range.cellCount < 0) {
    throw new HostFailure(`That range is too large to be shown here; choose ${MOST_CELLS} cells or fewer.`);
  }
  range.load("values");
  await context.sync();
  return range.values.map((row) => row.map(foundIn));
}

async function selectedRange(context: Excel.RequestContext): Promise<Excel.Range> {
  const range = context.workbook.getSelectedRange();
  range.load("address,cellCount");
  await context.sync();
  return range;
}

async function firstCellOf(context: Excel.RequestContext, range: Excel.Range): Promise<Excel.Range> {
  const cell = range.getCell(0, 0);
  cell.load("address,formulas,values,text");
  await context.sync();
  return cell;
}

export const excel: SheetHost = {
  kind: "Excel",

  selection: () =>
    run(async (context) => {
      const range = await selectedRange(context);
      const cell = await firstCellOf(context, range);
      const { sheet, range: address } = placeOf(range.address);
      return {
        sheet: sheet ?? "",
        range: address,
        cells: range.cellCount,
        formula: formulaIn(cell.formulas[0]?.[0]),
        found: foundIn(cell.values[0]?.[0]),
      };
    }),

  evaluate: (expression, sheet) =>
    run(async (context) => {
      const range = await rangeOf(context, expression, sheet);
      return range === null ? null : valuesOf(context, range);
    }),

  writeFormula: (formula, replace) =>
    change(async (context) => {
      const range = await selectedRange(context);
      if (range.cellCount !== 1) throw new HostFailure("Select one cell for the formula, then insert it.");
      const cell = await firstCellOf(context, range);
      const present: unknown = cell.formulas[0]?.[0];
      const address = placeOf(cell.address).range;
      if (!replace && present !== "") return { occupiedBy: String(present), address };
      cell.formulas = [[formula]];
      await context.sync();
      return { written: address };
    }),

  formulas: () =>
    run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const used = sheet.getUsedRangeOrNullObject();
      sheet.load("name");
      used.load("isNullObject,address,formulas,values,rowIndex,columnIndex");
      await context.sync();
      return { sheet: sheet.name, cells: used.isNullObject ? [] : formulaCells(used) };
    }),

  enter: (sheet, cells) =>
    change(async (context) => {
      const target = context.workbook.worksheets.getItem(sheet);
      for (const { address, formula } of cells) target.getRange(address).formulas = [[formula]];
      await context.sync();
    }),

  onSelection(listener) {
    const handler = (): Promise<void> => Promise.resolve(listener());
    let registered: OfficeExtension.EventHandlerResult<Excel.SelectionChangedEventArgs> | null = null;
    run(async (context) => {
      registered = context.workbook.onSelectionChanged.add(handler);
      await context.sync();
    }).catch(() => undefined);
    return () => {
      const added = registered;
      if (added === null) return;
      Excel.run(added.context, async (context) => {
        added.remove();
        await context.sync();
      }).catch(() => undefined);
    };
  },
};

const LETTERS = 26;
const LETTER_A = 65;

function columnName(index: number): string {
  const last = String.fromCharCode(LETTER_A + (index % LETTERS));
  return index < LETTERS ? last : columnName(Math.floor(index / LETTERS) - 1) + last;
}

function formulaCells({ formulas, values, rowIndex, columnIndex }: Excel.Range): FormulaCell[] {
  return formulas.flatMap((row, down) =>
    row.flatMap((content: unknown, across) => {
      const formula = formulaIn(content);
      if (formula === null) return [];
      const address = `${columnName(columnIndex + across)}${rowIndex + down + 1}`;
      return [{ address, formula, found: foundIn(values[down]?.[across]) }];
    }),
  );
}

const LIBRARY_WAIT = 50;

/** Excel, once its library has come and says that it runs inside Excel; null in any other place. */
export async function excelWhenReady(library: HTMLScriptElement | null): Promise<SheetHost | null> {
  if (library === null) return null;
  await libraryLoaded(library);
  if (typeof Office === "undefined") return null;
  const { host } = await Office.onReady();
  return host === Office.HostType.Excel ? excel : null;
}

function libraryLoaded(library: HTMLScriptElement): Promise<void> {
  return new Promise((resolve) => {
    if (typeof Office !== "undefined") return resolve();
    library.addEventListener("load", () => setTimeout(resolve, LIBRARY_WAIT));
    library.addEventListener("error", () => resolve());
  });
}

export interface HostTheme {
  readonly isDark: boolean;
}

/** The host's own theme, where it tells it. */
export function hostTheme(): HostTheme | null {
  const theme = typeof Office === "undefined" ? undefined : Office.context?.officeTheme;
  if (theme === undefined || theme === null) return null;
  const { isDarkTheme, bodyBackgroundColor } = theme as Office.OfficeTheme & { isDarkTheme?: boolean };
  return { isDark: isDarkTheme ?? isDarkColor(bodyBackgroundColor) };
}

const HALF_BRIGHT = 384;

function isDarkColor(color: string): boolean {
  const parts = /^#?([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(color);
  if (parts === null) return false;
  return parts.slice(1).reduce((sum, part) => sum + parseInt(part, 16), 0) < HALF_BRIGHT;
}
