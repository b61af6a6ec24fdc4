import { cite, defineFunction, silentShowFor } from "../../../kernel";
import { DATE_PARAM, LATITUDE_PARAM } from "./dayOfYear";
import { daylight, sunOf } from "./radiation";

export const daylightHours = defineFunction({
  name: "DAYLIGHT_HOURS",
  group: "Weather and demand",
  summary: "Hours from sunrise to sunset",
  formula: "N = 24 / pi ws",
  source: cite("FAO56", "Eq. 34, with Eqs 22, 24 and 25"),
  assumptions: [
    "From the centre of the sun on a level horizon to the same, without refraction. An almanac counts the upper edge and refraction: about 7 minutes more at the equator, 10 at 45 degrees. Twilight, which plants kept by day length also see, is longer.",
    "A polar night has 0 hours and a polar day 24. Day 366 counts over 365.",
    "The declination is a plain wave, up to 1.3 degrees off in mid-October: 12 minutes at 50 degrees, and less than 2 near midsummer and midwinter.",
  ],
  params: { latitude: LATITUDE_PARAM, date: DATE_PARAM },
  result: {
    quantity: "hours",
    symbol: "N",
    about: "Length of the day",
    usual: { us: [5, 19], metric: [5, 19], source: cite("FAO56", "Eq. 34 up to 60 degrees of latitude") },
  },
  examples: [
    {
      given: { latitude: -20, date: 42250 },
      gives: 11.7,
      within: 0.051,
      from: cite("FAO56", "Example 9, 20 degrees south, 3 September (day 246)"),
    },
    {
      given: { latitude: 50.8, date: 42191 },
      gives: 16.1,
      within: 0.051,
      from: cite("FAO56_RECALLED", "Example 18, Uccle, 6 July (day 187)"),
    },
  ],
  mistakes: [
    {
      slip: "The latitude was given the sign of the other hemisphere",
      instead: ({ latitude }) => ({ latitude: -latitude }),
    },
    {
      slip: "Degrees went into the tangent where radians belong",
      answer: ({ latitude, date }) => {
        const silent = silentShowFor(null);
        return daylight(sunOf((latitude * 180) / Math.PI, date, silent), silent);
      },
    },
    {
      slip: "The hours from noon to sunset were taken for the whole day",
      answer: (_given, _constants, right) => right / 2,
    },
  ],
  seeAlso: ["EXTRATERRESTRIAL_RADIATION", "SOLAR_FROM_SUNSHINE"],
  compute({ latitude, date }, show) {
    return daylight(sunOf(latitude, date, show), show);
  },
});
