import { argumentFaults, evaluate, PassedError, readArguments, UNITS_PARAM } from "../../src/kernel";
import type { ArgumentInput, Param, Params } from "../../src/kernel";
import { refusal } from "../rig/calls";
import { fixtureWith } from "../rig/fixtureWith";

const about = "For tests";
const volume: Param = { quantity: "volume", symbol: "V", above: 0, about };
const air: Param = { quantity: "temperature", symbol: "T", atLeast: -90, atMost: 60, about };
const readings: Param = { kind: "numbers", quantity: "catch", symbol: "x", blanks: "zeros", column: true, about };
const areas: Param = { kind: "numbers", quantity: "factor", symbol: "a", blanks: "by row", column: true, about };
const zeros: Param = { kind: "word", words: ["error", "count", "skip"], default: "error", about };

function faultsOf(params: Params, ...args: readonly ArgumentInput[]): readonly string[] {
  return argumentFaults(fixtureWith(params), args).map(({ message }) => message);
}

describe("the faults of a form's fields", () => {
  test("are none where every argument is right", () => {
    expect(faultsOf({ volume, air, units: UNITS_PARAM }, 1, 20, "metric")).toEqual([]);
  });

  test("are told for each argument by itself, in the order of the arguments", () => {
    expect(faultsOf({ volume, label: { kind: "text", about }, units: UNITS_PARAM }, -1, "north", "miles")).toEqual([
      "FIXTURE: volume is -1; it must be more than 0 (gal or L)",
      'FIXTURE: units is the text "miles"; it must be "us" or "metric"',
    ]);
  });

  test("carry the argument's name, for the field that shows them", () => {
    const [fault] = argumentFaults(fixtureWith({ air, volume }), [20, 0]);
    expect(fault).toMatchObject({ argument: "volume", code: "#VALUE!" });
  });

  test.each(["us", " US "])("keep to the limits of the units %j: 100 F is warm, 200 F is beyond 60 C", (word) => {
    expect(faultsOf({ air, units: UNITS_PARAM }, 100, word)).toEqual([]);
    expect(faultsOf({ air, units: UNITS_PARAM }, 200, word)).toEqual([
      "FIXTURE: air is 200; it must be from -130 to 140 (F)",
    ]);
  });

  test("keep to the limits of the units where 100 C is beyond them", () => {
    expect(faultsOf({ air, units: UNITS_PARAM }, 100, "metric")).toEqual([
      "FIXTURE: air is 100; it must be from -90 to 60 (C)",
    ]);
  });

  test.each<[ArgumentInput]>([[null], [7], ["miles"]])("name both units where the word is %j", (word) => {
    expect(faultsOf({ volume, units: UNITS_PARAM }, -1, word)[0]).toBe(
      "FIXTURE: volume is -1; it must be more than 0 (gal or L)",
    );
  });

  test("leave a blank to the word in zeros, as the call does", () => {
    const blanks: ArgumentInput = [[1], [null], [0]];
    const refused = "FIXTURE: readings is blank in row 2 of the range; it must be a number (mL)";
    expect(faultsOf({ readings, zeros }, blanks, "skip")).toEqual([]);
    expect(faultsOf({ readings, zeros }, blanks, "count")).toEqual([]);
    expect(faultsOf({ readings, zeros }, blanks, "error")).toEqual([refused]);
    expect(faultsOf({ readings, zeros }, blanks, null)).toEqual([refused]);
    expect(faultsOf({ readings, zeros }, blanks, "drop")).toEqual([
      refused,
      'FIXTURE: zeros is the text "drop"; it must be "error", "count" or "skip"',
    ]);
  });

  test("are not sought in a row that the word leaves out of every column", () => {
    const columns: readonly ArgumentInput[] = [
      [[1], [null]],
      [[2], ["broken"]],
    ];
    expect(faultsOf({ readings, areas, zeros }, ...columns, "skip")).toEqual([]);
    const [fault, ...others] = faultsOf({ readings, areas, zeros }, ...columns, "count");
    expect(fault).toContain('areas is the text "broken" in row 2 of the range');
    expect(others).toEqual([]);
  });
});

describe("an error in a cell", () => {
  const sent = Object.freeze({ code: "#REF!", message: "Moved cells" });
  const text: Param = { kind: "text", about };
  const kinds: readonly (readonly [string, Param])[] = [
    ["a number", volume],
    ["a word", { kind: "word", words: ["drip"], about }],
    ["a switch", { kind: "switch", default: true, about }],
    ["a text", text],
    ["a cell", { kind: "cell", about }],
    ["numbers", { kind: "numbers", quantity: "factor", symbol: "x", blanks: "zero", about }],
    ["a column", { kind: "column", quantity: "factor", symbol: "x", blanks: "zero", about }],
  ];

  test.each(kinds)("is no fault of %s: it comes back itself", (_kind, param) => {
    for (const input of [sent, [[sent]]]) {
      expect(() => argumentFaults(fixtureWith({ param }), [input])).toThrow(PassedError);
      expect(() => evaluate(fixtureWith({ param }), [input])).toThrow(PassedError);
    }
  });

  const ranges: readonly (readonly [string, Param])[] = [
    ...kinds.slice(5),
    ["texts", { kind: "texts", about }],
    ["cells", { kind: "cells", about }],
    ["inputs", { kind: "inputs", about }],
  ];

  test.each(ranges)("comes back from a range of %s, though another argument is wrong", (_kind, param) => {
    expect(() => evaluate(fixtureWith({ text, param }), [7, [[1], [sent]]])).toThrow(PassedError);
    expect(() => evaluate(fixtureWith({ text, param }), ["north", [[1], [sent]]])).toThrow("Moved cells");
    expect(() => evaluate(fixtureWith({ text, param }), ["north", sent])).toThrow("Moved cells");
  });

  test("comes back from a row that would have been left out", () => {
    const entry = fixtureWith({ readings, areas, zeros });
    expect(evaluate(entry, [[[1], [null]], [[2], [3]], "skip"])).toBe(0);
    expect(() => evaluate(entry, [[[1], [null]], [[2], [sent]], "skip"])).toThrow(PassedError);
  });

  test("has a name of its own", () => {
    expect(new PassedError(sent).name).toBe("PassedError");
  });
});

describe("the words of a call", () => {
  test("in units count wherever the argument stands, the first place among them", () => {
    const read = readArguments(fixtureWith({ units: UNITS_PARAM, air }), ["us", 100]);
    expect(read.system).toBe("us");
    expect(read.given).toEqual({ units: "us", air: 100 });
  });

  test("choose no units where the word may be left out and is", () => {
    const entry = fixtureWith({ volume, units: { ...UNITS_PARAM, mayBeLeftOut: true } });
    expect(readArguments(entry, [1, null])).toMatchObject({ system: null, given: { units: "" } });
    expect(refusal(entry, [-1]).message).toContain("(gal or L)");
  });

  test("in zeros count wherever the argument stands, the first place among them", () => {
    const entry = fixtureWith({ zeros, readings });
    expect(readArguments(entry, ["count", [[1, null]]]).given).toEqual({ zeros: "count", readings: [1, 0] });
    expect(readArguments(entry, ["skip", [[1, null, 0]]]).given).toEqual({ zeros: "skip", readings: [1] });
  });

  test("a blank is refused where numbers ask a word that the function has not", () => {
    expect(refusal(fixtureWith({ readings }), [[[1], [null]]]).argument).toBe("readings");
  });

  test("skip leaves out a row that is blank or 0 in one column, of all columns in step", () => {
    const entry = fixtureWith({ readings, areas, zeros });
    const { given } = readArguments(entry, [[[1], [0], [3], [4]], [[5], [6], [null], [8]], "skip"]);
    expect(given).toEqual({ readings: [1, 4], areas: [5, 8], zeros: "skip" });
  });

  test("more arguments than there are is a wrong input of no one argument", () => {
    expect(refusal(fixtureWith({ volume }), [1, 2])).toMatchObject({ kind: "input", code: "#VALUE!", argument: null });
  });
});
