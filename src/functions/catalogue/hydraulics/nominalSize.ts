import type { UnitSystem } from "../../../kernel";

/** Inches by which pipe of iron pipe size goes: near the bore, from a quarter below it to 5 % above where walls are thick. */
const INCHES = [0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10, 12] as const;
const THICK_WALLS = 1.05;

/** Metric plastic pipe goes by its outside diameter, in mm. */
const OUTSIDE = [
  12, 16, 20, 25, 32, 40, 50, 63, 75, 90, 110, 125, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400,
] as const;

/** No pipe's name is further from its bore than this. */
const FURTHEST = 4 / 3;

/** The size by which a pipe of this bore is sold, in or mm; NaN where none is near. */
export function nominalSize(bore: number, system: UnitSystem): number {
  const size =
    system === "us" ? INCHES.filter((size) => size <= bore * THICK_WALLS).pop() : OUTSIDE.find((size) => size > bore);
  return size !== undefined && bore / size <= FURTHEST && size / bore <= FURTHEST ? size : NaN;
}
