import type { BlockRef, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { STUDENTS } from "./classList";
import { ITEMS, type ItemKey } from "./figures";
import type { ExerciseInputs } from "./inputs";
import { rightAnswer, STEPS, type NumberKey, type Numbers, type StepKey } from "./steps";

export interface Draws {
  readonly ids: BlockRef;
  readonly counters: BlockRef;
  readonly column: Readonly<Record<ItemKey, BlockRef>>;
  /** How often the same eight numbers stand in the class, and the same ID. */
  readonly sameNumbers: BlockRef;
  readonly sameId: BlockRef;
}

export interface Keys {
  readonly column: Readonly<Record<StepKey, BlockRef>>;
  readonly difference: BlockRef;
}

export const unlessBlank = (id: string, formula: string): string => `=IF(${id} = "", "", ${formula})`;

/** A cell of another block on the same row, with its sheet. */
export const beside = (block: BlockRef, row: number): string => `${block.sheet}!${block.cell(row).at}`;

export function fillDraws(kit: StarterBuilder, work: SheetBuilder, given: ExerciseInputs): Draws {
  work.note("Numbers", "heading").note("What each student draws.");
  const columns = work.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(beside(given.ids, row), beside(given.ids, row)),
      },
      {
        key: "counter",
        heading: "counter",
        formula: (cell, row) => unlessBlank(cell("id"), beside(given.counters, row)),
      },
      ...ITEMS.map(({ key, label, unit }): TableColumn => {
        const { label: name, lowest, highest, step } = given.item[key];
        return {
          key,
          heading: label,
          unit: unit[kit.edition],
          formula: (cell) =>
            unlessBlank(
              cell("id"),
              `CANYARD.EXERCISE_NUMBER(seed, ${cell("id")}, ${name} & "#" & ${cell("counter")}, ${lowest}, ${highest}, ${step})`,
            ),
        };
      }),
      {
        key: "all",
        heading: "all eight",
        formula: (cell) => unlessBlank(cell("id"), ITEMS.map(({ key }) => cell(key)).join(' & "; " & ')),
      },
    ],
  }).column;
  const counts = work.goTo(Number(columns["id"]!.first.slice(1)) - 3).table(
    {
      rows: STUDENTS,
      columns: [
        {
          key: "sameNumbers",
          heading: "so often in the class",
          formula: (_cell, row) =>
            unlessBlank(
              columns["id"]!.cell(row).at,
              `COUNTIF(${columns["all"]!.here}, ${columns["all"]!.cell(row).at})`,
            ),
        },
        {
          key: "sameId",
          heading: "ID so often in the list",
          formula: (_cell, row) =>
            unlessBlank(columns["id"]!.cell(row).at, `COUNTIF(${columns["id"]!.here}, ${columns["id"]!.cell(row).at})`),
        },
      ],
    },
    "L",
  ).column;
  return {
    ids: columns["id"]!,
    counters: columns["counter"]!,
    column: columns as Draws["column"],
    sameNumbers: counts["sameNumbers"]!,
    sameId: counts["sameId"]!,
  };
}

/** The numbers of the student in a row; steps that go on with an earlier one find it where `earlier` says. */
export function numbersOf(
  given: ExerciseInputs,
  draws: Draws,
  row: number,
  earlier: Pick<Numbers, "net" | "gross" | "zoneFlow">,
): Numbers {
  const { emitters, supply, minutesNow, depth } = given;
  const drawn = ITEMS.map(({ key }): [NumberKey, string] => [key, beside(draws.column[key], row)]);
  return {
    ...(Object.fromEntries(drawn) as Pick<Numbers, ItemKey>),
    emitters: String(emitters),
    supply: String(supply),
    minutesNow: String(minutesNow),
    depth: String(depth),
    ...earlier,
  };
}

/** Every key by our functions, step by step, and by one built-in formula from the drawn numbers. */
export function fillKeys(kit: StarterBuilder, work: SheetBuilder, given: ExerciseInputs, draws: Draws): Keys {
  work.skip().note("Key", "heading");
  work.note("Step by step by our functions, and by a second route: one built-in formula each, from the drawn numbers.");
  const id = (row: number) => draws.ids.cell(row).at;
  const columns = work.table({
    rows: STUDENTS,
    columns: [
      { key: "id", heading: "student", formula: (_cell, row) => unlessBlank(id(row), id(row)) },
      ...STEPS.map((step): TableColumn => ({
        key: step.key,
        heading: step.short,
        unit: step.unit(kit.edition),
        format: step.format[kit.edition],
        style: "result",
        how: HOW[step.key],
        formula: (cell, row) => {
          const earlier = { net: cell("net"), gross: cell("gross"), zoneFlow: cell("zoneFlow") };
          return unlessBlank(cell("id"), rightAnswer(step, numbersOf(given, draws, row, earlier)));
        },
      })),
      ...STEPS.map((step): TableColumn => ({
        key: `second ${step.key}`,
        heading: `${step.short}, second route`,
        unit: step.unit(kit.edition),
        format: step.format[kit.edition],
        formula: (cell, row) =>
          unlessBlank(cell("id"), secondRoute(step.key, numbersOf(given, draws, row, NO_EARLIER))),
      })),
    ],
  }).column;
  const last = columns["second corrected"]!;
  const difference = work.goTo(Number(last.first.slice(1)) - 3).table(
    {
      rows: STUDENTS,
      columns: [
        {
          key: "difference",
          heading: "largest difference",
          formula: (_cell, row) =>
            unlessBlank(
              columns["id"]!.cell(row).at,
              `MAX(${STEPS.map(({ key }) => `ABS(${columns[key]!.cell(row).at} - ${columns[`second ${key}`]!.cell(row).at})`).join(", ")})`,
            ),
        },
      ],
    },
    "N",
  ).column["difference"]!;
  work.goTo(Number(last.last.slice(1)) + STEPS.length + 1);
  return { column: columns as Keys["column"], difference };
}

const HOW: Readonly<Record<StepKey, string>> = {
  net: "reference ET x crop coefficient x area",
  gross: "net water / the smaller of 1 - leaching and uniformity, never both",
  minutes: "60 x gross water / (emitters x flow)",
  zoneFlow: "plants x emitters x flow / 60",
  valves: "flow of the zone / flow to plan with, rounded up",
  corrected: "minutes x (1 - leaching measured) / (1 - leaching wanted): the water kept stays the same",
};

const NO_EARLIER = { net: "", gross: "", zoneFlow: "" } as const;

/** Another way to the same: the larger of two quotients, flows in minutes, a whole part and one more, time taken off. */
function secondRoute(key: StepKey, numbers: Numbers): string {
  const { et, kc, area, leaching, uniformity, flow, plants, measured, emitters, supply, minutesNow, depth } = numbers;
  const net = `${depth} * ${area} * ${et} * ${kc}`;
  const gross = `MAX(${net} / (1 - ${leaching}), ${net} / ${uniformity})`;
  const zoneFlow = `${plants} * (${flow} / 60) * ${emitters}`;
  const quotient = `ROUND(${zoneFlow} / ${supply}, 9)`;
  switch (key) {
    case "net":
      return net;
    case "gross":
      return gross;
    case "minutes":
      return `${gross} / ${emitters} / (${flow} / 60)`;
    case "zoneFlow":
      return zoneFlow;
    case "valves":
      return `INT(${quotient}) + IF(${quotient} > INT(${quotient}), 1, 0)`;
    case "corrected":
      return `${minutesNow} - ${minutesNow} * (${measured} - ${leaching}) / (1 - ${leaching})`;
  }
}
