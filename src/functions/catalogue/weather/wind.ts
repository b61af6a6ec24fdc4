import type { NumberParam, Show } from "../../../kernel";

export const WIND_PARAM = {
  quantity: "wind",
  symbol: "uz",
  atLeast: 0,
  atMost: 60,
  guard: "a daily mean beyond a hurricane is a wrong unit",
  about: "Mean wind of the day; 0 is a value, so leave no blank",
  hint: "check the units: km/h / 3.6 = m/s",
} as const satisfies NumberParam;

/** Height of an anemometer. */
export const WIND_HEIGHT = {
  quantity: "length",
  symbol: "zw",
  atLeast: 0.5,
  atMost: 200,
  guard: "heights at which the logarithmic profile over grass is used",
} as const satisfies Partial<NumberParam>;

/** What wind at a height is multiplied by to be wind at 2 m over grass, on symbol `zw`: FAO-56 Eq. 47. */
export function heightFactor(height: number, show: Show): number {
  const metres = show.toMetric("zm = zw", height, "length", "Height of the anemometer, in m");
  return show(
    "fz = 4.87 / LN(67.8 * zm - 5.42)",
    4.87 / Math.log(67.8 * metres - 5.42),
    "factor",
    "Wind at 2 m over wind at that height",
  );
}
