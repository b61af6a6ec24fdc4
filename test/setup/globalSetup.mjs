/**
 * Once before all tests: the production build, its server and a browser, for the tests that need them. Of several runs in
 * a row the first builds.
 */
import { chromium } from "playwright-core";
import { build } from "../../tools/build.mjs";
import { browserLaunchOptions } from "../../tools/browser.mjs";
import { startServer } from "../../tools/start.mjs";

export default async function globalSetup() {
  if (process.env.CANYARD_BUILT !== "yes") await build();
  const site = await startServer({ port: 0 });
  const browser = await chromium.launchServer(await browserLaunchOptions());
  process.env.CANYARD_SITE = site.url;
  process.env.CANYARD_BROWSER_ENDPOINT = browser.wsEndpoint();
  globalThis.closeTestWorld = async () => {
    await browser.close();
    await site.close();
  };
}
