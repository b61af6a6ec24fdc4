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
    const work: Work = async ({ workbook }) => workbook.getSelectedRange().format;
    await expect(fake.run(work)).rejects.toThrow("NotDeclared");
    expect(fake.misuses).toEqual(["NotDeclared: Range.format"]);
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
