import { BlockRef, type SheetBuilder, type StarterBuilder, type TableColumn } from "../../kit";
import { plainMark } from "../shared/plainMark";
import { CLASS, STUDENTS } from "./classList";
import type { ExerciseInputs } from "./inputs";
import { rightAnswer, STEPS, stepOf, type Numbers, type Step, type StepKey } from "./steps";
import { beside, numbersOf, unlessBlank, type Draws, type Keys } from "./work";

export type Columns = Readonly<Record<string, BlockRef>>;

/** The steps that a later one goes on with. */
const CARRIED = ["net", "gross", "zoneFlow"] as const;

export interface Answers {
  readonly ids: BlockRef;
  readonly given: BlockRef;
  /** A column a step: what was typed, and its mark by the key. */
  readonly typed: Columns;
  readonly mark: Columns;
  /** Marks of the steps that go on with an earlier one, on the student's own number of it. */
  readonly ownMark: Columns;
  /** The own number where there is one, else the key. */
  readonly goesOn: Columns;
  /** All that was typed, and all that is counted as an answer. */
  readonly block: BlockRef;
}

export function fillAnswers(
  kit: StarterBuilder,
  sheet: SheetBuilder,
  given: ExerciseInputs,
  draws: Draws,
  keys: Keys,
): Answers {
  const handed = CLASS[kit.edition].answers;
  sheet.note("Answers", "heading");
  sheet.note("Paste here, as values, the rows that students hand in. Leave a cell empty where nothing was answered.");
  const { column } = sheet.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(beside(draws.ids, row), beside(draws.ids, row)),
      },
      ...STEPS.map(({ key, short, unit }, at): TableColumn => ({
        key,
        heading: short,
        unit: unit(kit.edition),
        inputs: handed.map((answers) => answers[at] ?? null),
      })),
      {
        key: "given",
        heading: "answers",
        unit: "count",
        formula: (cell) => `=COUNT(${cell("net")}:${cell("corrected")})`,
      },
      ...CARRIED.map((key) => goesOnColumn(kit, stepOf(key), keys)),
      ...STEPS.map((step) => markColumn(step, given, keys)),
      ...STEPS.filter(({ goesOnWith }) => goesOnWith).map((step) => ownMarkColumn(step, given, draws)),
    ],
  });
  const block = new BlockRef(sheet.name, column["net"]!.first, column["corrected"]!.last);
  sheet.allow(
    block.at,
    { least: 0, most: 1_000_000, message: "An answer must be a number without its unit." },
    "answer",
  );
  return {
    ids: column["id"]!,
    given: column["given"]!,
    typed: column,
    mark: named(column, "mark "),
    ownMark: named(column, "own "),
    goesOn: named(column, "on "),
    block,
  };
}

function goesOnColumn(kit: StarterBuilder, { key, short, unit, format }: Step, keys: Keys): TableColumn {
  return {
    key: `on ${key}`,
    heading: `goes on with ${short}`,
    unit: unit(kit.edition),
    format: format[kit.edition],
    formula: (cell, row) => {
      const right = beside(keys.column[key], row);
      return unlessBlank(
        cell("id"),
        `IF(ISNUMBER(${cell(key)}), IF(${cell(key)} > 0, ${cell(key)}, ${right}), ${right})`,
      );
    },
    ...(key === "net" && { how: "the student's own number where there is one, else the key" }),
  };
}

function markColumn(step: Step, given: ExerciseInputs, keys: Keys): TableColumn {
  const { relative, absolute } = given.tolerance[step.key];
  const right = (row: number) => beside(keys.column[step.key], row);
  return {
    key: `mark ${step.key}`,
    heading: `${step.short}: mark`,
    ...(step.key === "net" && {
      how: "right within the tolerance on Inputs or rounded to its own digits, close within five",
    }),
    formula: (cell, row) =>
      unlessBlank(cell("id"), `CANYARD.CHECK_ANSWER(${cell(step.key)}, ${right(row)}, ${relative}, ${absolute})`),
    plain: (cell, row) =>
      unlessBlank(cell("id"), plainMark(cell(step.key), right(row), String(relative), String(absolute))),
  };
}

function ownMarkColumn(step: Step, given: ExerciseInputs, draws: Draws): TableColumn {
  const { relative, absolute } = given.tolerance[step.key];
  return {
    key: `own ${step.key}`,
    heading: `${step.short}: mark on the own number`,
    ...(step.key === "gross" && { how: "the same, with the student's own number of the step before" }),
    formula: (cell, row) => {
      const right = rightAnswer(
        step,
        onOwnNumbers(given, draws, row, (key) => cell(`on ${key}`)),
      );
      return unlessBlank(cell("id"), `CANYARD.CHECK_ANSWER(${cell(step.key)}, ${right}, ${relative}, ${absolute})`);
    },
    plain: (cell, row) => {
      const right = step.plain(onOwnNumbers(given, draws, row, (key) => cell(`on ${key}`)));
      return unlessBlank(cell("id"), plainMark(cell(step.key), `(${right})`, String(relative), String(absolute)));
    },
  };
}

/** The numbers of the student in a row, each step going on with the student's own number of the step before. */
export function onOwnNumbers(
  given: ExerciseInputs,
  draws: Draws,
  row: number,
  goesOn: (key: StepKey) => string,
): Numbers {
  const [net, gross, zoneFlow] = CARRIED.map(goesOn) as [string, string, string];
  return numbersOf(given, draws, row, { net, gross, zoneFlow });
}

/** The columns whose keys begin so, by the rest of their keys. */
function named(columns: Columns, start: string): Columns {
  return Object.fromEntries(
    Object.entries(columns)
      .filter(([key]) => key.startsWith(start))
      .map(([key, block]) => [key.slice(start.length), block]),
  );
}
