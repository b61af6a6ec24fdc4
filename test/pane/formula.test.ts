import { constantRows, holdsOurs, ourCalls, simpleValue, withShownNames } from "../../src/taskpane/formula";

function callsIn(formula: string): string[] | null {
  return ourCalls(formula)?.map(({ name, args }) => `${name}: ${args.map(({ text }) => text).join(" | ")}`) ?? null;
}

/** The first argument of a call that holds the expression alone. */
function argument(expression: string) {
  const found = ourCalls(`=CANYARD.X(${expression})`)?.[0]?.args[0];
  if (found === undefined) throw new Error(`${expression} cannot be read`);
  return found;
}

describe("our calls in a formula", () => {
  test.each([
    ["=CANYARD.RUN_MINUTES(A1, A2)", ["RUN_MINUTES: A1 | A2"]],
    ["=canyard.run_minutes( A1 , 6 )", ["RUN_MINUTES: A1 | 6"]],
    ["=_xldudf_CANYARD_RUN_MINUTES(A1,6)", ["RUN_MINUTES: A1 | 6"]],
    ["=_XLDUDF_canyard_run_minutes(A1,6)", ["RUN_MINUTES: A1 | 6"]],
    ["=[2]!_xldudf_CANYARD_RUN_MINUTES(A1,6)", ["RUN_MINUTES: A1 | 6"]],
    ["=CANYARD.LIBRARY_VERSION()", ["LIBRARY_VERSION: "]],
    ["=CANYARD.X('O''Brien''s bench'!A1:B2,'a,(b)'!A1)", ["X: 'O''Brien''s bench'!A1:B2 | 'a,(b)'!A1"]],
    ['=CANYARD.X("say ""hi"", (now)", 2)', ['X: "say ""hi"", (now)" | 2']],
    ['=CANYARD.X({1,2;3,"a;b"},-5%,,TRUE,A:A)', ['X: {1,2;3,"a;b"} | -5% |  | TRUE | A:A']],
    ["=CANYARD.X((A1+B1)*2, Table1[Flow], A1#)", ["X: (A1+B1)*2 | Table1[Flow] | A1#"]],
    ['=CANYARD.X(((A1)), {1,2}, SUM(A1,(B1)), "(,")', ['X: ((A1)) | {1,2} | SUM(A1,(B1)) | "(,"']],
    ["=(1+CANYARD.X((A1),-(2)))*2", ["X: (A1) | -(2)"]],
    ["=@CANYARD.X(1)", ["X: 1"]],
    ["=CANYARD.NO_SUCH_FUNCTION(1)", ["NO_SUCH_FUNCTION: 1"]],
  ])("%s", (formula, calls) => {
    expect(callsIn(formula)).toEqual(calls);
  });

  test("stand inside other functions and sums", () => {
    expect(callsIn('=IF(A1>0,ROUND(CANYARD.X(A1)*2,1),"")')).toEqual(["X: A1"]);
    expect(callsIn("=LET(q,CANYARD.X(1),q*CANYARD.Y(q))")).toEqual(["X: 1", "Y: q"]);
    expect(callsIn("=MAP(A1:A3,LAMBDA(v,CANYARD.X(v)))")).toEqual(["X: v"]);
    expect(callsIn("=-CANYARD.X(1)%+CANYARD.Y(2)")).toEqual(["X: 1", "Y: 2"]);
  });

  test("each is told with its own text", () => {
    const formula = "=2*CANYARD.A((1), CANYARD.B({1,2}, (3)) )";
    expect(ourCalls(formula)?.map(({ text }) => text)).toEqual(["CANYARD.B({1,2}, (3))", formula.slice(3)]);
  });

  test("come inner ones first, as a sheet works them", () => {
    expect(callsIn("=CANYARD.A(CANYARD.B(CANYARD.C(1)), CANYARD.D(2))")).toEqual([
      "C: 1",
      "B: CANYARD.C(1)",
      "D: 2",
      "A: CANYARD.B(CANYARD.C(1)) | CANYARD.D(2)",
    ]);
  });

  test.each(["=1+1", "=SUM(A1:A3)", '="=CANYARD.X(1)"', "=OTHER.CANYARD.X(1)", "=CANYARDX(1)"])(
    "%s has none",
    (formula) => {
      expect(callsIn(formula)).toEqual([]);
    },
  );

  test.each(["=CANYARD.X(1", "=CANYARD.X(1))", '=CANYARD.X("1)', "=1+", "=CANYARD.X(1;2)", "=[2]CANYARD", "=)("])(
    "%s cannot be read",
    (formula) => {
      expect(callsIn(formula)).toBeNull();
    },
  );

  test("a formula as long as a cell takes is read", () => {
    const deep = `=${"CANYARD.X(".repeat(60)}1${")".repeat(60)}`;
    expect(callsIn(deep)).toHaveLength(60);
    const wide = `=CANYARD.X(${Array.from({ length: 1500 }, (_each, index) => `A${index + 1}`).join(",")})`;
    expect(ourCalls(wide)?.[0]?.args).toHaveLength(1500);
  });
});

describe("names in the form of a file", () => {
  test.each([
    ["=_xldudf_CANYARD_RUN_MINUTES(1, 2)", "=CANYARD.RUN_MINUTES(1, 2)"],
    ["=[2]!_xldudf_CANYARD_A(_xldudf_canyard_B(1))", "=CANYARD.A(CANYARD.B(1))"],
    [
      '=_xldudf_CANYARD_A("_xldudf_CANYARD_B", "x ""_xldudf_CANYARD_""")',
      '=CANYARD.A("_xldudf_CANYARD_B", "x ""_xldudf_CANYARD_""")',
    ],
  ])("%s becomes %s", (stored, shown) => {
    expect(withShownNames(stored)).toBe(shown);
  });

  test.each(["=CANYARD.RUN_MINUTES(1, 2)", "=_xldudf_OTHER_A(1)", "=_xlfn.CONCAT(1)", '="_xldudf_CANYARD_A(1)"'])(
    "%s stays as it is",
    (formula) => {
      expect(withShownNames(formula)).toBeNull();
    },
  );

  test("tell a formula of ours from one that only writes of us", () => {
    expect(holdsOurs("=1+canyard.x(2)")).toBe(true);
    expect(holdsOurs("=[1]!_xldudf_CANYARD_X(2)")).toBe(true);
    expect(holdsOurs('="CANYARD.X("&A1')).toBe(false);
    expect(holdsOurs("=SUM(A1)")).toBe(false);
  });
});

describe("constants in a formula", () => {
  test.each([
    ["5", [[5]]],
    ['"say ""hi"""', [['say "hi"']]],
    ["TRUE", [[true]]],
    ["#REF!", [[{ code: "#REF!", message: "" }]]],
    [
      '{1,-2;"a",TRUE}',
      [
        [1, -2],
        ["a", true],
      ],
    ],
    ["{#N/A}", [[{ code: "#N/A", message: "" }]]],
  ])("%s", (expression, rows) => {
    expect(constantRows(argument(expression))).toEqual(rows);
  });

  test.each(["A1", "1+1", "{1,2}*2", "net"])("%s is none", (expression) => {
    expect(constantRows(argument(expression))).toBeNull();
  });
});

describe("a simple sum in a formula", () => {
  const cells: Readonly<Record<string, number | string>> = { A1: 6, B1: 4, "'x y'!A1": 3, C1: "six" };
  test.each([
    ["A1*2", 12],
    ["-A1", -6],
    ["+A1", 6],
    ["A1%", 0.06],
    ["-5%", -0.05],
    ["(A1+B1)/2", 5],
    ["2^3", 8],
    ["A1-'x y'!A1", 3],
    ["A1>=B1", true],
    ["DATE(2024,7,15)", 45488],
    ["DATE(2023,12+1,1)", 45292],
    ["TIME(6,30,0)", 0.270833333333],
    ["time(6, 0, 30)", 0.250347222222],
  ])("%s is %s", (expression, value) => {
    const found = simpleValue(argument(expression), (text) => cells[text]);
    if (typeof value === "number") expect(found).toBeCloseTo(value, 10);
    else expect(found).toBe(value);
  });

  test.each(["A1/0", "C1*2", "SUM(A1:B1)", "A1&B1", "@A1", "A1#", "Z9+1"])("%s is left to the sheet", (expression) => {
    expect(simpleValue(argument(expression), (text) => cells[text])).toBeUndefined();
  });
});
