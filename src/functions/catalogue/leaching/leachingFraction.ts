import { cite, defineFunction } from "../../../kernel";
import { DRY_SUBSTRATE_LEACHES, LEACHING_USUAL } from "./leachingUsual";

export const leachingFraction = defineFunction({
  name: "LEACHING_FRACTION",
  group: "Leaching",
  summary: "Part of the water that entered the pot and ran out below",
  formula: "LF = leachate / applied",
  source: cite("ENH1268", "definition; keep it below 15 %"),
  assumptions: [
    "Applied is the water that entered the pot: water kept plus leachate. Under sprinklers that is not what an empty pot catches, since the canopy sheds or gathers water.",
    "Wait until dripping has stopped; take ten pots or more and pool them.",
    "A blank leachate may count as 0: count the cells of the log.",
  ],
  params: {
    leachate: {
      quantity: "any one unit",
      symbol: "L",
      atLeast: 0,
      about: "Water caught below the pot; 0 is a value, so leave no blank",
    },
    applied: { quantity: "any one unit", symbol: "A", above: 0, about: "Water that entered the pot, in the same unit" },
  },
  result: { quantity: "fraction", symbol: "LF", about: "Leaching fraction", usual: LEACHING_USUAL },
  examples: [
    { given: { leachate: 150, applied: 1000 }, gives: 0.15, from: cite("ARITHMETIC", "150 / 1000") },
    {
      given: { leachate: 25, applied: 125 },
      gives: 0.2,
      from: cite("MANUAL71", "125 units applied where plants use 100: 25 drain, 25 / 125"),
    },
    {
      given: { leachate: 0.12, applied: 0.8 },
      gives: 0.15,
      from: cite("ARITHMETIC", "pot 5.20 kg before, 5.88 kg after, 0.12 kg out: 0.12 / (5.88 - 5.20 + 0.12)"),
    },
  ],
  mistakes: [
    {
      slip: "Leachate was divided by the water kept, not by the water applied",
      answer: ({ leachate, applied }) => leachate / (applied - leachate),
    },
    { slip: "The part kept was taken for the part leached", answer: (_given, _constants, right) => 1 - right },
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
  ],
  seeAlso: ["LEACHING_SUMMARY", "RUN_MINUTES_FROM_LEACHING", "LEACHING_FROM_EC", "NUTRIENT_LEACHED", "GROSS_WATER"],
  caution: DRY_SUBSTRATE_LEACHES,
  compute({ leachate, applied }, show, { refuse }) {
    if (leachate > applied)
      throw refuse("leachate", leachate, `it must be applied (${applied}) or less; were the two swapped?`);
    return show("LF = L / A", leachate / applied, "fraction", "Leachate over water applied");
  },
});
