import { cite, defineFunction } from "../../../kernel";
import { OVERHEAD_DEPTH_USUAL } from "./overhead";

export const overheadRunMinutes = defineFunction({
  name: "OVERHEAD_RUN_MINUTES",
  group: "Run time, zones, booms, mats",
  summary: "Minutes that sprinklers take to give a depth",
  formula: "t = 60 G / r",
  source: cite("DEFINITION", "depth = rate x time"),
  assumptions: [
    "The gross depth, as OVERHEAD_DEPTH gives it; the losses are in it and are not added here.",
    "The measured rate of the bed (CATCH_RATE), not the one printed for the nozzle.",
    "Long runs outlast what the substrate takes up: give them in parts with PULSE_SCHEDULE or in the cycles of ZONE_SEQUENCE.",
  ],
  params: {
    depth: {
      quantity: "water depth",
      symbol: "G",
      above: 0,
      about: "Gross depth to give",
      usual: OVERHEAD_DEPTH_USUAL,
    },
    application_rate: {
      quantity: "application rate",
      symbol: "r",
      above: 0,
      about: "Measured rate of the sprinklers, in the same unit per hour",
      usual: {
        us: [0.15, 1],
        metric: [4, 25],
        low: "looks like a rate per minute, or like the flow of one nozzle",
        high: "looks like the other unit",
        source: cite("PRACTICE", "nursery sprinklers mostly 0.3 to 0.5 in/h"),
      },
    },
  },
  result: {
    quantity: "minutes",
    symbol: "t",
    about: "Run time",
    usual: {
      us: [10, 240],
      metric: [10, 240],
      low: "very short for sprinklers",
      high: "hours for one bed: check the rate",
      source: cite("PRACTICE", "overhead irrigation of a day"),
    },
  },
  examples: [
    { given: { depth: 0.5, application_rate: 0.4 }, gives: 75, from: cite("ARITHMETIC", "60 x 0.5 / 0.4") },
    {
      given: { depth: 0.2, application_rate: 0.5 },
      gives: 24,
      from: cite("RUN_TIME_CHART", "0.20 in at 0.50 in/h"),
    },
    {
      given: { depth: 15.875, application_rate: 8.642 },
      gives: 110.2,
      within: 0.1,
      from: cite("ARITHMETIC", "12.7 mm / 0.8 = 15.875 mm; 952.5 / 8.642"),
    },
  ],
  mistakes: [
    { slip: "Hours were taken for minutes", answer: (_given, _constants, right) => right / 60 },
    {
      slip: "The ratio was inverted",
      answer: ({ depth, application_rate }) => (60 * application_rate) / depth,
    },
    {
      slip: "Depth and rate were multiplied",
      answer: ({ depth, application_rate }) => 60 * depth * application_rate,
    },
  ],
  seeAlso: ["OVERHEAD_DEPTH", "APPLICATION_RATE", "CATCH_RATE", "PULSE_SCHEDULE"],
  compute({ depth, application_rate: rate }, show) {
    return show("t = 60 * G / r", (60 * depth) / rate, "minutes", "Run time");
  },
});
