import { cite, defineFunction } from "../../../kernel";
import { EC_OF_WATER } from "./saltParams";

/** From here on the formula gives 1 or more: all the water would have to drain. */
const WATER_OVER_THRESHOLD = 2.5;

export const leachingRequirement = defineFunction({
  name: "LEACHING_REQUIREMENT",
  group: "Leaching",
  summary: "Part of the water that must leach to keep the soil's salt at what the crop tolerates",
  formula: "LR = ECw / (5 ECe - ECw)",
  source: [
    cite("FAO29_RECALLED", "Eq. 9"),
    cite("TURF_SEMINAR", "the same equation, worked"),
    cite("FAO56", "p. 180: Eq. 93, ECe = ECw (1 + LF) / (5 LF), solved for the leaching fraction"),
  ],
  assumptions: [
    "The threshold is of the saturation extract of a field soil (ECe), of which tables of crops speak; plants take 40, 30, 20 and 10 % of their water from the quarters of the root zone.",
    "Container crops are read by pour-through or by leachate instead: use LEACHING_FROM_EC with the highest leachate EC that the crop tolerates. The two are different numbers.",
    "Drip that waters daily has a rule of its own: ECw / (2 x the ECe at which yield ends).",
    "Long run, no rain, and drainage that carries the salt away. Then applied water = ET / (1 - LR).",
  ],
  params: {
    ec_water: {
      ...EC_OF_WATER,
      symbol: "ECw",
      about: "EC of the water as applied, its feed included",
      usual: {
        us: [0.1, 5],
        metric: [0.1, 5],
        low: "looks like rain, or like S/m",
        high: "too salty for most crops, or read in uS/cm",
        source: cite("FAO29_RECALLED", "Table 1: above 3 severe restriction on use"),
      },
    },
    ec_threshold: {
      ...EC_OF_WATER,
      symbol: "ECe",
      about: "EC of the soil's saturation extract that the crop tolerates",
      usual: {
        us: [1, 10],
        metric: [1, 10],
        low: "no crop is that sensitive",
        high: "few crops tolerate it",
        source: cite("FAO29_RECALLED", "Table 4: 1.0 for sensitive crops to 8 for tolerant ones"),
      },
    },
  },
  result: {
    quantity: "fraction",
    symbol: "LR",
    about: "Leaching requirement, a part of the water applied",
    usual: {
      us: [0.01, 0.3],
      metric: [0.01, 0.3],
      high: "hardly to be met: take other water or another crop",
      source: cite("PRACTICE", "leaching of field crops"),
    },
  },
  examples: [
    {
      given: { ec_water: 1, ec_threshold: 1.5333 },
      gives: 0.15,
      within: 0.0001,
      from: cite("FAO56", "p. 180: Eq. 93 at a leaching fraction of 0.15, 1.15 / 0.15 / 5 = 1.5333"),
    },
    {
      given: { ec_water: 1.2, ec_threshold: 2.5 },
      gives: 0.1062,
      within: 0.0001,
      from: cite("ARITHMETIC", "1.2 / (12.5 - 1.2)"),
    },
  ],
  mistakes: [
    {
      slip: "The 5 was left out",
      answer: ({ ec_water, ec_threshold }) => ec_water / (ec_threshold - ec_water),
    },
    {
      slip: "The plain ratio of the two was taken",
      answer: ({ ec_water, ec_threshold }) => ec_water / ec_threshold,
    },
    {
      slip: "The water's EC was not taken off below the line",
      answer: ({ ec_water, ec_threshold }) => ec_water / (5 * ec_threshold),
    },
    {
      slip: "Water and threshold were swapped",
      answer: ({ ec_water, ec_threshold }) => ec_threshold / (5 * ec_water - ec_threshold),
    },
  ],
  seeAlso: ["LEACHING_FROM_EC", "LEACHING_FRACTION", "GROSS_WATER"],
  caution:
    "Leaching too little burns roots with salt, and what leaches carries salt and nitrate: collect it, and follow the local rules on discharge.",
  compute({ ec_water: water, ec_threshold: threshold }, show, { noAnswer }) {
    if (water >= WATER_OVER_THRESHOLD * threshold) {
      throw noAnswer(
        `ec_water (${water}) is 2.5 times ec_threshold (${threshold}) or more: no leaching fraction below 1 would do`,
        "ec_water",
      );
    }
    const room = show(
      "x = 5 * ECe - ECw",
      5 * threshold - water,
      "EC",
      "Five times the threshold, less the water's EC",
    );
    return show("LR = ECw / x", water / room, "fraction", "Leaching requirement");
  },
});
