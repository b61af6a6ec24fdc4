import { cite, defineFunction } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { INJECTOR_RATIO_USUAL } from "./feedParams";

export const injectorRatio = defineFunction({
  name: "INJECTOR_RATIO",
  group: "Feed and water quality",
  summary: "Ratio that an injector really doses, from the water treated and the stock it used",
  formula: "R = treated / stock; with water metered before the injector R = (water + stock) / stock",
  source: [
    cite("DEFINITION", "1:R is 1 part of stock in R parts of treated water"),
    cite("INJECTOR_TRANSCRIPT", "flow method: diluted volume over stock volume"),
  ],
  assumptions: [
    "Both volumes in one unit, over the same time. Run it at the flow it works at: many dose otherwise at a trickle.",
    "Take enough for the reading: a tenth of a litre off in a litre of stock is a tenth off in the ratio.",
    "The answer is the R of 1:R. 100 / R is the same in percent.",
    ONE_CASE,
  ],
  params: {
    treated_volume: {
      quantity: "volume",
      symbol: "Vt",
      above: 0,
      about: "Water that went through in the test, caught at the end or read off a meter",
    },
    stock_used: {
      quantity: "volume",
      symbol: "Vs",
      above: 0,
      about: "Stock that was drawn meanwhile, in the same unit",
    },
    counts_stock: {
      kind: "switch",
      default: true,
      about:
        "TRUE: the treated volume holds the stock (caught behind the injector); FALSE: metered before the injector",
    },
  },
  result: {
    quantity: "factor",
    symbol: "R",
    about: "Parts of treated water for 1 part of stock",
    usual: INJECTOR_RATIO_USUAL,
  },
  examples: [
    { given: { treated_volume: 480, stock_used: 5 }, gives: 96, from: cite("ARITHMETIC", "480 / 5") },
    {
      given: { treated_volume: 99, stock_used: 1, counts_stock: false },
      gives: 100,
      from: cite("ARITHMETIC", "99 of water and 1 of stock make 100 parts"),
    },
  ],
  mistakes: [
    {
      slip: "The stock was counted the other way: in or beside the treated volume",
      instead: ({ counts_stock }) => ({ counts_stock: !counts_stock }),
    },
    { slip: "The ratio was inverted", answer: (_given, _constants, right) => 1 / right },
    { slip: "The answer was given in percent", answer: (_given, _constants, right) => 100 / right },
  ],
  seeAlso: ["STOCK_WEIGHT", "PPM_FROM_EC"],
  compute({ treated_volume, stock_used, counts_stock }, show, { refuse }) {
    if (stock_used > treated_volume) {
      const itMust = `it must be treated_volume (${treated_volume}) or less; were the two swapped?`;
      throw refuse("stock_used", stock_used, itMust);
    }
    if (counts_stock) return show("R = Vt / Vs", treated_volume / stock_used, "factor", "Treated water over stock");
    const treated = show("T = Vt + Vs", treated_volume + stock_used, "volume", "Water and stock together");
    return show("R = T / Vs", treated / stock_used, "factor", "Treated water over stock");
  },
});
