import { evaluate, work } from "../../src/kernel";
import { catalogueExamples, scalarExamples } from "../rig/catalogueExamples";
import { deepFreeze } from "../rig/deepFreeze";
import { expectPrinted } from "../rig/printed";

describe("every example gives its printed result", () => {
  test.each(catalogueExamples)("$title", (example) => {
    expectPrinted(evaluate(example.entry, example.args), example);
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
