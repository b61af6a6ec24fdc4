import type { Cell, Chart, Sheet, Workbook } from "../workbooks/model";
import { isExplaining, isFormula, isTable, isValue } from "../workbooks/model";
import { columnOf, plain, rowOf } from "./addresses";
import { asText } from "./asText";
import type { EngineData, EngineSheet } from "./engine";
import { withoutDoubledQuotes } from "./quotes";
import { renderChart } from "./renderChart";
import { renderChecks } from "./renderChecks";
import { borderNumber, BORDERS, FORMAT_TABLE, formatNumber, STYLE_TABLE, styleNumber } from "./renderStyles";
import { renderValidation } from "./renderValidation";

// The engine brings data of an older version up to date by itself, so this says what the shapes below were written for.
const DATA_VERSION = "19.3.2";

const LEAST_ROWS = 100;
const LEAST_COLUMNS = 26;
/** Height of a row of the engine. */
const ROW_PIXELS = 23;

/** Turns a workbook into what the engine opens. */
export function render(workbook: Workbook): EngineData {
  return {
    version: DATA_VERSION,
    sheets: workbook.sheets.map(renderSheet),
    styles: STYLE_TABLE,
    formats: FORMAT_TABLE,
    borders: BORDERS,
    namedRanges: Object.fromEntries(
      Object.entries(workbook.namedRanges ?? {}).map(([name, range]) => [name, plain(range)]),
    ),
    ...(workbook.growing && { growing: workbook.growing }),
  };
}

function renderSheet(sheet: Sheet, index: number): EngineSheet {
  const id = `sheet${index + 1}`;
  const cells = Object.entries(sheet.cells);
  return {
    id,
    name: sheet.name,
    rowNumber: Math.max(
      LEAST_ROWS,
      sheet.rows ?? 0,
      ...cells.map(([address]) => rowOf(address) + 1),
      ...(sheet.charts ?? []).map(rowsFor),
    ),
    colNumber: Math.max(LEAST_COLUMNS, sheet.columns ?? 0, ...cells.map(([address]) => columnOf(address) + 1)),
    cells: Object.fromEntries(
      cells.map(([address, cell]) => [address, contentOf(cell)]).filter(([, content]) => content !== ""),
    ),
    styles: byAddress(cells, styleNumber),
    formats: byAddress(cells, formatNumber),
    borders: byAddress(cells, borderNumber),
    cols: Object.fromEntries(
      Object.entries(sheet.columnWidths ?? {}).map(([letter, width]) => [columnOf(letter), { size: pixelsOf(width) }]),
    ),
    panes: { xSplit: sheet.frozen?.columns ?? 0, ySplit: sheet.frozen?.rows ?? 0 },
    conditionalFormats: renderChecks(sheet, id),
    dataValidationRules: (sheet.validations ?? []).map((validation, at) =>
      renderValidation(validation, `${id}-rule${at + 1}`),
    ),
    figures: (sheet.charts ?? []).map((chart, at) => renderChart(chart, `${id}-chart${at + 1}`)),
  };
}

/** Rows down to the foot of a chart: the engine moves one that hangs below the last row up to the first. */
function rowsFor({ position: { cell, height } }: Chart): number {
  return rowOf(cell) + Math.ceil(height / ROW_PIXELS) + 1;
}

function contentOf(cell: Cell): string {
  if (isFormula(cell)) return withoutDoubledQuotes(cell.formula);
  if (isTable(cell)) return withoutDoubledQuotes(cell.table);
  if (isExplaining(cell)) return asText(cell.words);
  if (!isValue(cell)) return "";
  const { value } = cell;
  if (typeof value === "boolean") return String(value).toUpperCase();
  return typeof value === "string" ? asText(value) : String(value);
}

function byAddress(
  cells: readonly (readonly [string, Cell])[],
  numberFor: (cell: Cell) => number | undefined,
): Record<string, number> {
  return Object.fromEntries(
    cells
      .map(([address, cell]) => [address, numberFor(cell)] as const)
      .filter((entry): entry is [string, number] => entry[1] !== undefined),
  );
}

/** Excel counts a column's width in characters of 7 pixels, with 5 pixels to spare. */
function pixelsOf(characters: number): number {
  return Math.round(characters * 7 + 5);
}
