import { cite, defineFunction, shortNumber, silentShowFor } from "../../../kernel";
import { DATE_PARAM, LATITUDE_PARAM } from "./dayOfYear";
import { daylight, extraterrestrialRadiation, radiationAbove, SOLAR_PARAM, sunOf } from "./radiation";

function radiationOf(latitude: number, date: number): number {
  return extraterrestrialRadiation(latitude, date, silentShowFor(null));
}

export const solarFromSunshine = defineFunction({
  name: "SOLAR_FROM_SUNSHINE",
  group: "Weather and demand",
  summary: "Solar radiation of a day from its hours of bright sunshine",
  formula: "Rs = (0.25 + 0.50 n / N) Ra",
  source: cite("FAO56", "Eq. 35 with 0.25 and 0.50, N by Eq. 34, Ra by Eq. 21"),
  assumptions: [
    "0.25 and 0.50 stand where no local ones were fitted. An estimate: a measured radiation comes first.",
    "Sunshine of 0 is an overcast day, 0.25 Ra.",
    "Hours of a sunshine recorder on one day, or the mean of a month on its middle day. A polar night has 0.",
  ],
  params: {
    sunshine_hours: {
      quantity: "hours",
      symbol: "n",
      atLeast: 0,
      atMost: 24,
      about: "Bright sunshine of the day; 0 is a value, so leave no blank",
      hint: "hours and decimals, not minutes",
    },
    latitude: LATITUDE_PARAM,
    date: DATE_PARAM,
  },
  result: {
    quantity: "radiation",
    symbol: "Rs",
    about: "Solar radiation of the day at the ground",
    usual: SOLAR_PARAM.usual,
  },
  examples: [
    {
      given: { sunshine_hours: 9.25, latitude: 50.8, date: 42191 },
      gives: 22.07,
      within: 0.0051,
      from: cite("FAO56", "Example 18, Uccle, 6 July (day 187)"),
    },
    {
      given: { sunshine_hours: 7.1, latitude: -22.9, date: 42139 },
      gives: 14.5,
      within: 0.051,
      from: cite("FAO56", "Examples 10 and 12, Rio de Janeiro, May (day 135): 220 h in the month"),
    },
  ],
  mistakes: [
    {
      slip: "The radiation that clouds let through (0.25) was left out",
      answer: ({ latitude, date }, _constants, right) => right - 0.25 * radiationOf(latitude, date),
    },
    {
      slip: "Sunshine was divided by 24 hours, not by the day's length",
      answer: ({ sunshine_hours, latitude, date }) =>
        (0.25 + (0.5 * sunshine_hours) / 24) * radiationOf(latitude, date),
    },
    {
      slip: "The latitude was given the sign of the other hemisphere",
      instead: ({ latitude }) => ({ latitude: -latitude }),
    },
    {
      slip: "Radiation was turned into millimetres of water (x 0.408)",
      answer: (_given, _constants, right) => 0.408 * right,
    },
  ],
  seeAlso: ["ET0_PENMAN_MONTEITH", "ET0_GREENHOUSE", "DAYLIGHT_HOURS", "EXTRATERRESTRIAL_RADIATION"],
  compute({ sunshine_hours: sunshine, latitude, date }, show, { refuse }) {
    const sun = sunOf(latitude, date, show);
    const day = daylight(sun, show);
    if (sunshine > day) {
      throw refuse("sunshine_hours", sunshine, `it must be the day's length (${shortNumber(day)} h) or less`);
    }
    const above = radiationAbove(sun, show);
    return show(
      "Rs = IF(N > 0, (0.25 + 0.5 * n / N) * Ra, 0)",
      day > 0 ? (0.25 + (0.5 * sunshine) / day) * above : 0,
      "radiation",
      "Radiation at the ground; none in a polar night",
    );
  },
});
