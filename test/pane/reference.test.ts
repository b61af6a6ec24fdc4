import { columnName, onSheet, placeOf } from "../../src/taskpane/reference";

describe("a reference is told from everything else", () => {
  test.each([
    ["A1", null, "A1"],
    ["$b$2:C3", null, "$b$2:C3"],
    ["XFD1048576", null, "XFD1048576"],
    ["A:C", null, "A:C"],
    ["$1:$5", null, "$1:$5"],
    ["Plan!A1", "Plan", "A1"],
    ["Plan_2.b!A1:B2", "Plan_2.b", "A1:B2"],
    ["Bewässerung!A1", "Bewässerung", "A1"],
    ["'Catch test'!A6:D9", "Catch test", "A6:D9"],
    ["'O''Brien''s bench'!A1", "O'Brien's bench", "A1"],
    ["'a!b, (c)'!A1", "a!b, (c)", "A1"],
    ["' '!A1", " ", "A1"],
  ])("%s is one", (text, sheet, range) => {
    expect(placeOf(text)).toEqual({ sheet, range });
  });

  test.each([
    "",
    "A",
    "12",
    "A0",
    "XFE1",
    "A1048577",
    "ZON1",
    "net",
    "rate_2",
    "A1:B",
    "A:1",
    "A1:B2:C3",
    "A1,B2",
    "A1*2",
    "A1*Plan!B2",
    "Plan!",
    "!A1",
    "Plan!net",
    "2024!A1",
    "'Plan!A1",
    "Plan'!A1",
    "[Book1.xlsx]Plan!A1",
    "'[Book1.xlsx]Plan'!A1",
    "Plan:Other!A1",
    "'Plan:Other'!A1",
    "A1#",
    "#REF!",
    "Plan!#REF!",
    "Table1[Flow]",
    '"A1"',
  ])("%p is none", (text) => {
    expect(placeOf(text)).toBeNull();
  });
});

describe("the name of a sheet in a reference", () => {
  test.each([
    ["Plan", "Plan!A1"],
    ["Bewässerung", "Bewässerung!A1"],
    ["Catch test", "'Catch test'!A1"],
    ["O'Brien's", "'O''Brien''s'!A1"],
    ["2024", "'2024'!A1"],
    ["A1", "'A1'!A1"],
    ["R1C1", "'R1C1'!A1"],
    ["rc", "'rc'!A1"],
    ["TRUE", "'TRUE'!A1"],
    ["a-b", "'a-b'!A1"],
  ])("%s is written as %s and read again", (sheet, reference) => {
    expect(onSheet(sheet, "A1")).toBe(reference);
    expect(placeOf(reference)).toEqual({ sheet, range: "A1" });
  });
});

test("columns are named as a sheet names them", () => {
  expect([0, 25, 26, 51, 52, 701, 702, 16_383].map(columnName)).toEqual([
    "A",
    "Z",
    "AA",
    "AZ",
    "BA",
    "ZZ",
    "AAA",
    "XFD",
  ]);
});
