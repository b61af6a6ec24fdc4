import { cite, defineFunction, type CellAnswer, type Entry } from "../../../kernel";
import type { LookUp } from "./lookUp";
import { slipsOf } from "./slips";
import { entryNamed, workedNumber } from "./workedCall";

const HEADER = ["mistake", "its answer", "ratio to the right one"];

export const commonMistakes = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "COMMON_MISTAKES",
    group: "Teaching and audit",
    summary: "Mistakes that people make with a function, and the number that each gives",
    formula: "mistake, its answer, its answer / right",
    source: cite("DEFINITION", "each mistake of the function's entry is worked out on these inputs"),
    assumptions: [
      "For the instructor. A draw by which a mistake lands within three tolerances of the right answer cannot tell the two apart: redraw it where ABS(ratio - 1) < 3 x tolerance.",
      "A mistake that gives no number on these inputs is left out.",
    ],
    params: {
      function_name: {
        kind: "text",
        about: "Name of the function, in quotation marks; one with a single number as its answer",
      },
      input: { kind: "inputs", about: "Its arguments in its order, cells or ranges" },
    },
    result: {
      header: true,
      table: [
        { name: "mistake", quantity: "text" },
        { name: "its answer", quantity: "text" },
        { name: "ratio to the right one", quantity: "factor" },
      ],
      about: "One row a mistake",
    },
    examples: [
      {
        given: { function_name: "WATER_HELD", input: [9, 0.6] },
        gives: [
          [...HEADER],
          ["What is not water, solids and air, was taken for the water", 3.6, 3.6 / 5.4],
          ["The volume was divided by the capacity", 15, 15 / 5.4],
        ],
        from: cite("ARITHMETIC", "9 x 0.4 = 3.6 and 9 / 0.6 = 15, against 9 x 0.6 = 5.4"),
      },
      {
        given: { function_name: "LEACHING_FRACTION", input: [250, 1000] },
        gives: [
          [...HEADER],
          ["Leachate was divided by the water kept, not by the water applied", 1 / 3, 4 / 3],
          ["The part kept was taken for the part leached", 0.75, 3],
          ["The ratio was inverted", 4, 16],
        ],
        from: cite("ARITHMETIC", "250 / 750, 1 - 0.25 and 1000 / 250, against 250 / 1000 = 0.25"),
      },
    ],
    mistakes: [],
    seeAlso: ["DIAGNOSE_ANSWER", "EXERCISE_NUMBER"],
    native: null,
    compute({ function_name, input }) {
      const call = workedNumber("COMMON_MISTAKES", entryNamed("COMMON_MISTAKES", function_name, find, names), input);
      const rows = call.entry.mistakes.flatMap((mistake): CellAnswer[][] => {
        const ratio = (gives: number): CellAnswer => (call.right === 0 ? "" : gives / call.right);
        return slipsOf(call, mistake).map(({ gives }) => [mistake.slip, gives, ratio(gives)]);
      });
      return [[...HEADER], ...rows];
    },
  });
