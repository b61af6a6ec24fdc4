import { CellRef, rowNumber, type BlockRef, type SheetBuilder, type StarterBuilder } from "../../kit";
import { FIGURES, SYSTEMS } from "./figures";

export const MOST_YEARS = 15;
export const BILLS = 12;
const BLOCKS = 4;
const PRINTED = ["spray stakes", "drip line over pots", "boom"];
const LOOKED_AT = "spray stakes";
const MONEY = { least: 0, most: 1_000_000 };

/** A system chosen on Inputs, and the label of its line. */
export interface Choice {
  readonly label: CellRef;
  readonly system: CellRef;
}

/** What the other sheets build on; plants, prices and interest are named cells. */
export interface Given {
  /** The six systems, on the sheet Lists. */
  readonly systems: BlockRef;
  readonly pot: CellRef;
  readonly place: CellRef;
  readonly days: CellRef;
  readonly ratio: CellRef;
  readonly materials: CellRef;
  readonly cropLabour: CellRef;
  readonly invested: CellRef;
  readonly meter: CellRef;
  readonly within: CellRef;
  readonly efficiency: CellRef;
  readonly lift: CellRef;
  readonly fed: CellRef;
  readonly analysis: CellRef;
  readonly fertilizer: CellRef;
  readonly shortLife: CellRef;
  readonly limits: BlockRef;
  readonly prices: BlockRef;
  readonly bills: BlockRef;
  readonly shares: BlockRef;
  /** The baseline, three to print, the one to look at. */
  readonly choices: readonly Choice[];
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): Given {
  const systems = kit.list("systems", SYSTEMS);
  const crop = fillCrop(kit, inputs);
  const choices = fillChoices(kit, inputs, systems);
  const water = fillWater(kit, inputs);
  const money = fillMoney(kit, inputs);
  return { systems, ...crop, ...water, ...money, choices, ...fillTariff(kit, inputs) };
}

function fillCrop(kit: StarterBuilder, inputs: SheetBuilder) {
  const { crop } = FIGURES[kit.edition];
  const aPlant = { unit: "currency", format: "money", limits: { least: 0, most: 1000 } } as const;
  inputs.block("The crop");
  kit.units(inputs);
  const pot = inputs.input({
    label: "Size of the pots",
    unit: kit.pick("gal", "L"),
    input: crop.pot,
    format: "decimals1",
    limits: { least: kit.pick(0.02, 0.1), most: kit.pick(100, 400) },
    how: kit.pick("as they are traded: 7 for a #7", "as they are traded"),
  });
  const place = inputs.input({
    label: "Where they stand",
    input: "yard",
    limits: { words: ["yard", "house"] },
    how: "yard: under the sky; house: under a roof",
  });
  kit.name(
    "plants",
    inputs.input({
      label: "Plants started",
      unit: "count",
      input: crop.plants,
      format: "decimals0",
      limits: { least: 1, most: 1_000_000, whole: true },
    }),
  );
  const days = inputs.input({
    label: "Days with irrigation",
    unit: "days",
    input: crop.days,
    format: "decimals0",
    limits: { least: 1, most: 365 },
  });
  const ratio = inputs.input({
    label: "Mean day / hottest day",
    unit: "fraction",
    input: 0.6,
    format: "percent0",
    limits: { least: 0.2, most: 1 },
    how: "mean reference ET of the season / that of its hottest week",
  });
  const materials = inputs.input({
    label: "Materials and overheads of a plant",
    ...aPlant,
    input: crop.materials,
    how: "liner, pot, substrate, space, office; nothing of irrigation",
  });
  const cropLabour = inputs.input({
    label: "Labour of a plant, without irrigation",
    ...aPlant,
    input: crop.labour,
    how: "potting, pruning, moving, shipping",
  });
  const invested = inputs.input({
    label: "Spent on a plant when it is lost",
    ...aPlant,
    input: crop.invested,
    how: "the cost so far, not the price that it would have brought",
  });
  return { pot, place, days, ratio, materials, cropLabour, invested };
}

function fillChoices(kit: StarterBuilder, inputs: SheetBuilder, systems: BlockRef): readonly Choice[] {
  const printable = kit.list("systems to print", [...SYSTEMS.slice(1), "none"]);
  const choice = (system: CellRef): Choice => ({
    label: new CellRef(system.sheet, `A${rowNumber(system.at)}`),
    system,
  });
  inputs.block("What to compare", "");
  const baseline = inputs.locked({
    label: "Baseline",
    input: SYSTEMS[0],
    message: `The baseline is the first system, ${SYSTEMS[0]}: put the numbers of what you have in its row on Systems.`,
  });
  const printed = PRINTED.map((system, at) =>
    inputs.input({
      label: `System to print, ${["first", "second", "third"][at]!}`,
      input: system,
      limits: { list: printable },
      ...(at === 0 && { how: "beside the baseline on Result; none leaves the column empty" }),
    }),
  );
  const lookedAt = inputs.input({
    label: "System to look at year by year",
    input: LOOKED_AT,
    limits: { list: systems.rows(1, SYSTEMS.length - 1) },
    how: "drives the table of years, the sensitivity, their charts and the checks",
  });
  return [baseline, ...printed, lookedAt].map(choice);
}

function fillWater(kit: StarterBuilder, inputs: SheetBuilder) {
  const { meter, prices } = FIGURES[kit.edition];
  const volume = kit.pick("gal", "L");
  inputs.block("Water, power and feed");
  kit.name(
    "bill_unit",
    inputs.input({
      label: "Unit of the water bill",
      unit: volume,
      input: 1000,
      format: "decimals2",
      limits: { least: 1, most: 10_000 },
      how: kit.pick("1000 for thousands of gallons, 748.05 for CCF (100 ft3)", "1000 for m3"),
    }),
  );
  const metered = inputs.input({
    label: "Baseline's meter, last season",
    unit: "bill units",
    input: meter,
    format: "decimals0",
    limits: { least: 0.1, most: 10_000_000 },
    how: "last reading less first reading, the season's bills together",
  });
  const within = inputs.input({
    label: "Planned water may be off by",
    unit: "fraction",
    input: 0.1,
    format: "percent0",
    limits: { least: 0.01, most: 0.5 },
    how: "10 % (common practice)",
  });
  kit.name(
    "rate_kwh",
    inputs.input({
      label: "Price of electricity",
      unit: "per kWh",
      input: prices.kwh,
      format: "decimals3",
      limits: { least: 0, most: 100 },
    }),
  );
  const efficiency = inputs.input({
    label: "Pump and motor together",
    unit: "fraction",
    input: 0.55,
    format: "percent0",
    limits: { least: 0.1, most: 0.9 },
    how: "from the electric meter to the water",
  });
  const lift = inputs.input({
    label: "Lift of an own well",
    unit: kit.pick("ft", "m"),
    input: prices.lift,
    format: "decimals0",
    limits: { least: 0, most: kit.pick(1500, 450) },
    how: "for the case of an own well: on top of the head of each system",
  });
  const fed = inputs.input({
    label: "Part of the water that carries feed",
    unit: "fraction",
    input: 0.3,
    format: "percent0",
    limits: { least: 0, most: 1 },
    how: "the rest is clear water or rests on fertilizer in the pots",
  });
  const analysis = inputs.input({
    label: "Nitrogen in the fertilizer",
    unit: "fraction",
    input: 0.2,
    format: "percent0",
    limits: { least: 0.01, most: 0.9 },
    how: "the first number of the label",
  });
  const fertilizer = inputs.input({
    label: "Price of the fertilizer",
    unit: kit.pick("per lb", "per kg"),
    input: prices.fertilizer,
    format: "money",
    limits: { least: 0.01, most: 100 },
    how: "of the product, not of the nitrogen: price of the bag / its weight",
  });
  return { meter: metered, within, efficiency, lift, fed, analysis, fertilizer };
}

function fillMoney(kit: StarterBuilder, inputs: SheetBuilder) {
  const { prices } = FIGURES[kit.edition];
  inputs.block("Labour and money");
  kit.name(
    "wage",
    inputs.input({
      label: "Wage, loaded",
      unit: "per h",
      input: prices.wage,
      format: "money",
      limits: { least: 0, most: 10_000 },
      how: "with taxes and insurance",
    }),
  );
  kit.name(
    "discount_rate",
    inputs.input({
      label: "Interest a year",
      unit: "fraction",
      input: prices.interest,
      format: "percent",
      limits: { least: 0, most: 0.5 },
      how: "of the loan, or what the money would earn elsewhere",
    }),
  );
  kit.name(
    "plan_years",
    inputs.input({
      label: "Years that the plan looks at",
      unit: "years",
      input: 10,
      format: "decimals0",
      limits: { least: 3, most: MOST_YEARS, whole: true },
      how: "not longer than mains, valves and the lease last; nothing is left at the end",
    }),
  );
  kit.name(
    "swing",
    inputs.input({
      label: "Swing of the sensitivity",
      unit: "fraction",
      input: 0.25,
      format: "percent0",
      limits: { least: 0.05, most: 0.5 },
      how: "each number so much lower and higher; also the case of smaller savings",
    }),
  );
  const shortLife = inputs.input({
    label: "Short life of what wears out",
    unit: "years",
    input: 3,
    format: "decimals1",
    limits: { least: 0.5, most: 15 },
    how: "for the case of a short life: stakes and emitters last 3 to 5 years (common practice)",
  });
  return { shortLife };
}

function fillTariff(kit: StarterBuilder, inputs: SheetBuilder) {
  const { tariff, bills } = FIGURES[kit.edition];
  inputs.block("Water tariff");
  kit.name(
    "fixed_charge",
    inputs.input({
      label: "Fixed charge of a bill",
      unit: "currency",
      input: tariff.fixed,
      format: "money",
      limits: MONEY,
    }),
  );
  inputs.note("Blocks: upper ends counted from 0 and rising; the last one blank: no limit. Rows not needed stay blank.");
  const blocks = inputs.table({
    rows: BLOCKS,
    columns: [
      { key: "block", heading: "block", inputs: ["first", "second", "third", "fourth"] },
      {
        key: "limit",
        heading: "up to",
        unit: "bill units",
        inputs: tariff.limits,
        format: "decimals0",
        limits: { least: 0.1, most: 10_000_000 },
      },
      {
        key: "price",
        heading: "price",
        unit: "a unit",
        inputs: tariff.prices,
        format: "money",
        limits: { least: 0, most: 10_000 },
      },
    ],
  }).column;
  inputs.skip().note("The season's bills, monthly or every two months, with their part of its water", "heading");
  inputs.note("Blocks start again with every bill. Bills without irrigation are the same with any system: leave them out.");
  const season = inputs.table({
    rows: BILLS,
    columns: [
      { key: "bill", heading: "bill", inputs: padded(bills.names) },
      {
        key: "share",
        heading: "part of it",
        unit: "fraction",
        inputs: padded(bills.shares),
        format: "percent0",
        limits: { least: 0, most: 1 },
      },
    ],
  }).column;
  return {
    limits: named(kit, "tier_limits", blocks["limit"]!),
    prices: named(kit, "tier_prices", blocks["price"]!),
    bills: season["bill"]!,
    shares: season["share"]!,
  };
}

function named(kit: StarterBuilder, name: string, block: BlockRef): BlockRef {
  kit.name(name, block);
  return block;
}

function padded(values: readonly (number | string | null)[]): readonly (number | string | null)[] {
  return Array.from({ length: BILLS }, (_none, at) => values[at] ?? null);
}
