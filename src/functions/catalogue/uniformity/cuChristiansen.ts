import { cite, defineFunction } from "../../../kernel";
import {
  AMOUNTS_NOT_SECONDS,
  CU_USUAL,
  DAY_OF_THE_TEST,
  READINGS_PARAM,
  ZEROS_PARAM,
  SIXTEEN_CATCHES,
} from "./readings";
import { mean, meanOfLowest, NO_MEAN, sampleDeviation, showCount, showCu, showMean } from "./spread";

export const cuChristiansen = defineFunction({
  name: "CU_CHRISTIANSEN",
  group: "Flow and uniformity",
  summary: "How evenly sprinklers spread water: all deviations from the mean, wet and dry alike",
  formula: "CU = 1 - sum |x - m| / (n m)",
  source: [
    cite("CHRISTIANSEN1942", "uniformity coefficient"),
    cite("ZOLDOSKE1988", "CU = 100 (1 - D / M), here as a fraction"),
  ],
  assumptions: [
    "Too much and too little count alike, and each reading stands for the same area: cans on a square grid.",
    "It is not the low-quarter uniformity and mostly lies above it: 0.84 against 0.76 for the first example.",
    "Very uneven readings bring it below 0.",
    AMOUNTS_NOT_SECONDS,
    DAY_OF_THE_TEST,
  ],
  params: { readings: { ...READINGS_PARAM, fewest: 2 }, zeros: ZEROS_PARAM },
  result: { quantity: "fraction", symbol: "CU", about: "Christiansen's coefficient of uniformity", usual: CU_USUAL },
  examples: [
    {
      given: {
        readings: SIXTEEN_CATCHES,
      },
      gives: 0.84,
      from: cite(
        "ARITHMETIC",
        "mean 18.75; the eight below lie 24 below in all, the eight above 24 above; 1 - 48 / 300",
      ),
    },
    {
      given: { readings: [[8, 12]] },
      gives: 0.8,
      from: cite("ZOLDOSKE1988", "for a mean of 10, readings of 8 and 12 deviate by 2 each: 1 - 2 / 10"),
    },
  ],
  mistakes: [
    {
      slip: "The lowest quarter was used: that is the low-quarter uniformity",
      answer: ({ readings }) => meanOfLowest(readings, Math.ceil(readings.length / 4)) / mean(readings),
    },
    {
      slip: "The standard deviation was used: that is the statistical uniformity",
      answer: ({ readings }) => 1 - sampleDeviation(readings, mean(readings)) / mean(readings),
    },
    {
      slip: "The sum of the deviations was not divided by the number of readings",
      answer: ({ readings }, _constants, right) => 1 - readings.length * (1 - right),
    },
    { slip: "The part that deviates was given, not 1 minus it", answer: (_given, _constants, right) => 1 - right },
  ],
  seeAlso: ["DU_LOW_QUARTER", "STATISTICAL_UNIFORMITY", "UNIFORMITY_AUDIT"],
  compute({ readings }, show, { noAnswer }) {
    showCount(readings, show);
    const m = showMean(readings, show);
    if (m === 0) throw noAnswer(NO_MEAN, "readings");
    return showCu(readings, m, show);
  },
});
