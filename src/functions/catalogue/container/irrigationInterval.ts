import { cite, defineFunction } from "../../../kernel";
import { DEPLETION_USUAL } from "./substrate";

export const irrigationInterval = defineFunction({
  name: "IRRIGATION_INTERVAL",
  group: "Container and substrate",
  summary: "Days that a full pot lasts until it is time to irrigate",
  formula: "days = AW p / use",
  source: [
    cite("FAO56", "Eq. 83: readily available water = depletion fraction x total available water"),
    cite("DEFINITION", "days = water to be used / use of a day"),
  ],
  assumptions: [
    "The depletion fraction is the part used, and of the available water, not of container capacity nor of the pot's weight.",
    "Days of equal use, a pot filled to container capacity, no rain between.",
    "Round down to whole days. Below one day give 1 / days irrigations a day, rounded up, in the daylight hours when plants drink: 0.4 days is three.",
  ],
  params: {
    available_water: {
      quantity: "volume",
      symbol: "AW",
      above: 0,
      about: "Water in the full pot that plants can take up",
    },
    depletion_fraction: {
      quantity: "fraction",
      symbol: "p",
      above: 0,
      atMost: 1,
      about: "Part of the available water that may be used before it is time to irrigate",
      usual: DEPLETION_USUAL,
    },
    daily_use: {
      quantity: "volume",
      symbol: "U",
      above: 0,
      about: "Water that one plant uses in a day, in the same unit",
    },
  },
  result: {
    quantity: "days",
    symbol: "d",
    about: "Days from a full pot to the next irrigation",
    usual: {
      us: [0.25, 7],
      metric: [0.25, 7],
      low: "more than four irrigations a day: the pot is too small for the plant, or the units differ",
      high: "hardly ever this long in a pot in leaf: check the daily use",
      source: cite("PRACTICE", "container crops in the growing season"),
    },
  },
  examples: [
    {
      given: { available_water: 2.7, depletion_fraction: 0.4, daily_use: 0.45 },
      gives: 2.4,
      from: cite("ARITHMETIC", "1.08 L at 0.45 L a day"),
    },
    {
      given: { available_water: 0.2, depletion_fraction: 0.5, daily_use: 0.25 },
      gives: 0.4,
      from: cite("ARITHMETIC", "0.1 gal at 0.25 gal a day"),
    },
    {
      given: { available_water: 160, depletion_fraction: 0.4, daily_use: 6 },
      gives: 10.6667,
      within: 0.0001,
      from: cite("FAO56", "Example 37: 0.4 of 160 mm is 64 mm; at the example's 5 x 1.2 = 6 mm a day"),
    },
  ],
  mistakes: [
    {
      slip: "The depletion fraction was left out: the plants would be at the end of their water",
      instead: () => ({ depletion_fraction: 1 }),
    },
    {
      slip: "The part left was taken for the part used",
      instead: ({ depletion_fraction }) => ({ depletion_fraction: 1 - depletion_fraction }),
    },
    {
      slip: "The ratio was inverted",
      answer: (_given, _constants, right) => 1 / right,
    },
    {
      slip: "The available water was divided by the depletion fraction",
      answer: ({ available_water, depletion_fraction, daily_use }) =>
        available_water / (depletion_fraction * daily_use),
    },
  ],
  seeAlso: ["AVAILABLE_WATER", "WATER_FROM_WEIGHT", "PLANT_WATER_DEMAND", "TARGET_WEIGHT", "WATER_BALANCE"],
  caution:
    "Use of a hot, windy day may be twice the mean: plan for the peak, round down, and walk the block on the first hot days.",
  compute({ available_water: available, depletion_fraction: depletion, daily_use: use }, show) {
    const refill = show("R = AW * p", available * depletion, "volume", "Water that may be used, to be refilled then");
    return show("d = R / U", refill / use, "days", "Days that it lasts");
  },
});
