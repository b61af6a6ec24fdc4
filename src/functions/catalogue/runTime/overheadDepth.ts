import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { largerLoss, LARGER_LOSS_ONLY, LEACHING_FRACTION_PARAM, UNIFORMITY_PARAM } from "./losses";
import { OVERHEAD_DEPTH_USUAL } from "./overhead";
import { CAPTURE_USUAL, potTop, TOP_DIAMETER_PARAM } from "./potTop";

export const overheadDepth = defineFunction({
  name: "OVERHEAD_DEPTH",
  group: "Run time, zones, booms, mats",
  summary: "Depth that sprinklers or a boom must give so that each pot gets its water",
  formula: "G = N / (k pi D2 / 4 CF) / min(1 - LF, DU)",
  source: [
    cite("EP458", "sprinkler requirement from plant use, capture factor and uniformity"),
    cite("ENH1268", "gross = net / (1 - LF)"),
  ],
  assumptions: [
    "The net is what the plant uses, as PLANT_WATER_DEMAND or a weighed pot gives it; never the answer of GROSS_WATER, which has the losses in it already.",
    "The pot drinks what falls on its top, times the capture factor: the opening counts, not the ground of the plant.",
    LARGER_LOSS_ONLY,
    "Wind drift and evaporation on the way are not in it.",
  ],
  params: {
    net_per_plant: { quantity: "volume", symbol: "N", above: 0, about: "Water that one plant uses" },
    top_diameter: TOP_DIAMETER_PARAM,
    capture_factor: {
      quantity: "factor",
      symbol: "CF",
      above: 0,
      about: "Water that the pot catches with its plant over what it catches without",
      usual: CAPTURE_USUAL,
    },
    leaching_fraction: LEACHING_FRACTION_PARAM,
    uniformity: UNIFORMITY_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on a pot" },
  result: {
    quantity: "water depth",
    symbol: "G",
    about: "Gross depth over the whole bed",
    usual: OVERHEAD_DEPTH_USUAL,
  },
  examples: [
    {
      given: {
        net_per_plant: 0.17,
        top_diameter: 10,
        capture_factor: 1.25,
        leaching_fraction: 0.15,
        uniformity: 0.8,
        units: "us",
      },
      gives: 0.5,
      within: 0.00001,
      from: cite("ARITHMETIC", "0.17 x 231 / 25 pi = 0.5 in on the top; / 1.25 = 0.4; / 0.8"),
    },
    {
      given: {
        net_per_plant: 0.4712389,
        top_diameter: 20,
        capture_factor: 1.5,
        leaching_fraction: 0,
        uniformity: 0.8,
        units: "metric",
      },
      gives: 12.5,
      within: 0.00001,
      from: cite("ARITHMETIC", "0.4712 L on 314.16 cm2 is 15 mm; / 1.5 = 10; / 0.8"),
    },
  ],
  mistakes: [
    {
      slip: "The answer of GROSS_WATER was taken for the net: the losses counted twice",
      answer: ({ leaching_fraction, uniformity }, _constants, right) =>
        right / Math.min(1 - leaching_fraction, uniformity),
    },
    {
      slip: "Leaching and uniformity were both divided out",
      answer: ({ leaching_fraction, uniformity }, _constants, right) =>
        right / Math.max(1 - leaching_fraction, uniformity),
    },
    {
      slip: "Nothing was added for leaching or unevenness",
      instead: () => ({ leaching_fraction: 0, uniformity: 1 }),
    },
    { slip: "The capture factor was left out", instead: () => ({ capture_factor: 1 }) },
    {
      slip: "It was multiplied by the capture factor, not divided",
      instead: ({ capture_factor }) => ({ capture_factor: 1 / capture_factor }),
    },
    {
      slip: "The diameter was used as a radius",
      instead: ({ top_diameter }) => ({ top_diameter: 2 * top_diameter }),
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "CAPTURE_FACTOR", "OVERHEAD_RUN_MINUTES", "BOOM_PLAN"],
  caution:
    "A capture factor from another crop or size dries plants out: catch the water of ten pots before relying on it.",
  compute(given, show, { constants: { k } }) {
    const { net_per_plant: net, capture_factor: capture } = given;
    const top = potTop(given.top_diameter, show);
    const caught = show("w = k * At * CF", k * top * capture, "volume", "What one pot gets of each unit of depth");
    const depth = show("Gn = N / w", net / caught, "water depth", "Net depth");
    const d = largerLoss(given.leaching_fraction, given.uniformity, show);
    return show("G = Gn / d", depth / d, "water depth", "Gross depth over the bed");
  },
});
