import type { Edition } from "../workbooks/kit";
import { onSheet } from "./reference";
import { HostFailure, type CellFound, type SheetHost } from "./sheetHost";

interface CellReading {
  readonly formula: string | null;
  readonly value: number | string | boolean | null;
  readonly shown: string;
  readonly message: string | null;
}

/** The browser sheet, as the page around the pane offers it. */
export interface PageSheet {
  selection(): { readonly sheet: string; readonly range: string };
  read(address: string): CellReading;
  write(address: string, content: string): void;
  evaluate(expression: string, sheet: string): readonly (readonly CellFound[])[];
  formulas(sheet: string): readonly { address: string; formula: string; found: CellFound }[];
  watch(listener: () => void): () => void;
}

function firstCell(range: string): string {
  return range.split(":")[0] ?? range;
}

function foundIn({ value, message }: CellReading): CellFound {
  return message !== null && typeof value === "string" ? { code: value, message } : value;
}

/** The sheet answers at once or throws; the pane gets a sentence either way. */
function attempt<T>(work: () => T): Promise<T> {
  try {
    return Promise.resolve(work());
  } catch (error) {
    return Promise.reject(new HostFailure(`The sheet could not do that: ${(error as Error).message}.`));
  }
}

export function browserSheet(sheet: PageSheet): SheetHost {
  const selection: SheetHost["selection"] = () =>
    attempt(() => {
      const { sheet: name, range } = sheet.selection();
      const reading = sheet.read(onSheet(name, firstCell(range)));
      const cells = range.includes(":") ? sheet.evaluate(range, name).flat().length : 1;
      return { sheet: name, range, cells, formula: reading.formula, found: foundIn(reading) };
    });
  return {
    kind: "browser sheet",
    selection,
    evaluate: (expression, name) => attempt(() => sheet.evaluate(expression, name)),
    writeFormula: (formula, replace) =>
      attempt(() => {
        const { sheet: name, range } = sheet.selection();
        const address = firstCell(range);
        const { shown, value, formula: present } = sheet.read(onSheet(name, address));
        if (!replace && (value !== null || present !== null)) return { occupiedBy: present ?? shown, address };
        sheet.write(onSheet(name, address), formula);
        return { written: address };
      }),
    formulas: () =>
      attempt(() => {
        const { sheet: name } = sheet.selection();
        return { sheet: name, cells: sheet.formulas(name) };
      }),
    enter: (name, cells) =>
      attempt(() => cells.forEach(({ address, formula }) => sheet.write(onSheet(name, address), formula))),
    onSelection: (listener) => sheet.watch(listener),
    openStarter: async (id, edition) => {
      const open = pageAround()?.canyardOpenStarter;
      if (open === undefined) throw new HostFailure("This page has no chooser of workbooks.");
      return (await open(id, edition)) !== false;
    },
  };
}

interface PageAround {
  canyardSheet?: PageSheet;
  canyardNextRegion?: (step: number) => void;
  /** Opens a starter after asking; false when the person kept the present workbook. */
  canyardOpenStarter?: (id: string, edition: Edition) => Promise<boolean>;
}

function pageAround(): PageAround | null {
  return window.parent === window ? null : (window.parent as unknown as PageAround);
}

/** F6 moves on to the next part of the page around, as it does there. */
export function passRegionKeyOn(): void {
  window.addEventListener("keydown", (event) => {
    const move = event.key === "F6" ? pageAround()?.canyardNextRegion : undefined;
    if (move === undefined) return;
    event.preventDefault();
    move(event.shiftKey ? -1 : 1);
  });
}

/** The sheet of the page that holds the pane, if there is one of ours. */
export function sheetAround(): PageSheet | null {
  try {
    return pageAround()?.canyardSheet ?? null;
  } catch {
    return null;
  }
}
