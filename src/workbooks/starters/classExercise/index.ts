/** For the instructor, once a week: each student's own numbers, a sheet to fill in, marks, and what lies behind them. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { fillAnswers } from "./answers";
import { fillApart } from "./apart";
import { addChecks } from "./checks";
import { fillInputs } from "./inputs";
import { fillCodes, fillDiagnosis, fillRecord } from "./marks";
import { chartDots, fillCounts, fillDots, fillSummary, ROWS } from "./result";
import { fillStudent, fillWorking } from "./student";
import { fillDraws, fillKeys } from "./work";

const LANDSCAPE = { landscape: true } as const;
const TEXTS = 32;
const STEP_WIDTHS = [14, 11, 11, 11, 11, 11, 11];

export const classExercise: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const inputs = kit.sheet("Inputs", {
      title: "Tern Hollow: the class and its numbers",
      widths: [40, 12, 12, 12, 50, 28, 28, 12, 10, 28, 18],
      print: LANDSCAPE,
      standsAlone: true,
    });
    const student = kit.sheet("Student", {
      title: "Tern Hollow: your exercise",
      widths: [40, 12, 12, 14, 24, 50, 14],
      print: LANDSCAPE,
      standsAlone: true,
    });
    const working = kit.sheet("Working", {
      title: "The working, step by step",
      widths: [20, 60, 30, 36, 12, 10],
      print: LANDSCAPE,
      standsAlone: true,
    });
    const answers = kit.sheet("Answers", {
      title: "What the class handed in",
      widths: [...STEP_WIDTHS, 9, 12, 12, 12, ...Array.from({ length: 9 }, () => 13)],
      print: LANDSCAPE,
    });
    const work = kit.sheet("Work", {
      title: "Numbers, key, and wrong methods",
      widths: [12, 11, 11, 11, 11, 11, 11, 11, 11, 11, 34, 11, 11, 11, 11, 11],
      print: LANDSCAPE,
    });
    const diagnoses = kit.sheet("Diagnosis", {
      title: "What lies behind",
      widths: [12, ...Array.from({ length: 6 }, () => TEXTS)],
      print: LANDSCAPE,
    });
    const result = kit.sheet("Result", {
      title: "The class",
      widths: [34, 10, 10, 10, 10, 10, 10, 9, 3],
      print: LANDSCAPE,
    });
    const record = kit.sheet("Record", { title: "Marks for the record", widths: [32, 12, 12, 14, 12, 12, 12] });

    const given = fillInputs(kit, inputs);
    const draws = fillDraws(kit, work, given);
    const keys = fillKeys(kit, work, given, draws);
    const apart = fillApart(kit, work, given, draws, keys);
    const sheetOfOne = fillStudent(kit, student, given, { ids: draws.ids, column: draws.column });
    fillWorking(kit, working, given, sheetOfOne);
    const handed = fillAnswers(kit, answers, given, draws, keys);
    const dots = fillDots(work, handed, keys);
    const codes = fillCodes(result.goTo(ROWS.codes), given, handed);
    const diagnosis = fillDiagnosis(diagnoses, given, draws, handed, codes);
    const counts = fillCounts(result, given, { ...codes, diagnosis });
    fillSummary(result, given, codes);
    chartDots(result, dots);
    fillRecord(kit, record, handed, codes);
    addChecks(kit, { given, draws, keys, apart, student: sheetOfOne, answers: handed, counts });
    return kit.build();
  },
};
