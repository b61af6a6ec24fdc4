import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { BOOM_FLOW_PARAM, passDepth, SWATH_WIDTH_PARAM, TRAVEL_SPEED_PARAM } from "./boom";

export const boomDepth = defineFunction({
  name: "BOOM_DEPTH",
  group: "Run time, zones, booms, mats",
  summary: "Depth that one pass of a boom gives",
  formula: "p = Q / (k v W)",
  source: cite("DEFINITION", "depth = flow / area swept in the same time"),
  assumptions: [
    "One pass is one way with the water on. There and back with the water on are two passes.",
    "The mean over the swath: nozzles, their height and overlap make it uneven across (CATCH_RATE, DU_LOW_QUARTER).",
    "Water that falls beside the bench counts in the flow; use the width that is wetted.",
  ],
  params: {
    boom_flow: BOOM_FLOW_PARAM,
    travel_speed: TRAVEL_SPEED_PARAM,
    swath_width: SWATH_WIDTH_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: {
    quantity: "water depth",
    symbol: "p",
    about: "Depth of one pass",
    usual: {
      us: [0.002, 0.2],
      metric: [0.05, 5],
      high: "runs off most trays: check the speed and the width",
      source: cite("PRACTICE", "booms over trays and small pots"),
    },
  },
  examples: [
    {
      given: { boom_flow: 40, travel_speed: 10, swath_width: 8, units: "metric" },
      gives: 0.5,
      from: cite("ARITHMETIC", "40 L on 80 m2 in a minute"),
    },
    {
      given: { boom_flow: 19.2, travel_speed: 25, swath_width: 30, units: "us" },
      gives: 0.04106666666666667,
      from: cite("ARITHMETIC", "19.2 x 231 / 144 = 30.8 ft2 in; / (25 x 30)"),
    },
  ],
  mistakes: [
    {
      slip: "The way there and back was taken for one pass",
      answer: (_given, _constants, right) => 2 * right,
    },
    {
      slip: "The unit constant was left out: volume over area is not yet a depth",
      answer: (_given, { k }, right) => right * k,
    },
    {
      slip: "The flow was taken per hour, or the speed per second",
      answer: (_given, _constants, right) => right / 60,
    },
  ],
  seeAlso: ["BOOM_PLAN", "OVERHEAD_DEPTH"],
  compute({ boom_flow, travel_speed, swath_width }, show, { constants: { k } }) {
    return passDepth({ flow: boom_flow, speed: travel_speed, width: swath_width }, k, "p", show);
  },
});
