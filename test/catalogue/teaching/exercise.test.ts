import { evaluate, type ArgumentInput } from "../../../src/kernel";
import { entryOf, refusal } from "../../rig/calls";
import { byAnotherRoute } from "../../rig/evidence";

function draw(...args: ArgumentInput[]): number {
  return evaluate(entryOf("EXERCISE_NUMBER"), args) as number;
}

/**
 * Another route to the same numbers: FNV-1a and the MurmurHash3 finisher in BigInt arithmetic modulo 2^32, written from
 * their definitions, over the bytes that the platform's own encoder gives.
 */
function drawnByBigInt(parts: readonly string[], count: bigint): bigint {
  const word = 2n ** 32n;
  let hash = 0x811c9dc5n;
  for (const byte of new TextEncoder().encode([...parts, "1"].join("\u001f")))
    hash = ((hash ^ BigInt(byte)) * 0x01000193n) % word;
  for (let attempt = 1n; ; attempt += 1n) {
    let bits = (hash + attempt * 0x9e3779b9n) % word;
    bits = ((bits ^ (bits >> 16n)) * 0x85ebca6bn) % word;
    bits = ((bits ^ (bits >> 13n)) * 0xc2b2ae35n) % word;
    bits ^= bits >> 16n;
    if (bits < word - (word % count)) return bits % count;
  }
}

describe("the fixed vector, which may never change: exercises of years ago must come out the same", () => {
  // Written down on 25 November 2026 from the BigInt route above, not from the function.
  const VECTOR = [
    ["ELM 2026", "1", "FLOW"],
    ["ELM 2026", "2", "FLOW"],
    ["ELM 2026", "2", "FLOW#2"],
    ["BIRKE", "ÅSA", "VOLUME"],
    ["", "x", "🌱"],
  ] as const;

  test.each(VECTOR)("seed %s, student %s, item %s: both routes agree on a million values", (seed, student, item) => {
    if (seed === "")
      return expect(refusal(entryOf("EXERCISE_NUMBER"), [seed, student, item, 0, 1, 1]).message).toMatch(
        /seed is blank/,
      );
    expect(draw(seed, student, item, 0, 999_999, 1)).toBe(
      Number(drawnByBigInt([seed, student.toUpperCase(), item.toUpperCase()], 1_000_000n)),
    );
  });

  test('published hash values: FNV-1a of "foobar" is 0xbf9cf968 (Noll\'s test vectors, recalled), which the BigInt route gives', () => {
    let hash = 0x811c9dc5n;
    for (const byte of new TextEncoder().encode("foobar")) hash = ((hash ^ BigInt(byte)) * 0x01000193n) % 2n ** 32n;
    expect(hash).toBe(0xbf9cf968n);
  });
});

describe(byAnotherRoute("EXERCISE_NUMBER"), () => {
  test("10,000 draws over 50 values are uniform by chi-square (below 85.35, the 0.1 % point of 49 degrees of freedom)", () => {
    const counts = new Array<number>(50).fill(0);
    for (let student = 0; student < 10_000; student += 1) {
      const value = draw("elm 2026", student, "flow", 1, 50, 1);
      counts[value - 1] = (counts[value - 1] as number) + 1;
    }
    const chiSquare = counts.reduce((sum, count) => sum + (count - 200) ** 2 / 200, 0);
    expect(chiSquare).toBeLessThan(85.35);
    expect(chiSquare).toBeGreaterThan(20);
  });

  test("neighbouring students and items are not alike: 2,000 pairs agree about as often as chance, one in fifty", () => {
    let alike = 0;
    for (let student = 0; student < 2_000; student += 1) {
      if (draw("elm", student, "a", 1, 50, 1) === draw("elm", student + 1, "a", 1, 50, 1)) alike += 1;
    }
    expect(alike).toBeGreaterThan(15);
    expect(alike).toBeLessThan(75);
  });

  test.each([
    [0.05, 0.1, 0.4],
    [0.25, 0.5, 4],
    [5, 20, 60],
    [0.001, 0.123, 0.456],
    [0.1, -0.3, 0.3],
  ])("on a step of %d from %d to %d values carry no float dust", (step, low, high) => {
    for (let student = 0; student < 200; student += 1) {
      const value = draw("elm", student, "x", low, high, step);
      expect(value).toBe(Number(value.toFixed(3)));
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
    }
  });

  test("every value from low to high comes, both ends too", () => {
    const seen = new Set(Array.from({ length: 400 }, (_each, student) => draw("elm", student, "lf", 0.05, 0.3, 0.05)));
    expect([...seen].sort((a, b) => a - b)).toEqual([0.05, 0.1, 0.15, 0.2, 0.25, 0.3]);
  });

  test('7, "7", "7.0" and " 7 " are one student; case and outer blanks do not count', () => {
    const number = draw("elm", 7, "flow", 0, 1e6, 1);
    for (const student of ["7", "7.0", " 7 "]) expect(draw("elm", student, "flow", 0, 1e6, 1)).toBe(number);
    expect(draw(" ELM ", 7, "Flow", 0, 1e6, 1)).toBe(number);
    expect(draw("elm", 7, "flow#2", 0, 1e6, 1)).not.toBe(number);
  });

  test("the parts do not run into one another", () => {
    expect(draw("ab", "c", "x", 0, 1e6, 1)).not.toBe(draw("a", "bc", "x", 0, 1e6, 1));
  });

  test("high below low, and more values than can be drawn fairly, are refused by name", () => {
    expect(refusal(entryOf("EXERCISE_NUMBER"), ["elm", 1, "x", 2, 1, 1]).argument).toBe("high");
    expect(refusal(entryOf("EXERCISE_NUMBER"), ["elm", 1, "x", -1e6, 1e6, 0.000001]).argument).toBe("step");
    expect(refusal(entryOf("EXERCISE_NUMBER"), ["elm", 1, "x", 0, 1, 1 / 3]).message).toMatch(
      /step is .* it must have 6 decimals or fewer/,
    );
  });
});

function mark(answer: ArgumentInput, correct: number, relative?: number, absolute?: number): string {
  return evaluate(entryOf("CHECK_ANSWER"), [answer, correct, relative, absolute]) as string;
}

describe(byAnotherRoute("CHECK_ANSWER"), () => {
  test.each([
    ["exactly right", 2.75, 2.75, undefined, undefined, "right"],
    ["2 % off is right by default: 2.75 x 1.02 = 2.805", 2.805, 2.75, undefined, undefined, "right"],
    ["just beyond it is close", 2.81, 2.75, undefined, undefined, "close"],
    ["10 % off is close: 5 tolerances", 3.02, 2.75, undefined, undefined, "close"],
    ["beyond 5 tolerances is wrong", 3.03, 2.75, undefined, undefined, "wrong"],
    ["the other side too", 2.47, 2.75, undefined, undefined, "wrong"],
    ["a right answer rounded to the digits typed: 14.1 for 14.1176", 14.1, 240 / 17, 0, undefined, "right"],
    ["rounded the wrong way is not right: 14.2", 14.2, 240 / 17, 0.001, undefined, "wrong"],
    ["one digit is not rounding: 3 for 2.75", 3, 2.75, 0.001, undefined, "wrong"],
    ["the absolute tolerance counts where it is wider", 0.04, 0, 0.02, 0.05, "right"],
    ["a right 0 answered by 0", 0, 0, undefined, undefined, "right"],
    ["0 where 0 is not right", 0, 2.75, undefined, undefined, "not answered"],
    ["a blank", null, 2.75, undefined, undefined, "not answered"],
    ["an empty text", "", 2.75, undefined, undefined, "not answered"],
    ["a negative right answer", -2.8, -2.75, undefined, undefined, "right"],
    ["the sign turned", 2.75, -2.75, undefined, undefined, "wrong"],
    ["a text", "about 3", 2.75, undefined, undefined, "not answered: type a number, without its unit"],
  ] as const)("%s", (_title, answer, correct, relative, absolute, word) => {
    expect(mark(answer, correct, relative, absolute)).toBe(word);
  });

  test("a range where one answer belongs is refused", () => {
    expect(refusal(entryOf("CHECK_ANSWER"), [[[1], [2]], 2]).message).toMatch(
      /answer is a range of 2 x 1 cells; it must be a single value/,
    );
  });
});
