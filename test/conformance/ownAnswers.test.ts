import { evaluate, inOrder } from "../../src/kernel";
import { catalogue } from "../../src/functions/catalogue";

/** A table as a caller gets it, open to be changed. */
type OpenTable = unknown[][];

const tables = catalogue.flatMap((entry) =>
  "table" in entry.result
    ? entry.examples.map(({ given }, index) => ({ entry, given, title: `${entry.name} ${index + 1}` }))
    : [],
);

describe("the rows of an answer belong to the one who asked", () => {
  test.each(tables)(
    "$title: what is written over them reaches neither the inputs nor the next answer",
    ({ entry, given }) => {
      const args = inOrder(entry, given);
      const inputs = JSON.stringify(args);
      const answer = evaluate(entry, args) as unknown as OpenTable;
      const expected = JSON.stringify(answer);
      for (const row of answer) row.fill("written over");
      expect(JSON.stringify(args)).toBe(inputs);
      expect(JSON.stringify(evaluate(entry, args))).toBe(expected);
    },
  );
});
