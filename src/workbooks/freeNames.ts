/** New names for the sheets and names of a workbook that is put beside others, where theirs are taken. */
import type { Workbook } from "./model";
import type { NewNames } from "./renameSheets";

/** Names that stand in the workbook already. Letters count as the same in either case. */
export interface Taken {
  readonly sheets: readonly string[];
  /** Names of cells, of values and of tables: they share one list. */
  readonly names: readonly string[];
}

const LONGEST_SHEET_NAME = 31;
const FIRST_NUMBER = 2;

/**
 * One number for all the sheets, so that those that belong together are seen to; a name of a cell gets a number only
 * where it is taken.
 */
export function freeNames({ sheets, namedRanges = {} }: Workbook, taken: Taken): NewNames {
  const own = sheets.map(({ name }) => name);
  const isTaken = isIn(taken.sheets);
  const names = Object.keys(namedRanges);
  const isTakenName = isIn([...taken.names]);
  return {
    sheets: own.some(isTaken) ? numbered(own, isTaken) : {},
    names: Object.fromEntries(
      names
        .filter(isTakenName)
        .map((name) => [name, firstFree((number) => `${name}_${number}`, isIn([...taken.names, ...names]))]),
    ),
  };
}

function numbered(sheets: readonly string[], isTaken: (name: string) => boolean): Record<string, string> {
  for (let number = FIRST_NUMBER; ; number += 1) {
    const renamed = sheets.map((name) => sheetWithNumber(name, number));
    const isOwn = isIn(sheets);
    if (!renamed.some((name) => isTaken(name) || isOwn(name))) {
      return Object.fromEntries(sheets.map((name, index) => [name, renamed[index]!]));
    }
  }
}

function sheetWithNumber(name: string, number: number): string {
  const ending = ` ${number}`;
  return name.slice(0, LONGEST_SHEET_NAME - ending.length).trimEnd() + ending;
}

function firstFree(name: (number: number) => string, isTaken: (name: string) => boolean): string {
  let number = FIRST_NUMBER;
  while (isTaken(name(number))) number += 1;
  return name(number);
}

function isIn(names: readonly string[]): (name: string) => boolean {
  const known = new Set(names.map((name) => name.toLowerCase()));
  return (name) => known.has(name.toLowerCase());
}
