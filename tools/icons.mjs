/** `npm run icons`: draws manifest/icon.svg at the sizes that the manifest names. */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { launchBrowser } from "./browser.mjs";

const SIZES = [16, 32, 64, 80];
const folder = new URL("../manifest/", import.meta.url);
const drawing = readFileSync(new URL("icon.svg", folder), "utf8");

const browser = await launchBrowser();
for (const size of SIZES) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${drawing}`);
  const picture = await page.screenshot({ omitBackground: true });
  writeFileSync(fileURLToPath(new URL(`icons/icon-${size}.png`, folder)), picture);
  await page.close();
}
await browser.close();
console.log(`icons of ${SIZES.join(", ")} pixels are drawn`);
