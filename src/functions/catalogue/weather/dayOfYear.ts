import type { NumberParam, Show } from "../../../kernel";

const MILLISECONDS_PER_DAY = 86_400_000;
/** Serial number of 1 January 1970 in the 1900 system. */
const SERIAL_1970 = 25_569;

/** 1 January is day 1. */
export function dayOfYear(date: number): number {
  const year = new Date((date - SERIAL_1970) * MILLISECONDS_PER_DAY).getUTCFullYear();
  return date - SERIAL_1970 - Date.UTC(year, 0, 1) / MILLISECONDS_PER_DAY + 1;
}

/** The day of the year on symbol `date`. */
export function dayOfYearStep(date: number, show: Show): number {
  return show("J = INT(date) - DATE(YEAR(date), 1, 0)", dayOfYear(date), "day of year", "Day of the year");
}

export const DATE_PARAM = {
  quantity: "date",
  symbol: "date",
  atLeast: 367,
  atMost: 2_958_465,
  guard: "1 January 1901 to 31 December 9999: serial numbers of 1900 count a leap day that never was",
  about: "Day, as a date of the sheet; of a date with a time the whole part counts",
} as const satisfies NumberParam;

export const LATITUDE_PARAM = {
  quantity: "latitude",
  symbol: "lat",
  atLeast: -90,
  atMost: 90,
  about: "Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank",
  hint: "degrees and decimals, south negative",
} as const satisfies NumberParam;
