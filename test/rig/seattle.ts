/**
 * Four years of real weather: Seattle, 2012 to 2015, daily rain in mm and highest and lowest temperature in C, of the
 * U.S. National Oceanic and Atmospheric Administration, as vega-datasets carries it.
 */
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { serialNumber } from "./serialNumber";

export const SEATTLE = { latitude: 47.6, elevation: 60 } as const;

export interface WeatherDay {
  readonly year: number;
  readonly month: number;
  readonly date: number;
  readonly tmax: number;
  readonly tmin: number;
  readonly rain: number;
}

/** The file as it is published. */
export function seattleText(): string {
  const folder = dirname(require.resolve("vega-datasets"));
  return readFileSync(join(folder, "..", "data", "seattle-weather.csv"), "utf8");
}

export function readSeattle(): WeatherDay[] {
  const text = seattleText();
  const [header = "", ...lines] = text.trim().split(/\r?\n/);
  const columns = header.split(",");
  const at = (cells: readonly string[], column: string): number => Number(cells[columns.indexOf(column)]);
  return lines.map((line) => {
    const cells = line.split(",");
    const [year = NaN, month = NaN, day = NaN] = (cells[columns.indexOf("date")] ?? "").split("-").map(Number);
    return {
      year,
      month,
      date: serialNumber(year, month, day),
      tmax: at(cells, "temp_max"),
      tmin: at(cells, "temp_min"),
      rain: at(cells, "precipitation"),
    };
  });
}
