import type { BlockRef, CellRef, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { FIGURES, type Figures, type Inputs } from "./figures";

export type Columns = Readonly<Record<string, BlockRef>>;

export const MOST_CYCLES = 4;
const FRACTION = { least: 0, most: 0.9 };
const EVENNESS = { least: 0.3, most: 1 };
const CROP_FACTOR = { least: 0.1, most: 6 };

/** What the other sheets build on. */
export interface ZoneInputs {
  readonly et: CellRef;
  readonly start: CellRef;
  readonly end: CellRef;
  readonly gap: CellRef;
  readonly cycles: CellRef;
  readonly spaced: Columns;
  readonly line: Columns;
  readonly overhead: Columns;
  readonly boom: Columns;
  readonly boomFlow: CellRef;
  readonly boomSpeed: CellRef;
  readonly swath: CellRef;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): ZoneInputs {
  const figures = FIGURES[kit.edition];
  const pot = kit.pick("in", "cm");
  const flowUnit = kit.pick("gal/min", "L/min");
  const hourly = kit.pick("gal/h", "L/h");
  const long = kit.pick("ft", "m");
  const bore = kit.pick("in", "mm");
  const deep = kit.pick("in", "mm");
  const small = { least: kit.pick(2, 5), most: kit.pick(120, 300) };
  const flowLimits = { least: kit.pick(0.1, 0.4), most: kit.pick(60, 230) };
  const plantLimits = { least: 1, most: 200_000, whole: true } as const;
  const lengthLimits = { least: 1, most: kit.pick(3000, 1000) };
  const boreLimits = { least: kit.pick(0.4, 10), most: kit.pick(12, 300) };

  inputs.block("The day and the supply");
  kit.units(inputs);
  const et = inputs.input({
    label: "Reference ET of a hot day",
    unit: kit.pick("in/day", "mm/day"),
    input: figures.et,
    format: kit.pick("decimals2", "decimals1"),
    limits: { least: kit.pick(0.02, 0.5), most: kit.pick(0.6, 15) },
    how: "the hottest week of other years, from a station nearby",
  });
  const measured = inputs.input({
    label: "Supply, measured at working pressure",
    unit: flowUnit,
    input: figures.supply,
    format: "decimals0",
    limits: { least: 1, most: kit.pick(5000, 20_000) },
    how: "a bucket or a meter, with the pressure that the zones need",
  });
  const share = inputs.input({
    label: "Part of it to plan with",
    unit: "fraction",
    input: 0.9,
    format: "percent0",
    limits: { least: 0.3, most: 1 },
    how: "the rest is for what leaks, clogs and wears (common practice)",
  });
  kit.name(
    "supply_flow",
    inputs.formula({
      label: "Flow to plan with",
      unit: flowUnit,
      formula: `=${measured.here} * ${share.here}`,
      format: "decimals1",
      how: "measured flow x part",
    }),
  );
  const start = inputs.input({
    label: "First start",
    unit: "time",
    input: 5 / 24,
    format: "time",
    limits: { least: 0, most: 0.999 },
  });
  const end = inputs.input({
    label: "All must be over by",
    unit: "time",
    input: 10 / 24,
    format: "time",
    limits: { least: 0, most: 0.999 },
    how: "later than the first start, on the same day",
  });
  const gap = inputs.input({
    label: "Gap between sets",
    unit: "min",
    input: 2,
    format: "decimals0",
    limits: { least: 0, most: 60 },
  });
  const cycles = inputs.input({
    label: "Cycles",
    unit: "count",
    input: 3,
    format: "decimals0",
    limits: { least: 1, most: MOST_CYCLES, whole: true },
    how: "the whole order runs so many times, each time with a part of the minutes",
  });

  const emitters = kit.list("emitters", ["stake", "drip"]);
  const plant = (
    more: readonly TableColumn[],
    { crop, inRow, between }: Pick<Figures["spaced"], "crop" | "inRow" | "between">,
    names: Inputs,
    kc: Inputs,
  ): TableColumn[] => [
    { key: "zone", heading: "zone", inputs: names },
    { key: "crop", heading: "crop and pot", inputs: crop },
    ...more,
    { key: "inRow", heading: "in the row", unit: pot, inputs: inRow, format: "decimals1", limits: small },
    { key: "between", heading: "between rows", unit: pot, inputs: between, format: "decimals1", limits: small },
    { key: "kc", heading: "crop coefficient", unit: "factor", inputs: kc, format: "decimals2", limits: CROP_FACTOR },
  ];
  const rest = (flow: Inputs, leaching: Inputs, uniformity: Inputs): TableColumn[] => [
    {
      key: "leaching",
      heading: "leaching wanted",
      unit: "fraction",
      inputs: leaching,
      format: "percent0",
      limits: FRACTION,
    },
    {
      key: "uniformity",
      heading: "uniformity",
      unit: "fraction",
      inputs: uniformity,
      format: "decimals2",
      limits: EVENNESS,
    },
    { key: "flow", heading: "flow of an emitter", unit: hourly, inputs: flow, format: "decimals2", limits: flowLimits },
  ];
  const pipe = (length: Inputs, inside: Inputs): TableColumn[] => [
    { key: "length", heading: "line to fill", unit: long, inputs: length, format: "decimals0", limits: lengthLimits },
    {
      key: "bore",
      heading: "its inside",
      unit: bore,
      inputs: inside,
      format: kit.pick("decimals3", "decimals1"),
      limits: boreLimits,
    },
  ];

  inputs.skip().note("Spray stakes and drip emitters: each pot has its own", "heading");
  const spaced = inputs.table({
    rows: 6,
    columns: [
      ...plant(
        [
          {
            key: "system",
            heading: "emitter",
            inputs: ["stake", "drip", "drip", "stake", null, null],
            limits: { list: emitters },
          },
          {
            key: "plants",
            heading: "plants",
            unit: "count",
            inputs: figures.spaced.plants,
            format: "decimals0",
            limits: plantLimits,
          },
        ],
        figures.spaced,
        ["Yard A", "Yard B", "Yard C", "Yard D", null, null],
        [1, 1.1, 1, 1.1, null, null],
      ),
      {
        key: "emitters",
        heading: "emitters for a plant",
        unit: "count",
        inputs: [1, 2, 1, 1, null, null],
        format: "decimals0",
        limits: { least: 1, most: 20, whole: true },
      },
      ...rest(figures.spaced.flow, [0.15, 0.15, 0.15, 0.15, null, null], [0.85, 0.92, 0.9, 0.8, null, null]),
      ...pipe(figures.spaced.length, figures.spaced.bore),
    ],
  });
  inputs.skip().note("Drip line over the pot tops", "heading");
  const line = inputs.table({
    rows: 2,
    columns: [
      ...plant(
        [
          {
            key: "top",
            heading: "pot's opening",
            unit: pot,
            inputs: figures.line.top,
            format: "decimals1",
            limits: small,
          },
          {
            key: "plants",
            heading: "plants",
            unit: "count",
            inputs: figures.line.plants,
            format: "decimals0",
            limits: plantLimits,
          },
        ],
        figures.line,
        ["Yard E", null],
        [1.2, null],
      ),
      {
        key: "aligned",
        heading: "emitters put over a pot",
        unit: "count",
        inputs: [1, null],
        format: "decimals0",
        limits: { least: 0, most: 6 },
      },
      ...rest(figures.line.flow, [0.15, null], [0.9, null]),
      {
        key: "spacing",
        heading: "emitter spacing",
        unit: pot,
        inputs: figures.line.spacing,
        format: "decimals1",
        limits: small,
      },
      ...pipe(figures.line.length, figures.line.bore),
    ],
  });
  inputs.skip().note("Overhead sprinklers", "heading");
  const overhead = inputs.table({
    rows: 2,
    columns: [
      ...plant(
        [
          {
            key: "top",
            heading: "pot's opening",
            unit: pot,
            inputs: figures.overhead.top,
            format: "decimals1",
            limits: small,
          },
          {
            key: "capture",
            heading: "capture factor",
            unit: "factor",
            inputs: [1.2, null],
            format: "decimals2",
            limits: { least: 0.2, most: 4 },
          },
        ],
        figures.overhead,
        ["Yard F", null],
        [1, null],
      ),
      {
        key: "leaching",
        heading: "leaching wanted",
        unit: "fraction",
        inputs: [0.15, null],
        format: "percent0",
        limits: FRACTION,
      },
      {
        key: "uniformity",
        heading: "uniformity",
        unit: "fraction",
        inputs: [0.75, null],
        format: "decimals2",
        limits: EVENNESS,
      },
      {
        key: "rate",
        heading: "measured rate",
        unit: kit.pick("in/h", "mm/h"),
        inputs: figures.overhead.rate,
        format: kit.pick("decimals2", "decimals1"),
        limits: { least: kit.pick(0.05, 1), most: kit.pick(3, 75) },
      },
      {
        key: "flow",
        heading: "flow of the zone",
        unit: flowUnit,
        inputs: figures.overhead.flow,
        format: "decimals0",
        limits: { least: 1, most: kit.pick(2000, 8000) },
      },
    ],
  });
  inputs
    .skip()
    .note("Boom in House 1, with a valve and hours of its own. A section with depth 0 is passed over dry.", "heading");
  const sections = inputs.table({
    rows: 3,
    columns: [
      {
        key: "section",
        heading: "section",
        inputs: ["bedding, 4 in", "plugs", "empty"].map((text) => kit.pick(text, text.replace("4 in", "10 cm"))),
      },
      {
        key: "depth",
        heading: "gross depth",
        unit: deep,
        inputs: figures.boom.depths,
        format: "decimals2",
        limits: { least: 0, most: kit.pick(2, 50) },
      },
      {
        key: "length",
        heading: "length",
        unit: long,
        inputs: figures.boom.lengths,
        format: "decimals0",
        limits: { least: 1, most: kit.pick(1000, 300) },
      },
    ],
  });
  const boomFlow = inputs.input({
    label: "Flow of the boom",
    unit: flowUnit,
    input: figures.boom.flow,
    format: "decimals1",
    limits: { least: 1, most: kit.pick(200, 800) },
  });
  const boomSpeed = inputs.input({
    label: "Speed of the boom",
    unit: kit.pick("ft/min", "m/min"),
    input: figures.boom.speed,
    format: "decimals1",
    limits: { least: kit.pick(5, 1), most: kit.pick(250, 76) },
  });
  const swath = inputs.input({
    label: "Width that it waters",
    unit: long,
    input: figures.boom.swath,
    format: "decimals1",
    limits: { least: 1, most: kit.pick(100, 30) },
  });

  return {
    et,
    start,
    end,
    gap,
    cycles,
    spaced: spaced.column,
    line: line.column,
    overhead: overhead.column,
    boom: sections.column,
    boomFlow,
    boomSpeed,
    swath,
  };
}
