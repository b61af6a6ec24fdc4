import type { Show } from "../../../kernel";
import { dayOfYear } from "./dayOfYear";

const SOLAR_CONSTANT = 0.082;

/** Extraterrestrial radiation of a day, MJ/m2/day: FAO-56 Eqs 21 to 25, on symbols `date` and `lat`. */
export function extraterrestrialRadiation(latitude: number, date: number, show: Show): number {
  const j = show("J = INT(date) - DATE(YEAR(date), 1, 0)", dayOfYear(date), "day of year", "Day of the year");
  const phi = show("phi = lat * PI() / 180", (latitude * Math.PI) / 180, "angle", "Latitude in radians");
  const dr = show(
    "dr = 1 + 0.033 * COS(2 * PI() * J / 365)",
    1 + 0.033 * Math.cos((2 * Math.PI * j) / 365),
    "factor",
    "Inverse relative distance of the sun",
  );
  const decl = show(
    "decl = 0.409 * SIN(2 * PI() * J / 365 - 1.39)",
    0.409 * Math.sin((2 * Math.PI * j) / 365 - 1.39),
    "angle",
    "Declination of the sun",
  );
  const cosine = Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(decl)));
  const ws = show(
    "ws = ACOS(MAX(-1, MIN(1, -1 * TAN(phi) * TAN(decl))))",
    Math.acos(cosine),
    "angle",
    "Sunset hour angle; the clamp serves polar days and nights",
  );
  const sum = ws * Math.sin(phi) * Math.sin(decl) + Math.cos(phi) * Math.cos(decl) * Math.sin(ws);
  return show(
    "Ra = 24 * 60 / PI() * 0.082 * dr * (ws * SIN(phi) * SIN(decl) + COS(phi) * COS(decl) * SIN(ws))",
    ((24 * 60) / Math.PI) * SOLAR_CONSTANT * dr * sum,
    "radiation",
    "Radiation above the atmosphere",
  );
}
