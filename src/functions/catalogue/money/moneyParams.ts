import { cite, type NumberParam } from "../../../kernel";

export const INVESTMENT_PARAM = {
  quantity: "currency",
  symbol: "C",
  above: 0,
  about: "What is paid at the start, counted as positive",
} as const satisfies NumberParam;

const RATE_USUAL = { us: [0, 0.2], metric: [0, 0.2], source: cite("PRACTICE", "loan rates") } as const;
const RATE_GUARD = "more than 100 % a year is a percentage typed as a whole number";

export const DISCOUNT_RATE_PARAM = {
  quantity: "fraction",
  symbol: "r",
  atLeast: 0,
  atMost: 1,
  guard: RATE_GUARD,
  default: 0,
  about: "Interest a year; 0 counts no interest",
  usual: RATE_USUAL,
} as const satisfies NumberParam;

export const RATE_PARAM = {
  quantity: "fraction",
  symbol: "r",
  atLeast: 0,
  atMost: 1,
  guard: RATE_GUARD,
  about: "Interest a year; 0 is a value (straight line), so leave no blank",
  usual: RATE_USUAL,
} as const satisfies NumberParam;

export const LIFE_PARAM = {
  quantity: "years",
  symbol: "n",
  above: 0,
  atMost: 100,
  guard: "no part of an irrigation system lasts longer",
  about: "Years that the parts last; need not be whole",
  usual: {
    us: [2, 30],
    metric: [2, 30],
    low: "shorter than stakes and emitters last",
    high: "longer than most parts last",
    source: cite("PRACTICE", "stakes and emitters 3 to 5 years, mains 15, tanks and wells longer"),
  },
} as const satisfies NumberParam;

export const SIGNS = "Costs and savings are both written as positive numbers; a saving below 0 is an extra cost.";

export const NOT_TWICE =
  "Count no saving twice: a water price may hold the energy already, and feed saved is in the leachate saved.";

export const ESTIMATE =
  "An estimate before tax. Prices, losses of plants and the life of parts vary: try a shorter life, and water from your own well.";
