/** A workbook with its inputs a little different, for tests of what follows them. */
import { tokenize } from "@borgar/fx";
import type { Cell, Sheet, Workbook } from "../../src/workbooks/model";
import { isValue } from "../../src/workbooks/model";
import { cellsOf } from "../../src/workbooks/addresses";
import type { LaidWorkbook } from "../../tools/starters/layOut";

/** Every number among the inputs times a factor, to five digits, as far as its validation lets it; dates, times and counts stay. */
export function withMovedInputs(workbook: Workbook, factor: number): Workbook {
  return { ...workbook, sheets: workbook.sheets.map((sheet) => ({ ...sheet, cells: movedCells(sheet, factor) })) };
}

function movedCells(sheet: Sheet, factor: number): Sheet["cells"] {
  return Object.fromEntries(
    Object.entries(sheet.cells).map(([address, cell]): [string, Cell] => {
      const isNumber = cell.style === "input" && isValue(cell) && typeof cell.value === "number";
      if (!isNumber || cell.format === "date" || cell.format === "time") return [address, cell];
      return [address, { ...cell, value: within(sheet, address, cell.value as number, factor) }];
    }),
  );
}

function within(sheet: Sheet, address: string, value: number, factor: number): number {
  const limits = sheet.validations?.find(({ range }) => cellsOf(range).addresses.includes(address));
  const moved = Number((value * factor).toPrecision(5));
  if (limits === undefined) return moved;
  if (!("least" in limits) || limits.whole) return value;
  return Math.min(limits.most, Math.max(limits.least, moved));
}

/** The cells of a twin that follow its inputs: formulas that do not rest on a value that is only carried. */
export function followingCells({ workbook, sheets }: LaidWorkbook, carried: ReadonlySet<string>): ReadonlySet<string> {
  const uses = new Map<string, readonly string[]>();
  for (const { sheet, cells } of sheets) {
    for (const [address, { formula }] of cells) {
      if (formula === undefined) continue;
      uses.set(`${sheet.name}!${address}`, usedBy(formula, sheet.name, workbook.namedRanges ?? {}));
    }
  }
  const stuck = new Set(carried);
  for (let before = -1; before !== stuck.size;) {
    before = stuck.size;
    for (const [place, used] of uses) if (used.some((each) => stuck.has(each))) stuck.add(place);
  }
  return new Set([...uses.keys()].filter((place) => !stuck.has(place)));
}

function usedBy(formula: string, own: string, names: Readonly<Record<string, string>>): readonly string[] {
  return tokenize(formula, { mergeRefs: true })
    .filter(({ type }) => type === "range" || type === "range_named")
    .flatMap(({ type, value }) => {
      const range = type === "range_named" ? names[value] : value;
      if (range === undefined) return [];
      const { sheet, addresses } = cellsOf(range);
      return addresses.map((address) => `${sheet ?? own}!${address}`);
    });
}
