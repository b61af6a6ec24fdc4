import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { catalogue } from "../../src/functions";
import { connectBrowser, openPage, SITE } from "../rig/browserPage";

const HOST_LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const LIBRARY_FILES = dirname(require.resolve("@microsoft/office-js/dist/office.js"));
const SLOW = 1_500;

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

/** Answers the host library's address from the package that is installed for tests, after a while if asked. */
async function serveHostLibrary(context: BrowserContext, delay: number): Promise<void> {
  await context.route(`${HOST_LIBRARY}**`, async (route) => {
    const file = join(LIBRARY_FILES, new URL(route.request().url()).pathname.replace("/lib/1/hosted/", ""));
    if (delay > 0 && file.endsWith("office.js")) await new Promise((resolve) => setTimeout(resolve, delay));
    if (existsSync(file)) await route.fulfill({ body: readFileSync(file, "utf8"), contentType: "text/javascript" });
    else await route.abort();
  });
}

async function openPane(delay: number): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 350, height: 600 } });
  await context.route(
    (url) => !url.href.startsWith(SITE) && !url.href.startsWith(HOST_LIBRARY),
    (route) => route.abort(),
  );
  await serveHostLibrary(context, delay);
  const page = await context.newPage();
  await page.goto(`${SITE}taskpane.html`, { waitUntil: "commit" });
  return page;
}

interface HostTable {
  CustomFunctions: { _association?: { mappings: Record<string, unknown> } };
}

function idsInHostTable(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    Object.keys((window as unknown as HostTable).CustomFunctions._association?.mappings ?? {}),
  );
}

const EVERY_ID = catalogue.map(({ name }) => name).sort();

describe("the add-in's page", () => {
  test("lists every function without the host's library, and asks for nothing else from elsewhere", async () => {
    const { page, foreign, complaints } = await openPage(browser, "taskpane.html", {
      viewport: { width: 320, height: 600 },
    });
    await page.locator("a.entry").first().waitFor();
    expect(await page.locator("a.entry").count()).toBe(catalogue.length);
    expect(foreign).toEqual([`${HOST_LIBRARY}office.js`]);
    expect(complaints).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await page.context().close();
  });

  test("with the library present every function stands in the host's table", async () => {
    const page = await openPane(0);
    await page.waitForFunction(() => "Office" in window);
    await page.locator("a.entry").first().waitFor();
    expect((await idsInHostTable(page)).sort()).toEqual(EVERY_ID);
    await page.context().close();
  });

  test("with a slow library the list is there first, and the functions reach the table when it arrives", async () => {
    const page = await openPane(SLOW);
    await page.locator("a.entry").first().waitFor();
    expect(await page.evaluate(() => "Office" in window)).toBe(false);
    await page.waitForFunction(() => "Office" in window);
    expect((await idsInHostTable(page)).sort()).toEqual(EVERY_ID);
    await page.context().close();
  });

  test("its first useful paint does not wait for the host's library", async () => {
    const context = await browser.newContext({ viewport: { width: 350, height: 600 } });
    let release = (): void => undefined;
    const held = new Promise<void>((resolve) => (release = resolve));
    await context.route(`${HOST_LIBRARY}**`, async (route) => {
      await held;
      await route.abort();
    });
    const page = await context.newPage();
    await page.goto(`${SITE}taskpane.html`, { waitUntil: "commit" });
    await page.locator("a.entry").first().waitFor();
    await page.waitForFunction(() => performance.getEntriesByName("first-contentful-paint").length === 1);
    await page.getByLabel("What do you want to know?").fill("how long do I run");
    await page.locator("a.entry").first().click();
    expect(await page.locator(".answer").textContent()).toContain("2.75");
    const isHeld = await page.evaluate(() =>
      performance.getEntriesByType("resource").every(({ name }) => !name.endsWith("office.js")),
    );
    expect(isHeld).toBe(true);
    release();
    await context.close();
  });

  test("without a sheet it says where a cell is read, and copies the formula", async () => {
    const { page } = await openPage(browser, "taskpane.html#RUN_MINUTES");
    await page.locator("#volume_per_plant").fill("A1");
    await page.locator("#emitter_flow").fill("6");
    await page.locator(".result").filter({ hasText: "Only a sheet can read A1. The answer comes there." }).waitFor();
    expect(await page.locator("[aria-invalid=true]").count()).toBe(0);
    expect(await page.locator("#formula").textContent()).toBe("=CANYARD.RUN_MINUTES(A1, 6)");
    expect(await page.getByRole("button", { name: "Insert into the selected cell" }).count()).toBe(0);
    await page.context().close();
  });

  test("opens the function that the address names, as a help link in the host does", async () => {
    const { page } = await openPage(browser, "taskpane.html#RUN_MINUTES");
    await page.getByRole("heading", { name: "RUN_MINUTES" }).waitFor();
    expect(await page.locator(".answer").textContent()).toContain("2.75");
    await page.context().close();
  });
});
