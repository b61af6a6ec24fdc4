import { FakeExcel } from "../rig/fakeExcel";
import { FakeHostError, hostObject, type Batch } from "../rig/hostObject";

type Work = (context: Excel.RequestContext) => Promise<unknown>;

function fakeWithCells(): FakeExcel {
  const fake = new FakeExcel();
  fake.workbook.addSheet("Plan").put("A1", 0.275).put("A2", 6);
  fake.workbook.select("Plan", "A1");
  return fake;
}

const write: Work = async (context) => {
  const range = context.workbook.worksheets.getItem("Plan").getRange("B1");
  range.formulas = [["=1+1"]];
  await context.sync();
  range.formulas = [["=2+2"]];
  await context.sync();
};

describe("the fake of Excel is as strict as the host", () => {
  test("it refuses a member that it does not declare, by name", async () => {
    const fake = fakeWithCells();
    const work: Work = async ({ workbook }) => workbook.getSelectedRange().sort;
    await expect(fake.run(work)).rejects.toThrow("NotDeclared");
    expect(fake.misuses).toEqual(["NotDeclared: Range.sort"]);
  });

  test("it refuses to load and to write what it does not declare", async () => {
    const fake = fakeWithCells();
    await expect(
      fake.run((async ({ workbook }) => workbook.getSelectedRange().load("hidden")) as Work),
    ).rejects.toThrow();
    const writeValues: Work = async ({ workbook }) => (workbook.getSelectedRange().values = [[1]]);
    await expect(fake.run(writeValues)).rejects.toThrow();
    expect(fake.misuses).toEqual(["NotDeclared: Range.hidden", "NotDeclared: writing Range.values"]);
  });

  test("it declares nothing that Excel's types do not", () => {
    const batch: Batch = {
      queue: () => undefined,
      recordCall: () => undefined,
      refuse: (code) => {
        throw new FakeHostError(code);
      },
    };
    const range = hostObject<Excel.Range>(batch, {
      kind: "Range",
      properties: {
        // @ts-expect-error Excel's ranges have an address, not an adress
        adress: () => "A1",
      },
    });
    expect(() => range.address).toThrow("NotDeclared");
  });

  test.each<[string, (range: Excel.Range, sync: () => Promise<unknown>) => Promise<unknown>]>([
    ["before load", async (range, sync) => sync().then(() => range.address)],
    ["before sync", async (range) => range.load("address") && range.address],
    [
      "of another property than was loaded",
      async (range, sync) => range.load("text") && sync().then(() => range.values),
    ],
  ])("it refuses a read %s", async (_when, read) => {
    const fake = fakeWithCells();
    await expect(
      fake.run((context: Excel.RequestContext) => read(context.workbook.getSelectedRange(), () => context.sync())),
    ).rejects.toThrow("PropertyNotLoaded");
    expect(fake.misuses).toHaveLength(1);
  });

  test("it refuses methods of a null object", async () => {
    const fake = fakeWithCells();
    const work: Work = async (context) => {
      const item = context.workbook.names.getItemOrNullObject("nothing");
      item.load("isNullObject");
      await context.sync();
      return item.getRange();
    };
    await expect(fake.run(work)).rejects.toThrow("InvalidObjectPath");
  });

  test("it refuses while a cell is edited, unless the run may wait", async () => {
    const fake = fakeWithCells();
    fake.startEditing();
    await expect(fake.run(write)).rejects.toMatchObject({ code: "InvalidOperationInCellEditMode" });
    expect(fake.writes).toEqual([]);
    const waiting = fake.run({ delayForCellEdit: true }, write);
    fake.endEditing();
    await waiting;
    expect(fake.writes.map(({ content }) => content)).toEqual(["=1+1", "=2+2"]);
  });

  test("each sync with writes is a step of undo, unless the run is merged into one", async () => {
    const fake = fakeWithCells();
    await fake.run(write);
    expect(fake.undo).toHaveLength(2);
    await fake.run({ mergeUndoGroup: true }, write);
    expect(fake.undo).toHaveLength(3);
    fake.undoSupport = "does not know it";
    await fake.run({ mergeUndoGroup: true }, write);
    expect(fake.undo).toHaveLength(5);
  });

  test("a host without groups refuses the write, and keeps the cell", async () => {
    const fake = fakeWithCells();
    fake.undoSupport = "refuses";
    await expect(fake.run({ mergeUndoGroup: true }, write)).rejects.toMatchObject({ code: "UndoNotSupported" });
    expect(fake.writes).toEqual([]);
  });

  test("it refuses a member of a later version of the host's library, by the published types", async () => {
    const fake = fakeWithCells();
    fake.version = "1.8";
    const page: Work = async ({ workbook }) => workbook.worksheets.getItem("Plan").pageLayout;
    await expect(fake.run(page)).rejects.toMatchObject({ code: "ApiNotFound" });
    expect(fake.misuses).toEqual(["ApiNotFound: Worksheet.pageLayout is of ExcelApi 1.9"]);
    fake.version = "1.9";
    await fake.run(page);
    expect(fake.misuses).toHaveLength(1);
  });

  test("the removal of a sheet is refused within a group, and outside of one leaves nothing to undo", async () => {
    const fake = fakeWithCells();
    fake.workbook.addSheet("Spare");
    const remove: Work = async (context) => {
      context.workbook.worksheets.getItem("Spare").delete();
      await context.sync();
    };
    await fake.run(write);
    await expect(fake.run({ mergeUndoGroup: true }, remove)).rejects.toMatchObject({ code: "UndoNotSupported" });
    expect(fake.workbook.find("Spare")).not.toBeNull();
    await fake.run(remove);
    expect(fake.workbook.find("Spare")).toBeNull();
    expect(fake.undo).toEqual([]);
  });

  test("formats, sheets and names are steps of undo as well", async () => {
    const fake = fakeWithCells();
    await fake.run({ mergeUndoGroup: true }, (async (context) => {
      const sheet = context.workbook.worksheets.add("New");
      sheet.getRange("A1:B2").format.fill.color = "#FFF7D6";
      context.workbook.names.add("flow", sheet.getRange("B2"));
      await context.sync();
    }) as Work);
    expect(fake.undo).toEqual([
      [
        { sheet: "New", at: "", what: "added", value: "New" },
        { sheet: "New", at: "A1:B2", what: "format.fill.color", value: "#FFF7D6" },
        { sheet: "", at: "flow", what: "named", value: "New!B2" },
      ],
    ]);
    expect(fake.workbook.sheet("New").setting("B1", "format.fill.color")).toBe("#FFF7D6");
    expect(fake.workbook.sheet("New").setting("C1", "format.fill.color")).toBeUndefined();
  });

  test.each([
    ["a sheet", (workbook: Excel.Workbook) => workbook.worksheets.add("plan")],
    ["a name", (workbook: Excel.Workbook) => workbook.names.add("Flow", workbook.getSelectedRange())],
    ["a table", (workbook: Excel.Workbook) => workbook.names.add("bills", workbook.getSelectedRange())],
  ])("it refuses a name that %s has, in whatever letters", async (_what, add) => {
    const fake = fakeWithCells();
    fake.workbook.names.set("flow", { value: 1 });
    fake.workbook.tables.push("Bills");
    const work = async (context: Excel.RequestContext): Promise<unknown> => add(context.workbook) && context.sync();
    await expect(fake.run(work)).rejects.toMatchObject({ code: "ItemAlreadyExists" });
  });

  test("an answer of several cells spills where they are free, and nowhere else", async () => {
    const fake = fakeWithCells();
    fake.workbook.calculate = () => [
      [1, 2],
      [3, 4],
    ];
    const enter = (address: string) =>
      fake.run(async (context: Excel.RequestContext) => {
        context.workbook.worksheets.getItem("Plan").getRange(address).formulas = [["=TABLE()"]];
        await context.sync();
      });
    await enter("C1");
    await enter("B1");
    const sheet = fake.workbook.sheet("Plan");
    expect([sheet.cell(0, 2), sheet.cell(1, 3)].map(({ value }) => value)).toEqual([1, 4]);
    expect(sheet.cell(0, 1).value).toBe("#SPILL!");
  });

  test("it tells of a bare text that the host would take for a number, a date or a time", async () => {
    const fake = fakeWithCells();
    await fake.run((async (context) => {
      const range = context.workbook.worksheets.getItem("Plan").getRange("B1:F1");
      range.formulas = [["1:100", "Mar 5", "'3/4", "gal/h", "TRUE"]];
      await context.sync();
    }) as Work);
    expect(fake.workbook.misread).toEqual(["Plan!B1: 1:100", "Plan!C1: Mar 5", "Plan!F1: TRUE"]);
    expect(fake.workbook.sheet("Plan").cell(0, 3)).toMatchObject({ value: "3/4", isText: true });
  });

  test("it records each call with what was given", async () => {
    const fake = fakeWithCells();
    await fake.run(write);
    expect(fake.calls).toEqual([
      "Excel.run({})",
      'WorksheetCollection.getItem("Plan")',
      'Worksheet.getRange("B1")',
      "sync()",
      "sync()",
    ]);
  });
});
