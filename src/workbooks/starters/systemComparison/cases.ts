import type { RowCells, SheetBuilder, TableColumn } from "../../kit";
import type { Costs } from "./costs";
import { SYSTEMS } from "./figures";
import type { Given } from "./inputs";
import { reader, systemColumn, type Columns, type Systems } from "./systems";

/** What may come otherwise than planned, each by itself. */
export const CASES = [
  { key: "planned", heading: "as planned" },
  { key: "well", heading: "own well" },
  { key: "sameLoss", heading: "no loss gain" },
  { key: "less", heading: "smaller savings" },
  { key: "shortLife", heading: "short life" },
] as const;
type CaseKey = (typeof CASES)[number]["key"];

const YEARS = { unit: "years", format: "decimals1" } as const;
const MONEY = { unit: "currency", format: "money0" } as const;
const NEVER = '"never"';

/** One row a system, one column a case. */
export interface Cases {
  readonly saved: Columns;
  readonly simple: Columns;
  readonly withInterest: Columns;
  /** Net present value, and as `bad` the number of cases in which it is below 0. */
  readonly value: Columns;
}

export function fillCases(work: SheetBuilder, given: Given, systems: Systems, costs: Costs): Cases {
  const table = (title: string, columns: readonly TableColumn[]): Columns => {
    work.skip().note(title, "heading");
    return work.table({ rows: SYSTEMS.length, columns: [systemColumn(given.systems), ...columns] }).column;
  };
  const investment = (row: number) => costs.system["investment"]!.cell(row).at;
  const saved = table("Cases: saved a year", savedColumns(given, systems, costs));
  const amount = (key: string, row: number) => saved[key]!.cell(row).at;
  return {
    saved,
    simple: table("Cases: payback, simple", paybackColumns(investment, amount, false)),
    withInterest: table("Cases: payback with interest", paybackColumns(investment, amount, true)),
    value: table("Cases: net present value", [
      ...valueColumns(investment, amount),
      {
        key: "bad",
        heading: "cases below 0",
        unit: "count",
        format: "decimals0",
        formula: (cell) => `=COUNTIF(${cell("planned")}:${cell("shortLife")}, "<0")`,
        how: "in how many of the cases the plan does not pay within the years that it looks at",
      },
    ]),
  };
}

function savedColumns(given: Given, systems: Systems, { saving, pumped, system }: Costs): readonly TableColumn[] {
  const total = (row: number) => saving["total"]!.cell(row).at;
  const well = pumped["well"]!;
  const formulas: Readonly<Record<CaseKey, (row: number) => string>> = {
    planned: total,
    well: (row) => `${total(row)} - ${saving["water"]!.cell(row).at} + ${well.cell(0).here} - ${well.cell(row).at}`,
    sameLoss: (row) => `${total(row)} - MAX(0, ${saving["lost"]!.cell(row).at})`,
    less: (row) => `${total(row)} - swing * ABS(${total(row)})`,
    shortLife: (row) => {
      const life = reader(systems.investment)("life", row);
      return `${total(row)} - ${system["wearing"]!.cell(row).at} * (1 / MIN(${given.shortLife}, ${life}) - 1 / ${life})`;
    },
  };
  const hows: Readonly<Record<CaseKey, string>> = {
    planned: "all savings together",
    well: "water costs nothing, but has to be lifted out of the well",
    sameLoss: "as many plants are lost as with the baseline",
    less: "all savings together smaller by the swing",
    shortLife: "what wears out lasts only the short life",
  };
  return CASES.map(({ key, heading }) => ({
    key,
    heading,
    ...MONEY,
    formula: (_cell, row) => `=${formulas[key](row)}`,
    how: hows[key],
  }));
}

type Investment = (row: number) => string;
type Amount = (key: string, row: number) => string;

/** What is there already needs no payback. */
function unlessThere(investment: string, formula: string): string {
  return `=IF(${investment} <= 0, "", ${formula})`;
}

function paybackColumns(investment: Investment, amount: Amount, isWithInterest: boolean): readonly TableColumn[] {
  const rate = isWithInterest ? ", discount_rate" : "";
  const how = isWithInterest
    ? 'years until the discounted savings reach the investment; "never" where interest eats them'
    : "investment / saving of a year; says nothing of interest, nor of the life of the parts";
  return CASES.map(({ key, heading }, index) => ({
    key,
    heading,
    ...YEARS,
    formula: (_cell: RowCells, row: number) => {
      const [paid, saved] = [investment(row), amount(key, row)];
      const years = `IFERROR(CANYARD.PAYBACK_YEARS(${paid}, ${saved}${rate}), ${NEVER})`;
      return unlessThere(paid, `IF(ISNUMBER(${saved}), ${years}, ${saved})`);
    },
    plain: (_cell: RowCells, row: number) => {
      const [paid, saved] = [investment(row), amount(key, row)];
      return unlessThere(paid, isWithInterest ? discountedYears(paid, saved) : simpleYears(paid, saved));
    },
    ...(index === 0 && { how }),
  }));
}

function simpleYears(paid: string, saved: string): string {
  return `IF(${saved} <= 0, ${NEVER}, ${paid} / ${saved})`;
}

/** Years until equal savings have paid back with interest, in built-in functions. */
export function discountedYears(paid: string, saved: string): string {
  const years = `IF(discount_rate = 0, ${paid} / ${saved}, -LN(1 - discount_rate * ${paid} / ${saved}) / LN(1 + discount_rate))`;
  return `IF(${saved} <= discount_rate * ${paid}, ${NEVER}, ${years})`;
}

function valueColumns(investment: Investment, amount: Amount): readonly TableColumn[] {
  return CASES.map(({ key, heading }, index) => ({
    key,
    heading,
    ...MONEY,
    formula: (_cell: RowCells, row: number) =>
      unlessThere(investment(row), `PV(discount_rate, plan_years, -${amount(key, row)}) - ${investment(row)}`),
    ...(index === 0 && {
      how: "today's worth of the savings of all years - investment, which is paid today",
    }),
  }));
}
