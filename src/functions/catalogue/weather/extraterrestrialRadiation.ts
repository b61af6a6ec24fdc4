import { cite, defineFunction, silentShowFor } from "../../../kernel";
import { DATE_PARAM, LATITUDE_PARAM } from "./dayOfYear";
import { extraterrestrialRadiation as radiationOf, radiationAbove, sunOf } from "./radiation";

export const extraterrestrialRadiation = defineFunction({
  name: "EXTRATERRESTRIAL_RADIATION",
  group: "Weather and demand",
  summary: "Solar radiation of a day before the air takes its part",
  formula: "Ra = 24 60 / pi 0.082 dr (ws sin phi sin d + cos phi cos d sin ws)",
  source: cite("FAO56", "Eq. 21, with Eqs 22 to 25"),
  assumptions: [
    "A level surface at the top of the atmosphere; the ground gets about 0.25 of it under thick cloud and 0.75 under a clear sky (SOLAR_FROM_SUNSHINE).",
    "The cosine of the sunset angle is held between -1 and 1: a polar night has 0, a polar day the sum of 24 hours. Day 366 counts over 365.",
    "The declination is a plain wave, up to 1.3 degrees off in mid-October: at 50 degrees north 5 % of that day's radiation, over a year less than 2 %.",
  ],
  params: { latitude: LATITUDE_PARAM, date: DATE_PARAM },
  result: {
    quantity: "radiation",
    symbol: "Ra",
    about: "Radiation of the day above the atmosphere",
    usual: {
      us: [2, 46],
      metric: [2, 46],
      low: "check the sign of the latitude and the month",
      source: cite("FAO56", "Eq. 21 up to 60 degrees of latitude"),
    },
  },
  examples: [
    {
      given: { latitude: -20, date: 42250 },
      gives: 32.2,
      within: 0.051,
      from: cite("FAO56", "Example 8, 20 degrees south, 3 September (day 246)"),
    },
    {
      given: { latitude: 50.8, date: 42191 },
      gives: 41.09,
      within: 0.0051,
      from: cite("FAO56", "Example 18, Uccle, 6 July (day 187)"),
    },
  ],
  mistakes: [
    {
      slip: "The latitude was given the sign of the other hemisphere",
      instead: ({ latitude }) => ({ latitude: -latitude }),
    },
    {
      slip: "Degrees went into sine and cosine where radians belong",
      answer: ({ latitude, date }) => radiationOf((latitude * 180) / Math.PI, date, silentShowFor(null)),
    },
    {
      slip: "Radiation was turned into millimetres of water (x 0.408)",
      answer: (_given, _constants, right) => 0.408 * right,
    },
  ],
  seeAlso: ["DAYLIGHT_HOURS", "SOLAR_FROM_SUNSHINE", "ET0_HARGREAVES"],
  compute({ latitude, date }, show) {
    return radiationAbove(sunOf(latitude, date, show), show);
  },
});
