/** Text from cells, names and files is shown as it was typed; it never becomes markup. */
import type { Browser, Page } from "playwright-core";
import * as functions from "../../src/functions";
import { connectBrowser } from "../rig/browserPage";
import { createHeadlessSheet } from "../rig/sheetEngine";
import { openSheet } from "../rig/sheetOnPage";

const HOSTILE = "<img src=x onerror=\"window.hurt='yes'\"><script>window.hurt='yes'</script>";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

/** What of the text became an element of the page, or ran. */
async function harm(page: Page): Promise<unknown> {
  await page.waitForTimeout(200);
  return page.evaluate(() => ({
    ran: (window as unknown as { hurt?: string }).hurt ?? null,
    elements: [...document.querySelectorAll('img[src="x"]')].length,
    scripts: [...document.querySelectorAll("script:not([src])")].length,
  }));
}
const NONE = { ran: null, elements: 0, scripts: 0 };

test("in a cell, in an error's text and in the workbook's name", async () => {
  const { page, sheet } = await openSheet(browser);
  await sheet.startBlank();
  await page.evaluate((text) => {
    const cells = (window as unknown as { canyardSheet: { write(at: string, text: string): void } }).canyardSheet;
    cells.write("B2", text);
    cells.write("B3", `=CANYARD.UNIT_LABEL("${text.replaceAll('"', '""')}", "", "us")`);
    cells.write("B4", `="${text.replaceAll('"', '""')}"`);
  }, HOSTILE);
  await sheet.select("B3");
  expect((await sheet.line()).message).toContain("<img src=x");
  await sheet.select("B4");
  expect((await sheet.line()).value).toBe(HOSTILE);
  await page.locator("#workbook-name").fill(HOSTILE);
  await page.locator("#workbook-name").press("Enter");
  await page.getByRole("button", { name: "Help" }).click();
  expect(await harm(page)).toEqual(NONE);
  await page.context().close();
});

test("in the names of a workbook file, its sheets, its charts, and of a file that cannot be read", async () => {
  const { page, sheet } = await openSheet(browser);
  const { exportData } = createHeadlessSheet(functions).open({
    name: "Test",
    sheets: [
      {
        name: "Hostile sheet",
        cells: { A1: { value: HOSTILE }, A2: { value: 2 }, B2: { formula: `=A1 & "!"` } },
        charts: [
          {
            type: "columns",
            title: HOSTILE,
            description: "One column, named by a hostile text.",
            labels: "A1:A2",
            series: [{ name: HOSTILE, values: "A1:A2" }],
            position: { cell: "D2", width: 300, height: 200 },
          },
        ],
      },
    ],
  }).sheet;
  const file = JSON.stringify({ format: "Canyard workbook", formatVersion: 1, name: HOSTILE, data: exportData() });
  await page
    .locator("#file-field")
    .setInputFiles([
      { name: `${HOSTILE.replaceAll("/", "")}.json`, mimeType: "application/json", buffer: Buffer.from("no workbook") },
    ]);
  await page.locator("#notices").getByText("was not opened").waitFor();
  expect(await page.locator("#notices").textContent()).toContain("<img src=x");
  await page
    .locator("#file-field")
    .setInputFiles([{ name: "hostile.json", mimeType: "application/json", buffer: Buffer.from(file) }]);
  const question = page.locator("#question");
  await question.waitFor();
  expect(await question.textContent()).toContain("<img src=x");
  await question.getByRole("button", { name: "Open the file" }).click();
  await sheet.ready();
  expect(await harm(page)).toEqual(NONE);
  await page.context().close();
});
