import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { EMITTERS, FIGURES, ZONES } from "./figures";

/** Zones that the log can tell apart. */
export const ZONE_ROWS = 6;

export interface LogInputs extends Readonly<
  Record<"target" | "low" | "high" | "suspect" | "pots" | "tolerance" | "salts" | "shown", CellRef>
> {
  readonly zones: Readonly<Record<string, BlockRef>>;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): LogInputs {
  const { crops, flows } = FIGURES[kit.edition];
  const rest = Array<null>(ZONE_ROWS - ZONES.length).fill(null);
  const fraction = (label: string, input: number, how: string): CellRef =>
    inputs.input({
      label,
      unit: "fraction",
      input,
      format: "percent0",
      limits: { least: 0.01, most: 0.9, message: `${label} must be a fraction from 0.01 to 0.9: type 0.15 or 15%.` },
      how,
    });
  inputs.block("What is wanted");
  kit.units(inputs);
  const target = fraction(
    "Leaching wanted",
    0.15,
    "the new minutes aim at it; below 0.15 to 0.20 for container nurseries",
  );
  const low = fraction("Band: from", 0.05, "below it salts gather");
  const high = fraction("Band: to", 0.15, "within the band the minutes stay as they are");
  const suspect = fraction("Look for dry substrate above", 0.3, "lift a pot before the time is cut");
  const pots = inputs.input({
    label: "Pots to a test, at least",
    unit: "count",
    input: 10,
    format: "decimals0",
    limits: { least: 2, most: 60, whole: true },
    how: "from all over the zone",
  });
  const tolerance = fraction("Pail may differ from the emitters by", 0.15, "of the flow below (common practice)");
  const salts = inputs.input({
    label: "EC of the leachate to look at",
    unit: "mS/cm",
    input: 2.5,
    format: "decimals1",
    limits: { least: 0.1, most: 15 },
    how: "your own limit for the crop and its feed; 1 mS/cm = 1 dS/m",
  });
  inputs.skip().note("Zones", "heading");
  const zones = inputs.table({
    rows: ZONE_ROWS,
    columns: [
      { key: "zone", heading: "zone", inputs: [...ZONES, ...rest] },
      { key: "crop", heading: "crop and pot", inputs: [...crops, ...rest] },
      {
        key: "emitters",
        heading: "emitters for a plant",
        unit: "count",
        inputs: [...EMITTERS, ...rest],
        format: "decimals0",
        limits: { least: 1, most: 20, whole: true },
      },
      {
        key: "flow",
        heading: "flow of an emitter",
        unit: kit.pick("gal/h", "L/h"),
        inputs: [...flows, ...rest],
        format: "decimals2",
        limits: { least: kit.pick(0.1, 0.4), most: kit.pick(60, 230) },
      },
    ],
  }).column;
  const shown = inputs.skip().input({
    label: "Zone whose pots are shown on Result",
    input: ZONES[0]!,
    limits: { list: zones["zone"]!, message: "It must be one of the zones above." },
    how: "how far the pots of its latest test differ",
  });
  return { target, low, high, suspect, pots, tolerance, salts, shown, zones };
}
