import { cite, defineFunction, FunctionError, UNITS_PARAM, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";

/** Height of an equilateral triangle over its side. */
const TRIANGLE = Math.sqrt(3) / 2;

function triangle(side: number, show: Show): number {
  const height = show("h = SQRT(3) / 2 * Sr", TRIANGLE * side, "pot size", "Distance between the rows of the triangle");
  return show("P = Sr * h", side * height, "pot area", "Ground of one plant");
}

export const plantSpacingArea = defineFunction({
  name: "PLANT_SPACING_AREA",
  group: "Container and substrate",
  summary: "Ground that one plant takes up on the bed or bench",
  formula: "square: A = Sr Sb; triangle: A = 0.866 Sr2",
  source: [
    cite("GEOMETRY", "area of a rectangle; of two equilateral triangles"),
    cite("SPACING_ARTICLE", "distance from centre to centre; square and diagonal patterns"),
  ],
  assumptions: [
    "Spacing is from centre to centre. A gap between rims is less by the diameter of a pot.",
    '"square" includes rectangles, and rows that are shifted but stand between_rows apart: the ground is in_row x between_rows whatever the shift.',
    '"triangle" is equilateral: in_row is its side, and between_rows is left blank or is the side again. Where the distance of the rows was measured, take "square".',
    "Within a full bed: aisles and the bench's edge are not in it.",
    ONE_CASE,
  ],
  params: {
    in_row: {
      quantity: "pot size",
      symbol: "Sr",
      above: 0,
      about: "From centre to centre along the row; the side of a triangle",
      usual: {
        us: [2, 72],
        metric: [5, 180],
        high: "looks like mm or cm, or like a whole bed",
        source: cite("PRACTICE", "plugs pot to pot to boxed trees"),
      },
    },
    between_rows: {
      quantity: "pot size",
      symbol: "Sb",
      atLeast: 0,
      blankIsAnswered: true,
      about: "From row to row, at right angles; may be blank for a triangle",
      usual: {
        us: [2, 72],
        metric: [5, 180],
        high: "looks like mm or cm, or like a whole bed",
        source: cite("PRACTICE", "plugs pot to pot to boxed trees"),
      },
    },
    units: UNITS_PARAM,
    pattern: {
      kind: "word",
      words: ["square", "triangle"],
      default: "square",
      about: '"square" for squares and rectangles, "triangle" for equilateral triangles of side in_row',
    },
  },
  unitConstants: { k: "area of a square" },
  result: {
    quantity: "area",
    symbol: "A",
    about: "Ground that one plant takes up",
    usual: {
      us: [0.03, 36],
      metric: [0.0025, 3.3],
      source: cite("PRACTICE", "plugs pot to pot to boxed trees"),
    },
  },
  examples: [
    {
      given: { in_row: 12, between_rows: 24, units: "us" },
      gives: 2,
      from: cite("NURSERY_COURSE", "1 ft by 2 ft"),
    },
    {
      given: { in_row: 14, between_rows: null, units: "us", pattern: "triangle" },
      gives: 1.18,
      within: 0.004,
      from: cite("SPACING_ARTICLE", "14 in diagonal: 170 in2, 85 pots on 100 ft2"),
    },
    {
      given: { in_row: 30, between_rows: 40, units: "metric" },
      gives: 0.12,
      from: cite("ARITHMETIC", "0.3 m x 0.4 m"),
    },
  ],
  mistakes: [
    {
      slip: "The triangle was taken for a square of its side",
      answer: ({ pattern }, _constants, right) => (pattern === "triangle" ? right / TRIANGLE : NaN),
    },
    {
      slip: "0.866 was multiplied in although the distance of the rows was given",
      answer: ({ pattern }, _constants, right) => (pattern === "square" ? right * TRIANGLE : NaN),
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
  seeAlso: ["TOP_AREA", "INTERCEPTION_FRACTION", "PLANT_WATER_DEMAND"],
  compute({ in_row: side, between_rows, pattern }, show, { constants: { k }, refuse }) {
    const between = between_rows ?? 0;
    if (pattern === "square" && between === 0) throw needsRows();
    if (pattern === "triangle" && between !== 0 && between !== side) {
      const itMust = `it must be blank or in_row (${side}) in a triangle of equal sides`;
      throw refuse("between_rows", between, `${itMust}; where the rows' distance was measured, take "square"`);
    }
    const ground =
      pattern === "triangle"
        ? triangle(side, show)
        : show("P = Sr * Sb", side * between, "pot area", "Ground of one plant");
    return show("A = k * P", k * ground, "area", "The same in the unit of areas");
  },
});

function needsRows(): FunctionError {
  const message = "between_rows is blank or 0; it must be more than 0 (in or cm); only a triangle does without it";
  return new FunctionError("input", "between_rows", `PLANT_SPACING_AREA: ${message}`);
}
