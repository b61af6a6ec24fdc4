import { cite } from "../../../kernel";

export const LEACHING_USUAL = {
  us: [0.05, 0.3],
  metric: [0.05, 0.3],
  low: "close to none: salts may build up, or a leachate is missing",
  high: "much water and feed is lost; look also for dry substrate that repels water",
  source: cite("ENH1268", "target below 0.15; above 0.30 look for the cause (common practice)"),
} as const;

export const DRY_SUBSTRATE_LEACHES =
  "A dry substrate that repels water leaches at once though the plant is dry. Pot light and leaching high: do not cut the time, rewet in pulses.";
