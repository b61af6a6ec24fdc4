import type { Names } from "./writeCells";
import { add } from "./xml";

/** What a spreadsheet of today writes: with an older number it works the whole file anew on opening. */
const CALCULATION = "191029";

/** The names of cells, which the engine's writer leaves out. */
export function writeNames(document: Document, names: Names = {}): void {
  const book = document.documentElement;
  const entries = Object.entries(names).filter(([, range]) => !range.includes("#REF"));
  if (entries.length > 0) {
    const list = add(book, "definedNames");
    for (const [name, range] of entries) add(list, "definedName", { name }).textContent = absolute(range);
  }
  add(book, "calcPr", { calcId: CALCULATION });
}

/** `Inputs!$D$6:$D$9` */
function absolute(range: string): string {
  const [, sheet = "", cells = ""] = /^(.*!)?(.*)$/s.exec(range) ?? [];
  return sheet + cells.replace(/\$?([A-Z]+)\$?(\d+)/gi, "$$$1$$$2");
}
