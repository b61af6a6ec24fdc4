import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { connectBrowser } from "../rig/browserPage";
import { packed } from "../rig/packedFile";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

interface Sheet {
  formulas(sheet: string): readonly { readonly address: string; readonly formula: string; readonly found: unknown }[];
}
declare const window: { canyardSheet: Sheet };

const SHEETS = ["Inputs", "Work", "Result", "Checks"];

test("a starter saved as an Excel file and opened again has the same formulas, answers and charts", async () => {
  const { page, sheet, complaints } = await openSheet(browser, { locale: "en-US" });
  await sheet.startFrom("Zone planner");
  const formulas = () => page.evaluate((names) => names.map((name) => window.canyardSheet.formulas(name)), SHEETS);
  const before = await formulas();
  const saving = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as Excel file…" }).click();
  const file = join(mkdtempSync(join(tmpdir(), "canyard-")), (await saving).suggestedFilename());
  await (await saving).saveAs(file);
  expect(file).toMatch(/Zone planner, US units\.xlsx$/);
  expect(await page.locator(".notice").count()).toBe(0);
  await sheet.startBlank();
  await page.locator("#file-field").setInputFiles(file);
  await page.getByRole("button", { name: "Open the file" }).click();
  await page.waitForFunction(() => document.title.startsWith("Zone planner"));
  await sheet.ready();
  expect(await formulas()).toEqual(before);
  expect(await page.locator(".notice").allTextContents()).toEqual([]);
  await sheet.select("Result!G5");
  await page.locator("canvas[role=img][aria-label^='Minutes of each zone']").waitFor();
  await sheet.type("Inputs!D6", "metric");
  expect(await page.locator(".notice").textContent()).toMatch(/^D6 was not changed\. This workbook is in US units/);
  expect(complaints).toEqual([]);
  await page.context().close();
});

test("what an Excel file has and this page has not is listed, and the workbook opens all the same", async () => {
  const { page, sheet } = await openSheet(browser);
  const buffer = Buffer.from(
    packed({
      sheets: {
        Plan: {
          rows: '<row r="1"><c r="A1"><f>_xldudf_canyard_run_minutes(0.275,6)</f><v>2.75</v></c><c r="B1"><f>_xlfn.LAMBDA(1)</f><v>5</v></c></row>',
          after: '<sheetProtection sheet="1"/>',
        },
      },
    }),
  );
  await page.locator("#file-field").setInputFiles({ name: "plan of May.xlsx", mimeType: "application/zip", buffer });
  await page.getByRole("button", { name: "Open the file" }).click();
  await page.waitForFunction(() => document.title.startsWith("plan of May"));
  await sheet.ready();
  const notice = page.locator(".notice").filter({ hasText: "Not all of it could be carried over" });
  expect(await notice.locator("li").allTextContents()).toEqual([
    "The protection of sheets is lifted: here every cell can be changed.",
    expect.stringMatching(/^LAMBDA is a function that this page does not have, in Plan!B1/),
    expect.stringMatching(/^Cells that show something else than in the file: 'Plan'!B1 \(5 in the file/),
  ]);
  expect(await sheet.valueOf("A1")).toBe("2.75");
  expect((await sheet.line()).formula).toBe("=CANYARD.RUN_MINUTES(0.275,6)");
  await page.context().close();
});

test("a packed file without a workbook is refused and changes nothing", async () => {
  const { page, sheet } = await openSheet(browser);
  await page.locator("#file-field").setInputFiles({
    name: "photos.xlsx",
    mimeType: "application/zip",
    buffer: Buffer.from("PK\u0003\u0004 and no more"),
  });
  await page.locator(".notice").filter({ hasText: "“photos.xlsx” was not opened." }).waitFor();
  expect(await sheet.valueOf("Plan!D27")).toBe("21.3");
  await page.context().close();
});
