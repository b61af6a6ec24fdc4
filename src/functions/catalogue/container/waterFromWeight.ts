import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const waterFromWeight = defineFunction({
  name: "WATER_FROM_WEIGHT",
  group: "Container and substrate",
  summary: "Water that a pot has lost or taken up between two weighings",
  formula: "V = (Wh - Wl) / w; w = 8.345 lb/gal, 1 kg/L",
  source: [
    cite("SCHUCH_BURGER", "water use of pots determined by weight"),
    cite("DEFINITION", "water at 1 kg/L: 1 g is 1 mL, 8.345 lb is 1 US gal"),
  ],
  assumptions: [
    "One pot, weighed twice alike: with or without its saucer and stake, but both times the same. The pot's own weight cancels out.",
    "After drainage less before the next irrigation is the daily water use when the two are a day apart; after an irrigation less before it is what the pot kept.",
    "No rain, irrigation or dripping between the weighings, and the plant's growth neglected: grams a day.",
  ],
  params: {
    heavier_weight: {
      quantity: "weight",
      symbol: "Wh",
      above: 0,
      about: "The wetter weighing, such as after drainage",
      usual: {
        us: [0.1, 200],
        metric: [0.05, 100],
        high: "looks like grams",
        source: cite("PRACTICE", "small pots to what two people lift"),
      },
    },
    lighter_weight: {
      quantity: "weight",
      symbol: "Wl",
      above: 0,
      about: "The drier weighing of the same pot, such as before the next irrigation",
      usual: {
        us: [0.1, 200],
        metric: [0.05, 100],
        high: "looks like grams",
        source: cite("PRACTICE", "small pots to what two people lift"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { w: "weight of a volume of water" },
  result: { quantity: "volume", symbol: "V", about: "Water between the two weighings" },
  examples: [
    {
      given: { heavier_weight: 6.82, lighter_weight: 6.31, units: "metric" },
      gives: 0.51,
      from: cite("ARITHMETIC", "0.51 kg of water is 0.51 L"),
    },
    {
      given: { heavier_weight: 12.4, lighter_weight: 11.3, units: "us" },
      gives: 0.1318,
      within: 0.0001,
      from: cite("ARITHMETIC", "1.1 lb is 0.49895 kg or L; / 3.78541 L to the gallon"),
    },
  ],
  mistakes: [
    {
      slip: "Pounds of water were taken for gallons",
      answer: ({ units }, { w }, right) => (units === "us" ? right * w : NaN),
    },
    {
      slip: "The pot's whole weight was taken for water",
      answer: ({ heavier_weight }, { w }) => heavier_weight / w,
    },
    {
      slip: "Ten pounds were counted to the gallon, as in imperial gallons",
      answer: ({ heavier_weight, lighter_weight, units }) =>
        units === "us" ? (heavier_weight - lighter_weight) / 10 : NaN,
    },
  ],
  seeAlso: ["TARGET_WEIGHT", "CROP_COEFFICIENT", "IRRIGATION_INTERVAL", "CONTAINER_CAPACITY"],
  compute({ heavier_weight: heavier, lighter_weight: lighter }, show, { constants: { w }, refuse }) {
    if (lighter > heavier) {
      throw refuse("lighter_weight", lighter, `it must be heavier_weight (${heavier}) or less; were the two swapped?`);
    }
    const water = show("W = Wh - Wl", heavier - lighter, "weight", "Weight of the water");
    return show("V = W / w", water / w, "volume", "Water by volume");
  },
});
