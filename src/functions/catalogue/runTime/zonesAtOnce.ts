import { cite, defineFunction } from "../../../kernel";
import { wholeDown, wholeUp } from "../wholeNumbers";
import { SUPPLY_FLOW_PARAM, ZONE_FLOW_USUAL } from "./supply";

export const zonesAtOnce = defineFunction({
  name: "ZONES_AT_ONCE",
  group: "Run time, zones, booms, mats",
  summary: "Equal zones that the supply carries at the same time",
  formula: "n = S / Q, rounded down",
  source: cite("DEFINITION", "whole zones within the supply"),
  assumptions: [
    "Zones of one flow. For zones that differ, ZONE_SEQUENCE puts them together in their order.",
    "0 is an answer: the zone is bigger than the supply and must be split into valves.",
    "Count on 90 % of the measured flow: filters load up and pumps wear. Pressure must hold too, at the farthest zone.",
  ],
  params: {
    supply_flow: SUPPLY_FLOW_PARAM,
    zone_flow: {
      quantity: "flow",
      symbol: "Q",
      above: 0,
      about: "Flow of one zone, in the same unit",
      usual: ZONE_FLOW_USUAL,
    },
  },
  result: { quantity: "count", symbol: "n", about: "Whole zones at once; 0 where one zone is too big" },
  examples: [
    {
      given: { supply_flow: 250, zone_flow: 60 },
      gives: 4,
      from: cite("ARITHMETIC", "250 / 60 = 4.17: four zones draw 240"),
    },
    {
      given: { supply_flow: 120, zone_flow: 45 },
      gives: 2,
      from: cite("ARITHMETIC", "120 / 45 = 2.67: three would draw 135"),
    },
    {
      given: { supply_flow: 60, zone_flow: 80 },
      gives: 0,
      from: cite("ARITHMETIC", "one zone draws more than the supply gives"),
    },
  ],
  mistakes: [
    {
      slip: "It was rounded up: the last zone takes the pressure from all",
      answer: ({ supply_flow, zone_flow }) => wholeUp(supply_flow / zone_flow),
    },
    { slip: "It was not rounded to whole zones", answer: ({ supply_flow, zone_flow }) => supply_flow / zone_flow },
    {
      slip: "The flow of the zone was left per hour",
      answer: ({ supply_flow, zone_flow }) => wholeDown(supply_flow / (60 * zone_flow)),
    },
  ],
  seeAlso: ["ZONE_FLOW", "ZONE_SEQUENCE"],
  caution: "Zones that run beyond the supply lose pressure, and the plants at the ends dry out.",
  compute({ supply_flow, zone_flow }, show) {
    return show("n = ROUNDDOWN(S / Q + 1E-9, 0)", wholeDown(supply_flow / zone_flow), "count", "Whole zones at once");
  },
});
