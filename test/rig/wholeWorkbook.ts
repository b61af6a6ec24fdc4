/** A laid-out workbook of built-in formulas, worked whole in independent engines. */
import { HyperFormula, type RawCellContent } from "hyperformula";
import { fullNumber } from "../../src/kernel";
import { placeOf } from "../../src/workbooks/addresses";
import type { CellValue } from "../../tools/starters/finish";
import type { LaidWorkbook } from "../../tools/starters/layOut";
import { valuesInIronCalc } from "./ironcalc";

/** By sheet and address: `Work!B5`. An error stands as its text. */
export type Worked = ReadonlyMap<string, CellValue>;

export function formulasInHyperFormula({ workbook, sheets }: LaidWorkbook): Worked {
  // The engine knows TRUE and FALSE as functions only.
  const truths = ["TRUE", "FALSE"].map((name) => ({ name, expression: `=${name}()` }));
  const names = Object.entries(workbook.namedRanges ?? {}).map(([name, range]) => ({ name, expression: `=${range}` }));
  const contents = Object.fromEntries(
    sheets.map(({ sheet, cells }) => {
      const rows: RawCellContent[][] = [];
      for (const [address, { value, formula }] of cells) {
        const { row, column } = placeOf(address);
        const content = formula ?? value ?? null;
        while (rows.length < row) rows.push([]);
        while (rows[row - 1]!.length < column) rows[row - 1]!.push(null);
        rows[row - 1]![column - 1] = typed(content, formula !== undefined);
      }
      return [sheet.name, rows];
    }),
  );
  const engine = HyperFormula.buildFromSheets(contents, { licenseKey: "gpl-v3", smartRounding: false }, [
    ...truths,
    ...names,
  ]);
  const found = new Map<string, CellValue>();
  for (const { sheet, cells } of sheets) {
    const id = engine.getSheetId(sheet.name)!;
    for (const [address, { formula }] of cells) {
      if (formula === undefined) continue;
      const { row, column } = placeOf(address);
      const value = engine.getCellValue({ sheet: id, row: row - 1, col: column - 1 });
      found.set(`${sheet.name}!${address}`, valueOf(value));
    }
  }
  engine.destroy();
  return found;
}

/** HyperFormula knows 2e-5 and not 2E-5; a text that looks like something else has an apostrophe before it. */
function typed(content: CellValue | null, isFormula: boolean): RawCellContent {
  if (typeof content !== "string") return content;
  return isFormula ? content.replace(/(?<=[\d.])E(?=[-+]?\d)/g, "e") : `'${content}`;
}

function valueOf(value: unknown): CellValue {
  if (value === null) return 0;
  return typeof value === "object" ? String((value as { value: unknown }).value) : (value as CellValue);
}

/** IronCalc tells numbers to about fifteen digits, and a truth as TRUE or FALSE. */
export function formulasInIronCalc({ workbook, sheets }: LaidWorkbook): Worked {
  const cells = sheets.flatMap(({ sheet: { name }, cells }, sheet) =>
    [...cells].map(([address, cell]) => ({ place: `${name}!${address}`, sheet, ...placeOf(address), ...cell })),
  );
  const inputs = cells.flatMap(({ sheet, row, column, formula, value }) => {
    const input = formula ?? (value === undefined ? undefined : asTyped(value));
    return input === undefined ? [] : [{ sheet, row, column, input }];
  });
  const read = cells.filter(({ formula }) => formula !== undefined);
  const values: CellValue[] = valuesInIronCalc({
    inputs,
    read: read.map(({ sheet, row, column }) => ({ sheet, row, column })),
    sheets: sheets.map(({ sheet }) => sheet.name),
    names: workbook.namedRanges ?? {},
  });
  return new Map(read.map(({ place }, at) => [place, asTruth(values[at]!)]));
}

function asTyped(value: CellValue): string {
  if (typeof value === "number") return fullNumber(value);
  return typeof value === "string" ? `'${value}` : String(value).toUpperCase();
}

function asTruth(value: CellValue): CellValue {
  return value === "TRUE" || value === "FALSE" ? value === "TRUE" : value;
}
