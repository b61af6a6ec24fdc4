import { array, assert, constantFrom, property, string } from "fast-check";
import Papa from "papaparse";
import { splitCells } from "../../../src/sheet/weather/splitCells";
import { seattleText } from "../../rig/seattle";

const cells = (text: string, delimiter = ",") => splitCells(text, delimiter).map((row) => row.cells);

test.each([
  [
    "a,b\n1,2\n",
    [
      ["a", "b"],
      ["1", "2"],
    ],
  ],
  [
    "a,b\r\n1,2",
    [
      ["a", "b"],
      ["1", "2"],
    ],
  ],
  ["a,,b,", [["a", "", "b", ""]]],
  ['"a, b",c', [["a, b", "c"]]],
  ['"say ""yes""",c', [['say "yes"', "c"]]],
  [
    '"two\nlines",c\nd,e',
    [
      ["two\nlines", "c"],
      ["d", "e"],
    ],
  ],
  ["a,b\n\nc,d", [["a", "b"], [""], ["c", "d"]]],
  ['"open to the end', [["open to the end"]]],
])("%j", (text, rows) => {
  expect(cells(text)).toEqual(rows);
});

test("lines are counted as an editor counts them", () => {
  expect(splitCells('a\n"two\nlines"\r\nb', ",").map(({ line }) => line)).toEqual([1, 2, 4]);
});

test("a real table is cut as a library for it cuts it", () => {
  expect(cells(seattleText().trimEnd())).toEqual(Papa.parse(seattleText().trimEnd()).data);
});

test("whatever a library writes is read back cell by cell", () => {
  const cell = string({ unit: constantFrom("a", "1", " ", ".", ",", ";", '"', "\n", "\t"), maxLength: 6 });
  assert(
    property(
      array(array(cell, { minLength: 2, maxLength: 4 }), { minLength: 1, maxLength: 5 }),
      constantFrom(",", ";", "\t"),
      (rows, delimiter) => {
        const text = Papa.unparse(rows, { delimiter, quotes: true, newline: "\n" });
        expect(cells(text, delimiter)).toEqual(rows);
      },
    ),
  );
});
