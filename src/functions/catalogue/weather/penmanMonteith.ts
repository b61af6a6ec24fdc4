import type { Show } from "../../../kernel";
import { extraterrestrialRadiation } from "./radiation";
import { saturationPressure, vaporPressures } from "./vaporPressure";
import { heightFactor } from "./wind";

export interface PenmanMonteithDay {
  readonly tmax: number;
  readonly tmin: number;
  readonly rhMax: number;
  readonly rhMin: number;
  readonly wind: number;
  /** Height of the anemometer in the user's unit; null where the wind is already that at 2 m. */
  readonly windHeight: number | null;
  readonly solar: number;
  readonly latitude: number;
  readonly elevation: number;
  readonly date: number;
}

function windInMetres({ wind, windHeight }: PenmanMonteithDay, show: Show): number {
  if (windHeight === null) return show.toMetric("u2 = uz", wind, "wind", "Wind at 2 m, in m/s");
  const speed = show.toMetric("um = uz", wind, "wind", "Measured wind, in m/s");
  return show("u2 = um * fz", speed * heightFactor(windHeight, show), "wind in m/s", "Wind at 2 m");
}

const STEFAN_BOLTZMANN = 4.903e-9;

function fourthPowerMean(maxC: number, minC: number): number {
  return ((maxC + 273.16) ** 4 + (minC + 273.16) ** 4) / 2;
}

function netRadiation(
  day: PenmanMonteithDay,
  maxC: number,
  minC: number,
  elevation: number,
  ea: number,
  show: Show,
): number {
  const ra = extraterrestrialRadiation(day.latitude, day.date, show);
  const clear = show(
    "Rso = (0.75 + 2E-5 * z) * Ra",
    (0.75 + 2e-5 * elevation) * ra,
    "radiation",
    "Radiation under a clear sky",
  );
  const share = show(
    "f = IF(Rs < Rso, Rs / Rso, 1)",
    day.solar < clear ? day.solar / clear : 1,
    "factor",
    "Part of the clear-sky radiation, at most 1",
  );
  const short = show("Rns = 0.77 * Rs", 0.77 * day.solar, "radiation", "Net shortwave radiation of grass");
  const long = show(
    "Rnl = 4.903E-9 * ((Tx + 273.16)^4 + (Tn + 273.16)^4) / 2 * (0.34 - 0.14 * SQRT(ea)) * (1.35 * f - 0.35)",
    STEFAN_BOLTZMANN * fourthPowerMean(maxC, minC) * (0.34 - 0.14 * Math.sqrt(ea)) * (1.35 * share - 0.35),
    "radiation",
    "Net longwave radiation lost",
  );
  return show("Rn = Rns - Rnl", short - long, "radiation", "Net radiation");
}

/** FAO-56 Eq. 6 for a day, soil heat flux 0, in the user's units; the answer in the unit asked for. */
export function penmanMonteith(day: PenmanMonteithDay, show: Show): number {
  const maxC = show.toMetric("Tx = Tmax", day.tmax, "temperature", "Highest temperature, in C");
  const minC = show.toMetric("Tn = Tmin", day.tmin, "temperature", "Lowest temperature, in C");
  const mean = show("T = (Tx + Tn) / 2", (maxC + minC) / 2, "air temperature in C", "Mean temperature");
  const elevation = show.toMetric("z = h", day.elevation, "length", "Elevation, in m");
  const pressure = show(
    "P = 101.3 * ((293 - 0.0065 * z) / 293)^5.26",
    101.3 * ((293 - 0.0065 * elevation) / 293) ** 5.26,
    "air pressure",
    "Air pressure at this elevation",
  );
  const gamma = show("gamma = 0.665E-3 * P", 0.665e-3 * pressure, "slope of vapor pressure", "Psychrometric constant");
  const slope = show(
    "D = 4098 * 0.6108 * EXP(17.27 * T / (T + 237.3)) / (T + 237.3)^2",
    (4098 * saturationPressure(mean)) / (mean + 237.3) ** 2,
    "slope of vapor pressure",
    "Slope of the saturation curve at the mean temperature",
  );
  const { saturated, actual } = vaporPressures(maxC, minC, day.rhMax, day.rhMin, show);
  const wind = windInMetres(day, show);
  const net = netRadiation(day, maxC, minC, elevation, actual, show);
  const et = show(
    "ETm = MAX(0, (0.408 * D * Rn + gamma * 900 / (T + 273) * u2 * (es - ea)) / (D + gamma * (1 + 0.34 * u2)))",
    Math.max(
      0,
      (0.408 * slope * net + ((gamma * 900) / (mean + 273)) * wind * (saturated - actual)) /
        (slope + gamma * (1 + 0.34 * wind)),
    ),
    "evaporation in mm",
    "Reference evapotranspiration, never below 0",
  );
  return show.fromMetric("ET0 = ETm", et, "water depth per day", "The same in the unit asked for");
}
