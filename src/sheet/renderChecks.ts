import { CHECK_COLOURS } from "../workbooks/looks";
import type { Sheet } from "../workbooks/model";

/** The colours of the cells that say OK or LOOK. */
export function renderChecks({ cells }: Sheet, id: string): object[] {
  const ranges = Object.keys(cells).filter((address) => cells[address]!.style === "check");
  if (ranges.length === 0) return [];
  const looks = CHECK_COLOURS.flatMap(({ words, text, fill }) =>
    words.map((word) => ({
      word: word.split(" ")[0]!,
      style: { fillColor: `#${fill}`, textColor: `#${text}`, bold: true },
    })),
  );
  // The first word is enough: none of one colour begins with one of the other.
  return looks.map(({ word, style }, at) => ({
    id: `${id}-check${at + 1}`,
    ranges,
    rule: { type: "CellIsRule", operator: "beginsWithText", values: [word], style },
  }));
}
