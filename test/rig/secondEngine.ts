/**
 * A whole workbook in an independent spreadsheet engine with our functions registered. A block that one call fills is
 * laid out as in an .xlsx file: one INDEX a cell.
 */
import {
  CellError,
  DetailedCellError,
  ErrorType,
  FunctionArgumentType,
  FunctionPlugin,
  HyperFormula,
  SimpleRangeValue,
} from "hyperformula";
import * as functions from "../../src/functions";
import { columnLetters, columnNumber, rowNumber } from "../../src/workbooks/kit";
import { isFormula, isTable, isValue, type Sheet, type Workbook } from "../../src/workbooks/model";

type Given = number | string | boolean | null | undefined | readonly (readonly unknown[])[];

class OurFunctions extends FunctionPlugin {}

let isRegistered = false;

function register(): void {
  if (isRegistered) return;
  isRegistered = true;
  const implemented: Record<string, object> = {};
  const prototype = OurFunctions.prototype as unknown as Record<string, unknown>;
  for (const { name, params } of functions.catalogue) {
    const method = `canyard_${name}`;
    implemented[`CANYARD.${name}`] = {
      method,
      parameters: params.map(({ optional }) => ({
        argumentType: FunctionArgumentType.ANY,
        ...(optional && { optionalArg: true }),
      })),
      ...(params.some(({ repeating }) => repeating) && { repeatLastArgs: 1 }),
      vectorizationForbidden: true,
    };
    prototype[method] = function work(this: OurFunctions, ast: { readonly args: unknown }, state: unknown): unknown {
      return (this as unknown as { runFunction: (...args: unknown[]) => unknown }).runFunction(
        ast.args,
        state,
        (this as unknown as { metadata(name: string): unknown }).metadata(`CANYARD.${name}`),
        (...args: unknown[]) => answerOf(name, args),
      );
    };
  }
  (OurFunctions as unknown as { implementedFunctions: object }).implementedFunctions = implemented;
  HyperFormula.registerFunctionPlugin(OurFunctions as never, {
    enGB: Object.fromEntries(Object.keys(implemented).map((name) => [name, name])),
  });
}

function answerOf(name: string, args: readonly unknown[]): unknown {
  const error = args.find((arg) => arg instanceof CellError);
  if (error !== undefined) return error;
  try {
    const answer = functions.call(name, args.map(given) as never);
    if (Array.isArray(answer)) return SimpleRangeValue.onlyValues(answer as never);
    return answer;
  } catch (thrown) {
    if (thrown instanceof functions.FunctionError) {
      return new CellError(thrown.code === "#N/A" ? ErrorType.NA : ErrorType.VALUE, thrown.message);
    }
    throw thrown;
  }
}

/** The engine's own mark of an empty cell is a symbol. */
function given(argument: unknown): Given {
  if (argument instanceof SimpleRangeValue) return argument.data.map((row) => row.map((cell) => plain(cell)));
  return plain(argument) as Given;
}

function plain(value: unknown): unknown {
  if (typeof value === "symbol") return null;
  if (typeof value === "object" && value !== null && "val" in value) return (value as { val: unknown }).val;
  return value;
}

export interface SecondEngine {
  /** Every cell of a sheet that the workbook fills, by address; an error as its text. */
  values(sheet: string): ReadonlyMap<string, unknown>;
}

export function workedBySecondEngine(workbook: Workbook): SecondEngine {
  register();
  const sheets = Object.fromEntries(workbook.sheets.map((sheet) => [sheet.name, rowsOf(sheet)]));
  const names = Object.entries(workbook.namedRanges ?? {}).map(([name, range]) => ({
    name,
    expression: `=${absolute(range)}`,
  }));
  for (const word of ["TRUE", "FALSE"]) names.push({ name: word, expression: `=${word}()` });
  const engine = HyperFormula.buildFromSheets(
    sheets as never,
    { licenseKey: "gpl-v3", smartRounding: false, useArrayArithmetic: true, evaluateNullToZero: true },
    names,
  );
  return {
    values(sheet) {
      const id = engine.getSheetId(sheet);
      if (id === undefined) throw new Error(`there is no sheet ${sheet}`);
      const found = new Map<string, unknown>();
      engine.getSheetValues(id).forEach((row, down) =>
        row.forEach((value, across) => {
          found.set(
            `${columnLetters(across + 1)}${down + 1}`,
            value instanceof DetailedCellError ? value.value : value,
          );
        }),
      );
      return found;
    },
  };
}

function absolute(range: string): string {
  return range.replace(/\$?([A-Z]+)\$?(\d+)/g, "$$$1$$$2");
}

function rowsOf(sheet: Sheet): unknown[][] {
  const rows: unknown[][] = [];
  const put = (row: number, column: number, content: unknown): void => {
    while (rows.length < row) rows.push([]);
    const line = rows[row - 1]!;
    while (line.length < column) line.push(null);
    line[column - 1] = content;
  };
  for (const [address, cell] of Object.entries(sheet.cells)) {
    const [row, column] = [rowNumber(address), columnNumber(address)];
    if (isFormula(cell)) put(row, column, spelt(cell.formula));
    else if (isValue(cell)) put(row, column, typeof cell.value === "string" ? asText(cell.value) : cell.value);
    else if (isTable(cell)) {
      for (let down = 0; down < cell.rows; down += 1) {
        for (let across = 0; across < cell.columns; across += 1) {
          const one = `INDEX(${cell.table.slice(1)}, ${down + 1}, ${across + 1})`;
          put(row + down, column + across, spelt(down === 0 && across === 0 ? `=${one}` : `=IFERROR(${one}, "")`));
        }
      }
    }
  }
  return rows;
}

function asText(text: string): string {
  return text.startsWith("=") || text.startsWith("'") ? `'${text}` : text === "" ? "" : `'${text}`;
}

/** This engine knows 2e-5 and not 2E-5. */
function spelt(formula: string): string {
  return formula.replace(/(?<=[\d.])E(?=[-+]?\d)/g, "e");
}
