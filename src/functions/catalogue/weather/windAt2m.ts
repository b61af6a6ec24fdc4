import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { heightFactor, WIND_HEIGHT, WIND_PARAM } from "./wind";

export const windAt2m = defineFunction({
  name: "WIND_AT_2M",
  group: "Weather and demand",
  summary: "Wind at 2 m from the wind of a higher or lower mast",
  formula: "u2 = uz 4.87 / ln(67.8 z - 5.42)",
  source: cite("FAO56", "Eq. 47"),
  assumptions: [
    "Over short grass, with nothing taller near. Over a bed of tall plants or between houses the profile is another.",
    "A daily mean; two steps where a station gives km/h at 10 m: first the unit, then the height.",
  ],
  params: {
    wind_speed: WIND_PARAM,
    height: { ...WIND_HEIGHT, about: "Height of the anemometer above the ground" },
    units: UNITS_PARAM,
  },
  result: {
    quantity: "wind",
    symbol: "u2",
    about: "Mean wind of the day at 2 m (6.56 ft)",
    usual: {
      us: [1, 18],
      metric: [0.5, 8],
      low: "where the wind is not known, FAO-56 takes 2 m/s (4.5 mph)",
      high: "looks like km/h, or like a gust",
      source: cite("FAO56", "Chapter 3, 2 m/s where nothing is known, 0.5 m/s as the floor"),
    },
  },
  examples: [
    {
      given: { wind_speed: 3.2, height: 10, units: "metric" },
      gives: 2.4,
      within: 0.02,
      from: cite("FAO56_RECALLED", "Example 14: 3.2 m/s at 10 m; the factor 0.748 by Table 2.9"),
    },
    {
      given: { wind_speed: 10, height: 33, units: "us" },
      gives: 7.473,
      within: 0.001,
      from: cite("ARITHMETIC", "33 ft = 10.0584 m; 48.7 / ln(681.96 - 5.42) = 48.7 / 6.5170"),
    },
  ],
  mistakes: [
    {
      slip: "The wind at the mast was taken as wind at 2 m",
      answer: ({ wind_speed }) => wind_speed,
    },
    {
      slip: "It was divided by the factor, not multiplied",
      answer: ({ wind_speed }, _constants, right) => (wind_speed * wind_speed) / right,
    },
    {
      slip: "The decimal logarithm was taken for the natural one",
      answer: (_given, _constants, right) => right * Math.LN10,
    },
    {
      slip: "The height in feet was typed as metres",
      instead: ({ height, units }) => ({ height: units === "metric" ? height / 0.3048 : NaN }),
    },
  ],
  seeAlso: ["ET0_PENMAN_MONTEITH", "ET0_TABLE", "PAN_COEFFICIENT"],
  compute({ wind_speed: wind, height }, show) {
    return show("u2 = uz * fz", wind * heightFactor(height, show), "wind", "Wind at 2 m");
  },
});
