import type { Edition } from "../../kit";

/** Addresses of one day on Weather, and of the latitude. */
export interface DayCells {
  readonly date: string;
  readonly tmax: string;
  readonly tmin: string;
  readonly latitude: string;
}

/** Reference ET by Hargreaves, FAO-56 equations 52 and 21 to 25, in built-in functions. */
export function dayPlain(edition: Edition, { date, tmax, tmin, latitude }: DayCells): string {
  const mean = `(${tmax} + ${tmin}) / 2`;
  const range = `(${tmax} - ${tmin})`;
  const [meanC, rangeC] = edition === "us" ? [`((${mean} - 32) / 1.8)`, `(${range} / 1.8)`] : [`(${mean})`, range];
  const day = `(INT(${date}) - DATE(YEAR(${date}), 1, 0))`;
  const phi = `(${latitude} * PI() / 180)`;
  const declination = `(0.409 * SIN(2 * PI() * ${day} / 365 - 1.39))`;
  const sunset = `ACOS(MAX(-1, MIN(1, -1 * TAN(${phi}) * TAN(${declination}))))`;
  const above = `(${sunset} * SIN(${phi}) * SIN(${declination}) + COS(${phi}) * COS(${declination}) * SIN(${sunset}))`;
  const distance = `(1 + 0.033 * COS(2 * PI() * ${day} / 365))`;
  const sun = `(24 * 60 / PI() * 0.082 * ${distance} * ${above})`;
  const depth = `MAX(0, 0.0023 * (${meanC} + 17.8) * SQRT(${rangeC}) * 0.408 * ${sun})`;
  const inUnit = edition === "us" ? `${depth} / 25.4` : depth;
  return `=IF(COUNT(${date}, ${tmax}, ${tmin}) < 3, "", IF(${tmin} > ${tmax}, "lowest above highest", ${inUnit}))`;
}
