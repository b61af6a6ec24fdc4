import type { StarterBuilder } from "../../kit";
import type { Answers } from "./answers";
import type { Apart } from "./apart";
import { ITEMS } from "./figures";
import type { ExerciseInputs } from "./inputs";
import type { Counts } from "./result";
import { STEPS } from "./steps";
import type { StudentCells } from "./student";
import type { Draws, Keys } from "./work";

interface Parts {
  readonly given: ExerciseInputs;
  readonly draws: Draws;
  readonly keys: Keys;
  readonly apart: Apart;
  readonly student: StudentCells;
  readonly answers: Answers;
  readonly counts: Counts;
}

export function addChecks(kit: StarterBuilder, { given, draws, keys, apart, student, answers, counts }: Parts): void {
  kit.check(
    "Every student has a key for every step",
    `${STEPS.map(({ key }) => `COUNT(${keys.column[key]})`).join(" + ")} = ${STEPS.length} * COUNT(${draws.counters})`,
    "A range on Inputs gives numbers that a step cannot take: point at the cell on Work for what is wrong.",
  );
  kit.check(
    "Every key is the same by a second route",
    `MAX(${keys.difference}) < 0.000000001 * MAX(${keys.column.minutes})`,
    "A formula on Work was changed. Do not hand out and do not mark before it agrees.",
  );
  kit.check(
    "Wrong methods can be told from the right one, for every student",
    `COUNTIF(${apart.draw}, "redraw") = 0`,
    'Raise the counter of each student whose row on Work says redraw: paste the column "counter to try" over the counters.',
  );
  kit.check(
    "No two students have the same eight numbers",
    `MAX(${draws.sameNumbers}) = 1`,
    "Raise the counter of one of them.",
  );
  kit.check("No ID stands twice in the class list", `MAX(${draws.sameId}) = 1`, "Two students cannot share an ID.");
  kit.check(
    "The ranges are what the trade sees",
    `COUNTIF(${given.ranges}, "look") + COUNTIF(${given.ranges}, "turned") = 0`,
    'A range leaves the usual one, or its lowest is above its highest. If that is meant, say yes under "outside on purpose".',
  );
  kit.check(
    "The keys in minutes are what the trade sees",
    `AND(MIN(${keys.column.minutes}) >= 1, MAX(${keys.column.minutes}) <= 60)`,
    "Stakes and drip on pots run from 1 to 60 minutes a day: look for a slip in a range or a unit on Inputs.",
  );
  kit.check(
    "The student's sheet has the numbers of the class list",
    `${ITEMS.map(({ key }) => `ABS(SUMIF(${draws.ids}, ${student.id}, ${draws.column[key]}) - ${student.numbers[key]})`).join(" + ")} < 0.000000001`,
    "A formula on Student or on Work was changed.",
  );
  kit.check(
    "Every answer is a number",
    `COUNTA(${answers.block}) = COUNT(${answers.block})`,
    "An answer has its unit or a word in it, or a formula was pasted instead of a value.",
  );
  kit.check(
    "Every answer belongs to a student",
    `SUMPRODUCT((${answers.ids} = "") * (${answers.given} > 0)) = 0`,
    "Answers stand in a row without an ID: the rows may have slipped.",
  );
  kit.check(
    "Every answer of every student has one code",
    `SUM(${counts.total}) = ${STEPS.length} * COUNT(${draws.counters})`,
    "A formula on Result was changed.",
  );
}
