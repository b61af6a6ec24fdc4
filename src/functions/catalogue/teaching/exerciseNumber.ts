import { cite, defineFunction } from "../../../kernel";
import { drawBelow } from "./hash";

const MOST_DECIMALS = 6;
const MOST_VALUES = 2 ** 31;

/** "7", "7.0" and 7 are the same student; case does not count. The kernel has taken outer blanks away. */
function canonical(text: string): string {
  const number = Number(text);
  return Number.isFinite(number) ? String(number) : text.toUpperCase();
}

/** Decimals of a number as people type it; null for one with more than are kept. */
function decimalsOf(value: number): number | null {
  for (let places = 0; places <= MOST_DECIMALS; places += 1) {
    if (Number(value.toFixed(places)) === value) return places;
  }
  return null;
}

const LARGEST = {
  atLeast: -1e6,
  atMost: 1e6,
  guard: "so that every step between can be told apart",
} as const;

export const exerciseNumber = defineFunction({
  name: "EXERCISE_NUMBER",
  group: "Teaching and audit",
  summary: "Number for each student and item, the same for ever and on every computer",
  formula: "low + k step, k drawn by seed, student and item",
  source: cite(
    "DRAW",
    "32-bit FNV-1a over the UTF-8 text, finished by the mixer of MurmurHash3, words beyond the last full round rejected",
  ),
  assumptions: [
    'Same seed, student and item give the same number on every computer, in every language and version. To draw again, change the seed for all, or add a counter to the item for one: item & "#" & 2.',
    'Case and outer blanks do not count, and 7 is the same as "7". Nothing is random and nothing changes on opening.',
    "All values from low to high on the step are equally likely; high is reached only if it lies on the step.",
    "Practice, not exam security: a student who knows the seed can draw any other student's numbers.",
  ],
  params: {
    seed: { kind: "text", orNumber: true, about: "The word of the term or class, kept by the instructor" },
    student: { kind: "text", orNumber: true, about: "The student's number or short name in the class list" },
    item: {
      kind: "text",
      orNumber: true,
      about: "What the number is for, such as the name of the argument; add # and a counter to redraw",
    },
    low: { ...LARGEST, quantity: "any one unit", symbol: "a", about: "Lowest value; 0 is a value, so leave no blank" },
    high: { ...LARGEST, quantity: "any one unit", symbol: "b", about: "Highest value, not below low" },
    step: { quantity: "any one unit", symbol: "s", above: 0, about: "Distance from value to value, such as 0.05" },
  },
  result: { quantity: "any one unit", symbol: "x", about: "The drawn number, on the step, without float dust" },
  examples: [
    {
      given: { seed: "elm", student: 7, item: "flow", low: 3, high: 3, step: 0.5 },
      gives: 3,
      from: cite("ARITHMETIC", "only one value lies between 3 and 3"),
    },
    {
      given: { seed: "elm", student: "7.0", item: "Flow ", low: 0.1, high: 0.14, step: 0.05 },
      gives: 0.1,
      from: cite("ARITHMETIC", "the next value, 0.15, lies above 0.14"),
    },
  ],
  mistakes: [],
  seeAlso: ["CHECK_ANSWER", "COMMON_MISTAKES"],
  native: null,
  compute({ seed, student, item, low, high, step }, show, { refuse }) {
    if (high < low) throw refuse("high", high, `it must be low (${low}) or more`);
    const places = Object.entries({ low, high, step }).map(([name, value]) => {
      const decimals = decimalsOf(value);
      if (decimals === null) throw refuse(name as "low", value, `it must have ${MOST_DECIMALS} decimals or fewer`);
      return decimals;
    });
    const scale = 10 ** Math.max(...places);
    const [first, last, stride] = [low, high, step].map((value) => Math.round(value * scale)) as [
      number,
      number,
      number,
    ];
    const values = show(
      "n = ROUNDDOWN((b - a) / s + 0.000000001, 0) + 1",
      Math.floor((last - first) / stride) + 1,
      "count",
      "Values from low to high",
    );
    if (values > MOST_VALUES) throw refuse("step", step, `it must be larger: ${MOST_VALUES} values are the most`);
    const drawn = drawBelow(values, [canonical(seed), canonical(student), canonical(item)]);
    const k = show("k", drawn, "count", "Drawn by seed, student and item");
    return show("x = a + k * s", (first + k * stride) / scale, "any one unit", "The number");
  },
});
