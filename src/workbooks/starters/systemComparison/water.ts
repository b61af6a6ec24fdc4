import type { SheetBuilder, StarterBuilder } from "../../kit";
import { SYSTEMS } from "./figures";
import { BILLS, type Given } from "./inputs";
import { reader, systemColumn, type Columns, type Systems } from "./systems";

/** Name, unit and mark stand over the body of a table. */
export const HEADING_ROWS = 3;

export interface Water {
  readonly season: Columns;
  readonly tariff: Columns;
  /** One row a system: each bill, and their sum as `total`. */
  readonly bills: Columns;
}

export function fillWater(kit: StarterBuilder, work: SheetBuilder, given: Given, systems: Systems): Water {
  work.note("Water of the season", "heading");
  const season = fillSeason(kit, work, given, systems);
  work.skip().note("The tariff as steps: each price more than the one before, for the water above the end of that block", "heading");
  const tariff = fillTariff(work, given);
  work.skip().note("Water bills of the season, one by one", "heading");
  return { season, tariff, bills: fillBills(work, given, season, tariff) };
}

function fillSeason(kit: StarterBuilder, work: SheetBuilder, given: Given, systems: Systems): Columns {
  const input = reader(systems.water);
  const volume = kit.pick("gal", "L");
  const first = work.next + HEADING_ROWS;
  return work.table({
    rows: SYSTEMS.length,
    columns: [
      systemColumn(given.systems),
      {
        key: "suits",
        heading: "for these pots",
        formula: (_cell, row) =>
          `=IF(${given.pot} > ${input("to", row)}, "for smaller pots", IF(${given.pot} < ${input("from", row)}, "for larger pots", IF(AND(${input("house", row)} = "yes", ${given.place} = "yard"), "needs a roof", "suits")))`,
        how: "the size of the pots against what the system is for, then whether it needs a roof",
      },
      {
        key: "kept",
        heading: "kept by a plant",
        unit: kit.pick("gal/day", "L/day"),
        format: "decimals3",
        formula: (_cell, row) => `=${input("peak", row)} * ${input("enters", row)} * (1 - ${input("leached", row)})`,
        how: "water of a plant x part that enters the pots x part that does not leach; much the same with every system",
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
        formula: (cell, row) => `=CANYARD.WATER_AFTER_SAVINGS(${cell("planned")}, ${savings(systems, row)})`,
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
        formula: (cell) => `=${cell("after")} / ${cell("after").replace(/\d+$/, `$${first}`)}`,
        how: "water of the system / water of the baseline",
      },
    ],
  }).column;
}

function savings(systems: Systems, row: number): string {
  return `${reader(systems.water)("pulses", row)}:${systems.water["rain"]!.cell(row).at}`;
}

function fillTariff(work: SheetBuilder, { limits, prices }: Given): Columns {
  const limit = (row: number) => `Inputs!${limits.cell(row).at}`;
  const price = (row: number) => `Inputs!${prices.cell(row).at}`;
  return work.table({
    rows: 4,
    columns: [
      {
        key: "block",
        heading: "block",
        unit: "number",
        formula: (_cell, row) => `=ROWS(${limits.cell(0)}:${limits.cell(row).at})`,
      },
      {
        key: "from",
        heading: "from",
        unit: "bill units",
        format: "decimals0",
        formula: (cell) => `=IF(${cell("block")} = 1, 0, N(INDEX(${limits}, ${cell("block")} - 1)))`,
        how: "upper end of the block before",
      },
      {
        key: "step",
        heading: "step in price",
        unit: "a unit",
        format: "money",
        formula: (cell, row) =>
          `=IF(${price(row)} = "", 0, ${price(row)} - IF(${cell("block")} = 1, 0, N(INDEX(${prices}, ${cell("block")} - 1))))`,
        how: "price - price of the block before",
      },
      {
        key: "order",
        heading: "order",
        formula: (cell, row) =>
          `=IF(IF(${price(row)} = "", ${limit(row)} = "", AND(OR(${limit(row)} = "", N(${limit(row)}) > ${cell("from")}), OR(${cell("block")} = 1, ${cell("from")} > 0))), "ok", "look")`,
        how: "upper ends must rise, no row may be left out, and only the last may have no upper end",
      },
    ],
  }).column;
}

function fillBills(work: SheetBuilder, { bills, shares }: Given, season: Columns, tariff: Columns): Columns {
  const heading = work.next;
  const water = (row: number, bill: number) => `${season["units"]!.cell(row).at} * ${shares.cell(bill)}`;
  const unlessBlank = (bill: number, formula: string) => `=IF(${bills.cell(bill)} = "", "", ${formula})`;
  const steps = (volume: string) =>
    `fixed_charge + SUMPRODUCT((${volume} > ${tariff["from"]!.here}) * (${volume} - ${tariff["from"]!.here}) * ${tariff["step"]!.here})`;
  const table = work.table({
    rows: SYSTEMS.length,
    columns: [
      systemColumn({ cell: (row: number) => season["system"]!.cell(row) } as never),
      ...Array.from({ length: BILLS }, (_none, bill) => ({
        key: `bill${bill + 1}`,
        heading: "",
        unit: "currency",
        format: "money0" as const,
        formula: (_cell: unknown, row: number) =>
          unlessBlank(bill, `CANYARD.WATER_COST(${water(row, bill)}, tier_limits, tier_prices, fixed_charge)`),
        plain: (_cell: unknown, row: number) => unlessBlank(bill, steps(water(row, bill))),
        ...(bill === 0 && { how: "fixed charge + the water in each block x its price; this bill's water is its part of the season's" }),
      })),
      {
        key: "total",
        heading: "season",
        unit: "currency",
        format: "money0",
        style: "result",
        formula: (cell) => `=SUM(${cell("bill1")}:${cell(`bill${BILLS}`)})`,
        how: "all bills together",
      },
    ],
  }).column;
  return table;
}
