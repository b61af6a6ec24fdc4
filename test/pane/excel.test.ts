import { excel, excelWhenReady, hostTheme } from "../../src/taskpane/excel";
import { HostFailure } from "../../src/taskpane/sheetHost";
import { FakeExcel } from "../rig/fakeExcel";
import { setGlobal } from "../rig/pageGlobals";

const FORMULA = "=CANYARD.RUN_MINUTES(A1, A2)";
const AS_ONE_STEP = 'Excel.run({"delayForCellEdit":true,"mergeUndoGroup":true})';

let fake: FakeExcel;

beforeEach(() => {
  fake = new FakeExcel();
  fake.workbook.addSheet("Plan").put("A1", 0.275).put("A2", 6).put("B1", FORMULA, 2.75, "2.8 min");
  fake.workbook.addSheet("O'Brien's bench").put("A1", 58).put("B1", 63).put("A2", "dry").put("B2", true);
  fake.workbook.select("Plan", "B1");
  setGlobal("Excel", fake.global);
});

afterEach(() => {
  setGlobal("Excel", undefined);
  setGlobal("Office", undefined);
  expect(fake.misuses).toEqual([]);
});

/** What the pane would show of a failure; any other error than a sentence for the pane is a fault. */
async function sentenceOf(failing: Promise<unknown>): Promise<string> {
  const error: unknown = await failing.then(
    () => new Error("nothing failed"),
    (thrown: unknown) => thrown,
  );
  if (error instanceof HostFailure) return error.message;
  throw error;
}

describe("the selection in Excel", () => {
  test("is told with its sheet, its formula and what stands in it", async () => {
    expect(await excel.selection()).toEqual({ sheet: "Plan", range: "B1", cells: 1, formula: FORMULA, found: 2.75 });
  });

  test("of several cells is told by its first", async () => {
    fake.workbook.select("O'Brien's bench", "A1:B2");
    const selection = await excel.selection();
    expect(selection).toEqual({ sheet: "O'Brien's bench", range: "A1:B2", cells: 4, formula: null, found: 58 });
  });

  test("may be a whole column", async () => {
    fake.workbook.select("Plan", "A:A");
    expect(await excel.selection()).toMatchObject({ range: "A1:A1048576", cells: 1_048_576, found: 0.275 });
  });

  test("tells an empty cell, and a cell in error by its code", async () => {
    fake.workbook.select("Plan", "Z9");
    expect(await excel.selection()).toMatchObject({ formula: null, found: null });
    fake.workbook.sheet("Plan").put("C1", "=CANYARD.RUN_MINUTES(A1)", "#NAME?");
    fake.workbook.select("Plan", "C1");
    expect((await excel.selection()).found).toEqual({ code: "#NAME?", message: "" });
  });

  test("takes text for text, although it looks like an error or a formula", async () => {
    fake.workbook.sheet("Plan").putText("D1", "#N/A").putText("D2", "=CANYARD.RUN_MINUTES(1, 2)");
    fake.workbook.select("Plan", "D1");
    expect((await excel.selection()).found).toBe("#N/A");
    fake.workbook.select("Plan", "D2");
    expect((await excel.selection()).formula).toBeNull();
  });
});

describe("cells that a formula names are read from Excel", () => {
  test.each([
    ["A1", "Plan", [[0.275]]],
    ["$A$1:$A$2", "Plan", [[0.275], [6]]],
    ["Plan!A2", "O'Brien's bench", [[6]]],
    [
      "'O''Brien''s bench'!A1:B2",
      "Plan",
      [
        [58, 63],
        ["dry", true],
      ],
    ],
    ["a1", "o'brien's bench", [[58]]],
    ["Z1:Z2", "Plan", [[null], [null]]],
  ])("%s on %s", async (expression, sheet, rows) => {
    expect(await excel.evaluate(expression, sheet)).toEqual(rows);
  });

  test("a named range, whatever the length and the letters of its name", async () => {
    for (const name of ["net", "EC", "Verdünnung", "zone.flow", "ZON1"]) {
      fake.workbook.names.set(name, { cells: "A1:A2", on: "Plan" });
      expect(await excel.evaluate(name, "O'Brien's bench")).toEqual([[0.275], [6]]);
    }
  });

  test("a sheet's own name goes before the workbook's of the same spelling", async () => {
    fake.workbook.names.set("flow", { cells: "A1", on: "Plan" });
    fake.workbook.sheet("O'Brien's bench").names.set("flow", { cells: "B1", on: "O'Brien's bench" });
    expect(await excel.evaluate("flow", "O'Brien's bench")).toEqual([[63]]);
    expect(await excel.evaluate("flow", "Plan")).toEqual([[0.275]]);
  });

  test("a name that stands for a number gives the number; one for a list is left to the sheet", async () => {
    fake.workbook.names.set("target", { value: 0.15 });
    fake.workbook.names.set("list", { value: [[1, 2]] });
    fake.workbook.names.set("lost", { value: "#REF!" });
    expect(await excel.evaluate("target", "Plan")).toEqual([[0.15]]);
    expect(await excel.evaluate("list", "Plan")).toBeNull();
    expect(await excel.evaluate("lost", "Plan")).toBeNull();
  });

  test.each([
    "A1*Plan!A2",
    "unknown_name",
    "SUM(A1:A2)",
    "A1#",
    "Table1[Flow]",
    "Plan:Other!A1",
    "[Book2.xlsx]Plan!A1",
    "'[Book2.xlsx]Plan'!A1",
    '"A1"',
    "#REF!",
    "XFE1",
    "A0",
  ])("%s is left to the sheet", async (expression) => {
    expect(await excel.evaluate(expression, "Plan")).toBeNull();
  });

  test.each(["A:A", "Plan!$A:$C", "A1:CV1001", "A1:XFD1048576"])(
    "%s is too large, and not read",
    async (expression) => {
      expect(await sentenceOf(excel.evaluate(expression, "Plan"))).toBe(
        "That range is too large to be read here: name 100,000 cells or fewer, not whole columns.",
      );
    },
  );

  test("a whole row is read", async () => {
    expect((await excel.evaluate("2:2", "Plan"))?.[0]?.slice(0, 2)).toEqual([6, null]);
  });

  test("a sheet that is missing is told", async () => {
    expect(await sentenceOf(excel.evaluate("Gone!A1", "Plan"))).toBe(
      "That sheet, range or name is not in this workbook.",
    );
  });
});

describe("a formula is written into the selected cell", () => {
  test("of one cell, as one step of undo", async () => {
    fake.workbook.select("Plan", "C3");
    expect(await excel.writeFormula(FORMULA, false)).toEqual({ written: "C3" });
    expect(fake.undo).toEqual([[{ sheet: "Plan", address: "C3", content: FORMULA }]]);
    expect(fake.calls[0]).toBe(AS_ONE_STEP);
  });

  test("it asks before it replaces: a formula is shown as a formula, a value as the grid shows it", async () => {
    expect(await excel.writeFormula(FORMULA, false)).toEqual({ occupiedBy: FORMULA, address: "B1" });
    fake.workbook.sheet("Plan").put("C1", 45_488, 45_488, "15 July").put("C2", 0).put("C3", 7, 7, "");
    for (const [address, shown] of [
      ["C1", "15 July"],
      ["C2", "0"],
      ["C3", "7"],
    ] as const) {
      fake.workbook.select("Plan", address);
      expect(await excel.writeFormula(FORMULA, false)).toEqual({ occupiedBy: shown, address });
    }
    expect(fake.writes).toEqual([]);
  });

  test("after a yes it replaces, again as one step of undo", async () => {
    expect(await excel.writeFormula("=1+1", true)).toEqual({ written: "B1" });
    expect(fake.undo).toEqual([[{ sheet: "Plan", address: "B1", content: "=1+1" }]]);
  });

  test("never into several cells, not even after a yes", async () => {
    fake.workbook.select("Plan", "C1:C2");
    for (const replace of [false, true]) {
      expect(await sentenceOf(excel.writeFormula(FORMULA, replace))).toBe(
        "Select one cell for the formula, then insert it.",
      );
    }
    expect(fake.writes).toEqual([]);
  });

  test("without its own step of undo where the host has none", async () => {
    fake.workbook.select("Plan", "C3");
    for (const support of ["refuses", "does not know it"] as const) {
      fake.undoSupport = support;
      expect(await excel.writeFormula(FORMULA, true)).toEqual({ written: "C3" });
    }
    expect(fake.undo).toHaveLength(2);
    expect(fake.writes).toHaveLength(2);
  });

  test("after the person has finished with the cell that is being edited", async () => {
    fake.workbook.select("Plan", "C3");
    fake.startEditing();
    let isWritten = false;
    const writing = excel.writeFormula(FORMULA, false).then(() => (isWritten = true));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(isWritten).toBe(false);
    expect(fake.writes).toEqual([]);
    fake.endEditing();
    await writing;
    expect(fake.writes).toHaveLength(1);
  });

  test("on a protected sheet only into an open cell", async () => {
    const sheet = fake.workbook.sheet("Plan");
    sheet.isProtected = true;
    sheet.openCells.add("C4");
    fake.workbook.select("Plan", "C3");
    expect(await sentenceOf(excel.writeFormula(FORMULA, false))).toBe(
      "This sheet is protected. Unprotect it, or choose a cell that is open.",
    );
    expect(fake.writes).toEqual([]);
    fake.workbook.select("Plan", "C4");
    expect(await excel.writeFormula(FORMULA, false)).toEqual({ written: "C4" });
  });
});

describe("the formulas of a sheet", () => {
  test("are told with their address and what they gave, and nothing else is", async () => {
    const sheet = fake.workbook.sheet("Plan").putText("B2", "=CANYARD.RUN_MINUTES(1, 2)");
    sheet.put("AB12", "=CANYARD.RUN_MINUTES(A1)", "#NAME?");
    expect(await excel.formulas()).toEqual({
      sheet: "Plan",
      cells: [
        { address: "B1", formula: FORMULA, found: 2.75 },
        { address: "AB12", formula: "=CANYARD.RUN_MINUTES(A1)", found: { code: "#NAME?", message: "" } },
      ],
    });
  });

  test("of an empty sheet are none", async () => {
    fake.workbook.addSheet("Blank");
    fake.workbook.select("Blank", "A1");
    expect(await excel.formulas()).toEqual({ sheet: "Blank", cells: [] });
  });

  test("of a large sheet are read in blocks, and all are found", async () => {
    const sheet = fake.workbook.addSheet("Weather");
    for (const row of [1, 20_000, 45_000, 60_000]) sheet.put(`B${row}`, FORMULA, row);
    sheet.put("C60001", 1);
    fake.workbook.select("Weather", "A1");
    const { cells } = await excel.formulas();
    expect(cells.map(({ address }) => address)).toEqual(["B1", "B20000", "B45000", "B60000"]);
    const blocks = fake.calls.filter((call) => call.startsWith("Worksheet.getRangeByIndexes"));
    expect(blocks).toEqual([
      "Worksheet.getRangeByIndexes(0, 1, 25000, 2)",
      "Worksheet.getRangeByIndexes(25000, 1, 25000, 2)",
      "Worksheet.getRangeByIndexes(50000, 1, 10001, 2)",
    ]);
  });

  test("are entered anew on the sheet that is named, all as one step of undo", async () => {
    fake.workbook.calculate = () => 2.75;
    fake.workbook.sheet("Plan").put("C1", FORMULA, "#NAME?").put("C2", FORMULA, "#NAME?");
    const { sheet, cells } = await excel.formulas();
    fake.workbook.select("O'Brien's bench", "A1");
    await excel.enter(
      sheet,
      cells.filter(({ found }) => typeof found === "object"),
    );
    expect(fake.undo).toEqual([
      [
        { sheet: "Plan", address: "C1", content: FORMULA },
        { sheet: "Plan", address: "C2", content: FORMULA },
      ],
    ]);
    expect(fake.calls).toContain(AS_ONE_STEP);
    fake.workbook.select("Plan", "A1");
    expect((await excel.formulas()).cells.map(({ found }) => found)).toEqual([2.75, 2.75, 2.75]);
  });

  test("stay as they are on a protected sheet", async () => {
    fake.workbook.sheet("Plan").isProtected = true;
    expect(await sentenceOf(excel.enter("Plan", [{ address: "B1", formula: FORMULA }]))).toMatch(
      /^This sheet is protected/,
    );
    expect(fake.writes).toEqual([]);
  });
});

describe("every failure of Excel ends as a sentence", () => {
  const methods: Readonly<Record<string, () => Promise<unknown>>> = {
    selection: () => excel.selection(),
    evaluate: () => excel.evaluate("A1", "Plan"),
    "evaluate a name": () => excel.evaluate("net", "Plan"),
    writeFormula: () => excel.writeFormula(FORMULA, true),
    formulas: () => excel.formulas(),
    enter: () => excel.enter("Plan", [{ address: "B1", formula: FORMULA }]),
  };
  const codes = [
    "InvalidSelection",
    "InvalidOperationInCellEditMode",
    "AccessDenied",
    "GeneralException",
    "ItemNotFound",
    "InvalidReference",
    "InvalidArgument",
    "ApiNotFound",
    "ResponsePayloadSizeLimitExceeded",
    "SomethingNeverSeenBefore",
  ];

  test.each(Object.keys(methods).flatMap((name) => codes.map((code) => [name, code] as const)))(
    "%s: %s",
    async (name, code) => {
      fake.failures.push(code);
      const sentence = await sentenceOf((methods[name] as () => Promise<unknown>)());
      expect(sentence).toMatch(/^[A-Z].*\.$/);
      expect(sentence).not.toContain("RichApi");
    },
  );

  test.each(["selection", "writeFormula", "formulas"])("%s, while another workbook is active", async (name) => {
    fake.workbook.selectOtherThings();
    expect(await sentenceOf((methods[name] as () => Promise<unknown>)())).toBe(
      "Click one cell of this workbook first: several blocks, a drawing or another workbook are selected.",
    );
  });

  test("of an unknown kind names its code", async () => {
    fake.failures.push("SomethingNeverSeenBefore");
    expect(await sentenceOf(excel.selection())).toBe("Excel could not do that (SomethingNeverSeenBefore).");
  });

  test("and so does one that is no error of the host at all", async () => {
    setGlobal("Excel", { run: () => Promise.reject(new TypeError("x is undefined")) });
    expect(await sentenceOf(excel.selection())).toBe("Excel could not do that (no reason given).");
    expect(await sentenceOf(excel.enter("Plan", []))).toBe("Excel could not do that (no reason given).");
  });

  test("a failure after the first answer ends as a sentence too", async () => {
    fake.failures.push("", "", "GeneralException");
    expect(await sentenceOf(excel.writeFormula(FORMULA, true))).toMatch(/^Excel did not take that/);
  });
});

describe("the pane follows the selection in Excel", () => {
  const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));

  test("until it is told to stop, and leaves no handler behind", async () => {
    const listener = jest.fn();
    const stop = excel.onSelection(listener);
    await settled();
    await fake.select("Plan", "A2");
    await fake.select("Plan", "A1");
    expect(listener).toHaveBeenCalledTimes(2);
    stop();
    await settled();
    expect(fake.handlers.size).toBe(0);
    await fake.select("Plan", "A2");
    expect(listener).toHaveBeenCalledTimes(2);
  });

  test("told to stop before Excel has answered, it leaves no handler behind either", async () => {
    const listener = jest.fn();
    fake.startEditing();
    excel.onSelection(listener)();
    fake.endEditing();
    await settled();
    expect(fake.calls).toContain("EventHandlerResult.remove()");
    expect(fake.handlers.size).toBe(0);
    await fake.select("Plan", "A2");
    expect(listener).not.toHaveBeenCalled();
  });

  test("where Excel refuses to tell of it, the pane goes on without", async () => {
    fake.failures.push("GeneralException");
    const stop = excel.onSelection(() => undefined);
    await settled();
    expect(fake.handlers.size).toBe(0);
    expect(stop).not.toThrow();
    await settled();
  });
});

describe("Excel is there only where its library says so", () => {
  const office = (host: unknown): unknown => ({
    onReady: () => Promise.resolve({ host }),
    HostType: { Excel: "Excel" },
  });
  const scriptElement = (): HTMLScriptElement => new EventTarget() as HTMLScriptElement;

  test("no library on the page: it is not", async () => {
    expect(await excelWhenReady(null)).toBeNull();
  });

  test("a library that could not be fetched: it is not", async () => {
    const script = scriptElement();
    const ready = excelWhenReady(script);
    script.dispatchEvent(new Event("error"));
    expect(await ready).toBeNull();
  });

  test("a library that never comes: nothing is answered, so the pane stays a plain page", async () => {
    const answered = jest.fn();
    void excelWhenReady(scriptElement()).then(answered);
    await new Promise((resolve) => setTimeout(resolve, 120));
    expect(answered).not.toHaveBeenCalled();
  });

  test("a library that comes late, inside Excel: it is", async () => {
    const script = scriptElement();
    const ready = excelWhenReady(script);
    setGlobal("Office", office("Excel"));
    script.dispatchEvent(new Event("load"));
    expect(await ready).toBe(excel);
  });

  test("a file in the library's place that brings no Office: it is not", async () => {
    const script = scriptElement();
    const ready = excelWhenReady(script);
    script.dispatchEvent(new Event("load"));
    expect(await ready).toBeNull();
  });

  test.each([
    ["Excel", excel],
    ["Word", null],
    [null, null],
  ])("a library that is there and says %s", async (host, expected) => {
    setGlobal("Office", office(host));
    expect(await excelWhenReady(scriptElement())).toBe(expected);
  });

  test("a library that fails to start: it is not", async () => {
    setGlobal("Office", { onReady: () => Promise.reject(new Error("raw")), HostType: { Excel: "Excel" } });
    expect(await excelWhenReady(scriptElement())).toBeNull();
  });
});

describe("the theme of Excel", () => {
  test.each([
    ["a dark one by its own word", { bodyBackgroundColor: "#FFFFFF", isDarkTheme: true }, { isDark: true }],
    ["a light one by its own word", { bodyBackgroundColor: "#000000", isDarkTheme: false }, { isDark: false }],
    ["a dark one by its colour", { bodyBackgroundColor: "#262626" }, { isDark: true }],
    ["a light one by its colour", { bodyBackgroundColor: "#E6E6E6" }, { isDark: false }],
    ["a colour that cannot be read, taken for light", { bodyBackgroundColor: "window" }, { isDark: false }],
  ])("%s", (_kind, officeTheme, expected) => {
    setGlobal("Office", { context: { officeTheme } });
    expect(hostTheme()).toEqual(expected);
  });

  test("is unknown without the library, before it is ready, and where the host tells none", () => {
    expect(hostTheme()).toBeNull();
    setGlobal("Office", {});
    expect(hostTheme()).toBeNull();
    setGlobal("Office", { context: {} });
    expect(hostTheme()).toBeNull();
  });
});

describe("whether a workbook starts the add-in by itself", () => {
  const asked: string[] = [];
  let kept = "none";
  beforeEach(() => {
    asked.length = 0;
    kept = "none";
    setGlobal("Office", {
      StartupBehavior: { load: "Load", none: "None" },
      addin: {
        getStartupBehavior: () => Promise.resolve(kept),
        setStartupBehavior: (behaviour: string) => {
          asked.push(behaviour);
          kept = behaviour;
          return Promise.resolve();
        },
      },
    });
  });

  test("is read from the host and changed there", async () => {
    expect(await excel.startup!.read()).toBe(false);
    await excel.startup!.set(true);
    expect(await excel.startup!.read()).toBe(true);
    await excel.startup!.set(false);
    expect([asked, await excel.startup!.read()]).toEqual([["Load", "None"], false]);
  });
});
