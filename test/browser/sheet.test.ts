import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { connectBrowser } from "../rig/browserPage";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

describe("the page that npm start serves", () => {
  test("=CANYARD.RUN_MINUTES(0.275, 6) typed into a cell gives 2.75", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.startBlank();
    await sheet.type("B2", "=CANYARD.RUN_MINUTES(0.275, 6)");
    expect(await sheet.line()).toMatchObject({ address: "B2", value: "2.75", message: "" });
    await page.context().close();
  });

  test("a wrong formula shows the whole text of its error, and IFERROR catches it", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.startBlank();
    await sheet.type("B2", "=CANYARD.RUN_MINUTES(0.275, 0)");
    const { value, message } = await sheet.line();
    expect(value).toBe("#ERROR");
    expect(message).toBe("RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)");
    await sheet.type("B3", '=IFERROR(B2, "look")');
    expect((await sheet.line()).value).toBe("look");
    await sheet.type("B4", "=CANYARD.RUN_MINUTES_FROM_LEACHING(20, 0, 0.15)");
    expect(await sheet.line()).toMatchObject({
      value: "#N/A",
      message: expect.stringContaining("where nothing leached the test cannot tell"),
    });
    await page.context().close();
  });

  test("an input is changed and the whole chain follows, to the pulses and back from the checks", async () => {
    const { page, sheet } = await openSheet(browser);
    // Doubling the area per plant doubles net water, gross water and minutes: 21.27 becomes 42.54.
    expect(await sheet.valueOf("Plan!D27")).toBe("21.3");
    await sheet.type("Plan!D17", "7");
    expect(await sheet.valueOf("Plan!D27")).toBe("42.5");
    // Three pulses of 42.54 / 3 + 1 minute to fill the line.
    expect(await sheet.valueOf("Pulses!D6")).toBe("15.2");
    expect(await sheet.valueOf("Plan!A3")).toBe("All checks OK");
    await sheet.type("Plan!D17", "14");
    expect(await sheet.valueOf("Plan!A3")).toBe("See the checks below");
    await page.context().close();
  });

  test("a reload finds the work still there", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.type("Plan!D16", "0.9");
    await sheet.saved();
    await page.reload();
    await sheet.ready();
    expect(await sheet.valueOf("Plan!D16")).toBe("0.90");
    // 21.27 minutes x 0.9 / 1.1
    expect(await sheet.valueOf("Plan!D27")).toBe("17.4");
    await page.context().close();
  });

  test("a workbook is saved to a file and opened from it", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.type("Plan!D16", "0.8");
    const saving = page.waitForEvent("download");
    await page.getByRole("button", { name: "Save as file…" }).click();
    const file = join(mkdtempSync(join(tmpdir(), "canyard-")), "plan.canyard.json");
    await (await saving).saveAs(file);
    await sheet.startBlank();
    await page.locator("#file-field").setInputFiles(file);
    await page.getByRole("button", { name: "Open the file" }).click();
    await page.waitForFunction(() => document.title.startsWith("Tern Hollow"));
    expect(await sheet.valueOf("Plan!D16")).toBe("0.80");
    await page.context().close();
  });

  test("a file of another kind is refused in a sentence and changes nothing", async () => {
    const { page, sheet } = await openSheet(browser);
    await page.locator("#file-field").setInputFiles({
      name: "photo.json",
      mimeType: "application/json",
      buffer: Buffer.from('{"hello": 1}'),
    });
    await page.waitForFunction(() => (document.getElementById("notices")?.textContent ?? "") !== "");
    expect(await page.locator("#notices").textContent()).toMatch(
      /“photo\.json” was not opened\. .+ The present workbook is unchanged\./,
    );
    expect(await sheet.valueOf("Plan!D27")).toBe("21.3");
    await page.context().close();
  });

  test("nothing is asked from elsewhere, and the page complains of nothing", async () => {
    const { page, sheet, foreign, complaints } = await openSheet(browser);
    await sheet.type("Plan!D16", "1.2");
    await sheet.saved();
    expect(foreign).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  });

  test("the argument help of the formula in hand names the arguments", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.startBlank();
    await sheet.select("B2");
    await page.keyboard.type("=CANYARD.GROSS_WATER(1,");
    const help = page.locator(".o-formula-assistant");
    await help.first().waitFor();
    expect(await help.first().textContent()).toContain("leaching_fraction");
    await page.context().close();
  });

  test("at 350 pixels the page does not scroll sideways", async () => {
    const { page } = await openSheet(browser, { viewport: { width: 350, height: 700 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(350);
    await page.context().close();
  });
});
