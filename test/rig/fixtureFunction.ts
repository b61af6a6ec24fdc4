import { cite, defineFunction, type CellAnswer, type Entry, type Table } from "../../src/kernel";

/** A function for tests of the kernel alone: one argument, whatever answer the test wants to see handled. */
export function fixtureFunction(answer: (x: number) => CellAnswer | Table): Entry {
  return defineFunction({
    name: "FIXTURE",
    group: "Teaching and audit",
    summary: "Stands in for a function",
    formula: "y = f(x)",
    source: cite("DEFINITION", "for tests"),
    assumptions: ["None."],
    params: { x: { quantity: "factor", symbol: "x", about: "Any number" } },
    result: { quantity: "factor", symbol: "y", about: "Whatever the test wants" },
    examples: [
      { given: { x: 1 }, gives: 1, from: cite("DEFINITION", "for tests") },
      { given: { x: 2 }, gives: 2, from: cite("DEFINITION", "for tests") },
    ],
    mistakes: [],
    seeAlso: [],
    compute({ x }, show) {
      const y = answer(x);
      return typeof y === "number" ? show("y = x", y, "factor", "The answer") : y;
    },
  });
}
