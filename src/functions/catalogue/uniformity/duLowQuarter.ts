import { cite, defineFunction } from "../../../kernel";
import { DAY_OF_THE_TEST, DU_USUAL, LOWEST_SECONDS, READINGS_PARAM, ZEROS_PARAM, SIXTEEN_CATCHES } from "./readings";
import {
  mean,
  meanDeviation,
  meanOfHighest,
  meanOfLowest,
  NO_MEAN,
  showCount,
  showDu,
  showLowQuarter,
  showMean,
  smallest,
} from "./spread";

export const duLowQuarter = defineFunction({
  name: "DU_LOW_QUARTER",
  group: "Flow and uniformity",
  summary: "How evenly water is spread: the driest quarter against the mean",
  formula: "DU = mean of the lowest quarter / mean of all",
  source: [
    cite("MERRIAM_KELLER", "distribution uniformity of the low quarter"),
    cite("AE194", "low-quarter uniformity"),
  ],
  assumptions: [
    "The lowest quarter is n / 4 readings, rounded up; take a multiple of 4 so that no rule of rounding matters. Rules differ between books.",
    "Of drippers and stakes the same ratio is called field emission uniformity.",
    LOWEST_SECONDS,
    DAY_OF_THE_TEST,
  ],
  params: { readings: { ...READINGS_PARAM, fewest: 4 }, zeros: ZEROS_PARAM },
  result: { quantity: "fraction", symbol: "DU", about: "Low-quarter distribution uniformity", usual: DU_USUAL },
  examples: [
    {
      given: {
        readings: SIXTEEN_CATCHES,
      },
      gives: 0.76,
      from: cite("ARITHMETIC", "lowest four 12 + 14 + 15 + 16 = 57, mean 14.25; all 300 / 16 = 18.75; 14.25 / 18.75"),
    },
    {
      given: { readings: [[80, 100, 100, 120]] },
      gives: 0.8,
      from: cite("ARITHMETIC", "one reading is the lowest quarter of four: 80 / 100"),
    },
    {
      given: { readings: [[10, 20, 30, 40, 50]] },
      gives: 0.5,
      from: cite("ARITHMETIC", "5 / 4 rounded up is 2 readings: 15 / 30"),
    },
  ],
  mistakes: [
    {
      slip: "The lowest reading was used, not the lowest quarter",
      answer: ({ readings }) => smallest(readings) / mean(readings),
    },
    {
      slip: "The lowest half was used, not the lowest quarter",
      answer: ({ readings }) => meanOfLowest(readings, Math.ceil(readings.length / 2)) / mean(readings),
    },
    {
      slip: "The quarter of the readings was rounded down",
      answer: ({ readings }) => meanOfLowest(readings, Math.floor(readings.length / 4)) / mean(readings),
    },
    {
      slip: "The quarter was taken from the wet end",
      answer: ({ readings }) => meanOfHighest(readings, Math.ceil(readings.length / 4)) / mean(readings),
    },
    {
      slip: "The mean deviation was used: that is Christiansen's coefficient",
      answer: ({ readings }) => 1 - meanDeviation(readings, mean(readings)) / mean(readings),
    },
  ],
  seeAlso: ["UNIFORMITY_AUDIT", "CU_CHRISTIANSEN", "GROSS_WATER", "RUN_TIME_MULTIPLIER"],
  caution:
    "Below 0.60 a longer run floods the wet pots before the driest quarter is served: mend the system before scheduling on it.",
  compute({ readings }, show, { noAnswer }) {
    const n = showCount(readings, show);
    const low = showLowQuarter(readings, n, show);
    const m = showMean(readings, show);
    if (m === 0) throw noAnswer(NO_MEAN, "readings");
    return showDu(low, m, show);
  },
});
