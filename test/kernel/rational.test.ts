import fc from "fast-check";
import { decimal, dividedBy, ratio, times, toNumber } from "../../src/kernel/rational";
import { SEED } from "../rig/validInputs";

describe("an exact ratio", () => {
  test("is kept in lowest terms", () => {
    expect(ratio(462n, 288n)).toEqual({ over: 77n, under: 48n });
    expect(decimal("0.0254")).toEqual({ over: 127n, under: 5000n });
  });

  test("is multiplied and divided without rounding", () => {
    const third = ratio(1n, 3n);
    expect(times(third, ratio(3n, 1n))).toEqual({ over: 1n, under: 1n });
    expect(dividedBy(times(third, decimal("0.1")), decimal("0.1"))).toEqual(third);
  });

  test.each([
    ["0.45359237", 0.45359237],
    ["0.0254", 0.0254],
    ["9.80665", 9.80665],
    ["0.3048", 0.3048],
    ["231", 231],
    ["86400", 86400],
  ])("of the decimal %s becomes the number of that name", (text, number) => {
    expect(toNumber(decimal(text))).toBe(number);
  });

  // JavaScript reads a decimal as the nearest double: the judge of every rounding below.
  test("of any decimal, however long, becomes the nearest double", () => {
    const digits = fc
      .array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 40 })
      .map((list) => list.join(""));
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 ** 9 }), digits, (whole, places) => {
        expect(toNumber(decimal(`${whole}.${places}`))).toBe(Number(`${whole}.${places}`));
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });

  /** Halfway between 1 and the next double, 1 + 2^-53, in all its digits. */
  const HALFWAY = "1.00000000000000011102230246251565404236316680908203125";

  test("halfway between two doubles goes to the even one, and a trace above it to the next", () => {
    expect(toNumber(decimal(HALFWAY))).toBe(1);
    expect(toNumber(decimal(`${HALFWAY}${"0".repeat(30)}1`))).toBe(1.0000000000000002);
  });

  test("of a small number and one beyond 2^53 is not rounded twice", () => {
    // 1 / (2^53 + 1) = 2^-53 (1 - 2^-53 + ...): the double below 2^-53 lies 2^-106 below it.
    expect(toNumber(ratio(1n, 2n ** 53n + 1n))).toBe(2 ** -53 - 2 ** -106);
    expect(toNumber(ratio(2n ** 53n + 1n, 1n))).toBe(2 ** 53);
    expect(toNumber(ratio(2n ** 53n + 3n, 1n))).toBe(2 ** 53 + 4);
  });

  test("of a whole number beyond any remainder is the nearest double", () => {
    expect(toNumber(decimal(`1${"0".repeat(40)}`))).toBe(1e40);
    expect(toNumber(decimal("123456789012345678901234567890123"))).toBe(Number("123456789012345678901234567890123"));
  });

  test("of two numbers far beyond the largest double is the nearest double", () => {
    const long = `1.${"3".repeat(400)}`;
    expect(toNumber(decimal(long))).toBe(Number(long));
    expect(toNumber(ratio(10n ** 400n + 1n, 10n ** 400n))).toBe(1);
  });

  test("of nothing is 0", () => {
    expect(ratio(0n, 5n)).toEqual({ over: 0n, under: 1n });
    expect(toNumber(decimal("0.000"))).toBe(0);
  });

  test("of large numbers keeps every bit that a double holds", () => {
    expect(toNumber(ratio(10n ** 40n, 3n * 10n ** 20n))).toBe(Number("33333333333333333333.333333"));
    expect(toNumber(ratio(3n * 10n ** 20n, 10n ** 40n))).toBe(3e-20);
  });
});
