import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { AREA_PER_PLANT_PARAM, CROP_COEFFICIENT_USUAL, REFERENCE_ET_PARAM } from "./demand";

export const cropCoefficient = defineFunction({
  name: "CROP_COEFFICIENT",
  group: "Weather and demand",
  summary: "A plant's water use against the reference, from a weighed pot",
  formula: "Kc = V / (k ET A)",
  source: [
    cite("FAO56", "Eq. 58 solved for Kc; Annex 1: 1 mm on 1 m2 is 1 L"),
    cite("SCHUCH_BURGER", "water use of pots by weight, on a container basis"),
  ],
  assumptions: [
    "Use and reference of the same hours: a pot weighed 24 hours apart belongs to that day's reference, and neither rain nor irrigation may fall between.",
    "Valid with this area and this reference only: name the area (bed per plant, canopy or pot top) beside the number and keep to it.",
    "One pot on one day says little: take the mean of several pots over several days, and measure again after growth, pruning or spacing.",
  ],
  params: {
    measured_use: {
      quantity: "volume",
      symbol: "V",
      above: 0,
      about: "Water that one plant used in the day, from two weighings",
      usual: {
        us: [0.01, 10],
        metric: [0.03, 40],
        high: "looks like grams, or like a whole bed",
        source: cite("PRACTICE", "small pots to boxed trees"),
      },
    },
    reference_et: REFERENCE_ET_PARAM,
    area_per_plant: { ...AREA_PER_PLANT_PARAM, about: "Area per plant on which the coefficient is to be based" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: {
    quantity: "factor",
    symbol: "Kc",
    about: "Crop coefficient on this area",
    usual: CROP_COEFFICIENT_USUAL,
  },
  examples: [
    {
      given: { measured_use: 0.64, reference_et: 5, area_per_plant: 0.16, units: "metric" },
      gives: 0.8,
      from: cite("ARITHMETIC", "0.64 L on 0.16 m2 is 4 mm; 4 / 5"),
    },
    {
      given: { measured_use: 0.6, reference_et: 0.25, area_per_plant: 3.5, units: "us" },
      gives: 1.1,
      from: cite("ARITHMETIC", "0.6 x 231 = 138.6 in3 on 3.5 x 144 = 504 in2 is 0.275 in; 0.275 / 0.25"),
    },
  ],
  mistakes: [
    {
      slip: "The ratio was inverted",
      answer: (_given, _constants, right) => 1 / right,
    },
    {
      slip: "The area was left out: a volume was divided by a depth",
      instead: () => ({ area_per_plant: 1 }),
    },
    {
      slip: "The unit constant was left out",
      answer: ({ units }, { k }, right) => (units === "us" ? right * k : NaN),
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "WATER_FROM_WEIGHT", "ET0_PENMAN_MONTEITH"],
  caution:
    "A coefficient from a thirsty or a shaded pot starves the block: measure on well-watered plants of the block itself.",
  compute({ measured_use: use, reference_et: et, area_per_plant: area }, show, { constants: { k } }) {
    const depth = show("ETc = V / (k * A)", use / (k * area), "water depth", "Depth that the plant used on this area");
    return show("Kc = ETc / ET", depth / et, "factor", "Crop coefficient");
  },
});
