/** What the known mistakes of the weather group come to, by their words and the formulas of the functions. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";
import { serialOfDay } from "../../rig/serialNumber";
import { saturation } from "../../rig/stationDay";

const { PI } = Math;
const FOOT = 0.3048;
/** A mile an hour in m/s: 1609.344 m in 3600 s. */
const MPH = 1609.344 / 3600;
/** An inch on a square foot: 144 in3, of which 231 are a gallon. */
const INCH_FOOT = 144 / 231;

const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

/** FAO-56 Eqs 21 to 25 and 34, the latitude in radians: hours of daylight, and MJ/m2 above the air. */
function sky(phi: number, day: number): { hours: number; above: number } {
  const declination = 0.409 * Math.sin((day * 2 * PI) / 365 - 1.39);
  const cosine = -Math.tan(phi) * Math.tan(declination);
  const sunset = cosine >= 1 ? 0 : cosine <= -1 ? PI : Math.acos(cosine);
  const distance = 1 + 0.033 * Math.cos((day * 2 * PI) / 365);
  const sines = Math.sin(phi) * Math.sin(declination);
  const cosines = Math.cos(phi) * Math.cos(declination);
  return {
    hours: (sunset / PI) * 24,
    above: ((1440 * 0.082) / PI) * distance * (sunset * sines + cosines * Math.sin(sunset)),
  };
}
const hours = (latitude: number, day: number): number => sky((latitude * PI) / 180, day).hours;
const above = (latitude: number, day: number): number => sky((latitude * PI) / 180, day).above;

/** FAO-56 Eq. 47: wind at 2 m over wind at a height in m, by a logarithm. */
const toTwoMetres = (height: number, logarithm = Math.log): number => 4.87 / logarithm(67.8 * height - 5.42);

/** FAO-56 Eq. 6 for a day in metric units, the wind that at 2 m and the vapour pressure already known. */
function penman(
  day: Readonly<Record<"max" | "min" | "actual" | "wind" | "solar" | "height" | "above", number>>,
): number {
  const mean = (day.max + day.min) / 2;
  const gamma = 0.000665 * 101.3 * Math.pow(1 - (0.0065 * day.height) / 293, 5.26);
  const slope = (4098 * saturation(mean)) / Math.pow(mean + 237.3, 2);
  const clear = (0.75 + 0.00002 * day.height) * day.above;
  const cloud = 1.35 * Math.min(1, day.solar / clear) - 0.35;
  const black = (Math.pow(day.max + 273.16, 4) + Math.pow(day.min + 273.16, 4)) / 2;
  const net = 0.77 * day.solar - 0.000000004903 * black * (0.34 - 0.14 * Math.sqrt(day.actual)) * cloud;
  const dryness = (saturation(day.max) + saturation(day.min)) / 2 - day.actual;
  return (
    (0.408 * slope * net + (gamma * 900 * day.wind * dryness) / (mean + 273)) / (slope + gamma * (1 + 0.34 * day.wind))
  );
}

/** FAO-56 Table 7, Class A pan; wind in m/s, fetch in m, humidity in %. */
function greenPan(wind: number, fetch: number, humidity: number): number {
  const [f, h] = [Math.log(fetch), Math.log(humidity)];
  return 0.108 - 0.0286 * wind + 0.0422 * f + 0.1434 * h - 0.000631 * f * f * h;
}
function dryPan(wind: number, fetch: number, humidity: number): number {
  const [f, u] = [Math.log(fetch), Math.log(86.4 * wind)];
  const first = 0.61 + 0.00341 * humidity - 0.000162 * wind * humidity - 0.00000959 * wind * fetch;
  return first + 0.00327 * wind * f - 0.00289 * wind * u - 0.0106 * u * f + 0.00063 * f * f * u;
}

const SIGN = "The latitude was given the sign of the other hemisphere";
const IN_MJ = "Radiation was left in MJ, not turned into millimetres of water (x 0.408)";
const IN_WATER = "Radiation was turned into millimetres of water (x 0.408)";
const HUMIDITIES = "The highest and the lowest humidity were swapped";
const AT_MAST = "The wind at the mast was taken as wind at 2 m";
const AS_RADIUS = "The diameter was used as a radius";
const AS_SQUARE = "A square of the diameter was taken for the round top";
const TANGENT = "Degrees went into the tangent where radians belong";
const SINE = "Degrees went into sine and cosine where radians belong";

const L_USE = { measured_use: 0.6, reference_et: 4.5, area_per_plant: 0.17, units: "metric" };
const GAL_USE = { measured_use: 0.55, reference_et: 0.23, area_per_plant: 3.4, units: "us" };
const MM_DEMAND = {
  reference_et: 4.5,
  crop_coefficient: 0.8,
  area_per_plant: 0.17,
  units: "metric",
  cover_factor: 0.7,
};
const IN_DEMAND = { reference_et: 0.23, crop_coefficient: 1.3, area_per_plant: 3.4, units: "us" };
const SUMMER = { latitude: 37.4, date: serialOfDay(200) };
const MM_RAIN = { rain: 9, top_diameter: 26, units: "metric", capture_factor: 1.3 };
const IN_RAIN = { rain: 0.45, top_diameter: 11, units: "us", capture_factor: 0.8 };
const SPRING_HOUSE = { solar_radiation: 17.3, transmission: 0.6, date: serialOfDay(150), units: "metric" };
const AUTUMN_HOUSE = { solar_radiation: 11.2, transmission: 0.7, date: serialOfDay(280), units: "us" };
const C_DAY = { ...SUMMER, tmax: 31.2, tmin: 15.8, units: "metric" };
const F_DAY = { ...SUMMER, tmax: 88.3, tmin: 60.1, units: "us" };
const STATION = {
  tmax: 27.4,
  tmin: 14.2,
  rh_max: 83,
  rh_min: 46,
  wind_speed: 3.1,
  solar_radiation: 21.3,
  latitude: 41.5,
  elevation: 320,
  date: serialOfDay(160),
  units: "metric",
  wind_height: 6,
};
const US_STATION = {
  ...STATION,
  tmax: 81.3,
  tmin: 57.6,
  wind_speed: 6.9,
  elevation: 1050,
  units: "us",
  wind_height: 20,
};
const C_AIR = { tmax: 27.4, tmin: 14.2, rh_max: 83, rh_min: 46, units: "metric" };
const F_AIR = { tmax: 81.3, tmin: 57.6, rh_max: 83, rh_min: 46, units: "us" };
const M_PAN = { fetch: 60, wind_speed: 2.6, rh_mean: 57, units: "metric" };
const FT_PAN = { fetch: 210, wind_speed: 6.3, rh_mean: 57, units: "us" };
const SUN = { ...SUMMER, sunshine_hours: 7.3 };
const M_MAST = { wind_speed: 3.1, height: 6, units: "metric" };
const FT_MAST = { wind_speed: 7.2, height: 20, units: "us" };

/** The vapour pressures of the metric and of the US air above. */
const [CX, CN] = [saturation(27.4), saturation(14.2)];
const [FX, FN] = [saturation(celsius(81.3)), saturation(celsius(57.6))];

/** The metric station's day with what a slip makes of it; FAO-56 Eq. 17 for its vapour pressure. */
function stationDay(slipped: Partial<Parameters<typeof penman>[0]>): number {
  const actual = (CN * 0.83 + CX * 0.46) / 2;
  const wind = 3.1 * toTwoMetres(6);
  const right = { max: 27.4, min: 14.2, actual, wind, solar: 21.3, height: 320, above: above(41.5, 160) };
  return penman({ ...right, ...slipped });
}
/** The US station's day, in inches. */
function usStationDay(slipped: Partial<Parameters<typeof penman>[0]>): number {
  const actual = (FN * 0.83 + FX * 0.46) / 2;
  const wind = 6.9 * MPH * toTwoMetres(20 * FOOT);
  const [max, min] = [celsius(81.3), celsius(57.6)];
  const right = { max, min, actual, wind, solar: 21.3, height: 1050 * FOOT, above: above(41.5, 160) };
  return penman({ ...right, ...slipped }) / 25.4;
}

const MISTAKES: Readonly<Record<string, readonly MistakeRow[]>> = {
  CROP_COEFFICIENT: [
    ["The ratio was inverted", L_USE, (4.5 * 0.17) / 0.6],
    ["The ratio was inverted", GAL_USE, (0.23 * 3.4 * INCH_FOOT) / 0.55],
    ["The area was left out: a volume was divided by a depth", L_USE, 0.6 / 4.5],
    ["The area was left out: a volume was divided by a depth", GAL_USE, 0.55 / INCH_FOOT / 0.23],
    ["The unit constant was left out", GAL_USE, 0.55 / 3.4 / 0.23],
    ["The unit constant was left out", L_USE, NaN],
  ],
  DAYLIGHT_HOURS: [
    [SIGN, SUMMER, hours(-37.4, 200)],
    [SIGN, { ...SUMMER, latitude: -28.6 }, hours(28.6, 200)],
    [TANGENT, SUMMER, sky(37.4, 200).hours],
    // The tangent of 55 rad is -45: in summer the sun would not rise, in winter not set.
    [TANGENT, { latitude: 55, date: serialOfDay(170) }, 0],
    [TANGENT, { latitude: 55, date: serialOfDay(20) }, 24],
    ["The hours from noon to sunset were taken for the whole day", SUMMER, hours(37.4, 200) / 2],
  ],
  EFFECTIVE_RAIN: [
    [
      "The room was left out: more was counted than the pot can hold",
      { ...MM_RAIN, room: 0.5 },
      0.9 * PI * 13 ** 2 * 1.3e-3,
    ],
    [
      "The room was left out: more was counted than the pot can hold",
      { ...IN_RAIN, room: 0.1 },
      (0.45 * PI * 5.5 ** 2 * 0.8) / 231,
    ],
    [AS_RADIUS, MM_RAIN, 0.9 * PI * 26 ** 2 * 1.3e-3],
    [AS_RADIUS, IN_RAIN, (0.45 * PI * 11 ** 2 * 0.8) / 231],
    [AS_RADIUS, { ...MM_RAIN, room: 1.1 }, 1.1],
    ["The capture factor was left out", MM_RAIN, 0.9 * PI * 13 ** 2 * 1e-3],
    ["The capture factor was left out", IN_RAIN, (0.45 * PI * 5.5 ** 2) / 231],
    ["The capture factor was left out", { ...MM_RAIN, room: 0.3 }, 0.3],
    [AS_SQUARE, MM_RAIN, 0.9 * 26 ** 2 * 1.3e-3],
    [AS_SQUARE, { ...MM_RAIN, room: 0.9 }, 0.9 * 26 ** 2 * 1.3e-3],
    [AS_SQUARE, { ...MM_RAIN, room: 0.7 }, 0.7],
    [AS_SQUARE, IN_RAIN, (0.45 * 11 ** 2 * 0.8) / 231],
  ],
  ET0_GREENHOUSE: [
    [
      "The transmission was left out: the crop was given the sun outside",
      SPRING_HOUSE,
      (0.288 + 0.0019 * 150) * 0.408 * 17.3,
    ],
    [
      "The transmission was left out: the crop was given the sun outside",
      AUTUMN_HOUSE,
      ((1.339 - 0.00288 * 280) * 0.408 * 11.2) / 25.4,
    ],
    [
      "The transmission was counted twice, as with radiation measured inside",
      SPRING_HOUSE,
      (0.288 + 0.0019 * 150) * 0.6 * 0.6 * 0.408 * 17.3,
    ],
    [
      "The transmission was counted twice, as with radiation measured inside",
      AUTUMN_HOUSE,
      ((1.339 - 0.00288 * 280) * 0.7 * 0.7 * 0.408 * 11.2) / 25.4,
    ],
    [
      "The part held back was taken for the part let through",
      SPRING_HOUSE,
      (0.288 + 0.0019 * 150) * 0.4 * 0.408 * 17.3,
    ],
    [
      "The part held back was taken for the part let through",
      AUTUMN_HOUSE,
      ((1.339 - 0.00288 * 280) * 0.3 * 0.408 * 11.2) / 25.4,
    ],
    [IN_MJ, SPRING_HOUSE, (0.288 + 0.0019 * 150) * 0.6 * 17.3],
    [IN_MJ, AUTUMN_HOUSE, ((1.339 - 0.00288 * 280) * 0.7 * 11.2) / 25.4],
  ],
  ET0_HARGREAVES: [
    [IN_MJ, C_DAY, 0.0023 * (23.5 + 17.8) * Math.sqrt(15.4) * above(37.4, 200)],
    [IN_MJ, F_DAY, (0.0023 * (celsius(74.2) + 17.8) * Math.sqrt(28.2 / 1.8) * above(37.4, 200)) / 25.4],
    [
      "No square root was drawn: the temperature range itself was multiplied in",
      C_DAY,
      0.0023 * (23.5 + 17.8) * 15.4 * 0.408 * above(37.4, 200),
    ],
    [
      "No square root was drawn: the temperature range itself was multiplied in",
      F_DAY,
      (0.0023 * (celsius(74.2) + 17.8) * (28.2 / 1.8) * 0.408 * above(37.4, 200)) / 25.4,
    ],
    [SIGN, C_DAY, 0.0023 * (23.5 + 17.8) * Math.sqrt(15.4) * 0.408 * above(-37.4, 200)],
    [SIGN, F_DAY, (0.0023 * (celsius(74.2) + 17.8) * Math.sqrt(28.2 / 1.8) * 0.408 * above(-37.4, 200)) / 25.4],
  ],
  ET0_PENMAN_MONTEITH: [
    [AT_MAST, STATION, stationDay({ wind: 3.1 })],
    [AT_MAST, US_STATION, usStationDay({ wind: 6.9 * MPH })],
    ["The wind in km/h was typed as m/s", STATION, stationDay({ wind: 3.1 * 3.6 * toTwoMetres(6) })],
    ["The wind in km/h was typed as m/s", { ...STATION, wind_height: null }, stationDay({ wind: 3.1 * 3.6 })],
    ["The wind in km/h was typed as m/s", US_STATION, NaN],
    [HUMIDITIES, STATION, stationDay({ actual: (CN * 0.46 + CX * 0.83) / 2 })],
    [HUMIDITIES, US_STATION, usStationDay({ actual: (FN * 0.46 + FX * 0.83) / 2 })],
    [SIGN, STATION, stationDay({ above: above(-41.5, 160) })],
    [SIGN, { ...STATION, latitude: -41.5 }, stationDay({ above: above(41.5, 160) })],
    [SIGN, US_STATION, usStationDay({ above: above(-41.5, 160) })],
    ["The elevation in feet was typed as metres", STATION, stationDay({ height: 320 / FOOT })],
    ["The elevation in feet was typed as metres", US_STATION, NaN],
  ],
  EXTRATERRESTRIAL_RADIATION: [
    [SIGN, SUMMER, above(-37.4, 200)],
    [SIGN, { ...SUMMER, latitude: -28.6 }, above(28.6, 200)],
    [SINE, SUMMER, sky(37.4, 200).above],
    [SINE, { latitude: -28.6, date: serialOfDay(45) }, sky(-28.6, 45).above],
    [IN_WATER, SUMMER, 0.408 * above(37.4, 200)],
  ],
  PAN_COEFFICIENT: [
    ["Green and dry surroundings were swapped", { ...M_PAN, surroundings: "green" }, dryPan(2.6, 60, 57)],
    ["Green and dry surroundings were swapped", { ...M_PAN, surroundings: "dry" }, greenPan(2.6, 60, 57)],
    [
      "Green and dry surroundings were swapped",
      { ...FT_PAN, surroundings: "green" },
      dryPan(6.3 * MPH, 210 * FOOT, 57),
    ],
    [
      "The factor was turned over: evaporation of the pan over the reference",
      { ...M_PAN, surroundings: "green" },
      1 / greenPan(2.6, 60, 57),
    ],
    [
      "The factor was turned over: evaporation of the pan over the reference",
      { ...FT_PAN, surroundings: "dry" },
      1 / dryPan(6.3 * MPH, 210 * FOOT, 57),
    ],
    ["The fetch in feet was typed as metres", { ...M_PAN, surroundings: "green" }, greenPan(2.6, 60 / FOOT, 57)],
    ["The fetch in feet was typed as metres", { ...M_PAN, surroundings: "dry" }, dryPan(2.6, 60 / FOOT, 57)],
    ["The fetch in feet was typed as metres", { ...FT_PAN, surroundings: "dry" }, NaN],
  ],
  PLANT_WATER_DEMAND: [
    ["The crop coefficient was left out", MM_DEMAND, 4.5 * 0.17 * 0.7],
    ["The crop coefficient was left out", IN_DEMAND, 0.23 * 3.4 * INCH_FOOT],
    ["The unit constant was left out: depth x area is not yet a volume", IN_DEMAND, 0.23 * 1.3 * 3.4],
    ["The unit constant was left out: depth x area is not yet a volume", MM_DEMAND, NaN],
    ["Demand was divided by the crop coefficient", MM_DEMAND, (4.5 * 0.17 * 0.7) / 0.8],
    ["Demand was divided by the crop coefficient", IN_DEMAND, (0.23 * 3.4 * INCH_FOOT) / 1.3],
  ],
  SOLAR_FROM_SUNSHINE: [
    [
      "The radiation that clouds let through (0.25) was left out",
      SUN,
      ((0.5 * 7.3) / hours(37.4, 200)) * above(37.4, 200),
    ],
    ["Sunshine was divided by 24 hours, not by the day's length", SUN, (0.25 + (0.5 * 7.3) / 24) * above(37.4, 200)],
    [SIGN, SUN, (0.25 + (0.5 * 7.3) / hours(-37.4, 200)) * above(-37.4, 200)],
    // On that side of the equator the day is shorter than the sunshine.
    [SIGN, { ...SUN, sunshine_hours: 12.5 }, NaN],
    [IN_WATER, SUN, 0.408 * (0.25 + (0.5 * 7.3) / hours(37.4, 200)) * above(37.4, 200)],
  ],
  VAPOR_PRESSURE_DEFICIT: [
    ["Saturation was taken at the mean temperature", C_AIR, saturation(20.8) - (CN * 0.83 + CX * 0.46) / 2],
    ["Saturation was taken at the mean temperature", F_AIR, saturation(celsius(69.45)) - (FN * 0.83 + FX * 0.46) / 2],
    [HUMIDITIES, C_AIR, (CX + CN) / 2 - (CN * 0.46 + CX * 0.83) / 2],
    [HUMIDITIES, F_AIR, (FX + FN) / 2 - (FN * 0.46 + FX * 0.83) / 2],
    [
      "The mean humidity was taken, which puts moist nights and dry days together",
      C_AIR,
      ((CX + CN) / 2) * (1 - 0.645),
    ],
    [
      "The mean humidity was taken, which puts moist nights and dry days together",
      F_AIR,
      ((FX + FN) / 2) * (1 - 0.645),
    ],
    ["The vapour pressure was given, not what it lacks", C_AIR, (CN * 0.83 + CX * 0.46) / 2],
    ["The vapour pressure was given, not what it lacks", F_AIR, (FN * 0.83 + FX * 0.46) / 2],
  ],
  WIND_AT_2M: [
    [AT_MAST, M_MAST, 3.1],
    [AT_MAST, FT_MAST, 7.2],
    ["It was divided by the factor, not multiplied", M_MAST, 3.1 / toTwoMetres(6)],
    ["It was divided by the factor, not multiplied", FT_MAST, 7.2 / toTwoMetres(20 * FOOT)],
    ["The decimal logarithm was taken for the natural one", M_MAST, 3.1 * toTwoMetres(6, Math.log10)],
    ["The decimal logarithm was taken for the natural one", FT_MAST, 7.2 * toTwoMetres(20 * FOOT, Math.log10)],
    ["The height in feet was typed as metres", M_MAST, 3.1 * toTwoMetres(6 / FOOT)],
    ["The height in feet was typed as metres", FT_MAST, NaN],
  ],
};

expectMistakesOfGroup("Weather and demand", MISTAKES);
