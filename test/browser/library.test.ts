/** dist/library.mjs imported by a page: the very page that docs/library.md shows. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { connectBrowser, SITE } from "../rig/browserPage";

const PAGE = `${SITE}page-of-the-document.html`;
const STRICT_POLICY = "default-src 'none'; script-src 'self' 'unsafe-inline'";

const document = readFileSync(join(__dirname, "../../docs/library.md"), "utf8");
const html = /```html\n([\s\S]*?)```/.exec(document)?.[1] ?? "";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

test("a page imports the library under a policy without eval, and asks for nothing else", async () => {
  const context = await browser.newContext();
  const asked: string[] = [];
  const complaints: string[] = [];
  await context.route(PAGE, (route) =>
    route.fulfill({ contentType: "text/html", headers: { "Content-Security-Policy": STRICT_POLICY }, body: html }),
  );
  const page = await context.newPage();
  page.on("request", (request) => asked.push(request.url()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(PAGE);
  await page.waitForFunction("document.querySelector('output').textContent !== ''");
  expect(await page.innerText("p")).toBe("Run 2.75 minutes.");
  expect(complaints).toEqual([]);
  expect(asked.filter((url) => !url.endsWith("favicon.ico"))).toEqual([PAGE, `${SITE}library.mjs`]);
  await context.close();
});
