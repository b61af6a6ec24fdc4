/** What the browser sheet asks for until its calculated cells are painted, as the browser asked for it. */
import { join } from "node:path";
import type { Response } from "playwright-core";
import { gzippedBytes } from "../../test/rig/gzippedSizes";
import { launchBrowser, startServer } from "./pageTools";
import { visit } from "./pageVisit";
import { textsInView } from "./pageWorkbook";

export interface LoadedFile {
  readonly name: string;
  readonly bytes: number;
  readonly gzipped: number;
}

/** In the order in which they came. */
export async function firstLoad(): Promise<LoadedFile[]> {
  const server = await startServer(join(__dirname, "../../dist"));
  const browser = await launchBrowser();
  const responses: Response[] = [];
  try {
    const { page, close } = await visit(browser, server.url, textsInView(), (opening) => {
      opening.on("response", (response) => void responses.push(response));
    });
    const files = await Promise.all(
      [server.url, ...(await page.evaluate(askedFor))].map((address) => {
        const response = responses.find((each) => each.url() === address);
        if (response === undefined) throw new Error(`${address} was asked for, but did not come`);
        return loaded(response, server.url);
      }),
    );
    await close();
    return files;
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Runs in the page: its own files in order. The help in its frame, which comes once the sheet is drawn, is another page. */
function askedFor(): string[] {
  const found = performance.getEntriesByType("resource") as PerformanceResourceTiming[];
  return found.filter(({ initiatorType }) => initiatorType !== "iframe").map(({ name }) => name);
}

async function loaded(response: Response, base: string): Promise<LoadedFile> {
  const name = response.url().slice(base.length) || "index.html";
  if (!response.ok()) throw new Error(`${name} answered ${response.status()}`);
  const body = await response.body();
  return { name, bytes: body.length, gzipped: gzippedBytes(body) };
}
