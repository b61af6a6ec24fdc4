/** A page of the real browser that the test run started, on the site that it serves. */
import { chromium, type Browser, type BrowserContextOptions, type Page } from "playwright-core";

function fromRun(name: string): string {
  const value = process.env[name];
  if (value === undefined) throw new Error(`${name} is not set: the test run must start with its global setup`);
  return value;
}

export const SITE = fromRun("CANYARD_SITE");

export function connectBrowser(): Promise<Browser> {
  return chromium.connect(fromRun("CANYARD_BROWSER_ENDPOINT"));
}

/** Two pages at once share two cores with the tests: eight seconds were too few. */
const LONGEST_WAIT = 15_000;

export interface WatchedPage {
  readonly page: Page;
  /** Addresses outside our own site that the page asked for. */
  readonly foreign: readonly string[];
  /** What the page complained of. */
  readonly complaints: readonly string[];
}

/** Opens a page in a context of its own; requests to anywhere else are refused and noted. */
export async function openPage(
  browser: Browser,
  path: string,
  options: BrowserContextOptions = {},
): Promise<WatchedPage> {
  // Each test loads from the site itself; the test of the page without a network allows the worker.
  const alone: BrowserContextOptions = { serviceWorkers: "block", viewport: { width: 1280, height: 800 } };
  const context = await browser.newContext({ ...alone, ...options });
  context.setDefaultTimeout(LONGEST_WAIT);
  const foreign: string[] = [];
  const complaints: string[] = [];
  await context.route(
    (url) => !url.href.startsWith(SITE) && /^https?:/.test(url.protocol),
    (route) => {
      foreign.push(route.request().url());
      return route.abort();
    },
  );
  const page = await context.newPage();
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error" && !message.text().includes("net::ERR_FAILED")) complaints.push(message.text());
  });
  await page.goto(SITE + path);
  return { page, foreign, complaints };
}
