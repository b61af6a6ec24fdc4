/** The texts that lie in the browser's storage: how one is found that opens, and how one is written. */
import type { NamedWorkbook } from "./workbookFile";
import { fromText, NewerFile, WrongFile } from "./workbookFile";

/** The workbook in hand, the save before it, the last one that opened well, and those that could not be read. */
export const STORAGE_KEYS = {
  present: "canyard.workbook",
  before: "canyard.workbook.before",
  lastGood: "canyard.workbook.last-good",
  setAside: "canyard.workbook.set-aside",
} as const;

/** In the order in which they are tried. */
export const GENERATIONS = [STORAGE_KEYS.present, STORAGE_KEYS.before, STORAGE_KEYS.lastGood];

type WriteOutcome = "saved" | "full" | "refused";

interface Search {
  /** Could not be read, the newest first; the last one where a newer version saved it. */
  readonly failed: readonly string[];
  readonly isNewer?: true;
  readonly found?: { readonly text: string; readonly isLatest: boolean; readonly savedAt?: Date | undefined };
}

/** `open` throws on one that it cannot use. */
export async function firstThatOpens(
  stored: readonly (string | null)[],
  open: (workbook: NamedWorkbook) => Promise<void>,
): Promise<Search> {
  const failed: string[] = [];
  for (const [at, text] of stored.entries()) {
    if (text === null || failed.includes(text)) continue;
    try {
      const workbook = fromText(text);
      if (workbook.isAltered) throw new WrongFile("The checksum of the stored workbook does not fit.");
      await open(workbook);
      return { failed, found: { text, isLatest: at === 0, savedAt: workbook.savedAt } };
    } catch (error) {
      failed.push(text);
      if (error instanceof NewerFile) return { failed, isNewer: true };
      console.error("a stored workbook could not be opened", error);
    }
  }
  return { failed };
}

/** The text in hand goes in whole or not at all. To make room for it, copies of earlier ones give way if they may. */
export function put(area: Storage, text: string, mayGiveWay: boolean): WriteOutcome {
  const write = () => {
    area.setItem(STORAGE_KEYS.present, text);
    if (area.getItem(STORAGE_KEYS.present) !== text) throw new Error("what was stored came out different");
  };
  let outcome = attempt(write);
  const gaveWay: [string, string][] = [];
  for (const key of mayGiveWay ? [STORAGE_KEYS.lastGood, STORAGE_KEYS.before] : []) {
    const copy = outcome === "full" ? area.getItem(key) : null;
    if (copy === null) continue;
    area.removeItem(key);
    gaveWay.push([key, copy]);
    outcome = attempt(write);
  }
  if (outcome === "saved") return "saved";
  for (const [key, copy] of gaveWay.reverse()) attempt(() => area.setItem(key, copy));
  // Some browsers have a storage in which there is room for nothing.
  return area.length === 0 ? "refused" : outcome;
}

export function isWhole(text: string | null): boolean {
  try {
    return text !== null && !fromText(text).isAltered;
  } catch {
    return false;
  }
}

export function attempt(write: () => void): WriteOutcome {
  try {
    write();
    return "saved";
  } catch (error) {
    return error instanceof DOMException && /quota/i.test(error.name) ? "full" : "refused";
  }
}
