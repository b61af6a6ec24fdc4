import { columnLetters, columnNumber, rowNumber, type CellRef, type RowCells, type SheetBuilder } from "../../kit";
import { discountedYears, type Cases } from "./cases";
import { LINES, type Costs } from "./costs";
import type { Given } from "./inputs";
import type { Columns, Systems } from "./systems";
import { HEADING_ROWS, inRow } from "./water";

const MONEY = { unit: "currency", format: "money0" } as const;
const YEARS = { unit: "years", format: "decimals1" } as const;

/** The baseline, the three printed and the one looked at, in this order, one row each. */
export interface Chosen {
  readonly column: Columns;
  /** A number of the one looked at. */
  readonly lookedAt: (key: string) => CellRef;
  /** Its savings by line. */
  readonly lines: Columns;
  /** Each line, the investment and the years moved by the swing, unsorted. */
  readonly moved: Columns;
}

export function fillChosen(work: SheetBuilder, given: Given, systems: Systems, costs: Costs, cases: Cases): Chosen {
  work.skip().note("The systems chosen on Inputs", "heading");
  const column = fillChoices(work, given, systems, costs, cases);
  const lookedAt = (key: string) => column[key]!.cell(given.choices.length - 1);
  work.skip().note("Saved by the system looked at", "heading");
  const lines = fillLines(work, costs, lookedAt("place"));
  work.skip().note("One number at a time, unsorted", "heading");
  return { column, lookedAt, lines, moved: fillMoved(work, lines, lookedAt) };
}

function fillChoices(work: SheetBuilder, given: Given, systems: Systems, costs: Costs, cases: Cases): Columns {
  const { choices } = given;
  const found = (cell: RowCells, block: unknown) =>
    `=IF(${cell("place")} = 0, "", INDEX(${String(block)}, ${cell("place")}))`;
  const hours = (cell: RowCells) => {
    const of = (key: string) => `INDEX(${systems.work[key]!}, ${cell("place")})`;
    return `=IF(${cell("place")} = 0, "", ${of("checking")} + ${of("cleaning")} + ${of("placing")})`;
  };
  return work.table({
    rows: choices.length,
    columns: [
      { key: "choice", heading: "choice", formula: (_cell, row) => `=${choices[row]!.label}` },
      { key: "system", heading: "system", formula: (_cell, row) => `=${choices[row]!.system}` },
      {
        key: "place",
        heading: "row",
        unit: "number",
        formula: (cell) => `=IF(${cell("system")} = "none", 0, MATCH(${cell("system")}, ${given.systems}, 0))`,
        how: "its row in the tables above; none is 0",
      },
      {
        key: "investment",
        heading: "investment",
        ...MONEY,
        formula: (cell) => found(cell, costs.system["investment"]),
      },
      { key: "saved", heading: "saved a year", ...MONEY, formula: (cell) => found(cell, cases.saved["planned"]) },
      { key: "interest", heading: "payback", ...YEARS, formula: (cell) => found(cell, cases.withInterest["planned"]) },
      { key: "value", heading: "value", ...MONEY, formula: (cell) => found(cell, cases.value["planned"]) },
      { key: "bad", heading: "cases below 0", unit: "count", formula: (cell) => found(cell, cases.value["bad"]) },
      { key: "life", heading: "life", ...YEARS, formula: (cell) => found(cell, systems.investment["life"]) },
      {
        key: "chores",
        heading: "new chores",
        unit: "h",
        format: "decimals1",
        formula: hours,
        how: "hours for checking, cleaning and placing: never 0 with emitters",
      },
    ],
  }).column;
}

function fillLines(work: SheetBuilder, { saving }: Costs, place: CellRef): Columns {
  return work.table({
    rows: LINES.length,
    columns: [
      { key: "name", heading: "line", formula: (_cell, row) => `=${headingOf(saving, LINES[row]!.key)}` },
      {
        key: "saving",
        heading: "saved a year",
        ...MONEY,
        formula: (_cell, row) => `=INDEX(${saving[LINES[row]!.key]!.here}, ${place.here})`,
        how: "from the table of savings, its row and this column",
      },
    ],
  }).column;
}

/** The cell that heads a column. */
function headingOf(columns: Columns, key: string): string {
  const { first } = columns[key]!;
  return `${columnLetters(columnNumber(first))}${rowNumber(first) - HEADING_ROWS}`;
}

/** What PAYBACK_SENSITIVITY works out, before it sorts, in built-in functions. */
function fillMoved(work: SheetBuilder, lines: Columns, lookedAt: Chosen["lookedAt"]): Columns {
  const rows = LINES.length + 2;
  const [investment, saved] = [lookedAt("investment").here, lookedAt("saved").here];
  const isLine = (row: number) => row < LINES.length;
  const at = (sign: "-" | "+") => ({
    paid: (cell: RowCells) => `(${investment} ${sign} swing * ${cell("investment")})`,
    saved: (cell: RowCells) => `(${saved} ${sign} swing * ${cell("saving")})`,
    years: (cell: RowCells) => `plan_years ${sign} swing * ${cell("years")}`,
  });
  const value = (sign: "-" | "+") => (cell: RowCells) =>
    `=PV(discount_rate, ${at(sign).years(cell)}, -${at(sign).saved(cell)}) - ${at(sign).paid(cell)}`;
  const payback = (sign: "-" | "+") => (cell: RowCells) =>
    `=${discountedYears(at(sign).paid(cell), at(sign).saved(cell))}`;
  const first = work.next + HEADING_ROWS;
  return work.table({
    rows,
    columns: [
      {
        key: "name",
        heading: "number",
        formula: (_cell, row) =>
          isLine(row) ? `=${lines["name"]!.cell(row).at}` : `="${row === LINES.length ? "investment" : "life"}"`,
      },
      {
        key: "saving",
        heading: "saving",
        ...MONEY,
        formula: (_cell, row) => (isLine(row) ? `=${lines["saving"]!.cell(row).at}` : "=0"),
      },
      {
        key: "investment",
        heading: "investment",
        ...MONEY,
        formula: (_cell, row) => (row === LINES.length ? `=${investment}` : "=0"),
      },
      { key: "years", heading: "life", ...YEARS, formula: (_cell, row) => (row > LINES.length ? "=plan_years" : "=0") },
      {
        key: "order",
        heading: "as given",
        unit: "number",
        formula: (cell) => `=ROW(${cell("name")}) - ROW(${inRow(cell("name"), first - 1)})`,
      },
      {
        key: "low",
        heading: "value low",
        ...MONEY,
        formula: value("-"),
        how: "net present value with this number lower by the swing, all else as planned",
      },
      { key: "high", heading: "value high", ...MONEY, formula: value("+"), how: "the same with this number higher" },
      {
        key: "paybackLow",
        heading: "payback low",
        ...YEARS,
        formula: payback("-"),
        how: "payback with interest, with this number lower",
      },
      {
        key: "width",
        heading: "width",
        ...MONEY,
        formula: (cell) => `=ROUND(ABS(${cell("high")} - ${cell("low")}), 6)`,
        how: "how far apart the two values lie",
      },
      {
        key: "place",
        heading: "place",
        unit: "number",
        formula: (cell) => {
          const all = (key: string) => `${inRow(cell(key), first)}:${inRow(cell(key), first + rows - 1)}`;
          const [width, order] = [cell("width"), cell("order")];
          const before = `SUMPRODUCT((${all("width")} = ${width}) * (${all("order")} < ${order}))`;
          return `=1 + SUMPRODUCT((${all("width")} > ${width}) * 1) + ${before}`;
        },
        how: "1 for the widest; equal ones in the order given",
      },
      {
        key: "paybackHigh",
        heading: "payback high",
        ...YEARS,
        formula: payback("+"),
        how: "payback with interest, with this number higher",
      },
    ],
  }).column;
}
