/** Every function keeps the digits that its formulas allow: held against the same formulas in numbers of 64 digits. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue } from "../../src/functions/catalogue";
import { inOrder, work } from "../../src/kernel";
import { exactly, written, type BigNumber } from "../../tools/accuracy/bigNumbers";
import { Decisions, waysToTurn } from "../../tools/accuracy/decisions";
import { exactConstants, exactNumber } from "../../tools/accuracy/exactUnits";
import { drawnCalls } from "../../tools/accuracy/draws";
import { asWritten, worked } from "../../tools/accuracy/formula";
import { judge, LIMIT } from "../../tools/accuracy/judge";
import { measured, measuredCall } from "../../tools/accuracy/measure";
import { NOT_MEASURED } from "../../tools/accuracy/page";
import { replay } from "../../tools/accuracy/replay";
import { constant, input, movesInAll, type Traced } from "../../tools/accuracy/traced";
import { answerOf, entryOf } from "../rig/calls";
import { oneStepFunction } from "../rig/oneStepFunction";

const CALLS = 4;
const SIXTY_DIGITS = 60;

type Symbols = Readonly<Record<string, readonly string[] | string>>;

/** The formula with symbols that stand for decimals, each of them an input. */
function big(formula: string, symbols: Symbols = {}, turned: readonly number[] = []): Traced {
  let inputs = 0;
  const known = new Map(
    Object.entries(symbols).map(([symbol, texts]) => [
      symbol,
      [texts].flat().map((text) => input(written(text), inputs++)),
    ]),
  );
  const symbol = (name: string): readonly Traced[] => known.get(name) ?? [];
  return worked(formula, { symbol, number: asWritten }, new Decisions(new Set(turned)));
}

function text(value: BigNumber): string {
  return value.toSignificantDigits(SIXTY_DIGITS).toFixed();
}

describe("a formula in big numbers", () => {
  test.each([
    ["1 + 2 * 3 ^ 2", "19"],
    ["-2 ^ 2", "4"],
    ["2 ^ 3 ^ 2", "64"],
    ["2 ^ -1", "0.5"],
    ["7 - 2 - 1", "4"],
    ["0.1 + 0.2", "0.3"],
    ["1E-30 + 1 - 1", "0.000000000000000000000000000001"],
    ["IF(1 < 2, 10, 1 / 0)", "10"],
    ["IF(2 <= 1, 1 / 0, 20)", "20"],
    ["IF(2 = 2, 1, 0) + IF(2 <> 2, 1, 0) + IF(3 >= 2, 1, 0) + IF(3 > 3, 1, 0)", "2"],
    ["MAX(1, 3, 2) - MIN(4, 3, 5)", "0"],
    ["ROUNDUP(2.1, 0) + ROUNDUP(-2.1, 0) * 10", "-27"],
    ["ROUNDDOWN(2.9, 0) + ROUNDDOWN(-2.9, 0) * 10", "-18"],
    ["INT(2.9) + INT(-2.1) * 10", "-28"],
    ["ABS(-3) + ABS(3)", "6"],
    ["SQRT(16)", "4"],
    ["DATE(2000, 1, 1)", "36526"],
    ["DATE(2000, 1, 0)", "36525"],
    ["YEAR(36525)", "1999"],
  ])("%s is %s, as in a spreadsheet", (formula, expected) => {
    expect(text(big(formula).value)).toBe(expected);
  });

  test.each([
    ["EXP(1)", "2.71828182845904523536028747135266249775724709369995957496697"],
    ["PI()", "3.14159265358979323846264338327950288419716939937510582097494"],
    ["LN(2)", "0.69314718055994530941723212145817656807550013436025525412068"],
    ["2 ^ 0.5", "1.41421356237309504880168872420969807856967187537694807317668"],
  ])("%s has the digits out of print", (formula, expected) => {
    expect(text(big(formula).value)).toBe(expected);
  });

  test.each([
    ["SIN(PI() / 6)", "0.5"],
    ["COS(PI() / 3)", "0.5"],
    ["TAN(PI() / 4)", "1"],
    ["ACOS(0.5) * 3 / PI()", "1"],
    ["LN(EXP(3.25))", "3.25"],
  ])("%s is %s to sixty digits", (formula, expected) => {
    expect(big(formula).value.minus(written(expected)).abs().lessThan("1e-60")).toBe(true);
  });

  // Mean 5; deviations 3, 1, 1, 1, 0, 0, 2, 4: sum 12, squares 32.
  const eight = { x: ["2", "4", "4", "4", "5", "5", "7", "9"] };
  test.each([
    ["SUM(x)", "40"],
    ["COUNT(x)", "8"],
    ["AVERAGE(x)", "5"],
    ["AVEDEV(x)", "1.5"],
    ["STDEV(x) ^ 2 * 7", "32"],
    ["SMALL(x, 6)", "5"],
    ['COUNTIF(x, "<" & 5)', "4"],
    ['COUNTIF(x, "<=" & 5)', "6"],
    ["COUNTIF(x, 4)", "3"],
    ['SUMIF(x, ">" & 5)', "16"],
    ["SUMPRODUCT(x, x)", "232"],
    ["MAX(x) - MIN(x)", "7"],
  ])("%s of eight numbers is %s", (formula, expected) => {
    expect(big(formula, eight).value.minus(written(expected)).abs().lessThan("1e-60")).toBe(true);
  });

  test("takes names that a spreadsheet would read as addresses or words of its own", () => {
    expect(text(big("P1 * R + C - T0", { P1: "2", R: "3", C: "4", T0: "5" }).value)).toBe("5");
  });

  test.each(["NPV(1, 2)", "1 / 0", "LN(-1)", "q + 1", "x % 2"])("%s is refused, not guessed", (formula) => {
    expect(() => big(formula, { x: "1" })).toThrow();
  });
});

describe("numbers that go in", () => {
  test("are the doubles bit by bit", () => {
    expect(exactly(0.1).toFixed()).toBe("0.1000000000000000055511151231257827021181583404541015625");
    expect(exactly(-3).toFixed()).toBe("-3");
    expect(exactly(0).isZero()).toBe(true);
    expect(text(exactly(Number.MIN_VALUE).times(written("2").pow(1074)))).toBe("1");
    expect(() => exactly(NaN)).toThrow("NaN is no number");
  });

  test("are exact ratios of units", () => {
    const gallonsIn = exactConstants(entryOf("CONTAINER_VOLUME"), "us");
    // 231 cubic inches to the gallon.
    expect([...gallonsIn.values()].map((value) => text(value.times(231)))).toContain("1");
    expect(text(exactNumber(entryOf("CONVERT_UNIT"), "0.3333333333333333").times(3))).toBe("1");
    expect(exactNumber(entryOf("RUN_MINUTES"), "0.25").toFixed()).toBe("0.25");
  });
});

describe("the condition", () => {
  test.each([
    ["x * y", 2],
    ["x ^ 3", 3],
    ["x / y", 2],
    ["SQRT(x)", 0.5],
    // 10 - 9: 19 parts of 1.
    ["x - y", 19],
    ["MAX(x, y)", 1],
    ["IF(x > y, 1, 2)", 0],
  ])("of %s at 10 and 9 is %d", (formula, expected) => {
    const { value, moves } = big(formula, { x: "10", y: "9" });
    expect(movesInAll({ value, moves }) / value.toNumber()).toBeCloseTo(expected, 10);
  });

  const smooth =
    '(x ^ y + EXP(y / x) - LN(x) * SIN(y) + COS(x) / TAN(y)) * ACOS(1 / x) + ABS(x - y) + STDEV(z) / AVEDEV(z) + SMALL(z, 2) * SUMIF(z, "<" & 4) + SUMPRODUCT(z, z) / AVERAGE(z)';
  test.each([0, 1, 2, 3, 4])("is what moving input %d by its 1e-24th finds", (moved) => {
    const numbers = ["2.5", "1.75", "3", "1", "7"];
    const at = ([x, y, ...z]: readonly string[]): Traced => big(smooth, { x: x as string, y: y as string, z });
    const { value, moves } = at(numbers);
    const higher = numbers.map((number, index) =>
      index === moved ? written(number).times(written("1.000000000000000000000001")).toFixed() : number,
    );
    const found = at(higher).value.minus(value).times("1e24").toNumber();
    expect(Math.abs((moves[moved] as number) - found)).toBeLessThan(1e-12 * Math.abs(found));
  });

  test("is that of the worse side where two are equal", () => {
    expect(movesInAll(big("MAX(0, x - y)", { x: "3", y: "3" }))).toBe(6);
    expect(movesInAll(big("MIN(x - y, 0)", { x: "3", y: "3" }))).toBe(6);
  });

  test("is 1 or more, and of an answer of 0 the error is held against what the inputs move", () => {
    expect(judge(5, constant(written("5")))).toEqual({ error: 0, condition: 1, share: 0 });
    expect(judge(3e-16, big("x - y", { x: "3", y: "3" }))).toEqual({
      error: Infinity,
      condition: Infinity,
      share: 5e-17,
    });
    expect(judge(1e-17, constant(written("0"))).share).toBe(Infinity);
  });
});

describe("a function that loses digits is caught", () => {
  const small = { atLeast: 1e-6, atMost: 1e-3 };

  test("where 1 - COS(x) cancels, and not where half the angle is taken", () => {
    const cancels = measured(
      oneStepFunction("1 - COS(x)", (x) => 1 - Math.cos(x), small),
      50,
    );
    const better = measured(
      oneStepFunction("1 - COS(x)", (x) => 2 * Math.sin(x / 2) ** 2, small),
      50,
    );
    expect(cancels.worst?.share).toBeGreaterThan(1e3 * LIMIT);
    expect(better.worst?.share).toBeLessThan(1e-3 * LIMIT);
    expect(better.worst?.condition).toBeCloseTo(2, 5);
  });

  test("where a constant is rounded to five digits", () => {
    const gallons = oneStepFunction("x * 3.785411784", (x) => x * 3.7854, small);
    expect(measured(gallons, 10).worst?.share).toBeGreaterThan(1e6 * LIMIT);
  });

  test("where 1 - D / m of two readings cancels, as it stood in CU_CHRISTIANSEN once", () => {
    const readings = [1, 0.000006];
    const [high, low] = readings as [number, number];
    const m = (high + low) / 2;
    const formula = "1 - AVEDEV(x) / AVERAGE(x)";
    const exact = worked(
      formula,
      { symbol: () => readings.map((reading, index) => input(exactly(reading), index)), number: asWritten },
      new Decisions(),
    );
    expect(judge(1 - (high - m + m - low) / 2 / m, exact).share).toBeGreaterThan(LIMIT);
    expect(judge(answerOf("CU_CHRISTIANSEN", { readings: [readings] }), exact).share).toBeLessThan(1e-15);
  });

  test("and saturated air lacks nothing, not even a last digit", () => {
    for (let tenths = -50; tenths <= 450; tenths += 1) {
      const tmax = tenths / 10;
      const given = { tmax, tmin: -5.2, rh_max: 100, rh_min: 100, units: "metric" };
      expect(answerOf("VAPOR_PRESSURE_DEFICIT", given)).toBe(0);
    }
  });
});

describe("algebra that keeps digits is the textbook's", () => {
  const TEXTBOOK = [
    ["CU_CHRISTIANSEN", "1 - AVEDEV(x) / AVERAGE(x)"],
    ["VAPOR_PRESSURE_DEFICIT", "(ex + en) / 2 - (en * RHx / 100 + ex * RHn / 100) / 2"],
  ] as const;

  test.each(TEXTBOOK)("%s: %s", (name, formula) => {
    const entry = entryOf(name);
    for (const { working } of drawnCalls(entry, 60)) {
      const replayed = replay(entry, working, new Decisions());
      const steps = new Map(replayed.map((each) => [each.step.symbol, each.big]));
      const given = (symbol: string) => [working.values.get(symbol) ?? []].flat().map(exactly).map(constant);
      const symbol = (wanted: string) => steps.get(wanted) ?? given(wanted);
      const textbook = worked(formula, { symbol, number: asWritten }, new Decisions());
      const answer = replayed[replayed.length - 1]?.big.value as BigNumber;
      const apart = textbook.value.minus(answer).abs();
      expect(apart.lessThanOrEqualTo(textbook.value.abs().times(1e-40).plus("1e-60"))).toBe(true);
    }
  });
});

describe("a decision within rounding of its edge", () => {
  const rounded = oneStepFunction("ROUNDUP(x * 10, 0)", (x) => Math.ceil(x * 10), { atLeast: 0, atMost: 1 });
  const call = (x: number, entry = rounded) => {
    const args = inOrder(entry, { x });
    return measuredCall(entry, { args, working: work(entry, args) });
  };

  test("counts as such: 0.1 as a double is more than a tenth, and ten times it is 1", () => {
    const { atAnEdge, numbers } = call(0.1);
    expect(atAnEdge).toBe(true);
    expect(numbers.map(({ share }) => share)).toEqual([0]);
  });

  test("excuses no answer that is wrong either way, and none away from an edge", () => {
    const wrong = oneStepFunction("ROUNDUP(x * 10, 0)", (x) => Math.ceil(x * 10) + 2, { atLeast: 0, atMost: 1 });
    for (const x of [0.25, 0.3]) {
      const { atAnEdge, numbers } = call(x, wrong);
      expect(atAnEdge).toBe(false);
      expect(numbers[0]?.share).toBeGreaterThan(0.1);
    }
  });

  test("is turned by itself and with others", () => {
    expect(waysToTurn([2, 5]).map((way) => [...way])).toEqual([[2], [5], [2, 5]]);
    expect(text(big("IF(x < 1, 10, 20) + ROUNDUP(x, 0)", { x: "1" }, [0]).value)).toBe("11");
    expect(text(big("IF(x < 1, 10, 20) + ROUNDUP(x, 0)", { x: "1" }, [1]).value)).toBe("22");
    expect(text(big("ROUNDDOWN(x, 0)", { x: "2.9999999999999" }, [0]).value)).toBe("3");
    expect(text(big("ROUNDDOWN(x, 0)", { x: "2.9" }, [0]).value)).toBe("2");
  });
});

describe("every function keeps its digits", () => {
  const unmeasured = new Set(Object.keys(NOT_MEASURED));
  const entries = catalogue.filter(({ name }) => !unmeasured.has(name));

  test.each(entries.map((entry) => [entry.name, entry] as const))("%s", (_name, entry) => {
    const { calls, worst, dust } = measured(entry, CALLS);
    expect(calls).toBeGreaterThan(0);
    if (worst !== null && !(worst.share <= LIMIT)) throw new Error(`${worst.call}, ${worst.step}: ${worst.error}`);
    expect(dust).toBe(0);
  });

  test("and docs/accuracy.md names them all, and those that have no number, with the reason", () => {
    const page = readFileSync(join(__dirname, "../../docs/accuracy.md"), "utf8");
    expect([...unmeasured].filter((name) => !catalogue.some((entry) => entry.name === name))).toEqual([]);
    expect(entries.map(({ name }) => name).filter((name) => !page.includes(`| ${name} `))).toEqual([]);
    for (const [name, reason] of Object.entries(NOT_MEASURED)) expect(page).toContain(`- ${name}: ${reason}`);
  });
});
