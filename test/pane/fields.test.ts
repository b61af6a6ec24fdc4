import * as library from "../../src/functions";
import { catalogue, NAMESPACE } from "../../src/functions";
import {
  argumentsOf,
  exampleArguments,
  exampleTexts,
  fieldsOf,
  formulaOf,
  formulaText,
  isReference,
  type FieldTexts,
} from "../../src/taskpane/fields";
import { ourCalls } from "../../src/taskpane/formula";
import type { FunctionHelp } from "../../src/taskpane/library";
import { plainPage } from "../../src/taskpane/plainPage";
import { isClose } from "../rig/closeness";
import { hostWith } from "../rig/memoryHost";
import { FormulaSheet } from "../rig/spreadsheetEngines";

function entryOf(name: string): FunctionHelp {
  const entry = library.catalogue.find((each) => each.name === name);
  if (entry === undefined) throw new Error(`there is no ${name}`);
  return entry;
}

const RUN_MINUTES = entryOf("RUN_MINUTES");
const CELL = { shape: "cell" } as const;
const RANGE = { shape: "range" } as const;

const noSheet = hostWith("=1");

async function given(text: string): Promise<unknown> {
  return (await argumentsOf(RUN_MINUTES, { volume_per_plant: text }, noSheet, "Plan"))[0];
}

describe("what is typed into a field", () => {
  test.each([
    ["0.5", 0.5, "0.5"],
    [" .5 ", 0.5, "0.5"],
    ["-3", -3, "-3"],
    ["+3", 3, "3"],
    ["007", 7, "7"],
    ["2e-5", 0.00002, "0.00002"],
    ["1e-9", 1e-9, "1E-9"],
    ["15%", 0.15, "15%"],
    ["12.5 %", 0.125, "12.5%"],
    ["-5%", -0.05, "-5%"],
    ["2024-07-15", 45488, "DATE(2024, 7, 15)"],
    ["2024-2-29", 45351, "DATE(2024, 2, 29)"],
    ["06:30", 390 / 1440, "TIME(6, 30, 0)"],
    ["0:05", 5 / 1440, "TIME(0, 5, 0)"],
    ["true", true, "TRUE"],
    ["FALSE", false, "FALSE"],
    ["metric", "metric", '"metric"'],
    ['"15"', "15", '"15"'],
    ['say "hi", now', 'say "hi", now', '"say ""hi"", now"'],
    ['"a ""quoted"" word"', 'a "quoted" word', '"a ""quoted"" word"'],
    ['"a" and "b"', '"a" and "b"', '"""a"" and ""b"""'],
    ["=1+1", "=1+1", '"=1+1"'],
    ["<b>bold</b>", "<b>bold</b>", '"<b>bold</b>"'],
  ])("%s is %p, in the formula %s", async (text, value, inFormula) => {
    const found = await given(text);
    if (typeof value === "number") expect(found).toBeCloseTo(value, 12);
    else expect(found).toBe(value);
    expect(formulaText(text, CELL)).toBe(inFormula);
  });

  test.each([
    "1,5",
    "2023-02-29",
    "2024-13-01",
    "1850-01-01",
    "25:00",
    "24:00",
    "6:75",
    "1e999",
    "12 gal",
    "1:100",
    "7/15/2024",
  ])("%s is no number, and is left to the function to refuse in words", async (text) => {
    expect(await given(text)).toBe(text);
    expect(formulaText(text, CELL)).toBe(`"${text}"`);
  });

  test.each([
    ["a1", "A1"],
    ["$b$2:c3", "$B$2:C3"],
    ["Plan!a1", "Plan!a1"],
    ["'O''Brien''s bench'!A1:B2", "'O''Brien''s bench'!A1:B2"],
    ["Plan!A:A", "Plan!A:A"],
    ["A:B", "A:B"],
  ])("%s is a reference, in the formula %s", (text, inFormula) => {
    expect(isReference(text)).toBe(true);
    expect(formulaText(text, CELL)).toBe(inFormula);
    expect(formulaText(text, RANGE)).toBe(inFormula);
  });

  test.each(["1:5", "06:30", "net", "A1+B1", "A1*Plan!B2", "us"])("%s is none", (text) => {
    expect(isReference(text)).toBe(false);
  });
});

describe("a range that is typed by hand", () => {
  const DU = entryOf("DU_LOW_QUARTER");
  const read = async (text: string): Promise<unknown> =>
    (await argumentsOf(DU, { readings: text }, noSheet, "Plan"))[0];

  test.each([
    ["1 2 3", [[1, 2, 3]], "{1,2,3}"],
    ["1, 2, 3", [[1, 2, 3]], "{1,2,3}"],
    [
      "1\t2\n3\t4",
      [
        [1, 2],
        [3, 4],
      ],
      "{1,2;3,4}",
    ],
    ["1; 2 ;3", [[1], [2], [3]], "{1;2;3}"],
    ["1; 2;", [[1], [2]], "{1;2}"],
    [
      "{1,2;3,4}",
      [
        [1, 2],
        [3, 4],
      ],
      "{1,2;3,4}",
    ],
    ["-1, -2.5", [[-1, -2.5]], "{-1,-2.5}"],
    ["5", [[5]], "5"],
    // Braces take neither a percent sign nor a function.
    ["10%, 20%", [[0.1, 0.2]], "{0.1,0.2}"],
    [
      "2024-07-15, 30; 2024-07-16, 31",
      [
        [45488, 30],
        [45489, 31],
      ],
      "{45488,30;45489,31}",
    ],
    ["10%", [[0.1]], "10%"],
    // Short rows and rows left empty are filled with blanks: braces take no ragged rows.
    [
      "1, 2; 3",
      [
        [1, 2],
        [3, ""],
      ],
      '{1,2;3,""}',
    ],
    ["1; ; 3", [[1], [""], [3]], '{1;"";3}'],
    ["1, , 3", [[1, "", 3]], '{1,"",3}'],
    ['"Bench 1, north" 5', [["Bench 1, north", 5]], '{"Bench 1, north",5}'],
    [
      "Bench 1, 5; Bench 2, 6",
      [
        ["Bench 1", 5],
        ["Bench 2", 6],
      ],
      '{"Bench 1",5;"Bench 2",6}',
    ],
    ['"a ""b"" c", true', [['a "b" c', true]], '{"a ""b"" c",TRUE}'],
  ])("%j", async (text, rows, inFormula) => {
    expect(await read(text)).toEqual(rows);
    expect(formulaText(text, RANGE)).toBe(inFormula);
  });
});

describe("a whole formula", () => {
  const formula = (texts: FieldTexts): string => formulaOf(RUN_MINUTES, texts, NAMESPACE);

  test("drops what is left out at its end, and keeps the place of what is left out before", () => {
    expect(formula({ volume_per_plant: "A1", emitter_flow: "6" })).toBe("=CANYARD.RUN_MINUTES(A1, 6)");
    expect(formula({ emitter_flow: "6" })).toBe("=CANYARD.RUN_MINUTES(, 6)");
    expect(formula({})).toBe("=CANYARD.RUN_MINUTES()");
  });

  test("keeps a word to choose that reads like a cell", async () => {
    const entry = entryOf("ELEMENT_FROM_OXIDE");
    const texts = { percent: "A1", oxide: "NO3" };
    expect(formulaOf(entry, texts, NAMESPACE)).toBe('=CANYARD.ELEMENT_FROM_OXIDE(A1, "NO3")');
    expect(await argumentsOf(entry, { percent: "20", oxide: "NO3" }, noSheet, "Plan")).toEqual([20, "NO3"]);
  });

  test("of a function that takes any number of arguments has a field more than are filled in", () => {
    const entry = entryOf("SHOW_WORKING");
    const inputs = (texts: FieldTexts): string[] =>
      fieldsOf(entry, texts)
        .map(({ key }) => key)
        .filter((key) => key.startsWith("input"));
    expect(inputs({})).toEqual(["input", "input_2"]);
    const texts = { function_name: "RUN_MINUTES", input: "0.275", input_2: "6", input_3: "A1" };
    expect(inputs(texts)).toEqual(["input", "input_2", "input_3", "input_4"]);
    expect(formulaOf(entry, texts, NAMESPACE)).toBe('=CANYARD.SHOW_WORKING("RUN_MINUTES", 0.275, 6, A1)');
  });

  test("works with the cells that it names", async () => {
    const host = hostWith("=1", { A1: 0.275 }, { "O'Brien's": { cells: { B2: 6 } } });
    const texts = { volume_per_plant: "A1", emitter_flow: "'O''Brien''s'!B2" };
    const args = await argumentsOf(RUN_MINUTES, texts, host, "Plan");
    expect(args).toEqual([[[0.275]], [[6]], undefined]);
    expect(library.call("RUN_MINUTES", args)).toBeCloseTo(2.75, 12);
  });

  test("on a page without a sheet says that only a sheet can read a cell", async () => {
    const reading = argumentsOf(RUN_MINUTES, { volume_per_plant: "A1" }, plainPage, "");
    await expect(reading).rejects.toThrow("Only a sheet can read A1. The answer comes there.");
  });
});

/** Blank cells alike, numbers as close as the text of a field holds them. */
function isSame(read: unknown, wanted: unknown): boolean {
  if (Array.isArray(read) && read.length === 1 && !Array.isArray(wanted)) return isSame(read[0]?.[0], wanted);
  if (Array.isArray(read) && Array.isArray(wanted)) {
    return read.length === wanted.length && read.every((each, index) => isSame(each, wanted[index]));
  }
  if (typeof wanted === "number") return isClose(read as number, wanted, 1e-11);
  return (read ?? "") === (wanted ?? "");
}

const EXAMPLES = catalogue.flatMap((entry) =>
  (["us", "metric"] as const).map((system) => {
    const texts = exampleTexts(entry, system);
    return { name: entry.name, system, entry, texts, formula: formulaOf(entry, texts, NAMESPACE) };
  }),
);

describe("the example of every function, as texts of the fields", () => {
  test.each(EXAMPLES)("$name in $system units says the same as the example", async ({ entry, system, texts }) => {
    const read = await argumentsOf(entry, texts, noSheet, "Plan");
    const wanted = exampleArguments(entry, system);
    const differing = read.filter((each, index) => !isSame(each, wanted[index]));
    expect(differing).toEqual([]);
    expect(read.length).toBeGreaterThanOrEqual(wanted.length);
  });

  test("shows dates and times as people write them", () => {
    expect(exampleTexts(entryOf("ET0_HARGREAVES"), "metric")["date"]).toMatch(/^\d{4}-\d{2}-\d{2}$/);
    expect(exampleTexts(entryOf("PULSE_SCHEDULE"), "us")["start_time"]).toMatch(/^\d{2}:\d{2}$/);
  });
});

/** What an engine refuses: between them, all that the pane could get wrong. */
const BROKEN: readonly { readonly formula: string; readonly refusedBy: readonly ("HyperFormula" | "IronCalc")[] }[] = [
  { formula: "=CANYARD.X(1 2)", refusedBy: ["HyperFormula", "IronCalc"] },
  { formula: '=CANYARD.X("a)', refusedBy: ["HyperFormula", "IronCalc"] },
  { formula: "=CANYARD.X(1;2)", refusedBy: ["HyperFormula", "IronCalc"] },
  { formula: "=CANYARD.X(O'Brien!A1)", refusedBy: ["HyperFormula", "IronCalc"] },
  { formula: "=CANYARD.X(1", refusedBy: ["HyperFormula"] },
  { formula: "=CANYARD.X({1,2;3})", refusedBy: ["IronCalc"] },
  { formula: "=CANYARD.X({1;DATE(2024,1,1)})", refusedBy: ["IronCalc"] },
  { formula: "=CANYARD.X({10%,1})", refusedBy: ["IronCalc"] },
];

describe("every formula that the pane inserts can be read", () => {
  test.each(EXAMPLES)("$formula by the pane itself", ({ formula, name }) => {
    expect(ourCalls(formula)?.map((call) => call.name)).toEqual([name]);
  });

  const sheet = new FormulaSheet();
  const places = EXAMPLES.map(({ formula }) => sheet.formula(formula));
  const brokenPlaces = BROKEN.map(({ formula }) => sheet.formula(formula));
  const hyperFormula = sheet.inHyperFormula();
  const ironCalc = sheet.inIronCalc();

  test.each(EXAMPLES.map(({ formula }, index) => [formula, places[index] as number] as const))(
    "%s by two spreadsheet engines, which know all of it but the name",
    (_formula, place) => {
      expect([hyperFormula[place], ironCalc[place]]).toEqual(["#NAME?", "#NAME?"]);
    },
  );

  test.each(BROKEN)("$formula is refused by $refusedBy, so that the test above can fail", ({ refusedBy, formula }) => {
    const place = brokenPlaces[BROKEN.findIndex((each) => each.formula === formula)] as number;
    const answers = { HyperFormula: hyperFormula[place], IronCalc: ironCalc[place] };
    for (const engine of refusedBy) expect(answers[engine]).toBe("#ERROR!");
  });
});
