import { cite, defineFunction, type CellInput } from "../../../kernel";
import { isRounded, isUnanswered, isWithin, TOLERANCE_PARAM_DEFAULT } from "./answers";

/** Five tolerances away is still close: a wrong digit, not a wrong method. */
const CLOSE = 5;

function mark(answer: CellInput, correct: number, relative: number, absolute: number): string {
  if (isUnanswered(answer, correct)) return "not answered";
  if (typeof answer !== "number") return "not answered: type a number, without its unit";
  if (isWithin(answer, correct, relative, absolute) || isRounded(answer, correct)) return "right";
  return isWithin(answer, correct, CLOSE * relative, CLOSE * absolute) ? "close" : "wrong";
}

export const checkAnswer = defineFunction({
  name: "CHECK_ANSWER",
  group: "Teaching and audit",
  summary: "Mark for a student's number: right, close, wrong or not answered",
  formula: "right within t = max(relative x |correct|, absolute), close within 5 t",
  source: cite("DEFINITION", "relative and absolute tolerance, whichever is wider"),
  assumptions: [
    "A blank is not answered, and so is 0 unless 0 is right, since a blank cell may count as 0.",
    "A right answer rounded to the digits that were typed is right, if they are two or more.",
    "Practice, not exam security.",
  ],
  params: {
    answer: { kind: "cell", about: "The student's cell" },
    correct: { quantity: "any one unit", symbol: "c", about: "The right answer; 0 is a value, so leave no blank" },
    relative_tolerance: {
      quantity: "fraction",
      symbol: "r",
      atLeast: 0,
      below: 1,
      default: TOLERANCE_PARAM_DEFAULT,
      about: "Part of the right answer by which it may be off",
    },
    absolute_tolerance: {
      quantity: "any one unit",
      symbol: "a",
      atLeast: 0,
      default: 0,
      about: "Amount by which it may be off, in its own unit: needed where the right answer is 0",
    },
  },
  result: { text: true, about: "The mark in a word" },
  examples: [
    { given: { answer: 2.75, correct: 2.75 }, gives: "right", from: cite("DEFINITION", "the same number") },
    {
      given: { answer: 14.1, correct: 14.117647058823529, relative_tolerance: 0.001 },
      gives: "right",
      from: cite("ARITHMETIC", "14.1176 to one decimal is 14.1"),
    },
    {
      given: { answer: 2.9, correct: 2.75 },
      gives: "close",
      from: cite("ARITHMETIC", "0.15 apart: more than 0.055, less than 0.275"),
    },
    {
      given: { answer: 165, correct: 2.75 },
      gives: "wrong",
      from: cite("ARITHMETIC", "60 times the right answer"),
    },
    { given: { answer: null, correct: 2.75 }, gives: "not answered", from: cite("DEFINITION", "a blank") },
  ],
  mistakes: [],
  seeAlso: ["DIAGNOSE_ANSWER", "EXERCISE_NUMBER"],
  native: null,
  compute({ answer, correct, relative_tolerance, absolute_tolerance }) {
    return mark(answer, correct, relative_tolerance, absolute_tolerance);
  },
});
