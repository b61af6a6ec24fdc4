import { cite, defineFunction } from "../../../kernel";
import {
  AMOUNTS_NOT_SECONDS,
  DAY_OF_THE_TEST,
  READINGS_PARAM,
  STATISTICAL_USUAL,
  ZEROS_PARAM,
  SIXTEEN_CATCHES,
} from "./readings";
import { mean, meanDeviation, NO_MEAN, showCount, showCv, showMean } from "./spread";

export const statisticalUniformity = defineFunction({
  name: "STATISTICAL_UNIFORMITY",
  group: "Flow and uniformity",
  summary: "How alike drippers or stakes run: 1 minus their coefficient of variation",
  formula: "Us = 1 - s / m",
  source: [
    cite("BRALTS_KESNER", "statistical uniformity of drip systems"),
    cite("SOILS456", "above 0.80, better 0.90"),
  ],
  assumptions: [
    "s is the standard deviation of a sample, with n - 1. With n the zone would seem more even: s is 3 % smaller at 16 readings.",
    "Take 18 emitters or more, over the whole zone.",
    "Very uneven readings, such as many plugged emitters, bring it below 0.",
    AMOUNTS_NOT_SECONDS,
    DAY_OF_THE_TEST,
  ],
  params: { readings: { ...READINGS_PARAM, fewest: 2 }, zeros: ZEROS_PARAM },
  result: { quantity: "fraction", symbol: "Us", about: "Statistical uniformity", usual: STATISTICAL_USUAL },
  examples: [
    {
      given: {
        readings: SIXTEEN_CATCHES,
      },
      gives: 0.7889,
      within: 0.0001,
      from: cite(
        "ARITHMETIC",
        "squares of the deviations from 18.75 add up to 235; sqrt(235 / 15) = 3.958; 1 - 3.958 / 18.75",
      ),
    },
    {
      given: { readings: [[9, 10, 11]] },
      gives: 0.9,
      from: cite("ARITHMETIC", "deviations -1, 0, 1: s = sqrt(2 / 2) = 1; 1 - 1 / 10"),
    },
  ],
  mistakes: [
    {
      slip: "The standard deviation was taken with n, not with n - 1",
      answer: ({ readings: { length } }, _constants, right) => 1 - (1 - right) * Math.sqrt((length - 1) / length),
    },
    {
      slip: "The mean deviation was used: that is Christiansen's coefficient",
      answer: ({ readings }) => 1 - meanDeviation(readings, mean(readings)) / mean(readings),
    },
    {
      slip: "The coefficient of variation was given, not 1 minus it",
      answer: (_given, _constants, right) => 1 - right,
    },
  ],
  seeAlso: ["DU_LOW_QUARTER", "CU_CHRISTIANSEN", "EMISSION_UNIFORMITY", "EMITTER_SURVEY"],
  compute({ readings }, show, { noAnswer }) {
    showCount(readings, show);
    const m = showMean(readings, show);
    if (m === 0) throw noAnswer(NO_MEAN, "readings");
    return show("Us = 1 - Cv", 1 - showCv(readings, m, show), "fraction", "Statistical uniformity");
  },
});
