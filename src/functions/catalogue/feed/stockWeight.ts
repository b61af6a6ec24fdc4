import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import {
  ANALYSIS_PARAM,
  CHECK_BEFORE_PLANTS,
  INJECTION_CAUTION,
  INJECTOR_RATIO_PARAM,
  PPM_PARAM,
  SAME_ELEMENT,
} from "./feedParams";

const OUNCES = 16;

export const stockWeight = defineFunction({
  name: "STOCK_WEIGHT",
  group: "Feed and water quality",
  summary: "Fertilizer to weigh out for a stock tank behind an injector",
  formula: "m = ppm R V / (1,000,000 a)",
  source: [
    cite("BAG_CHART", "ounces per gallon of stock at 1:15, 1:100 and 1:200"),
    cite("MSU_LABEL", "the same for 20 % N"),
  ],
  assumptions: [
    "1:100 is 1 part in 100, as most makers count. Some mean 1 + 100: then write 101. Better, write the ratio that INJECTOR_RATIO measures.",
    "Dissolve in three quarters of the water, then fill up to the stock volume.",
    "The arithmetic does not see what dissolves. About 2 to 4 lb/gal (0.25 to 0.5 kg/L) is the limit, less in cold water; the working shows the strength. Too strong: a bigger tank, or a smaller ratio.",
    SAME_ELEMENT,
  ],
  params: {
    ppm: PPM_PARAM,
    analysis: ANALYSIS_PARAM,
    injector_ratio: INJECTOR_RATIO_PARAM,
    stock_volume: { quantity: "volume", symbol: "V", above: 0, about: "Finished stock to be made" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "weight of 1 ppm" },
  result: { quantity: "weight", symbol: "m", about: "Weight of the product for the stock tank" },
  examples: [
    {
      given: { ppm: 200, analysis: 0.15, injector_ratio: 100, stock_volume: 1, units: "us" },
      gives: 1.125,
      within: 0.0157,
      from: cite("BAG_CHART", "200 ppm N, 1:100: 18 oz per gallon of stock, rounded to half an ounce"),
    },
    {
      given: { ppm: 150, analysis: 0.2, injector_ratio: 100, stock_volume: 50, units: "us" },
      gives: 31.295,
      within: 0.001,
      from: cite("ARITHMETIC", "150 x 100 = 15,000 mg/L; x 50 x 3.785412 L = 2839.06 g of N = 6.2591 lb; / 0.20"),
    },
    {
      given: { ppm: 150, analysis: 0.2, injector_ratio: 100, stock_volume: 100, units: "metric" },
      gives: 7.5,
      from: cite("ARITHMETIC", "75 g per litre of stock: 150 mg x 100 / 0.20"),
    },
  ],
  mistakes: [
    {
      slip: "1:100 was taken as 1 part of stock to 100 parts of water, 1 in 101",
      instead: ({ injector_ratio }) => ({ injector_ratio: injector_ratio + 1 }),
    },
    {
      slip: "The injector ratio was left out: that is the feed, not the stock",
      instead: () => ({ injector_ratio: 1 }),
    },
    {
      slip: "It was divided by the injector ratio",
      answer: ({ injector_ratio }, _constants, right) => right / (injector_ratio * injector_ratio),
    },
    { slip: "ppm of the product was taken for ppm of the element", instead: () => ({ analysis: 1 }) },
    {
      slip: "The analysis was used as a percentage (20), not as a fraction (0.20)",
      answer: (_given, _constants, right) => right / 100,
    },
    {
      slip: "The answer was given in ounces, not in pounds",
      answer: ({ units }, _constants, right) => (units === "us" ? right * OUNCES : NaN),
    },
  ],
  seeAlso: ["INJECTOR_RATIO", "FERTILIZER_WEIGHT", "FERTIGATION_EC", "TANK_DOSE"],
  caution: `Never put calcium into a stock with sulfate or phosphate: they settle and clog every emitter, so keep two tanks. Add the product to water, with gloves and eye protection. ${CHECK_BEFORE_PLANTS} ${INJECTION_CAUTION}`,
  compute({ ppm, analysis, injector_ratio, stock_volume }, show, { constants: { k } }) {
    const stock = show("p = ppm * R", ppm * injector_ratio, "ppm", "ppm of the element in the stock");
    const strength = show("s = k * p / a", (k * stock) / analysis, "stock strength", "Strength of the stock");
    return show("m = s * V", strength * stock_volume, "weight", "Weight of the product for the stock tank");
  },
});
