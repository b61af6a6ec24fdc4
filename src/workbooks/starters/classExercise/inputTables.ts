import type { CellRef, RowCells, SheetBuilder, StarterBuilder } from "../../kit";
import { ITEMS, type ItemKey } from "./figures";
import { STEPS, type StepKey } from "./steps";

export interface ItemCells {
  readonly label: CellRef;
  readonly lowest: CellRef;
  readonly highest: CellRef;
  readonly step: CellRef;
}

export interface Tolerance {
  readonly relative: CellRef;
  readonly absolute: CellRef;
}

/** The numbers that are drawn, and whether their ranges are what the trade sees. */
export function itemTable(kit: StarterBuilder, inputs: SheetBuilder) {
  const { edition } = kit;
  const range = (at: 0 | 1 | 2) => ITEMS.map((item) => item.range[edition][at]);
  const limits = { least: 0, most: 100_000 };
  const looks = (end: string) => (cell: RowCells) =>
    `=CANYARD.CHECK_RANGE(${cell(end)}, ${cell("name")}, ${cell("argument")}, units)`;
  inputs.skip().note("The eight numbers that each student draws", "heading");
  const columns = inputs.table({
    rows: ITEMS.length,
    columns: [
      { key: "item", heading: "number", style: "locked", inputs: ITEMS.map(({ label }) => label) },
      { key: "lowest", heading: "lowest", inputs: range(0), limits },
      { key: "highest", heading: "highest", inputs: range(1), limits },
      { key: "step", heading: "step", inputs: range(2), limits: { least: 0.001, most: 100_000 } },
      { key: "unit", heading: "unit", style: "locked", inputs: ITEMS.map(({ unit }) => unit[edition]) },
      {
        key: "lowLooks",
        heading: "lowest, as the trade sees it",
        formula: looks("lowest"),
        plain: () => "",
        wraps: true,
      },
      {
        key: "highLooks",
        heading: "highest, as the trade sees it",
        formula: looks("highest"),
        plain: () => "",
        wraps: true,
      },
      {
        key: "meant",
        heading: "outside on purpose",
        inputs: ITEMS.map(({ onPurpose }) => (onPurpose ? "yes" : "no")),
        limits: { words: ["yes", "no"] },
      },
      {
        key: "range",
        heading: "range",
        formula: (cell) =>
          `=IF(${cell("highest")} < ${cell("lowest")}, "turned", IF(${cell("meant")} = "yes", "meant", IF(OR(LEFT(${cell("lowLooks")}, 3) = "low", LEFT(${cell("lowLooks")}, 4) = "high", LEFT(${cell("highLooks")}, 3) = "low", LEFT(${cell("highLooks")}, 4) = "high"), "look", "ok")))`,
      },
      {
        key: "name",
        heading: "goes into or comes out of",
        style: "locked",
        inputs: ITEMS.map(({ usual }) => usual[0]),
      },
      { key: "argument", heading: "as", style: "locked", inputs: ITEMS.map(({ usual }) => usual[1]) },
    ],
  }).column;
  const cells = (row: number): ItemCells => ({
    label: columns["item"]!.cell(row),
    lowest: columns["lowest"]!.cell(row),
    highest: columns["highest"]!.cell(row),
    step: columns["step"]!.cell(row),
  });
  inputs.note(
    "Each value from lowest to highest on the step is as likely. Leaching of 0.32 and more is what step 6 is about.",
  );
  return {
    item: Object.fromEntries(ITEMS.map(({ key }, row) => [key, cells(row)])) as Record<ItemKey, ItemCells>,
    ranges: columns["range"]!,
  };
}

/** How far an answer of each step may be off. */
export function stepTable(kit: StarterBuilder, inputs: SheetBuilder): Record<StepKey, Tolerance> {
  inputs.skip().note("The six steps and their tolerances", "heading");
  const columns = inputs.table({
    rows: STEPS.length,
    columns: [
      { key: "step", heading: "step", style: "locked", inputs: STEPS.map(({ label }) => label) },
      { key: "unit", heading: "unit", style: "locked", inputs: STEPS.map(({ unit }) => unit(kit.edition)) },
      {
        key: "relative",
        heading: "part of the right answer",
        unit: "fraction",
        inputs: STEPS.map(({ tolerance }) => tolerance),
        format: "percent",
        limits: { least: 0.001, most: 0.2 },
      },
      {
        key: "absolute",
        heading: "or so much",
        unit: "its unit",
        inputs: STEPS.map(() => 0),
        limits: { least: 0, most: 1000 },
      },
    ],
  }).column;
  inputs.note(
    "The wider of the two counts. Close is within five tolerances. A right answer rounded to its own digits, two or more, is right.",
  );
  inputs.note(
    "Step 2 is held closer: adding the leaching fraction instead of dividing by 1 less it is off by its square only, 2 % at 0.14.",
  );
  return Object.fromEntries(
    STEPS.map(({ key }, row) => [
      key,
      { relative: columns["relative"]!.cell(row), absolute: columns["absolute"]!.cell(row) },
    ]),
  ) as Record<StepKey, Tolerance>;
}
