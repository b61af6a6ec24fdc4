import type { BlockRef, SheetBuilder, StarterBuilder } from "../../kit";
import { FIGURES } from "./figures";
import type { NumberInput } from "./inputs";

export const BILLS = 12;
export const BLOCKS = 4;

/** The tariff of blocks, and the season's bills that it is put to. */
export function fillTariff(kit: StarterBuilder, inputs: SheetBuilder, number: NumberInput) {
  const { tariff, bills } = FIGURES[kit.edition];
  inputs.block("Water tariff");
  number(
    {
      label: "Fixed charge of a bill",
      unit: "currency",
      input: tariff.fixed,
      format: "money",
      limits: { least: 0, most: 1_000_000 },
    },
    "fixed_charge",
  );
  inputs.note(
    "Blocks: upper ends counted from 0 and rising; the last one blank: no limit. Rows not needed stay blank.",
  );
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
  inputs.skip().note("The season's bills", "heading");
  inputs.note(
    "Monthly or every two months, each with its part of the season's water: the blocks start again with every bill.",
  );
  inputs.note("Bills without irrigation are the same with any system: leave them out.");
  const season = inputs.table({
    rows: BILLS,
    columns: [
      { key: "bill", heading: "bill", inputs: bills.names },
      {
        key: "share",
        heading: "part of it",
        unit: "fraction",
        inputs: bills.shares,
        format: "percent0",
        limits: { least: 0, most: 1 },
      },
    ],
  }).column;
  const named = (name: string, block: BlockRef): BlockRef => {
    kit.name(name, block);
    return block;
  };
  return {
    limits: named("tier_limits", blocks["limit"]!),
    prices: named("tier_prices", blocks["price"]!),
    bills: season["bill"]!,
    shares: season["share"]!,
  };
}
