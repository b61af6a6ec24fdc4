/** Workbooks from files and into files: our own kind, and Excel's. */
import type { Desk } from "./desk";
import { offer } from "./download";
import { tell, withdraw } from "./notices";
import { ask } from "./question";
import type { ReadWorkbook } from "./workbookFile";
import { EXCEL_ENDING, fileNameFor, fromText, nameOfFile, WrongFile } from "./workbookFile";

const ALTERED =
  "This file was changed or damaged since it was saved: its checksum does not fit. Numbers in it may be wrong.";

interface Found {
  readonly workbook: ReadWorkbook;
  /** What could not be carried over, once the workbook is open. */
  leftOut(): readonly string[];
}

export async function openFile(desk: Desk, file: File): Promise<void> {
  try {
    const { workbook, leftOut } = await read(desk, file);
    withdraw("file");
    const question = `Put “${workbook.name}” in the place of “${desk.workbook().name}”?`;
    const warning = workbook.isAltered ? `${ALTERED} ` : "";
    if (!(await ask(warning + question, "Open the file"))) return;
    await desk.replace(workbook);
    tellLeftOut(
      `“${file.name}” is open. Not all of it could be carried over; the file itself is unchanged.`,
      leftOut(),
    );
  } catch (error) {
    if (!(error instanceof WrongFile)) console.error(error);
    const reason = error instanceof WrongFile ? error.message : "Parts of it are missing or damaged.";
    tell(`“${file.name}” was not opened. ${reason} The present workbook is unchanged.`, "file");
  }
}

async function read(desk: Desk, file: File): Promise<Found> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (!isPacked(bytes)) return { workbook: fromText(await file.text()), leftOut: () => [] };
  const { openXlsx, UnreadableFile } = await excelFiles();
  try {
    const opened = openXlsx(desk.engine, bytes, nameOfFile(file.name));
    return { workbook: opened.workbook, leftOut: () => opened.leftOut(desk.sheet) };
  } catch (error) {
    throw error instanceof UnreadableFile ? new WrongFile(error.message) : error;
  }
}

const EXCEL_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

export async function saveAsExcel(desk: Desk): Promise<void> {
  withdraw("file");
  const { name } = desk.workbook();
  try {
    const { saveXlsx } = await excelFiles();
    tell("The Excel file is being made.", "file");
    await drawn();
    const { bytes, leftOut } = await saveXlsx(desk.engine, desk.model());
    const file = fileNameFor(name, EXCEL_ENDING);
    withdraw("file");
    offer(file, new Blob([bytes as Uint8Array<ArrayBuffer>], { type: EXCEL_TYPE }));
    tellLeftOut(`“${file}” is saved. Not all of the workbook could be put into it.`, leftOut);
  } catch (error) {
    console.error(error);
    tell(`“${name}” could not be saved as an Excel file. “Save as file…” keeps all of it.`, "file");
  }
}

function tellLeftOut(sentence: string, points: readonly string[]): void {
  if (points.length > 0) tell(sentence, "file", { points });
}

/** When what was just told can be read: a large workbook keeps the page busy for seconds. */
function drawn(): Promise<void> {
  return new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
}

/** Reading and writing of Excel's files is fetched when it is first needed. */
function excelFiles() {
  return import(/* webpackChunkName: "excel-files" */ "./xlsx");
}

/** Every file that is packed begins so. */
function isPacked(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}
