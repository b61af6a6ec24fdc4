/**
 * The slips that any calculation can suffer, each on a store that lasts V / (use + loss - inflow) days: a number worked by
 * hand and the words that it brings. Arithmetic written out; units by definition: 231 in3 or 3.785411784 L to the US gallon,
 * 4.54609 L to the imperial, 25.4 mm to the inch, 0.45359237 kg to the pound. Levels and the steps to look at stand behind them.
 */
import { evaluate, type ArgumentInput } from "../../../src/kernel";
import { entryOf } from "../../rig/calls";

/** What a teacher would say to an answer of DAYS_OF_STORAGE with these inputs. */
function told(answer: number, inputs: readonly number[], tolerance = 0.0001, detail = 2): unknown {
  return evaluate(entryOf("DIAGNOSE_ANSWER"), [answer, "DAYS_OF_STORAGE", tolerance, detail, ...inputs]);
}

/** 770 over 40: 19.25 days. */
const STORE = [770, 40];

describe("on 770 / 40 = 19.25 days", () => {
  test.each([
    ["x 60", 1155, "per minute and per hour, or minutes and hours, were mixed up"],
    ["/ 60", 0.3208333, "per minute and per hour, or minutes and hours, were mixed up"],
    ["x 3.785411784", 72.86917684, "US gallons and litres were mixed up"],
    ["/ 3.785411784", 5.085312, "US gallons and litres were mixed up"],
    ["x 1.20094993", 23.118286, "US and imperial gallons were mixed up"],
    ["/ 1.20094993", 16.029311, "US and imperial gallons were mixed up"],
    ["x 2.54", 48.895, "inches and centimetres were mixed up"],
    ["/ 2.54", 7.57874, "inches and centimetres were mixed up"],
    ["x 25.4", 488.95, "inches and millimetres were mixed up"],
    ["x 0.45359237", 8.731653, "pounds and kilograms were mixed up"],
    ["/ 0.45359237", 42.438985, "pounds and kilograms were mixed up"],
    ["x 10", 192.5, "the decimal point is one place off, or a unit with its prefix was missed"],
    ["/ 10", 1.925, "the decimal point is one place off, or a unit with its prefix was missed"],
    ["x 100", 1925, "a percentage was taken for a fraction, or the decimal point is two places off"],
    ["x 1000", 19_250, "the decimal point is 3 places off, or a unit with its prefix was missed"],
    ["/ 1,000,000", 0.00001925, "the decimal point is 6 places off, or a unit with its prefix was missed"],
    ["turned", -19.25, "the sign was turned"],
    ["x 770", 14_822.5, "usable_volume was left out, or used twice"],
    ["/ 40 once more", 0.48125, "daily_use was left out, or used twice"],
  ])("%s is %d", (_how, answer, words) => {
    expect(told(answer, STORE)).toBe(`wrong: ${answer} is what comes out when ${words}`);
  });

  test("1 / 19.25 is 0.051948: the ratio was inverted", () => {
    expect(told(0.0519481, STORE)).toBe("wrong: 0.0519481 is what comes out when the ratio was inverted");
  });

  test("two slips that give one number are both told: 40 left out where use and loss are 40 each", () => {
    // 1000 / 80 = 12.5, times 40 is 500.
    expect(told(500, [1000, 40, 40])).toBe(
      "wrong: 500 is what comes out when daily_use was left out, or used twice, or when daily_loss was left out, or used twice",
    );
    expect(told(500, [1000, 40, 40], 0.0001, 3)).toMatch(/, or used twice \(that gives 500; right is 12\.5\)$/);
  });

  test("the numbers are told at level 3, the slip's and the right one", () => {
    expect(told(1155, STORE, 0.0001, 3)).toBe(
      "wrong: 1155 is what comes out when per minute and per hour, or minutes and hours, were mixed up (that gives 1155; right is 19.25)",
    );
    expect(told(777, STORE, 0.0001, 3)).toBe(
      "wrong: no known mistake gives this; start at step 1, What leaves on a day: out = use + loss (right is 19.25)",
    );
  });
});

describe("more than one slip near an answer", () => {
  const LEFT_OUT = "was left out, or used twice";

  test("the nearer is told, in parts of what it gives: 408 is 7.27 % from 440 and 7.37 % from 380", () => {
    // 820 / (44 + 38) = 10; times 44 is 440, times 38 is 380.
    expect(told(408, [820, 44, 38], 0.1)).toBe(`wrong: 408 is what comes out when daily_use ${LEFT_OUT}`);
  });

  test("two that give one number are told of an answer beside it too: 500.3 within 0.1 %", () => {
    expect(told(500.3, [1000, 40, 40], 0.001)).toBe(
      `wrong: 500.3 is what comes out when daily_use ${LEFT_OUT}, or when daily_loss ${LEFT_OUT}`,
    );
  });

  test("two that round to the answer are told with both numbers", () => {
    // 800.7 / 80.07 = 10; times 40.03 is 400.3, times 40.04 is 400.4: both are 400 to the digits typed.
    expect(told(400, [800.7, 40.03, 40.04], 0.000001, 3)).toBe(
      `wrong: 400 is what comes out when daily_use ${LEFT_OUT}, or when daily_loss ${LEFT_OUT} (that gives 400.3 or 400.4; right is 10)`,
    );
  });

  test("one that rounds to the answer is told before one that is only near: 400.3, not 404", () => {
    // 804.3 / 80.43 = 10; times 40.03 is 400.3, times 40.4 is 404.
    expect(told(400, [804.3, 40.03, 40.4], 0.02)).toBe(`wrong: 400 is what comes out when daily_use ${LEFT_OUT}`);
  });

  test("two are told and not a third", () => {
    // 1000 / (40 + 40 - 40) = 25; times 40 is 1000, whichever 40 it is.
    expect(told(1000, [1000, 40, 40, 40])).toBe(
      `wrong: 1000 is what comes out when daily_use ${LEFT_OUT}, or when daily_loss ${LEFT_OUT}`,
    );
  });
});

describe("steps that were rounded on the way", () => {
  test.each([
    // 33.4 + 0.4 = 33.8, 34; 100,000 / 34 = 2941.18, 2941; right is 2958.58.
    ["whole numbers", 2941, [100_000, 33.4, 0.4]],
    // 33.46 + 0.4 = 33.86, 33.9; 100,000 / 33.9 = 2949.85, 2949.9; right is 2953.34.
    ["1 decimal", 2949.9, [100_000, 33.46, 0.4]],
    // 33.456 + 0.4 = 33.856, 33.86; 1,000,000 / 33.86 = 29533.373, 29533.37; right is 29536.86.
    ["2 decimals", 29_533.37, [1_000_000, 33.456, 0.4]],
  ])("to %s", (digits, answer, inputs) => {
    expect(told(answer, inputs, 0.00001)).toBe(
      `wrong: ${answer} is what comes out when each step was rounded to ${digits}`,
    );
  });
});

describe("where to look again, at level 1", () => {
  /** out 33.8, net 30, 1000 / 30 = 33.33 days. */
  const inputs = [1000, 33.4, 0.4, 3.8];

  test.each([
    ["the first step's result", 33.8, "step 2, What the store gives on a day: net = out - inflow"],
    ["the second step's", 30, "step 3, Days until it is gone: t = V / net"],
    ["no step's", 77, "step 3, Days until it is gone: t = V / net"],
  ])("%s", (_which, answer, step) => {
    expect(told(answer, inputs, 0.0001, 1)).toBe(`wrong: look again at ${step}`);
  });
});

test("one digit tells too little", () => {
  expect(told(7, STORE)).toBe(
    "wrong: one digit tells too little; give two or more, and start at step 1, What leaves on a day: out = use + loss",
  );
});

test("two slips at once: RUN_MINUTES with its emitters left out, in litres", () => {
  // 60 x 0.275 / (6 x 2) = 1.375; the emitters left out 2.75; x 3.785411784 = 10.409882.
  const args = [10.409882, "RUN_MINUTES", 0.0001, 2, 0.275, 6, 2];
  expect(evaluate(entryOf("DIAGNOSE_ANSWER"), args)).toBe(
    "wrong: 10.409882 is what comes out when the emitters per plant were left out; and US gallons and litres were mixed up",
  );
});

test("one slip twice over is no two slips: RUN_MINUTES with its emitters multiplied in and in again", () => {
  // 1.375 with two emitters; multiplied in, 5.5, which is 4 times; 16 times is 22.
  const args = [22, "RUN_MINUTES", 0.0001, 2, 0.275, 6, 2];
  expect(evaluate(entryOf("DIAGNOSE_ANSWER"), args)).toMatch(/^wrong: no known mistake gives this; /);
});

describe("a step has the number that SHOW_WORKING gives it, what was looked up or drawn counted", () => {
  const diagnosed = (...args: readonly unknown[]): unknown =>
    evaluate(entryOf("DIAGNOSE_ANSWER"), args as ArgumentInput[]);

  test("EXERCISE_NUMBER: who types the 6 values goes on to the third row, behind the draw", () => {
    expect(diagnosed(6, "EXERCISE_NUMBER", 0.0001, 1, "spring", "7", "kc", 0.5, 1, 0.1)).toBe(
      "wrong: look again at step 3, The number: x = a + k * s",
    );
  });

  test("PAYBACK_YEARS: 10,000 with savings of 3,000, 4,000 and 5,000 is 2 + 3,000 / 5,000 years", () => {
    const savings = [[3000], [4000], [5000]];
    const step = "step 4, Years, linear within the year of the crossing: y = before + MIN(1, (C - paid) / next)";
    expect(diagnosed(7.7, "PAYBACK_YEARS", 0.0001, 1, 10_000, savings)).toBe(`wrong: look again at ${step}`);
    expect(diagnosed(7, "PAYBACK_YEARS", 0.0001, 2, 10_000, savings)).toBe(
      `wrong: one digit tells too little; give two or more, and start at ${step}`,
    );
  });
});
