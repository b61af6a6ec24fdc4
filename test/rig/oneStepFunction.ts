import { cite, defineFunction, type Entry } from "../../src/kernel";

/** A function of one number with one step, whose formula and arithmetic a test chooses: they need not agree. */
export function oneStepFunction(
  formula: string,
  arithmetic: (x: number) => number,
  limits: { readonly atLeast: number; readonly atMost: number },
): Entry {
  return defineFunction({
    name: "ONE_STEP",
    group: "Teaching and audit",
    summary: "Stands in for a function",
    formula: `y = ${formula}`,
    source: cite("DEFINITION", "for tests"),
    assumptions: ["None."],
    params: { x: { quantity: "factor", symbol: "x", ...limits, about: "A number" } },
    result: { quantity: "factor", symbol: "y", about: "What the arithmetic makes of it" },
    examples: [
      { given: { x: 1 }, gives: 1, from: cite("DEFINITION", "for tests") },
      { given: { x: 2 }, gives: 2, from: cite("DEFINITION", "for tests") },
    ],
    mistakes: [],
    seeAlso: [],
    compute: ({ x }, show) => show(`y = ${formula}`, arithmetic(x), "factor", "The answer"),
  });
}
