import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { READINGS_PARAM, ZEROS_PARAM } from "./readings";
import { showMean } from "./spread";
import { APPLICATION_RATE_USUAL } from "./sprinklers";

export const catchRate = defineFunction({
  name: "CATCH_RATE",
  group: "Flow and uniformity",
  summary: "How fast overhead water really comes down, from catch cans",
  formula: "R = 60 m / (A t)",
  source: [
    cite("DEFINITION", "depth = volume / area of the mouth"),
    cite("AUDIT_WORKSHEETS", "net precipitation rate: 3.66 x mL / (min x in2) in in/h"),
  ],
  assumptions: [
    "All cans alike, mouths level and above the leaves, on a square grid over the whole block: 16 or more.",
    "The diameter is that of the mouth, inside: a tapered can holds the same water whatever its bottom.",
    'A can left out under "skip" raises the rate: use it for a can that fell over, and "count" for one that stayed dry.',
    "Holds for the day, the wind and the pressure of the test.",
  ],
  params: {
    catches_ml: {
      ...READINGS_PARAM,
      quantity: "catch",
      about: "Water in each can, mL; a range of any shape",
    },
    can_diameter: {
      quantity: "pot size",
      symbol: "D",
      above: 0,
      about: "Inside diameter of the mouth of a can",
      usual: {
        us: [2.5, 12],
        metric: [6, 30],
        low: "looks like a radius, or like feet",
        high: "looks like mm, or like an area",
        source: cite("PRACTICE", "cups to buckets"),
      },
    },
    minutes: {
      quantity: "minutes",
      symbol: "t",
      above: 0,
      about: "Minutes for which the water ran over the cans",
      usual: {
        us: [5, 180],
        metric: [5, 180],
        low: "looks like hours",
        high: "looks like seconds",
        source: cite("PRACTICE", "a test of a quarter of an hour to some hours"),
      },
    },
    units: UNITS_PARAM,
    zeros: ZEROS_PARAM,
  },
  unitConstants: { k: "depth of a catch" },
  result: {
    quantity: "application rate",
    symbol: "R",
    about: "Mean depth of water per hour",
    usual: APPLICATION_RATE_USUAL,
  },
  examples: [
    {
      given: {
        catches_ml: [
          [112, 98, 105, 121, 84, 76],
          [118, 109, 95, 88, 126, 101],
          [92, 115, 107, 79, 70, 103],
          [119, 96, 110, 90, 85, 113],
        ],
        can_diameter: 4.25,
        minutes: 30,
        units: "us",
      },
      gives: 0.8646,
      within: 0.0001,
      from: cite("ARITHMETIC", "mean 2,412 / 24 = 100.5 mL = 6.133 in3; mouth 14.186 in2; 0.4323 in in half an hour"),
    },
    {
      given: { catches_ml: [[20, 25, 30, 25]], can_diameter: 10.16, minutes: 30, units: "metric" },
      gives: 6.167,
      within: 0.001,
      from: cite("ARITHMETIC", "mean 25 mL on 81.07 cm2 = 3.0837 mm in half an hour"),
    },
  ],
  mistakes: [
    {
      slip: "The depth of the test was taken as the rate of an hour",
      answer: ({ minutes }, _constants, right) => (right * minutes) / 60,
    },
    { slip: "The rate was given per minute", answer: (_given, _constants, right) => right / 60 },
    { slip: "The diameter was used as a radius", answer: (_given, _constants, right) => right / 4 },
    {
      slip: "The sum of the cans was used, not their mean",
      answer: ({ catches_ml }, _constants, right) => right * catches_ml.length,
    },
  ],
  seeAlso: ["UNIFORMITY_AUDIT", "APPLICATION_RATE", "OVERHEAD_RUN_MINUTES", "CAPTURE_FACTOR"],
  compute({ catches_ml, can_diameter, minutes }, show, { constants: { k } }) {
    const m = showMean(catches_ml, show, "catch");
    const mouth = show("A = PI() * D^2 / 4", (Math.PI * can_diameter ** 2) / 4, "pot area", "Mouth of a can");
    const depth = show("d = k * m / A", (k * m) / mouth, "water depth", "Depth that the test put down");
    return show("R = 60 * d / t", (60 * depth) / minutes, "application rate", "Application rate");
  },
});
