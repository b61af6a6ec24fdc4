import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { ANALYSIS_PARAM, CHECK_BEFORE_PLANTS, PPM_PARAM, SAME_ELEMENT } from "./feedParams";
import { elementShare } from "./oxides";

const OUNCES = 16;

export const fertilizerWeight = defineFunction({
  name: "FERTILIZER_WEIGHT",
  group: "Feed and water quality",
  summary: "Fertilizer to weigh out for a tank that is fed straight from the mix",
  formula: "m = ppm V / (1,000,000 a)",
  source: [cite("DEFINITION", "1 ppm is 1 mg of the element per litre"), cite("UMASS_FEED", "ounces in 100 gal")],
  assumptions: [
    SAME_ELEMENT,
    "What the water itself brings (nitrate, calcium, magnesium) is not taken off.",
    "The trade's rule, ounces per 100 gal = ppm / (75 x analysis), rounds 74.89 to 75. Printed tables round to half an ounce.",
  ],
  params: {
    ppm: PPM_PARAM,
    analysis: ANALYSIS_PARAM,
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Water that is to be fed" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "weight of 1 ppm" },
  result: { quantity: "weight", symbol: "m", about: "Weight of the product" },
  examples: [
    {
      given: { ppm: 200, analysis: 0.2, volume: 100, units: "us" },
      gives: 0.84375,
      within: 0.0157,
      from: cite("UMASS_FEED", "13 1/2 oz of 20-20-20 in 100 gal for 200 ppm N, rounded to half an ounce"),
    },
    {
      given: { ppm: 150, analysis: 0.2, volume: 1000, units: "metric" },
      gives: 0.75,
      from: cite("ARITHMETIC", "150 mg x 1000 L = 150 g of N; 150 / 0.20 = 750 g"),
    },
  ],
  mistakes: [
    { slip: "ppm of the product was taken for ppm of the element", instead: () => ({ analysis: 1 }) },
    {
      slip: "The analysis was used as a percentage (20), not as a fraction (0.20)",
      answer: (_given, _constants, right) => right / 100,
    },
    {
      slip: "The weight of the element was multiplied by the analysis",
      answer: ({ analysis }, _constants, right) => right * analysis * analysis,
    },
    { slip: "P2O5 on the label was used as P", answer: (_given, _constants, right) => right * elementShare("P2O5") },
    { slip: "K2O on the label was used as K", answer: (_given, _constants, right) => right * elementShare("K2O") },
    {
      slip: "The answer was given in ounces, not in pounds",
      answer: ({ units }, _constants, right) => (units === "us" ? right * OUNCES : NaN),
    },
  ],
  seeAlso: ["PPM_FROM_WEIGHT", "STOCK_WEIGHT", "ELEMENT_FROM_OXIDE", "FERTIGATION_EC", "FERTILIZER_COST"],
  caution: CHECK_BEFORE_PLANTS,
  compute({ ppm, analysis, volume }, show, { constants: { k } }) {
    const element = show("e = k * ppm * V", k * ppm * volume, "weight", "Weight of the element");
    return show("m = e / a", element / analysis, "weight", "Weight of the product that holds it");
  },
});
