/**
 * What the types of an entry must catch: each line below a directive must fail to compile. Where one compiles, the
 * directive itself is the error.
 */
import { cite, defineFunction } from "../../src/kernel";

const texts = {
  name: "FIXTURE",
  group: "Leaching",
  summary: "Stands in for a function",
  formula: "y = a k",
  source: cite("DEFINITION", "for tests"),
  assumptions: ["None."],
  seeAlso: [],
} as const;

const result = { quantity: "volume", symbol: "y", about: "A volume" } as const;
const depth = { quantity: "water depth", symbol: "a", about: "A depth" } as const;
const from = cite("DEFINITION", "for tests");

/** The same entry without a slip: what fails below fails for its one slip alone. */
export const sound = defineFunction({
  ...texts,
  params: { depth, part: { kind: "word", words: ["all", "half"], default: "all", about: "How much" } },
  unitConstants: { k: "volume of a depth on an area" },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2, part: "half" }, gives: 1, from },
  ],
  mistakes: [
    { slip: "Altered", instead: ({ depth: given }) => ({ depth: given * 2 }) },
    { slip: "Worked otherwise", answer: ({ depth: given }, { k }, right) => given * k + right },
  ],
  compute({ depth: given, part }, show, { constants: { k }, refuse }) {
    if (part === "half" && given > 1000) throw refuse("depth", given, "it must be less");
    return show("y = a * k", given * k, "volume", "The volume");
  },
});

// @ts-expect-error a source that is not in the list
export const unknownSource = cite("HEARSAY", "somewhere");

export const unknownGroup = defineFunction({
  ...texts,
  // @ts-expect-error a group that the catalogue does not have
  group: "Leeching",
  params: { depth },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const misspeltQuantity = defineFunction({
  ...texts,
  // @ts-expect-error a quantity that the unit table does not have
  params: { depth: { quantity: "water dept", symbol: "a", about: "A depth" } },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [],
  compute: (_given, show) => show("y = a", 1, "volume", "The volume"),
});

export const misspeltResult = defineFunction({
  ...texts,
  params: { depth },
  // @ts-expect-error a quantity of the answer that the unit table does not have
  result: { quantity: "volumes", symbol: "y", about: "A volume" },
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const unknownUnitConstant = defineFunction({
  ...texts,
  params: { depth },
  // @ts-expect-error a constant that no unit brings
  unitConstants: { k: "volume of a dept on an area" },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const misspeltExamples = defineFunction({
  ...texts,
  params: { depth, part: { kind: "word", words: ["all", "half"], default: "all", about: "How much" } },
  result,
  examples: [
    // @ts-expect-error an argument that the function does not take
    { given: { dept: 1 }, gives: 1, from },
    // @ts-expect-error a required argument left out
    { given: {}, gives: 1, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const misspeltWord = defineFunction({
  ...texts,
  params: { depth, part: { kind: "word", words: ["all", "half"], default: "all", about: "How much" } },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    // @ts-expect-error a word that the argument does not know
    { given: { depth: 1, part: "third" }, gives: 1, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const textForNumber = defineFunction({
  ...texts,
  params: { depth },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    // @ts-expect-error a text where a number belongs
    { given: { depth: "2" }, gives: 2, from },
  ],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const oneExample = defineFunction({
  ...texts,
  params: { depth },
  result,
  // @ts-expect-error one example where two are the least
  examples: [{ given: { depth: 1 }, gives: 1, from }],
  mistakes: [],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const misspeltMistakes = defineFunction({
  ...texts,
  params: { depth },
  unitConstants: { k: "volume of a depth on an area" },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [
    // @ts-expect-error an argument that the function does not take, altered
    { slip: "Altered", instead: () => ({ dept: 1 }) },
    // @ts-expect-error a constant that the entry does not name
    { slip: "Worked otherwise", answer: (_given, { c }) => c },
  ],
  compute: ({ depth: given }, show) => show("y = a", given, "volume", "The volume"),
});

export const misspeltCompute = defineFunction({
  ...texts,
  params: { depth, part: { kind: "word", words: ["all", "half"], default: "all", about: "How much" } },
  unitConstants: { k: "volume of a depth on an area" },
  result,
  examples: [
    { given: { depth: 1 }, gives: 1, from },
    { given: { depth: 2 }, gives: 2, from },
  ],
  mistakes: [],
  compute(given, show, { constants, refuse, noAnswer }) {
    // @ts-expect-error an argument that the function does not take
    if (given.dept > 1) return 0;
    // @ts-expect-error a word that the argument does not know
    if (given.part === "third") return 0;
    // @ts-expect-error a constant that the entry does not name
    if (constants.c > 1) return 0;
    // @ts-expect-error a refusal that names no argument of the function
    if (given.depth > 2) throw refuse("dept", given.depth, "it must be less");
    // @ts-expect-error the same where there is no answer
    if (given.depth > 1) throw noAnswer("never", "dept");
    // @ts-expect-error a step in a quantity that the unit table does not have
    return show("y = a", given.depth, "volumes", "The volume");
  },
});
