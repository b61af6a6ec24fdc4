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
