import { cite, defineFunction, type Show } from "../../../kernel";
import { ESTIMATE, INVESTMENT_PARAM, LIFE_PARAM, RATE_PARAM } from "./moneyParams";

/** What 1 costs a year over the life, with interest, on symbols r and n. */
function recoveryFactor(rate: number, life: number, show: Show): number {
  if (rate === 0) return show("f = 1 / n", 1 / life, "factor", "Straight line: the same part every year");
  return show(
    "f = r / (1 - (1 + r) ^ (-1 * n))",
    rate / -Math.expm1(-life * Math.log1p(rate)),
    "factor",
    "Capital recovery factor",
  );
}

export const annualizedCost = defineFunction({
  name: "ANNUALIZED_COST",
  group: "Money",
  summary: "What an investment costs a year over its life, interest included",
  formula: "A = (C - S) r / (1 - (1 + r)^-n) + S r",
  source: [
    cite("DCF", "capital recovery with salvage; at a rate of 0 straight line"),
    cite("ANNUAL_WORTH_TEXT", "annual worth = first cost x capital recovery - salvage x sinking fund + running cost"),
  ],
  assumptions: [
    "Costs are positive. Paid at the start, recovered in equal sums at year ends; the salvage comes in at the end of the life.",
    "Running costs (water, power, labour, repairs) are not in it: add them.",
    "The rate and the costs belong together: a bank's rate with prices that rise, the rate less inflation with today's prices.",
    "Parts with different lives one by one: stakes, mains and pump each have their own line.",
  ],
  params: {
    investment: INVESTMENT_PARAM,
    life_years: LIFE_PARAM,
    rate: RATE_PARAM,
    salvage: {
      quantity: "currency",
      symbol: "S",
      atLeast: 0,
      default: 0,
      about: "What the parts still bring at the end of their life; not more than the investment",
    },
  },
  result: { quantity: "currency", symbol: "A", about: "Cost per year" },
  examples: [
    {
      given: { investment: 8000, life_years: 5, rate: 0.08, salvage: 500 },
      gives: 1918.45,
      within: 0.05,
      from: cite("ANNUAL_WORTH_TEXT", "annual worth 7,418.45 with running cost of 5,500"),
    },
    {
      given: { investment: 15000, life_years: 5, rate: 0, salvage: 5000 },
      gives: 2000,
      from: cite("ARITHMETIC", "10,000 over 5 years"),
    },
    {
      given: { investment: 1, life_years: 5, rate: 0.1 },
      gives: 0.2638,
      within: 0.000006,
      from: cite("CAPITAL_RECOVERY_TEXT", "capital recovery factor of 10 % and 5 years"),
    },
  ],
  mistakes: [
    { slip: "Interest was left out: straight line", instead: () => ({ rate: 0 }) },
    { slip: "The salvage was left out", instead: () => ({ salvage: 0 }) },
    {
      slip: "Interest of a year was taken on the whole investment, and straight line added to it",
      answer: ({ investment, life_years, rate, salvage }) => (investment - salvage) / life_years + investment * rate,
    },
    {
      slip: "The payment was counted at the start of each year",
      answer: ({ rate }, _constants, right) => right / (1 + rate),
    },
  ],
  seeAlso: ["PAYBACK_YEARS", "PAYBACK_TABLE", "COST_PER_SALEABLE_PLANT"],
  caution: ESTIMATE,
  native: "PMT(r, n, -1 * C, S)",
  compute({ investment, life_years, rate, salvage }, show, { refuse }) {
    if (salvage > investment) throw refuse("salvage", salvage, `it must be investment (${investment}) or less`);
    const factor = recoveryFactor(rate, life_years, show);
    const worn = show("w = (C - S) * f", (investment - salvage) * factor, "currency", "What wears away, per year");
    return show("A = w + S * r", worn + salvage * rate, "currency", "With interest on what is still there at the end");
  },
});
