/** What the known mistakes of the leaching group come to, by their words and the formulas of the functions. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

/** A gallon of 231 in3 in litres, and a pound in kilograms. */
const GALLON = 3.785411784;
const POUND = 0.45359237;

const POT = { leachate: 140, applied: 960 };
const SALT = { ec_applied: 0.9, ec_leachate: 3.7 };
const SOIL = { ec_water: 1.3, ec_threshold: 2.2 };
const US_FEED = { applied_volume: 90_000, leaching_fraction: 0.3, ppm: 110, units: "us" };
const METRIC_FEED = { applied_volume: 350_000, leaching_fraction: 0.2, ppm: 140, units: "metric" };
const TEST = { minutes_now: 23, measured: 0.4, target: 0.15 };
const SHORT_TEST = { minutes_now: 12, measured: 0.08, target: 0.18 };

const MISTAKES: Readonly<Record<string, readonly MistakeRow[]>> = {
  LEACHING_FRACTION: [
    ["Leachate was divided by the water kept, not by the water applied", POT, 140 / (960 - 140)],
    ["The part kept was taken for the part leached", POT, (960 - 140) / 960],
    ["The ratio was inverted", POT, 960 / 140],
    // All of it ran out: nothing was kept to divide by.
    ["Leachate was divided by the water kept, not by the water applied", { leachate: 700, applied: 700 }, NaN],
    ["The ratio was inverted", { leachate: 0, applied: 700 }, NaN],
  ],
  LEACHING_FROM_EC: [
    ["The ratio was inverted", SALT, 3.7 / 0.9],
    [
      "The formula for field soils was used, which wants the soil's extract, not the leachate",
      SALT,
      0.9 / (5 * 3.7 - 0.9),
    ],
    ["The part kept was taken for the part leached", SALT, (3.7 - 0.9) / 3.7],
  ],
  LEACHING_REQUIREMENT: [
    ["The 5 was left out", SOIL, 1.3 / (2.2 - 1.3)],
    ["The plain ratio of the two was taken", SOIL, 1.3 / 2.2],
    ["The water's EC was not taken off below the line", SOIL, 1.3 / (5 * 2.2)],
    ["Water and threshold were swapped", SOIL, 2.2 / (5 * 1.3 - 2.2)],
  ],
  NUTRIENT_LEACHED: [
    // 1 ppm is 1 mg to the litre; a kilogram is 1,000,000 mg.
    ["The leaching fraction was left out: that is all of the feed", METRIC_FEED, (350_000 * 140) / 1e6],
    ["The leaching fraction was left out: that is all of the feed", US_FEED, (90_000 * GALLON * 110) / 1e6 / POUND],
    ["The part kept was taken for the part leached", METRIC_FEED, (350_000 * 0.8 * 140) / 1e6],
    ["The part kept was taken for the part leached", US_FEED, (90_000 * 0.7 * GALLON * 110) / 1e6 / POUND],
    [
      "A million gallons were taken for a million pounds: 8.345 was left out",
      US_FEED,
      // 0.09 million gallons, three tenths of it, 110 to the million.
      0.09 * 0.3 * 110,
    ],
    ["A million gallons were taken for a million pounds: 8.345 was left out", METRIC_FEED, NaN],
  ],
  RUN_MINUTES_FROM_LEACHING: [
    ["The difference of the two fractions was taken off the time", TEST, 23 - 23 * 0.25],
    ["The difference of the two fractions was taken off the time", SHORT_TEST, 12 + 12 * 0.1],
    ["The ratio was inverted", TEST, (23 * 0.85) / 0.6],
    ["The ratio was inverted", SHORT_TEST, (12 * 0.82) / 0.92],
    ["The whole leaching was taken off, and nothing left for the target", TEST, 23 * 0.6],
    ["The time was scaled by the leaching fractions themselves", TEST, (23 * 0.15) / 0.4],
    ["The time was scaled by the leaching fractions themselves", SHORT_TEST, (12 * 0.18) / 0.08],
  ],
};

expectMistakesOfGroup("Leaching", MISTAKES);
