/** `npm run pictures`: takes the pictures that the README shows from the built pages. */
import { fileURLToPath } from "node:url";
import { launchBrowser } from "./browser.mjs";
import { startServer } from "./start.mjs";

const folder = new URL("../docs/pictures/", import.meta.url);
const SETTLE = 800;

const PICTURES = [{ file: "sheet.png", path: "", width: 1280, height: 760, ready: "#grid canvas" }];

const server = await startServer({ port: 0 });
const browser = await launchBrowser();
for (const { file, path, width, height, ready } of PICTURES) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.goto(server.url + path);
  await page.locator(ready).first().waitFor();
  await page.waitForTimeout(SETTLE);
  await page.screenshot({ path: fileURLToPath(new URL(file, folder)) });
  await page.close();
}
await browser.close();
await server.close();
