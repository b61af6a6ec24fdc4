import { cite, defineFunction } from "../../../kernel";
import { DRY_SUBSTRATE_LEACHES, LEACHING_USUAL } from "./leachingUsual";
import { EC_OF_WATER } from "./saltParams";

export const leachingFromEc = defineFunction({
  name: "LEACHING_FROM_EC",
  group: "Leaching",
  summary: "Leaching fraction from the EC of the water applied and of the leachate",
  formula: "LF = ECa / ECl",
  source: [
    cite("MANUAL71", "leaching fraction = EC of the applied water / EC of the drain water"),
    cite("SALINITY_LAB", "leaching requirement = EC of the water / EC of the drainage"),
  ],
  assumptions: [
    "Steady state: as much salt leaves with the leachate as comes with the water, week after week. Not after a change of feed or weather, nor after rain.",
    "Salt that plants take up leaves another way, so with feed in the water the answer is high; fertilizer in the substrate makes the leachate stronger and the answer low. Sodium or chloride in place of EC avoids both.",
    "To plan: give the highest leachate EC that the crop tolerates, and the answer is the leaching fraction to run at.",
    "Leachate that dripped through, not what was poured in for a pour-through test. Both meters to 25 C.",
  ],
  params: {
    ec_applied: {
      ...EC_OF_WATER,
      symbol: "ECa",
      about: "EC of the water as applied, its feed included",
      usual: {
        us: [0.1, 3],
        metric: [0.1, 3],
        low: "looks like rain, or like S/m",
        high: "stronger than most feeds, or read in uS/cm",
        source: cite("PRACTICE", "water and feeds of container crops"),
      },
    },
    ec_leachate: {
      ...EC_OF_WATER,
      symbol: "ECl",
      about: "EC of the leachate, or the highest that the crop tolerates",
      usual: {
        us: [0.5, 8],
        metric: [0.5, 8],
        high: "salts have built up, or it was read in uS/cm",
        source: cite("PRACTICE", "leachate of container crops"),
      },
    },
  },
  result: { quantity: "fraction", symbol: "LF", about: "Leaching fraction", usual: LEACHING_USUAL },
  examples: [
    {
      given: { ec_applied: 0.9, ec_leachate: 4.5 },
      gives: 0.2,
      from: cite("ARITHMETIC", "0.9 / 4.5: the salt of five parts of water in one part of leachate"),
    },
    {
      given: { ec_applied: 2, ec_leachate: 8 },
      gives: 0.25,
      from: cite("SALINITY_LAB", "waters of 1, 2 and 3 where drainage may have 8: 13, 25 and 38 %"),
    },
  ],
  mistakes: [
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
    {
      slip: "The formula for field soils was used, which wants the soil's extract, not the leachate",
      answer: ({ ec_applied, ec_leachate }) => ec_applied / (5 * ec_leachate - ec_applied),
    },
    {
      slip: "The part kept was taken for the part leached",
      answer: (_given, _constants, right) => 1 - right,
    },
  ],
  seeAlso: ["LEACHING_FRACTION", "LEACHING_REQUIREMENT", "RUN_MINUTES_FROM_LEACHING", "FERTIGATION_EC"],
  caution: DRY_SUBSTRATE_LEACHES,
  compute({ ec_applied: applied, ec_leachate: leachate }, show, { refuse }) {
    if (applied > leachate) {
      throw refuse("ec_applied", applied, `it must be ec_leachate (${leachate}) or less; were the two swapped?`);
    }
    return show("LF = ECa / ECl", applied / leachate, "fraction", "EC applied over EC of the leachate");
  },
});
