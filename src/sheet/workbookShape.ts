import type { EngineData } from "./engine";

type Test = (value: unknown) => boolean;

/** What a sheet of Excel holds at most, and more than the engine can show with ease. */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

const isText: Test = (value) => typeof value === "string";
const isList: Test = (value) => Array.isArray(value);
const isRecord: Test = (value) => asObject(value) !== undefined;
const isListOf =
  (test: Test): Test =>
  (value) =>
    Array.isArray(value) && value.every(test);
const isRecordOf =
  (test: Test): Test =>
  (value) =>
    isRecord(value) && Object.values(value as object).every(test);
const isCount =
  (most: number): Test =>
  (value) =>
    Number.isInteger(value) && (value as number) >= 1 && (value as number) <= most;

/** The engine numbered its versions before it named them. */
const isVersion: Test = (value) =>
  typeof value === "number" || (isText(value) && /^\d+(\.\d+)*$/.test(value as string));

/** A cell is its text; in data of older versions it is a record. */
const isCell: Test = (value) => isText(value) || isRecord(value);

const WORKBOOK_PARTS: Readonly<Record<string, Test>> = {
  version: isVersion,
  styles: isRecord,
  formats: isRecord,
  borders: isRecord,
  settings: isRecord,
  pivots: isRecord,
  customTableStyles: isRecord,
  namedRanges: isRecord,
  growing: isRecord,
};

const SHEET_PARTS: Readonly<Record<string, Test>> = {
  rowNumber: isCount(MOST_ROWS),
  colNumber: isCount(MOST_COLUMNS),
  cells: isRecordOf(isCell),
  rows: isRecord,
  cols: isRecord,
  panes: isRecord,
  headerGroups: isRecord,
  merges: isListOf(isText),
  figures: isListOf(isRecord),
  tables: isListOf(isRecord),
  conditionalFormats: isListOf(isRecord),
  dataValidationRules: isListOf(isRecord),
};

/**
 * Whether everything is of its kind. The engine itself takes much that is not, and leaves it out without a word: a list
 * of cells in the place of a record would open as an empty sheet.
 */
export function isEngineData(data: unknown): data is EngineData {
  const workbook = asObject(data);
  const sheets = workbook?.["sheets"];
  if (!workbook || !isList(sheets) || (sheets as unknown[]).length === 0) return false;
  return hasParts(workbook, WORKBOOK_PARTS) && (sheets as unknown[]).every(isSheet) && areApart(sheets as Named[]);
}

interface Named {
  readonly id: string;
  readonly name: string;
}

function isSheet(given: unknown): boolean {
  const sheet = asObject(given);
  if (!sheet || !isText(sheet["id"]) || !isText(sheet["name"]) || sheet["cells"] === undefined) return false;
  return hasParts(sheet, SHEET_PARTS);
}

/** Of two sheets with one name the engine would show the last only. */
function areApart(sheets: readonly Named[]): boolean {
  const differ = (texts: readonly string[]) => new Set(texts).size === texts.length;
  return differ(sheets.map(({ id }) => id)) && differ(sheets.map(({ name }) => name.toLowerCase()));
}

function hasParts(whole: Readonly<Record<string, unknown>>, parts: Readonly<Record<string, Test>>): boolean {
  return Object.entries(parts).every(([name, test]) => whole[name] === undefined || test(whole[name]));
}

export function asObject(value: unknown): Record<string, unknown> | undefined {
  return typeof value === "object" && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : undefined;
}
