import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { potTop, TOP_DIAMETER_PARAM } from "../runTime/potTop";

export const topArea = defineFunction({
  name: "TOP_AREA",
  group: "Container and substrate",
  summary: "Area of a round pot's opening",
  formula: "A = pi D2 / 4",
  source: cite("GEOMETRY", "area of a circle"),
  assumptions: [
    "Measure what the number is for: the inside for what lies on the substrate, the outer rim for what falls into the pot.",
    "Round pots. A square one is its side times itself.",
  ],
  params: { top_diameter: TOP_DIAMETER_PARAM, units: UNITS_PARAM },
  unitConstants: { k: "area of a square" },
  result: { quantity: "area", symbol: "A", about: "Area of the opening" },
  examples: [
    {
      given: { top_diameter: 10, units: "us" },
      gives: 0.54,
      within: 0.006,
      from: cite("NURSERY_COURSE", "a pot of 10 in: 0.54 ft2, worked with 0.83 ft"),
    },
    {
      given: { top_diameter: 25.4, units: "metric" },
      gives: 0.050671,
      within: 0.000001,
      from: cite("ARITHMETIC", "pi x 0.254^2 / 4 = 3.14159 x 0.064516 / 4"),
    },
  ],
  mistakes: [
    {
      slip: "The diameter was used as a radius",
      instead: ({ top_diameter }) => ({ top_diameter: 2 * top_diameter }),
    },
    {
      slip: "A square of the diameter was taken for the round top",
      answer: (_given, _constants, right) => (right * 4) / Math.PI,
    },
    {
      slip: "The area was left in square inches or square centimetres",
      answer: (_given, { k }, right) => right / k,
    },
    {
      slip: "Square inches were divided by 12, not by 144",
      answer: ({ units }, _constants, right) => (units === "us" ? right * 12 : NaN),
    },
  ],
  seeAlso: ["PLANT_SPACING_AREA", "INTERCEPTION_FRACTION", "WATER_DEPTH", "CONTAINER_VOLUME"],
  compute({ top_diameter }, show, { constants: { k } }) {
    const top = potTop(top_diameter, show);
    return show("A = k * At", k * top, "area", "The same in the unit of areas");
  },
});
