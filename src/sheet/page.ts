import { ternHollow } from "../workbooks/ternHollow";
import type { SheetAdapter } from "./adapter";
import type { Desk } from "./desk";
import { blankWorkbook, createDesk } from "./desk";
import { engineOnPage } from "./engine";
import { connectHelp } from "./help";
import { tell, withdraw } from "./notices";
import { ask } from "./question";
import { moveBetweenRegions } from "./regions";
import { registerCatalogue } from "./registration";
import { showCell } from "./statusLine";
import type { NamedWorkbook } from "./workbookFile";
import { fileNameFor, fromText, toText, WrongFile } from "./workbookFile";

declare global {
  interface Window {
    canyardSheet?: SheetAdapter;
    /** For the help in its frame: what F6 does on this page. */
    canyardNextRegion?: (step: number) => void;
  }
}

const OPENING = ternHollow;

const STARTING_FAILED =
  "The spreadsheet could not be started, because a part of this page did not arrive. Loading the page again may help.";

start().catch((error: unknown) => {
  console.error(error);
  tell(STARTING_FAILED);
});

async function start(): Promise<void> {
  const found = engineOnPage();
  const functions = window.canyard;
  if (!found || !functions) throw new Error("the engine or the functions are missing");
  registerCatalogue(found.engine, functions);
  const grid = byId("grid");
  const desk = await createDesk(found.engine, found.library, grid, OPENING);
  window.canyardSheet = desk.sheet;
  followSelection(desk.sheet);
  connectButtons(desk);
  connectRegions(grid);
}

function followSelection(sheet: SheetAdapter): void {
  const show = () => showCell(sheet.selected(), sheet.read(sheet.selected()));
  sheet.watch(show);
  show();
}

function connectButtons(desk: Desk): void {
  const fileField = byId<HTMLInputElement>("file-field");
  byId("new").addEventListener("click", () => void startAfresh(desk));
  byId("open").addEventListener("click", () => fileField.click());
  byId("save-as-file").addEventListener("click", () => saveAsFile(desk.workbook()));
  fileField.addEventListener("change", () => {
    const [file] = Array.from(fileField.files ?? []);
    // The same file may be chosen again after a change.
    fileField.value = "";
    if (file) void openFile(desk, file);
  });
}

async function startAfresh(desk: Desk): Promise<void> {
  const question = `Put a blank workbook in the place of “${desk.workbook().name}”? Save it as a file first if it is still needed.`;
  if (await ask(question, "Start a blank workbook")) await desk.replace(blankWorkbook());
}

async function openFile(desk: Desk, file: File): Promise<void> {
  try {
    const workbook = fromText(await file.text());
    withdraw("file");
    const question = `Put “${workbook.name}” in the place of “${desk.workbook().name}”?`;
    if (await ask(question, "Open the file")) await desk.replace(workbook);
  } catch (error) {
    if (!(error instanceof WrongFile)) console.error(error);
    const reason = error instanceof WrongFile ? error.message : "Parts of it are missing or damaged.";
    tell(`“${file.name}” was not opened. ${reason} The present workbook is unchanged.`, "file");
  }
}

function saveAsFile(workbook: NamedWorkbook): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([toText(workbook)], { type: "application/json" }));
  link.download = fileNameFor(workbook.name);
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function connectRegions(grid: HTMLElement): void {
  const status = byId("cell-status");
  const help = connectHelp(byId("help"), byId("help-button"), () => window.dispatchEvent(new Event("resize")));
  window.canyardNextRegion = moveBetweenRegions([
    { holds: byId("bar"), focus: () => byId("workbook-name").focus() },
    { holds: grid, focus: () => grid.querySelector<HTMLElement>(".o-grid-composer [contenteditable]")?.focus() },
    { holds: help.place, isThere: help.isOpen, focus: help.focus },
    { holds: status, focus: () => status.focus() },
  ]);
}

function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  return document.getElementById(id) as T;
}
