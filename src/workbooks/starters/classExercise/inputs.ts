import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { CLASS, IDS, STUDENTS } from "./classList";
import { CODES, EMITTERS, MINUTES_NOW, SEED, SUPPLY, type ItemKey } from "./figures";
import { itemTable, stepTable, type ItemCells, type Tolerance } from "./inputTables";
import type { StepKey } from "./steps";

/** What the other sheets build on. */
export interface ExerciseInputs {
  readonly ownLevel: CellRef;
  readonly emitters: CellRef;
  readonly supply: CellRef;
  readonly minutesNow: CellRef;
  readonly depth: CellRef;
  readonly item: Readonly<Record<ItemKey, ItemCells>>;
  readonly ranges: BlockRef;
  readonly tolerance: Readonly<Record<StepKey, Tolerance>>;
  readonly codes: BlockRef;
  readonly points: BlockRef;
  readonly ids: BlockRef;
  readonly counters: BlockRef;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): ExerciseInputs {
  const exercise = exerciseLines(kit, inputs);
  const given = givenLines(kit, inputs);
  const items = itemTable(kit, inputs);
  const tolerance = stepTable(kit, inputs);
  inputs.skip().note("What an answer is worth", "heading");
  const marks = inputs.table({
    rows: CODES.length,
    columns: [
      { key: "code", heading: "code", style: "locked", inputs: CODES.map(({ code }) => code) },
      {
        key: "points",
        heading: "points",
        inputs: CODES.map(({ points }) => points),
        format: "decimals1",
        limits: { least: 0, most: 10 },
      },
      { key: "meaning", heading: "meaning", style: "locked", inputs: CODES.map(({ meaning }) => meaning) },
    ],
  }).column;
  inputs
    .skip()
    .note("The class list", "heading")
    .note("Short names or numbers, none twice. A row without one is no student.");
  const list = inputs.table({
    rows: STUDENTS,
    columns: [
      { key: "id", heading: "student ID", inputs: IDS },
      {
        key: "counter",
        heading: "counter",
        inputs: CLASS[kit.edition].counters,
        format: "decimals0",
        limits: { least: 1, most: 9999, whole: true },
      },
    ],
  }).column;
  inputs.note("The counter makes new numbers for one student: raise it where Work says redraw.");
  return {
    ...exercise,
    ...given,
    ...items,
    tolerance,
    codes: marks["code"]!,
    points: marks["points"]!,
    ids: list["id"]!,
    counters: list["counter"]!,
  };
}

function exerciseLines(kit: StarterBuilder, inputs: SheetBuilder) {
  inputs.block("The exercise");
  kit.units(inputs);
  kit.name(
    "seed",
    inputs.input({
      label: "Seed word of the term",
      input: SEED,
      how: "the same seed, student and counter give the same numbers on every computer for ever",
    }),
  );
  const levels = { least: 0, most: 3, whole: true, message: "The level must be 0, 1, 2 or 3." } as const;
  kit.name(
    "level",
    inputs.input({
      label: "Level of what the student is told",
      unit: "0 to 3",
      input: 2,
      limits: levels,
      how: "0 right or wrong, 1 which step to look at, 2 the mistake in words, 3 the numbers too",
    }),
  );
  const ownLevel = inputs.input({
    label: "Level on your sheet Diagnosis",
    unit: "0 to 3",
    input: 2,
    limits: levels,
    how: "the mistakes on Result are counted from 2 on",
  });
  return { ownLevel };
}

function givenLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const volume = kit.pick("gal", "L");
  inputs.block("The same for all students");
  const emitters = inputs.input({
    label: "Emitters for a plant",
    unit: "count",
    input: EMITTERS,
    format: "decimals0",
    limits: { least: 1, most: 20, whole: true },
    how: "with 1 nobody can leave them out: take 2 or more",
  });
  const supply = kit.name(
    "supply_flow",
    inputs.input({
      label: "Flow to plan with",
      unit: `${volume}/min`,
      input: SUPPLY[kit.edition],
      format: "decimals0",
      limits: { least: 1, most: kit.pick(5000, 20_000) },
      how: "what one valve may take",
    }),
  );
  const minutesNow = inputs.input({
    label: "Minutes that Zone 2 runs now",
    unit: "min",
    input: MINUTES_NOW,
    format: "decimals0",
    limits: { least: 1, most: 240 },
    how: "its leaching was measured at these minutes",
  });
  const depth = inputs.formula({
    label: kit.pick("1 in of water on 1 ft2", "1 mm of water on 1 m2"),
    unit: volume,
    formula: kit.pick("=144 / 231", "=0.1 * 10000 / 1000"),
    format: kit.pick("decimals4", "decimals1"),
    how: kit.pick("144 in2 in a ft2; 231 in3 in a gallon", "0.1 cm on 10,000 cm2; 1,000 cm3 in a litre"),
  });
  return { emitters, supply, minutesNow, depth };
}
