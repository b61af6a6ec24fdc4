import type { SheetBuilder, StarterBuilder } from "../../kit";
import { FIGURES } from "./figures";
import type { NumberInput } from "./inputs";

export const MOST_YEARS = 15;

export function fillWaterAndFeed(kit: StarterBuilder, inputs: SheetBuilder, number: NumberInput) {
  const { meter, prices } = FIGURES[kit.edition];
  inputs.block("Water, power and feed");
  number(
    {
      label: "Unit of the water bill",
      unit: kit.pick("gal", "L"),
      input: 1000,
      format: "decimals2",
      limits: { least: 1, most: 10_000 },
      how: kit.pick("1000 for thousands of gallons, 748.05 for CCF (100 ft3)", "1000 for m3"),
    },
    "bill_unit",
  );
  const metered = number({
    label: "Baseline's meter, last season",
    unit: "bill units",
    input: meter,
    format: "decimals0",
    limits: { least: 0.1, most: 10_000_000 },
    how: "last reading less first reading, the season's bills together",
  });
  const within = number({
    label: "Planned water may be off by",
    unit: "fraction",
    input: 0.1,
    format: "percent0",
    limits: { least: 0.01, most: 0.5 },
    how: "10 % (common practice)",
  });
  number(
    {
      label: "Price of electricity",
      unit: "per kWh",
      input: prices.kwh,
      format: "decimals3",
      limits: { least: 0, most: 100 },
    },
    "rate_kwh",
  );
  const efficiency = number({
    label: "Pump and motor together",
    unit: "fraction",
    input: 0.55,
    format: "percent0",
    limits: { least: 0.1, most: 0.9 },
    how: "from the electric meter to the water",
  });
  const lift = number({
    label: "Lift of an own well",
    unit: kit.pick("ft", "m"),
    input: prices.lift,
    format: "decimals0",
    limits: { least: 0, most: kit.pick(1500, 450) },
    how: "for that case only: on top of each system's head",
  });
  const fed = number({
    label: "Part of the water that carries feed",
    unit: "fraction",
    input: 0.3,
    format: "percent0",
    limits: { least: 0, most: 1 },
    how: "the rest is clear; fertilizer in the pots is not in here",
  });
  const analysis = number({
    label: "Nitrogen in the fertilizer",
    unit: "fraction",
    input: 0.2,
    format: "percent0",
    limits: { least: 0.01, most: 0.9 },
    how: "the first number of the label",
  });
  const fertilizer = number({
    label: "Price of the fertilizer",
    unit: kit.pick("per lb", "per kg"),
    input: prices.fertilizer,
    format: "money",
    limits: { least: 0.01, most: 100 },
    how: "of the product, not of its nitrogen: price of the bag / its weight",
  });
  return { meter: metered, within, efficiency, lift, fed, analysis, fertilizer };
}

export function fillMoney(kit: StarterBuilder, inputs: SheetBuilder, number: NumberInput) {
  const { prices } = FIGURES[kit.edition];
  inputs.block("Labour and money");
  number(
    {
      label: "Wage, loaded",
      unit: "per h",
      input: prices.wage,
      format: "money",
      limits: { least: 0, most: 10_000 },
      how: "with taxes and insurance",
    },
    "wage",
  );
  number(
    {
      label: "Interest a year",
      unit: "fraction",
      input: prices.interest,
      format: "percent",
      limits: { least: 0, most: 0.5 },
      how: "of the loan, or what the money would earn elsewhere",
    },
    "discount_rate",
  );
  number(
    {
      label: "Years that the plan looks at",
      unit: "years",
      input: 10,
      format: "decimals0",
      limits: { least: 3, most: MOST_YEARS, whole: true },
      how: "no longer than mains, valves and the lease last; nothing is left then",
    },
    "plan_years",
  );
  number(
    {
      label: "Swing",
      unit: "fraction",
      input: 0.25,
      format: "percent0",
      limits: { least: 0.05, most: 0.5 },
      how: "each number so much lower and higher; also the smaller savings",
    },
    "swing",
  );
  const shortLife = number({
    label: "Short life of what wears out",
    unit: "years",
    input: 3,
    format: "decimals1",
    limits: { least: 0.5, most: 15 },
    how: "stakes and emitters last 3 to 5 years (common practice)",
  });
  return { shortLife };
}
