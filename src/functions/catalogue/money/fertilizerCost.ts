import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { ANALYSIS_PARAM, PPM_PARAM, SAME_ELEMENT } from "../feed/feedParams";

/** A pound in kilograms. */
const KILOGRAMS = 0.45359237;

export const fertilizerCost = defineFunction({
  name: "FERTILIZER_COST",
  group: "Money",
  summary: "What the fertilizer in a volume of feed costs",
  formula: "cost = ppm V / (1,000,000 a) price",
  source: cite("DEFINITION", "weight of the product x its price; 1 ppm is 1 mg of the element per litre"),
  assumptions: [
    "The volume is all that was applied with feed in it, not what the pots kept: feed that leaches is paid for too.",
    "The price is per pound or kilogram of the product as it is sold, not of the element: a bag's price over the bag's weight.",
    SAME_ELEMENT,
    "Clear water between feedings is not in the volume.",
  ],
  params: {
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Feed applied, as it leaves the hose" },
    ppm: PPM_PARAM,
    analysis: ANALYSIS_PARAM,
    price_per_weight: {
      quantity: "price per weight",
      symbol: "price",
      above: 0,
      about: "Price of the product, counted as positive",
      usual: {
        us: [0.2, 10],
        metric: [0.4, 22],
        low: "cheaper than bulk fertilizer: check the bag's weight",
        high: "looks like the price of a bag",
        source: cite("PRACTICE", "soluble fertilizers in bags, in dollars"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "weight of 1 ppm" },
  result: { quantity: "currency", symbol: "cost", about: "Cost of the fertilizer in the feed" },
  examples: [
    {
      given: { volume: 500000, ppm: 150, analysis: 0.2, price_per_weight: 2.2, units: "metric" },
      gives: 825,
      from: cite("ARITHMETIC", "500,000 L x 150 mg = 75 kg of N; / 0.20 = 375 kg; x 2.20"),
    },
    {
      given: { volume: 1000, ppm: 150, analysis: 0.2, price_per_weight: 1, units: "us" },
      gives: 6.259,
      within: 0.005,
      from: cite("ARITHMETIC", "10.014 oz in 100 gal by 150 / (74.89 x 0.20); x 10 / 16 = 6.259 lb"),
    },
  ],
  mistakes: [
    { slip: "ppm of the product was taken for ppm of the element", instead: () => ({ analysis: 1 }) },
    {
      slip: "The price was taken for a price per weight of the element",
      answer: ({ analysis }, _constants, right) => right * analysis,
    },
    {
      slip: "The analysis was used as a percentage (20), not as a fraction (0.20)",
      answer: (_given, _constants, right) => right / 100,
    },
    {
      slip: "The weight was left in kilograms, though the price is per pound",
      answer: ({ units }, _constants, right) => (units === "us" ? right * KILOGRAMS : NaN),
    },
  ],
  seeAlso: ["FERTILIZER_WEIGHT", "NUTRIENT_LEACHED", "WATER_COST", "COST_PER_SALEABLE_PLANT"],
  compute({ volume, ppm, analysis, price_per_weight }, show, { constants: { k } }) {
    const element = show("e = k * ppm * V", k * ppm * volume, "weight", "Weight of the element");
    const product = show("m = e / a", element / analysis, "weight", "Weight of the product that holds it");
    return show("cost = m * price", product * price_per_weight, "currency", "What it costs");
  },
});
