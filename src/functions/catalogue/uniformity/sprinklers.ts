import { cite } from "../../../kernel";

export const APPLICATION_RATE_USUAL = {
  us: [0.1, 1.5],
  metric: [2.5, 38],
  low: "looks like a rate per minute, or like cans that missed the pattern",
  high: "looks like spray stakes, or like the flow of more than one nozzle",
  source: cite(
    "OVERTON2014",
    "0.29 and 0.43 in/h measured in a nursery; mist and microsprinklers more (common practice)",
  ),
} as const;

export const SPRINKLER_SPACING_USUAL = {
  us: [4, 80],
  metric: [1.2, 25],
  low: "looks like the spacing of pots",
  high: "wider than most sprinklers throw",
  source: cite("PRACTICE", "microsprinklers in houses to impact sprinklers outside"),
} as const;
