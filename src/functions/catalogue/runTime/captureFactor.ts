import { cite, defineFunction } from "../../../kernel";
import { CAPTURE_USUAL } from "./potTop";

export const captureFactor = defineFunction({
  name: "CAPTURE_FACTOR",
  group: "Run time, zones, booms, mats",
  summary: "Overhead water that a pot gets with its plant, against an empty pot",
  formula: "CF = with the plant / empty pot",
  source: cite("CAPTURE_2015", "water captured with the plant over water captured without"),
  assumptions: [
    "One irrigation, both pots with the same opening and side by side; ten pairs or more, then the means.",
    "Water with the plant is what entered the pot: its gain in weight plus what ran out below.",
    "It belongs to this crop at this size under these sprinklers: measure again after pruning, spacing or growth.",
  ],
  params: {
    water_with_plant: {
      quantity: "any one unit",
      symbol: "W",
      above: 0,
      about: "Water that entered the pot with its plant, kept and leached together",
    },
    water_empty_pot: {
      quantity: "any one unit",
      symbol: "E",
      above: 0,
      about: "Water that an empty pot of the same opening caught, in the same unit",
    },
  },
  result: { quantity: "factor", symbol: "CF", about: "Capture factor", usual: CAPTURE_USUAL },
  examples: [
    {
      given: { water_with_plant: 1158, water_empty_pot: 643 },
      gives: 1.8,
      within: 0.001,
      from: cite("ARITHMETIC", "12.7 mm on a top of 25.4 cm is 643 mL; 1.8 times that is 1158 mL"),
    },
    {
      given: { water_with_plant: 0.4, water_empty_pot: 0.5 },
      gives: 0.8,
      from: cite("ARITHMETIC", "a canopy that sheds a fifth: 0.4 / 0.5"),
    },
  ],
  mistakes: [
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
    {
      slip: "The difference was divided by the empty pot's catch: the gain, not the factor",
      answer: (_given, _constants, right) => right - 1,
    },
  ],
  seeAlso: ["OVERHEAD_DEPTH", "INTERCEPTION_FRACTION", "EFFECTIVE_RAIN"],
  compute({ water_with_plant, water_empty_pot }, show) {
    return show("CF = W / E", water_with_plant / water_empty_pot, "factor", "With the plant over without");
  },
});
