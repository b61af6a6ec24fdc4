import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { FEED_PPM_USUAL } from "../feed/feedParams";
import { LEACHING_USUAL } from "./leachingUsual";

export const nutrientLeached = defineFunction({
  name: "NUTRIENT_LEACHED",
  group: "Leaching",
  summary: "Weight of an element that leaves the pots with the leachate",
  formula: "N = V LF ppm w / 1,000,000; w = 8.345 lb/gal, 1 kg/L",
  source: cite("DEFINITION", "weight = volume of the leachate x ppm; 1 ppm is 1 mg/L"),
  assumptions: [
    "Leachate at the strength of the feed: an upper estimate as long as plants take up the element at least as fast as the water.",
    "Where little leaches, or fertilizer lies in the pots, the leachate may be stronger than the feed: then give its own measured ppm. All of the feed, volume x ppm, is the most that the water can bring.",
    "Applied is the volume that entered the pots. What sprinklers throw between the pots is not in it and carries feed too.",
    "ppm is of the element (N, or P and K as elements), not of the product and not of oxides.",
  ],
  params: {
    applied_volume: {
      quantity: "volume",
      symbol: "V",
      above: 0,
      about: "Feed that entered the pots, over the time in question",
    },
    leaching_fraction: {
      quantity: "fraction",
      symbol: "LF",
      atLeast: 0,
      below: 1,
      about: "Pooled leaching fraction of the block; 0 is a value, so leave no blank",
      usual: LEACHING_USUAL,
    },
    ppm: {
      quantity: "ppm",
      symbol: "ppm",
      above: 0,
      about: "Element in the leachate in mg/L; take that of the feed where the leachate was not tested",
      usual: FEED_PPM_USUAL,
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "weight of 1 ppm" },
  result: { quantity: "weight", symbol: "N", about: "Weight of the element leached" },
  examples: [
    {
      given: { applied_volume: 500000, leaching_fraction: 0.3, ppm: 150, units: "metric" },
      gives: 22.5,
      from: cite("ARITHMETIC", "500 m3: 150,000 L of leachate at 0.15 g/L is 22,500 g"),
    },
    {
      given: { applied_volume: 100000, leaching_fraction: 0.2, ppm: 100, units: "us" },
      gives: 16.69,
      within: 0.001,
      from: cite("ARITHMETIC", "20,000 gal is 75,708 L; at 0.1 g/L 7,570.8 g; / 453.59 g to the pound"),
    },
  ],
  mistakes: [
    {
      slip: "The leaching fraction was left out: that is all of the feed",
      answer: ({ applied_volume, ppm }, { k }) => k * applied_volume * ppm,
    },
    {
      slip: "The part kept was taken for the part leached",
      answer: ({ applied_volume, leaching_fraction, ppm }, { k }) => k * applied_volume * (1 - leaching_fraction) * ppm,
    },
    {
      slip: "A million gallons were taken for a million pounds: 8.345 was left out",
      answer: ({ applied_volume, leaching_fraction, ppm, units }) =>
        units === "us" ? (applied_volume * leaching_fraction * ppm) / 1e6 : NaN,
    },
  ],
  seeAlso: ["LEACHING_FRACTION", "LEACHING_SUMMARY", "FERTILIZER_WEIGHT", "FERTILIZER_COST"],
  caution:
    "Leachate with feed in it may count as a discharge: collect and reuse it, keep it from wells, drains and streams. Local rules and permits come first.",
  compute({ applied_volume: volume, leaching_fraction: leaching, ppm }, show, { constants: { k } }) {
    const leachate = show("L = V * LF", volume * leaching, "volume", "Leachate");
    return show("N = k * L * ppm", k * leachate * ppm, "weight", "Weight of the element in it");
  },
});
