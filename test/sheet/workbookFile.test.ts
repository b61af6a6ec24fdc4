import { blank } from "../../src/workbooks/blank";
import { render } from "../../src/sheet/render";
import { EXCEL_ENDING, fileNameFor, fromText, nameOfFile, toText, WrongFile } from "../../src/sheet/workbookFile";

const good = { name: "House 4", data: render(blank) };
const altered = (change: object) => JSON.stringify({ ...JSON.parse(toText(good)), ...change });

it("reads what it wrote", () => {
  expect(fromText(toText(good))).toEqual(JSON.parse(JSON.stringify(good)));
});

it.each([
  ["an empty file", "", /empty/],
  ["a text", "zone;minutes", /not a workbook of this page/],
  ["another program's data", '{"rows":[]}', /another program/],
  ["a list", "[]", /another program/],
  ["a file of a newer version", altered({ formatVersion: 2 }), /newer Canyard/],
  ["a file without a version", altered({ formatVersion: "1" }), /version number/],
  ["a file without a name", altered({ name: 5 }), /missing or damaged/],
  ["a file without sheets", altered({ data: { sheets: [] } }), /missing or damaged/],
  ["a sheet without cells", altered({ data: { sheets: [{ id: "a", name: "A" }] } }), /missing or damaged/],
])("refuses %s and says why", (_, text, reason) => {
  expect(() => fromText(text)).toThrow(WrongFile);
  expect(() => fromText(text)).toThrow(reason);
});

it.each([
  ["House 4", "House 4.canyard.json"],
  ["a/b: c?", "a b c.canyard.json"],
  ["  ", "workbook.canyard.json"],
])("names the file of “%s” %s", (name, file) => {
  expect(fileNameFor(name)).toBe(file);
});

it("names an Excel file likewise", () => {
  expect(fileNameFor("House 4?", EXCEL_ENDING)).toBe("House 4.xlsx");
});

test.each([
  ["zone plan.v2.xlsx", "zone plan.v2"],
  ["House 4.canyard.json", "House 4"],
  [".xlsx", "Workbook"],
])("a workbook from %s is called %s", (file, name) => {
  expect(nameOfFile(file)).toBe(name);
});
