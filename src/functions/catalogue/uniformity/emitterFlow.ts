import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { SECONDS_PARAM } from "./seconds";

const SECONDS_PER_HOUR = 3600;

export const emitterFlow = defineFunction({
  name: "EMITTER_FLOW",
  group: "Flow and uniformity",
  summary: "What a dripper or spray stake really gives, from a catch in mL",
  formula: "q = V / s, per hour",
  source: [
    cite("DEFINITION", "flow = volume / time"),
    cite("UCCE_SONOMA", "water of 30 seconds in a 100 mL cylinder, converted to gal/h"),
  ],
  assumptions: [
    "Measure under the pressure of a usual irrigation, once the line is full: at the head, in the middle and at the tail of the zone, four each.",
    "A catch of 0 is a plugged emitter.",
    "Of many emitters take the mean of the flows. The mean of the times to fill a bottle gives too low a flow.",
  ],
  params: {
    catch_ml: {
      quantity: "catch",
      symbol: "V",
      atLeast: 0,
      about: "Water caught under one emitter, mL; 0 is a value, so leave no blank",
      usual: {
        us: [5, 1000],
        metric: [5, 1000],
        low: "looks like litres or ounces, or like an emitter nearly plugged",
        high: "looks like a whole line",
        source: cite("PRACTICE", "half a minute under drippers and spray stakes"),
      },
    },
    seconds: SECONDS_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { k: "emitter flow of a catch" },
  result: {
    quantity: "emitter flow",
    symbol: "q",
    about: "Flow of the emitter; mL in both systems give gal/h or L/h",
    usual: {
      us: [0.25, 20],
      metric: [1, 76],
      low: "nearly plugged, or the seconds were minutes",
      high: "looks like a whole line",
      source: cite("PRACTICE", "drippers from 0.25 gal/h, spray stakes to 20 gal/h"),
    },
  },
  examples: [
    {
      given: { catch_ml: 63.0902, seconds: 60, units: "us" },
      gives: 1,
      within: 0.00001,
      from: cite("ARITHMETIC", "1 gal is 3785.411784 mL: 63.0902 mL a minute are 1 gal/h"),
    },
    {
      given: { catch_ml: 100, seconds: 30, units: "metric" },
      gives: 12,
      from: cite("ARITHMETIC", "100 mL in half a minute, 200 mL a minute, 12 L an hour"),
    },
    {
      given: { catch_ml: 190, seconds: 30, units: "us" },
      gives: 6.023,
      within: 0.0005,
      from: cite("ARITHMETIC", "380 mL a minute over 63.0902 mL a minute"),
    },
  ],
  mistakes: [
    {
      slip: "Seconds were taken as minutes, or the flow was left per minute",
      answer: (_given, _constants, right) => right / 60,
    },
    {
      slip: "The catch was taken as that of a whole minute",
      answer: ({ catch_ml }, { k }) => (k * catch_ml) / 60,
    },
    {
      slip: "The flow was left in mL per hour",
      answer: ({ catch_ml, seconds }) => (SECONDS_PER_HOUR * catch_ml) / seconds,
    },
    {
      slip: "The ratio was inverted: seconds over catch",
      answer: ({ catch_ml, seconds }, { k }) => (k * seconds) / catch_ml,
    },
  ],
  seeAlso: ["EMITTER_SURVEY", "DU_LOW_QUARTER", "RUN_MINUTES", "ZONE_FLOW"],
  caution:
    "One emitter to a pot has no neighbour: a plugged one dries the plant in hours. Walk the lines on the first hot days.",
  compute({ catch_ml, seconds }, show, { constants: { k } }) {
    return show("q = k * V / s", (k * catch_ml) / seconds, "emitter flow", "Flow of the emitter");
  },
});
