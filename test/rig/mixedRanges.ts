/** What stands in the columns of ranges that a function reads itself. */
import type { Entry, NumberParam } from "../../src/kernel";
import { entryOf } from "./calls";

/** By function, argument and number of columns: the function of a single row, and its argument for each column. */
const COLUMN_ARGUMENTS: Readonly<Record<string, readonly [single: string, columns: readonly string[]]>> = {
  "ET0_TABLE weather 3": ["ET0_HARGREAVES", ["date", "tmax", "tmin"]],
  "ET0_TABLE weather 7": [
    "ET0_PENMAN_MONTEITH",
    ["date", "tmax", "tmin", "rh_max", "rh_min", "wind_speed", "solar_radiation"],
  ],
};

/** The widths in which the range may come. */
export function widthsOf(entry: Entry, name: string): number[] {
  const prefix = `${entry.name} ${name} `;
  return Object.keys(COLUMN_ARGUMENTS)
    .filter((key) => key.startsWith(prefix))
    .map((key) => Number(key.slice(prefix.length)));
}

/** The columns as arguments with quantities and limits. */
export function columnsOf(entry: Entry, name: string, width: number): readonly NumberParam[] {
  const key = `${entry.name} ${name} ${width}`;
  const known = COLUMN_ARGUMENTS[key];
  if (known === undefined) throw new Error(`what stands in the columns of ${key} is not written down here`);
  const [single, columns] = known;
  return columns.map((column) => entryOf(single).params[column] as NumberParam);
}
