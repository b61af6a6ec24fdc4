/** What the known mistakes of the container group come to, by their words and the formulas of the functions. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const { PI } = Math;
/** A gallon of water weighs this many pounds: 3.785411784 L, 0.45359237 kg to the pound. */
const GALLON_WEIGHT = 3.785411784 / 0.45359237;

const CORE = { drained_volume: 66, container_volume: 347.5 };
const SUBSTRATE = { volume: 9, container_capacity: 0.55, unavailable_water: 0.26 };
const KG_POT = { wet_weight: 6.3, dry_weight: 1.7, volume: 8.5, units: "metric" };
const LB_POT = { wet_weight: 14.5, dry_weight: 4.2, volume: 2.4, units: "us" };
const CM_CONE = { top_diameter: 28, bottom_diameter: 22, height: 25, units: "metric" };
const IN_CONE = { top_diameter: 11, bottom_diameter: 9, height: 10, units: "us" };
const PLANT = { available_water: 2.7, depletion_fraction: 0.4, daily_use: 0.45 };
const IN_ROWS = { in_row: 14, between_rows: 25, units: "us", pattern: "square" };
const CM_ROWS = { in_row: 32, between_rows: 45, units: "metric", pattern: "square" };
const IN_TRIANGLE = { in_row: 14, between_rows: null, units: "us", pattern: "triangle" };
const CM_TRIANGLE = { in_row: 32, between_rows: 32, units: "metric", pattern: "triangle" };
const WEIGHED = { drained_weight: 6, dry_weight: 2.4, fraction: 0.8 };
const ON_WATER = { ...WEIGHED, basis: "water" };
const ON_TOTAL = { ...WEIGHED, basis: "total" };
const IN_TOP = { top_diameter: 11, units: "us" };
const CM_TOP = { top_diameter: 27, units: "metric" };
const GALLONS = { volume: 0.6, top_diameter: 11, units: "us" };
const LITRES = { volume: 0.7, top_diameter: 26, units: "metric" };
const POUNDS = { heavier_weight: 12.4, lighter_weight: 11.1, units: "us" };
const KILOGRAMS = { heavier_weight: 6.8, lighter_weight: 6.1, units: "metric" };

const MISTAKES: Readonly<Record<string, readonly MistakeRow[]>> = {
  AIR_SPACE: [
    ["The ratio was inverted", CORE, 347.5 / 66],
    ["What did not drain was taken for the air: solids and water", CORE, (347.5 - 66) / 347.5],
    ["The drained water was divided by what did not drain", CORE, 66 / (347.5 - 66)],
  ],
  AVAILABLE_WATER: [
    ["Unavailable water was not taken off: that is all the water held", SUBSTRATE, 9 * 0.55],
    ["The unavailable water was taken for the available", SUBSTRATE, 9 * 0.26],
    ["The unavailable part was taken as a part of the water, not of the volume", SUBSTRATE, 9 * 0.55 * 0.74],
  ],
  CONTAINER_CAPACITY: [
    ["The dry weight was not taken off", KG_POT, 6.3 / 8.5],
    ["The dry weight was not taken off", LB_POT, 14.5 / GALLON_WEIGHT / 2.4],
    ["Water was taken by weight: a part of the wet weight", KG_POT, 4.6 / 6.3],
    ["Water was taken by weight: a part of the wet weight", LB_POT, 10.3 / 14.5],
    ["Water was taken by weight: against the dry weight", KG_POT, 4.6 / 1.7],
    ["Water was taken by weight: against the dry weight", LB_POT, 10.3 / 4.2],
    ["Pounds of water were taken for gallons", LB_POT, 10.3 / 2.4],
    ["Pounds of water were taken for gallons", KG_POT, NaN],
  ],
  CONTAINER_VOLUME: [
    ["The pot was taken as a straight cylinder of the top diameter", CM_CONE, (PI * 14 ** 2 * 25) / 1000],
    ["The pot was taken as a straight cylinder of the top diameter", IN_CONE, (PI * 5.5 ** 2 * 10) / 231],
    [
      "The mean of the top and the bottom area was taken, which is high for a tapered pot",
      CM_CONE,
      (((PI * 14 ** 2 + PI * 11 ** 2) / 2) * 25) / 1000,
    ],
    [
      "The mean of the top and the bottom area was taken, which is high for a tapered pot",
      IN_CONE,
      (((PI * 5.5 ** 2 + PI * 4.5 ** 2) / 2) * 10) / 231,
    ],
    // A cone cut off, by its radii: pi H (R2 + R r + r2) / 3.
    ["The diameters were used as radii", CM_CONE, (PI * 25 * (28 * 28 + 28 * 22 + 22 * 22)) / 3 / 1000],
    ["The diameters were used as radii", IN_CONE, (PI * 10 * (11 * 11 + 11 * 9 + 9 * 9)) / 3 / 231],
    ["Width times height, an area, was taken as a volume and divided by 231 or by 1000", CM_CONE, (28 * 25) / 1000],
    ["Width times height, an area, was taken as a volume and divided by 231 or by 1000", IN_CONE, (11 * 10) / 231],
  ],
  IRRIGATION_INTERVAL: [
    ["The depletion fraction was left out: the plants would be at the end of their water", PLANT, 2.7 / 0.45],
    ["The part left was taken for the part used", PLANT, (2.7 * 0.6) / 0.45],
    ["The ratio was inverted", PLANT, 0.45 / (2.7 * 0.4)],
    ["The available water was divided by the depletion fraction", PLANT, 2.7 / 0.4 / 0.45],
  ],
  PLANT_SPACING_AREA: [
    ["The triangle was taken for a square of its side", IN_TRIANGLE, (14 * 14) / 144],
    ["The triangle was taken for a square of its side", CM_TRIANGLE, (32 * 32) / 10_000],
    ["The triangle was taken for a square of its side", IN_ROWS, NaN],
    [
      "0.866 was multiplied in although the distance of the rows was given",
      IN_ROWS,
      ((Math.sqrt(3) / 2) * 14 * 25) / 144,
    ],
    [
      "0.866 was multiplied in although the distance of the rows was given",
      CM_ROWS,
      ((Math.sqrt(3) / 2) * 32 * 45) / 10_000,
    ],
    ["0.866 was multiplied in although the distance of the rows was given", CM_TRIANGLE, NaN],
    ["The area was left in square inches or square centimetres", IN_ROWS, 14 * 25],
    ["The area was left in square inches or square centimetres", CM_ROWS, 32 * 45],
    // The height of a triangle of equal sides by Pythagoras.
    ["The area was left in square inches or square centimetres", IN_TRIANGLE, 14 * Math.sqrt(14 ** 2 - 7 ** 2)],
    ["Square inches were divided by 12, not by 144", IN_ROWS, (14 * 25) / 12],
    ["Square inches were divided by 12, not by 144", CM_ROWS, NaN],
  ],
  TARGET_WEIGHT: [
    ["The other basis was used: a part of the water is not that part of the total weight", ON_WATER, 0.8 * 6],
    [
      "The other basis was used: a part of the water is not that part of the total weight",
      ON_TOTAL,
      2.4 + 0.8 * (6 - 2.4),
    ],
    [
      // 0.3 of 6 is below the dry weight: no such target on the total.
      "The other basis was used: a part of the water is not that part of the total weight",
      { ...ON_WATER, fraction: 0.3 },
      NaN,
    ],
    ["The part used was taken for the part left", ON_WATER, 2.4 + 0.2 * (6 - 2.4)],
    ["The part used was taken for the part left", { ...ON_TOTAL, fraction: 0.55 }, 0.45 * 6],
    ["The part used was taken for the part left", ON_TOTAL, NaN],
    ["The dry weight was not added again", ON_WATER, 0.8 * (6 - 2.4)],
    // On the total weight none is taken off, so none is to be added.
    ["The dry weight was not added again", ON_TOTAL, NaN],
  ],
  TOP_AREA: [
    ["The diameter was used as a radius", IN_TOP, (PI * 11 * 11) / 144],
    ["The diameter was used as a radius", CM_TOP, (PI * 27 * 27) / 10_000],
    ["A square of the diameter was taken for the round top", IN_TOP, (11 * 11) / 144],
    ["A square of the diameter was taken for the round top", CM_TOP, (27 * 27) / 10_000],
    ["The area was left in square inches or square centimetres", IN_TOP, PI * 5.5 ** 2],
    ["The area was left in square inches or square centimetres", CM_TOP, PI * 13.5 ** 2],
    ["Square inches were divided by 12, not by 144", IN_TOP, (PI * 5.5 ** 2) / 12],
    ["Square inches were divided by 12, not by 144", CM_TOP, NaN],
  ],
  WATER_DEPTH: [
    ["The diameter was used as a radius", GALLONS, (0.6 * 231) / (PI * 11 * 11)],
    ["The diameter was used as a radius", LITRES, (10 * 700) / (PI * 26 * 26)],
    ["A square of the diameter was taken for the round top", GALLONS, (0.6 * 231) / (11 * 11)],
    ["A square of the diameter was taken for the round top", LITRES, (10 * 700) / (26 * 26)],
    [
      "The unit constant was left out: gallons are not cubic inches, litres on cm2 are not mm",
      GALLONS,
      0.6 / (PI * 5.5 ** 2),
    ],
    [
      "The unit constant was left out: gallons are not cubic inches, litres on cm2 are not mm",
      LITRES,
      0.7 / (PI * 13 ** 2),
    ],
    ["The depth was left in centimetres", LITRES, 700 / (PI * 13 ** 2)],
    ["The depth was left in centimetres", GALLONS, NaN],
  ],
  WATER_FROM_WEIGHT: [
    ["Pounds of water were taken for gallons", POUNDS, 12.4 - 11.1],
    ["Pounds of water were taken for gallons", KILOGRAMS, NaN],
    ["The pot's whole weight was taken for water", POUNDS, 12.4 / GALLON_WEIGHT],
    ["The pot's whole weight was taken for water", KILOGRAMS, 6.8],
    ["Ten pounds were counted to the gallon, as in imperial gallons", POUNDS, (12.4 - 11.1) / 10],
    ["Ten pounds were counted to the gallon, as in imperial gallons", KILOGRAMS, NaN],
  ],
  WATER_HELD: [
    ["What is not water, solids and air, was taken for the water", { volume: 9, container_capacity: 0.55 }, 9 * 0.45],
    ["The volume was divided by the capacity", { volume: 9, container_capacity: 0.55 }, 9 / 0.55],
  ],
};

expectMistakesOfGroup("Container and substrate", MISTAKES);
