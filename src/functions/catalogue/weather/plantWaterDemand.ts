import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const plantWaterDemand = defineFunction({
  name: "PLANT_WATER_DEMAND",
  group: "Weather and demand",
  summary: "What one plant uses on this day",
  formula: "V = k ET Kc A c",
  source: cite("FAO56", "Eq. 58 and Annex 1: 1 mm on 1 m2 is 1 L"),
  assumptions: [
    "The area must be the one for which the crop coefficient was measured: bed area per plant, canopy or pot top. Never mix them.",
    "The cover factor is your own measured ratio of demand under cover to demand outside. It is not the light transmission.",
    "A weighed pot is the referee: correct the crop coefficient by it.",
  ],
  params: {
    reference_et: {
      quantity: "water depth",
      symbol: "ET",
      above: 0,
      about: "Reference evapotranspiration of the day",
      usual: {
        us: [0.02, 0.5],
        metric: [0.5, 12],
        high: "looks like the other unit, or like a week's sum",
        source: cite("FAO56", "Table 2, average reference evapotranspiration"),
      },
    },
    crop_coefficient: {
      quantity: "factor",
      symbol: "Kc",
      above: 0,
      about: "Crop coefficient, on the same area",
      usual: {
        us: [0.3, 5],
        metric: [0.3, 5],
        high: "look at the area it was measured on",
        source: cite("SCHUCH_BURGER", "container basis, 1 to 4.7 for high water users"),
      },
    },
    area_per_plant: {
      quantity: "area",
      symbol: "A",
      above: 0,
      about: "Area per plant on which the coefficient is based",
    },
    units: UNITS_PARAM,
    cover_factor: {
      quantity: "factor",
      symbol: "c",
      above: 0,
      default: 1,
      about: "Measured demand under cover over demand outside",
      usual: { us: [0.3, 1.2], metric: [0.3, 1.2], source: cite("PRACTICE", "shade and plastic houses") },
    },
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
      answer: (_given, { k }, right) => right / k,
    },
    {
      slip: "Demand was divided by the crop coefficient",
      instead: ({ crop_coefficient }) => ({ crop_coefficient: 1 / crop_coefficient }),
    },
  ],
  seeAlso: ["ET0_HARGREAVES", "ET0_PENMAN_MONTEITH", "GROSS_WATER"],
  caution: "A demand that is too low dries plants out. Check the answer with a weighed pot before changing the clock.",
  compute(given, show, { constants: { k } }) {
    const { reference_et: et, crop_coefficient: kc, area_per_plant: area, cover_factor: cover } = given;
    const use = show("ETc = ET * Kc * c", et * kc * cover, "water depth", "Depth that the plant uses");
    return show("V = k * ETc * A", k * use * area, "volume", "Net water for one plant");
  },
});
