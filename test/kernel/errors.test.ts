import { evaluate, FunctionError, PassedError, readArguments } from "../../src/kernel";
import type { CellAnswer, Table } from "../../src/kernel";
import { attempt, entryOf, refusal } from "../rig/calls";
import { fixtureFunction } from "../rig/fixtureFunction";

describe("the catalogue's one error", () => {
  test("is #VALUE! for a wrong input and #N/A where no answer exists", () => {
    expect(new FunctionError("input", "x", "FIXTURE: x is 0").code).toBe("#VALUE!");
    expect(new FunctionError("no answer", null, "FIXTURE: never").code).toBe("#N/A");
  });

  test("carries the argument, the message and its own name, and is an Error", () => {
    const error = new FunctionError("input", "x", "FIXTURE: x is 0");
    expect(error).toBeInstanceOf(Error);
    expect(error).toMatchObject({ name: "FunctionError", kind: "input", argument: "x", message: "FIXTURE: x is 0" });
  });
});

describe("an error that stands in a cell", () => {
  const runMinutes = entryOf("RUN_MINUTES");
  const sent = Object.freeze({ code: "#REF!", message: "Moved cells" });

  function passed(args: Parameters<typeof evaluate>[1]): PassedError {
    try {
      evaluate(runMinutes, args);
    } catch (error) {
      if (error instanceof PassedError) return error;
    }
    throw new Error("the cell's error did not come back");
  }

  test("comes back as it came, with its code, its text and itself", () => {
    const error = passed([sent, 6]);
    expect(error).toMatchObject({ code: "#REF!", message: "Moved cells" });
    expect(error.original).toBe(sent);
    expect(error).not.toBeInstanceOf(FunctionError);
  });

  test("comes before anything else is looked at, wherever it stands", () => {
    expect(passed(["no number", [[1, sent]]]).code).toBe("#REF!");
    expect(passed([[[1, 2, 3]], null, sent]).code).toBe("#REF!");
  });

  test("shows its code where it brings no text", () => {
    expect(passed([{ code: "#DIV/0!" }, 6]).message).toBe("#DIV/0!");
  });
});

describe("the runner", () => {
  test("refuses more arguments than there are", () => {
    expect(refusal(entryOf("WATER_HELD"), [9, 0.55, 1]).message).toBe("WATER_HELD: 3 arguments were given; it takes 2");
  });

  test("reads a range of no cells as a blank", () => {
    expect(refusal(entryOf("WATER_HELD"), [[], 0.55]).message).toBe(
      refusal(entryOf("WATER_HELD"), [null, 0.55]).message,
    );
    expect(refusal(entryOf("WATER_HELD"), [[[]], 0.55]).argument).toBe("volume");
  });

  test("hands the arguments to the formula checked, with defaults, words in small letters", () => {
    const { given, system } = readArguments(entryOf("PLANT_WATER_DEMAND"), [5, 0.8, [[0.16]], " METRIC "]);
    expect(system).toBe("metric");
    expect(given).toEqual({
      reference_et: 5,
      crop_coefficient: 0.8,
      area_per_plant: 0.16,
      units: "metric",
      cover_factor: 1,
    });
  });

  test.each([NaN, Infinity, -Infinity])("never lets %d into a cell", (number) => {
    const error = refusal(
      fixtureFunction(() => number),
      [1],
    );
    expect(error).toMatchObject({
      code: "#VALUE!",
      message: "FIXTURE: these numbers lead beyond what a cell can hold",
    });
  });

  test.each([
    ["INTERCEPTION_FRACTION", [1e300, 1, "metric"], "area_per_plant is 1"],
    ["FLOOD_VOLUME", [1e-300, 1, "us", 1e200, 1e200], "pots is 1E200"],
  ] as const)("never says in %s that a number must be infinite", (name, args, start) => {
    const error = refusal(entryOf(name), args);
    expect(error.message).toBe(`${name}: ${start}; these numbers lead beyond what a cell can hold`);
  });

  test("puts such a number of a table into its own cell as an error", () => {
    const [row] = evaluate(
      fixtureFunction(() => [[1, NaN]]),
      [1],
    ) as Table;
    expect(row?.[0]).toBe(1);
    expect(row?.[1]).toBeInstanceOf(FunctionError);
  });

  test("writes -0 as 0, and nothing as an empty text", () => {
    expect(
      Object.is(
        evaluate(
          fixtureFunction(() => -0),
          [1],
        ),
        0,
      ),
    ).toBe(true);
    const nothing = [[undefined, null]] as unknown as Table;
    expect(
      evaluate(
        fixtureFunction(() => nothing),
        [1],
      ),
    ).toEqual([["", ""]]);
  });

  test("throws an error that the formula returns for its one cell", () => {
    const noAnswer: CellAnswer = new FunctionError("no answer", null, "FIXTURE: never");
    expect(
      attempt(
        fixtureFunction(() => noAnswer),
        [1],
      ),
    ).toBe(noAnswer);
  });

  test("swallows no fault of the program", () => {
    const broken = fixtureFunction(() => {
      throw new TypeError("a fault");
    });
    expect(() => attempt(broken, [1])).toThrow(TypeError);
  });
});
