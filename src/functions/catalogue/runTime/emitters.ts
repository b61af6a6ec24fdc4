import { cite, type NumberParam } from "../../../kernel";

export const EMITTER_FLOW_PARAM = {
  quantity: "emitter flow",
  symbol: "q",
  above: 0,
  about: "Measured flow of one emitter, in the same volume unit per hour",
  usual: {
    us: [0.25, 20],
    metric: [1, 76],
    low: "looks like gal/min or L/min",
    high: "looks like mL/min, or like a whole line",
    source: cite("PRACTICE", "drippers from 0.25 gal/h, spray stakes to 20 gal/h"),
  },
} as const satisfies NumberParam;

export const EMITTERS_PER_PLANT_PARAM = {
  quantity: "count",
  symbol: "n",
  above: 0,
  about: "Emitters that serve one plant",
} as const satisfies NumberParam;

/** What the answer in minutes leaves to the grower. */
export const MEASURED_WITHOUT_FILL =
  "The flow is the measured one, not the printed one. The time to fill the line is not in it.";

export const RUN_MINUTES_USUAL = {
  us: [1, 60],
  metric: [1, 60],
  low: "shorter than most lines take to fill",
  high: "look for a slip between per minute and per hour",
  source: cite("PRACTICE", "spray stakes and drippers on pots"),
} as const;
