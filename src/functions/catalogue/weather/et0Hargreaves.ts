import { cite, defineFunction, toMetric, UNITS_PARAM } from "../../../kernel";
import { DATE_PARAM, LATITUDE_PARAM } from "./dayOfYear";
import { hargreaves } from "./hargreaves";
import { TMAX_PARAM, TMIN_PARAM } from "./temperature";

export const et0Hargreaves = defineFunction({
  name: "ET0_HARGREAVES",
  group: "Weather and demand",
  summary: "Reference evapotranspiration of a day from its highest and lowest temperature",
  formula: "ET0 = 0.0023 (T + 17.8) sqrt(Tmax - Tmin) 0.408 Ra",
  source: cite("FAO56", "Eq. 52, with Ra by Eqs 21 to 25"),
  assumptions: [
    "For days without humidity, wind and sun; good over five days or more, rough for a single one. Windy or humid places differ: compare with a station.",
    "Outdoor weather; inside a house, where the wind is close to 0, use ET0_GREENHOUSE.",
    "Grass reference, so the crop coefficient must be on grass too.",
    "Below a mean of -17.8 C (0 F) the formula turns negative; the answer is then 0.",
  ],
  params: { tmax: TMAX_PARAM, tmin: TMIN_PARAM, latitude: LATITUDE_PARAM, date: DATE_PARAM, units: UNITS_PARAM },
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
      given: { tmax: 26.6, tmin: 14.8, latitude: 45.72, date: 42200, units: "metric" },
      gives: 5.0,
      within: 0.051,
      from: cite("FAO56", "Example 20, Lyon, July (day 196), closing line"),
    },
    {
      given: { tmax: 79.88, tmin: 58.64, latitude: 45.72, date: 42200, units: "us" },
      gives: 0.197,
      within: 0.0021,
      from: cite("FAO56", "Example 20: the same day in F, 5.0 mm = 0.197 in"),
    },
  ],
  mistakes: [
    {
      slip: "Radiation was left in MJ, not turned into millimetres of water (x 0.408)",
      answer: (_given, _constants, right) => right / 0.408,
    },
    {
      slip: "No square root was drawn: the temperature range itself was multiplied in",
      answer: ({ tmax, tmin, units }, _constants, right) =>
        right * Math.sqrt(toMetric("temperature difference", tmax - tmin, units)),
    },
    {
      slip: "The latitude was given the sign of the other hemisphere",
      instead: ({ latitude }) => ({ latitude: -latitude }),
    },
  ],
  seeAlso: ["ET0_TABLE", "ET0_PENMAN_MONTEITH", "ET0_GREENHOUSE", "PLANT_WATER_DEMAND"],
  caution: "An estimate for a reference surface; a single day may be 10 to 20 % off. Check with a weighed pot.",
  compute({ tmax, tmin, latitude, date }, show, { refuse }) {
    if (tmin > tmax) throw refuse("tmin", tmin, `it must be tmax (${tmax}) or less`);
    return hargreaves({ tmax, tmin, latitude, date }, show);
  },
});
