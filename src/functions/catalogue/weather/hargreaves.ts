import type { Show } from "../../../kernel";
import { extraterrestrialRadiation } from "./radiation";

export interface HargreavesDay {
  readonly tmax: number;
  readonly tmin: number;
  readonly latitude: number;
  readonly date: number;
}

/** FAO-56 Eq. 52 on symbols Tmax, Tmin, lat, date in the user's units; the answer in the unit asked for. */
export function hargreaves({ tmax, tmin, latitude, date }: HargreavesDay, show: Show): number {
  const mean = show("Tm = (Tmax + Tmin) / 2", (tmax + tmin) / 2, "temperature", "Mean temperature of the day");
  const meanC = show.toMetric("T = Tm", mean, "temperature", "The same in C");
  const range = show("R = Tmax - Tmin", tmax - tmin, "temperature difference", "Range from night to day");
  const rangeC = show.toMetric("TR = R", range, "temperature difference", "The same in C");
  const ra = extraterrestrialRadiation(latitude, date, show);
  const energy = show("E = 0.408 * Ra", 0.408 * ra, "evaporation in mm", "That radiation as evaporated water");
  const et = show(
    "ETm = MAX(0, 0.0023 * (T + 17.8) * SQRT(TR) * E)",
    Math.max(0, 0.0023 * (meanC + 17.8) * Math.sqrt(rangeC) * energy),
    "evaporation in mm",
    "Reference evapotranspiration, never below 0",
  );
  return show.fromMetric("ET0 = ETm", et, "water depth per day", "The same in the unit asked for");
}
