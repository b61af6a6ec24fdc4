import { cite, type NumberParam, type Show } from "../../../kernel";

export const TOP_DIAMETER_PARAM = {
  quantity: "pot size",
  symbol: "D",
  above: 0,
  about: "Diameter of the pot's opening",
  usual: {
    us: [2, 40],
    metric: [5, 100],
    high: "looks like mm, or like a volume",
    source: cite("PRACTICE", "liner pots to boxed trees"),
  },
} as const satisfies NumberParam;

export const CAPTURE_USUAL = {
  us: [0.5, 4],
  metric: [0.5, 4],
  low: "a canopy that sheds this much is rare: check whether the two waters were swapped",
  high: "more than any of 11 species measured",
  source: cite("CAPTURE_2015", "1 to 4 for marketable plants of 11 species; a dense canopy may shed"),
} as const;

/** Area of a round pot's top on symbol D. */
export function potTop(diameter: number, show: Show): number {
  return show("At = PI() * D^2 / 4", (Math.PI * diameter ** 2) / 4, "pot area", "Area of the pot top");
}
