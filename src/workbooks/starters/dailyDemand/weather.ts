import type { BlockRef, SheetBuilder, StarterBuilder } from "../../kit";
import { DAYS, FIGURES, FIRST_DAY } from "./figures";

/** The columns of the sheet Weather, by their keys. */
export type Readings = Readonly<Record<string, BlockRef>>;

/** The only block of its sheet: rows put in between its first and last take everything that follows with them. */
export function fillWeather(kit: StarterBuilder, weather: SheetBuilder): Readings {
  const { tmax, tmin, rain, irrigation } = FIGURES[kit.edition];
  const degrees = kit.pick("F", "C");
  const temperature = { least: kit.pick(-60, -50), most: kit.pick(140, 60) };
  const depth = kit.pick("in", "mm");
  const volume = kit.pick("gal", "L");
  return weather.table({
    rows: DAYS,
    columns: [
      {
        key: "date",
        heading: "date",
        unit: "day",
        format: "date",
        inputs: Array.from({ length: DAYS }, (_day, at) => FIRST_DAY + at),
        limits: { least: 367, most: 73_050, message: "date must be a day, such as 2026-07-31." },
      },
      {
        key: "tmax",
        heading: "highest temperature",
        unit: degrees,
        format: "decimals1",
        inputs: tmax,
        limits: temperature,
      },
      {
        key: "tmin",
        heading: "lowest temperature",
        unit: degrees,
        format: "decimals1",
        inputs: tmin,
        limits: temperature,
      },
      {
        key: "rain",
        heading: "rain",
        unit: depth,
        format: kit.pick("decimals2", "decimals1"),
        inputs: rain,
        limits: { least: 0, most: kit.pick(20, 500) },
      },
      {
        key: "irrigation",
        heading: "water given to a pot",
        unit: volume,
        format: "decimals2",
        inputs: irrigation,
        limits: { least: 0, most: kit.pick(50, 200) },
      },
      {
        key: "station",
        heading: "reference ET of a station",
        unit: kit.pick("in/day", "mm/day"),
        format: kit.pick("decimals3", "decimals2"),
        inputs: [],
        limits: { least: 0, most: kit.pick(1, 25) },
      },
    ],
  }).column;
}
