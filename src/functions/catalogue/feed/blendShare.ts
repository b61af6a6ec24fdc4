import { cite, defineFunction } from "../../../kernel";

const VALUE = { quantity: "any one unit", atLeast: 0 } as const;

export const blendShare = defineFunction({
  name: "BLEND_SHARE",
  group: "Feed and water quality",
  summary: "Part of one water to mix with another for a target",
  formula: "f = (t - b) / (a - b)",
  source: [cite("MASS_BALANCE", "f a + (1 - f) b = t"), cite("ALI2011", "Example 8.3")],
  assumptions: [
    "For what mixes in proportion: EC, alkalinity, hardness, sodium, chloride, boron, any ppm. Never for pH: work with alkalinity, and measure pH in the mixture.",
    "All three in one unit.",
    "The rest of the mixture, 1 - f, is water b.",
  ],
  params: {
    value_a: { ...VALUE, symbol: "a", about: "EC or concentration of water a; 0 is a value, so leave no blank" },
    value_b: { ...VALUE, symbol: "b", about: "The same of water b, in the same unit; 0 is a value, so leave no blank" },
    target: { ...VALUE, symbol: "t", about: "The same wanted in the mixture: between the two" },
  },
  result: { quantity: "fraction", symbol: "f", about: "Part of water a in the mixture" },
  examples: [
    {
      given: { value_a: 1.8, value_b: 0.4, target: 0.8 },
      gives: 0.2857142857142857,
      from: cite("ARITHMETIC", "0.4 / 1.4 = 2 / 7"),
    },
    {
      given: { value_a: 2, value_b: 15, target: 8 },
      gives: 0.53,
      within: 0.0101,
      from: cite("ALI2011", "Example 8.3: 2 and 15 dS/m for 8; 7/13, printed 0.53, cut short"),
    },
  ],
  mistakes: [
    { slip: "The part of the other water was given", answer: (_given, _constants, right) => 1 - right },
    {
      slip: "Parts of a to 1 part of b were given, not the part of a in the whole",
      answer: (_given, _constants, right) => right / (1 - right),
    },
    {
      slip: "The target was divided by water a, as if b were pure",
      answer: ({ value_a, target }) => target / value_a,
    },
  ],
  seeAlso: ["BLEND_EC", "TANK_DILUTION", "ACID_VOLUME"],
  compute({ value_a, value_b, target }, show, { noAnswer }) {
    if (value_a === value_b) {
      throw noAnswer(`value_a and value_b are both ${value_a}; the part of one changes nothing`, "value_a");
    }
    const [low, high] = [Math.min(value_a, value_b), Math.max(value_a, value_b)];
    if (target < low || target > high) {
      throw noAnswer(`target is ${target}; a mixture of the two lies from ${low} to ${high}`, "target");
    }
    return show("f = (t - b) / (a - b)", (target - value_b) / (value_a - value_b), "fraction", "Part of water a");
  },
});
