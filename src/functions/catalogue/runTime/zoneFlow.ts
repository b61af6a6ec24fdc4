import { cite, defineFunction } from "../../../kernel";
import { EMITTER_FLOW_PARAM, EMITTERS_PER_PLANT_PARAM } from "./emitters";
import { ZONE_FLOW_USUAL } from "./supply";

export const zoneFlow = defineFunction({
  name: "ZONE_FLOW",
  group: "Run time, zones, booms, mats",
  summary: "Flow that a zone draws while it runs, per minute",
  formula: "Q = N n q / 60",
  source: cite("DEFINITION", "plants x emitters x flow; 60 minutes to the hour"),
  assumptions: [
    "Measured flow of the emitter at the pressure of the zone. Leaks, flushing and filling the line are not in it.",
    "Emitters that do not hold their flow give another one at another pressure: measure again after changing zones.",
  ],
  params: {
    plants: { quantity: "count", symbol: "N", atLeast: 1, whole: true, about: "Plants of the zone" },
    emitters_per_plant: EMITTERS_PER_PLANT_PARAM,
    emitter_flow: EMITTER_FLOW_PARAM,
  },
  result: {
    quantity: "flow",
    symbol: "Q",
    about: "Flow of the zone, in the same volume unit per minute",
    usual: ZONE_FLOW_USUAL,
  },
  examples: [
    {
      given: { plants: 450, emitters_per_plant: 1, emitter_flow: 12 },
      gives: 90,
      from: cite("ARITHMETIC", "450 stakes of 12 L/h = 5,400 L/h"),
    },
    {
      given: { plants: 2400, emitters_per_plant: 2, emitter_flow: 1 },
      gives: 80,
      from: cite("ARITHMETIC", "4,800 gal/h / 60"),
    },
  ],
  mistakes: [
    { slip: "The flow was left per hour", answer: (_given, _constants, right) => right * 60 },
    { slip: "The emitters per plant were left out", instead: () => ({ emitters_per_plant: 1 }) },
    { slip: "It was divided by 60 twice", answer: (_given, _constants, right) => right / 60 },
  ],
  seeAlso: ["ZONES_AT_ONCE", "ZONE_SEQUENCE", "RUN_MINUTES", "EMITTER_FLOW"],
  compute({ plants, emitters_per_plant: emitters, emitter_flow: flow }, show) {
    const perHour = show("Qh = N * n * q", plants * emitters * flow, "emitter flow", "Flow of the zone in an hour");
    return show("Q = Qh / 60", perHour / 60, "flow", "Flow of the zone in a minute");
  },
});
