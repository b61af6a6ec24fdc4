import { fromFile, holdsOurs, toFile } from "../../../src/sheet/xlsx/functionNames";

const SHOWN = "=CANYARD.RUN_MINUTES(A1, 6)";

test.each([
  ["as Excel stores it", "=_xldudf_CANYARD_RUN_MINUTES(A1, 6)", SHOWN],
  ["as others write it back, small", "=_xldudf_canyard_run_minutes(A1, 6)", SHOWN],
  ["as it is shown, small", "=canyard.run_minutes(A1, 6)", SHOWN],
  ["with the number of a book before it", "=[2]!_xldudf_CANYARD_RUN_MINUTES(A1, 6)", SHOWN],
  [
    "inside another function",
    "=IF(A1>0,_xldudf_CANYARD_RUN_MINUTES(A1, 6),0)",
    "=IF(A1>0,CANYARD.RUN_MINUTES(A1, 6),0)",
  ],
  [
    "inside one of ours",
    "=_xldudf_CANYARD_RUN_MINUTES(_xldudf_CANYARD_GROSS_WATER(1, 0.1), 6)",
    "=CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(1, 0.1), 6)",
  ],
  ["with digits in its name", "=_xldudf_CANYARD_ET0_TABLE(A1)", "=CANYARD.ET0_TABLE(A1)"],
  ["newer built-in functions, every one", "=_xlfn.STDEV.S(A1:A3)+_xlfn._xlws.SORT(B1)", "=STDEV.S(A1:A3)+SORT(B1)"],
  ["a text that names it", '="_xldudf_CANYARD_X(" & A1', '="_xldudf_CANYARD_X(" & A1'],
  ["a text with marks inside", '="a ""b"""', '=("a "&CHAR(34)&"b"&CHAR(34))'],
  ["a sheet that is called so", "='CANYARD_X ('!A1", "='CANYARD_X ('!A1"],
  ["another function whose name ends so", "=OLD.CANYARD.X(1)", "=OLD.CANYARD.X(1)"],
])("reads %s", (_, formula, shown) => {
  expect(fromFile(formula)).toBe(shown);
});

test.each([
  [SHOWN, "=_xldudf_CANYARD_RUN_MINUTES(A1, 6)"],
  ["=canyard.et0_table(A1)", "=_xldudf_CANYARD_ET0_TABLE(A1)"],
  ['="CANYARD.X(" & A1', '="CANYARD.X(" & A1'],
])("writes %s as %s", (shown, stored) => {
  expect(toFile(shown)).toBe(stored);
  expect(fromFile(stored).toUpperCase()).toBe(shown.toUpperCase());
});

test("tells a formula of ours from one that only speaks of it", () => {
  expect([SHOWN, '="CANYARD.X("', "=SUM(A1:A2)"].map(holdsOurs)).toEqual([true, false, false]);
});
