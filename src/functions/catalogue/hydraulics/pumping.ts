import { cite, type NumberParam } from "../../../kernel";

export const HEAD_PARAM = {
  quantity: "length",
  symbol: "H",
  above: 0,
  about: "Total dynamic head: lift, pressure and friction together",
  usual: {
    us: [10, 500],
    metric: [3, 150],
    low: "looks like a lift without the pressure, or like bar",
    high: "looks like kPa, or like a pressure turned into head twice",
    source: cite("PRACTICE", "pumps of nurseries"),
  },
} as const satisfies NumberParam;

export const EFFICIENCY_PARAM = {
  quantity: "fraction",
  symbol: "e",
  above: 0,
  atMost: 1,
} as const satisfies Partial<NumberParam>;

export const ELECTRICITY_CAUTION =
  "Electricity beside water: ground-fault protection, lock-out before any work, a qualified electrician; the local code comes first.";
