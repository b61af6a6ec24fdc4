import { BlockRef, type SheetBuilder, type StarterBuilder, type TableColumn } from "../../kit";
import { onOwnNumbers, type Answers, type Columns } from "./answers";
import { CLASS, STUDENTS } from "./classList";
import { CODES, RECORDED_ON } from "./figures";
import type { ExerciseInputs } from "./inputs";
import { diagnosis, STEPS, type Step } from "./steps";
import { beside, unlessBlank, type Draws } from "./work";

export interface Codes {
  /** A column a step. */
  readonly of: Columns;
  readonly block: BlockRef;
  readonly points: BlockRef;
}

/** A letter an answer, and the points of a student. */
export function fillCodes(result: SheetBuilder, given: ExerciseInputs, answers: Answers): Codes {
  result.note("Codes", "heading").note("R right, F right on the own number, C close, W wrong, N not answered");
  const { column } = result.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(beside(answers.ids, row), beside(answers.ids, row)),
      },
      ...STEPS.map((step): TableColumn => ({
        key: step.key,
        heading: step.short,
        style: "result",
        formula: (cell, row) => unlessBlank(cell("id"), codeFormula(step, answers, row)),
      })),
      {
        key: "points",
        heading: "points",
        format: "decimals1",
        formula: (cell) => {
          const codes = `${cell(STEPS[0]!.key)}:${cell(STEPS[STEPS.length - 1]!.key)}`;
          const terms = CODES.map(
            (_code, at) => `COUNTIF(${codes}, ${given.codes.cell(at)}) * ${given.points.cell(at)}`,
          );
          return unlessBlank(cell("id"), terms.join(" + "));
        },
      },
    ],
  });
  return {
    of: column,
    block: new BlockRef(result.name, column[STEPS[0]!.key]!.first, column[STEPS[STEPS.length - 1]!.key]!.last),
    points: column["points"]!,
  };
}

function codeFormula({ key }: Step, { mark, ownMark }: Answers, row: number): string {
  const byKey = beside(mark[key]!, row);
  const own = ownMark[key];
  const notRight = `IF(${byKey} = "close", "C", IF(${byKey} = "wrong", "W", "N"))`;
  const orOwn = own ? `IF(${beside(own, row)} = "right", "F", ${notRight})` : notRight;
  return `IF(${byKey} = "right", "R", ${orOwn})`;
}

/** What lies behind each answer that is close or wrong. */
export function fillDiagnosis(
  sheet: SheetBuilder,
  given: ExerciseInputs,
  draws: Draws,
  answers: Answers,
  codes: Codes,
): BlockRef {
  sheet.note("Diagnosis", "heading");
  sheet.note("Of each answer that is close or wrong, on the student's own number of the step before.");
  const { column } = sheet.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(beside(answers.ids, row), beside(answers.ids, row)),
      },
      ...STEPS.map((step): TableColumn => {
        const { key, short, ours } = step;
        return {
          key,
          heading: short,
          style: "note",
          wraps: true,
          formula: (_cell, row) => {
            const code = beside(codes.of[key]!, row);
            const own = onOwnNumbers(given, draws, row, (carried) => beside(answers.goesOn[carried]!, row));
            const words = diagnosis(
              step,
              beside(answers.typed[key]!, row),
              String(given.tolerance[key].relative),
              String(given.ownLevel),
              own,
            );
            return `=IF(OR(${code} = "C", ${code} = "W"), ${words}, "")`;
          },
          ...(ours !== null && { plain: () => "" }),
        };
      }),
    ],
  });
  return new BlockRef(sheet.name, column[STEPS[0]!.key]!.first, column[STEPS[STEPS.length - 1]!.key]!.last);
}

/** Codes as values: they stay what they were. */
export function fillRecord(kit: StarterBuilder, record: SheetBuilder, answers: Answers, codes: Codes): void {
  const { recorded } = CLASS[kit.edition];
  record.block("The record of one exercise", "");
  record.input({
    label: "Recorded on",
    unit: "date",
    input: RECORDED_ON,
    format: "date",
    limits: { least: 36_526, most: 73_050, message: "Recorded on must be a date from 2000 to 2099." },
  });
  const line = record.next;
  record.skip(2);
  record.note("Codes", "heading");
  record.note("Copy the codes on Result, and paste them here as values. For the next exercise copy this sheet first.");
  const { column } = record.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(beside(answers.ids, row), beside(answers.ids, row)),
      },
      ...STEPS.map(({ key, short }, at): TableColumn => ({
        key,
        heading: short,
        inputs: recorded.map((letters) => letters.charAt(at)),
      })),
    ],
  });
  const block = new BlockRef(record.name, column[STEPS[0]!.key]!.first, column[STEPS[STEPS.length - 1]!.key]!.last);
  record.allow(block.at, { words: CODES.map(({ code }) => code), message: "A code must be R, F, C, W or N." }, "code");
  const end = record.next;
  record.goTo(line).formula({
    label: "Codes that have changed since",
    unit: "count",
    formula: `=SUMPRODUCT(1 * (${block.here} <> ${codes.block}))`,
    format: "decimals0",
    how: "codes here that Result now has otherwise",
  });
  record.goTo(end);
}
