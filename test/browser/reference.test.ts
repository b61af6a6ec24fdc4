/** The reference in a browser: for eyes, for a keyboard, for a screen reader, and without scripts. */
import type { Browser, BrowserContextOptions } from "playwright-core";
import { seriousFaults } from "../rig/accessibility";
import { connectBrowser, openPage, SITE } from "../rig/browserPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

/** Short and long ones, with tables, with folded formulas, with no argument at all. */
const PAGES = [
  "index",
  "RUN_MINUTES",
  "CONTAINER_VOLUME",
  "ET0_PENMAN_MONTEITH",
  "ET0_TABLE",
  "UNIFORMITY_AUDIT",
  "PULSE_SCHEDULE",
  "FLOOD_SCHEDULE",
  "ACID_VOLUME",
  "PAYBACK_SENSITIVITY",
  "LIBRARY_VERSION",
];

const LOOKS: readonly (readonly [string, BrowserContextOptions])[] = [
  ["320 pixels, dark", { viewport: { width: 320, height: 700 }, colorScheme: "dark" }],
  ["1280 pixels, light", { viewport: { width: 1280, height: 800 } }],
];

test.each(LOOKS)(
  "at %s nothing is inaccessible and nothing stands over the edge",
  async (_look, options) => {
    const { page, complaints } = await openPage(browser, "reference/index.html", options);
    const faults: string[] = [];
    for (const name of PAGES) {
      await page.goto(`${SITE}reference/${name}.html`);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      if (over > 0) faults.push(`${name} is ${over} too wide`);
      for (const fault of await seriousFaults(page)) faults.push(`${name}: ${fault}`);
    }
    expect(faults).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  },
  60_000,
);

test("with scripts switched off it is found from the index, read and walked through with the keyboard", async () => {
  const { page } = await openPage(browser, "reference/index.html", { javaScriptEnabled: false });
  await page.keyboard.press("Tab");
  expect(await page.locator(":focus").textContent()).toBe("To the text");
  await page.getByRole("link", { name: "RUN_MINUTES", exact: true }).first().focus();
  await page.keyboard.press("Enter");
  await page.waitForURL("**/reference/RUN_MINUTES.html");
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("RUN_MINUTES");
  const row = page.getByRole("row").filter({ hasText: "emitter_flow" }).first();
  expect(await row.getByRole("cell").allTextContents()).toEqual(expect.arrayContaining(["gal/h", "L/h"]));
  await page.getByRole("link", { name: /^Next: / }).press("Enter");
  await page.waitForURL("**/reference/RUN_MINUTES_FROM_ET.html");
  await page.context().close();
});

test("on a narrow page the rows of a table are blocks and still rows of a table", async () => {
  const { page } = await openPage(browser, "reference/RUN_MINUTES.html", { viewport: { width: 320, height: 700 } });
  const table = page.getByRole("table", { name: "Arguments" });
  expect(
    await table
      .locator("tbody tr")
      .first()
      .evaluate((row) => getComputedStyle(row).display),
  ).toBe("block");
  expect(await table.getByRole("row").count()).toBe(4);
  expect(await table.getByRole("rowheader", { name: "emitter_flow" }).count()).toBe(1);
  await page.context().close();
});

test("the help opens it beside itself: the function's page links to it", async () => {
  const { page } = await openPage(browser, "help.html#RUN_MINUTES");
  const opened = page.context().waitForEvent("page");
  await page.getByRole("link", { name: /^Reference page/ }).click();
  const reference = await opened;
  await reference.waitForURL("**/reference/RUN_MINUTES.html");
  expect(await reference.getByRole("heading", { level: 1 }).textContent()).toBe("RUN_MINUTES");
  await page.context().close();
});
