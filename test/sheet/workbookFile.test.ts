import fc from "fast-check";
import { render } from "../../src/sheet/render";
import { sealed } from "../../src/sheet/seal";
import {
  EXCEL_ENDING,
  fileNameFor,
  fromText,
  nameOfFile,
  NewerFile,
  toText,
  WrongFile,
} from "../../src/sheet/workbookFile";
import { ternHollow } from "../../src/workbooks/ternHollow";

const SEED = 20261129;
const NOON = new Date("2026-05-04T12:00:00Z");
const good = { name: "House 4", data: render(ternHollow) };
const whole = toText(good, NOON);
/** Without a checksum, as the first release wrote them. */
const early = { format: "Canyard workbook", formatVersion: 1, ...good };
const altered = (change: object) => JSON.stringify({ ...early, ...change });
const [sheet] = good.data.sheets as readonly [object];
const withSheet = (change: object) => altered({ data: { ...good.data, sheets: [{ ...sheet, ...change }] } });

it("reads what it wrote, and when that was", () => {
  expect(fromText(whole)).toEqual(JSON.parse(JSON.stringify({ ...good, savedAt: NOON }), revived));
});

it("reads it with blanks and a line end around it, as an editor may leave them", () => {
  expect(fromText(`\n ${whole}\r\n`).isAltered).toBeUndefined();
});

it("reads what the first release wrote", () => {
  expect(fromText(JSON.stringify(early))).toEqual(JSON.parse(JSON.stringify(good)));
});

it.each([
  ["an empty file", "", /empty/],
  ["a text", "zone;minutes", /not a workbook of this page/],
  ["another program's data", '{"rows":[]}', /another program/],
  ["a list", "[]", /another program/],
  ["nothing", "null", /another program/],
  ["a number", "5", /another program/],
  ["a file without a version", altered({ formatVersion: "1" }), /version number/],
  ["a file without a name", altered({ name: 5 }), /missing or damaged/],
  ["a file without sheets", altered({ data: { sheets: [] } }), /missing or damaged/],
  ["a sheet without cells", altered({ data: { sheets: [{ id: "a", name: "A" }] } }), /missing or damaged/],
  ["two sheets of one name", altered({ data: { sheets: [sheet, { ...sheet, id: "other" }] } }), /missing or damaged/],
  ["two sheets of one id", altered({ data: { sheets: [sheet, { ...sheet, name: "other" }] } }), /missing or damaged/],
  ["a version that is none", altered({ data: { ...good.data, version: "next" } }), /missing or damaged/],
  ["a sheet of a billion rows", withSheet({ rowNumber: 1e9 }), /missing or damaged/],
  ["a sheet of half a column", withSheet({ colNumber: 0.5 }), /missing or damaged/],
  ["a number in the place of a cell's text", withSheet({ cells: { A1: 5 } }), /missing or damaged/],
  ["one of our files cut short", whole.slice(0, -20), /missing or damaged/],
  ["one of our files whose first word is changed", whole.replace("Canyard workbook", "Canyard wordbook"), /damaged/],
])("refuses %s and says why", (_, text, reason) => {
  expect(() => fromText(text)).toThrow(WrongFile);
  expect(() => fromText(text)).toThrow(reason);
});

const WRONG = [null, 5, "x", true, [5], {}, [], { A1: null }];
const KINDS: Readonly<Record<string, readonly unknown[]>> = {
  record: [{}, { A1: null }],
  list: [[], [5]],
};
it.each([
  ["styles", "record"],
  ["formats", "record"],
  ["borders", "record"],
  ["settings", "record"],
  ["namedRanges", "record"],
  ["growing", "record"],
])("refuses a workbook whose %s are no %s", (part, kind) => {
  for (const value of WRONG.filter((each) => !KINDS[kind]!.some((right) => isSame(each, right))))
    expect(() => fromText(altered({ data: { ...good.data, [part]: value } }))).toThrow(/missing or damaged/);
});

it.each(["merges", "figures", "tables", "conditionalFormats", "dataValidationRules"])(
  "refuses a sheet whose %s are no list of such",
  (part) => {
    for (const value of [...WRONG.filter((each) => !isSame(each, [])), [null], [[]]])
      expect(() => fromText(withSheet({ [part]: value }))).toThrow(/missing or damaged/);
  },
);

it.each(["cells", "rows", "cols", "panes"])("refuses a sheet whose %s are no record", (part) => {
  for (const value of [null, 5, "x", true, [], [5]])
    expect(() => fromText(withSheet({ [part]: value }))).toThrow(/missing or damaged/);
});

it("tells a file of a newer version from a damaged one, sealed or not", () => {
  for (const text of [altered({ formatVersion: 2 }), sealed(JSON.stringify({ ...early, formatVersion: 2, data: 5 }))]) {
    expect(() => fromText(text)).toThrow(NewerFile);
    expect(() => fromText(text)).toThrow(/newer Canyard/);
  }
  expect(() => fromText(whole.replace('"formatVersion":1', '"formatVersion":2'))).not.toThrow(NewerFile);
});

it("refuses a file cut short anywhere", () => {
  fc.assert(
    fc.property(fc.nat({ max: whole.length - 1 }), (length) =>
      expect(() => fromText(whole.slice(0, length))).toThrow(WrongFile),
    ),
    { seed: SEED, numRuns: 300 },
  );
});

it("refuses a file with any one character another, or says that it is altered", () => {
  const anyChange = fc.tuple(fc.nat({ max: whole.length - 1 }), fc.integer({ min: 0x20, max: 0x7e }));
  let readable = 0;
  fc.assert(
    fc.property(anyChange, ([at, code]) => {
      const changed = whole.slice(0, at) + String.fromCharCode(code) + whole.slice(at + 1);
      if (changed === whole) return;
      const found = outcomeOf(changed);
      expect(found).toMatch(/refused|altered/);
      if (found === "altered") readable += 1;
    }),
    { seed: SEED, numRuns: 600 },
  );
  expect(readable).toBeGreaterThan(100);
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

function outcomeOf(text: string): string {
  try {
    return fromText(text).isAltered ? "altered" : "read";
  } catch (error) {
    return error instanceof WrongFile ? "refused" : `thrown raw: ${String(error)}`;
  }
}

function isSame(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function revived(key: string, value: unknown): unknown {
  return key === "savedAt" ? new Date(value as string) : value;
}
