import { cite, type NumberParam, type Show } from "../../../kernel";
import { DU_USUAL } from "../uniformity/readings";

export const LEACHING_FRACTION_PARAM = {
  quantity: "fraction",
  symbol: "LF",
  atLeast: 0,
  below: 1,
  about: "Leaching fraction wanted; 0 is a value, so leave no blank",
  usual: { us: [0.05, 0.2], metric: [0.05, 0.2], source: cite("ENH1268", "below 0.15; 0.10 to 0.20 in practice") },
} as const satisfies NumberParam;

export const UNIFORMITY_PARAM = {
  quantity: "fraction",
  symbol: "DU",
  above: 0,
  atMost: 1,
  about: "Low-quarter uniformity of the zone",
  usual: DU_USUAL,
} as const satisfies NumberParam;

export const LARGER_LOSS_ONLY = "Leaching and unevenness are not added: the one that asks for more water counts.";

/** What net water is divided by, on symbols LF and DU: the one loss that asks for more water, never both. */
export function largerLoss(leaching: number, uniformity: number, show: Show): number {
  return show("d = MIN(1 - LF, DU)", Math.min(1 - leaching, uniformity), "factor", "The one that asks for more water");
}
