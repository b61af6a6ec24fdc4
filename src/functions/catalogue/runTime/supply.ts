import { cite, type NumberParam } from "../../../kernel";

export const SUPPLY_FLOW_PARAM = {
  quantity: "flow",
  symbol: "S",
  above: 0,
  about: "Flow that the supply holds at the pressure that the zones need",
  usual: {
    us: [5, 1000],
    metric: [20, 3800],
    low: "looks like a flow of one emitter, or like m3/h",
    high: "looks like a flow per hour",
    source: cite("PRACTICE", "wells and pumps of nurseries"),
  },
} as const satisfies NumberParam;

export const ZONE_FLOW_USUAL = {
  us: [1, 300],
  metric: [4, 1200],
  low: "hardly a zone: check the number of plants",
  high: "looks like a flow per hour, or like several zones",
  source: cite("PRACTICE", "zones of a nursery on valves of 1 to 3 in"),
} as const;
