import type { Browser } from "playwright-core";
import { connectBrowser } from "../rig/browserPage";
import { seattleText } from "../rig/seattle";
import { openSheet } from "../rig/sheetOnPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

interface Sheet {
  evaluate(expression: string, sheet: string): readonly (readonly unknown[])[];
  formulas(sheet: string): readonly { readonly formula: string; readonly found: unknown }[];
}
declare const window: { canyardSheet: Sheet };

const SEATTLE = { name: "seattle-weather.csv", mimeType: "text/csv", buffer: Buffer.from(seattleText()) };

test("four years of Seattle give 1,461 days of demand, also after a reload", async () => {
  const { page, sheet, complaints } = await openSheet(browser, { locale: "en-US" });
  expect(await page.getByRole("button", { name: "Weather table…" }).isVisible()).toBe(false);
  await sheet.startFrom("Daily demand");
  await page.getByRole("button", { name: "Weather table…" }).click();
  await page.locator("#weather-file").setInputFiles(SEATTLE);
  const says = page.locator("#weather-says");
  await says.filter({ hasText: "1,461 days, 2012-01-01 to 2015-12-31." }).waitFor();
  expect(await page.locator("#weather-details").textContent()).toContain("No day is incomplete.");
  // The page works all days before the click has ended: seconds on a busy machine.
  await page.getByRole("button", { name: "Bring in" }).click({ timeout: 40_000 });
  await page.locator(".notice").filter({ hasText: "1,461 days" }).waitFor({ timeout: 40_000 });
  const demand = () =>
    page.evaluate(() => {
      const uses = window.canyardSheet.formulas("Days").filter(({ formula }) => formula.includes("PLANT_WATER_DEMAND"));
      return [uses.length, uses.filter(({ found }) => typeof found === "number" && found > 0).length];
    });
  // Every day of these years used some water.
  expect(await demand()).toEqual([1461, 1461]);
  // The last day of the table: 5.6 C and -2.1 C on 31 December 2015, in F.
  const [last] = await page.evaluate(() =>
    window.canyardSheet.evaluate("INDEX(Weather!A:C, MATCH(42369, Weather!A:A, 0), 2)", "Weather"),
  );
  expect(last![0]).toBeCloseTo(5.6 * 1.8 + 32, 9);
  await sheet.saved();
  await page.reload();
  await sheet.ready();
  expect(await demand()).toEqual([1461, 1461]);
  expect(await page.getByRole("button", { name: "Weather table…" }).isVisible()).toBe(true);
  expect(complaints).toEqual([]);
  await page.context().close();
}, 120_000);

test("what is unclear is asked, what is missing is counted, and undo brings the old days back", async () => {
  const { page, sheet } = await openSheet(browser, { locale: "en-US" });
  await sheet.startFrom("Daily demand");
  const before = await page.evaluate(() => window.canyardSheet.evaluate("A1:F40", "Weather"));
  await page.getByRole("button", { name: "Weather table…" }).click();
  await page
    .locator("#weather-text")
    .fill(["date,tmax,tmin", "1/2/2026,33,19", "2/2/2026,,20", "3/2/2026,34,21", "3/2/2026,35,21"].join("\n"));
  const says = page.locator("#weather-says");
  await says.filter({ hasText: "In which unit is “tmax” and “tmin”?" }).waitFor();
  const take = page.getByRole("button", { name: "Bring in" });
  expect(await take.isDisabled()).toBe(true);
  await page.getByLabel("Unit of “tmax”").selectOption("C");
  await says.filter({ hasText: "In which unit is “tmin”?" }).waitFor();
  await page.getByLabel("Unit of “tmin”").selectOption("C");
  await says.filter({ hasText: "3 days, 2026-02-01 to 2026-02-03." }).waitFor();
  const details = (await page.locator("#weather-details li").allTextContents()).join("\n");
  expect(details).toContain("1 incomplete day: 2026-02-02 (no highest temperature).");
  expect(details).toContain(
    "1 row for a day that has one already, not taken: 2026-02-03 in line 5, with other readings.",
  );
  await take.click();
  await page.locator(".notice").filter({ hasText: "3 days" }).waitFor();
  await page.locator("#grid .o-grid-composer [contenteditable]").first().focus();
  await page.keyboard.press("Control+z");
  await page.waitForFunction(
    (was) => JSON.stringify(window.canyardSheet.evaluate("A1:F40", "Weather")) === was,
    JSON.stringify(before),
  );
  await page.context().close();
});

test("a text without a table is refused in a sentence", async () => {
  const { page, sheet } = await openSheet(browser, { locale: "en-US" });
  await sheet.startFrom("Daily demand");
  await page.getByRole("button", { name: "Weather table…" }).click();
  await page.locator("#weather-text").fill("Dear all,\nthe pump is mended.");
  await page.locator("#weather-says").filter({ hasText: "No line of headings" }).waitFor();
  expect(await page.getByRole("button", { name: "Bring in" }).isDisabled()).toBe(true);
  await page.context().close();
});
