import { blank } from "../workbooks/blank";
import type { Workbook } from "../workbooks/model";
import { autosave } from "./autosave";
import type { ComponentLibrary, Engine, EngineModel } from "./engine";
import { createGrid, tellOfGrid } from "./grid";
import { tell, withdraw } from "./notices";
import type { PresentSheet } from "./presentSheet";
import { presentSheet } from "./presentSheet";
import { render } from "./render";
import type { SheetModel } from "./sheetModel";
import { openSheetModel } from "./sheetModel";
import type { RestoreOutcome, SaveOutcome } from "./storage";
import { STORAGE_KEYS, workbookStorage } from "./storage";
import type { NamedWorkbook } from "./workbookFile";

/** The one workbook in hand: what is shown, kept and replaced. */
export interface Desk {
  readonly sheet: PresentSheet;
  readonly engine: Engine;
  workbook(): NamedWorkbook;
  model(): EngineModel;
  /** As it was laid out from our own workbooks: nothing is lost with it. */
  isUntouched(): boolean;
  /** Nothing was kept in this browser when the page opened. */
  readonly isFresh: boolean;
  /** Throws, and leaves everything as it was, when the engine cannot open the workbook. */
  replace(workbook: NamedWorkbook, isOurs?: boolean): Promise<void>;
}

const SAVE_SENTENCES: Readonly<Record<Exclude<SaveOutcome, "saved">, string>> = {
  full: "This browser's storage is full, so the last changes are not kept here. Save the workbook as a file.",
  refused:
    "This browser does not let the page keep the workbook, so it is lost when the page closes. Save the workbook as a file.",
};

const RESTORE_SENTENCES: Partial<Readonly<Record<RestoreOutcome, string>>> = {
  "last good restored":
    "The workbook kept in this browser could not be read. The last one that opened well is shown; the unreadable copy is kept aside.",
  unreadable: "The workbook kept in this browser could not be read. It is kept aside, and a fresh workbook is shown.",
  refused: SAVE_SENTENCES.refused,
};

/** Lays out the workbook kept in this browser, or else the opening one. */
export async function createDesk(
  engine: Engine,
  library: ComponentLibrary,
  host: HTMLElement,
  opening: Workbook,
): Promise<Desk> {
  const grid = await createGrid(engine, library, host);
  const name = nameField();
  const storage = workbookStorage(() => window.localStorage);
  const saving = autosave(() => tellSaved(storage.save(workbook())));
  let open: SheetModel;
  let isUntouched = false;

  const workbook = (): NamedWorkbook => ({ name: name.read(), data: open.exportData() });
  const changed = () => {
    showSaving();
    saving.changed();
  };
  const touched = () => {
    isUntouched = false;
    changed();
  };
  const lay = (next: NamedWorkbook, isOurs = false) => {
    open = openSheetModel(engine, next.data, touched, tellOfGrid);
    name.write(next.name);
    isUntouched = isOurs;
  };

  const outcome = storage.restore((stored) => lay(stored));
  const isFresh = outcome !== "restored" && outcome !== "last good restored";
  if (isFresh) lay(named(opening), true);
  tellRestored(outcome);
  const sheet = presentSheet(open!.adapter);
  await grid.show(open!.model);

  name.onChange(touched);
  warnOfOtherTabs();
  return {
    sheet,
    engine,
    workbook,
    model: () => open.model,
    isUntouched: () => isUntouched,
    isFresh,
    async replace(next, isOurs) {
      saving.flush();
      lay(next, isOurs);
      sheet.becomes(open.adapter);
      await grid.show(open.model);
      changed();
      saving.flush();
    },
  };
}

export function named(workbook: Workbook): NamedWorkbook {
  return { name: workbook.name, data: render(workbook) };
}

function nameField() {
  const field = document.getElementById("workbook-name") as HTMLInputElement;
  const read = () => field.value.trim() || blank.name;
  const showTitle = () => (document.title = `${read()} – Canyard`);
  return {
    read,
    write(name: string) {
      field.value = name;
      showTitle();
    },
    onChange(changed: () => void) {
      field.addEventListener("change", () => {
        showTitle();
        changed();
      });
    },
  };
}

function showSaving(): void {
  document.getElementById("saved")!.textContent = "Saving…";
}

function tellSaved(outcome: SaveOutcome): void {
  document.getElementById("saved")!.textContent = outcome === "saved" ? "Saved" : "Not saved";
  if (outcome === "saved") withdraw("saving");
  else tell(SAVE_SENTENCES[outcome], "saving");
}

function tellRestored(outcome: RestoreOutcome): void {
  const sentence = RESTORE_SENTENCES[outcome];
  if (sentence) tell(sentence, outcome === "refused" ? "saving" : "restoring");
}

function warnOfOtherTabs(): void {
  window.addEventListener("storage", ({ key }) => {
    if (key !== STORAGE_KEYS.present) return;
    tell("This workbook was also changed in another tab of this browser. What is saved last is kept.", "another tab");
  });
}
