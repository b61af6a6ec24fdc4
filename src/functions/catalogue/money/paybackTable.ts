import { cite, defineFunction, type CellAnswer, type Show } from "../../../kernel";
import { DISCOUNT_RATE_PARAM, ESTIMATE, INVESTMENT_PARAM, SIGNS } from "./moneyParams";

const HEADER = ["year", "saving", "cumulative", "discounted cumulative"] as const;

/** The steps of the first year, on symbols C, S and r. */
function showFirstYear(investment: number, saving: number, rate: number, show: Show): void {
  show("sum = -1 * C + S", saving - investment, "currency", "Investment and the first saving");
  show("dS = S / (1 + r)", saving / (1 + rate), "currency", "First saving, discounted by one year");
  show("dsum = -1 * C + dS", saving / (1 + rate) - investment, "currency", "Investment and the discounted saving");
}

export const paybackTable = defineFunction({
  name: "PAYBACK_TABLE",
  group: "Money",
  summary: "What an investment has brought in so far, year by year, with interest and without",
  formula: "cumulative = -C + t S; discounted: -C + sum of S / (1 + r)^t",
  source: cite("DCF", "net cash by year, and net present value by year"),
  assumptions: [
    SIGNS,
    "Both sums start at minus the investment in year 0 and cross 0 when it is paid back; the last discounted one is the net present value after that many years.",
    "The saving is the same every year and falls at its end. A spreadsheet's NPV would discount the first amount of its list too: leave the investment out of it and add it.",
  ],
  params: {
    investment: INVESTMENT_PARAM,
    annual_saving: {
      quantity: "currency",
      symbol: "S",
      about: "Saving of every year, below 0 an extra cost; 0 is a value, so leave no blank",
    },
    years: {
      quantity: "count",
      symbol: "n",
      atLeast: 1,
      atMost: 100,
      whole: true,
      guard: "no part of an irrigation system lasts longer",
      about: "Years that the table shows",
    },
    discount_rate: DISCOUNT_RATE_PARAM,
  },
  result: {
    header: true,
    table: [
      { name: "year", quantity: "count" },
      { name: "saving", quantity: "currency" },
      { name: "cumulative", quantity: "currency" },
      { name: "discounted cumulative", quantity: "currency" },
    ],
    about: "Year 0 with the investment alone, then one row a year; both sums are net of the investment",
  },
  examples: [
    {
      given: { investment: 12000, annual_saving: 5000, years: 3 },
      gives: [
        [...HEADER],
        [0, "", -12000, -12000],
        [1, 5000, -7000, -7000],
        [2, 5000, -2000, -2000],
        [3, 5000, 3000, 3000],
      ],
      from: cite("ARITHMETIC", "5,000 a year; paid back in the third"),
    },
    {
      given: { investment: 1000, annual_saving: 550, years: 2, discount_rate: 0.1 },
      gives: [[...HEADER], [0, "", -1000, -1000], [1, 550, -450, -500], [2, 550, 100, -500 + 550 / 1.21]],
      from: cite("ARITHMETIC", "550 / 1.1 = 500; 550 / 1.21 = 454.55: not paid back with interest"),
    },
  ],
  mistakes: [],
  seeAlso: ["PAYBACK_YEARS", "PAYBACK_SENSITIVITY", "ANNUALIZED_COST"],
  caution: ESTIMATE,
  compute({ investment, annual_saving, years, discount_rate }, show) {
    showFirstYear(investment, annual_saving, discount_rate, show);
    const rows: CellAnswer[][] = [[...HEADER], [0, "", -investment, -investment]];
    let discounted = -investment;
    for (let year = 1; year <= years; year += 1) {
      discounted += annual_saving / (1 + discount_rate) ** year;
      rows.push([year, annual_saving, annual_saving * year - investment, discounted]);
    }
    return rows;
  },
});
