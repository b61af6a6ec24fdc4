import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { ANALYSIS_PARAM, FEED_PPM_USUAL, SAME_ELEMENT } from "./feedParams";

const OUNCES = 16;

export const ppmFromWeight = defineFunction({
  name: "PPM_FROM_WEIGHT",
  group: "Feed and water quality",
  summary: "Strength of a feed from the fertilizer weighed into it, as ppm of an element",
  formula: "ppm = 1,000,000 m a / V",
  source: [cite("DEFINITION", "1 ppm is 1 mg of the element per litre"), cite("UMASS_FEED", "ounces in 100 gal")],
  assumptions: [
    SAME_ELEMENT,
    "All of it dissolves. What the water brings is not counted.",
    "The volume is that of the finished feed. For a stock divide the answer by the injector ratio.",
  ],
  params: {
    weight: { quantity: "weight", symbol: "m", above: 0, about: "Weight of the product" },
    analysis: ANALYSIS_PARAM,
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Water that it is dissolved in" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "weight of 1 ppm" },
  result: { quantity: "ppm", symbol: "ppm", about: "ppm (mg/L) of the element", usual: FEED_PPM_USUAL },
  examples: [
    {
      given: { weight: 0.84375, analysis: 0.2, volume: 100, units: "us" },
      gives: 200,
      within: 4,
      from: cite("UMASS_FEED", "13 1/2 oz of 20-20-20 in 100 gal make 200 ppm N, rounded to half an ounce"),
    },
    {
      given: { weight: 0.75, analysis: 0.2, volume: 1000, units: "metric" },
      gives: 150,
      from: cite("ARITHMETIC", "750 g x 0.20 = 150 g of N in 1000 L"),
    },
    {
      given: { weight: 1, analysis: 1, volume: 1000, units: "us" },
      gives: 119.83,
      within: 0.01,
      from: cite("ARITHMETIC", "1 lb of the element in 1000 gal: 453,592 mg / 3785.4 L"),
    },
  ],
  mistakes: [
    { slip: "ppm of the product was worked, not of the element", instead: () => ({ analysis: 1 }) },
    {
      slip: "The analysis was used as a percentage (20), not as a fraction (0.20)",
      answer: (_given, _constants, right) => right * 100,
    },
    {
      slip: "It was divided by the analysis",
      answer: ({ analysis }, _constants, right) => right / (analysis * analysis),
    },
    {
      slip: "Ounces were taken for pounds",
      answer: ({ units }, _constants, right) => (units === "us" ? right * OUNCES : NaN),
    },
  ],
  seeAlso: ["FERTILIZER_WEIGHT", "PPM_FROM_EC", "ELEMENT_FROM_OXIDE"],
  compute({ weight, analysis, volume }, show, { constants: { k } }) {
    const element = show("e = m * a", weight * analysis, "weight", "Weight of the element");
    return show("ppm = e / (k * V)", element / (k * volume), "ppm", "ppm of the element");
  },
});
