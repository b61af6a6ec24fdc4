import { columnLetters, type RowCells, type SheetBuilder, type StarterBuilder, type TableColumn } from "../../kit";
import { SYSTEMS } from "./figures";
import type { Given } from "./inputs";
import { reader, systemColumn, type Columns, type Systems } from "./systems";
import { BILLS, BLOCKS } from "./tariff";

/** Name, unit and mark stand over the body of a table. */
export const HEADING_ROWS = 3;

export interface Water {
  /** One row a system. */
  readonly season: Columns;
  /** One row a block of the tariff. */
  readonly tariff: Columns;
  /** One row a system: each bill, and their sum as `total`. */
  readonly bills: Columns;
}

export function fillWater(kit: StarterBuilder, work: SheetBuilder, given: Given, systems: Systems): Water {
  work.note("Water of the season", "heading");
  const season = work.table({ rows: SYSTEMS.length, columns: seasonColumns(kit, work.next, given, systems) }).column;
  work.skip().note("The tariff as steps", "heading");
  const tariff = work.table({ rows: BLOCKS, columns: tariffColumns(given) }).column;
  work.skip().note("Water bills, one by one", "heading");
  return { season, tariff, bills: fillBills(work, given, season, tariff) };
}

function seasonColumns(kit: StarterBuilder, heading: number, given: Given, systems: Systems): readonly TableColumn[] {
  const input = reader(systems.water);
  const volume = kit.pick("gal", "L");
  const saved = (row: number) => `${input("pulses", row)}:${systems.water["rain"]!.cell(row).at}`;
  return [
    systemColumn(given.systems),
    {
      key: "suits",
      heading: "for these pots",
      formula: (_cell, row) => {
        const roof = `IF(AND(${input("house", row)} = "yes", ${given.place} = "yard"), "needs a roof", "suits")`;
        const tall = `IF(${given.pot} < ${input("from", row)}, "for larger pots", ${roof})`;
        return `=IF(${given.pot} > ${input("to", row)}, "for smaller pots", ${tall})`;
      },
      how: "the size of the pots against what the system is for, then whether it needs a roof",
    },
    {
      key: "kept",
      heading: "kept by a plant",
      unit: kit.pick("gal/day", "L/day"),
      format: "decimals3",
      formula: (_cell, row) => `=${input("peak", row)} * ${input("enters", row)} * (1 - ${input("leached", row)})`,
      how: "water of a plant x enters the pots x (1 - leached of that); much the same with every system",
    },
    {
      key: "planned",
      heading: "planned",
      unit: volume,
      format: "decimals0",
      formula: (_cell, row) => `=${input("peak", row)} * plants * ${given.days} * ${given.ratio}`,
      how: "water of a plant on the hottest days x plants x days x mean day / hottest day",
    },
    {
      key: "after",
      heading: "after savings",
      unit: volume,
      format: "decimals0",
      formula: (cell, row) => `=CANYARD.WATER_AFTER_SAVINGS(${cell("planned")}, ${saved(row)})`,
      plain: (cell, row) => `=${cell("planned")} * (1 - ${input("pulses", row)}) * (1 - ${input("rain", row)})`,
      how: "each saving is a part of what the one before left",
    },
    {
      key: "units",
      heading: "after savings",
      unit: "bill units",
      format: "decimals1",
      formula: (cell) => `=${cell("after")} / bill_unit`,
      how: "volume / unit of the bill",
    },
    {
      key: "part",
      heading: "of the baseline",
      unit: "fraction",
      format: "percent0",
      formula: (cell) => `=${cell("after")} / ${inRow(cell("after"), heading + HEADING_ROWS)}`,
      how: "water of the system / water of the baseline",
    },
  ];
}

/** The cell of the same column in a given row. */
export function inRow(address: string, row: number): string {
  return address.replace(/\d+$/, `$${row}`);
}

/** Each price as a step from the one before, for the water above the end of that block: the same bill in built-in functions. */
function tariffColumns({ limits, prices }: Given): readonly TableColumn[] {
  const limit = (row: number) => `Inputs!${limits.cell(row).at}`;
  const price = (row: number) => `Inputs!${prices.cell(row).at}`;
  const before = (cell: RowCells, column: string) =>
    `IF(${cell("block")} = 1, 0, INDEX(${column}, ${cell("block")} - 1))`;
  return [
    {
      key: "block",
      heading: "block",
      unit: "number",
      formula: (_cell, row) => `=ROW(${limit(row)}) - ROW(${limits.cell(-1)})`,
    },
    {
      key: "from",
      heading: "from",
      unit: "bill units",
      format: "decimals0",
      formula: (cell) => `=0 + ${before(cell, String(limits))}`,
      how: "upper end of the block before",
    },
    {
      key: "step",
      heading: "step in price",
      unit: "a unit",
      format: "money",
      formula: (cell, row) => `=IF(${price(row)} = "", 0, ${price(row)} - ${before(cell, String(prices))})`,
      how: "price - price of the block before; for the water above the end of that block",
    },
    {
      key: "order",
      heading: "order",
      formula: (cell, row) => {
        const rises = `OR(${limit(row)} = "", ${limit(row)} > ${cell("from")})`;
        const follows = `OR(${cell("block")} = 1, ${cell("from")} > 0)`;
        return `=IF(IF(${price(row)} = "", ${limit(row)} = "", AND(${rises}, ${follows})), "ok", "look")`;
      },
      how: "upper ends must rise, no row may be left out, and only the last block has no upper end",
    },
  ];
}

function fillBills(work: SheetBuilder, { systems, bills, shares }: Given, season: Columns, tariff: Columns): Columns {
  const heading = work.next;
  const water = (row: number, bill: number) => `${season["units"]!.cell(row).at} * ${shares.cell(bill)}`;
  const unlessBlank = (bill: number, formula: string) => `=IF(${bills.cell(bill)} = "", "", ${formula})`;
  const [from, step] = [tariff["from"]!.here, tariff["step"]!.here];
  const inSteps = (volume: string) =>
    `fixed_charge + SUMPRODUCT((${volume} > ${from}) * (${volume} - ${from}) * ${step})`;
  const billColumns = Array.from({ length: BILLS }, (_none, bill): TableColumn => ({
    key: `bill${bill + 1}`,
    heading: "",
    unit: "currency",
    format: "money0",
    formula: (_cell, row) =>
      unlessBlank(bill, `CANYARD.WATER_COST(${water(row, bill)}, tier_limits, tier_prices, fixed_charge)`),
    plain: (_cell, row) => unlessBlank(bill, inSteps(water(row, bill))),
  }));
  const { column } = work.table({
    rows: SYSTEMS.length,
    columns: [
      systemColumn(systems),
      ...billColumns,
      {
        key: "total",
        heading: "season",
        unit: "currency",
        format: "money0",
        style: "result",
        formula: (cell) => `=SUM(${cell("bill1")}:${cell(`bill${BILLS}`)})`,
        how: "all bills together; each is the fixed charge + the water in each block x its price",
      },
    ],
  });
  billColumns.forEach((_column, bill) => {
    const name = bills.cell(bill);
    work.put(`${columnLetters(2 + bill)}${heading}`, { formula: `=IF(${name} = "", "", ${name})`, style: "heading" });
  });
  return column;
}
