import { cite, defineFunction, FunctionError, fullNumber, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { isUnwritten, type PlanCell } from "../runTime/planRows";
import { inRow } from "./faultyRow";

interface Block {
  /** Upper end, counted from 0; infinite where the block has none. */
  readonly limit: number;
  readonly price: number;
}

/** The rows that are written, each with its number in the range; the first faulty cell is the error of the call. */
function writtenRows(
  limits: readonly PlanCell[],
  prices: readonly PlanCell[],
): { readonly row: number; readonly limit: number; readonly price: number }[] {
  return limits.flatMap((limit, row) => {
    const price = prices[row] as PlanCell;
    if (isUnwritten("", limit, price)) return [];
    for (const cell of [limit, price]) if (cell instanceof FunctionError) throw inRow(cell, row);
    return [{ row, limit: limit as number, price: price as number }];
  });
}

type Refuse = (argument: "tier_limits", value: unknown, itMust: string) => FunctionError;

/** The blocks of the tariff: limits strictly rising, the last perhaps without one. */
function blocksOf(limits: readonly PlanCell[], prices: readonly PlanCell[], refuse: Refuse): Block[] {
  const rows = writtenRows(limits, prices);
  if (rows.length === 0) throw refuse("tier_limits", null, "it must have a block with its price");
  return rows.map(({ row, limit, price }, index) => {
    const before = rows[index - 1]?.limit ?? 0;
    const isLast = index === rows.length - 1;
    if (limit === 0 && isLast) return { limit: Infinity, price };
    if (limit === 0)
      throw refuse("tier_limits", null, `it must have a limit in row ${row + 1}: only the last may be blank`);
    if (limit <= before) {
      throw refuse("tier_limits", limit, `it must be more than ${before}, the limit before it, in row ${row + 1}`);
    }
    return { limit, price };
  });
}

interface Charge {
  readonly symbol: string;
  readonly amount: number;
}

/** The charge for each block, on the symbol V. */
function chargesOf(volume: number, blocks: readonly Block[], show: Show): Charge[] {
  let lower = 0;
  return blocks.map(({ limit, price }, index) => {
    const [q, symbol] = [`q${index + 1}`, `c${index + 1}`];
    const top = limit === Infinity ? "V" : `MIN(V, ${fullNumber(limit)})`;
    const water = Math.max(0, Math.min(volume, limit) - lower);
    show(`${q} = MAX(0, ${top} - ${fullNumber(lower)})`, water, "any one unit", `Water in block ${index + 1}`);
    lower = limit;
    const words = `Charge for block ${index + 1}`;
    return { symbol, amount: show(`${symbol} = ${q} * ${fullNumber(price)}`, water * price, "currency", words) };
  });
}

/** The price of the first block whose limit the volume does not pass. */
function priceReached(volume: number, limits: readonly PlanCell[], prices: readonly PlanCell[]): number {
  return writtenRows(limits, prices).find(({ limit }) => limit === 0 || volume <= limit)?.price ?? NaN;
}

function meanPrice(limits: readonly PlanCell[], prices: readonly PlanCell[]): number {
  const rows = writtenRows(limits, prices);
  return rows.reduce((sum, { price }) => sum + price, 0) / rows.length;
}

/** 1000 US gallons in 100 cubic feet. */
const THOUSANDS_IN_A_CCF = 172_800 / 231 / 1000;

export const waterCost = defineFunction({
  name: "WATER_COST",
  group: "Money",
  summary: "What one water bill comes to under a tariff of blocks",
  formula: "cost = fixed charge + sum of (water in each block x its price)",
  source: cite("DEFINITION", "block tariff: each block's price holds for the water within that block alone"),
  assumptions: [
    "One bill at a time, never a year at once: the blocks start again with every bill. Add up the costs of the bills.",
    "Volume, limits and prices in the bill's own unit: 1000 gal, CCF (748 gal) or m3.",
    "A row that is blank in both columns is dropped. One price for all water: a single row with a blank limit.",
    "Where the last limit is a number, more water than that is an error: the tariff does not say what it costs.",
    "A price of 0 is free water. The fixed charge counts once, also at a volume of 0.",
    "What a saving is worth is the difference of two bills, not the mean price: the last block is saved first. Sewer charges on the same meter belong to the prices.",
    ONE_CASE,
  ],
  params: {
    volume: {
      quantity: "any one unit",
      symbol: "V",
      atLeast: 0,
      about: "Water of this bill, in the bill's unit; 0 is a value, so leave no blank",
    },
    tier_limits: {
      kind: "column",
      quantity: "any one unit",
      symbol: "L",
      atLeast: 0,
      blanks: "zero",
      about: "Upper end of each block, counted from 0 and rising; the last may be blank: no limit",
    },
    tier_prices: {
      kind: "column",
      quantity: "currency",
      symbol: "P",
      atLeast: 0,
      blanks: "refused",
      about: "Price of one unit of water in each block, one row a block",
    },
    fixed_charge: {
      quantity: "currency",
      symbol: "F",
      atLeast: 0,
      default: 0,
      about: "Charge of the bill whatever the volume",
    },
  },
  result: { quantity: "currency", symbol: "cost", about: "What the bill comes to, counted as positive" },
  examples: [
    {
      given: { volume: 250, tier_limits: [[100], [200], [null]], tier_prices: [[3], [4], [6]], fixed_charge: 25 },
      gives: 1025,
      from: cite("ARITHMETIC", "100 x 3 + 100 x 4 + 50 x 6 + 25"),
    },
    {
      given: { volume: 3200, tier_limits: [[null]], tier_prices: [[4]] },
      gives: 12800,
      from: cite("ARITHMETIC", "3.2 million gal at 4 for 1000 gal"),
    },
    {
      given: { volume: 0, tier_limits: [[50], [null]], tier_prices: [[2.5], [3]], fixed_charge: 40 },
      gives: 40,
      from: cite("ARITHMETIC", "the fixed charge alone"),
    },
  ],
  mistakes: [
    {
      slip: "The price of the block reached was taken for all of the water",
      answer: ({ volume, tier_limits, tier_prices, fixed_charge }) =>
        fixed_charge + volume * priceReached(volume, tier_limits, tier_prices),
    },
    {
      slip: "The mean of the prices was used",
      answer: ({ volume, tier_limits, tier_prices, fixed_charge }) =>
        fixed_charge + volume * meanPrice(tier_limits, tier_prices),
    },
    { slip: "The fixed charge was left out", instead: () => ({ fixed_charge: 0 }) },
    {
      slip: "The first price was taken for all of the water",
      answer: ({ volume, tier_limits, tier_prices, fixed_charge }) =>
        fixed_charge + volume * (writtenRows(tier_limits, tier_prices)[0]?.price ?? NaN),
    },
    {
      slip: "The volume was counted in 1000 gal, though the bill counts CCF",
      instead: ({ volume }) => ({ volume: volume * THOUSANDS_IN_A_CCF }),
    },
  ],
  seeAlso: ["CONVERT_UNIT", "WATER_AFTER_SAVINGS", "PUMP_ENERGY", "COST_PER_SALEABLE_PLANT"],
  compute({ volume, tier_limits, tier_prices, fixed_charge }, show, { refuse }) {
    const blocks = blocksOf(tier_limits, tier_prices, refuse);
    const last = (blocks[blocks.length - 1] as Block).limit;
    if (volume > last) {
      throw refuse(
        "volume",
        volume,
        `it must be ${last} or less, the last of tier_limits; leave that one blank for no limit`,
      );
    }
    const charges = chargesOf(volume, blocks, show);
    const cost = charges.reduce((sum, { amount }) => sum + amount, fixed_charge);
    const formula = `cost = F + ${charges.map(({ symbol }) => symbol).join(" + ")}`;
    return show(formula, cost, "currency", "With the fixed charge");
  },
});
