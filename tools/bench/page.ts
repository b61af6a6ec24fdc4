/** Opening the page of `npm start` to a calculated sheet, against the engine alone with an equal sheet of built-ins. */
import type { Browser, Page } from "playwright-core";
import { compareTimed, type Comparison } from "./measure";
import { openSite, PLAIN_PAGE } from "./pageSite";
import { launchBrowser } from "./pageTools";
import { visit } from "./pageVisit";
import { textsInView, twinOf } from "./pageWorkbook";
import type { RunPart } from "./part";

const ROUNDS = 15;
const AT_MOST = 1.3;
const CLOSE = 1e-9;

const valuesOf = {
  ours: (page: Page, cells: readonly string[]) =>
    page.evaluate((places) => places.map((place) => window.canyardSheet!.read(place).value), cells),
  plain: (page: Page, cells: readonly string[]) =>
    page.evaluate(
      (places) =>
        places.map((place) => {
          const [, sheet, address] = /^'(.*)'!(.*)$/.exec(place)!;
          return window.plainValue!(sheet!, address!);
        }),
      cells,
    ),
};

/** Nothing is timed unless every worked cell is the same on both pages. */
async function mustAgree(browser: Browser, url: string, texts: readonly string[], cells: readonly string[]) {
  const ours = await visit(browser, url, texts);
  const plain = await visit(browser, url + PLAIN_PAGE, texts);
  const [mine, other] = [await valuesOf.ours(ours.page, cells), await valuesOf.plain(plain.page, cells)];
  await Promise.all([ours.close(), plain.close()]);
  cells.forEach((place, at) => {
    const [one, two] = [mine[at], other[at]];
    const isSame =
      typeof one === "number" && typeof two === "number"
        ? Math.abs(one - two) <= CLOSE * Math.max(Math.abs(one), Math.abs(two))
        : one === two;
    if (!isSame)
      throw new Error(`${place} is ${String(one)} on our page and ${String(two)} on the other; nothing was timed`);
  });
}

/** A browser that both pages are opened in, in turns. */
export async function comparePages(rounds = ROUNDS): Promise<{ found: Comparison; cells: number }> {
  const twin = twinOf();
  const texts = textsInView();
  const site = await openSite(twin.plain);
  const browser = await launchBrowser();
  try {
    await mustAgree(browser, site.url, texts, twin.worked);
    const timed = (address: string) => async () => {
      const { painted, close } = await visit(browser, address, texts);
      await close();
      return painted;
    };
    const found = await compareTimed(timed(site.url), timed(site.url + PLAIN_PAGE), rounds);
    return { found, cells: twin.worked.length };
  } finally {
    await browser.close();
    await site.close();
  }
}

export const pagePart: RunPart = async () => {
  const { found, cells } = await comparePages();
  const { ours, against, ratio, quarters } = found;
  return {
    title: "Opening the browser sheet",
    about:
      `From the start of the navigation until the last calculated cells in view are painted, by the page's own clock; ` +
      `each time in a new browser context, so nothing is cached; ${ROUNDS} rounds, the pages in turns. Against our page: ` +
      `the unmodified engine with its own templates and styles and the same workbook, its ${cells} worked cells (sheets, ` +
      `looks and chart included) in built-in formulas, finished as the engine's data. All worked cells of both pages are ` +
      `compared first (1e-9).`,
    heads: ["ours, ms", "engine alone, ms", "ratio", "half of the rounds"],
    lines: [
      {
        what: "Navigation to the painted sheet",
        figures: [
          ours.toFixed(0),
          against.toFixed(0),
          ratio.toFixed(2),
          quarters.map((each) => each.toFixed(2)).join(" to "),
        ],
        held: { value: ratio, atMost: AT_MOST },
      },
    ],
  };
};
