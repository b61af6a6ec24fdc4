import { cite, defineFunction } from "../../../kernel";
import { SECONDS_PARAM, SECONDS_PER_MINUTE } from "./seconds";

export const bucketFlow = defineFunction({
  name: "BUCKET_FLOW",
  group: "Flow and uniformity",
  summary: "What a hose, valve or pump really gives, from the seconds it takes to fill a bucket",
  formula: "Q = 60 V / s",
  source: cite("DEFINITION", "flow = volume / time"),
  assumptions: [
    "Volume up to the mark that was reached, not the size printed on the bucket: weigh it full and empty once (1 kg is 1 L, 8.345 lb are 1 US gallon).",
    "An imperial bucket holds 1.2 times as many US gallons as it says.",
    "An open hose flows more than the same valve does against a zone: this is the most that the supply gives at that pressure.",
  ],
  params: {
    volume: {
      quantity: "volume",
      symbol: "V",
      above: 0,
      about: "Water caught",
      usual: {
        us: [0.5, 60],
        metric: [2, 230],
        low: "looks like an emitter: see EMITTER_FLOW",
        high: "larger than a drum",
        source: cite("PRACTICE", "a pail to a drum"),
      },
    },
    seconds: SECONDS_PARAM,
  },
  result: {
    quantity: "flow",
    symbol: "Q",
    about: "Flow per minute, in the unit of the volume",
    usual: {
      us: [0.5, 60],
      metric: [2, 230],
      low: "looks like a single emitter, or like seconds typed too long",
      high: "more than a bucket can take",
      source: cite("PRACTICE", "hoses and small valves"),
    },
  },
  examples: [
    { given: { volume: 5, seconds: 30 }, gives: 10, from: cite("ARITHMETIC", "5 gal in half a minute") },
    { given: { volume: 20, seconds: 48 }, gives: 25, from: cite("ARITHMETIC", "60 x 20 / 48") },
  ],
  mistakes: [
    { slip: "The flow was left per second", answer: (_given, _constants, right) => right / 60 },
    { slip: "The flow was given per hour", answer: (_given, _constants, right) => right * 60 },
    { slip: "The time was taken as a whole minute", answer: ({ volume }) => volume },
    { slip: "The ratio was inverted: minutes over volume", answer: (_given, _constants, right) => 1 / right },
  ],
  seeAlso: ["EMITTER_FLOW", "ZONES_AT_ONCE", "FILL_MINUTES", "LINE_FILL_MINUTES"],
  compute({ volume, seconds }, show) {
    return show("Q = 60 * V / s", (SECONDS_PER_MINUTE * volume) / seconds, "flow", "Flow per minute");
  },
});
