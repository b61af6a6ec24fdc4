/** What each slip of costs and payback gives, by the published formula with the slip put into it by hand. */
import { answerOf, refusalOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { expectNoMistake, type MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

/** In litres. */
const GALLON = 3.785411784;
/** In kg. */
const POUND = 0.45359237;

const PUMP = { investment: 9000, life_years: 7, rate: 0.06, salvage: 700 };
/** Today's worth of 1 at the end of the seventh year, and of 1 at the end of each. */
const LAST_YEAR = 1 / 1.06 ** 7;
const EACH_YEAR = 1 / 1.06 + 1 / 1.06 ** 2 + 1 / 1.06 ** 3 + 1 / 1.06 ** 4 + 1 / 1.06 ** 5 + 1 / 1.06 ** 6 + LAST_YEAR;
const CROP = { total_cost: 64_000, plants_started: 11_000, loss_fraction: 0.12 };
const SEASON_US = { volume: 140_000, ppm: 130, analysis: 0.17, price_per_weight: 1.4, units: "us" };
const SEASON_METRIC = { volume: 480_000, ppm: 130, analysis: 0.17, price_per_weight: 2.9, units: "metric" };
const LEVEL = { investment: 11_000, annual_savings: 2600, discount_rate: 0.07 };
const YEARS = { investment: 11_000, annual_savings: [[3000], [4100], [5200], [700]], discount_rate: 0.07 };
const SAVINGS = { baseline: 3200, savings: [[0.3], [0.12], [null], [0.25]] };
const TARIFF = { tier_limits: [[12], [30], [null]], tier_prices: [[2.2], [3.7], [5.9]], fixed_charge: 17 };
const CCF = (1728 * 100) / 231 / 1000;
/** The same tariff in a range with blank rows before, within and behind it. */
const GAPS = {
  tier_limits: [[null], [12], [null], [30], [80], [null]],
  tier_prices: [[null], [2.2], [null], [3.7], [5.9], [null]],
  fixed_charge: 17,
};

const TABLES: Readonly<Record<string, readonly MistakeRow[]>> = {
  ANNUALIZED_COST: [
    ["Interest was left out: straight line", PUMP, (9000 - 700) / 7],
    ["The salvage was left out", PUMP, 9000 / EACH_YEAR],
    [
      "Interest of a year was taken on the whole investment, and straight line added to it",
      PUMP,
      (9000 - 700) / 7 + 9000 * 0.06,
    ],
    // Seven payments, of which the first falls on the day of the purchase and the last a year before the salvage.
    ["The payment was counted at the start of each year", PUMP, (9000 - 700 * LAST_YEAR) / (1 + EACH_YEAR - LAST_YEAR)],
  ],
  COST_PER_SALEABLE_PLANT: [
    ["The cost was multiplied by 1 + loss, not divided by 1 - loss", CROP, (64_000 / 11_000) * 1.12],
    ["The losses were left out", CROP, 64_000 / 11_000],
    ["The cost was multiplied by 1 - loss", CROP, (64_000 / 11_000) * 0.88],
    ["The part that is sold was taken for the loss", CROP, 64_000 / (11_000 * 0.12)],
  ],
  FERTILIZER_COST: [
    ["ppm of the product was taken for ppm of the element", SEASON_US, ((130 * 140_000 * GALLON) / 1e6 / POUND) * 1.4],
    ["ppm of the product was taken for ppm of the element", SEASON_METRIC, ((130 * 480_000) / 1e6) * 2.9],
    ["The price was taken for a price per weight of the element", SEASON_METRIC, ((130 * 480_000) / 1e6) * 2.9],
    [
      "The analysis was used as a percentage (20), not as a fraction (0.20)",
      SEASON_METRIC,
      ((130 * 480_000) / 1e6 / 17) * 2.9,
    ],
    [
      "The weight was left in kilograms, though the price is per pound",
      SEASON_US,
      ((130 * 140_000 * GALLON) / 1e6 / 0.17) * 1.4,
    ],
  ],
  PAYBACK_YEARS: [
    ["Interest was left out", LEVEL, 11_000 / 2600],
    ["Interest was left out", YEARS, 2 + (11_000 - 7100) / 5200],
    ["The ratio was inverted", LEVEL, 2600 / 11_000],
    ["The investment was divided by the mean saving", YEARS, 11_000 / (13_000 / 4)],
  ],
  WATER_AFTER_SAVINGS: [
    ["The savings were added up", SAVINGS, 3200 * (1 - 0.67)],
    ["Only the largest saving was counted", SAVINGS, 3200 * 0.7],
    ["Only the largest saving was counted", { baseline: 3200, savings: [[0.12], [0.3]] }, 3200 * 0.7],
    ["The water saved was given, not the water left", SAVINGS, 3200 * (1 - 0.7 * 0.88 * 0.75)],
  ],
  WATER_COST: [
    ["The price of the block reached was taken for all of the water", { volume: 9, ...TARIFF }, 17 + 9 * 2.2],
    // The limit itself belongs to the block below it.
    ["The price of the block reached was taken for all of the water", { volume: 30, ...TARIFF }, 17 + 30 * 3.7],
    ["The price of the block reached was taken for all of the water", { volume: 44, ...TARIFF }, 17 + 44 * 5.9],
    ["The price of the block reached was taken for all of the water", { volume: 22, ...GAPS }, 17 + 22 * 3.7],
    ["The mean of the prices was used", { volume: 44, ...TARIFF }, 17 + (44 * 11.8) / 3],
    ["The mean of the prices was used", { volume: 44, ...GAPS }, 17 + (44 * 11.8) / 3],
    ["The fixed charge was left out", { volume: 44, ...TARIFF }, 12 * 2.2 + 18 * 3.7 + 14 * 5.9],
    ["The first price was taken for all of the water", { volume: 44, ...TARIFF }, 17 + 44 * 2.2],
    ["The first price was taken for all of the water", { volume: 44, ...GAPS }, 17 + 44 * 2.2],
    [
      "The volume was counted in 1000 gal, though the bill counts CCF",
      { volume: 44, ...TARIFF },
      17 + 12 * 2.2 + 18 * 3.7 + (44 * CCF - 30) * 5.9,
    ],
  ],
};

expectMistakesOfGroup("Money", TABLES);

expectNoMistake("COST_PER_SALEABLE_PLANT", [
  ["The part that is sold was taken for the loss", { ...CROP, loss_fraction: 0 }],
]);
expectNoMistake("FERTILIZER_COST", [
  ["The weight was left in kilograms, though the price is per pound", SEASON_METRIC],
]);
expectNoMistake("PAYBACK_YEARS", [
  // One saving is its own mean, and several are no ratio that could be inverted.
  ["The investment was divided by the mean saving", LEVEL],
  ["The ratio was inverted", YEARS],
]);

describe("each way that a calculation of the group may take", () => {
  test("ANNUALIZED_COST: with interest, the worth of payments and salvage is the investment", () => {
    expectClose(answerOf("ANNUALIZED_COST", PUMP), (9000 - 700 * LAST_YEAR) / EACH_YEAR, 1e-12);
    expectClose(answerOf("ANNUALIZED_COST", { ...PUMP, rate: 0 }), 8300 / 7, 1e-12);
  });

  test("PAYBACK_YEARS: level and unequal savings, with interest", () => {
    // 1.07^y = 1 / (1 - 0.07 x 11,000 / 2,600) = 2,600 / 1,830.
    expectClose(answerOf("PAYBACK_YEARS", LEVEL), Math.log(2600 / 1830) / Math.log(1.07), 1e-12);
    const [first, second, third] = [3000 / 1.07, 4100 / 1.07 ** 2, 5200 / 1.07 ** 3] as const;
    const last = 700 / 1.07 ** 4;
    expect(first + second + third).toBeLessThan(11_000);
    expectClose(answerOf("PAYBACK_YEARS", YEARS), 3 + (11_000 - first - second - third) / last, 1e-9);
  });

  test.each([0, 0.07])("PAYBACK_YEARS: a saving of 0 never pays, at %d", (discount_rate) => {
    const never = { investment: 11_000, annual_savings: 0, discount_rate };
    expect(refusalOf("PAYBACK_YEARS", never)).toMatchObject({ code: "#N/A" });
  });

  test("PAYBACK_SENSITIVITY: an investment of nothing is paid back at once, whatever the savings; rows without a name", () => {
    const losing = {
      investment: 900,
      saving_names: [["water"], [""]],
      saving_values: [[200], [-500]],
      life_years: 4,
      swing: 1,
    };
    // -300 a year over 4 years; at no investment and at 1,800.
    expect(tableOf("PAYBACK_SENSITIVITY", losing)).toContainEqual(["investment", -1200, -3000, 0, "never"]);
    // An extra cost of none, and of 1,000.
    expect(tableOf("PAYBACK_SENSITIVITY", losing)).toContainEqual(["row 2", -100, -4100, 4.5, "never"]);
  });

  test("PAYBACK_SENSITIVITY: a range with nothing written in it is refused", () => {
    const empty = { investment: 900, saving_names: [[null]], saving_values: [[null]], life_years: 4 };
    expect(refusalOf("PAYBACK_SENSITIVITY", empty).message).toContain("it must have a line with its saving");
  });

  test("WATER_COST: blank rows before, within and behind the blocks make no difference", () => {
    expectClose(answerOf("WATER_COST", { volume: 44, ...GAPS }), 17 + 12 * 2.2 + 18 * 3.7 + 14 * 5.9, 1e-12);
  });
});
