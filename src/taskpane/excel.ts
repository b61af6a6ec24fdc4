/** Excel through Office.js: the only file that names Excel and Office. */
import { sentenceFor } from "./excelSentences";
import { columnName, placeOf } from "./reference";
import { HostFailure, type CellFound, type FormulaCell, type Rows, type SheetHost, type Startup } from "./sheetHost";

const MOST_CELLS = 100_000;
const READ_AT_ONCE = 50_000;

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
    if ((error as { code?: string } | null)?.code === "UndoNotSupported") return run(work);
    throw sentenceFor(error);
  }
}

function supports(version: string): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", version);
}

type CellsRead = Pick<Excel.Range, "values" | "valueTypes">;

/** What stands in a cell of a range that was read; the host gives an error as text, and tells it by its type only. */
function foundAt({ values, valueTypes }: CellsRead, row: number, column: number): CellFound {
  const value: unknown = values[row]?.[column];
  if (valueTypes[row]?.[column] === Excel.RangeValueType.error) return { code: String(value), message: "" };
  return value === "" || value === undefined ? null : (value as CellFound);
}

function rowsIn(range: CellsRead): Rows {
  return range.values.map((cells, row) => cells.map((_cell, column) => foundAt(range, row, column)));
}

/** A cell of text that looks like a formula has that text as its value too. */
function formulaIn(content: unknown, value: unknown): string | null {
  return typeof content === "string" && content.startsWith("=") && content !== value ? content : null;
}

const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\?]*$/u;

/** What a name of the workbook stands for; a sheet's own names go before the workbook's. */
async function namedRows(context: Excel.RequestContext, name: string, sheet: string): Promise<Rows | null> {
  const { worksheets, names } = context.workbook;
  const candidates = [worksheets.getItem(sheet).names, names].map((each) => each.getItemOrNullObject(name));
  for (const candidate of candidates) candidate.load("isNullObject,type,value");
  await context.sync();
  const item = candidates.find(({ isNullObject }) => !isNullObject);
  if (item === undefined) return null;
  if (item.type === Excel.NamedItemType.range) return valuesOf(context, item.getRange());
  const isConstant = item.type !== Excel.NamedItemType.array && item.type !== Excel.NamedItemType.error;
  return isConstant ? [[item.value as CellFound]] : null;
}

async function valuesOf(context: Excel.RequestContext, range: Excel.Range): Promise<Rows> {
  range.load("cellCount");
  await context.sync();
  // Excel counts beyond 2 147 483 647 cells as -1.
  if (range.cellCount > MOST_CELLS || range.cellCount < 0) {
    const most = MOST_CELLS.toLocaleString("en");
    throw new HostFailure(`That range is too large to be read here: name ${most} cells or fewer, not whole columns.`);
  }
  range.load("values,valueTypes");
  await context.sync();
  return rowsIn(range);
}

async function selectedRange(context: Excel.RequestContext): Promise<Excel.Range> {
  const range = context.workbook.getSelectedRange();
  range.load("address,cellCount");
  await context.sync();
  return range;
}

async function firstCellOf(context: Excel.RequestContext, range: Excel.Range): Promise<Excel.Range> {
  const cell = range.getCell(0, 0);
  cell.load("address,formulas,values,valueTypes,text");
  await context.sync();
  return cell;
}

/** The address of a range without its sheet, and the sheet. */
function placeOfRange({ address }: Pick<Excel.Range, "address">): { readonly sheet: string; readonly range: string } {
  const { sheet, range } = placeOf(address) ?? { sheet: null, range: address };
  return { sheet: sheet ?? "", range };
}

/** Kept in the workbook by the host: it then starts the add-in whenever that workbook is opened. */
const startup: Startup = {
  async read() {
    return (await Office.addin.getStartupBehavior()) === Office.StartupBehavior.load;
  },
  set: (isOn) => Office.addin.setStartupBehavior(isOn ? Office.StartupBehavior.load : Office.StartupBehavior.none),
};

export const excel: SheetHost = {
  kind: "Excel",
  startup,

  selection: () =>
    run(async (context) => {
      const range = await selectedRange(context);
      const cell = await firstCellOf(context, range);
      return {
        ...placeOfRange(range),
        cells: range.cellCount,
        formula: formulaIn(cell.formulas[0]?.[0], cell.values[0]?.[0]),
        found: foundAt(cell, 0, 0),
      };
    }),

  evaluate: (expression, sheet) =>
    run(async (context) => {
      const place = placeOf(expression);
      if (place === null) return NAME.test(expression) ? namedRows(context, expression, sheet) : null;
      const target = context.workbook.worksheets.getItem(place.sheet ?? sheet);
      return valuesOf(context, target.getRange(place.range.replace(/\$/g, "")));
    }),

  writeFormula: (formula, replace) =>
    change(async (context) => {
      const range = await selectedRange(context);
      if (range.cellCount !== 1) throw new HostFailure("Select one cell for the formula, then insert it.");
      const cell = await firstCellOf(context, range);
      const address = placeOfRange(cell).range;
      const present: unknown = cell.formulas[0]?.[0];
      if (!replace && present !== "") {
        const isFormula = formulaIn(present, cell.values[0]?.[0]) !== null;
        return { occupiedBy: isFormula ? String(present) : cell.text[0]?.[0] || String(present), address };
      }
      cell.formulas = [[formula]];
      await context.sync();
      return { written: address };
    }),

  formulas: () =>
    run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const used = sheet.getUsedRangeOrNullObject();
      sheet.load("name");
      used.load("isNullObject,rowIndex,columnIndex,rowCount,columnCount");
      await context.sync();
      return { sheet: sheet.name, cells: used.isNullObject ? [] : await formulasWithin(context, sheet, used) };
    }),

  enter: (sheet, cells) =>
    change(async (context) => {
      const target = context.workbook.worksheets.getItem(sheet);
      for (const { address, formula } of cells) target.getRange(address).formulas = [[formula]];
      await context.sync();
    }),

  addWorkbook: async (starter) => {
    const { addWorkbook } = await import(/* webpackChunkName: "excelWorkbook" */ "./excelWorkbook/addWorkbook");
    return addWorkbook({ run: (options, work) => Excel.run(options, work), supports }, starter);
  },

  onSelection(listener) {
    let stopped = false;
    const handler = (): Promise<void> => Promise.resolve(stopped ? undefined : listener());
    const adding = run(async (context) => {
      const added = context.workbook.onSelectionChanged.add(handler);
      await context.sync();
      return added;
    });
    // Without the event the pane still has its button to look at the selected cell.
    adding.catch(() => undefined);
    return () => {
      stopped = true;
      adding.then(removeHandler).catch(() => undefined);
    };
  },
};

/** The host takes a handler away only in the context in which it was added. */
function removeHandler(added: OfficeExtension.EventHandlerResult<Excel.SelectionChangedEventArgs>): Promise<void> {
  return Excel.run(added.context as Excel.RequestContext, async (context) => {
    added.remove();
    await context.sync();
  });
}

/** Read in blocks of rows, because the host hands over only so much at once. */
async function formulasWithin(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rowIndex, columnIndex, rowCount, columnCount }: Excel.Range,
): Promise<FormulaCell[]> {
  const rowsAtOnce = Math.max(1, Math.floor(READ_AT_ONCE / columnCount));
  const found: FormulaCell[] = [];
  for (let first = 0; first < rowCount; first += rowsAtOnce) {
    const rows = Math.min(rowsAtOnce, rowCount - first);
    const block = sheet.getRangeByIndexes(rowIndex + first, columnIndex, rows, columnCount);
    block.load("formulas,values,valueTypes,rowIndex,columnIndex");
    await context.sync();
    found.push(...formulaCells(block));
  }
  return found;
}

function formulaCells(block: Excel.Range): FormulaCell[] {
  const { formulas, values, rowIndex, columnIndex } = block;
  return formulas.flatMap((row, down) =>
    row.flatMap((content: unknown, across) => {
      const formula = formulaIn(content, values[down]?.[across]);
      if (formula === null) return [];
      const address = `${columnName(columnIndex + across)}${rowIndex + down + 1}`;
      return [{ address, formula, found: foundAt(block, down, across) }];
    }),
  );
}

const LIBRARY_WAIT = 50;

/** Excel, once its library has come and says that it runs inside Excel; null in any other place. */
export async function excelWhenReady(library: HTMLScriptElement | null): Promise<SheetHost | null> {
  if (library === null) return null;
  await libraryLoaded(library);
  if (typeof Office === "undefined") return null;
  try {
    const { host } = await Office.onReady();
    return host === Office.HostType.Excel ? excel : null;
  } catch {
    return null;
  }
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
