import type { Browser, Page } from "playwright-core";
import { connectBrowser, openPage } from "../rig/browserPage";

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

async function openSheet(path = ""): Promise<Awaited<ReturnType<typeof openPage>>> {
  const opened = await openPage(browser, path);
  await opened.page.waitForFunction(() => "canyardSheet" in window);
  await opened.page.locator("canvas").first().waitFor();
  return opened;
}

interface PageSheet {
  select(address: string): void;
  read(address: string): { value: unknown; message: string | null };
}

function read(page: Page, address: string): Promise<{ value: unknown; message: string | null }> {
  return page.evaluate((at) => (window as unknown as { canyardSheet: PageSheet }).canyardSheet.read(at), address);
}

/** Types as a person does: into the selected cell, then Enter, then back to the cell to see it. */
async function type(page: Page, address: string, text: string): Promise<void> {
  await select(page, address);
  await page.locator("#grid .o-grid-composer [contenteditable]").first().focus();
  await page.keyboard.type(text);
  await page.keyboard.press("Escape");
  await page.keyboard.press("Escape");
}

async function select(page: Page, address: string): Promise<void> {
  await page.evaluate((at) => (window as unknown as { canyardSheet: PageSheet }).canyardSheet.select(at), address);
}
void type;

test("placeholder", async () => {
  const { page } = await openSheet();
  expect((await read(page, "Plan!A3")).value).toBe("All checks OK");
});
