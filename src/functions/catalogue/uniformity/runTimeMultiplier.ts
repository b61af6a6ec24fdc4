import { cite, defineFunction } from "../../../kernel";
import { DU_USUAL } from "./readings";

export const runTimeMultiplier = defineFunction({
  name: "RUN_TIME_MULTIPLIER",
  group: "Flow and uniformity",
  summary: "How much longer to run an uneven zone where roots share the ground",
  formula: "M = 1 / (0.4 + 0.6 DU)",
  source: [
    cite("AUDITING", "run time multiplier from the low-quarter uniformity"),
    cite("MECHAM2010", "it stands closer to the lower half than to the lower quarter"),
  ],
  assumptions: [
    "0.4 + 0.6 DU stands for the uniformity of the lower half. For a normal spread of the readings the two agree to 1 % down to a DU of 0.70.",
    "Made for turf and beds, where a dry spot drinks from its neighbours. A pot has none: for pots divide by DU itself (GROSS_WATER).",
    "Takes the place of dividing by DU; never use both.",
  ],
  params: {
    uniformity: {
      quantity: "fraction",
      symbol: "DU",
      above: 0,
      atMost: 1,
      about: "Low-quarter uniformity of the zone",
      usual: DU_USUAL,
    },
  },
  result: {
    quantity: "factor",
    symbol: "M",
    about: "Factor on the run time of a perfectly even zone",
    usual: {
      us: [1.03, 1.32],
      metric: [1.03, 1.32],
      high: "mend the system before running it longer",
      source: cite("ARITHMETIC", "DU from 0.95 to 0.60"),
    },
  },
  examples: [
    {
      given: { uniformity: 0.75 },
      gives: 1.1765,
      within: 0.0001,
      from: cite("ARITHMETIC", "0.4 + 0.45 = 0.85; 1 / 0.85"),
    },
    { given: { uniformity: 1 }, gives: 1, from: cite("ARITHMETIC", "a perfectly even zone runs no longer") },
  ],
  mistakes: [
    {
      slip: "The time was divided by the uniformity of the low quarter itself",
      answer: ({ uniformity }) => 1 / uniformity,
    },
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
    { slip: "0.4 and 0.6 were swapped", answer: ({ uniformity }) => 1 / (0.6 + 0.4 * uniformity) },
    { slip: "What is missing to 1 was added", answer: ({ uniformity }) => 2 - uniformity },
  ],
  seeAlso: ["DU_LOW_QUARTER", "GROSS_WATER", "OVERHEAD_RUN_MINUTES"],
  caution: "For pots this leaves the driest quarter short: one pot cannot drink from the next.",
  compute({ uniformity }, show) {
    const half = show("H = 0.4 + 0.6 * DU", 0.4 + 0.6 * uniformity, "fraction", "Stands for the lower half");
    return show("M = 1 / H", 1 / half, "factor", "Run time multiplier");
  },
});
