import { cite, defineFunction, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { DISCOUNT_RATE_PARAM, ESTIMATE, INVESTMENT_PARAM, NOT_TWICE, SIGNS } from "./moneyParams";
import { equalSavings } from "./payback";

/** A sum that misses the investment by float dust alone has reached it. */
const DUST = 1e-9;

/** Year by year, savings at year ends; the first crossing counts, linear within its year. */
function unequalSavings(investment: number, savings: readonly number[], rate: number, show: Show): number | null {
  let paid = 0;
  for (const [index, saving] of savings.entries()) {
    const discounted = saving / (1 + rate) ** (index + 1);
    const missing = investment - paid;
    if (discounted - missing >= -DUST * investment && discounted > 0) {
      show("before", index, "years", "Whole years before the crossing");
      show("paid", paid, "currency", "Paid back by then, discounted");
      show("next", discounted, "currency", "Saving of the year of the crossing, discounted");
      return show(
        "y = before + MIN(1, (C - paid) / next)",
        index + Math.min(1, missing / discounted),
        "years",
        "Years, linear within the year of the crossing",
      );
    }
    paid += discounted;
  }
  return null;
}

export const paybackYears = defineFunction({
  name: "PAYBACK_YEARS",
  group: "Money",
  summary: "How many years the savings take to pay the investment back",
  formula: "y = C / S; discounted: y = -ln(1 - r C / S) / ln(1 + r)",
  source: cite(
    "DCF",
    "simple payback, discounted payback of a level series, interpolation in the year of the crossing",
  ),
  assumptions: [
    SIGNS,
    "Savings fall at year ends, before tax. One number is the same saving every year; a range is one saving a year, and may hold bad years below 0 and years of 0.",
    "A blank year may count as 0: count the cells of the range.",
    "Payback says nothing of what comes after it, nor of the life of the parts: compare it with the life of stakes and emitters, and check the net present value too.",
    NOT_TWICE,
    ONE_CASE,
  ],
  params: {
    investment: INVESTMENT_PARAM,
    annual_savings: {
      kind: "numbers",
      quantity: "currency",
      symbol: "S",
      blanks: "refused",
      about: "Saving of a year, or a range with one saving a year in order",
    },
    discount_rate: DISCOUNT_RATE_PARAM,
  },
  result: {
    quantity: "years",
    symbol: "y",
    about: "Years to pay back",
    usual: {
      us: [0.2, 15],
      metric: [0.2, 15],
      low: "very short: look for a saving counted twice",
      high: "longer than most parts last",
      source: cite("PRACTICE", "life of stakes 3 to 5 years, of mains 15"),
    },
  },
  examples: [
    { given: { investment: 12000, annual_savings: 3000 }, gives: 4, from: cite("ARITHMETIC", "12,000 / 3,000") },
    {
      given: { investment: 10000, annual_savings: [[3000], [4000], [5000]] },
      gives: 2.6,
      from: cite("ARITHMETIC", "7,000 after two years, 3,000 of the third year's 5,000"),
    },
    {
      given: { investment: 10000, annual_savings: 3000, discount_rate: 0.08 },
      gives: 4.03,
      within: 0.001,
      from: cite("DCF", "-ln(1 - 0.08 x 10,000 / 3,000) / ln 1.08 = 0.31015 / 0.07696"),
    },
  ],
  mistakes: [
    {
      slip: "Interest was left out",
      instead: () => ({ discount_rate: 0 }),
    },
    {
      slip: "The ratio was inverted",
      answer: ({ investment, annual_savings: [first, ...more] }) =>
        first === undefined || more.length > 0 ? NaN : first / investment,
    },
    {
      slip: "The investment was divided by the mean saving",
      answer: ({ investment, annual_savings }) =>
        annual_savings.length === 1
          ? NaN
          : (investment * annual_savings.length) / annual_savings.reduce((sum, saving) => sum + saving, 0),
    },
  ],
  seeAlso: ["PAYBACK_TABLE", "PAYBACK_SENSITIVITY", "ANNUALIZED_COST"],
  caution: ESTIMATE,
  compute({ investment, annual_savings, discount_rate }, show, { noAnswer }) {
    const [first = 0] = annual_savings;
    const years =
      annual_savings.length === 1
        ? equalSavings(investment, first, discount_rate, show)
        : unequalSavings(investment, annual_savings, discount_rate, show);
    if (years === null) throw noAnswer("annual_savings never pay the investment back", "annual_savings");
    return years;
  },
});
