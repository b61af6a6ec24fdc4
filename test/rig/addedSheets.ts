/** What stands in the sheets that were added to the fake of Excel, beside what the model says. */
import { isExplaining, isFormula, isTable, isValue, type Sheet } from "../../src/workbooks/model";
import type { FakeExcel } from "./fakeExcel";
import { localAddress, type FakeSheet, type Value } from "./fakeWorkbook";

/** Names of the sheets that were not there before. */
export function addedTo({ workbook }: FakeExcel, ...before: readonly string[]): readonly string[] {
  return workbook.sheets.map(({ name }) => name).filter((name) => !before.includes(name));
}

/** The contents of a sheet by address: formulas, numbers, and texts without the apostrophe that keeps them texts. */
export function cellsOf(sheet: FakeSheet): Readonly<Record<string, Value>> {
  const used = sheet.used();
  if (used === null) return {};
  const all: [string, Value][] = [];
  for (let row = used.row; row < used.row + used.rows; row += 1) {
    for (let column = used.column; column < used.column + used.columns; column += 1) {
      const { content } = sheet.cell(row, column);
      if (content !== "") all.push([localAddress({ sheet, row, column, rows: 1, columns: 1 }), content]);
    }
  }
  return Object.fromEntries(all);
}

export function modelCells({ cells }: Sheet): Readonly<Record<string, Value>> {
  const contents = Object.entries(cells).map(([address, cell]): [string, Value] => {
    if (isFormula(cell)) return [address, cell.formula];
    if (isTable(cell)) return [address, cell.table];
    if (isExplaining(cell)) return [address, cell.words];
    return [address, isValue(cell) ? cell.value : ""];
  });
  return Object.fromEntries(contents.filter(([, content]) => content !== ""));
}
