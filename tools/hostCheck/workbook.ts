/**
 * A workbook for a person with the real host: every example of the catalogue as a formula, what it must give, and
 * pass or FAIL beside it, so that one look tells.
 */
import { NAMESPACE, VERSION } from "../../src/functions";
import { catalogue } from "../../src/functions/catalogue";
import { fullNumber, inOrder, type ArgumentInput, type CellInput, type Entry } from "../../src/kernel";
import { columnLetters } from "../../src/workbooks/kit";
import type { Cell, Workbook } from "../../src/workbooks/model";

type Cells = Record<string, Cell>;
type Expected = number | string | boolean;

/** Cells of a table that are looked at: the header, and the rows after it as far as they go. */
const MOST_CELLS = 15;
const FIRST_ROW = 5;
/** Of a number that an example gives in full. */
const CLOSE = 1e-9;

interface Look {
  readonly name: string;
  readonly formula: string;
  readonly expected: Expected;
  readonly within: number;
}

/** Ranges of arguments, put below one another on a sheet of their own. */
class Ranges {
  readonly cells: Cells = {
    A1: { value: "Ranges that the examples refer to", style: "title" },
    A2: { value: "An empty cell here is empty on purpose.", style: "note" },
  };
  private next = 4;

  put(rows: readonly (readonly CellInput[])[]): string {
    const first = this.next;
    rows.forEach((row, down) =>
      row.forEach((cell, across) => {
        const isEmpty = cell === null || cell === undefined || cell === "" || typeof cell === "object";
        if (!isEmpty) this.cells[`${columnLetters(across + 1)}${first + down}`] = { value: cell };
      }),
    );
    this.next += rows.length + 1;
    const width = Math.max(...rows.map((row) => row.length));
    return `Ranges!$A$${first}:$${columnLetters(width)}$${first + rows.length - 1}`;
  }
}

function written(input: ArgumentInput, ranges: Ranges): string {
  if (Array.isArray(input)) return ranges.put(input as readonly (readonly CellInput[])[]);
  if (typeof input === "number") return fullNumber(input);
  if (typeof input === "string") return `"${input.replaceAll('"', '""')}"`;
  if (typeof input === "boolean") return input ? "TRUE" : "FALSE";
  return "";
}

function callOf(entry: Entry, args: readonly ArgumentInput[], ranges: Ranges): string {
  const last = args.reduce<number>((found, input, index) => (input === undefined ? found : index), -1);
  const texts = args.slice(0, last + 1).map((input) => written(input, ranges));
  return `${NAMESPACE}.${entry.name}(${texts.join(", ")})`;
}

function looksOf(entry: Entry, ranges: Ranges): readonly Look[] {
  return entry.examples.flatMap(({ given, gives, within }) => {
    const call = callOf(entry, inOrder(entry, given), ranges);
    const close = (value: unknown): number =>
      within ?? (typeof value === "number" ? CLOSE * Math.max(1, Math.abs(value)) : 0);
    if (!Array.isArray(gives)) {
      return [{ name: entry.name, formula: `=${call}`, expected: gives as Expected, within: close(gives) }];
    }
    const cells = (gives as readonly (readonly Expected[])[]).flatMap((row, down) =>
      row.map((expected, across) => ({
        name: entry.name,
        formula: `=INDEX(${call}, ${down + 1}, ${across + 1})`,
        expected,
        within: close(expected),
      })),
    );
    return cells.slice(0, MOST_CELLS);
  });
}

/** What must be refused: a blank where a flow belongs, a percentage typed as 15, a range where one value belongs. */
function refusals(ranges: Ranges): readonly Look[] {
  const three = ranges.put([[6], [7], [8]]);
  return [
    `${NAMESPACE}.RUN_MINUTES(0.275, 0)`,
    `${NAMESPACE}.RUN_MINUTES(0.275, Ranges!$ZZ$1)`,
    `${NAMESPACE}.GROSS_WATER(0.6, 15, 0.88)`,
    `${NAMESPACE}.RUN_MINUTES(0.275, ${three})`,
    `${NAMESPACE}.RUN_MINUTES_FROM_LEACHING(20, 0, 0.15)`,
  ].map((call) => ({
    name: "must be refused",
    formula: `=IF(ISERROR(${call}), "refused", "taken")`,
    expected: "refused",
    within: 0,
  }));
}

function lineOf({ name, formula, expected, within }: Look, row: number): Cells {
  const isNumber = typeof expected === "number";
  const same = isNumber
    ? `IF(ISNUMBER(C${row}), ABS(C${row} - D${row}) <= E${row}, FALSE)`
    : expected === ""
      ? `C${row} = ""`
      : `C${row} = D${row}`;
  return {
    [`A${row}`]: { value: name },
    [`B${row}`]: { value: formula, format: "text" },
    [`C${row}`]: { formula },
    [`D${row}`]: { value: expected },
    ...(isNumber ? { [`E${row}`]: { value: within } } : {}),
    [`F${row}`]: { formula: `=IF(IFERROR(${same}, FALSE), "pass", "FAIL")`, style: "check" },
  };
}

export function hostCheck(): Workbook {
  const ranges = new Ranges();
  const looks = [...catalogue.flatMap((entry) => looksOf(entry, ranges)), ...refusals(ranges)];
  const last = FIRST_ROW + looks.length - 1;
  const heading = (value: string): Cell => ({ value, style: "heading" });
  const verdicts = `$F$${FIRST_ROW}:$F$${last}`;
  const examples: Cells = {
    A1: { value: `Canyard ${VERSION}: every example in this spreadsheet`, style: "title" },
    A2: {
      formula: `=IF(COUNTIF(${verdicts}, "pass") = ROWS(${verdicts}), "All ${looks.length} pass", COUNTIF(${verdicts}, "pass") & " of ${looks.length} pass: look for FAIL in column F")`,
      style: "check",
    },
    A4: heading("function"),
    B4: heading("formula, as typed"),
    C4: heading("gives here"),
    D4: heading("must give"),
    E4: heading("within"),
    F4: heading("verdict"),
    ...Object.assign({}, ...looks.map((look, index) => lineOf(look, FIRST_ROW + index))),
  };
  const about: Cells = {
    A1: { value: "How to use it", style: "title" },
    A3: { value: "1. Open this file with the add-in loaded (Home, Canyard help).", wraps: true },
    A4: {
      value: "2. Recalculate everything (Ctrl+Alt+F9; on the web: Formulas, Calculate Workbook).",
      wraps: true,
    },
    A5: { value: "3. Look at A2 of the sheet Examples. It must say that all pass.", wraps: true },
    A6: {
      value: "Before that the numbers are those that were worked out when the file was made; they say nothing yet.",
      style: "caution",
      wraps: true,
    },
  };
  return {
    name: "Canyard host check",
    sheets: [
      { name: "About", cells: about, columnWidths: { A: 100 } },
      {
        name: "Examples",
        cells: examples,
        columnWidths: { A: 28, B: 70, C: 18, D: 18, E: 12, F: 10 },
        frozen: { rows: 4 },
      },
      { name: "Ranges", cells: ranges.cells },
    ],
  };
}
