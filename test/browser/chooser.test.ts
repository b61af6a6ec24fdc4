import type { Browser } from "playwright-core";
import { seriousFaults } from "../rig/accessibility";
import { connectBrowser } from "../rig/browserPage";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

const LOOKS = [
  ["320 pixels, light", { viewport: { width: 320, height: 700 } }],
  ["350 pixels, dark", { viewport: { width: 350, height: 700 }, colorScheme: "dark" }],
  ["1280 pixels, light", {}],
] as const;

describe("the workbook to start from", () => {
  test("is offered on the first opening without being in the way, and not on the next", async () => {
    const { page, sheet } = await openSheet(browser);
    expect(await sheet.valueOf("Plan!A3")).toBe("All checks OK");
    await page.getByRole("button", { name: "Choose a workbook…" }).click();
    expect(await page.locator("#chooser").evaluate((dialog) => (dialog as HTMLDialogElement).open)).toBe(true);
    await page.keyboard.press("Escape");
    await sheet.type("Plan!D16", "0.9");
    await sheet.saved();
    await page.reload();
    await sheet.ready();
    expect(await page.locator(".notice").count()).toBe(0);
    await page.context().close();
  });

  test("is chosen by keyboard alone, in the units of the browser's language, and is then the workbook", async () => {
    const { page, sheet } = await openSheet(browser, { locale: "en-GB" });
    await page.locator("#new").focus();
    await page.keyboard.press("Enter");
    await page.locator("#chooser-list button").nth(5).waitFor();
    expect(await page.getByLabel("metric units").isChecked()).toBe(true);
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain("Zone planner");
    await page.keyboard.press("Enter");
    await page.waitForFunction(() => document.title.startsWith("Zone planner, metric"));
    await sheet.ready();
    expect(await sheet.valueOf("Inputs!A1")).not.toBe("empty");
    await page.context().close();
  });

  test("does not take the place of one's own work unasked", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.type("Plan!D16", "0.9");
    await page.getByRole("button", { name: "New…" }).click();
    await page.locator("#chooser-list button").filter({ hasText: "Zone planner" }).click();
    await page
      .locator("#question-text")
      .filter({ hasText: /^Put “Zone planner, .+” in the place of “Tern Hollow/ })
      .waitFor();
    await page.getByRole("button", { name: "Keep the present one" }).click();
    expect(await sheet.valueOf("Plan!D16")).toBe("0.90");
    await page.context().close();
  });

  test("is opened from the help beside the sheet as well, after the same question", async () => {
    const { page, sheet } = await openSheet(browser);
    await sheet.type("Plan!D16", "0.9");
    const help = page.frameLocator("#help iframe");
    await help.getByRole("link", { name: "Workbooks" }).click();
    await help.getByRole("button", { name: "Open in the sheet: Uniformity audit" }).click();
    await page.getByRole("button", { name: "Start from it" }).click();
    await page.waitForFunction(() => document.title.startsWith("Uniformity audit"));
    await page.context().close();
  });

  test("that cannot be fetched is said in a sentence, and the others are there all the same", async () => {
    const { page, sheet } = await openSheet(browser);
    await page.route("**/starters/**", (route) => route.abort());
    await page.getByRole("button", { name: "New…" }).click();
    const problem = page.locator("#chooser-problem");
    await problem.filter({ hasText: "could not be fetched" }).waitFor();
    await page.locator("#chooser-list button").filter({ hasText: "A blank workbook" }).click();
    await page.waitForFunction(() => document.title.startsWith("Untitled"));
    await page.unroute("**/starters/**");
    await page.route("**/starters/zone-planner-*", (route) => route.abort());
    await page.getByRole("button", { name: "New…" }).click();
    await page.locator("#chooser-list button").filter({ hasText: "Zone planner" }).click();
    await page.locator(".notice").filter({ hasText: "“Zone planner” could not be fetched" }).waitFor();
    expect(await sheet.valueOf("A1")).toBe("empty");
    await page.context().close();
  });
});

describe.each(LOOKS)("at %s", (_, options) => {
  test("an accessibility checker finds nothing serious in the dialogs, and nothing runs over the edge", async () => {
    const { page, sheet } = await openSheet(browser, options);
    const width = options && "viewport" in options ? options.viewport.width : 1280;
    const widths: number[] = [];
    const measure = async () =>
      void widths.push(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth));
    await measure();
    await page.getByRole("button", { name: "New…" }).click();
    await page.locator("#chooser-list button").nth(5).waitFor();
    const found = { chooser: await seriousFaults(page), weather: [] as string[] };
    await measure();
    await page.keyboard.press("Escape");
    await sheet.startFrom("Daily demand");
    await page.getByRole("button", { name: "Weather table…" }).click();
    await page.locator("#weather-text").fill("date,tmax,tmin (F),rain\n1/2/2026,30,20,0\n1/2/2027,31,,0\n");
    await page.locator("#weather-columns select").nth(2).waitFor();
    found.weather = await seriousFaults(page);
    await measure();
    expect(found).toEqual({ chooser: [], weather: [] });
    expect([width, Math.max(...widths)]).toEqual([width, 0]);
    await page.context().close();
  });
});
