/** What the fast way of reading must not let pass, and what surrounds a calculation. */
import { evaluate } from "../../src/kernel";
import type { ArgumentInput, Entry, Param, Params } from "../../src/kernel";
import { refusal } from "../rig/calls";
import { fixtureWith } from "../rig/fixtureWith";

const about = "For tests";

/** A function that answers with the value of its parameter `x` as it was read. */
function giving(x: Param): Entry {
  return fixtureWith({ x }, { compute: ({ x: value }) => value as unknown as number });
}

const count: Param = { quantity: "count", symbol: "n", atLeast: 1, atMost: 100, whole: true, about };
const factor: Param = { quantity: "factor", symbol: "f", above: 0, below: 10, about };
const date: Param = { quantity: "date", symbol: "d", atLeast: 367, atMost: 2_958_465, about };

describe("a number between its limits", () => {
  test("is taken as it is", () => {
    expect(evaluate(giving(factor), [2.5])).toBe(2.5);
  });

  test("is refused where it must be whole and is not", () => {
    expect(evaluate(giving(count), [3])).toBe(3);
    expect(refusal(giving(count), [2.5]).message).toBe("FIXTURE: x is 2.5; it must be a whole number, from 1 to 100");
  });

  test("is whole days where it is a date", () => {
    expect(evaluate(giving(date), [42_200.75])).toBe(42_200);
  });

  test("is refused at an open limit, taken at a closed one", () => {
    expect(refusal(giving(factor), [10]).argument).toBe("x");
    expect(refusal(giving(factor), [0]).argument).toBe("x");
    const closed: Param = { quantity: "factor", symbol: "f", atLeast: 0, atMost: 10, about };
    expect([evaluate(giving(closed), [0]), evaluate(giving(closed), [10])]).toEqual([0, 10]);
  });
});

describe("an error of two arguments together", () => {
  const entry = (fails: "refuse" | "noAnswer", argument?: "x"): Entry =>
    fixtureWith(
      { x: factor },
      {
        compute: (_given, _show, around) => {
          throw fails === "refuse" ? around.refuse("x", 7, "it must be less") : around.noAnswer("none fits", argument);
        },
      },
    );

  test("is a wrong input that names its argument and value", () => {
    expect(refusal(entry("refuse"), [7])).toMatchObject({
      code: "#VALUE!",
      kind: "input",
      argument: "x",
      message: "FIXTURE: x is 7; it must be less",
    });
  });

  test("or a right question without an answer, with its argument where it names one", () => {
    const whole = refusal(entry("noAnswer"), [7]);
    expect(whole).toMatchObject({ code: "#N/A", kind: "no answer", message: "FIXTURE: none fits" });
    expect(whole.argument).toBeNull();
    expect(refusal(entry("noAnswer", "x"), [7]).argument).toBe("x");
  });
});

describe("columns that share the word zeros", () => {
  const column = (blanks: "zeros" | "refused" | "by row"): Param => ({
    kind: "numbers",
    quantity: "factor",
    symbol: "x",
    column: true,
    blanks,
    about,
  });
  const zeros: Param = { kind: "word", words: ["error", "count", "skip"], default: "error", about };
  const together = (params: Params): Entry =>
    fixtureWith(
      { ...params, zeros },
      { compute: ({ a, b }) => [[...(a as unknown as number[])], [...(b as unknown as number[])]] },
    );
  const first: ArgumentInput = [[1], [null], [3]];
  const second: ArgumentInput = [[4], [5], [6]];

  test("lose a row together where one of them is blank", () => {
    const entry = together({ a: column("zeros"), b: column("by row") });
    expect(evaluate(entry, [first, second, "skip"])).toEqual([
      [1, 3],
      [4, 6],
    ]);
  });

  test("one that has nothing to do with the word keeps all of its rows", () => {
    const entry = together({ a: column("zeros"), b: column("refused") });
    expect(evaluate(entry, [first, second, "skip"])).toEqual([
      [1, 3],
      [4, 5, 6],
    ]);
  });

  test("of unequal length are refused with both lengths, texts among them", () => {
    const names: Param = { kind: "texts", about };
    const entry = fixtureWith({ a: names, b: column("refused") });
    expect(refusal(entry, [[["x"], ["y"]], second]).message).toBe("FIXTURE: b has 3 cells; it must have 2, as a has");
    const faulty: Param = { kind: "column", quantity: "factor", symbol: "x", blanks: "refused", about };
    const other = fixtureWith({ a: faulty, b: faulty });
    expect(refusal(other, [[[1]], second]).message).toBe("FIXTURE: b has 3 cells; it must have 1, as a has");
  });

  test("readings that are no columns may have any size beside them", () => {
    const block: Param = { kind: "numbers", quantity: "factor", symbol: "x", blanks: "refused", about };
    const entry = fixtureWith({ a: column("refused"), b: block }, { compute: () => 1 });
    expect(evaluate(entry, [[[1], [2]], [[3, 4, 5]]])).toBe(1);
  });
});
