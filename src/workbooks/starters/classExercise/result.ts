import type { BlockRef, SheetBuilder, TableColumn } from "../../kit";
import type { Answers } from "./answers";
import { STUDENTS } from "./classList";
import { CODES, MISTAKES } from "./figures";
import type { ExerciseInputs } from "./inputs";
import type { Codes } from "./marks";
import { STEPS } from "./steps";
import type { Keys } from "./work";

/** Where each part of the sheet begins; the charts stand beside them. */
export const ROWS = { summary: 5, counts: 9, mistakes: 20, codes: 43 } as const;

export interface Dots {
  readonly across: BlockRef;
  readonly up: BlockRef;
}

/** A dot an answer: its step, shifted a little for each student, and how many times the key it is. */
export function fillDots(work: SheetBuilder, answers: Answers, keys: Keys): Dots {
  const key = keys.column;
  const right = `${key.net.here.split(":")[0]}:${key.corrected.here.split(":")[1]}`;
  const students = STUDENTS;
  const steps = STEPS.length;
  work.skip().note("Dots", "heading").note("One for each answer, for the chart on Result.");
  const { column } = work.table({
    rows: students * steps,
    columns: [
      {
        key: "student",
        heading: "student, by place",
        inputs: numbered(students, (at) => Math.floor(at / steps) + 1),
        style: "locked",
      },
      { key: "step", heading: "step", inputs: numbered(students, (at) => (at % steps) + 1), style: "locked" },
      {
        key: "ratio",
        heading: "answer / key",
        unit: "times",
        format: "decimals3",
        formula: (cell) => {
          const at = `${cell("student")}, ${cell("step")}`;
          const typed = `INDEX(${answers.block}, ${at})`;
          const isStudent = `INDEX(${answers.ids}, ${cell("student")}) <> ""`;
          return `=IF(ISNUMBER(${typed}), IF(AND(${isStudent}, ${typed} > 0), ${typed} / INDEX(${right}, ${at}), 0), 0)`;
        },
        how: "0 where nothing was answered",
      },
      {
        key: "across",
        heading: "across",
        format: "decimals2",
        formula: (cell) =>
          `=IF(${cell("ratio")} > 0, ${cell("step")} + ${cell("student")} / (2 * ROWS(${answers.ids})), 0)`,
        how: "the step, and a little more for each student, so that dots do not hide one another",
      },
      {
        key: "up",
        heading: "up",
        format: "decimals2",
        formula: (cell) => `=IF(${cell("ratio")} > 0, LN(${cell("ratio")}) / LN(10), 0)`,
        how: "tens logarithm of the ratio: 0 is right, 1 is ten times, 1.78 sixty times",
      },
    ],
  });
  return { across: column["across"]!, up: column["up"]! };
}

function numbered(students: number, of: (at: number) => number): readonly number[] {
  return Array.from({ length: students * STEPS.length }, (_each, at) => of(at));
}

export interface Counts {
  readonly total: BlockRef;
}

/** The class in three numbers. */
export function fillSummary(result: SheetBuilder, given: ExerciseInputs, { points }: Codes): void {
  const end = result.next;
  result.goTo(ROWS.summary);
  result.formula({ label: "Students", unit: "count", formula: `=COUNT(${points.here})`, format: "decimals0" });
  result.formula({ label: "Mean", unit: "points", formula: `=AVERAGE(${points.here})`, format: "decimals2" });
  result.formula({
    label: "All right would be",
    unit: "points",
    formula: `=${STEPS.length} * ${given.points.cell(0)}`,
    format: "decimals1",
  });
  result.goTo(end);
}

/** What the class did: codes by step, and the mistakes by their words. */
export function fillCounts(
  result: SheetBuilder,
  given: ExerciseInputs,
  codes: { readonly of: Codes["of"]; readonly points: BlockRef; readonly diagnosis: BlockRef },
): Counts {
  const end = result.next;
  result.goTo(ROWS.counts).note("How each step went", "heading");
  const counts = result.table({
    rows: STEPS.length,
    columns: [
      { key: "step", heading: "step", inputs: STEPS.map(({ short }) => short), style: "locked" },
      ...CODES.map(({ code, meaning }, at): TableColumn => ({
        key: code,
        heading: HEADINGS[code] ?? meaning,
        unit: "count",
        formula: (_cell, row) => `=COUNTIF(${codes.of[STEPS[row]!.key]!.here}, ${given.codes.cell(at)})`,
      })),
      { key: "all", heading: "all", unit: "count", formula: (cell) => `=SUM(${cell("R")}:${cell("N")})` },
    ],
  }).column;
  result.goTo(ROWS.mistakes).note("Mistakes, by their words", "heading");
  const mistakes = result.table({
    rows: MISTAKES.length,
    columns: [
      { key: "words", heading: "looked for on Diagnosis", inputs: MISTAKES, style: "locked" },
      {
        key: "count",
        heading: "answers",
        unit: "count",
        formula: (cell) => `=COUNTIF(${codes.diagnosis}, "*" & ${cell("words")} & "*")`,
      },
    ],
  }).column;
  result.goTo(end);
  charts(result, counts, mistakes);
  return { total: counts["all"]! };
}

const HEADINGS: Readonly<Record<string, string>> = {
  R: "right",
  F: "right on own",
  C: "close",
  W: "wrong",
  N: "not answered",
};

function charts(
  result: SheetBuilder,
  counts: Readonly<Record<string, BlockRef>>,
  mistakes: Readonly<Record<string, BlockRef>>,
): void {
  result
    .chart({
      type: "columns",
      stacked: true,
      title: "How each step went",
      description: "A column for each step, stacked: right, right on the own number, close, wrong, not answered.",
      labels: String(counts["step"]),
      series: CODES.map(({ code }) => ({ name: HEADINGS[code]!, values: String(counts[code]) })),
      axisTitles: { values: "students" },
      position: { cell: "J5", width: 560, height: 320 },
    })
    .chart({
      type: "bars",
      topDown: true,
      title: "Mistakes that the class made",
      description: "A lying bar for each known mistake: the number of answers whose diagnosis names it.",
      labels: String(mistakes["words"]),
      series: [{ name: "answers", values: String(mistakes["count"]) }],
      axisTitles: { values: "answers" },
      position: { cell: "J22", width: 560, height: 400 },
    });
}

export function chartDots(result: SheetBuilder, { across, up }: Dots): void {
  result.chart({
    type: "points",
    title: "Answer / key, by step",
    description:
      "A dot for each answer above its step, at the tens logarithm of answer / key: 0 is right, 1.78 is sixty times the key. Answers not given stand at 0, 0.",
    labels: String(across),
    series: [{ name: "answer / key", values: String(up) }],
    axisTitles: { labels: "step (at 0: not answered)", values: "tens logarithm of answer / key: 0 is right" },
    position: { cell: "J43", width: 560, height: 360 },
  });
}
