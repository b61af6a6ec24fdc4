import { cite } from "../../../kernel";

export const LEACHING_USUAL = {
  us: [0.05, 0.3],
  metric: [0.05, 0.3],
  low: "close to none: salts may build up, or a leachate is missing",
  high: "much water and feed is lost; look also for dry substrate that repels water",
  source: cite("ENH1268", "target below 0.15; above 0.30 look for the cause (common practice)"),
} as const;
