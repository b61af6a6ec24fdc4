import { CellRef, rowNumber, type BlockRef, type InputLine, type SheetBuilder, type StarterBuilder } from "../../kit";
import { FIGURES, SYSTEMS } from "./figures";
import { fillMoney, fillWaterAndFeed } from "./prices";
import { fillTariff } from "./tariff";

const PRINTED = ["spray stakes", "drip line over pots", "boom"];
const LOOKED_AT = "spray stakes";

/** A system chosen on Inputs, and the label of its line. */
export interface Choice {
  readonly label: CellRef;
  readonly system: CellRef;
}

/** A line with a number, perhaps with a name for its cell. */
export type NumberInput = (line: InputLine, name?: string) => CellRef;

/** What the other sheets build on, besides the named cells. */
export type Given = ReturnType<typeof fillInputs>;

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder) {
  const numbers: CellRef[] = [];
  const number: NumberInput = (line, name) => {
    const ref = inputs.input(line);
    numbers.push(ref);
    return name === undefined ? ref : kit.name(name, ref);
  };
  const systems = kit.list("systems", SYSTEMS);
  const crop = fillCrop(kit, inputs, number);
  const choices = fillChoices(kit, inputs, systems);
  const prices = { ...fillWaterAndFeed(kit, inputs, number), ...fillMoney(kit, inputs, number) };
  const tariff = fillTariff(kit, inputs, number);
  return { systems, choices, ...crop, ...prices, ...tariff, numbers: numbers as readonly CellRef[] };
}

function fillCrop(kit: StarterBuilder, inputs: SheetBuilder, number: NumberInput) {
  const { crop } = FIGURES[kit.edition];
  const aPlant = { unit: "currency", format: "money", limits: { least: 0, most: 1000 } } as const;
  inputs.block("The crop");
  kit.units(inputs);
  const pot = number({
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
  number(
    {
      label: "Plants started",
      unit: "count",
      input: crop.plants,
      format: "decimals0",
      limits: { least: 1, most: 1_000_000, whole: true },
    },
    "plants",
  );
  const days = number({
    label: "Days with irrigation",
    unit: "days",
    input: crop.days,
    format: "decimals0",
    limits: { least: 1, most: 365 },
  });
  const ratio = number({
    label: "Mean day / hottest day",
    unit: "fraction",
    input: 0.6,
    format: "percent0",
    limits: { least: 0.2, most: 1 },
    how: "mean reference ET of the season / that of its hottest week",
  });
  const materials = number({
    label: "Materials and overheads of a plant",
    ...aPlant,
    input: crop.materials,
    how: "liner, pot, substrate, space, office; nothing of irrigation",
  });
  const cropLabour = number({
    label: "Labour of a plant, without irrigation",
    ...aPlant,
    input: crop.labour,
    how: "potting, pruning, moving, shipping",
  });
  const invested = number({
    label: "Spent on a plant when it is lost",
    ...aPlant,
    input: crop.invested,
    how: "the cost so far, not the price that it would have brought",
  });
  return { pot, place, days, ratio, materials, cropLabour, invested };
}

/** The baseline, three to print, the one to look at: in this order. */
function fillChoices(kit: StarterBuilder, inputs: SheetBuilder, systems: BlockRef): readonly Choice[] {
  const printable = kit.list("systems to print", [...SYSTEMS.slice(1), "none"]);
  inputs.block("What to compare");
  const baseline = inputs.locked({
    label: "Baseline",
    input: SYSTEMS[0],
    message: `The baseline is the first system, ${SYSTEMS[0]}: put the numbers of what you have in its row on Systems.`,
    how: "what is there now; its numbers are in the first row on Systems",
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
    label: "System to look at",
    input: LOOKED_AT,
    limits: { list: systems.rows(1, SYSTEMS.length - 1) },
    how: "year by year, number by number; most checks are about it",
  });
  return [baseline, ...printed, lookedAt].map((system) => ({
    label: new CellRef(system.sheet, `A${rowNumber(system.at)}`),
    system,
  }));
}
