import type { NamedWorkbook } from "./workbookFile";
import { fromText, toText } from "./workbookFile";

/** The workbook in hand, the last one that opened well, and one that could not be read. */
export const STORAGE_KEYS = {
  present: "canyard.workbook",
  lastGood: "canyard.workbook.last-good",
  setAside: "canyard.workbook.set-aside",
} as const;

export type SaveOutcome = "saved" | "full" | "refused";

/**
 * The browser's own storage. It writes at once, so a page that is being closed still saves;
 * a database could not promise that.
 */
export interface WorkbookStorage {
  save(workbook: NamedWorkbook): SaveOutcome;
  /** Hands each stored workbook, the newest first, to `open` until one opens. `open` throws on one it cannot use. */
  restore(open: (workbook: NamedWorkbook) => void): RestoreOutcome;
}

export type RestoreOutcome = "nothing stored" | "restored" | "last good restored" | "unreadable" | "refused";

export function workbookStorage(area: () => Storage): WorkbookStorage {
  return {
    save: (workbook) => attempt(() => area().setItem(STORAGE_KEYS.present, toText(workbook))),
    restore(open) {
      try {
        return restoreFrom(area(), open);
      } catch {
        return "refused";
      }
    },
  };
}

function restoreFrom(area: Storage, open: (workbook: NamedWorkbook) => void): RestoreOutcome {
  const present = area.getItem(STORAGE_KEYS.present);
  if (present === null) return "nothing stored";
  if (opens(present, open)) {
    // Without room for a second copy the first still counts.
    attempt(() => area.setItem(STORAGE_KEYS.lastGood, present));
    return "restored";
  }
  attempt(() => area.setItem(STORAGE_KEYS.setAside, present));
  const lastGood = area.getItem(STORAGE_KEYS.lastGood);
  return lastGood !== null && opens(lastGood, open) ? "last good restored" : "unreadable";
}

function opens(text: string, open: (workbook: NamedWorkbook) => void): boolean {
  try {
    open(fromText(text));
    return true;
  } catch (error) {
    console.error("a stored workbook could not be opened", error);
    return false;
  }
}

function attempt(write: () => void): SaveOutcome {
  try {
    write();
    return "saved";
  } catch (error) {
    return error instanceof DOMException && error.name === "QuotaExceededError" ? "full" : "refused";
  }
}
