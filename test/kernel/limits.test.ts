import { boundsOf, limitsText, within, type Limits } from "../../src/kernel";

describe("limits in words", () => {
  test.each<[Limits, string]>([
    [{}, "a number"],
    [{ above: 0 }, "more than 0"],
    [{ atLeast: 0 }, "0 or more"],
    [{ atMost: 5 }, "5 or less"],
    [{ below: 5 }, "less than 5"],
    [{ atLeast: 0, atMost: 1 }, "from 0 to 1"],
    [{ atLeast: 0, below: 1 }, "from 0 to less than 1"],
    [{ above: 0, atMost: 1 }, "more than 0, up to 1"],
    [{ above: 0, below: 1 }, "more than 0 and less than 1"],
    [{ atLeast: 1, atMost: 1000, whole: true }, "a whole number, from 1 to 1000"],
  ])("%j reads: %s", (limits, text) => {
    expect(limitsText(limits, "factor", null)).toBe(text);
    expect(limitsText(limits, "minutes", null)).toBe(`${text} (min)`);
  });

  test("give the unit of the system, or both where none is chosen", () => {
    expect(limitsText({ above: 0 }, "volume", "us")).toBe("more than 0 (gal)");
    expect(limitsText({ above: 0 }, "volume", "metric")).toBe("more than 0 (L)");
    expect(limitsText({ above: 0 }, "volume", null)).toBe("more than 0 (gal or L)");
  });

  test("are converted with their quantity: -90 to 60 C is -130 to 140 F", () => {
    expect(limitsText({ atLeast: -90, atMost: 60 }, "temperature", "us")).toBe("from -130 to 140 (F)");
    expect(limitsText({ atLeast: -500, atMost: 9000 }, "length", "us")).toBe("from -1640.42 to 29527.6 (ft)");
  });

  test("say no unit of a count, which has none", () => {
    expect(limitsText({ atLeast: 1, whole: true }, "count", null)).toBe("a whole number, 1 or more");
  });

  test("stand as they are written where no system is chosen", () => {
    expect(limitsText({ atMost: 10 }, "length", null)).toBe("10 or less (ft or m)");
    expect(boundsOf({ above: -90, below: 60 }, "temperature", null)).toMatchObject({ low: -90, high: 60 });
  });

  test("print a whole limit whole: the last date of a spreadsheet is 2958465", () => {
    expect(limitsText({ atLeast: 367, atMost: 2_958_465 }, "date", null)).toBe("from 367 to 2958465 (date)");
  });
});

describe("within limits", () => {
  const inside = (limits: Limits, value: number): boolean => within(value, boundsOf(limits, "factor", null));

  test("a limit belongs to what it says: atLeast and atMost do, above and below do not", () => {
    expect([inside({ atLeast: 0 }, 0), inside({ atMost: 1 }, 1)]).toEqual([true, true]);
    expect([inside({ above: 0 }, 0), inside({ below: 1 }, 1)]).toEqual([false, false]);
  });

  test("whole numbers alone where whole is asked", () => {
    expect([inside({ whole: true }, 3), inside({ whole: true }, 3.5)]).toEqual([true, false]);
  });

  test("nothing that is not finite, even where no limit is set", () => {
    expect([NaN, Infinity, -Infinity].map((value) => inside({}, value))).toEqual([false, false, false]);
  });
});
