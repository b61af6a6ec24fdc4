import { cite, defineFunction, FunctionError, UNITS_PARAM, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { APPLICATION_RATE_USUAL, SPRINKLER_SPACING_USUAL } from "./sprinklers";

const PATTERNS = ["square", "triangle", "offset"] as const;
type Pattern = (typeof PATTERNS)[number];

/** Height of an equilateral triangle over its side. */
const TRIANGLE_HEIGHT = Math.sqrt(3) / 2;
const NOZZLES_AROUND = 4;

function areaOfNozzle(pattern: Pattern, along: number, between: number, show: Show): number {
  if (pattern === "triangle") {
    return show("A = SQRT(3) / 2 * S^2", TRIANGLE_HEIGHT * along ** 2, "area", "Ground of one nozzle in a triangle");
  }
  return show("A = S * L", along * between, "area", "Ground of one nozzle");
}

export const applicationRate = defineFunction({
  name: "APPLICATION_RATE",
  group: "Flow and uniformity",
  summary: "How fast overhead sprinklers put water down, from nozzle flow and spacing",
  formula: "R = k Q / (S L); k = 96.25 in gal/min, ft and in/h, 60 in L/min, m and mm/h",
  source: [
    cite("NEH623", "96.3 q / (S L); the exact constant is 231 / 144 x 60 = 96.25"),
    cite("SOILS456", "triangular spacing: the rows are 0.866 S apart"),
  ],
  assumptions: [
    "What leaves the nozzles, spread evenly over the ground: drift, overspray and edges are not in it. A catch test (CATCH_RATE) is the referee.",
    "Full-circle nozzles inside the block. A half-circle nozzle of half the flow waters half the ground: the rate is the same.",
    '"offset" has the distance of the rows measured, so no 0.866 belongs to it; "triangle" works it out from the side alone.',
    ONE_CASE,
  ],
  params: {
    nozzle_flow: {
      quantity: "flow",
      symbol: "Q",
      above: 0,
      about: "Flow of one full-circle nozzle",
      usual: {
        us: [0.1, 20],
        metric: [0.4, 76],
        low: "looks like a dripper or a spray stake",
        high: "looks like the flow of the whole zone",
        source: cite("PRACTICE", "microsprinklers to impact sprinklers"),
      },
    },
    spacing_along: {
      quantity: "length",
      symbol: "S",
      above: 0,
      about: 'Distance between nozzles along the row; the side of the triangle in "triangle"',
      usual: SPRINKLER_SPACING_USUAL,
    },
    spacing_between: {
      quantity: "length",
      symbol: "L",
      atLeast: 0,
      blankIsAnswered: true,
      about: 'Distance between rows; in "triangle" blank or equal to spacing_along',
      usual: SPRINKLER_SPACING_USUAL,
    },
    units: UNITS_PARAM,
    pattern: {
      kind: "word",
      words: PATTERNS,
      default: "square",
      about: '"square" in line, rectangles too; "triangle" equilateral, one side is enough; "offset" staggered rows',
    },
  },
  unitConstants: { k: "rate of a flow on an area" },
  result: {
    quantity: "application rate",
    symbol: "R",
    about: "Depth of water per hour on the ground",
    usual: APPLICATION_RATE_USUAL,
  },
  examples: [
    {
      given: { nozzle_flow: 8, spacing_along: 60, spacing_between: 15, units: "us" },
      gives: 0.86,
      within: 0.006,
      from: cite("SPRINKLER_SLIDES", "sample problem: 8 gal/min on 60 ft by 15 ft"),
    },
    {
      given: { nozzle_flow: 6, spacing_along: 30, spacing_between: 25, units: "us", pattern: "offset" },
      gives: 0.77,
      from: cite("ARITHMETIC", "rows 25 ft apart: 96.25 x 6 / 750"),
    },
    {
      given: { nozzle_flow: 6, spacing_along: 30, spacing_between: 30, units: "us", pattern: "triangle" },
      gives: 0.741,
      within: 0.0005,
      from: cite("ARITHMETIC", "area 0.8660 x 900 = 779.4 ft2; 577.5 / 779.4"),
    },
    {
      given: { nozzle_flow: 13.5, spacing_along: 9, spacing_between: 9, units: "metric" },
      gives: 10,
      from: cite("ARITHMETIC", "60 x 13.5 = 810 L an hour on 81 m2"),
    },
  ],
  mistakes: [
    {
      slip: "The triangle was taken for a square of its side",
      answer: ({ pattern }, _constants, right) => (pattern === "triangle" ? right * TRIANGLE_HEIGHT : NaN),
    },
    {
      slip: "0.866 was multiplied in although the distance of the rows was given",
      answer: ({ pattern }, _constants, right) => (pattern === "triangle" ? NaN : right / TRIANGLE_HEIGHT),
    },
    {
      slip: "The constant was left out: flow over area",
      answer: (_given, { k }, right) => right / k,
    },
    {
      slip: "The four nozzles at the corners were all counted, though each gives this ground a quarter",
      answer: ({ pattern }, _constants, right) => (pattern === "triangle" ? NaN : right * NOZZLES_AROUND),
    },
    { slip: "The rate was given per minute", answer: (_given, _constants, right) => right / 60 },
  ],
  seeAlso: ["CATCH_RATE", "OVERHEAD_DEPTH", "OVERHEAD_RUN_MINUTES", "PLANT_SPACING_AREA"],
  compute({ nozzle_flow, spacing_along, spacing_between, pattern }, show, { constants: { k }, refuse }) {
    const between = spacing_between ?? 0;
    if (pattern === "triangle" && between !== 0 && between !== spacing_along) {
      throw refuse(
        "spacing_between",
        between,
        `it must be blank or spacing_along (${spacing_along}) in a triangle of equal sides; where the rows' distance was measured, write "offset"`,
      );
    }
    if (pattern !== "triangle" && between === 0) throw needsRows(pattern);
    const area = areaOfNozzle(pattern, spacing_along, between, show);
    return show("R = k * Q / A", (k * nozzle_flow) / area, "application rate", "Application rate");
  },
});

function needsRows(pattern: Pattern): FunctionError {
  const message = `APPLICATION_RATE: spacing_between is blank or 0; it must be more than 0 (ft or m) in the pattern "${pattern}"`;
  return new FunctionError("input", "spacing_between", message);
}
