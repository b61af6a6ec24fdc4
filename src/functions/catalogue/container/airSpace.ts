import { cite, defineFunction } from "../../../kernel";
import { AIR_SPACE_USUAL, HOLDS_FOR_HEIGHT } from "./substrate";

export const airSpace = defineFunction({
  name: "AIR_SPACE",
  group: "Container and substrate",
  summary: "Part of the substrate's volume that is air once the pot has drained",
  formula: "AS = drained / volume",
  source: [
    cite("BOYER2012", "Table 1, footnote: volume of water drained from the sample / volume of the sample"),
    cite("POROMETER", "air space"),
  ],
  assumptions: [
    "Every pore was full before it drained: soak slowly from below, and wait until the top shines.",
    "What drained is all that ran out of the open holes until dripping stopped.",
    HOLDS_FOR_HEIGHT,
    "Field soil in a shallow pot may drain nothing.",
  ],
  params: {
    drained_volume: {
      quantity: "any one unit",
      symbol: "Vd",
      atLeast: 0,
      about: "Water that ran out of the saturated pot; 0 is a value, so leave no blank",
    },
    container_volume: {
      quantity: "any one unit",
      symbol: "V",
      above: 0,
      about: "Substrate in the pot, to the fill line, in the same unit",
    },
  },
  result: { quantity: "fraction", symbol: "AS", about: "Air space after drainage", usual: AIR_SPACE_USUAL },
  examples: [
    {
      given: { drained_volume: 66, container_volume: 347.5 },
      gives: 0.1899,
      within: 0.0001,
      from: cite("ARITHMETIC", "66 mL out of a core of 347.5 mL"),
    },
    {
      given: { drained_volume: 0.56, container_volume: 2.8 },
      gives: 0.2,
      from: cite("ARITHMETIC", "0.56 L out of a pot of 2.8 L"),
    },
  ],
  mistakes: [
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
    {
      slip: "What did not drain was taken for the air: solids and water",
      answer: (_given, _constants, right) => 1 - right,
    },
    {
      slip: "The drained water was divided by what did not drain",
      answer: ({ drained_volume, container_volume }) => drained_volume / (container_volume - drained_volume),
    },
  ],
  seeAlso: ["CONTAINER_CAPACITY", "POROMETER_TEST", "CONTAINER_VOLUME"],
  caution:
    "Below a tenth of air, roots drown and rot in wet weather: change the substrate or the pot, not the clock alone.",
  compute({ drained_volume: drained, container_volume: volume }, show, { refuse }) {
    if (drained > volume) {
      throw refuse("drained_volume", drained, `it must be container_volume (${volume}) or less; were the two swapped?`);
    }
    return show("AS = Vd / V", drained / volume, "fraction", "Drained water, now air, over the volume");
  },
});
