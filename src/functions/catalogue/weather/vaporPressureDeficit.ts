import { cite, defineFunction, toMetric, UNITS_PARAM } from "../../../kernel";
import { TMAX_PARAM, TMIN_PARAM } from "./temperature";
import { RH_MAX_PARAM, RH_MIN_PARAM, saturationPressure, vaporPressures } from "./vaporPressure";

/** The day's two temperatures in C, and saturation at each. */
function extremes({ tmax, tmin, units }: { tmax: number; tmin: number; units: "us" | "metric" }) {
  const [maxC, minC] = [toMetric("temperature", tmax, units), toMetric("temperature", tmin, units)];
  return { mean: (maxC + minC) / 2, atMax: saturationPressure(maxC), atMin: saturationPressure(minC) };
}

export const vaporPressureDeficit = defineFunction({
  name: "VAPOR_PRESSURE_DEFICIT",
  group: "Weather and demand",
  summary: "Strength with which the air of a day draws water from leaves",
  formula: "VPD = es - ea",
  source: cite("FAO56", "Eqs 11, 12 and 17"),
  assumptions: [
    "A mean over the day. At midday, at tmax and rh_min, it is far higher; for one moment give that moment's temperature twice and its humidity twice.",
    "Of the air, not of the leaf: a leaf in the sun is warmer than the air.",
    "Saturation over water, also below freezing.",
  ],
  params: { tmax: TMAX_PARAM, tmin: TMIN_PARAM, rh_max: RH_MAX_PARAM, rh_min: RH_MIN_PARAM, units: UNITS_PARAM },
  result: {
    quantity: "vapor pressure",
    symbol: "VPD",
    about: "Mean vapour pressure deficit of the day",
    usual: {
      us: [0.1, 4],
      metric: [0.1, 4],
      low: "wet air: look for a stuck humidity sensor",
      high: "desert air, or a temperature in the other unit",
      source: cite("PRACTICE", "0.3 to 1.5 kPa in houses, to 4 on dry summer days outdoors"),
    },
  },
  examples: [
    {
      given: { tmax: 25, tmin: 18, rh_max: 82, rh_min: 54, units: "metric" },
      gives: 0.91,
      within: 0.0051,
      from: cite("FAO56_RECALLED", "Example 6, with the air of Example 5 (2.616 - 1.70)"),
    },
    {
      given: { tmax: 77, tmin: 64.4, rh_max: 82, rh_min: 54, units: "us" },
      gives: 0.91,
      within: 0.0051,
      from: cite("FAO56_RECALLED", "Example 6, the same air in F"),
    },
  ],
  mistakes: [
    {
      slip: "Saturation was taken at the mean temperature",
      answer: (given, _constants, right) => {
        const { mean, atMax, atMin } = extremes(given);
        return right - (atMax + atMin) / 2 + saturationPressure(mean);
      },
    },
    {
      slip: "The highest and the lowest humidity were swapped",
      answer: (given) => {
        const { atMax, atMin } = extremes(given);
        return (atMax * (1 - given.rh_max / 100) + atMin * (1 - given.rh_min / 100)) / 2;
      },
    },
    {
      slip: "The mean humidity was taken, which puts moist nights and dry days together",
      answer: (given) => {
        const { atMax, atMin } = extremes(given);
        return ((atMax + atMin) / 2) * (1 - (given.rh_max + given.rh_min) / 200);
      },
    },
    {
      slip: "The vapour pressure was given, not what it lacks",
      answer: (given, _constants, right) => {
        const { atMax, atMin } = extremes(given);
        return (atMax + atMin) / 2 - right;
      },
    },
  ],
  seeAlso: ["ET0_PENMAN_MONTEITH", "ET0_GREENHOUSE"],
  compute({ tmax, tmin, rh_max, rh_min }, show, { refuse }) {
    if (tmin > tmax) throw refuse("tmin", tmin, `it must be tmax (${tmax}) or less`);
    if (rh_min > rh_max) throw refuse("rh_min", rh_min, `it must be rh_max (${rh_max}) or less (%)`);
    const maxC = show.toMetric("Tx = Tmax", tmax, "temperature", "Highest temperature, in C");
    const minC = show.toMetric("Tn = Tmin", tmin, "temperature", "Lowest temperature, in C");
    const { atMax, atMin } = vaporPressures(maxC, minC, rh_max, rh_min, show);
    // es - ea, by what each extreme lacks: the difference of the two would leave a dust of digits in saturated air.
    return show(
      "VPD = (en * (100 - RHx) + ex * (100 - RHn)) / 200",
      (atMin * (100 - rh_max) + atMax * (100 - rh_min)) / 200,
      "vapor pressure",
      "What the air lacks to saturation: es - ea, taken at each temperature",
    );
  },
});
