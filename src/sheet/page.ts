import type { Workbook } from "../workbooks/model";
import { ternHollow } from "../workbooks/ternHollow";
import type { SheetAdapter } from "./adapter";
import type { Desk } from "./desk";
import { connectWeather } from "./weatherButton";
import type { Choice } from "./chooser";
import { connectChooser, START_FROM_IT } from "./chooser";
import { createDesk, named } from "./desk";
import { giveCaretBack } from "./dialogFocus";
import { engineOnPage } from "./engine";
import { openFile, saveAsExcel } from "./files";
import { connectHelp, type Help } from "./help";
import { tell, withdraw } from "./notices";
import { keepForOffline } from "./offline";
import { prepareEngine } from "./prepare";
import { ask } from "./question";
import { moveBetweenRegions } from "./regions";
import type { Edition } from "./starterFiles";
import { starterFiles } from "./starterFiles";
import { showCell } from "./statusLine";

declare global {
  interface Window {
    canyardSheet?: SheetAdapter;
    /** For the help in its frame: what F6 does on this page. */
    canyardNextRegion?: (step: number) => void;
    /** For the help as well: opens a starter after asking; false when the person kept the present workbook. */
    canyardOpenStarter?: (id: string, edition: Edition) => Promise<boolean>;
  }
}

const OPENING = ternHollow;
const WELCOME = "welcome";

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
  prepareEngine(found.engine, functions);
  const grid = byId("grid");
  // Before the grid measures its room.
  const help = connectHelp(byId("help"), byId("help-button"), () => window.dispatchEvent(new Event("resize")));
  const desk = await createDesk(found.engine, found.library, grid, OPENING);
  window.canyardSheet = desk.sheet;
  followSelection(desk.sheet);
  connectButtons(desk);
  connectWeather(desk, functions);
  connectRegions(grid, help);
  giveCaretBack(document.querySelectorAll("dialog"));
  afterPainting(() => {
    help.fill();
    keepForOffline();
  });
}

/** What is not needed for the first look at the sheet must not keep it waiting. */
function afterPainting(work: () => void): void {
  requestAnimationFrame(() => setTimeout(work));
}

function followSelection(sheet: SheetAdapter): void {
  const show = () => showCell(sheet.selected(), sheet.read(sheet.selected()));
  sheet.watch(show);
  show();
}

function connectButtons(desk: Desk): void {
  const fileField = byId<HTMLInputElement>("file-field");
  const files = starterFiles();
  const choose = connectChooser(files, (choice) => void startFrom(desk, choice));
  window.canyardOpenStarter = async (id, edition) => lay(desk, await files.workbook(id, edition), START_FROM_IT);
  byId("new").addEventListener("click", choose);
  byId("open").addEventListener("click", () => fileField.click());
  byId("save-as-file").addEventListener("click", desk.saveAsFile);
  byId("save-as-excel").addEventListener("click", () => void saveAsExcel(desk));
  fileField.addEventListener("change", () => {
    const [file] = Array.from(fileField.files ?? []);
    // The same file may be chosen again after a change.
    fileField.value = "";
    if (file) void openFile(desk, file);
  });
  if (desk.isFresh) welcome(choose);
}

/** The example can be looked at and worked in at once; nobody has to choose first. */
function welcome(choose: () => void): void {
  tell("This is an example: one day at an invented nursery. There are workbooks to start your own from.", WELCOME, {
    actions: [{ words: "Choose a workbook…", act: choose }],
  });
}

/** False when the person kept the present workbook. */
async function lay(desk: Desk, workbook: Workbook, agree: string): Promise<boolean> {
  const next = named(workbook);
  const question = `Put “${next.name}” in the place of “${desk.workbook().name}”? Save that as a file first if it is still needed.`;
  if (!desk.isUntouched() && !(await ask(question, agree))) return false;
  await desk.replace(next, true);
  withdraw(WELCOME);
  return true;
}

async function startFrom(desk: Desk, { title, agree, workbook }: Choice): Promise<void> {
  try {
    const chosen = await workbook();
    withdraw("starter");
    await lay(desk, chosen, agree);
  } catch (error) {
    console.error(error);
    tell(`“${title}” could not be fetched or opened. The present workbook is unchanged.`, "starter");
  }
}

function connectRegions(grid: HTMLElement, help: Help): void {
  const status = byId("cell-status");
  const notices = byId("notices");
  const firstButton = () => notices.querySelector("button");
  window.canyardNextRegion = moveBetweenRegions([
    { holds: byId("bar"), focus: () => byId("workbook-name").focus() },
    { holds: notices, isThere: () => firstButton() !== null, focus: () => firstButton()?.focus() },
    { holds: grid, focus: () => grid.querySelector<HTMLElement>(".o-grid-composer [contenteditable]")?.focus() },
    { holds: help.place, isThere: help.isOpen, focus: help.focus },
    { holds: status, focus: () => status.focus() },
  ]);
}

function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  return document.getElementById(id) as T;
}
