import { cite, defineFunction, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { largerLoss, LEACHING_FRACTION_PARAM, UNIFORMITY_PARAM } from "./losses";

const BASES = ["larger", "leaching", "uniformity", "both"] as const;

function divisor(leaching: number, uniformity: number, basis: (typeof BASES)[number], show: Show): number {
  switch (basis) {
    case "leaching":
      return show("d = 1 - LF", 1 - leaching, "factor", "Part of the water that the pots keep");
    case "uniformity":
      return show("d = DU", uniformity, "factor", "What the driest quarter gets against the mean");
    case "both":
      return show("d = (1 - LF) * DU", (1 - leaching) * uniformity, "factor", "Leaching on top of unevenness");
    case "larger":
      return largerLoss(leaching, uniformity, show);
  }
}

export const grossWater = defineFunction({
  name: "GROSS_WATER",
  group: "Run time, zones, booms, mats",
  summary: "Water to give so that the pots keep what the plants need",
  formula: "G = N / min(1 - LF, DU)",
  source: [cite("ENH1268", "gross = net / (1 - LF)"), cite("MERRIAM_KELLER", "gross = net / DU of the low quarter")],
  assumptions: [
    '"larger" (the default) counts the one loss that asks for more water: the extra water that uneven emitters need also leaches from the wet pots.',
    '"both" counts them on top of one another; it drowns roots where the leaching fraction was measured on the driest pots.',
    ONE_CASE,
  ],
  params: {
    net: { quantity: "volume", symbol: "N", above: 0, about: "Water that the plant needs" },
    leaching_fraction: LEACHING_FRACTION_PARAM,
    uniformity: UNIFORMITY_PARAM,
    basis: {
      kind: "word",
      words: BASES,
      default: "larger",
      about:
        '"leaching" net / (1 - LF); "uniformity" net / DU; "larger" whichever of the two is more; "both" net / ((1 - LF) DU)',
    },
  },
  result: { quantity: "volume", symbol: "G", about: "Gross water, in the unit of the net" },
  examples: [
    {
      given: { net: 1, leaching_fraction: 0.2, uniformity: 0.9, basis: "leaching" },
      gives: 1.25,
      from: cite("ARITHMETIC", "1 / 0.8"),
    },
    {
      given: { net: 0.6, leaching_fraction: 0.15, uniformity: 0.88 },
      gives: 0.7058823529411765,
      from: cite("ARITHMETIC", "0.85 is smaller than 0.88: 0.6 / 0.85 = 12 / 17"),
    },
    {
      given: { net: 27154, leaching_fraction: 0, uniformity: 0.75, basis: "uniformity" },
      gives: 36205,
      within: 1,
      from: cite("CLEMSON", "one acre-inch, 27,154 gal, at 75 % asks for 36,205 gal"),
    },
  ],
  mistakes: [
    {
      slip: "The leaching fraction was added, not divided out",
      answer: ({ net, leaching_fraction, uniformity, basis }) => {
        if (basis === "uniformity") return NaN;
        return (net * (1 + leaching_fraction)) / (basis === "both" ? uniformity : 1);
      },
    },
    { slip: "The uniformity was left out", instead: () => ({ uniformity: 1 }) },
    { slip: "The leaching fraction was left out", instead: () => ({ leaching_fraction: 0 }) },
    {
      slip: "Leaching and uniformity were taken for one another",
      answer: ({ net, leaching_fraction, uniformity, basis }) => {
        if (basis === "leaching") return net / uniformity;
        return basis === "uniformity" && leaching_fraction > 0 ? net / (1 - leaching_fraction) : NaN;
      },
    },
    { slip: "Leaching and uniformity were both divided out", instead: () => ({ basis: "both" }) },
    {
      slip: "The net water was multiplied, not divided",
      answer: ({ net }, _constants, right) => (net * net) / right,
    },
    { slip: "Nothing was added for leaching or unevenness", answer: ({ net }) => net },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "DU_LOW_QUARTER", "LEACHING_FRACTION", "RUN_MINUTES", "OVERHEAD_DEPTH"],
  caution:
    "Dividing by uniformity twice drowns roots; leaving it out dries the driest quarter. Walk the lines on the first hot days.",
  compute({ net, leaching_fraction, uniformity, basis }, show) {
    const d = divisor(leaching_fraction, uniformity, basis, show);
    return show("G = N / d", net / d, "volume", "Gross water");
  },
});
