import { isOptional, isRange, readArguments } from "../../src/kernel";
import type { ArgumentInput, Param } from "../../src/kernel";
import { refusal } from "../rig/calls";
import { fixtureWith } from "../rig/fixtureWith";

const about = "For tests";

function given(x: Param, input: ArgumentInput): unknown {
  return readArguments(fixtureWith({ x }), [input]).given["x"];
}

function message(x: Param, input: ArgumentInput): string {
  return refusal(fixtureWith({ x }), [input]).message;
}

describe("a fraction that was written as a percentage", () => {
  const fraction = (limits: object): Param => ({ quantity: "fraction", symbol: "x", about, ...limits });
  const upToOne = fraction({ atLeast: 0, atMost: 1 });

  test.each([
    [15, "write 0.15 or 15%"],
    [7.3, "write 0.073 or 7.3%"],
    [100, "write 1 or 100%"],
    [1.5, "write 0.015 or 1.5%"],
  ])("gets both right ways of writing %d", (value, hint) => {
    expect(message(upToOne, value)).toBe(`FIXTURE: x is ${value}; it must be from 0 to 1 (fraction); ${hint}`);
  });

  test.each([150, 100.5, -15])("is not what %d is: no percentage between 1 and 100", (value) => {
    expect(message(upToOne, value)).toBe(`FIXTURE: x is ${value}; it must be from 0 to 1 (fraction)`);
  });

  test("is not meant by a text or a blank", () => {
    expect(message(upToOne, "six")).toBe(
      'FIXTURE: x is the text "six"; it must be from 0 to 1 (fraction): a number, not text',
    );
    expect(message(fraction({ above: 0, below: 1 }), null)).toBe(
      "FIXTURE: x is blank or 0; it must be more than 0 and less than 1 (fraction)",
    );
  });

  test("is not meant by 1, where 1 itself is too much", () => {
    expect(message(fraction({ above: 0, below: 1 }), 1)).toBe(
      "FIXTURE: x is 1; it must be more than 0 and less than 1 (fraction)",
    );
  });

  test("may be as large as the first number that is too much, and is not meant by one that is too small", () => {
    expect(message(fraction({ above: 0, below: 15 }), 15)).toContain("; write 0.15 or 15%");
    expect(message(fraction({ atLeast: 3, atMost: 10 }), 2)).toBe(
      "FIXTURE: x is 2; it must be from 3 to 10 (fraction)",
    );
  });

  test("is no question for any other quantity", () => {
    const factor: Param = { quantity: "factor", symbol: "x", atLeast: 0, atMost: 1, about };
    expect(message(factor, 15)).toBe("FIXTURE: x is 15; it must be from 0 to 1");
  });
});

describe("an entry's own hint", () => {
  const hinted: Param = { quantity: "factor", symbol: "x", above: 0, atMost: 9, hint: "is it per day?", about };

  test("is added where a number lies beyond the limits, and only there", () => {
    expect(message(hinted, 10)).toBe("FIXTURE: x is 10; it must be more than 0, up to 9; is it per day?");
    expect(message(hinted, "ten")).toBe(
      'FIXTURE: x is the text "ten"; it must be more than 0, up to 9: a number, not text',
    );
    expect(message(hinted, null)).toBe("FIXTURE: x is blank or 0; it must be more than 0, up to 9");
  });
});

describe("a range where one value belongs", () => {
  const optional: Param = { quantity: "factor", symbol: "x", default: 3, about };

  test.each([
    [[[1, 2]], "1 x 2"],
    [[[1], [2]], "2 x 1"],
    [
      [
        [1, 2, 3],
        [4, 5, 6],
      ],
      "2 x 3",
    ],
  ])("of %j is refused, with its rows and columns", (range, size) => {
    expect(message(optional, range)).toBe(`FIXTURE: x is a range of ${size} cells; it must be a single value`);
  });

  test.each<[ArgumentInput]>([[[]], [[[]]], [[[], []]]])("of no cells, %j, is a blank", (range) => {
    expect(given(optional, range)).toBe(3);
  });

  test("of one cell is that cell", () => {
    expect(given(optional, [[7]])).toBe(7);
  });
});

describe("a word", () => {
  const word = (...words: readonly string[]): Param => ({ kind: "word", words, about });

  test.each([
    [word("drip"), '"drip"'],
    [word("us", "metric"), '"us" or "metric"'],
    [word("error", "count", "skip"), '"error", "count" or "skip"'],
  ])("that is blank or 0 is refused with the words that may stand there", (param, words) => {
    for (const input of [null, "", "  ", 0, [[0]]]) {
      expect(message(param, input)).toBe(`FIXTURE: x is blank or 0; it must be ${words}`);
    }
  });

  test("is taken in any case, without the blanks around it", () => {
    expect(["drip", " DRIP", [["Drip "]]].map((input) => given(word("drip"), input))).toEqual(["drip", "drip", "drip"]);
  });

  test("is never a number, although its text may read so", () => {
    expect(message(word("2"), 2)).toBe('FIXTURE: x is 2; it must be "2"');
  });
});

describe("numbers of a range that is too short", () => {
  const four: Param = { kind: "numbers", quantity: "factor", symbol: "x", blanks: "zero", fewest: 4, about };

  test.each<[ArgumentInput, string]>([
    [[], "no number"],
    [[[]], "no number"],
    [[[7]], "1 number"],
    [7, "1 number"],
    [[[7, 8, 9]], "3 numbers"],
  ])("%j: the text says how many there are", (input, found) => {
    expect(message(four, input)).toBe(`FIXTURE: x has ${found}; it must have 4 or more`);
  });
});

describe("an argument that may be a range", () => {
  test.each<[boolean, Param]>([
    [true, { kind: "numbers", quantity: "factor", symbol: "x", blanks: "zero", about }],
    [true, { kind: "column", quantity: "factor", symbol: "x", blanks: "zero", about }],
    [true, { kind: "texts", about }],
    [true, { kind: "cells", about }],
    [true, { kind: "inputs", about }],
    [false, { quantity: "factor", symbol: "x", about }],
    [false, { kind: "word", words: ["drip"], about }],
    [false, { kind: "switch", default: true, about }],
    [false, { kind: "text", about }],
    [false, { kind: "cell", about }],
  ])("%s for %j", (answer, param) => {
    expect(isRange(param)).toBe(answer);
  });
});

describe("an argument that may be left out", () => {
  test.each<[boolean, Param]>([
    [true, { quantity: "factor", symbol: "x", default: 0, about }],
    [true, { quantity: "factor", symbol: "x", mayBeLeftOut: true, about }],
    [true, { kind: "word", words: ["drip"], default: "drip", about }],
    [true, { kind: "switch", default: false, about }],
    [true, { kind: "inputs", about }],
    [false, { quantity: "factor", symbol: "x", blankIsAnswered: true, about }],
    [false, { kind: "text", mayBeBlank: true, about }],
    [false, { kind: "texts", about }],
  ])("%s for %j", (answer, param) => {
    expect(isOptional(param)).toBe(answer);
  });
});
