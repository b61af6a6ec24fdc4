import { rowNumber, type RowCells, type SheetBuilder, type StarterBuilder, type TableColumn } from "../../kit";
import { SYSTEMS } from "./figures";
import type { Given } from "./inputs";
import { reader, systemColumn, type Columns, type Systems } from "./systems";
import { inRow, type Water } from "./water";

/** The lines of a year's cost, in the order of every table and chart. */
export const LINES = [
  { key: "water", heading: "water" },
  { key: "pumping", heading: "pumping" },
  { key: "feed", heading: "feed bought" },
  { key: "labour", heading: "labour" },
  { key: "lost", heading: "plants lost" },
  { key: "upkeep", heading: "upkeep" },
  { key: "replacement", heading: "replacement" },
] as const;

const MONEY = { unit: "currency", format: "money0" } as const;

/** Each with one row a system. */
export interface Costs {
  readonly pumped: Columns;
  readonly cost: Columns;
  readonly saving: Columns;
  readonly system: Columns;
}

export function fillCosts(
  kit: StarterBuilder,
  work: SheetBuilder,
  given: Given,
  systems: Systems,
  water: Water,
): Costs {
  const table = (title: string, columns: readonly TableColumn[]): Columns => {
    work.skip().note(title, "heading");
    return work.table({ rows: SYSTEMS.length, columns: [systemColumn(given.systems), ...columns] }).column;
  };
  const pumped = table("Pumping, and feed not kept", pumpedColumns(kit, given, systems, water));
  const system = table("The system itself", systemColumns(systems));
  const cost = table("Costs of a year (positive)", costColumns(given, systems, { water, pumped, system }));
  const saving = table("Saved a year (positive)", savingColumns(cost));
  const plant = table("A plant that can be sold", plantColumns(given, systems, cost, system));
  return { pumped, cost, saving, system: { ...system, ...plant } };
}

function pumpedColumns(kit: StarterBuilder, given: Given, systems: Systems, { season }: Water): readonly TableColumn[] {
  const input = reader(systems.water);
  const volume = (row: number) => season["after"]!.cell(row).at;
  const energy = (row: number, head: string) =>
    `CANYARD.PUMP_ENERGY(${volume(row)}, ${head}, ${given.efficiency}, units)`;
  const nitrogen = { unit: kit.pick("lb N", "kg N"), format: "decimals0" } as const;
  const lost = (cell: RowCells, part: string, row: number) =>
    `=IF(${cell("fed")} * ${input("ppm", row)} > 0, CANYARD.NUTRIENT_LEACHED(${cell("fed")}, ${part}, ${input("ppm", row)}, units), 0)`;
  return [
    {
      key: "energy",
      heading: "energy",
      unit: "kWh",
      format: "decimals0",
      formula: (_cell, row) => `=${energy(row, input("head", row))}`,
      how: "weight of the water x head / efficiency of pump and motor",
    },
    {
      key: "well",
      heading: "lift of a well",
      ...MONEY,
      formula: (_cell, row) => `=IF(${given.lift} > 0, ${energy(row, String(given.lift))} * rate_kwh, 0)`,
      how: "what pumping would cost more from an own well",
    },
    {
      key: "fed",
      heading: "water with feed",
      unit: kit.pick("gal", "L"),
      format: "decimals0",
      formula: (_cell, row) => `=${volume(row)} * ${given.fed}`,
      how: "water after savings x part that carries feed",
    },
    {
      key: "leached",
      heading: "leached",
      ...nitrogen,
      formula: (cell, row) => lost(cell, `${input("enters", row)} * ${input("leached", row)}`, row),
      how: "nitrogen that drains: water with feed x enters the pots x leached of that x strength",
    },
    {
      key: "beside",
      heading: "beside the pots",
      ...nitrogen,
      formula: (cell, row) => lost(cell, `1 - ${input("enters", row)}`, row),
      how: "nitrogen in what never enters a pot",
    },
  ];
}

function systemColumns(systems: Systems): readonly TableColumn[] {
  const input = reader(systems.investment);
  return [
    {
      key: "wearing",
      heading: "what wears out",
      ...MONEY,
      formula: (_cell, row) => `=plants * ${input("wearing", row)}`,
      how: "plants x its cost for a plant",
    },
    {
      key: "rest",
      heading: "the rest",
      ...MONEY,
      formula: (_cell, row) => `=plants * ${input("rest", row)} + ${input("once", row)} - ${input("grant", row)}`,
      how: "plants x other parts and work + once for the yard - grant",
    },
    {
      key: "investment",
      heading: "investment",
      ...MONEY,
      style: "result",
      formula: (cell) => `=${cell("wearing")} + ${cell("rest")}`,
      how: "what wears out, the first time, + the rest",
    },
    {
      key: "yearly",
      heading: "system a year",
      ...MONEY,
      formula: (cell, row) => {
        const spread = (part: string, years: string) =>
          `IF(${cell(part)} > 0, CANYARD.ANNUALIZED_COST(${cell(part)}, ${years}, discount_rate), 0)`;
        return `=${spread("wearing", input("life", row))} + ${spread("rest", "plan_years")}`;
      },
      how: "each part over its life with interest; instead of replacement and investment",
    },
  ];
}

interface Parts {
  readonly water: Water;
  readonly pumped: Columns;
  readonly system: Columns;
}

function costColumns(given: Given, systems: Systems, { water, pumped, system }: Parts): readonly TableColumn[] {
  const work = reader(systems.work);
  const fed = (row: number) => pumped["fed"]!.cell(row).at;
  const formulas: Readonly<Record<(typeof LINES)[number]["key"], (row: number) => string>> = {
    water: (row) => water.bills["total"]!.cell(row).at,
    pumping: (row) => `${pumped["energy"]!.cell(row).at} * rate_kwh`,
    feed: (row) => {
      const ppm = reader(systems.water)("ppm", row);
      const bought = `CANYARD.FERTILIZER_COST(${fed(row)}, ${ppm}, ${given.analysis}, ${given.fertilizer}, units)`;
      return `IF(${fed(row)} * ${ppm} > 0, ${bought}, 0)`;
    },
    labour: (row) => {
      const week = ["hand", "checking", "cleaning"].map((key) => work(key, row)).join(" + ");
      return `((${week}) * ${given.days} / 7 + ${work("placing", row)}) * wage`;
    },
    lost: (row) => `plants * ${work("lost", row)} * ${given.invested}`,
    upkeep: (row) => work("upkeep", row),
    replacement: (row) => `${system["wearing"]!.cell(row).at} / ${reader(systems.investment)("life", row)}`,
  };
  const hows: Readonly<Record<keyof typeof formulas, string>> = {
    water: "the season's bills together",
    pumping: "energy x price",
    feed: "nitrogen in the water with feed / nitrogen in the fertilizer x price",
    labour: "(hours a week, all chores x weeks of the season + hours a year) x loaded wage",
    lost: "plants x part lost x what was spent on one by then",
    upkeep: "as typed",
    replacement: "what wears out / its life: put aside every year",
  };
  return [
    ...LINES.map(({ key, heading }): TableColumn => ({
      key,
      heading,
      ...MONEY,
      formula: (_cell, row) => `=${formulas[key](row)}`,
      how: hows[key],
    })),
    totalColumn("all lines together"),
  ];
}

function totalColumn(how: string): TableColumn {
  return {
    key: "total",
    heading: "together",
    ...MONEY,
    style: "result",
    formula: (cell) => `=SUM(${cell("water")}:${cell("replacement")})`,
    how,
  };
}

function savingColumns(cost: Columns): readonly TableColumn[] {
  return [
    ...LINES.map(({ key, heading }, index): TableColumn => ({
      key,
      heading,
      ...MONEY,
      formula: (_cell, row) => `=${inRow(cost[key]!.first, rowNumber(cost[key]!.first))} - ${cost[key]!.cell(row).at}`,
      ...(index === 0 && { how: "cost of the baseline - cost of the system, line by line; an extra cost is below 0" }),
    })),
    totalColumn("all savings together"),
  ];
}

function plantColumns(given: Given, systems: Systems, cost: Columns, system: Columns): readonly TableColumn[] {
  const running = (row: number) =>
    ["water", "pumping", "feed", "labour", "upkeep"].map((key) => cost[key]!.cell(row).at).join(" + ");
  return [
    {
      key: "crop",
      heading: "whole crop",
      ...MONEY,
      formula: (_cell, row) =>
        `=plants * (${given.materials} + ${given.cropLabour}) + ${running(row)} + ${system["yearly"]!.cell(row).at}`,
      how: "plants x materials and labour + year's costs but plants lost and replacement + system a year",
    },
    {
      key: "saleable",
      heading: "a plant sold",
      unit: "currency",
      format: "money",
      style: "result",
      formula: (cell, row) =>
        `=CANYARD.COST_PER_SALEABLE_PLANT(${cell("crop")}, plants, ${reader(systems.work)("lost", row)})`,
      how: "whole crop / plants that are left to sell: the good ones bear the lost ones",
    },
    {
      key: "share",
      heading: "labour's part",
      unit: "fraction",
      format: "percent0",
      formula: (cell, row) => `=(plants * ${given.cropLabour} + ${cost["labour"]!.cell(row).at}) / ${cell("crop")}`,
      how: "all labour / whole crop; 40 % and more is usual",
    },
  ];
}
