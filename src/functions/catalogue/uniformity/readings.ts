import { cite, type NumbersParam, type WordParam } from "../../../kernel";

/** What a blank or 0 among readings means; a host may send an empty cell as 0, so both are governed alike. */
export const ZEROS_PARAM = {
  kind: "word",
  words: ["error", "count", "skip"],
  default: "error",
  about: 'What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out',
} as const satisfies WordParam;

export const READINGS_PARAM = {
  kind: "numbers",
  quantity: "any one unit",
  symbol: "x",
  above: 0,
  blanks: "zeros",
  about: "Catches or flows, all in one unit; a range of any shape",
} as const satisfies NumbersParam;

export const DU_USUAL = {
  us: [0.6, 0.95],
  metric: [0.6, 0.95],
  low: "below 0.60: mend the system before scheduling on it",
  high: "hardly ever this even: look for a copied reading",
  source: cite("AE194", "below 60 % low, 80 % and more high"),
} as const;

export const CU_USUAL = {
  us: [0.65, 0.95],
  metric: [0.65, 0.95],
  low: "wind, spacing or pressure is wrong: check the layout before the clock",
  high: "hardly ever this even: look for a copied reading",
  source: cite("OVERTON2014", "0.86 in the middle of a nursery field, 0.69 at its end"),
} as const;

export const STATISTICAL_USUAL = {
  us: [0.7, 0.98],
  metric: [0.7, 0.98],
  low: "emitters differ much: look for plugged ones, then check the pressure",
  high: "hardly ever this even: look for a copied reading",
  source: cite("SOILS456", "should be higher than 0.80, 0.90 is better"),
} as const;

/** Assumptions that every measure of evenness shares. */
export const AMOUNTS_NOT_SECONDS = "Readings must be amounts or flows, not the seconds to fill a bottle.";
export const LOWEST_SECONDS =
  "Readings must be amounts or flows. Seconds to fill a bottle run the other way: their lowest quarter is the wettest.";
export const DAY_OF_THE_TEST = "Holds for the day, the wind and the pressure of the test.";

/** Readings on which the examples of all uniformity numbers can be compared: sum 300, mean 18.75. Invented. */
export const SIXTEEN_CATCHES = [
  [12, 14, 15, 16],
  [16, 17, 18, 18],
  [19, 20, 20, 20],
  [21, 22, 24, 28],
] as const;
