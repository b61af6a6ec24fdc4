import { evaluate, isTable, work } from "../../src/kernel";
import type { Answer, CellAnswer, Table } from "../../src/kernel";
import { catalogueExamples, scalarExamples } from "../rig/catalogueExamples";
import { expectClose } from "../rig/closeness";
import { deepFreeze } from "../rig/deepFreeze";

const PRINTED_EXACTLY = 1e-9;

function expectPrinted(cell: CellAnswer | undefined, printed: CellAnswer, within: number | undefined): void {
  if (typeof printed !== "number") expect(cell).toEqual(printed);
  else if (within === undefined) expectClose(cell, printed, PRINTED_EXACTLY, PRINTED_EXACTLY);
  else expectClose(cell, printed, 0, within);
}

function expectPrintedTable(answer: Answer, printed: Table, within: number | undefined): void {
  const rows = answer as Table;
  expect(rows.map((row) => row.length)).toEqual(printed.map((row) => row.length));
  printed.forEach((row, rowIndex) => {
    row.forEach((cell, column) => expectPrinted(rows[rowIndex]?.[column], cell, within));
  });
}

describe("every example gives its printed result", () => {
  test.each(catalogueExamples)("$title", ({ entry, args, gives, within }) => {
    const answer = evaluate(entry, args);
    expect(Array.isArray(answer)).toBe(isTable(entry.result));
    if (typeof gives === "object") expectPrintedTable(answer, gives, within);
    else expectPrinted(answer as CellAnswer, gives, within);
  });
});

describe("the last recorded step is the answer, to the last bit", () => {
  test.each(scalarExamples)("$title", ({ entry, args }) => {
    const { steps, answer } = work(entry, args);
    expect(answer).toBe(evaluate(entry, args));
    expect(steps.at(-1)?.value).toBe(answer);
  });
});

describe("the same call gives the same answer, and leaves its inputs alone", () => {
  test.each(catalogueExamples)("$title", ({ entry, args }) => {
    const frozen = deepFreeze(structuredClone(args));
    const first = evaluate(entry, frozen);
    expect(evaluate(entry, frozen)).toEqual(first);
    expect(work(entry, frozen).answer).toEqual(first);
    expect(frozen).toEqual(args);
  });
});
