import { blank } from "../workbooks/blank";
import type { Workbook } from "../workbooks/model";
import type { ComponentLibrary, Engine, EngineModel } from "./engine";
import { createGrid, tellOfGrid } from "./grid";
import { keepWorkbook } from "./keeping";
import { tell, withdraw } from "./notices";
import type { PresentSheet } from "./presentSheet";
import { presentSheet } from "./presentSheet";
import { render } from "./render";
import type { SheetModel } from "./sheetModel";
import { openSheetModel } from "./sheetModel";
import { changesByOpening, refuseNewer } from "./versions";
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
  saveAsFile(): void;
  /** Throws, and leaves everything as it was, when the engine cannot open the workbook. */
  replace(workbook: NamedWorkbook, isOurs?: boolean): Promise<void>;
}

/** Lays out the workbook kept in this browser, or else the opening one. */
export async function createDesk(
  engine: Engine,
  library: ComponentLibrary,
  host: HTMLElement,
  opening: Workbook,
): Promise<Desk> {
  const name = nameField();
  let open: SheetModel | undefined;
  let sheet: PresentSheet | undefined;
  let isUntouched = false;

  const workbook = (): NamedWorkbook => ({ name: name.read(), data: open!.exportData() });
  const touched = () => {
    isUntouched = false;
    keeping.changed();
  };
  const show = async (next: SheetModel, title: string) => {
    open = next;
    if (sheet) sheet.becomes(next.adapter);
    else sheet = presentSheet(next.adapter);
    name.write(title);
    await grid.show(next.model);
  };
  const lay = async (next: NamedWorkbook, isForeign = false) => {
    refuseNewer(engine, next.data);
    const changes = changesByOpening(engine, next.data);
    const opened = openSheetModel(engine, next.data, touched, tellOfGrid);
    // What cannot be saved again is not taken in the place of what can.
    if (isForeign) opened.exportData();
    const former = open && { model: open, title: name.read() };
    try {
      await show(opened, next.name);
    } catch (error) {
      if (former) await show(former.model, former.title);
      throw error;
    }
    isUntouched = false;
    tellChanges(next.name, changes(opened.model));
  };
  // Who may keep the workbook is asked for while the grid is fetched.
  const keeping = keepWorkbook({ workbook, open: (stored) => lay(stored) });
  const grid = await createGrid(engine, library, host);

  const isFresh = !(await keeping.restore());
  if (isFresh) {
    await lay(named(opening));
    isUntouched = true;
  }
  name.onChange(touched);
  return {
    sheet: sheet!,
    engine,
    workbook,
    model: () => open!.model,
    isUntouched: () => isUntouched,
    isFresh,
    saveAsFile: keeping.saveAsFile,
    async replace(next, isOurs = false) {
      keeping.flush();
      await lay(next, !isOurs);
      isUntouched = isOurs;
      keeping.changed();
      keeping.flush();
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

function tellChanges(name: string, points: readonly string[]): void {
  withdraw("older version");
  if (points.length === 0) return;
  tell(`“${name}” was saved by an older Canyard. Bringing it up to date changed something:`, "older version", {
    points,
  });
}
