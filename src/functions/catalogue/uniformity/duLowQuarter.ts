import { cite, defineFunction } from "../../../kernel";
import { lowQuarter } from "./lowQuarter";
import { DU_USUAL, READINGS_PARAM, ZEROS_PARAM } from "./readings";

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
    "Readings must be amounts or flows. Seconds to fill a bottle run the other way: their lowest quarter is the wettest.",
    "Holds for the day, the wind and the pressure of the test.",
  ],
  params: { readings: { ...READINGS_PARAM, fewest: 4 }, zeros: ZEROS_PARAM },
  result: { quantity: "fraction", symbol: "DU", about: "Low-quarter distribution uniformity", usual: DU_USUAL },
  examples: [
    {
      given: {
        readings: [
          [12, 14, 15, 16],
          [16, 17, 18, 18],
          [19, 20, 20, 20],
          [21, 22, 24, 28],
        ],
      },
      gives: 0.76,
      from: cite("ARITHMETIC", "lowest four 12 + 14 + 15 + 16 = 57, mean 14.25; all 300 / 16 = 18.75; 14.25 / 18.75"),
    },
    {
      given: { readings: [[80, 100, 100, 120]] },
      gives: 0.8,
      from: cite("ARITHMETIC", "one reading is the lowest quarter of four: 80 / 100"),
    },
  ],
  mistakes: [
    {
      slip: "The lowest reading was used instead of the lowest quarter",
      answer: ({ readings }) => (Math.min(...readings) * readings.length) / readings.reduce((sum, x) => sum + x, 0),
    },
    {
      slip: "The lowest half was used instead of the lowest quarter",
      answer: ({ readings }) => lowestShare(readings, 2),
    },
    {
      slip: "The quarter was taken from the wet end",
      answer: ({ readings }) =>
        -lowestShare(
          readings.map((x) => -x),
          4,
        ) * -1,
    },
  ],
  seeAlso: ["GROSS_WATER"],
  compute({ readings }, show, { noAnswer }) {
    if (readings.every((reading) => reading === 0)) {
      throw noAnswer("readings are all 0; there is no mean to hold the driest quarter against", "readings");
    }
    return lowQuarter(readings, show);
  },
});

/** The mean of the lowest n-th part over the mean of all. */
function lowestShare(readings: readonly number[], parts: number): number {
  const sorted = [...readings].sort((a, b) => a - b);
  const lowest = sorted.slice(0, Math.ceil(readings.length / parts));
  const mean = (values: readonly number[]): number => values.reduce((sum, x) => sum + x, 0) / values.length;
  return mean(lowest) / mean(sorted);
}
