import { cite, defineFunction, type Entry } from "../../../kernel";
import { TOLERANCE_PARAM_DEFAULT } from "./answers";
import { diagnose, type Detail } from "./diagnosis";
import type { LookUp } from "./lookUp";
import { entryNamed, workedNumber } from "./workedCall";

export const diagnoseAnswer = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "DIAGNOSE_ANSWER",
    group: "Teaching and audit",
    summary: "Diagnosis of a student's number: right, or the mistake that gives it",
    formula:
      "the first that fits: right, rounded, known mistake, unit, power of ten, inverted, rounded steps, factor, two at once",
    source: cite("DEFINITION", "each mistake is worked out on the student's own inputs and held against the answer"),
    assumptions: [
      "Known mistakes come first, the nearest before others; two that are as near are both named. None is named that lies within tolerance of the right answer, and none on a single digit.",
      "Inputs may be the student's own earlier results, which marks the step by itself.",
      "For functions with one number as their answer. A different mistake may give the same number: the words say what comes out, not what was done.",
      "Practice, not exam security.",
    ],
    params: {
      answer: { kind: "cell", about: "The student's cell" },
      function_name: { kind: "text", about: "Name of the function that gives the right answer, in quotation marks" },
      relative_tolerance: {
        quantity: "fraction",
        symbol: "r",
        atLeast: 0,
        below: 1,
        default: TOLERANCE_PARAM_DEFAULT,
        about: "Part of the right answer by which it may be off; blank is 0.02",
      },
      detail: {
        quantity: "count",
        symbol: "d",
        whole: true,
        atLeast: 0,
        atMost: 3,
        default: 2,
        about: "0 right or wrong, 1 which step, 2 the mistake in words, 3 the numbers too; blank is 2",
      },
      input: { kind: "inputs", about: "Its arguments in its order, cells or ranges" },
    },
    result: { text: true, about: "Begins with right, not answered or wrong" },
    examples: [
      {
        given: {
          answer: 165,
          function_name: "RUN_MINUTES",
          relative_tolerance: 0.02,
          detail: 0,
          input: [0.275, 6],
        },
        gives: "wrong: not yet the right number",
        from: cite("ARITHMETIC", "right is 60 x 0.275 / 6 = 2.75"),
      },
      {
        given: {
          answer: 0.0458,
          function_name: "RUN_MINUTES",
          relative_tolerance: 0.02,
          detail: 2,
          input: [0.275, 6],
        },
        gives: "wrong: 0.0458 is what comes out when the flow per hour was taken as flow per minute",
        from: cite("ARITHMETIC", "0.275 / 6 = 0.04583"),
      },
      {
        given: {
          answer: 2.8,
          function_name: "RUN_MINUTES",
          relative_tolerance: 0.001,
          detail: 2,
          input: [0.275, 6],
        },
        gives: "right, rounded",
        from: cite("ARITHMETIC", "2.75 to one decimal is 2.8"),
      },
    ],
    mistakes: [],
    seeAlso: ["CHECK_ANSWER", "COMMON_MISTAKES", "SHOW_WORKING"],
    native: null,
    compute({ answer, function_name, relative_tolerance, detail, input }) {
      const entry = entryNamed("DIAGNOSE_ANSWER", function_name, find, names);
      const call = workedNumber("DIAGNOSE_ANSWER", entry, input);
      return diagnose(answer, call, relative_tolerance, detail as Detail);
    },
  });
