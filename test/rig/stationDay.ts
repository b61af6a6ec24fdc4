import { serialOfDay } from "./serialNumber";

/** A day's weather for ET0_PENMAN_MONTEITH, metric: a published check sets what it is about, the rest plays no part. */
export const STATION_DAY = {
  tmax: 25,
  tmin: 15,
  rh_max: 80,
  rh_min: 50,
  wind_speed: 2,
  solar_radiation: 20,
  latitude: 45,
  elevation: 0,
  date: serialOfDay(180),
  units: "metric",
} as const;

/** Saturation vapour pressure, FAO-56 Eq. 11: arithmetic for inputs that a check has to prepare. */
export function saturation(celsius: number): number {
  return 0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));
}

/** The humidity, highest and lowest alike, at which Eq. 17 gives a published vapour pressure. */
export function humidityFor(vaporPressure: number, tmax: number, tmin: number): { rh_max: number; rh_min: number } {
  const humidity = (100 * vaporPressure) / ((saturation(tmax) + saturation(tmin)) / 2);
  return { rh_max: humidity, rh_min: humidity };
}
