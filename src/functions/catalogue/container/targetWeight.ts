import { cite, defineFunction, shortNumber } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";

export const targetWeight = defineFunction({
  name: "TARGET_WEIGHT",
  group: "Container and substrate",
  summary: "Weight of a pot or tray at which to irrigate",
  formula: '"water": Wt = Wd + f (Wf - Wd); "total": Wt = f Wf',
  source: cite("DUMROESE2015", "irrigate at a target weight; targets can be worked out in different ways"),
  assumptions: [
    "The fraction is the part left, not the part used. Any one unit of weight, grams too.",
    '"water": that part of the water is left. "total": that part of the whole weight is left, pot and substrate included, so the same fraction leaves far less water.',
    "All weights alike: with the pot and the plant, or without them. A published target on the total weight includes the pot.",
    "The plant grows: weigh the drained pot anew every week or two.",
    ONE_CASE,
  ],
  params: {
    drained_weight: {
      quantity: "weight",
      symbol: "Wf",
      above: 0,
      about: "Weight after soaking and free drainage, in any one unit",
    },
    dry_weight: {
      quantity: "weight",
      symbol: "Wd",
      above: 0,
      about: "Weight of the same without the water, in the same unit",
    },
    fraction: {
      quantity: "fraction",
      symbol: "f",
      above: 0,
      atMost: 1,
      about: "Part left when it is time to irrigate: of the water, or of the total weight",
      usual: {
        us: [0.5, 0.95],
        metric: [0.5, 0.95],
        low: "looks like the part used: the part left belongs here",
        high: "hardly anything is used between irrigations",
        source: cite("PRACTICE", "20 to 50 % of the water used; 80 to 90 % of the total weight left in tree nurseries"),
      },
    },
    basis: {
      kind: "word",
      words: ["water", "total"],
      about: '"water" counts the fraction on the water held, "total" on the whole drained weight',
    },
  },
  result: { quantity: "weight", symbol: "Wt", about: "Weight at which to irrigate, in the unit of the weights" },
  examples: [
    {
      given: { drained_weight: 6, dry_weight: 2.4, fraction: 0.8, basis: "water" },
      gives: 5.28,
      from: cite("ARITHMETIC", "3.6 kg of water; 2.4 + 0.8 x 3.6"),
    },
    {
      given: { drained_weight: 6, dry_weight: 2.4, fraction: 0.8, basis: "total" },
      gives: 4.8,
      from: cite("ARITHMETIC", "0.8 x 6.0: 1.2 of the 3.6 kg of water gone, a third and not a fifth"),
    },
    {
      given: { drained_weight: 15.2, dry_weight: 5.6, fraction: 0.6, basis: "water" },
      gives: 11.36,
      from: cite("ARITHMETIC", "5.6 + 0.6 x 9.6 lb"),
    },
  ],
  mistakes: [
    {
      slip: "The other basis was used: a part of the water is not that part of the total weight",
      instead: ({ basis }) => ({ basis: basis === "water" ? "total" : "water" }),
    },
    {
      slip: "The part used was taken for the part left",
      instead: ({ fraction }) => ({ fraction: 1 - fraction }),
    },
    {
      slip: "The dry weight was not added again",
      answer: ({ drained_weight, dry_weight, fraction, basis }) =>
        basis === "water" ? fraction * (drained_weight - dry_weight) : NaN,
    },
  ],
  seeAlso: ["WATER_FROM_WEIGHT", "IRRIGATION_INTERVAL", "AVAILABLE_WATER"],
  caution:
    "A target meant for the one basis and used on the other lets plants run dry or never dry at all. Watch the plants at the first target.",
  compute({ drained_weight: drained, dry_weight: dry, fraction, basis }, show, { refuse }) {
    if (drained <= dry) {
      throw refuse("drained_weight", drained, `it must be more than dry_weight (${dry}); were the two swapped?`);
    }
    if (basis === "total") {
      if (fraction * drained < dry) {
        const empty = shortNumber(dry / drained);
        const itMust = `on the total weight it must be dry_weight / drained_weight (${empty}, no water left) or more`;
        throw refuse("fraction", fraction, `${itMust}; was "water" meant?`);
      }
      return show("Wt = f * Wf", fraction * drained, "weight", "That part of the drained weight");
    }
    const water = show("W = Wf - Wd", drained - dry, "weight", "Water held after drainage");
    return show("Wt = Wd + f * W", dry + fraction * water, "weight", "Dry weight and that part of the water");
  },
});
