import { inOrder, numbersOf, plainFormula, replaceSymbols, singleFormula, symbolsIn, work } from "../../src/kernel";
import type { Working } from "../../src/kernel";
import { entryOf } from "../rig/calls";

function worked(name: string, byName: Readonly<Record<string, unknown>>): Working {
  const entry = entryOf(name);
  return work(entry, inOrder(entry, byName));
}

const LYON_F = { tmax: 79.88, tmin: 58.64, latitude: 45.72, date: 42200, units: "us" };
const LYON_C = { tmax: 26.6, tmin: 14.8, latitude: 45.72, date: 42200, units: "metric" };

describe("symbols in a formula", () => {
  test.each([
    ["60 * V / Q", ["V", "Q"]],
    ["4.903E-9 * Tx^4", ["Tx"]],
    ["2E-5*z + 1.5E3", ["z"]],
    ["MAX(0, MIN(1, x))", ["x"]],
    ["DATE(YEAR(date), 1, 0)", ["date"]],
    ["u2 * LN(67.8 * zm - 5.42)", ["u2", "zm"]],
    ['SUMIF(x, "<" & xq) + COUNTIF(x, "below a")', ["x", "xq", "x"]],
    ["PI() * E * e1", ["E", "e1"]],
    ["", []],
  ])("%s has %j", (formula, symbols) => {
    expect(symbolsIn(formula)).toEqual(symbols);
  });

  test("are replaced one by one, names of functions, exponents and texts left alone", () => {
    const replaced = replaceSymbols('E * 2E-5 + EXP(E) & "E"', () => "#");
    expect(replaced).toBe('# * 2E-5 + EXP(#) & "E"');
  });

  test("are told apart by their letters' case", () => {
    expect(replaceSymbols("q * Q", (symbol) => (symbol === "q" ? "1" : "2"))).toBe("1 * 2");
  });
});

describe("the steps of a call", () => {
  test("stand in order, with value, unit and formula", () => {
    const { steps, answer } = worked("RUN_MINUTES", { volume_per_plant: 1.5, emitter_flow: 4, emitters_per_plant: 3 });
    expect(steps).toMatchObject([
      { symbol: "Q", formula: "q * n", value: 12, unit: "gal/h or L/h", silent: false },
      { symbol: "t", formula: "60 * V / Q", value: 7.5, unit: "min", silent: false },
    ]);
    expect(answer).toBe(7.5);
  });

  test("show a conversion where the units ask for one, and keep quiet about it in metric", () => {
    const converted = worked("ET0_HARGREAVES", LYON_F).steps.find(({ symbol }) => symbol === "T");
    expect(converted).toMatchObject({ formula: "(Tm - 32) / 1.8", unit: "C", silent: false });
    const unchanged = worked("ET0_HARGREAVES", LYON_C).steps.find(({ symbol }) => symbol === "T");
    expect(unchanged).toMatchObject({ formula: "Tm", unit: "C", silent: true });
  });

  test("show the constant of the units asked", () => {
    const plant = { reference_et: 0.25, crop_coefficient: 1, area_per_plant: 1 };
    expect(worked("PLANT_WATER_DEMAND", { ...plant, units: "us" }).values.get("k")).toBe(144 / 231);
    expect(worked("PLANT_WATER_DEMAND", { ...plant, units: "metric" }).values.get("k")).toBe(1);
  });

  test("have their numbers filled in, four digits each, negative ones in brackets, ranges by their length", () => {
    const frost = worked("ET0_HARGREAVES", { ...LYON_C, tmax: 5.25, tmin: -2.5 });
    const mean = frost.steps.find(({ symbol }) => symbol === "Tm");
    expect(mean && numbersOf(mean, frost)).toBe("(5.25 + (-2.5)) / 2");
    const even = worked("DU_LOW_QUARTER", { readings: [[80, 100, 100, 120]] });
    expect(even.steps.map((step) => numbersOf(step, even))).toContain("AVERAGE(4 values)");
  });
});

describe("the numbers of a step", () => {
  test("are words where one of them ran out on the way", () => {
    const working = work(entryOf("BOOM_PLAN"), [[["A"]], [[1]], [[1]], 1.9e191, 4.4e192, 1e301, "metric"]);
    const written = working.steps.filter(({ formula }) => formula !== "").map((step) => numbersOf(step, working));
    expect(written).toContain("a number here is beyond what a cell can hold");
    expect(written.join()).not.toMatch(/Infinity|NaN/);
  });
});

describe("the plain-spreadsheet formula", () => {
  const byName = (name: string): string => name;

  test("is the steps put into one another", () => {
    const call = worked("RUN_MINUTES", { volume_per_plant: 1.5, emitter_flow: 4 });
    expect(singleFormula(call)).toBe("60 * V / (q * n)");
    expect(plainFormula(entryOf("RUN_MINUTES"), call, byName)).toBe(
      "=60 * volume_per_plant / (emitter_flow * emitters_per_plant)",
    );
  });

  test("carries the constant of the units at full precision", () => {
    const plant = { reference_et: 0.25, crop_coefficient: 1, area_per_plant: 1, units: "us" };
    const formula = plainFormula(entryOf("PLANT_WATER_DEMAND"), worked("PLANT_WATER_DEMAND", plant), byName);
    expect(formula).toContain("0.6233766233766234 * ");
  });

  test("converts in the formula where the units ask for it", () => {
    const formula = plainFormula(entryOf("ET0_HARGREAVES"), worked("ET0_HARGREAVES", LYON_F), byName);
    expect(formula).toContain("(((tmax + tmin) / 2) - 32) / 1.8");
    expect(formula).toMatch(/\/ 25\.4$/);
  });

  test("is not offered where a step was read from a range and has no formula", () => {
    const plan = worked("PAYBACK_YEARS", { investment: 10_000, annual_savings: [[3000], [4000], [5000]] });
    expect(plainFormula(entryOf("PAYBACK_YEARS"), plan, byName)).toBeNull();
  });

  test("puts in what stands for an argument, a cell for one", () => {
    const call = worked("WATER_HELD", { volume: 9, container_capacity: 0.55 });
    const cells: Record<string, string> = { volume: "B4", container_capacity: "B5" };
    expect(plainFormula(entryOf("WATER_HELD"), call, (name) => cells[name] ?? name)).toBe("=B4 * B5");
  });
});
