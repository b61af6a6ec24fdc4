/** The browser sheet opens without a network once it was open with one. */
import type { Browser } from "playwright-core";
import { connectBrowser, openPage, SITE } from "../rig/browserPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

const SHEET_READY = () => window.canyardSheet !== undefined;

test("after one visit the sheet, its help, a starter and a page of the reference open with the network cut, and calculate", async () => {
  const { page } = await openPage(browser, "", { serviceWorkers: "allow" });
  await page.waitForFunction(SHEET_READY);
  await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === "activated");

  await page.context().setOffline(true);
  await page.reload();
  await page.waitForFunction(SHEET_READY);
  const minutes = await page.evaluate(() => {
    window.canyardSheet!.write("Z90", "=CANYARD.RUN_MINUTES(0.275, 6)");
    return window.canyardSheet!.read("Z90").value;
  });
  expect(minutes).toBeCloseTo(2.75, 12);

  const starters = await page.evaluate(async () => (await fetch("starters/index.json")).json());
  expect(Array.isArray(starters)).toBe(true);
  const help = await page.evaluate(async () => (await fetch("help.html")).ok);
  expect(help).toBe(true);

  await page.goto(`${SITE}index.html?from=a-bookmark`);
  await page.waitForFunction(SHEET_READY);
  await page.goto(`${SITE}reference/RUN_MINUTES.html`);
  expect(await page.getByRole("heading", { level: 1 }).textContent()).toBe("RUN_MINUTES");
  await page.context().close();
});

test("with a network the files come from it, so that a new version shows at once", async () => {
  const { page } = await openPage(browser, "", { serviceWorkers: "allow" });
  await page.waitForFunction(SHEET_READY);
  await page.waitForFunction(async () => (await navigator.serviceWorker.ready).active?.state === "activated");
  await page.reload();
  await page.waitForFunction(SHEET_READY);
  const kept = await page.evaluate(async () => {
    const [name] = await caches.keys();
    const cache = await caches.open(name!);
    await cache.put("sheet.css", new Response("an old version"));
    return (await fetch("sheet.css")).text();
  });
  expect(kept).not.toBe("an old version");
  await page.context().close();
});
