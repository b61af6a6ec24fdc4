import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { potTop, TOP_DIAMETER_PARAM } from "../runTime/potTop";

export const waterDepth = defineFunction({
  name: "WATER_DEPTH",
  group: "Container and substrate",
  summary: "Depth at which a volume of water would stand on a round pot's top",
  formula: "d = V / (k pi D2 / 4)",
  source: cite("GEOMETRY", "depth = volume / area of a circle"),
  assumptions: [
    "Over the pot's top, not over its bottom, its height or the bed: the depth over the bed is smaller by the share of the ground that pots cover.",
    "Compare it with rain or sprinkler depth only where the canopy neither sheds nor gathers water.",
  ],
  params: {
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Water for one pot" },
    top_diameter: TOP_DIAMETER_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on a pot" },
  result: {
    quantity: "water depth",
    symbol: "d",
    about: "Depth over the pot's top",
    usual: {
      us: [0.05, 3],
      metric: [1, 75],
      low: "less than a shower: check the units",
      high: "more than a pot takes in a day: check the units, or the diameter",
      source: cite("PRACTICE", "one irrigation of a pot"),
    },
  },
  examples: [
    {
      given: { volume: 0.643, top_diameter: 25.4, units: "metric" },
      gives: 12.69,
      within: 0.01,
      from: cite("ARITHMETIC", "643 cm3 on 506.7 cm2 is 1.269 cm"),
    },
    {
      given: { volume: 0.5, top_diameter: 10, units: "us" },
      gives: 1.4706,
      within: 0.0001,
      from: cite("ARITHMETIC", "0.5 x 231 = 115.5 in3 on 78.54 in2"),
    },
  ],
  mistakes: [
    {
      slip: "The diameter was used as a radius",
      instead: ({ top_diameter }) => ({ top_diameter: 2 * top_diameter }),
    },
    {
      slip: "A square of the diameter was taken for the round top",
      answer: (_given, _constants, right) => (right * Math.PI) / 4,
    },
    {
      slip: "The unit constant was left out: gallons are not cubic inches, litres on cm2 are not mm",
      answer: (_given, { k }, right) => right * k,
    },
    {
      slip: "The depth was left in centimetres",
      answer: ({ units }, _constants, right) => (units === "metric" ? right / 10 : NaN),
    },
  ],
  seeAlso: ["TOP_AREA", "OVERHEAD_DEPTH", "EFFECTIVE_RAIN", "CATCH_RATE"],
  compute({ volume, top_diameter }, show, { constants: { k } }) {
    const top = potTop(top_diameter, show);
    return show("d = V / (k * At)", volume / (k * top), "water depth", "Volume over the pot's top");
  },
});
