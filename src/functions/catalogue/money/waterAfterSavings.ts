import { cite, defineFunction, fullNumber } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";

function product(parts: readonly number[]): number {
  return parts.reduce((left, part) => left * (1 - part), 1);
}

export const waterAfterSavings = defineFunction({
  name: "WATER_AFTER_SAVINGS",
  group: "Money",
  summary: "How much water is still needed when several savings act one after the other",
  formula: "W = B (1 - s1) (1 - s2) ...",
  source: cite("DEFINITION", "each saving is a part of what the one before left"),
  assumptions: [
    "Two savings of 30 % leave 49 %, not 40 %: the second acts on what the first left. Their order makes no difference.",
    "Each saving must be one of its own: stakes instead of sprinklers already hold the water that fell between the pots.",
    "A blank cell is no saving. The answer is in the unit of the baseline.",
    ONE_CASE,
  ],
  params: {
    baseline: {
      quantity: "any one unit",
      symbol: "B",
      above: 0,
      about: "Water used before, such as a season's meter reading",
    },
    savings: {
      kind: "numbers",
      quantity: "fraction",
      symbol: "s",
      atLeast: 0,
      atMost: 1,
      blanks: "zero",
      about: "One saving a cell, each a fraction of what the one before left",
    },
  },
  result: { quantity: "any one unit", symbol: "W", about: "Water still needed, in the unit of the baseline" },
  examples: [
    {
      given: { baseline: 1000, savings: [[0.3], [0.2], [null], [0.1]] },
      gives: 504,
      from: cite("ARITHMETIC", "1,000 - 300 = 700; - 140 = 560; - 56 = 504"),
    },
    {
      given: { baseline: 3200, savings: [[0.5, 0.25]] },
      gives: 1200,
      from: cite("ARITHMETIC", "3,200 / 2 = 1,600; - 400"),
    },
  ],
  mistakes: [
    {
      slip: "The savings were added up",
      answer: ({ baseline, savings }) => baseline * (1 - savings.reduce((sum, saving) => sum + saving, 0)),
    },
    {
      slip: "Only the largest saving was counted",
      answer: ({ baseline, savings }) => baseline * (1 - savings.reduce((most, saving) => Math.max(most, saving), 0)),
    },
    {
      slip: "The water saved was given, not the water left",
      answer: ({ baseline }, _constants, right) => baseline - right,
    },
  ],
  seeAlso: ["WATER_COST", "PAYBACK_YEARS"],
  compute({ baseline, savings }, show) {
    const steps = savings.filter((saving) => saving > 0).map((saving) => `(1 - ${fullNumber(saving)})`);
    const left = show(
      `f = ${["1", ...steps].join(" * ")}`,
      product(savings),
      "fraction",
      "Part that is left after each in turn",
    );
    return show("W = B * f", baseline * left, "any one unit", "Water still needed");
  },
});
