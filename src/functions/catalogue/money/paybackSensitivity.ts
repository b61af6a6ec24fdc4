import { cite, defineFunction, FunctionError, type CellAnswer, type Show } from "../../../kernel";
import { isUnwritten, type PlanCell } from "../runTime/planRows";
import { inRow } from "./faultyRow";
import { DISCOUNT_RATE_PARAM, ESTIMATE, INVESTMENT_PARAM, LIFE_PARAM, SIGNS } from "./moneyParams";
import { equalSavings, worthOfOneAYear } from "./payback";

const HEADER = ["name", "value low", "value high", "payback low", "payback high"] as const;
const NEVER = "never";

/** The numbers of a plan, of which one at a time is moved. */
interface Plan {
  readonly investment: number;
  readonly saving: number;
  readonly life: number;
}

interface Line {
  readonly name: string;
  /** How far apart the two values lie, worked out without taking two near sums from one another. */
  readonly width: number;
  readonly low: Plan;
  readonly high: Plan;
}

interface Saving {
  readonly name: string;
  readonly amount: number;
}

function valueOf({ investment, saving, life }: Plan, rate: number, show: Show): number {
  const worth = worthOfOneAYear(rate, life, show);
  return show("V = -1 * C + S * a", -investment + saving * worth, "currency", "Today's worth of the whole project");
}

function paybackOf({ investment, saving }: Plan, rate: number, show: Show): CellAnswer {
  if (investment === 0) return 0;
  return equalSavings(investment, saving, rate, show) ?? NEVER;
}

/** Every saving, the investment and the life: that one x (1 - swing) and x (1 + swing), all else as planned. */
function linesOf(savings: readonly Saving[], plan: Plan, swing: number, rate: number, silent: Show): Line[] {
  const worth = worthOfOneAYear(rate, plan.life, silent);
  const moved = (name: string, width: number, at: (factor: number) => Partial<Plan>): Line => ({
    name,
    width: Number(Math.abs(width).toPrecision(12)),
    low: { ...plan, ...at(1 - swing) },
    high: { ...plan, ...at(1 + swing) },
  });
  const lives = [1 + swing, 1 - swing].map((factor) => worthOfOneAYear(rate, plan.life * factor, silent));
  return [
    ...savings.map(({ name, amount }) =>
      moved(name, 2 * swing * amount * worth, (factor) => ({ saving: plan.saving - amount + amount * factor })),
    ),
    moved("investment", 2 * swing * plan.investment, (factor) => ({ investment: plan.investment * factor })),
    moved("life", plan.saving * ((lives[0] as number) - (lives[1] as number)), (factor) => ({
      life: plan.life * factor,
    })),
  ].sort((a, b) => b.width - a.width);
}

/** The rows that are written; the first that is faulty is an error, since no sum can be made without it. */
function savingsOf(names: readonly string[], values: readonly PlanCell[]): Saving[] {
  return names.flatMap((name, row) => {
    const amount = values[row] as PlanCell;
    if (isUnwritten(name, amount)) return [];
    if (amount instanceof FunctionError) throw inRow(amount, row);
    return [{ name: name === "" ? `row ${row + 1}` : name, amount }];
  });
}

function total(savings: readonly Saving[]): number {
  return savings.reduce((sum, { amount }) => sum + amount, 0);
}

export const paybackSensitivity = defineFunction({
  name: "PAYBACK_SENSITIVITY",
  group: "Money",
  summary: "Which number of a plan matters most: each saving, the investment and the life moved one at a time",
  formula: "V = -C + S (1 - (1 + r)^-n) / r, with one number x (1 - swing) and x (1 + swing)",
  source: cite("DCF", "net present value of a level series; one number at a time, all else as planned"),
  assumptions: [
    SIGNS,
    '"low" is the number x (1 - swing) and "high" is the number x (1 + swing): a larger investment has the lower value, and so has a larger extra cost.',
    "Rows are sorted by how far apart the two values lie, widest first: the first row is the number to be surest of. Equal ones stay in the order given.",
    'The payback does not look at the life: where it is longer than the life, the plan does not pay. "never" is a payback that does not come.',
    "Savings fall at year ends and are the same every year. A row without a name and a number is no row.",
  ],
  params: {
    investment: INVESTMENT_PARAM,
    saving_names: { kind: "texts", about: "One line of the plan a row: water, feed, labour, upkeep" },
    saving_values: {
      kind: "column",
      quantity: "currency",
      symbol: "v",
      blanks: "refused",
      about: "Saving of a year of each line, one row a line; below 0 it is an extra cost",
    },
    life_years: LIFE_PARAM,
    swing: {
      quantity: "fraction",
      symbol: "w",
      above: 0,
      atMost: 1,
      default: 0.25,
      about: "How far each number is moved down and up: 0.25 is a quarter",
      usual: {
        us: [0.05, 0.5],
        metric: [0.05, 0.5],
        low: "prices and losses vary more than that",
        source: cite("PRACTICE", "10 to 50 % in such plans"),
      },
    },
    discount_rate: DISCOUNT_RATE_PARAM,
  },
  result: {
    header: true,
    table: [
      { name: "name", quantity: "text" },
      { name: "value low", quantity: "currency" },
      { name: "value high", quantity: "currency" },
      { name: "payback low", quantity: "years" },
      { name: "payback high", quantity: "years" },
    ],
    about: "The plan, then one row a number: value and payback with it lower and higher, the widest first",
  },
  examples: [
    {
      given: {
        investment: 10000,
        saving_names: [["water"], ["labour"]],
        saving_values: [[3000], [1000]],
        life_years: 5,
      },
      gives: [
        [...HEADER],
        ["as planned", 10000, 10000, 2.5, 2.5],
        ["life", 5000, 15000, 2.5, 2.5],
        ["water", 6250, 13750, 10000 / 3250, 10000 / 4750],
        ["investment", 12500, 7500, 1.875, 3.125],
        ["labour", 8750, 11250, 10000 / 3750, 10000 / 4250],
      ],
      from: cite("ARITHMETIC", "4,000 x 5 - 10,000; 4,000 x 3.75 and x 6.25; 3,250 x 5 and 4,750 x 5"),
    },
    {
      given: {
        investment: 1000,
        saving_names: [["feed"], ["upkeep"]],
        saving_values: [[300], [-200]],
        life_years: 2,
        swing: 0.5,
        discount_rate: 0.1,
      },
      gives: [
        [...HEADER],
        ["as planned", -826.4463, -826.4463, "never", "never"],
        ["investment", -326.4463, -1326.4463, 7.2725, "never"],
        ["feed", -1086.7769, -566.1157, "never", 5.3596],
        ["upkeep", -652.8926, -1000, 7.2725, "never"],
        ["life", -909.0909, -751.3148, "never", "never"],
      ],
      within: 0.0001,
      from: cite(
        "ARITHMETIC",
        "1 a year for 2 years is worth 0.90909 + 0.82645 = 1.73554, for 1 year 0.90909, for 3 years 2.48685",
      ),
    },
  ],
  mistakes: [],
  seeAlso: ["PAYBACK_YEARS", "PAYBACK_TABLE", "ANNUALIZED_COST"],
  caution: ESTIMATE,
  compute({ investment, saving_names, saving_values, life_years, swing, discount_rate }, show, { refuse }) {
    const savings = savingsOf(saving_names, saving_values);
    if (savings.length === 0) throw refuse("saving_values", null, "it must have a line with its saving");
    const saving = show("S = SUM(v)", total(savings), "currency", "Saving of a year, all lines together");
    const plan: Plan = { investment, saving, life: life_years };
    const row = (name: string, low: Plan, high: Plan, heard: Show): CellAnswer[] => [
      name,
      valueOf(low, discount_rate, heard),
      valueOf(high, discount_rate, show.silent),
      paybackOf(low, discount_rate, heard),
      paybackOf(high, discount_rate, show.silent),
    ];
    const lines = linesOf(savings, plan, swing, discount_rate, show.silent);
    const moved = lines.map(({ name, low, high }) => row(name, low, high, show.silent));
    return [[...HEADER], row("as planned", plan, plan, show), ...moved];
  },
});
