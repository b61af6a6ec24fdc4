import { FunctionError, readArguments } from "../../src/kernel";
import type { ArgumentInput, Entry, Param, Params } from "../../src/kernel";
import { fixtureFunction } from "../rig/fixtureFunction";

/** The arguments of a function with these parameters as its formula gets them. */
function given(params: Params, ...args: readonly ArgumentInput[]): Readonly<Record<string, unknown>> {
  const entry: Entry = { ...fixtureFunction(() => 0), params };
  return readArguments(entry, args).given;
}

function refused(params: Params, ...args: readonly ArgumentInput[]): FunctionError {
  try {
    given(params, ...args);
  } catch (error) {
    if (error instanceof FunctionError) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

const about = "For tests";

describe("numbers of a range", () => {
  const numbers = (blanks: "refused" | "zero", limits: object = {}): Params => ({
    x: { kind: "numbers", quantity: "factor", symbol: "x", blanks, about, ...limits } as Param,
  });

  test("are read row by row, whatever the shape", () => {
    const block = [
      [1, 2],
      [3, 4],
    ];
    expect(given(numbers("refused"), block)).toEqual({ x: [1, 2, 3, 4] });
    expect(given(numbers("refused"), [[1], [2]])).toEqual({ x: [1, 2] });
    expect(given(numbers("refused"), 7)).toEqual({ x: [7] });
  });

  test("refuse a blank where blanks are refused, and say where it stands", () => {
    const column: ArgumentInput = [[1], [null], [3]];
    const block: ArgumentInput = [
      [1, 2],
      [3, ""],
    ];
    expect(refused(numbers("refused"), column).message).toContain("in row 2 of the range");
    expect(refused(numbers("refused"), [[1, ""]]).message).toContain("in column 2 of the range");
    expect(refused(numbers("refused"), block).message).toContain("in row 2, column 2 of the range");
    expect(refused(numbers("refused"), null).message).toBe("FIXTURE: x is blank; it must be a number");
  });

  test("take a blank as 0 where it is one, although 0 itself lies outside the limits", () => {
    expect(given(numbers("zero", { above: 0 }), [[1, "", null, 0, 2]])).toEqual({ x: [1, 0, 0, 0, 2] });
  });

  test("keep to their limits where a blank is 0", () => {
    expect(refused(numbers("zero", { above: 0 }), [[1, -1]]).message).toBe(
      "FIXTURE: x is -1 in column 2 of the range; it must be more than 0",
    );
    expect(refused(numbers("zero", { atLeast: 5 }), [[7, 3]]).message).toBe(
      "FIXTURE: x is 3 in column 2 of the range; it must be 5 or more",
    );
  });

  test("want as many as the function needs", () => {
    const four = numbers("zero", { fewest: 4 });
    expect(given(four, [[1, 2, "", 3]])).toEqual({ x: [1, 2, 0, 3] });
    expect(refused(four, [[1, 2, 3]])).toMatchObject({ argument: "x", code: "#VALUE!" });
    expect(refused(numbers("refused"), [[]]).message).toContain("it must have 1 or more");
  });
});

describe("columns of one table", () => {
  const names: Param = { kind: "texts", about };
  const amounts: Param = { kind: "column", quantity: "factor", symbol: "x", blanks: "refused", above: 0, about };
  const flows: Param = { kind: "numbers", quantity: "flow", symbol: "q", blanks: "zero", column: true, about };

  test("must be of one length; the error gives both", () => {
    const { argument, message } = refused({ names, flows }, [["north"], ["south"]], [[1], [2], [3]]);
    expect(argument).toBe("flows");
    expect(message).toBe("FIXTURE: flows has 3 cells; it must have 2, as names has");
  });

  test("of names take a number for its text and an empty cell for no name", () => {
    expect(given({ names }, [["north "], [4], [null]])).toEqual({ names: ["north", "4", ""] });
  });

  test("that carry their own errors give a faulty cell its reason and the others their number", () => {
    const { amounts: read } = given({ amounts }, [[2], [0], ["dry"], [3]]) as { amounts: readonly unknown[] };
    expect([read[0], read[3]]).toEqual([2, 3]);
    expect(read[1]).toMatchObject({
      argument: "amounts",
      message: "FIXTURE: amounts is blank or 0; it must be more than 0",
    });
    expect(read[2]).toBeInstanceOf(FunctionError);
  });
});

describe("other single values", () => {
  test("a switch is TRUE or FALSE, its default when blank", () => {
    const params: Params = { counts: { kind: "switch", default: true, about } };
    expect([false, true, null, ""].map((input) => given(params, input)["counts"])).toEqual([false, true, true, true]);
    expect(refused(params, 1).message).toBe("FIXTURE: counts is 1; it must be TRUE or FALSE");
  });

  test("a text is taken without the blanks around it, and may be blank only where that is said", () => {
    expect(given({ label: { kind: "text", about } }, "  north ")).toEqual({ label: "north" });
    expect(refused({ label: { kind: "text", about } }, "  ").message).toContain("it must be a text");
    expect(given({ label: { kind: "text", mayBeBlank: true, about } }, null)).toEqual({ label: "" });
  });

  test("a word may stand for leaving a number out, in any case", () => {
    const room: Param = { quantity: "volume", symbol: "R", mayBeLeftOut: true, orWord: "none", atLeast: 0, about };
    expect(["none", " NONE ", "", null].map((input) => given({ room }, input)["room"])).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(given({ room }, 0)).toEqual({ room: 0 });
    expect(refused({ room }, "some").argument).toBe("room");
  });

  test("a date counts whole days", () => {
    expect(given({ date: { quantity: "date", symbol: "date", about } }, 42200.75)).toEqual({ date: 42200 });
  });
});
