import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { FIGURES } from "./figures";

const EVENNESS = { least: 0.05, most: 1 };
/** 15 June 2026, as a sheet counts days. */
const DAY_OF_THE_TEST = 46_188;

export interface AuditInputs {
  readonly can: CellRef;
  readonly minutes: CellRef;
  readonly wind: CellRef;
  readonly windMost: CellRef;
  readonly pressure: CellRef;
  readonly usualPressure: CellRef;
  readonly zeros: CellRef;
  readonly low: CellRef;
  readonly high: CellRef;
  readonly area: CellRef;
  readonly depth: CellRef;
  readonly leaching: CellRef;
  readonly wanted: CellRef;
  readonly waterOfDepth: CellRef;
  readonly seconds: CellRef;
  readonly rated: CellRef;
  readonly bandLow: CellRef;
  readonly bandHigh: CellRef;
  readonly variation: CellRef;
  readonly perPlant: CellRef;
  readonly bottle: CellRef;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): AuditInputs {
  inputs.block("The test with cans");
  kit.units(inputs);
  const cans = canLines(kit, inputs);
  inputs.block("What the block is given on a day");
  const plan = planLines(kit, inputs);
  inputs.block("The emitters: mL in some seconds");
  const emitters = emitterLines(kit, inputs);
  inputs.block("The emitters: seconds to fill a bottle");
  inputs.input({ label: "Zone of the bottle test", unit: "words", input: FIGURES[kit.edition].stakeZone });
  const bottle = inputs.input({
    label: "The bottle holds",
    unit: "mL",
    input: FIGURES[kit.edition].bottle,
    format: "decimals0",
    limits: { least: 20, most: 20_000 },
    how: "up to the mark that was reached: weigh it, 1 g is 1 mL. A 12-ounce bottle holds 355 mL",
  });
  return { ...cans, ...plan, ...emitters, bottle };
}

function canLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const figures = FIGURES[kit.edition];
  const pressureLimits = { least: kit.pick(1, 5), most: kit.pick(200, 1500) };
  const windLimits = { least: 0, most: kit.pick(40, 20) };
  inputs.input({ label: "Block", unit: "words", input: figures.block });
  inputs.input({ label: "Day of the test", unit: "date", input: DAY_OF_THE_TEST, format: "date" });
  const can = inputs.input({
    label: "Mouth of a can, inside",
    unit: kit.pick("in", "cm"),
    input: figures.can,
    format: kit.pick("decimals2", "decimals1"),
    limits: { least: kit.pick(1, 2.5), most: kit.pick(24, 60) },
    how: "across the mouth: a tapered can catches what falls into its mouth",
  });
  const minutes = inputs.input({
    label: "The water ran for",
    unit: "min",
    input: 30,
    format: "decimals0",
    limits: { least: 1, most: 600 },
  });
  const wind = inputs.input({
    label: "Wind",
    unit: kit.pick("mph", "m/s"),
    input: figures.wind,
    format: "decimals1",
    limits: windLimits,
    how: "the strongest of the test",
  });
  const windMost = inputs.input({
    label: "Wind above which a test says little",
    unit: kit.pick("mph", "m/s"),
    input: figures.windMost,
    format: "decimals1",
    limits: windLimits,
    how: "common practice; on a windy site test in the wind that is usual at your hour",
  });
  const pressure = inputs.input({
    label: "Pressure at a sprinkler",
    unit: kit.pick("psi", "kPa"),
    input: figures.pressure,
    format: "decimals0",
    limits: pressureLimits,
    how: "while it runs",
  });
  const usualPressure = inputs.input({
    label: "Pressure of a usual irrigation",
    unit: kit.pick("psi", "kPa"),
    input: figures.usualPressure,
    format: "decimals0",
    limits: pressureLimits,
  });
  const zeros = inputs.input({
    label: "A can that is blank or 0",
    unit: "word",
    input: "error",
    limits: { words: ["error", "count", "skip"] },
    how: "error: is refused by its place; count: stood and stayed dry; skip: fell over and is left out",
  });
  const low = inputs.input({
    label: "Evenness that is low, below",
    unit: "fraction",
    input: 0.6,
    format: "decimals2",
    limits: EVENNESS,
    how: "UF/IFAS AE194: below 60 % is low",
  });
  const high = inputs.input({
    label: "Evenness that is high, from",
    unit: "fraction",
    input: 0.8,
    format: "decimals2",
    limits: EVENNESS,
    how: "UF/IFAS AE194: 80 % and more is high",
  });
  return { can, minutes, wind, windMost, pressure, usualPressure, zeros, low, high };
}

function planLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const figures = FIGURES[kit.edition];
  const area = inputs.input({
    label: "Area of the block",
    unit: kit.pick("ft2", "m2"),
    input: figures.area,
    format: "decimals0",
    limits: { least: 1, most: kit.pick(5_000_000, 500_000) },
  });
  const depth = inputs.input({
    label: "Depth that a hot day asks for",
    unit: kit.pick("in/day", "mm/day"),
    input: figures.depth,
    format: kit.pick("decimals2", "decimals1"),
    limits: { least: kit.pick(0.02, 0.5), most: kit.pick(3, 75) },
    how: "over the block, if all of it came down evenly and nothing leached",
  });
  const leaching = inputs.input({
    label: "Leaching wanted",
    unit: "fraction",
    input: 0.15,
    format: "percent0",
    limits: { least: 0, most: 0.9 },
  });
  const wanted = inputs.input({
    label: "Evenness after mending",
    unit: "fraction",
    input: 0.9,
    format: "decimals2",
    limits: EVENNESS,
    how: "what if nozzles, pressure and spacing were right",
  });
  const waterOfDepth = inputs.locked({
    label: kit.pick("Water of 1 in on 1 ft2", "Water of 1 mm on 1 m2"),
    unit: kit.pick("gal", "L"),
    input: kit.pick(144 / 231, 1),
    how: kit.pick("144 square inches in a square foot, 231 cubic inches in a gallon", "by definition"),
    message: "It is the same everywhere.",
  });
  return { area, depth, leaching, wanted, waterOfDepth };
}

function emitterLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const figures = FIGURES[kit.edition];
  inputs.input({ label: "Zone of the cylinder test", unit: "words", input: figures.dripZone });
  const seconds = inputs.input({
    label: "Seconds of each catch",
    unit: "s",
    input: 30,
    format: "decimals0",
    limits: { least: 5, most: 3600 },
    how: "30 seconds fill about a third of a 100 mL cylinder from a dripper",
  });
  const rated = inputs.input({
    label: "Flow that they should give",
    unit: kit.pick("gal/h", "L/h"),
    input: figures.rated,
    format: "decimals2",
    limits: { least: kit.pick(0.05, 0.2), most: kit.pick(60, 230) },
    how: "by the maker, at the pressure of the zone",
  });
  const bandLow = inputs.input({
    label: "Good from",
    unit: "ratio",
    input: 0.8,
    format: "decimals2",
    limits: { least: 0.1, most: 0.99 },
    how: "flow / flow that they should give; 20 % either way is common practice",
  });
  const bandHigh = inputs.input({
    label: "Good to",
    unit: "ratio",
    input: 1.2,
    format: "decimals2",
    limits: { least: 1.01, most: 10 },
  });
  const variation = inputs.input({
    label: "Maker's coefficient of variation",
    unit: "fraction",
    input: 0.05,
    format: "decimals3",
    limits: { least: 0, most: 0.5 },
    how: "how much new emitters differ; from the maker's sheet",
  });
  const perPlant = inputs.input({
    label: "Emitters for a plant",
    unit: "count",
    input: 2,
    format: "decimals0",
    limits: { least: 1, most: 20, whole: true },
  });
  return { seconds, rated, bandLow, bandHigh, variation, perPlant };
}
