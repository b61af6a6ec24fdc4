import "../../rig/xmlInNode";
import * as functions from "../../../src/functions";
import { openXlsx, saveXlsx } from "../../../src/sheet/xlsx";
import { starters } from "../../../src/workbooks/starters";
import { finish } from "../../../tools/starters/finish";
import { withOurFunctions } from "../../../tools/starters/layOut";
import { xlsxOf } from "../../../tools/starters/xlsx";
import type { HeadlessSheet } from "../../rig/sheetEngine";
import { createHeadlessSheet, quietly } from "../../rig/sheetEngine";

const { engine, open, opened } = createHeadlessSheet(functions);

/** Every formula of every sheet without its blanks: `Work!D6: =SUM(A1:A2)`. */
function formulasOf({ sheet: { adapter } }: HeadlessSheet, sheets: readonly { readonly name: string }[]): string[] {
  return sheets.flatMap(({ name }) =>
    adapter.formulas(name).map(({ address, formula }) => `${name}!${address}: ${formula.replace(/\s/g, "")}`),
  );
}

describe.each(starters.map((kind) => [kind.title, kind] as const))("%s", (_, kind) => {
  const starter = kind.build("us");
  const { sheets } = starter.workbook;
  const before = open(starter.workbook);

  test("loses nothing when the browser sheet saves it as an Excel file", async () => {
    const saving = quietly(() => saveXlsx(engine, before.sheet.model));
    const { debug } = console;
    console.debug = () => {};
    const { bytes, leftOut } = await saving;
    console.debug = debug;
    // It compares every formula with that in the file itself; saving.test.ts shows that it would tell.
    expect(leftOut).toEqual([]);
    expect(bytes.length).toBeGreaterThan(10_000);
  });

  test("opens in the browser sheet from the file that npm run starters writes, with every formula and answer", async () => {
    const { title, edition } = starter;
    const bytes = await xlsxOf(withOurFunctions(finish(starter.workbook)), { title, edition });
    const file = quietly(() => openXlsx(engine, bytes, "file"));
    const sheet = opened(file.workbook.data);
    expect(formulasOf(sheet, sheets).sort()).toEqual(formulasOf(before, sheets).sort());
    expect(file.leftOut(sheet.sheet.adapter)).toEqual([
      "How the sheets are to be printed is left out.",
      "The protection of sheets is lifted: here every cell can be changed.",
    ]);
  });
});
