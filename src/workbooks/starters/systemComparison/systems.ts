import type { BlockRef, SheetBuilder, StarterBuilder, TableColumn, TableRefs } from "../../kit";
import { FIGURES, SHARED, SYSTEMS } from "./figures";
import type { Given } from "./inputs";

export type Columns = Readonly<Record<string, BlockRef>>;

/** What is typed for each system, one row a system. */
export interface Systems {
  readonly water: Columns;
  readonly work: Columns;
  readonly investment: Columns;
  /** The bodies, to count whether anything is missing. */
  readonly bodies: readonly BlockRef[];
}

const FRACTION = { unit: "fraction", format: "percent0" } as const;
const HOURS = { unit: "h a week", format: "decimals1", limits: { least: 0, most: 1000 } } as const;
const A_PLANT = { unit: "a plant", format: "money", limits: { least: 0, most: 1000 } } as const;
const AT_ONCE = { unit: "currency", format: "money0", limits: { least: 0, most: 10_000_000 } } as const;

/** The name of a system heads each of its rows. */
export function systemColumn(systems: BlockRef): TableColumn {
  return { key: "system", heading: "system", formula: (_cell, row) => `=${systems.cell(row)}` };
}

/** The cell of a column on the same row. */
export const reader = (columns: Columns) => (key: string, row: number) => {
  const { sheet, at } = columns[key]!.cell(row);
  return `${sheet}!${at}`;
};

export function fillSystems(kit: StarterBuilder, sheet: SheetBuilder, { systems }: Given): Systems {
  const table = (title: string, columns: readonly TableColumn[]): TableRefs => {
    sheet.note(title, "heading");
    return sheet.table({ rows: SYSTEMS.length, columns: [systemColumn(systems), ...columns] });
  };
  const water = table("Pots, water and feed", waterColumns(kit));
  sheet.note("water of a plant: on the hottest days, all that leaves the valve for it, from the zone planner.");
  sheet.note(
    "saved: each acts on what the one before left. Nothing twice: uneven watering, leaching and water beside the pots are in the water of a plant.",
  );
  sheet.note(
    "a mat lifts water a hand's width or two: tall pots stay dry on top, and the mat between the pots dries too.",
  );
  sheet.note(
    "pots: what the trade uses each system for (common practice; stakes by a trade article); yours to change.",
  );
  sheet.skip();
  const work = table("Hours, plants and upkeep", workColumns(kit));
  sheet.note("checking stakes and cleaning filters are new chores: a plugged stake is a dry plant by evening.");
  sheet.note(
    "plants lost: of the plants started. The baseline's own count first; a gain only as far as you have seen one.",
  );
  sheet.skip();
  const investment = table("What it costs to put in", investmentColumns(kit));
  sheet.note(
    "wears out: stakes, emitters, tubes, mats, nozzles; renewed after their life. Upkeep is what breaks before.",
  );
  sheet.note(
    "the baseline is there already: its new nozzles stand in its upkeep. The house over mats, benches and booms is not in.",
  );
  return {
    water: water.column,
    work: work.column,
    investment: investment.column,
    bodies: [water.body, work.body, investment.body],
  };
}

function waterColumns(kit: StarterBuilder): readonly TableColumn[] {
  const { pots, water } = FIGURES[kit.edition];
  const pot = {
    unit: kit.pick("gal", "L"),
    format: kit.pick("decimals2", "decimals1"),
    limits: { least: 0.01, most: 400 },
  } as const;
  const saved = { ...FRACTION, limits: { least: 0, most: 0.9 } };
  return [
    { key: "from", heading: "pots from", ...pot, inputs: pots.from },
    { key: "to", heading: "pots up to", ...pot, inputs: pots.to },
    { key: "house", heading: "needs a roof", inputs: SHARED.house, limits: { words: ["yes", "no"] } },
    {
      key: "peak",
      heading: "water of a plant",
      unit: kit.pick("gal/day", "L/day"),
      inputs: water.peak,
      format: "decimals2",
      limits: { least: kit.pick(0.01, 0.02), most: kit.pick(50, 200) },
    },
    { key: "pulses", heading: "saved by pulses", ...saved, inputs: SHARED.pulses },
    { key: "rain", heading: "saved by rain", ...saved, inputs: SHARED.rain },
    {
      key: "enters",
      heading: "enters the pots",
      ...FRACTION,
      limits: { least: 0.02, most: 1 },
      inputs: water.enters,
    },
    {
      key: "leached",
      heading: "leached of that",
      ...FRACTION,
      limits: { least: 0, most: 0.9 },
      inputs: SHARED.leached,
    },
    {
      key: "ppm",
      heading: "strength of feed",
      unit: "ppm N",
      inputs: SHARED.ppm,
      format: "decimals0",
      limits: { least: 0, most: 1000 },
    },
    {
      key: "head",
      heading: "head of pump",
      unit: kit.pick("ft", "m"),
      inputs: water.head,
      format: "decimals0",
      limits: { least: kit.pick(5, 1), most: kit.pick(1000, 300) },
    },
  ];
}

function workColumns(kit: StarterBuilder): readonly TableColumn[] {
  const { work } = FIGURES[kit.edition];
  return [
    { key: "hand", heading: "watering by hand, valves", ...HOURS, inputs: work.hand },
    { key: "checking", heading: "checking emitters", ...HOURS, inputs: work.checking },
    { key: "cleaning", heading: "cleaning filters, mats", ...HOURS, inputs: work.cleaning },
    { key: "placing", heading: "placing, taking out", ...HOURS, unit: "h a year", inputs: work.placing },
    {
      key: "lost",
      heading: "plants lost",
      unit: "fraction",
      format: "percent",
      limits: { least: 0, most: 0.9 },
      inputs: SHARED.lost,
    },
    { key: "upkeep", heading: "upkeep", ...AT_ONCE, unit: "a year", inputs: work.upkeep },
  ];
}

function investmentColumns(kit: StarterBuilder): readonly TableColumn[] {
  const { investment } = FIGURES[kit.edition];
  return [
    { key: "wearing", heading: "what wears out", ...A_PLANT, inputs: investment.wearing },
    {
      key: "life",
      heading: "its life",
      unit: "years",
      format: "decimals1",
      limits: { least: 0.5, most: 30 },
      inputs: SHARED.life,
    },
    { key: "rest", heading: "other parts, work", ...A_PLANT, inputs: investment.rest },
    { key: "once", heading: "once for the yard", ...AT_ONCE, inputs: investment.once },
    { key: "grant", heading: "grant", ...AT_ONCE, inputs: SHARED.grant },
  ];
}
