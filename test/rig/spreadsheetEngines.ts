/** Two independent spreadsheet engines, to work formulas of built-in functions in. */
import { HyperFormula } from "hyperformula";
import { fullNumber } from "../../src/kernel";
import type { ArgumentInput, CellInput } from "../../src/kernel";
import { valuesInIronCalc } from "./ironcalc";

type Place = { readonly row: number; readonly column: number };
type Content = number | string | boolean;

/** One long sheet: numbers and ranges are put below one another, formulas refer to them by address. */
export class FormulaSheet {
  private readonly rows: (Content | null)[][] = [];
  private readonly formulas: Place[] = [];

  /** Puts a value or a range into cells and returns its address. */
  put(input: ArgumentInput): string {
    const block = Array.isArray(input) ? (input as readonly (readonly CellInput[])[]) : [[input as CellInput]];
    const first = this.rows.length + 1;
    for (const row of block) this.rows.push(row.map((cell) => (isContent(cell) ? cell : null)));
    const width = Math.max(...block.map((row) => row.length));
    const end = `${columnLetter(width)}${this.rows.length}`;
    return block.length === 1 && width === 1 ? end : `A${first}:${end}`;
  }

  /** Adds a formula; its value stands in the engines' answers at the number returned. */
  formula(text: string): number {
    this.rows.push([text]);
    this.formulas.push({ row: this.rows.length, column: 1 });
    return this.formulas.length - 1;
  }

  /** The values of the formulas as HyperFormula works them out; errors as their text. */
  inHyperFormula(): (number | string)[] {
    const spelt = this.rows.map((row) =>
      row.map((cell) => (typeof cell === "string" ? withSmallExponents(cell) : cell)),
    );
    const engine = HyperFormula.buildFromArray(spelt, {
      licenseKey: "gpl-v3",
      smartRounding: false,
    });
    const values = this.formulas.map(({ row, column }) => {
      const value = engine.getCellValue({ sheet: 0, row: row - 1, col: column - 1 });
      return typeof value === "number" ? value : errorText(value);
    });
    engine.destroy();
    return values;
  }

  /** The values of the formulas as IronCalc works them out; errors as their text. */
  inIronCalc(): (number | string)[] {
    const inputs = this.rows.flatMap((cells, row) =>
      cells.flatMap((cell, column) =>
        cell === null ? [] : [{ row: row + 1, column: column + 1, input: typed(cell) }],
      ),
    );
    return valuesInIronCalc({ inputs, read: this.formulas });
  }
}

function isContent(cell: unknown): cell is Content {
  return typeof cell === "number" || typeof cell === "boolean" || (typeof cell === "string" && cell !== "");
}

/** HyperFormula knows 2e-5 and not 2E-5, which every other spreadsheet writes. */
function withSmallExponents(text: string): string {
  return text.startsWith("=") ? text.replace(/(?<=[\d.])E(?=[-+]?\d)/g, "e") : text;
}

/** What a person would type to get this content. */
function typed(content: Content): string {
  if (typeof content === "number") return fullNumber(content);
  if (typeof content === "boolean") return content ? "TRUE" : "FALSE";
  return content;
}

function columnLetter(column: number): string {
  if (column > 26) throw new Error("a range wider than 26 columns");
  return String.fromCharCode(64 + column);
}

function errorText(value: unknown): string {
  return typeof value === "object" && value !== null ? String((value as { value: unknown }).value) : String(value);
}
