import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import {
  AREA_PER_PLANT_PARAM,
  COVER_FACTOR_PARAM,
  CROP_COEFFICIENT_PARAM,
  REFERENCE_ET_PARAM,
  SAME_AREA,
} from "./demand";

export const plantWaterDemand = defineFunction({
  name: "PLANT_WATER_DEMAND",
  group: "Weather and demand",
  summary: "Water that one plant uses on this day",
  formula: "V = k ET Kc A c",
  source: cite("FAO56", "Eq. 58 and Annex 1: 1 mm on 1 m2 is 1 L"),
  assumptions: [
    SAME_AREA,
    "The cover factor is your own measured ratio of demand under cover to demand outside. It is not the light transmission.",
    "A weighed pot is the referee: correct the crop coefficient by it.",
  ],
  params: {
    reference_et: REFERENCE_ET_PARAM,
    crop_coefficient: CROP_COEFFICIENT_PARAM,
    area_per_plant: AREA_PER_PLANT_PARAM,
    units: UNITS_PARAM,
    cover_factor: COVER_FACTOR_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: { quantity: "volume", symbol: "V", about: "Net water for one plant for the day" },
  examples: [
    {
      given: { reference_et: 5, crop_coefficient: 0.8, area_per_plant: 0.16, units: "metric" },
      gives: 0.64,
      from: cite("ARITHMETIC", "5 mm x 0.8 x 0.4 m x 0.4 m = 0.64 L"),
    },
    {
      given: { reference_et: 0.25, crop_coefficient: 1.1, area_per_plant: 3.5, units: "us" },
      gives: 0.6,
      within: 0.0005,
      from: cite("ARITHMETIC", "0.25 x 1.1 x 3.5 x 144 / 231 = 0.600 gal"),
    },
  ],
  mistakes: [
    {
      slip: "The crop coefficient was left out",
      instead: () => ({ crop_coefficient: 1 }),
    },
    {
      slip: "The unit constant was left out: depth x area is not yet a volume",
      answer: ({ units }, { k }, right) => (units === "us" ? right / k : NaN),
    },
    {
      slip: "Demand was divided by the crop coefficient",
      instead: ({ crop_coefficient }) => ({ crop_coefficient: 1 / crop_coefficient }),
    },
  ],
  seeAlso: ["ET0_HARGREAVES", "ET0_PENMAN_MONTEITH", "CROP_COEFFICIENT", "WATER_BALANCE", "GROSS_WATER"],
  caution: "A demand that is too low dries plants out. Check the answer with a weighed pot before changing the clock.",
  compute(given, show, { constants: { k } }) {
    const { reference_et: et, crop_coefficient: kc, area_per_plant: area, cover_factor: cover } = given;
    const use = show("ETc = ET * Kc * c", et * kc * cover, "water depth", "Depth that the plant uses");
    return show("V = k * ETc * A", k * use * area, "volume", "Net water for one plant");
  },
});
