import type { EngineData } from "./engine";

export interface NamedWorkbook {
  readonly name: string;
  readonly data: EngineData;
}

export const FILE_ENDING = ".canyard.json";
export const EXCEL_ENDING = ".xlsx";

const FORMAT = "Canyard workbook";
const FORMAT_VERSION = 1;
const EXPECTED = `This page opens Excel workbooks (${EXCEL_ENDING}) and those that it saved itself, in files that end in ${FILE_ENDING}.`;

/** Not one of our files; the message is a sentence for the page. */
export class WrongFile extends Error {}

export function toText({ name, data }: NamedWorkbook): string {
  return JSON.stringify({ format: FORMAT, formatVersion: FORMAT_VERSION, name, data });
}

export function fromText(text: string): NamedWorkbook {
  const content = asObject(parse(text));
  if (content?.["format"] !== FORMAT) throw new WrongFile(`It is a data file of another program. ${EXPECTED}`);
  const { formatVersion, name, data } = content;
  if (typeof formatVersion !== "number" || formatVersion < 1)
    throw new WrongFile("It is a Canyard workbook without its version number, so it cannot be read safely.");
  if (formatVersion > FORMAT_VERSION)
    throw new WrongFile(
      `It was saved by a newer Canyard (file version ${formatVersion}; this page reads up to ${FORMAT_VERSION}).`,
    );
  if (typeof name !== "string" || !isEngineData(data))
    throw new WrongFile("It is a Canyard workbook, but parts of it are missing or damaged.");
  return { name, data };
}

export function fileNameFor(name: string, ending: string = FILE_ENDING): string {
  const legal = name
    .replace(/[\\/:*?"<>|\p{Cc}]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim()
    .slice(0, 80);
  return `${legal || "workbook"}${ending}`;
}

/** What a workbook is called whose file tells no name: the file's own, without its ending. */
export function nameOfFile(file: string): string {
  return file.replace(/(\.canyard\.json|\.[^.]{1,5})$/i, "").trim() || "Workbook";
}

function parse(text: string): unknown {
  if (text.trim() === "") throw new WrongFile(`It is empty. ${EXPECTED}`);
  try {
    return JSON.parse(text);
  } catch {
    throw new WrongFile(`It is not a workbook of this page. ${EXPECTED}`);
  }
}

function isEngineData(data: unknown): data is EngineData {
  const sheets = asObject(data)?.["sheets"];
  return Array.isArray(sheets) && sheets.length > 0 && sheets.every(isSheet);
}

function isSheet(sheet: unknown): boolean {
  const { id, name, cells } = asObject(sheet) ?? {};
  return typeof id === "string" && typeof name === "string" && asObject(cells) !== undefined;
}

function asObject(value: unknown): Record<string, unknown> | undefined {
  return typeof value === "object" && value !== null && !Array.isArray(value)
    ? (value as Record<string, unknown>)
    : undefined;
}
