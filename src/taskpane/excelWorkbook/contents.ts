/** What is entered into the cells of a new sheet, in one block, and the calls whose answers spill. */
import { NUMBER_FORMATS } from "../../workbooks/looks";
import { isExplaining, isFormula, isTable, isValue, type Cell, type Sheet } from "../../workbooks/model";
import { blockOf, usedBlock, type Block } from "./blocks";

export type Entry = number | string | boolean;

export interface Contents {
  readonly block: Block;
  readonly entries: readonly (readonly Entry[])[];
  readonly formats: readonly (readonly string[])[];
  /** By the address of the first cell: the rest of the answer fills the cells around by itself. */
  readonly spilling: Readonly<Record<string, string>>;
}

const GENERAL = "General";

export function contentsOf({ cells }: Sheet): Contents {
  const block = usedBlock(Object.keys(cells));
  const placed = Object.entries(cells).map(([address, cell]) => ({ ...blockOf(address), cell }));
  return {
    block,
    entries: filled<Entry>(block, "", placed, entryOf),
    formats: filled<string>(block, GENERAL, placed, formatOf),
    spilling: Object.fromEntries(
      Object.entries(cells).flatMap(([address, cell]) => (isTable(cell) ? [[address, cell.table]] : [])),
    ),
  };
}

interface Placed {
  readonly row: number;
  readonly column: number;
  readonly cell: Cell;
}

function filled<T>(
  { rows, columns }: Block,
  empty: T,
  placed: readonly Placed[],
  contentOf: (cell: Cell) => T | undefined,
): T[][] {
  const all = Array.from({ length: rows }, () => Array.from({ length: columns }, () => empty));
  for (const { row, column, cell } of placed) all[row]![column] = contentOf(cell) ?? empty;
  return all;
}

function entryOf(cell: Cell): Entry | undefined {
  if (isFormula(cell)) return cell.formula;
  if (isExplaining(cell)) return asText(cell.words);
  if (!isValue(cell)) return undefined;
  return typeof cell.value === "string" ? asText(cell.value) : cell.value;
}

/** In a cell of the format for text Excel would keep a formula as its text. */
function formatOf(cell: Cell): string | undefined {
  const isWorked = isFormula(cell) || isTable(cell);
  return cell.format === undefined || (isWorked && cell.format === "text") ? undefined : NUMBER_FORMATS[cell.format];
}

/** Without a figure in them, and beginning with a letter, words are neither a number nor a date, a time or a formula. */
const PLAIN_WORDS = /^\p{L}\P{N}*$/u;
const TRUTH = /^(?:true|false)$/i;
/** Longer words are taken for nothing else either. */
const LONGEST_DATE = 30;

/** Behind an apostrophe, which Excel does not show, a text stays what it is: 1:100 is no time, 3/4 no date. */
function asText(text: string): string {
  if (text === "") return text;
  const isSafe = /^\p{L}/u.test(text) && (text.length > LONGEST_DATE || (PLAIN_WORDS.test(text) && !TRUTH.test(text)));
  return isSafe ? text : `'${text}`;
}
