import { cite, defineFunction, silentShowFor, UNITS_PARAM, type NumberParam } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { DATE_PARAM, LATITUDE_PARAM } from "./dayOfYear";
import { penmanMonteith, type PenmanMonteithDay } from "./penmanMonteith";
import { SOLAR_PARAM } from "./radiation";
import { TMAX_PARAM, TMIN_PARAM } from "./temperature";
import { RH_MAX_PARAM, RH_MIN_PARAM } from "./vaporPressure";
import { WIND_HEIGHT, WIND_PARAM } from "./wind";

export const ELEVATION_PARAM = {
  quantity: "length",
  symbol: "h",
  atLeast: -500,
  atMost: 9000,
  guard: "no land lies outside these",
  about: "Elevation above sea level; 0 is a value, so leave no blank",
} as const satisfies NumberParam;

interface StationDay {
  readonly tmax: number;
  readonly tmin: number;
  readonly rh_max: number;
  readonly rh_min: number;
  readonly wind_speed: number;
  readonly solar_radiation: number;
  readonly latitude: number;
  readonly elevation: number;
  readonly date: number;
  readonly wind_height: number | null;
}

function dayOf(given: StationDay): PenmanMonteithDay {
  return {
    tmax: given.tmax,
    tmin: given.tmin,
    rhMax: given.rh_max,
    rhMin: given.rh_min,
    wind: given.wind_speed,
    windHeight: given.wind_height,
    solar: given.solar_radiation,
    latitude: given.latitude,
    elevation: given.elevation,
    date: given.date,
  };
}

export const et0PenmanMonteith = defineFunction({
  name: "ET0_PENMAN_MONTEITH",
  group: "Weather and demand",
  summary: "Reference evapotranspiration of a day from temperature, humidity, wind and sun",
  formula: "ET0 = (0.408 D Rn + gamma 900 / (T + 273) u2 (es - ea)) / (D + gamma (1 + 0.34 u2))",
  source: [cite("FAO56", "Eq. 6, with Eqs 7, 8, 11 to 13, 17, 21 to 25, 37 to 40, 47")],
  assumptions: [
    "Daily step, soil heat flux 0, grass reference. Clear-sky radiation by Eq. 37; the ratio to it is limited to 1.",
    "Outdoor weather; inside a house, where the wind is close to 0, use ET0_GREENHOUSE.",
    "No floor is put on the wind; where it is 0 or not known, FAO-56 advises 0.5 m/s (1.1 mph) or more.",
    "A result below 0 (dew) is given as 0.",
    ONE_CASE,
  ],
  params: {
    tmax: TMAX_PARAM,
    tmin: TMIN_PARAM,
    rh_max: RH_MAX_PARAM,
    rh_min: RH_MIN_PARAM,
    wind_speed: WIND_PARAM,
    solar_radiation: SOLAR_PARAM,
    latitude: LATITUDE_PARAM,
    elevation: ELEVATION_PARAM,
    date: DATE_PARAM,
    units: UNITS_PARAM,
    wind_height: {
      ...WIND_HEIGHT,
      mayBeLeftOut: true,
      about: "Height of the anemometer; left out, the wind is that at 2 m (6.56 ft)",
    },
  },
  result: {
    quantity: "water depth per day",
    symbol: "ET0",
    about: "Reference evapotranspiration of the day",
    usual: {
      us: [0.02, 0.5],
      metric: [0.5, 12],
      source: cite("FAO56", "Table 2, average reference evapotranspiration"),
    },
  },
  examples: [
    {
      given: {
        tmax: 21.5,
        tmin: 12.3,
        rh_max: 84,
        rh_min: 63,
        wind_speed: 10 / 3.6,
        solar_radiation: 22.07,
        latitude: 50.8,
        elevation: 100,
        date: 42191,
        units: "metric",
        wind_height: 10,
      },
      gives: 3.88,
      within: 0.02,
      from: cite("FAO56", "Example 18, Uccle, 6 July: wind 10 km/h at 10 m"),
    },
    {
      given: {
        tmax: 70.7,
        tmin: 54.14,
        rh_max: 84,
        rh_min: 63,
        wind_speed: 4.65,
        solar_radiation: 22.07,
        latitude: 50.8,
        elevation: 328,
        date: 42191,
        units: "us",
      },
      gives: 0.1528,
      within: 0.0008,
      from: cite("FAO56", "Example 18 in F, mph at 2 m and ft: 3.88 mm = 0.1528 in"),
    },
  ],
  mistakes: [
    {
      slip: "The wind at the mast was taken as wind at 2 m",
      instead: () => ({ wind_height: null }),
    },
    {
      slip: "The wind in km/h was typed as m/s",
      instead: ({ wind_speed, units }) => ({ wind_speed: units === "metric" ? wind_speed * 3.6 : NaN }),
    },
    {
      slip: "The highest and the lowest humidity were swapped",
      answer: (given) =>
        penmanMonteith({ ...dayOf(given), rhMax: given.rh_min, rhMin: given.rh_max }, silentShowFor(given.units)),
    },
    {
      slip: "The latitude was given the sign of the other hemisphere",
      instead: ({ latitude }) => ({ latitude: -latitude }),
    },
    {
      slip: "The elevation in feet was typed as metres",
      instead: ({ elevation, units }) => ({ elevation: units === "metric" ? elevation / 0.3048 : NaN }),
    },
  ],
  seeAlso: ["ET0_HARGREAVES", "ET0_TABLE", "SOLAR_FROM_SUNSHINE", "WIND_AT_2M", "ET0_GREENHOUSE", "PLANT_WATER_DEMAND"],
  caution: "An estimate for a reference surface; a single day may be 10 to 20 % off. Check with a weighed pot.",
  compute(given, show, { refuse }) {
    const { tmax, tmin, rh_max, rh_min } = given;
    if (tmin > tmax) throw refuse("tmin", tmin, `it must be tmax (${tmax}) or less`);
    if (rh_min > rh_max) throw refuse("rh_min", rh_min, `it must be rh_max (${rh_max}) or less (%)`);
    return penmanMonteith(dayOf(given), show);
  },
});
