import { cite, defineFunction, shownValue, UNITS_PARAM } from "../../../kernel";
import { potTop, TOP_DIAMETER_PARAM } from "./potTop";

export const interceptionFraction = defineFunction({
  name: "INTERCEPTION_FRACTION",
  group: "Run time, zones, booms, mats",
  summary: "Part of overhead water that falls on the pots, not between them",
  formula: "F = pi D2 / 4 / A",
  source: [cite("NURSERY_COURSE", "container top area over ground area"), cite("GEOMETRY", "area of a circle")],
  assumptions: [
    "Spacing is from centre to centre. A gap between rims is less by the diameter of a pot.",
    "Bare pots: leaves lead water to the pot or shed it, which CAPTURE_FACTOR measures. Aisles are not in it.",
    "Times the capture factor and 1 - leaching fraction it is the part of the water that stays in the pots. It is not 1 - the leaching fraction: it counts water that never entered a pot.",
  ],
  params: {
    top_diameter: { ...TOP_DIAMETER_PARAM, about: "Outside diameter of the pot at the rim" },
    area_per_plant: {
      quantity: "area",
      symbol: "A",
      above: 0,
      about: "Ground that one pot takes up, from centre to centre",
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "area of a square" },
  result: {
    quantity: "fraction",
    symbol: "F",
    about: "Part of the ground that pot tops cover",
    usual: {
      us: [0.09, 0.907],
      metric: [0.09, 0.907],
      low: "pots this far apart: nearly all overhead water misses them",
      high: "more than round pots that touch can cover: check the area per plant",
      source: cite(
        "PRACTICE",
        "large pots cover 9 to 35 % of the ground; touching in a triangle, pi / (2 sqrt 3) = 0.907",
      ),
    },
  },
  examples: [
    {
      given: { top_diameter: 10, area_per_plant: 1.5, units: "us" },
      gives: 0.3636102608321521,
      from: cite("ARITHMETIC", "25 pi in2 on 1.5 x 144 = 216 in2"),
    },
    {
      given: { top_diameter: 10, area_per_plant: 2, units: "us" },
      gives: 0.27,
      within: 0.005,
      from: cite("NURSERY_COURSE", "10 in pots at 1 ft by 2 ft, 0.54 ft2 of 2 ft2"),
    },
    {
      given: { top_diameter: 25, area_per_plant: 0.0625, units: "metric" },
      gives: 0.7853981633974483,
      from: cite("GEOMETRY", "pots that touch in a square, 25 cm by 25 cm: pi / 4"),
    },
  ],
  mistakes: [
    {
      slip: "A square of the diameter was taken for the round top",
      answer: (_given, _constants, right) => (right * 4) / Math.PI,
    },
    {
      slip: "The diameter was used as a radius",
      answer: (_given, _constants, right) => right * 4,
    },
    { slip: "The part that misses the pots was taken", answer: (_given, _constants, right) => 1 - right },
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
  ],
  seeAlso: ["CAPTURE_FACTOR", "OVERHEAD_DEPTH", "PLANT_SPACING_AREA", "TOP_AREA"],
  compute({ top_diameter, area_per_plant: ground }, show, { constants: { k }, refuse }) {
    const top = show("Ap = k * At", k * potTop(top_diameter, show), "area", "The same in the unit of the ground");
    if (top > ground) {
      const least = shownValue(Number(top.toPrecision(4)));
      throw refuse("area_per_plant", ground, `it must be ${least}, the pot top, or more; were the two swapped?`);
    }
    return show("F = Ap / A", top / ground, "fraction", "Part of the ground that pot tops cover");
  },
});
