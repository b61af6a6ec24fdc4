import { cite, defineFunction, UNITS_PARAM, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { WIND_PARAM } from "./wind";

/** FAO-56 Table 7, Class A pan on a green fetch, on symbols um, Fm and RH. */
function greenFetch(wind: number, fetch: number, humidity: number, show: Show): number {
  const logFetch = show("lF = LN(Fm)", Math.log(fetch), "factor", "Logarithm of the fetch in m");
  const logHumidity = show("lH = LN(RH)", Math.log(humidity), "factor", "Logarithm of the humidity in %");
  return show(
    "Kp = 0.108 - 0.0286 * um + 0.0422 * lF + 0.1434 * lH - 0.000631 * lF^2 * lH",
    0.108 - 0.0286 * wind + 0.0422 * logFetch + 0.1434 * logHumidity - 0.000631 * logFetch ** 2 * logHumidity,
    "factor",
    "Pan coefficient, pan among green plants",
  );
}

/** FAO-56 Table 7, Class A pan on a dry fetch, on symbols um, Fm and RH. */
function dryFetch(wind: number, fetch: number, humidity: number, show: Show): number {
  const logFetch = show("lF = LN(Fm)", Math.log(fetch), "factor", "Logarithm of the fetch in m");
  const logWind = show("lu = LN(86.4 * um)", Math.log(86.4 * wind), "factor", "Logarithm of the wind in km a day");
  const ofWind = show(
    "w = 0.00327 * um * lF - 0.00289 * um * lu - 0.00000959 * um * Fm - 0.000162 * um * RH",
    0.00327 * wind * logFetch - 0.00289 * wind * logWind - 0.00000959 * wind * fetch - 0.000162 * wind * humidity,
    "factor",
    "Terms with the wind itself",
  );
  return show(
    "Kp = 0.61 + 0.00341 * RH + w - 0.0106 * lu * lF + 0.00063 * lF^2 * lu",
    0.61 + 0.00341 * humidity + ofWind - 0.0106 * logWind * logFetch + 0.00063 * logFetch ** 2 * logWind,
    "factor",
    "Pan coefficient, pan on dry ground",
  );
}

const FITTED = "range to which the regression was fitted; beyond it the curve means nothing";

export const panCoefficient = defineFunction({
  name: "PAN_COEFFICIENT",
  group: "Weather and demand",
  summary: "Factor from the evaporation of a Class A pan to reference evapotranspiration",
  formula:
    "green: Kp = 0.108 - 0.0286 u2 + 0.0422 ln F + 0.1434 ln RH - 0.000631 (ln F)^2 ln RH; dry: Kp = 0.61 + 0.00341 RH - 0.000162 u2 RH - 0.00000959 u2 F + 0.00327 u2 ln F - 0.00289 u2 ln(86.4 u2) - 0.0106 ln(86.4 u2) ln F + 0.00063 (ln F)^2 ln(86.4 u2)",
  source: [
    cite("FAO56_RECALLED", "Table 7, regressions for the Class A pan: coefficients"),
    cite("FAO56", "Table 5, the numbers that the regressions stand for; Example 22"),
  ],
  assumptions: [
    '"green": the pan stands among short green plants, and fetch is how far they reach upwind. "dry": it stands on dry bare ground, and fetch is how far that reaches upwind.',
    "A Class A pan, level, on its timber, water 5 to 7.5 cm (2 to 3 in) below the rim, no screen, clean. Outdoors; inside a house there is too little wind.",
    "Reference evapotranspiration is this factor x pan evaporation, best as a mean of ten days or more. The regression keeps within 0.08 of the table, within 0.03 on the mean.",
    ONE_CASE,
  ],
  params: {
    surroundings: {
      kind: "word",
      words: ["green", "dry"],
      about: 'Ground upwind of the pan: "green" short green plants, "dry" bare dry ground',
    },
    fetch: {
      quantity: "length",
      symbol: "F",
      atLeast: 1,
      atMost: 1000,
      guard: FITTED,
      about: "How far that ground reaches upwind of the pan",
      hint: "beyond 1000 m (3280 ft) take 1000 m",
    },
    wind_speed: {
      ...WIND_PARAM,
      symbol: "u2",
      atLeast: 1,
      atMost: 8,
      guard: FITTED,
      about: "Mean wind of the day at 2 m (6.56 ft)",
      usual: {
        us: [2.3, 11],
        metric: [1, 5],
        high: "looks like km/h, or like the wind of a high mast",
        source: cite("FAO56", "Table 5, light and moderate wind"),
      },
    },
    rh_mean: {
      quantity: "percent",
      symbol: "RH",
      atLeast: 30,
      atMost: 84,
      guard: FITTED,
      about: "Mean relative humidity of the day, 30 to 84",
      hint: "percent, so 62 and not 0.62",
    },
    units: UNITS_PARAM,
  },
  result: {
    quantity: "factor",
    symbol: "Kp",
    about: "Pan coefficient",
    usual: { us: [0.35, 0.85], metric: [0.35, 0.85], source: cite("FAO56", "Table 5") },
  },
  examples: [
    {
      given: { surroundings: "green", fetch: 1000, wind_speed: 1.9, rh_mean: 73, units: "metric" },
      gives: 0.83,
      within: 0.0051,
      from: cite("FAO56", "Example 22: 7.9 mm x 0.83 = 6.6 mm"),
    },
    {
      given: { surroundings: "dry", fetch: 1000, wind_speed: 1.9, rh_mean: 73, units: "metric" },
      gives: 0.61,
      within: 0.0051,
      from: cite("FAO56_RECALLED", "Example 22, dry fetch"),
    },
    {
      given: { surroundings: "green", fetch: 50, wind_speed: 2.5, rh_mean: 60, units: "metric" },
      gives: 0.7492,
      within: 0.0001,
      from: cite("ARITHMETIC", "0.108 - 0.0715 + 0.0422 x 3.912 + 0.1434 x 4.0943 - 0.000631 x 15.304 x 4.0943"),
    },
    {
      given: { surroundings: "green", fetch: 3280, wind_speed: 4.25, rh_mean: 73, units: "us" },
      gives: 0.83,
      within: 0.0051,
      from: cite("FAO56", "Example 22 in ft and mph"),
    },
  ],
  mistakes: [
    {
      slip: "Green and dry surroundings were swapped",
      instead: ({ surroundings }) => ({ surroundings: surroundings === "green" ? "dry" : "green" }),
    },
    {
      slip: "The factor was turned over: evaporation of the pan over the reference",
      answer: (_given, _constants, right) => 1 / right,
    },
    {
      slip: "The fetch in feet was typed as metres",
      instead: ({ fetch, units }) => ({ fetch: units === "metric" ? fetch / 0.3048 : NaN }),
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "WIND_AT_2M", "ET0_HARGREAVES"],
  caution: "An estimate for a reference surface: algae, birds and a leaking pan spoil it. Check with a weighed pot.",
  compute({ surroundings, fetch, wind_speed, rh_mean }, show) {
    const metres = show.toMetric("Fm = F", fetch, "length", "Fetch, in m");
    const wind = show.toMetric("um = u2", wind_speed, "wind", "Wind at 2 m, in m/s");
    const regression = surroundings === "green" ? greenFetch : dryFetch;
    return regression(wind, metres, rh_mean, show);
  },
});
