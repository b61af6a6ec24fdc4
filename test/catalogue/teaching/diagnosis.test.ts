import { readFileSync } from "node:fs";
import { join } from "node:path";
import { evaluate, FunctionError } from "../../../src/kernel";
import type { ArgumentInput } from "../../../src/kernel";
import { entryOf, refusal } from "../../rig/calls";
import { byAnotherRoute } from "../../rig/evidence";
import { diagnosed, diagnosisPage, DRAWS, recognitionOf, type Recognition } from "../../rig/recognition";

const MOST_CONFUSED = 0.01;

const all: readonly Recognition[] = diagnosed.map(recognitionOf);

function diagnosis(
  answer: ArgumentInput,
  name: string,
  detail: number | null,
  input: readonly ArgumentInput[],
  tolerance: number | null = null,
): string {
  return evaluate(entryOf("DIAGNOSE_ANSWER"), [answer, name, tolerance, detail, ...input]) as string;
}

describe("every known mistake is recognised when its own answer is given back", () => {
  test.each(all.map((each) => [each.name, each] as const))(
    "%s: on its draws",
    (_name, { draws, given, recognised }) => {
      expect(draws).toBe(DRAWS);
      expect(given).toBeGreaterThan(0);
      expect(recognised / given).toBeGreaterThanOrEqual(0.8);
    },
  );

  test("at most one in a hundred is confused, over all functions", () => {
    const given = all.reduce((sum, each) => sum + each.given, 0);
    const confused = all.reduce((sum, each) => sum + each.confused.length, 0);
    expect(confused / given).toBeLessThanOrEqual(MOST_CONFUSED);
  });

  test("no right answer is ever called wrong", () => {
    expect(all.filter(({ rightMissed }) => rightMissed > 0)).toEqual([]);
  });

  test("docs/diagnosis.md is what this run found", () => {
    expect(readFileSync(join(__dirname, "../../../docs/diagnosis.md"), "utf8")).toBe(diagnosisPage(all));
  });
});

// 60 x 0.275 / 6 = 2.75 minutes with one emitter; 1.375 with two.
const ONE = [0.275, 6];
const TWO = [0.275, 6, 2];

describe(byAnotherRoute("DIAGNOSE_ANSWER"), () => {
  test.each([
    ["an empty cell is not answered, and not wrong", null, 2, TWO, "not answered"],
    ["a 0 is not answered where 0 is not right", 0, 2, TWO, "not answered"],
    ["a text asks for a number without its unit", "1.4 min", 2, TWO, "not answered: type a number, without its unit"],
    ["the right number is right", 1.375, 2, TWO, "right"],
    ["within two in a hundred is right", 1.4, 2, TWO, "right"],
    [
      "an emitter left out: 2.75",
      2.75,
      2,
      TWO,
      "wrong: 2.75 is what comes out when the emitters per plant were left out",
    ],
    [
      "per hour as per minute: 2.75 / 60",
      0.0458,
      2,
      ONE,
      "wrong: 0.0458 is what comes out when the flow per hour was taken as flow per minute",
    ],
    [
      "gallons for litres: 2.75 x 3.785",
      10.41,
      2,
      ONE,
      "wrong: 10.41 is what comes out when US gallons and litres were mixed up",
    ],
    [
      "imperial gallons: 2.75 x 1.201",
      3.303,
      2,
      ONE,
      "wrong: 3.303 is what comes out when US and imperial gallons were mixed up",
    ],
    [
      "a decimal point one place off",
      27.5,
      2,
      ONE,
      "wrong: 27.5 is what comes out when the decimal point is one place off, or a unit with its prefix was missed",
    ],
    ["the sign turned", -2.75, 2, ONE, "wrong: -2.75 is what comes out when the sign was turned"],
    [
      "two at once: emitters left out and litres",
      10.41,
      2,
      TWO,
      "wrong: 10.41 is what comes out when the emitters per plant were left out; and US gallons and litres were mixed up",
    ],
    [
      "nothing known: it says where to start",
      1.9,
      2,
      ONE,
      "wrong: no known mistake gives this; start at step 1, Flow to one plant: Q = q * n",
    ],
    [
      "one digit: no mistake is claimed",
      3,
      2,
      TWO,
      "wrong: one digit tells too little; give two or more, and start at step 1, Flow to one plant: Q = q * n",
    ],
    ["detail 0 tells the verdict alone", 2.75, 0, TWO, "wrong: not yet the right number"],
    ["detail 1 tells where to look", 2.75, 1, TWO, "wrong: look again at step 2, Run time: t = 60 * V / Q"],
    [
      "detail 1 knows an answer that stopped half way: 12 gal/h is step 1",
      12,
      1,
      TWO,
      "wrong: look again at step 2, Run time: t = 60 * V / Q",
    ],
    [
      "detail 3 adds both numbers",
      2.75,
      3,
      TWO,
      "wrong: 2.75 is what comes out when the emitters per plant were left out (that gives 2.75; right is 1.375)",
    ],
  ] as const)("%s", (_title, answer, detail, input, words) => {
    expect(diagnosis(answer, "RUN_MINUTES", detail, input)).toBe(words);
  });

  test("a right answer rounded to its digits is right, rounded: 14.1 for 14.1176", () => {
    expect(diagnosis(14.1, "RUN_MINUTES_FROM_LEACHING", 2, [20, 0.4, 0.15], 0.0001)).toBe("right, rounded");
  });

  test("a leaching fraction subtracted: 20 x (1 - 0.25) = 15.0, where 14.1 is right", () => {
    expect(diagnosis(15.01, "RUN_MINUTES_FROM_LEACHING", 2, [20, 0.4, 0.15], 0.005)).toBe(
      "wrong: 15.01 is what comes out when the difference of the two fractions was taken off the time",
    );
  });

  test("steps rounded to whole numbers: 12.4 becomes 12, 222 / 12 = 18.5 becomes 19, where 17.9 is right", () => {
    expect(diagnosis(19, "RUN_MINUTES", 2, [3.7, 12.4])).toBe(
      "wrong: 19 is what comes out when each step was rounded to whole numbers",
    );
  });

  test("blank tolerance is 0.02 and blank detail is 2", () => {
    expect(diagnosis(2.75, "RUN_MINUTES", null, TWO)).toBe(diagnosis(2.75, "RUN_MINUTES", 2, TWO, 0.02));
  });

  test("a wrong input gives the function's own words", () => {
    expect(refusal(entryOf("DIAGNOSE_ANSWER"), [2, "RUN_MINUTES", null, null, 0.3, 0]).message).toBe(
      "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)",
    );
  });

  test("a function that spills, or an unknown one, is refused in words", () => {
    expect(refusal(entryOf("DIAGNOSE_ANSWER"), [2, "PULSE_SCHEDULE", null, null, 45, 3, 60, 0.25]).message).toMatch(
      /no single number as its answer/,
    );
    expect(refusal(entryOf("DIAGNOSE_ANSWER"), [2, "RUN_MINUTE", null, null, 0.3, 6]).message).toMatch(
      /there is no function RUN_MINUTE\b.*did you mean RUN_MINUTES/,
    );
  });

  test("no text blames anyone", () => {
    const texts = all.flatMap(({ confused }) => confused.map(({ told }) => told));
    for (const text of texts) expect(text).not.toMatch(/\byou(r)?\b|should|careless|forgot to/i);
  });
});

describe("where numbers run out", () => {
  // 2.5 / 1E-323 is more than a number holds: that slip gives no number, so it explains none.
  test("a slip whose number runs out explains no answer", () => {
    const told = evaluate(entryOf("DIAGNOSE_ANSWER"), [1.25, "RUN_TIME_MULTIPLIER", 0.02, 3, 1e-323]);
    expect(told).not.toMatch(/Infinity|uniformity was left out/);
    expect(told).toMatch(/^wrong: /);
  });
});

// The entries' own arithmetic, over all functions.
describe(byAnotherRoute("COMMON_MISTAKES"), () => {
  test.each(diagnosed.map((entry) => [entry.name, entry] as const))(
    "%s: a row a mistake, each ratio that of its answer",
    (_name, entry) => {
      const [example] = entry.examples;
      const input = Object.keys(entry.params).map(
        (name) => (example.given as Record<string, unknown>)[name] as ArgumentInput,
      );
      const right = evaluate(entry, input) as number;
      const table = evaluate(entryOf("COMMON_MISTAKES"), [entry.name, ...input]) as readonly (readonly unknown[])[];
      expect(table[0]).toEqual(["mistake", "its answer", "ratio to the right one"]);
      expect(table.length).toBeGreaterThan(1);
      for (const [, gives, ratio] of table.slice(1)) expect((ratio as number) * right).toBeCloseTo(gives as number, 9);
    },
  );
});

test("errors are the catalogue's own", () => {
  expect(refusal(entryOf("COMMON_MISTAKES"), ["WATER_HELD", 9])).toBeInstanceOf(FunctionError);
});
