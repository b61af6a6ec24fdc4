/** What the sheet's page keeps in the browser, and what it says about it. */
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { STORAGE_KEYS } from "../../src/sheet/storedTexts";
import { openPage, SITE } from "./browserPage";
import { SheetOnPage } from "./sheetOnPage";

export interface Tab {
  readonly page: Page;
  readonly sheet: SheetOnPage;
}

/** Any page of the site has its storage; this one is small. */
const SMALL_PAGE = "manifest.xml";

/** A browser in which these texts are kept already. */
export async function browserWith(
  browser: Browser,
  kept: Readonly<Record<string, string>>,
  options: BrowserContextOptions = {},
): Promise<BrowserContext> {
  const { page } = await openPage(browser, SMALL_PAGE, options);
  await page.evaluate((texts) => Object.entries(texts).forEach(([key, text]) => localStorage.setItem(key, text)), kept);
  await page.close();
  return page.context();
}

export async function openTab(context: BrowserContext): Promise<Tab> {
  const page = await context.newPage();
  await page.goto(SITE);
  const sheet = new SheetOnPage(page);
  await sheet.ready();
  return { page, sheet };
}

export function keptText(page: Page, key: keyof typeof STORAGE_KEYS): Promise<string | null> {
  return page.evaluate((name) => localStorage.getItem(name), STORAGE_KEYS[key]);
}

/** The sentences above the grid. */
export function sentences(page: Page): Promise<string[]> {
  return page.locator(".notice p").allTextContents();
}

export async function says(page: Page, words: string): Promise<void> {
  await page.locator(".notice p").filter({ hasText: words }).waitFor();
}

export async function press(page: Page, button: string): Promise<void> {
  await page.locator(".notice").getByRole("button", { name: button }).click();
}

export async function agree(page: Page, button: string): Promise<void> {
  await page.locator("#question").getByRole("button", { name: button }).click();
}

/** The text of the file that a button of a notice offers, and its name. */
export async function offered(page: Page, button: string): Promise<{ name: string; text: string }> {
  const saving = page.waitForEvent("download");
  await press(page, button);
  const download = await saving;
  const parts: Buffer[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Buffer);
  return { name: download.suggestedFilename(), text: Buffer.concat(parts).toString("utf8") };
}
