import type { BlockRef, CellRef, RowCells, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import type { Columns, ZoneInputs } from "./inputs";

/** The worked columns of each system. */
export interface Zones {
  readonly spaced: Columns;
  readonly line: Columns;
  readonly overhead: Columns;
}

/** A row without a name is no zone. */
const unlessBlank = (cell: RowCells, formula: string): string => `=IF(${cell("zone")} = "", "", ${formula})`;

/** The cell of an input block on the same row. */
const reader = (columns: Columns) => (key: string, row: number) => `Inputs!${columns[key]!.cell(row).at}`;
type Reader = ReturnType<typeof reader>;

export function fillZones(kit: StarterBuilder, work: SheetBuilder, given: ZoneInputs): Zones {
  work.note("Spray stakes and drip emitters", "heading");
  const spaced = work.table({ rows: 6, columns: spacedColumns(kit, given) }).column;
  work.skip().note("Drip line over the pot tops", "heading");
  const line = work.table({ rows: 2, columns: lineColumns(kit, given) }).column;
  work.skip().note("Overhead sprinklers", "heading");
  const overhead = work.table({ rows: 2, columns: overheadColumns(kit, given) }).column;
  return { spaced, line, overhead };
}

function spacedColumns(kit: StarterBuilder, given: ZoneInputs): readonly TableColumn[] {
  const input = reader(given.spaced);
  const inputs = (keys: readonly string[], row: number) => keys.map((key) => input(key, row)).join(", ");
  const hourly = kit.pick("gal/h", "L/h");
  const usual = kit.list(`usual flow, ${hourly}`, kit.pick([0.25, 20], [1, 76]));
  return [
    ...plantColumns(kit, input),
    minutesColumn("what the plant uses, more for leaching or unevenness, / flow to the plant", (cell, row) => {
      const rest = inputs(["leaching", "uniformity", "flow", "emitters"], row);
      return `CANYARD.RUN_MINUTES_FROM_ET(${given.et}, ${input("kc", row)}, ${cell("area")}, ${rest}, units)`;
    }),
    ...shareColumns(kit, given),
    flowColumn(
      kit,
      "plants x emitters x flow / 60",
      (_cell, row) => `CANYARD.ZONE_FLOW(${inputs(["plants", "emitters", "flow"], row)})`,
    ),
    valvesColumn(),
    ...fillingColumns(kit, input),
    {
      key: "range",
      heading: "emitter flow",
      formula: (cell, row) =>
        unlessBlank(cell, `CANYARD.CHECK_RANGE(${input("flow", row)}, "RUN_MINUTES", "emitter_flow", units)`),
      plain: (cell, row) =>
        unlessBlank(
          cell,
          `IF(${input("flow", row)} < ${usual.cell(0)}, "low", IF(${input("flow", row)} > ${usual.cell(1)}, "high", "ok"))`,
        ),
      how: "whether the trade usually sees such a flow, and the likely slip",
    },
  ];
}

function lineColumns(kit: StarterBuilder, given: ZoneInputs): readonly TableColumn[] {
  const input = reader(given.line);
  return [
    ...plantColumns(kit, input),
    minutesColumn("gross water of a plant / flow of the emitters over its pot", (cell, row) => {
      const net = `CANYARD.PLANT_WATER_DEMAND(${given.et}, ${input("kc", row)}, ${cell("area")}, units)`;
      const gross = `CANYARD.GROSS_WATER(${net}, ${input("leaching", row)}, ${input("uniformity", row)})`;
      const rest = ["flow", "spacing", "top", "aligned"].map((key) => input(key, row)).join(", ");
      return `CANYARD.DRIP_LINE_RUN_MINUTES(${gross}, ${rest})`;
    }),
    ...shareColumns(kit, given),
    flowColumn(kit, "every emitter along the line counts, over a pot or not", (_cell, row) => {
      const emitters = `${input("inRow", row)} / ${input("spacing", row)}`;
      return `CANYARD.ZONE_FLOW(${input("plants", row)}, ${emitters}, ${input("flow", row)})`;
    }),
    valvesColumn(),
    ...fillingColumns(kit, input),
  ];
}

function overheadColumns(kit: StarterBuilder, given: ZoneInputs): readonly TableColumn[] {
  const input = reader(given.overhead);
  return [
    ...plantColumns(kit, input),
    minutesColumn("gross depth / measured rate x 60", (cell, row) => {
      return `CANYARD.OVERHEAD_RUN_MINUTES(${cell("depth")}, ${input("rate", row)})`;
    }),
    ...shareColumns(kit, given),
    flowColumn(kit, "as measured", (_cell, row) => input("flow", row)),
    valvesColumn(),
    {
      key: "depth",
      heading: "gross depth",
      unit: kit.pick("in", "mm"),
      format: kit.pick("decimals3", "decimals1"),
      formula: (cell, row) => {
        const net = `CANYARD.PLANT_WATER_DEMAND(${given.et}, ${input("kc", row)}, ${cell("area")}, units)`;
        const rest = ["top", "capture", "leaching", "uniformity"].map((key) => input(key, row)).join(", ");
        return unlessBlank(cell, `CANYARD.OVERHEAD_DEPTH(${net}, ${rest}, units)`);
      },
      how: "what a plant uses / (opening of its pot x capture factor), more for leaching or unevenness",
    },
  ];
}

function plantColumns(kit: StarterBuilder, input: Reader): readonly TableColumn[] {
  return [
    {
      key: "zone",
      heading: "zone",
      formula: (_cell, row) => `=IF(${input("zone", row)} = "", "", ${input("zone", row)})`,
    },
    {
      key: "area",
      heading: "area of a plant",
      unit: kit.pick("ft2", "m2"),
      format: "decimals3",
      formula: (cell, row) =>
        unlessBlank(cell, `CANYARD.PLANT_SPACING_AREA(${input("inRow", row)}, ${input("between", row)}, units)`),
      how: "in the row x between rows",
    },
  ];
}

function minutesColumn(how: string, formula: (cell: RowCells, row: number) => string): TableColumn {
  return {
    key: "minutes",
    heading: "minutes a day",
    unit: "min",
    format: "decimals1",
    style: "result",
    formula: (cell, row) => unlessBlank(cell, formula(cell, row)),
    how,
  };
}

function shareColumns(_kit: StarterBuilder, { cycles }: ZoneInputs): readonly TableColumn[] {
  return [
    {
      key: "perCycle",
      heading: "minutes a cycle",
      unit: "min",
      format: "decimals1",
      formula: (cell) => unlessBlank(cell, `${cell("minutes")} / ${cycles}`),
      how: "minutes a day / cycles",
    },
  ];
}

function flowColumn(kit: StarterBuilder, how: string, formula: (cell: RowCells, row: number) => string): TableColumn {
  return {
    key: "flow",
    heading: "flow of the zone",
    unit: kit.pick("gal/min", "L/min"),
    format: "decimals1",
    formula: (cell, row) => unlessBlank(cell, formula(cell, row)),
    how,
  };
}

function valvesColumn(): TableColumn {
  return {
    key: "valves",
    heading: "valves needed",
    unit: "count",
    format: "decimals0",
    formula: (cell) => unlessBlank(cell, `ROUNDUP(${cell("flow")} / supply_flow, 0)`),
    how: "flow of the zone / flow to plan with, rounded up",
  };
}

function fillingColumns(kit: StarterBuilder, input: Reader): readonly TableColumn[] {
  void kit;
  return [
    {
      key: "fill",
      heading: "to fill the line",
      unit: "min",
      format: "decimals2",
      formula: (cell, row) => {
        const pipe = `${input("length", row)}, ${input("bore", row)}`;
        return unlessBlank(cell, `CANYARD.LINE_FILL_MINUTES(${pipe}, MIN(${cell("flow")}, supply_flow), units)`);
      },
      how: "volume of the line / flow into it",
    },
    {
      key: "times",
      heading: "cycle / filling",
      unit: "times",
      format: "decimals1",
      formula: (cell) => unlessBlank(cell, `${cell("perCycle")} / ${cell("fill")}`),
      how: "minutes a cycle / minutes to fill; under 1.5 the far end gets little (common practice)",
    },
  ];
}

/** All zones in one list, as they may run. */
export function fillOrder(kit: StarterBuilder, work: SheetBuilder, given: ZoneInputs, zones: Zones): Columns {
  const rows = [zones.spaced, zones.line, zones.overhead].flatMap((columns) => rowsOf(columns));
  const from = (key: string) => (_cell: RowCells, row: number) => `=${rows[row]!(key).at}`;
  const flowUnit = kit.pick("gal/min", "L/min");
  work.skip().note("All zones, in the order in which they may run", "heading");
  return work.table({
    rows: rows.length,
    columns: [
      { key: "zone", heading: "zone", formula: from("zone") },
      { key: "minutes", heading: "minutes a day", unit: "min", format: "decimals1", formula: from("minutes") },
      { key: "flow", heading: "flow of the zone", unit: flowUnit, format: "decimals1", formula: from("flow") },
      {
        key: "supply",
        heading: "flow to plan with",
        unit: flowUnit,
        format: "decimals1",
        formula: () => "=supply_flow",
      },
      {
        key: "window",
        heading: "window",
        unit: "min",
        format: "decimals0",
        formula: () => `=(${given.end} - ${given.start}) * 24 * 60`,
        how: "from the first start until all must be over",
      },
    ],
  }).column;
}

function rowsOf(columns: Columns): readonly ((key: string) => CellRef)[] {
  const zone: BlockRef = columns["zone"]!;
  const count = Number(zone.last.slice(1)) - Number(zone.first.slice(1)) + 1;
  return Array.from({ length: count }, (_each, row) => (key: string) => columns[key]!.cell(row));
}

/** One zone by the taught chain: the same minutes by a second way. */
export interface Chain {
  readonly shown: CellRef;
  readonly minutes: CellRef;
}

export function fillChain(kit: StarterBuilder, work: SheetBuilder, given: ZoneInputs): Chain {
  const volume = kit.pick("gal", "L");
  const zone = given.spaced["zone"]!;
  work.block("One zone with stakes or drip, step by step");
  const shown = work.input({
    label: "Zone to follow",
    input: "Yard B",
    limits: { list: zone, message: "Zone to follow must be a zone with stakes or drip on the sheet Inputs." },
  });
  const of = (key: string): string => `INDEX(${given.spaced[key]!}, MATCH(${shown.here}, ${zone}, 0))`;
  const area = work.formula({
    label: "Area of a plant",
    unit: kit.pick("ft2", "m2"),
    formula: `=CANYARD.PLANT_SPACING_AREA(${of("inRow")}, ${of("between")}, units)`,
    format: "decimals3",
    how: "in the row x between rows",
  });
  const net = work.formula({
    label: "Water that a plant uses",
    unit: volume,
    formula: `=CANYARD.PLANT_WATER_DEMAND(${given.et}, ${of("kc")}, ${area.here}, units)`,
    format: "decimals3",
    how: "reference ET x crop coefficient x area",
  });
  const gross = work.formula({
    label: "Water to give it",
    unit: volume,
    formula: `=CANYARD.GROSS_WATER(${net.here}, ${of("leaching")}, ${of("uniformity")})`,
    format: "decimals3",
    how: "/ the smaller of 1 - leaching and uniformity, never both",
  });
  const minutes = work.formula({
    label: "Minutes a day",
    unit: "min",
    formula: `=CANYARD.RUN_MINUTES(${gross.here}, ${of("flow")}, ${of("emitters")})`,
    format: "decimals1",
    how: "60 x water / (emitters x flow)",
  });
  return { shown, minutes };
}
