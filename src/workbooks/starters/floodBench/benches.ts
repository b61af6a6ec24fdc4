import type { BlockRef, RowCells, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { FIGURES, MOST_BENCHES, onEveryBench } from "./figures";
import type { RoundInputs } from "./inputs";

export type Columns = Readonly<Record<string, BlockRef>>;

export interface Benches {
  readonly given: Columns;
  readonly worked: Columns;
}

const unlessBlank = (cell: RowCells, formula: string): string => `=IF(${cell("bench")} = "", "", ${formula})`;

export function fillBenches(kit: StarterBuilder, sheet: SheetBuilder, round: RoundInputs): Benches {
  sheet.note("Benches and their pots", "heading");
  const given = sheet.table({ rows: MOST_BENCHES, columns: givenColumns(kit) }).column;
  sheet.skip().note("Water, minutes, weight", "heading");
  const worked = sheet.table({ rows: MOST_BENCHES, columns: workedColumns(kit, given, round) }).column;
  sheet.note("Ask the bench maker what a bench carries before it is flooded, or flooded deeper.", "caution");
  return { given, worked };
}

function givenColumns(kit: StarterBuilder): readonly TableColumn[] {
  const figures = FIGURES[kit.edition];
  const long = kit.pick("ft", "m");
  const weight = kit.pick("lb", "kg");
  const lengths = { least: kit.pick(1, 0.3), most: kit.pick(500, 150) };
  const weights = { least: kit.pick(0.02, 0.01), most: kit.pick(200, 90) };
  const each = onEveryBench;
  return [
    { key: "bench", heading: "bench", inputs: ["Bench 1", "Bench 2", "Bench 3", "Bench 4", null, null] },
    {
      key: "order",
      heading: "flooded as number",
      unit: "count",
      inputs: [1, 2, 3, 4, null, null],
      format: "decimals0",
      limits: { least: 1, most: 99, whole: true },
    },
    {
      key: "length",
      heading: "length inside",
      unit: long,
      inputs: each(figures.length),
      format: "decimals1",
      limits: lengths,
    },
    {
      key: "width",
      heading: "width inside",
      unit: long,
      inputs: each(figures.width),
      format: "decimals1",
      limits: lengths,
    },
    {
      key: "depth",
      heading: "depth of the flood",
      unit: kit.pick("in", "mm"),
      inputs: each(figures.depth),
      format: kit.pick("decimals2", "decimals0"),
      limits: { least: kit.pick(0.1, 2), most: kit.pick(6, 150) },
    },
    {
      key: "pots",
      heading: "pots",
      unit: "count",
      inputs: each(figures.pots),
      format: "decimals0",
      limits: { least: 0, most: 100_000, whole: true },
    },
    {
      key: "base",
      heading: "pot across its base",
      unit: kit.pick("in", "cm"),
      inputs: each(figures.base),
      format: kit.pick("decimals2", "decimals1"),
      limits: { least: kit.pick(0.5, 1), most: kit.pick(36, 90) },
    },
    {
      key: "before",
      heading: "a pot before",
      unit: weight,
      inputs: each(figures.before),
      format: "decimals2",
      limits: weights,
    },
    {
      key: "after",
      heading: "a pot after",
      unit: weight,
      inputs: each(figures.after),
      format: "decimals2",
      limits: weights,
    },
  ];
}

function workedColumns(kit: StarterBuilder, given: Columns, round: RoundInputs): readonly TableColumn[] {
  const input = (key: string, row: number): string => given[key]!.cell(row).at;
  const volume = kit.pick("gal", "L");
  const weight = kit.pick("lb", "kg");
  const usual = kit.list(`usual flood, ${kit.pick("in", "mm")}`, kit.pick([0.4, 1.5], [10, 38]));
  return [
    {
      key: "bench",
      heading: "bench",
      formula: (_cell, row) => `=IF(${input("bench", row)} = "", "", ${input("bench", row)})`,
    },
    {
      key: "place",
      heading: "place in the round",
      unit: "count",
      format: "decimals0",
      formula: (cell, row) =>
        `=IF(OR(${cell("bench")} = "", ${input("order", row)} = ""), "", COUNTIF(${given["order"]!.here}, "<" & ${input("order", row)}) + 1)`,
      how: "1 more than there are smaller numbers",
    },
    {
      key: "area",
      heading: "area",
      unit: kit.pick("ft2", "m2"),
      format: "decimals1",
      formula: (cell, row) => unlessBlank(cell, `${input("length", row)} * ${input("width", row)}`),
      how: "length x width",
    },
    {
      key: "volume",
      heading: "standing water",
      unit: volume,
      format: "decimals1",
      style: "result",
      formula: (cell, row) =>
        unlessBlank(
          cell,
          `CANYARD.FLOOD_VOLUME(${cell("area")}, ${input("depth", row)}, units, ${input("pots", row)}, ${input("base", row)})`,
        ),
      how: "area x depth, less what the pots displace",
    },
    {
      key: "uptake",
      heading: "taken up by the pots",
      unit: volume,
      format: "decimals1",
      formula: (cell, row) =>
        unlessBlank(
          cell,
          `${input("pots", row)} * CANYARD.WATER_FROM_WEIGHT(${input("after", row)}, ${input("before", row)}, units)`,
        ),
      how: "pots x water that the mean pot gains",
    },
    {
      key: "fill",
      heading: "to fill",
      unit: "min",
      format: "decimals1",
      formula: (cell) =>
        unlessBlank(cell, `CANYARD.FILL_MINUTES(${cell("volume")}, ${round.benchFlow}, ${cell("uptake")})`),
      how: "(standing water + taken up) / flow to the bench",
    },
    {
      key: "both",
      heading: "fill and drain",
      unit: "min",
      format: "decimals1",
      formula: (cell) => unlessBlank(cell, `${cell("fill")} + ${round.drain}`),
      how: "minutes to fill + minutes to drain",
    },
    {
      key: "load",
      heading: "weight of the water",
      unit: weight,
      format: "decimals0",
      formula: (cell) => unlessBlank(cell, `${cell("volume")} * ${round.waterWeight}`),
      how: "standing water x weight of water",
    },
    {
      key: "loadPerArea",
      heading: "load with the wet pots",
      unit: `${weight}/${kit.pick("ft2", "m2")}`,
      format: "decimals1",
      formula: (cell, row) =>
        unlessBlank(cell, `(${cell("load")} + ${input("pots", row)} * ${input("after", row)}) / ${cell("area")}`),
      how: "(water + pots x weight of a wet pot) / area; the bench itself is not in it",
    },
    {
      key: "range",
      heading: "depth",
      style: "mark",
      formula: (cell, row) =>
        unlessBlank(cell, `CANYARD.CHECK_RANGE(${input("depth", row)}, "FLOOD_VOLUME", "flood_depth", units)`),
      plain: (cell, row) =>
        unlessBlank(
          cell,
          `IF(${input("depth", row)} < ${usual.cell(0)}, "low", IF(${input("depth", row)} > ${usual.cell(1)}, "high", "ok"))`,
        ),
      how: "whether the trade floods so deep, and the likely slip",
    },
  ];
}
