import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { CROP_COEFFICIENTS, FIGURES, HALF_MONTHS } from "./figures";

/** What the other sheets build on. */
export interface DemandInputs extends Readonly<
  Record<
    | "source"
    | "latitude"
    | "elevation"
    | "top"
    | "bottom"
    | "height"
    | "inRow"
    | "between"
    | "capacity"
    | "unavailable"
    | "trigger"
    | "start"
    | "capture"
    | "emitters"
    | "flow"
    | "leaching"
    | "uniformity"
    | "ratioLow"
    | "ratioHigh",
    CellRef
  >
> {
  readonly coefficients: BlockRef;
}

const FRACTION = { least: 0.05, most: 0.95 };

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): DemandInputs {
  const weather = place(kit, inputs);
  const pot = potLines(kit, inputs);
  const water = waterLines(kit, inputs);
  return { ...weather, ...pot, ...water, coefficients: coefficientTable(inputs) };
}

function place(kit: StarterBuilder, inputs: SheetBuilder) {
  const { elevation } = FIGURES[kit.edition];
  inputs.block("The place and the weather");
  kit.units(inputs);
  const latitude = inputs.input({
    label: "Latitude",
    unit: "degrees",
    input: 38,
    format: "decimals2",
    limits: { least: -66, most: 66 },
    how: "degrees and decimals, south negative",
  });
  const height = inputs.input({
    label: "Elevation",
    unit: kit.pick("ft", "m"),
    input: elevation,
    format: "decimals0",
    limits: { least: kit.pick(-1000, -300), most: kit.pick(13_000, 4000) },
    how: "above the sea; temperatures alone do without it",
  });
  const source = inputs.input({
    label: "Where the reference ET comes from",
    input: "temperatures",
    limits: { list: kit.list("source of the ET", ["temperatures", "station"]) },
    how: "temperatures: worked from each day's highest and lowest; station: as typed on Weather",
  });
  return { latitude, elevation: height, source };
}

function potLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const { pot, startDeficit } = FIGURES[kit.edition];
  const unit = kit.pick("in", "cm");
  const limits = { least: kit.pick(2, 5), most: kit.pick(120, 300) };
  const size = (label: string, input: number, how: string): CellRef =>
    inputs.input({ label, unit, input, format: "decimals1", limits, how });
  inputs.block("The pot and its place");
  const top = size("Pot: inside, at the fill line", pot.top, "across the opening; rain falls on it");
  const bottom = size("Pot: inside, at the bottom", pot.bottom, "across");
  const height = size("Pot: height of the substrate", pot.height, "from the bottom to the fill line");
  const inRow = size("Spacing in the row", pot.inRow, "from centre to centre");
  const between = size(
    "Spacing between rows",
    pot.between,
    "from centre to centre; change both when you move the pots",
  );
  const capacity = inputs.input({
    label: "Water in the drained substrate",
    unit: "fraction",
    input: 0.5,
    format: "decimals2",
    limits: FRACTION,
    how: "container capacity, by volume; from the supplier or a drained and weighed pot",
  });
  const unavailable = inputs.input({
    label: "Water that plants cannot take up",
    unit: "fraction",
    input: 0.25,
    format: "decimals2",
    limits: FRACTION,
    how: "by volume; a quarter is usual for bark (common practice)",
  });
  const trigger = inputs.input({
    label: "Part that may be used before watering",
    unit: "fraction",
    input: 0.4,
    format: "decimals2",
    limits: { least: 0.05, most: 1 },
    how: "of the available water; the refill line of the chart",
  });
  const start = inputs.input({
    label: "Deficit before the first day",
    unit: kit.pick("gal", "L"),
    input: startDeficit,
    format: "decimals2",
    limits: { least: 0, most: kit.pick(50, 200) },
    how: "from a weighed pot; 0 after a thorough watering",
  });
  return { top, bottom, height, inRow, between, capacity, unavailable, trigger, start };
}

function waterLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const { flow } = FIGURES[kit.edition];
  inputs.block("Rain, irrigation and the scale");
  const capture = inputs.input({
    label: "Capture factor of the plant for rain",
    unit: "factor",
    input: 1,
    format: "decimals2",
    limits: { least: 0.1, most: 4 },
    how: "water caught with the plant / without; below 1 where leaves shed it",
  });
  const leaching = inputs.input({
    label: "Part of the irrigation that runs out below",
    unit: "fraction",
    input: 0.15,
    format: "percent0",
    limits: { least: 0, most: 0.9 },
    how: "from a leaching test; the pot keeps the rest",
  });
  const uniformity = inputs.input({
    label: "Uniformity of the emitters",
    unit: "fraction",
    input: 0.92,
    format: "decimals2",
    limits: { least: 0.3, most: 1 },
    how: "low quarter; from an audit",
  });
  const emitters = inputs.input({
    label: "Emitters for a plant",
    unit: "count",
    input: 2,
    format: "decimals0",
    limits: { least: 1, most: 20, whole: true },
  });
  const emitterFlow = inputs.input({
    label: "Flow of an emitter",
    unit: kit.pick("gal/h", "L/h"),
    input: flow,
    format: "decimals2",
    limits: { least: kit.pick(0.1, 0.4), most: kit.pick(60, 230) },
    how: "measured, not printed",
  });
  const ratio = (label: string, input: number): CellRef =>
    inputs.input({ label, unit: "ratio", input, format: "decimals2", limits: { least: 0.3, most: 3 } });
  const ratioLow = ratio("Weighed / worked, lowest that passes", 0.7);
  const ratioHigh = ratio("Weighed / worked, highest that passes", 1.3);
  return { capture, leaching, uniformity, emitters, flow: emitterFlow, ratioLow, ratioHigh };
}

function coefficientTable(inputs: SheetBuilder): BlockRef {
  inputs
    .skip()
    .note("Crop coefficient through the year, on the ground that a plant stands on", "heading")
    .note("South of the equator the summer stands in January. Lower it after pruning, raise it as the canopy closes.");
  return inputs.table({
    rows: HALF_MONTHS.length,
    columns: [
      { key: "from", heading: "days", inputs: HALF_MONTHS, style: "locked" },
      {
        key: "kc",
        heading: "crop coefficient",
        unit: "factor",
        inputs: CROP_COEFFICIENTS,
        format: "decimals2",
        limits: { least: 0.05, most: 6 },
      },
    ],
  }).column["kc"]!;
}
