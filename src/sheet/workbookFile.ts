import type { EngineData } from "./engine";
import { sealed, sealOf } from "./seal";
import { asObject, isEngineData } from "./workbookShape";

export interface NamedWorkbook {
  readonly name: string;
  readonly data: EngineData;
}

export interface ReadWorkbook extends NamedWorkbook {
  /** Unknown of a workbook that an early version kept. */
  readonly savedAt?: Date;
  /** Its checksum does not fit: it was changed or damaged since it was saved, though it can be read. */
  readonly isAltered?: true;
}

export const FILE_ENDING = ".canyard.json";
export const EXCEL_ENDING = ".xlsx";

const FORMAT = "Canyard workbook";
/** A version that earlier pages cannot read needs a higher number; a further entry does not. */
const FORMAT_VERSION = 1;
const EXPECTED = `This page opens Excel workbooks (${EXCEL_ENDING}) and those that it saved itself, in files that end in ${FILE_ENDING}.`;
const DAMAGED = "It is a Canyard workbook, but parts of it are missing or damaged.";

/** Not one of our files; the message is a sentence for the page. */
export class WrongFile extends Error {}

/** One of ours that this page is too old for. */
export class NewerFile extends WrongFile {
  constructor(message = "It was saved by a newer Canyard than this one, so it cannot be read here.") {
    super(message);
  }
}

export function toText({ name, data }: NamedWorkbook, savedAt: Date): string {
  const saved = savedAt.toISOString();
  return sealed(JSON.stringify({ format: FORMAT, formatVersion: FORMAT_VERSION, saved, name, data }));
}

/** Throws WrongFile with the reason. */
export function fromText(given: string): ReadWorkbook {
  const text = given.trim();
  const seal = sealOf(text);
  const content = asObject(parse(text));
  if (content?.["format"] !== FORMAT)
    throw new WrongFile(seal === "none" ? `It is a data file of another program. ${EXPECTED}` : DAMAGED);
  const { formatVersion, saved, name, data } = content;
  // Both signs of a sealed text are lost only with more than one fault.
  const isAltered = seal === "broken" || (seal === "none" && saved !== undefined);
  if (typeof formatVersion !== "number" || formatVersion < 1)
    throw new WrongFile("It is a Canyard workbook without its version number, so it cannot be read safely.");
  if (formatVersion > FORMAT_VERSION && !isAltered)
    throw new NewerFile(
      `It was saved by a newer Canyard (file version ${formatVersion}; this page reads up to ${FORMAT_VERSION}).`,
    );
  if (formatVersion !== FORMAT_VERSION || typeof name !== "string" || !isEngineData(data)) throw new WrongFile(DAMAGED);
  return { name, data, ...withTime(saved), ...(isAltered && { isAltered }) };
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
  if (text === "") throw new WrongFile(`It is empty. ${EXPECTED}`);
  try {
    return JSON.parse(text);
  } catch {
    if (text.startsWith(`{"format":"${FORMAT}"`)) throw new WrongFile(DAMAGED);
    throw new WrongFile(`It is not a workbook of this page. ${EXPECTED}`);
  }
}

function withTime(saved: unknown): { readonly savedAt?: Date } {
  const savedAt = new Date(typeof saved === "string" ? saved : NaN);
  return Number.isNaN(savedAt.getTime()) ? {} : { savedAt };
}
