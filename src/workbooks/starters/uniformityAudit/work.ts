import type { BlockRef, CellRef, SheetBuilder } from "../../kit";
import { NUMBERED } from "../shared/numbered";
import { wholeColumn } from "../shared/rowsAround";
import type { Columns } from "./emitters";
import { CAN_COLUMNS, CAN_ROWS } from "./figures";
import type { AuditInputs } from "./inputs";

const CANS = CAN_COLUMNS * CAN_ROWS;

/** The catches counted, as built-in functions count them. */
export interface Counts {
  readonly used: CellRef;
  readonly without: CellRef;
  readonly quarter: CellRef;
  readonly withWater: CellRef;
  readonly blank: CellRef;
}

export function fillCounts(work: SheetBuilder, given: AuditInputs, grid: BlockRef): Counts {
  const count = (label: string, formula: string, how: string): CellRef =>
    work.formula({ label, unit: "count", formula: `=${formula}`, format: "decimals0", how });
  work.block("The cans, counted");
  const cans = count("Cans", `ROWS(${grid}) * COLUMNS(${grid})`, "rows x columns");
  const withWater = count("with water", `COUNTIF(${grid}, ">0")`, "more than 0");
  const without = count("blank or 0", `${cans.here} - ${withWater.here}`, "cans - with water");
  const blank = count("of these blank", `${cans.here} - COUNT(${grid})`, "cans - numbers");
  const used = count(
    "Cans that count",
    `IF(${given.zeros} = "count", ${cans.here}, ${withWater.here})`,
    "all of them, or those with water, as Inputs says",
  );
  const quarter = count("The lowest quarter", `ROUNDUP(${used.here} / 4, 0)`, "a fourth of them, rounded up");
  return { used, without, quarter, withWater, blank };
}

/** The catches from the least to the most. */
export function fillSorted(
  work: SheetBuilder,
  given: AuditInputs,
  grid: BlockRef,
  { used, quarter, withWater, blank }: Counts,
): Columns {
  const ifUsed = (place: string, formula: string): string => `=IF(${place} > ${used.here}, "", ${formula})`;
  work.skip().note("The catches, sorted", "heading");
  return work.table({
    rows: CANS,
    columns: [
      { ...NUMBERED, heading: "from the driest" },
      {
        key: "catch",
        heading: "catch",
        unit: "mL",
        format: "decimals0",
        formula: (cell) => {
          const n = cell("n");
          const withZeros = `IF(${n} <= ${blank.here}, 0, SMALL(${grid}, MAX(1, ${n} - ${blank.here})))`;
          const withoutZeros = `SMALL(${grid}, ${n} + COUNT(${grid}) - ${withWater.here})`;
          return ifUsed(n, `IF(${given.zeros} = "count", ${withZeros}, ${withoutZeros})`);
        },
        how: "the smallest, the next, and so on; zeros and blanks as Inputs says",
      },
      {
        key: "mean",
        heading: "mean",
        unit: "mL",
        format: "decimals1",
        formula: (cell, row) => ifUsed(cell("n"), `AVERAGE(${wholeColumn(cell("catch"), row, CANS)})`),
      },
      {
        key: "low",
        heading: "mean of the lowest quarter",
        unit: "mL",
        format: "decimals1",
        formula: (cell, row) => {
          const [places, catches] = [wholeColumn(cell("n"), row, CANS), wholeColumn(cell("catch"), row, CANS)];
          return ifUsed(cell("n"), `SUMIF(${places}, "<=" & ${quarter.here}, ${catches}) / ${quarter.here}`);
        },
      },
    ],
  }).column;
}
