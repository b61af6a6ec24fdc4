/** How tall a row must be for the words that go on in further lines: a file tells the heights, no one measures them. */
import { LOOKS } from "../../src/workbooks/looks";
import { columnLetters } from "../../src/workbooks/kit";
import { placeOf } from "../../src/workbooks/addresses";
import type { LaidCell, LaidSheet } from "./layOut";

/** In points, of text of 10 points. */
const LINE = 13;
const FONT_SIZE = 10;
export const WIDTH_OF_A_COLUMN = 8.43;
/** A column's width counts digits; letters in words are a little narrower, bold ones as wide. */
const LETTERS_PER_DIGIT = { plain: 1.12, bold: 1 };

export const DEFAULT_HEIGHT = 15;

/** Rows taller than one line, in points. */
export function rowHeights({ sheet, cells }: LaidSheet): ReadonlyMap<number, number> {
  const heights = new Map<number, number>();
  for (const [address, cell] of cells) {
    const { row, column } = placeOf(address);
    const width = sheet.columnWidths?.[columnLetters(column)] ?? WIDTH_OF_A_COLUMN;
    const height = heightOf(cell, width);
    if (height > (heights.get(row) ?? DEFAULT_HEIGHT)) heights.set(row, height);
  }
  return heights;
}

/** How wide words in one line are, in points; 0 where they go on in further lines or are no words. */
export function textWidth({ look, value }: LaidCell): number {
  const style = look.style && LOOKS[look.style];
  if (look.wraps || style?.wraps || typeof value !== "string") return 0;
  const perDigit = LETTERS_PER_DIGIT[style?.bold ? "bold" : "plain"];
  return ((value.length / perDigit) * 5.25 * (style?.size ?? FONT_SIZE)) / FONT_SIZE;
}

function heightOf({ look, value }: LaidCell, width: number): number {
  const style = look.style && LOOKS[look.style];
  const size = (style?.size ?? FONT_SIZE) / FONT_SIZE;
  const wraps = look.wraps ?? style?.wraps ?? false;
  const letters = (width * LETTERS_PER_DIGIT[style?.bold ? "bold" : "plain"]) / size;
  const lines = wraps && typeof value === "string" ? linesOf(value, letters) : 1;
  return Math.ceil(lines * LINE * size + 2);
}

function linesOf(text: string, letters: number): number {
  let lines = 1;
  let used = 0;
  for (const word of text.split(" ")) {
    if (used > 0 && used + 1 + word.length > letters) {
      lines += 1;
      used = 0;
    }
    used += word.length + (used > 0 ? 1 : 0);
    // A word longer than the line is broken.
    while (used > letters) {
      lines += 1;
      used -= letters;
    }
  }
  return lines;
}
