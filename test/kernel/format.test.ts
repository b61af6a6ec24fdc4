import { fullNumber, shortNumber, shownValue } from "../../src/kernel";
import { limitNumber } from "../../src/kernel/format";

describe("a number in the working has four digits, and one decimal from 1000 on", () => {
  test.each([
    [0, "0"],
    [-0, "0"],
    [2.5, "2.5"],
    [0.6233766233766234, "0.6234"],
    [3.785411784, "3.785"],
    [-12.3456, "-12.35"],
    [12, "12"],
    [42200, "42200"],
    [2958465, "2958465"],
    [27154.25, "27154.3"],
    [1234.5, "1234.5"],
    [0.00012346, "0.0001235"],
    [0.00001234567, "1.235E-5"],
    [4.903e-9, "4.903E-9"],
    [1.5e20, "1.5E20"],
    [999_999_999_999_999, "999999999999999"],
    [1e15, "1E15"],
    [-1e15, "-1E15"],
    [0.0001, "0.0001"],
    [1000, "1000"],
    [0.1 + 0.2, "0.3"],
    [100.04, "100"],
  ])("%d is written %s", (number, text) => {
    expect(shortNumber(number)).toBe(text);
  });
});

describe("a number in a spreadsheet formula keeps every digit", () => {
  test.each([
    [0.1, "0.1"],
    [1 / 3, "0.3333333333333333"],
    [-2.5, "-2.5"],
    [4.903e-9, "4.903E-9"],
    [1e21, "1E21"],
    [1.5e-7, "1.5E-7"],
    [100, "100"],
  ])("%d is written %s", (number, text) => {
    expect(fullNumber(number)).toBe(text);
    expect(Number(fullNumber(number))).toBe(number);
  });
});

describe("a limit is written as the trade would", () => {
  test.each([
    [0, "0"],
    [9000 / 0.3048, "29527.6"],
    [2958465, "2958465"],
    [140.00000000000003, "140"],
    [-500 / 0.3048, "-1640.42"],
    [0.05, "0.05"],
  ])("%d is written %s", (number, text) => {
    expect(limitNumber(number)).toBe(text);
  });
});

describe("what stood in a cell, in an error text", () => {
  test.each<[unknown, string]>([
    [15, "15"],
    [0.1, "0.1"],
    [NaN, "NaN"],
    [Infinity, "Infinity"],
    [true, "TRUE"],
    [false, "FALSE"],
    ["six", 'the text "six"'],
    [null, "blank"],
    [undefined, "blank"],
  ])("%p is %s", (value, text) => {
    expect(shownValue(value)).toBe(text);
  });

  test("a text is shown whole up to 40 characters, and cut after them", () => {
    expect(shownValue("x".repeat(40))).toBe(`the text "${"x".repeat(40)}"`);
    expect(shownValue(`${"x".repeat(40)}y`)).toBe(`the text "${"x".repeat(40)}..."`);
  });
});
