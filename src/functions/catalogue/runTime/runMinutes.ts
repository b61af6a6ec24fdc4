import { cite, defineFunction } from "../../../kernel";
import { EMITTER_FLOW_PARAM, EMITTERS_PER_PLANT_PARAM, MEASURED_WITHOUT_FILL, RUN_MINUTES_USUAL } from "./emitters";

export const runMinutes = defineFunction({
  name: "RUN_MINUTES",
  group: "Run time, zones, booms, mats",
  summary: "Minutes to give each plant its water",
  formula: "t = 60 V / (n q)",
  source: cite("DEFINITION", "volume = flow x time"),
  assumptions: [
    MEASURED_WITHOUT_FILL,
    "A drip line over pot tops is another case: pots get different numbers of emitters.",
  ],
  params: {
    volume_per_plant: {
      quantity: "volume",
      symbol: "V",
      above: 0,
      about: "Gross water for one plant at this irrigation",
    },
    emitter_flow: EMITTER_FLOW_PARAM,
    emitters_per_plant: { ...EMITTERS_PER_PLANT_PARAM, default: 1 },
  },
  result: {
    quantity: "minutes",
    symbol: "t",
    about: "Run time",
    usual: RUN_MINUTES_USUAL,
  },
  examples: [
    { given: { volume_per_plant: 0.275, emitter_flow: 6 }, gives: 2.75, from: cite("ARITHMETIC", "60 x 0.275 / 6") },
    {
      given: { volume_per_plant: 1.5, emitter_flow: 12 },
      gives: 7.5,
      from: cite("ARITHMETIC", "1.5 L at 12 L/h is 1/8 h"),
    },
    {
      given: { volume_per_plant: 0.706, emitter_flow: 1, emitters_per_plant: 2 },
      gives: 21.18,
      from: cite("ARITHMETIC", "60 x 0.706 / 2"),
    },
  ],
  mistakes: [
    {
      slip: "The flow per hour was taken as flow per minute",
      answer: (_given, _constants, right) => right / 60,
    },
    {
      slip: "The emitters per plant were left out",
      instead: () => ({ emitters_per_plant: 1 }),
    },
    {
      slip: "The emitters per plant were multiplied in, not divided out",
      instead: ({ emitters_per_plant }) => ({ emitters_per_plant: 1 / emitters_per_plant }),
    },
    {
      slip: "The ratio was inverted",
      answer: ({ volume_per_plant, emitter_flow, emitters_per_plant }) =>
        (60 * emitter_flow * emitters_per_plant) / volume_per_plant,
    },
  ],
  seeAlso: [
    "GROSS_WATER",
    "RUN_MINUTES_FROM_ET",
    "DRIP_LINE_RUN_MINUTES",
    "RUN_MINUTES_FROM_LEACHING",
    "PULSE_SCHEDULE",
  ],
  caution:
    "One emitter to a pot has no neighbour: a plugged one dries the plant in hours. Walk the lines on the first hot days.",
  compute({ volume_per_plant: volume, emitter_flow: flow, emitters_per_plant: emitters }, show) {
    const plantFlow = show("Q = q * n", flow * emitters, "emitter flow", "Flow to one plant");
    return show("t = 60 * V / Q", (60 * volume) / plantFlow, "minutes", "Run time");
  },
});
