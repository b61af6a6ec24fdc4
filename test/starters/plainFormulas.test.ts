/** Our calls replaced by built-in functions; the expected formulas are written out by hand from the catalogue's own. */
import { fullNumber } from "../../src/kernel";
import { plainOf } from "../../tools/starters/plainFormulas";

const CELLS: Readonly<Record<string, number | string | null>> = {
  T: 14,
  B: 12,
  H: 10.5,
  V: 6,
  K: 0.5,
  units: "us",
  blank: null,
  cost: 1000,
  saving: 250,
  interest: 0.08,
};

/** The expression is the name of a cell above, or a number. */
function evaluate(expression: string) {
  const found = CELLS[expression];
  return [[found === undefined ? Number(expression) : found]];
}

const plain = (formula: string) => plainOf(formula, evaluate);

describe("a formula with our functions in built-in ones", () => {
  test("a call by itself becomes its formula in the cells' own names", () => {
    expect(plain("=CANYARD.WATER_HELD(V, K)")).toEqual({ formula: "=V * K" });
  });

  test("within a larger formula it is kept together by brackets", () => {
    expect(plain('=IF(V = "", "", 2 ^ CANYARD.WATER_HELD(V, K))')).toEqual({
      formula: '=IF(V = "", "", 2 ^ (V * K))',
    });
  });

  test("as an argument of another function it needs none", () => {
    expect(plain("=MAX(CANYARD.WATER_HELD(V, K), 1)")).toEqual({ formula: "=MAX(V * K, 1)" });
  });

  test("a comparison is no beginning of a formula", () => {
    expect(plain("=V >=CANYARD.WATER_HELD(V, K)")).toEqual({ formula: "=V >=(V * K)" });
  });

  test("an argument that is a sum is bracketed, a name or a number is not", () => {
    const evaluateSum = (expression: string) => (expression === "1 - K" ? [[0.5]] : evaluate(expression));
    expect(plainOf("=CANYARD.WATER_HELD(12, 1 - K)", evaluateSum)).toEqual({ formula: "=12 * (1 - K)" });
  });

  test("a call within a call is put in its place", () => {
    const evaluateCall = (expression: string) => (expression.startsWith("CANYARD") ? [[3]] : evaluate(expression));
    expect(plainOf("=CANYARD.WATER_HELD(CANYARD.WATER_HELD(V, K), K)", evaluateCall)).toEqual({
      formula: "=(V * K) * K",
    });
  });

  test("the working of the units in the call is taken: in2 / 144 to ft2, cm2 / 10000 to m2", () => {
    const words = (expression: string) => (expression === '"metric"' ? [["metric"]] : evaluate(expression));
    const us = plainOf("=CANYARD.TOP_AREA(T, units)", words);
    const metric = plainOf('=CANYARD.TOP_AREA(T, "metric")', words);
    expect(us).toEqual({ formula: `=${fullNumber(1 / 144)} * (PI() * T^2 / 4)` });
    expect(metric).toEqual({ formula: "=0.0001 * (PI() * T^2 / 4)" });
  });

  test("an argument left out stands as its default, and one that is blank as long as it is blank", () => {
    expect(plain("=CANYARD.PLANT_WATER_DEMAND(K, V, H, units)")).toEqual(
      plain("=CANYARD.PLANT_WATER_DEMAND(K, V, H, units, 1)"),
    );
    const withBlank = plain("=CANYARD.PLANT_WATER_DEMAND(K, V, H, units, blank)");
    expect("formula" in withBlank && withBlank.formula).toContain('IF(blank="", 1, blank)');
  });

  test("a text that looks like a call stays a text", () => {
    expect(plain('="CANYARD.WATER_HELD(V, K)"')).toEqual({ formula: '="CANYARD.WATER_HELD(V, K)"' });
  });
});

describe("where there is no such formula", () => {
  test("a judgement in words has no equivalent", () => {
    const words = (expression: string) =>
      expression.startsWith('"') ? [[expression.slice(1, -1)]] : evaluate(expression);
    expect(plainOf('=CANYARD.CHECK_RANGE(V, "CONTAINER_VOLUME", "", units)', words)).toEqual({
      none: "no equivalent",
    });
  });

  test("a call that its own numbers refuse records no working", () => {
    expect(plain("=CANYARD.WATER_HELD(blank, K)")).toEqual({ none: "not worked" });
  });
});
