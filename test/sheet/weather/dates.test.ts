import { isoDate, openParts, orderOf, readDate, serialOfDayInYear } from "../../../src/sheet/weather/dates";

// 31 December 2015 is day 42,369 and 1 January 1970 day 25,569 of the 1900 system.
const LAST_OF_2015 = 42_369;

test.each([
  "2015-12-31",
  "2015/12/31",
  "20151231",
  "2015-12-31T00:00",
  "2015-12-31 00:00:00",
  "2015-12-31T00:00:00Z",
  "12/31/2015",
  "12/31/15",
  "12-31-2015",
  "31-Dec-2015",
  "31 December 2015",
  "Dec 31, 2015",
  "Thursday, December 31, 2015",
  "42369",
])("%s is the last day of 2015", (text) => {
  expect(readDate(text, "month first")).toBe(LAST_OF_2015);
});

test.each([
  ["31/12/2015", LAST_OF_2015],
  ["31.12.2015", LAST_OF_2015],
  ["1/2/2015", LAST_OF_2015 - 365 + 32],
])("%s with the day first", (text, serial) => {
  expect(readDate(text, "day first")).toBe(serial);
});

test.each(["", "2015-02-30", "13/13/2015", "June", "1234567", "2015", "31/12/2015"])("“%s” is no date", (text) => {
  expect(readDate(text, "month first")).toBeUndefined();
});

test("the 29th of February is one in leap years only", () => {
  expect(readDate("2012-02-29", "month first")).toBe(readDate("2012-03-01", "month first")! - 1);
  expect(readDate("2013-02-29", "month first")).toBeUndefined();
  expect(serialOfDayInYear(2012, 366)).toBe(readDate("2012-12-31", "month first"));
  expect(serialOfDayInYear(2013, 366)).toBeUndefined();
});

test("a serial number reads as its day again", () => {
  expect(isoDate(LAST_OF_2015)).toBe("2015-12-31");
});

describe("the order of day and month", () => {
  test.each([
    ["a 13th in the second place", ["1/12/2015", "1/13/2015"], "month first"],
    ["a 13th in the first place", ["12/1/2015", "13/1/2015"], "day first"],
    ["one day after another", ["1/2/2015", "1/3/2015", "1/4/2015"], "month first"],
    ["one day after another, day first", ["1/2/2015", "2/2/2015", "3/2/2015"], "day first"],
    ["no slashes at all", ["2015-01-02"], "month first"],
  ])("is told by %s", (_, texts, order) => {
    expect(orderOf(texts)).toBe(order);
  });

  test.each([
    ["single days", ["1/2/2015"]],
    ["days that are the same either way", ["1/1/2015", "2/2/2015"]],
    ["both a 13th first and a 13th second", ["13/1/2015", "1/13/2015"]],
  ])("is left open by %s", (_, texts) => {
    expect(orderOf(texts)).toBeUndefined();
  });

  test("is of no matter where the year stands first", () => {
    expect(openParts("2015-01-02")).toBeUndefined();
    expect(openParts("01/02/2015 0:00")).toEqual([1, 2, 2015]);
  });
});
