import { evaluate, FunctionError, mistakeAnswer, readArguments, silentShowFor, unitConstant } from "../../src/kernel";
import type { AnyMistake, Entry, Param } from "../../src/kernel";
import type { UnitConstantName } from "../../src/kernel/units";
import { fixtureFunction } from "../rig/fixtureFunction";
import { fixtureWith } from "../rig/fixtureWith";

const about = "For tests";
const x: Param = { quantity: "factor", symbol: "x", about };

describe("the answer of a call", () => {
  test.each([true, false, "a text"])("may be %p, in one cell or in a table", (answer) => {
    expect(
      evaluate(
        fixtureFunction(() => answer),
        [1],
      ),
    ).toBe(answer);
    expect(
      evaluate(
        fixtureFunction(() => [[answer, 1]]),
        [1],
      ),
    ).toEqual([[answer, 1]]);
  });

  test("is thrown where it is an error of its one cell", () => {
    const noAnswer = new FunctionError("no answer", null, "FIXTURE: never");
    const call = (): unknown =>
      evaluate(
        fixtureFunction(() => noAnswer),
        [1],
      );
    expect(call).toThrow(noAnswer);
  });

  test("keeps a table's row as it is where nothing in it has to be changed", () => {
    const row = Object.freeze([1, "dry", true]);
    const [first] = evaluate(
      fixtureFunction(() => [row]),
      [1],
    ) as readonly unknown[];
    expect(first).toBe(row);
  });

  test("counts no blanks where no word decides about them", () => {
    const param: Param = { kind: "numbers", quantity: "factor", symbol: "x", blanks: "zero", about };
    const entry = fixtureWith({ x: param }, { compute: (_given, _show, { blanksMet }) => blanksMet("x") });
    expect(evaluate(entry, [[[null, 0, 5]]])).toBe(0);
  });
});

describe("a recorder that nobody hears", () => {
  // 212 F is 100 C.
  test.each([
    ["us", 100, 212],
    ["metric", 212, 100],
    [null, 212, 100],
  ] as const)("still converts in %p", (system, metric, asked) => {
    const show = silentShowFor(system);
    expect(show.toMetric("Tc = T", 212, "temperature", about)).toBe(metric);
    expect(show.fromMetric("T = Tc", 100, "temperature", about)).toBe(asked);
    expect(show("y = x", 7, "factor", about)).toBe(7);
  });

  test("is its own silent recorder", () => {
    for (const system of ["us", "metric", null] as const)
      expect(silentShowFor(system).silent).toBe(silentShowFor(system));
  });
});

describe("the answer of a mistake", () => {
  const constant: UnitConstantName = "volume of an area and a length";
  const slip = "Made for tests";
  const entry = fixtureWith({ x }, { unitConstants: { k: constant }, compute: ({ x: given }) => given as number });
  const answerOf = (mistake: AnyMistake, of: Entry = entry): number | null =>
    mistakeAnswer(of, readArguments(of, [4]), mistake, 4);
  const fails = (error: Error): AnyMistake => ({
    slip,
    answer: () => {
      throw error;
    },
  });

  test("has the metric constants in a function without units: 1000 L to 1 m2 by 1 m", () => {
    expect(answerOf({ slip, answer: (_given, { k }) => k! })).toBe(1000);
  });

  test("is that of the altered arguments where it alters them", () => {
    expect(answerOf({ slip, instead: () => ({ x: 5 }) })).toBe(5);
  });

  test("keeps the arguments that the slip leaves alone", () => {
    const two = fixtureWith({ x, z: x }, { compute: ({ x: first, z }) => (first as number) * (z as number) });
    expect(mistakeAnswer(two, readArguments(two, [4, 3]), { slip, instead: () => ({ x: 5 }) }, 12)).toBe(15);
  });

  test("is none where no number comes out", () => {
    expect(answerOf({ slip, answer: () => Infinity })).toBeNull();
    expect(answerOf(fails(new FunctionError("input", "x", "FIXTURE: x is 4")))).toBeNull();
    expect(answerOf({ slip, instead: () => ({}) }, fixtureWith({ x }, { compute: () => "a text" }))).toBeNull();
  });

  test("hides no fault of the program", () => {
    expect(() => answerOf(fails(new TypeError("a fault")))).toThrow(TypeError);
  });
});

describe("a unit constant", () => {
  test("that is not in the table is asked for by name", () => {
    expect(() => unitConstant("acres" as UnitConstantName, "us")).toThrow("no unit constant acres");
  });
});
