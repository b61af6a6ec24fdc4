import { cite } from "../../../kernel";

export const OVERHEAD_DEPTH_USUAL = {
  us: [0.25, 2],
  metric: [6, 51],
  low: "less than a summer's day asks for; right for a cool day or for one of several irrigations",
  high: "more than overhead nurseries give in a day: check the capture factor and the units",
  source: cite(
    "LSU_CYCLIC",
    "overhead nurseries give 0.5 to 2 in a day; half of that on a cool one is common practice",
  ),
} as const;
