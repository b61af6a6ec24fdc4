/** The starters in both editions, and every cell of them that is worked. */
import { columnLetters, columnNumber, rowNumber, type Edition } from "../../src/workbooks/kit";
import { isFormula, isTable, type Sheet, type Workbook } from "../../src/workbooks/model";
import { starters } from "../../src/workbooks/starters";
import type { HeadlessSheet } from "./sheetEngine";

const EDITIONS: readonly Edition[] = ["us", "metric"];

export const STARTER_CASES = starters.flatMap((kind) =>
  EDITIONS.map((edition) => ({ kind, edition, title: `${kind.id}, ${edition}` })),
);
const ERROR_CODES = /^#(ERROR|N\/A|VALUE!|REF!|NAME\?|DIV\/0!|NUM!|NULL!|SPILL!|CYCLE|BAD_EXPR)/;

export interface WorkedCell {
  readonly address: string;
  readonly value: unknown;
  readonly message: string | null;
}

/** Every cell that is worked, blocks included. */
export function workedCells(workbook: Workbook, sheet: HeadlessSheet): WorkedCell[] {
  return workbook.sheets.flatMap((each) =>
    workedAddresses(each).map((at) => {
      const address = `'${each.name}'!${at}`;
      return { address, value: sheet.value(address), message: sheet.message(address) };
    }),
  );
}

export function workedAddresses({ cells }: Sheet): string[] {
  return Object.entries(cells).flatMap(([address, cell]) => {
    if (isFormula(cell)) return [address];
    if (!isTable(cell)) return [];
    return Array.from({ length: cell.rows * cell.columns }, (_each, index) => {
      const [down, across] = [Math.floor(index / cell.columns), index % cell.columns];
      return `${columnLetters(columnNumber(address) + across)}${rowNumber(address) + down}`;
    });
  });
}

export const isError = ({ value }: WorkedCell): boolean => typeof value === "string" && ERROR_CODES.test(value);
