import type { NumberParam, Show } from "../../../kernel";

const HUMIDITY = {
  quantity: "percent",
  above: 1,
  atMost: 100,
  guard: "1 or less is a fraction typed for a percentage",
  hint: "percent, so 62 and not 0.62",
} as const satisfies Partial<NumberParam>;

export const RH_MAX_PARAM = {
  ...HUMIDITY,
  symbol: "RHx",
  about: "Highest relative humidity of the day, 1 to 100",
} as const satisfies NumberParam;

export const RH_MIN_PARAM = {
  ...HUMIDITY,
  symbol: "RHn",
  about: "Lowest relative humidity of the day, 1 to 100",
} as const satisfies NumberParam;

/** Saturation vapour pressure at a temperature in C, kPa: FAO-56 Eq. 11. */
export function saturationPressure(celsius: number): number {
  return 0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));
}

export interface Vapor {
  /** Saturation at the highest and at the lowest temperature. */
  readonly atMax: number;
  readonly atMin: number;
  readonly saturated: number;
  readonly actual: number;
}

/** FAO-56 Eqs 11, 12 and 17 on symbols Tx and Tn in C, RHx and RHn. */
export function vaporPressures(maxC: number, minC: number, rhMax: number, rhMin: number, show: Show): Vapor {
  const atMax = show(
    "ex = 0.6108 * EXP(17.27 * Tx / (Tx + 237.3))",
    saturationPressure(maxC),
    "vapor pressure",
    "Saturation at the highest temperature",
  );
  const atMin = show(
    "en = 0.6108 * EXP(17.27 * Tn / (Tn + 237.3))",
    saturationPressure(minC),
    "vapor pressure",
    "Saturation at the lowest temperature",
  );
  return {
    atMax,
    atMin,
    saturated: show(
      "es = (ex + en) / 2",
      (atMax + atMin) / 2,
      "vapor pressure",
      "Saturation of the day: the mean of both, not that of the mean temperature",
    ),
    actual: show(
      "ea = (en * RHx / 100 + ex * RHn / 100) / 2",
      ((atMin * rhMax) / 100 + (atMax * rhMin) / 100) / 2,
      "vapor pressure",
      "Actual vapour pressure",
    ),
  };
}
