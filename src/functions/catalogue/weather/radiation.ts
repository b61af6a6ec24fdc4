import { cite, type NumberParam, type Show } from "../../../kernel";
import { dayOfYearStep } from "./dayOfYear";

const SOLAR_CONSTANT = 0.082;

/** Solar radiation of a day at the ground. */
export const SOLAR_PARAM = {
  quantity: "radiation",
  symbol: "Rs",
  above: 0,
  atMost: 50,
  guard: "more than reaches the top of the atmosphere anywhere",
  about: "Solar radiation of the day at the ground",
  hint: "W/m2 as a mean of 24 h x 0.0864, langleys x 0.0419",
  usual: { us: [1, 32], metric: [1, 32], source: cite("FAO56", "Annex 2, Table 2.6 times 0.75") },
} as const satisfies NumberParam;

/** Where the sun stands on a day, as seen from a latitude. */
export interface Sun {
  readonly dayOfYear: number;
  readonly latitude: number;
  readonly declination: number;
  readonly sunsetAngle: number;
}

/** FAO-56 Eqs 22, 24 and 25, on symbols `date` and `lat`. */
export function sunOf(latitude: number, date: number, show: Show): Sun {
  const j = dayOfYearStep(date, show);
  const phi = show("phi = lat * PI() / 180", (latitude * Math.PI) / 180, "angle", "Latitude in radians");
  const decl = show(
    "decl = 0.409 * SIN(2 * PI() * J / 365 - 1.39)",
    0.409 * Math.sin((2 * Math.PI * j) / 365 - 1.39),
    "angle",
    "Declination of the sun",
  );
  const ws = show(
    "ws = ACOS(MAX(-1, MIN(1, -1 * TAN(phi) * TAN(decl))))",
    Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(decl)))),
    "angle",
    "Sunset hour angle; the clamp serves polar days and nights",
  );
  return { dayOfYear: j, latitude: phi, declination: decl, sunsetAngle: ws };
}

/** Radiation of the day above the atmosphere, MJ/m2/day: FAO-56 Eqs 21 and 23. */
export function radiationAbove({ dayOfYear, latitude, declination, sunsetAngle }: Sun, show: Show): number {
  const dr = show(
    "dr = 1 + 0.033 * COS(2 * PI() * J / 365)",
    1 + 0.033 * Math.cos((2 * Math.PI * dayOfYear) / 365),
    "factor",
    "Inverse relative distance of the sun",
  );
  const sum =
    sunsetAngle * Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.sin(sunsetAngle);
  return show(
    "Ra = 24 * 60 / PI() * 0.082 * dr * (ws * SIN(phi) * SIN(decl) + COS(phi) * COS(decl) * SIN(ws))",
    ((24 * 60) / Math.PI) * SOLAR_CONSTANT * dr * sum,
    "radiation",
    "Radiation above the atmosphere",
  );
}

/** From sunrise to sunset, in hours: FAO-56 Eq. 34. */
export function daylight({ sunsetAngle }: Sun, show: Show): number {
  return show("N = 24 * ws / PI()", (24 * sunsetAngle) / Math.PI, "hours", "Hours from sunrise to sunset");
}

/** Extraterrestrial radiation of a day, MJ/m2/day: FAO-56 Eqs 21 to 25, on symbols `date` and `lat`. */
export function extraterrestrialRadiation(latitude: number, date: number, show: Show): number {
  return radiationAbove(sunOf(latitude, date, show), show);
}
