import { numbersOf, plainFormula, singleFormula, UNITS_PARAM, work } from "../../src/kernel";
import type { Entry, Param, Step } from "../../src/kernel";
import { fixtureWith } from "../rig/fixtureWith";

const about = "For tests";
const x: Param = { quantity: "factor", symbol: "x", about };
const range: Param = { kind: "numbers", quantity: "factor", symbol: "x", blanks: "zero", about };

/** A function whose one step has this formula, with the parameter `x`. */
function oneStep(formula: string, param: Param = x): Entry {
  return fixtureWith(
    { x: param },
    { compute: (_given, show) => show(`y = ${formula}`, 1, "factor", "What is asked for") },
  );
}

describe("a step put into another", () => {
  test.each([
    ["x", "6 / x"],
    ["0.5", "6 / 0.5"],
    ["MAX(x, 2)", "6 / MAX(x, 2)"],
    ["2 * MAX(x, 2)", "6 / (2 * MAX(x, 2))"],
    ["MAX(x, 2) + 1", "6 / (MAX(x, 2) + 1)"],
    ["x + 1", "6 / (x + 1)"],
  ])("%s gets brackets where it needs them: %s", (inner, whole) => {
    const entry = fixtureWith(
      { x },
      {
        compute(_given, show) {
          show(`s = ${inner}`, 1, "factor", "First");
          return show("y = 6 / s", 6, "factor", "Second");
        },
      },
    );
    expect(singleFormula(work(entry, [4]))).toBe(whole);
    expect(plainFormula(entry, work(entry, [4]), () => "B4")).toBe(`=${whole.replace("x", "B4")}`);
  });

  test("is nothing where no step was recorded", () => {
    expect(singleFormula(work(fixtureWith({ x }), [4]))).toBe("");
  });

  test("that is a number read from a range has its symbol alone, whatever blanks stand around it", () => {
    const entry = fixtureWith({ x: range }, { compute: (_given, show) => show(" z ", 4, "factor", "Read") });
    expect(work(entry, [[[4]]]).steps).toMatchObject([{ symbol: "z", formula: "", value: 4 }]);
  });
});

describe("a conversion in the working", () => {
  // 212 F is 100 C, and (100 + 0) C is 212 F; 2 in are 50.8 mm.
  const entry = fixtureWith(
    { x, units: UNITS_PARAM },
    {
      compute(_given, show) {
        const celsius = show.toMetric("Tc = T", 212, "temperature", "In C");
        show.fromMetric("Tf = Tc", celsius, "temperature", "Back");
        show.fromMetric("Ts = Tc + d", celsius, "temperature", "A sum, back");
        const depth = show.toMetric("dm = d", 2, "water depth", "In mm");
        show.toMetric("ds = d + d", 4, "water depth", "A sum in mm");
        return show.fromMetric("du = dm", depth, "water depth", "Back");
      },
    },
  );
  const stepsIn = (units: string): ReadonlyMap<string, Step> =>
    new Map(work(entry, [1, units]).steps.map((step) => [step.symbol, step]));

  test.each([
    ["Tc", "(T - 32) / 1.8", 100, "C"],
    ["Tf", "Tc * 1.8 + 32", 212, "F"],
    ["Ts", "(Tc + d) * 1.8 + 32", 212, "F"],
    ["dm", "d * 25.4", 50.8, "mm"],
    ["ds", "(d + d) * 25.4", 101.6, "mm"],
    ["du", "dm / 25.4", 2, "in"],
  ])("%s = %s in US units", (symbol, formula, value, unit) => {
    expect(stepsIn("us").get(symbol)).toMatchObject({ formula, unit, silent: false });
    expect(stepsIn("us").get(symbol)?.value).toBeCloseTo(value, 12);
  });

  test.each([
    ["Tc", "T", 212, "C"],
    ["Tf", "Tc", 212, "C"],
    ["dm", "d", 2, "mm"],
    ["du", "dm", 2, "mm"],
  ])("%s = %s changes nothing in metric", (symbol, formula, value, unit) => {
    expect(stepsIn("metric").get(symbol)).toMatchObject({ formula, value, unit, silent: true });
  });

  test("changes nothing in a function without units: its metric numbers are taken as they are", () => {
    const unitless = fixtureWith(
      { x },
      { compute: (_given, show) => show.toMetric("Tc = T", 20, "temperature", "In C") },
    );
    expect(work(unitless, [1]).steps).toMatchObject([{ formula: "T", value: 20, silent: true }]);
  });
});

describe("the values of a call", () => {
  test("are those of symbols that stand for a number or for numbers, and no others", () => {
    const entry = fixtureWith({
      x,
      xs: { ...range, symbol: "xs" },
      left_out: { quantity: "factor", symbol: "R", mayBeLeftOut: true, about },
      names: { kind: "texts", about },
      units: UNITS_PARAM,
    });
    const { values } = work(entry, [4, [[1, 2]], null, [["A"]], "us"]);
    expect([...values]).toEqual([
      ["x", 4],
      ["xs", [1, 2]],
    ]);
  });

  test("hold the metric constant where a function has no units: 1000 L to 1 m2 by 1 m", () => {
    const entry = fixtureWith({ x }, { unitConstants: { k: "volume of an area and a length" } });
    expect(work(entry, [4]).values.get("k")).toBe(1000);
  });
});

describe("the numbers of a step", () => {
  const written = (entry: Entry, input: number | number[][]): string => {
    const working = work(entry, [input]);
    return numbersOf(working.steps[0]!, working);
  };

  test("are in brackets where they are negative, not where they are 0", () => {
    expect([-2, 0, 3].map((value) => written(oneStep("1 + x"), value))).toEqual(["1 + (-2)", "1 + 0", "1 + 3"]);
  });

  test("leave a word of the spreadsheet as it is", () => {
    expect(written(oneStep('IF(TRUE, x, "none")'), 5)).toBe('IF(TRUE, 5, "none")');
  });

  test("show the number of a range that has only one, and how many there are of more", () => {
    expect(written(oneStep("SUM(x)", range), [[7]])).toBe("SUM(7)");
    expect(written(oneStep("SUM(x)", range), [[7, 8]])).toBe("SUM(2 values)");
  });
});

describe("the plain-spreadsheet formula", () => {
  const table = { table: [{ name: "x", quantity: "factor" }], header: false, about } as const;
  const plain = (more: Partial<Entry>): string | null => {
    const entry = { ...oneStep("2 * x"), ...more };
    return plainFormula(entry, work(entry, [4]), () => "B4");
  };

  test("is made of the steps where the entry brings none", () => {
    expect(plain({})).toBe("=2 * B4");
  });

  test("is the entry's own where it brings one, even of a table", () => {
    expect(plain({ native: "x + x" })).toBe("=B4 + B4");
    expect(plain({ native: "x + x", result: table })).toBe("=B4 + B4");
  });

  test("is not offered where the entry says so, nor for a table without one of its own", () => {
    expect(plain({ native: null })).toBeNull();
    expect(plain({ result: table })).toBeNull();
  });

  test("carries the value of a unit constant", () => {
    expect(plain({ native: "x * k", unitConstants: { k: "volume of an area and a length" } })).toBe("=B4 * 1000");
  });
});
