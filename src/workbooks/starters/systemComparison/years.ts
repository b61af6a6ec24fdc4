import type { BlockRef, SheetBuilder } from "../../kit";
import { discountedYears } from "./cases";
import { LINES, type Costs } from "./costs";
import type { Chosen } from "./lookedAt";
import { MOST_YEARS } from "./prices";

const MOVED = LINES.length + 2;

export interface Years {
  readonly table: BlockRef;
  readonly sensitivity: BlockRef;
}

const CHART_ROWS = 17;
const CHART = { width: 800, height: 320 };
/** The chart of the years shows so many after today. */
const CHARTED_YEARS = 10;

/** The system looked at, year by year and number by number; charts stand below what they show. */
export function fillYears(work: SheetBuilder, result: SheetBuilder, costs: Costs, chosen: Chosen): Years {
  const { lookedAt } = chosen;
  costsChart(work, result, costs, chosen);
  const [paid, saved] = [String(lookedAt("investment")), String(lookedAt("saved"))];
  result.put(`A${result.next}`, {
    formula: `="The system looked at: " & ${lookedAt("system")}`,
    style: "heading",
  });
  const table = result.skip(2).spill({
    label: "Paid back year by year",
    how: "The last discounted one is the net present value.",
    table: `=CANYARD.PAYBACK_TABLE(${paid}, ${saved}, plan_years, discount_rate)`,
    rows: MOST_YEARS + 2,
    formats: ["decimals0", "money0", "money0", "money0"],
    header: true,
    plain: yearsPlain(paid, saved),
  });
  cashChart(work, result, table);
  const { name, saving } = chosen.lines;
  const sensitivity = result.spill({
    label: "Which number matters most",
    how: "One number lower, then higher, by the swing. life: years of the plan.",
    table: `=CANYARD.PAYBACK_SENSITIVITY(${paid}, ${name!}, ${saving!}, plan_years, swing, discount_rate)`,
    rows: MOVED + 2,
    formats: [undefined, "money0", "money0", "decimals1", "decimals1"],
    header: true,
    plain: sensitivityPlain(chosen),
  });
  tornado(work, result, sensitivity);
  return { table, sensitivity };
}

function yearsPlain(paid: string, saved: string): readonly (readonly string[])[] {
  const worth = (year: number) =>
    `IF(discount_rate = 0, ${year} * ${saved}, ${saved} * (1 - (1 + discount_rate) ^ -${year}) / discount_rate)`;
  const unlessOver = (year: number, formula: string) => `=IF(${year} > plan_years, "", ${formula})`;
  const rows = Array.from({ length: MOST_YEARS }, (_none, index) => {
    const year = index + 1;
    const cells = [`${year}`, saved, `${year} * ${saved} - ${paid}`, `${worth(year)} - ${paid}`];
    return cells.map((formula) => unlessOver(year, formula));
  });
  return [
    ['="year"', '="saving"', '="cumulative"', '="discounted cumulative"'],
    ["=0", '=""', `=-${paid}`, `=-${paid}`],
    ...rows,
  ];
}

function sensitivityPlain({ moved, lookedAt }: Chosen): readonly (readonly string[])[] {
  const [paid, saved] = [String(lookedAt("investment")), String(lookedAt("saved"))];
  const value = `=PV(discount_rate, plan_years, -${saved}) - ${paid}`;
  const payback = `=${discountedYears(paid, saved)}`;
  const rows = Array.from({ length: MOVED }, (_none, index) =>
    ["name", "low", "high", "paybackLow", "paybackHigh"].map(
      (key) => `=INDEX(${moved[key]!}, MATCH(${index + 1}, ${moved["place"]!}, 0))`,
    ),
  );
  return [
    ["name", "value low", "value high", "payback low", "payback high"].map((text) => `="${text}"`),
    ['="as planned"', value, value, payback, payback],
    ...rows,
  ];
}

function costsChart(work: SheetBuilder, result: SheetBuilder, costs: Costs, { column }: Chosen): void {
  const parts = [
    ...LINES.filter(({ key }) => key !== "replacement").map(({ key, heading }) => ({
      key,
      heading,
      block: costs.cost[key]!,
    })),
    { key: "yearly", heading: "system a year", block: costs.system["yearly"]! },
  ];
  const place = (row: number) => column["place"]!.cell(row).here;
  work.skip().note("For the chart of costs", "heading");
  const charted = work.table({
    rows: 4,
    columns: [
      {
        key: "system",
        heading: "system",
        formula: (_cell, row) => `=IF(${place(row)} = 0, "", ${column["system"]!.cell(row).at})`,
      },
      ...parts.map(({ key, heading, block }) => ({
        key,
        heading,
        unit: "currency",
        format: "money0" as const,
        formula: (_cell: unknown, row: number) => `=IF(${place(row)} = 0, 0, INDEX(${block.here}, ${place(row)}))`,
      })),
    ],
  }).column;
  result.chart({
    type: "columns",
    stacked: true,
    title: "Cost of a year by line, the system itself included",
    description:
      "A column for each printed system, stacked from its lines of cost; the lowest column costs least a year.",
    labels: String(charted["system"]),
    series: parts.map(({ key, heading }) => ({ name: heading, values: String(charted[key]) })),
    axisTitles: { values: "currency a year" },
    position: { cell: `A${result.next + 1}`, ...CHART },
  });
  result.skip(CHART_ROWS + 1);
}

function cashChart(work: SheetBuilder, result: SheetBuilder, table: BlockRef): void {
  work.skip().note("For the chart of cash", "heading");
  const first = work.next + 3;
  const year = (row: number) => `(ROW(A${first + row}) - ROW(A$${first}))`;
  const at = (column: number) => (_cell: unknown, row: number) =>
    `=INDEX(${table.column(column, 1)}, MIN(${year(row)}, plan_years) + 1)`;
  const cash = work.table({
    rows: CHARTED_YEARS + 1,
    columns: [
      {
        key: "year",
        heading: "year",
        unit: "number",
        formula: (_cell, row) => `=IF(${year(row)} > plan_years, "", ${year(row)})`,
      },
      {
        key: "simple",
        heading: "cumulative",
        unit: "currency",
        format: "money0",
        formula: at(2),
        how: "as in the table of years; level after the last",
      },
      { key: "discounted", heading: "discounted", unit: "currency", format: "money0", formula: at(3) },
    ],
  }).column;
  result.chart({
    type: "lines",
    title: "Cash so far, the first ten years",
    description:
      "Two lines that start at minus the investment, without and with interest; each crosses 0 when it is paid back.",
    labels: String(cash["year"]),
    series: [
      { name: "simple", values: String(cash["simple"]) },
      { name: "discounted", values: String(cash["discounted"]) },
    ],
    axisTitles: { labels: "year", values: "currency" },
    position: { cell: `A${result.next}`, ...CHART },
  });
  result.skip(CHART_ROWS);
}

function tornado(work: SheetBuilder, result: SheetBuilder, sensitivity: BlockRef): void {
  work.skip().note("For the chart of the sensitivity", "heading");
  const change = (side: number) => (_cell: unknown, row: number) =>
    `=${sensitivity.cell(row + 2, side)} - ${sensitivity.cell(1, side)}`;
  const bars = work.table({
    rows: MOVED,
    columns: [
      { key: "name", heading: "number", formula: (_cell, row) => `=${sensitivity.cell(row + 2)}` },
      { key: "low", heading: "number lower", unit: "currency", format: "money0", formula: change(1) },
      { key: "high", heading: "number higher", unit: "currency", format: "money0", formula: change(2) },
    ],
  }).column;
  result.chart({
    type: "bars",
    stacked: true,
    topDown: true,
    title: "Change of the net present value when one number moves",
    description:
      "Lying bars, the widest on top: to each side of the plan, the change when a number is lower and when it is higher.",
    labels: String(bars["name"]),
    series: [
      { name: "number lower", values: String(bars["low"]) },
      { name: "number higher", values: String(bars["high"]) },
    ],
    axisTitles: { values: "currency" },
    position: { cell: `A${result.next}`, ...CHART },
  });
  result.skip(CHART_ROWS);
}
