import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { starters } from "../../src/workbooks/starters";
import { connectBrowser, openPage, SITE } from "../rig/browserPage";
import { standInForExcel } from "../rig/excelOnPage";
import { HelpOnPage } from "../rig/helpOnPage";
import { openSheet } from "../rig/sheetOnPage";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");
const NARROW: BrowserContextOptions = { viewport: { width: 320, height: 700 } };
const [FIRST] = starters;
if (FIRST === undefined) throw new Error("there are no starters");

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: { run(options: object): Promise<AxeResults> } };
    const { violations } = await axe.run({ resultTypes: ["violations"] });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

async function openInExcel(options: BrowserContextOptions = NARROW): Promise<{ page: Page; asked: string[] }> {
  const context = await browser.newContext(options);
  await standInForExcel(context);
  const page = await context.newPage();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url().replace(SITE, "")));
  await page.goto(`${SITE}taskpane.html#workbooks`);
  await page.getByRole("button", { name: `Add these sheets: ${FIRST!.title}` }).waitFor();
  return { page, asked };
}

/** A page of the site under a policy that lets nothing in but its own files. */
async function underStrictPolicy(context: BrowserContext): Promise<void> {
  const policy = "default-src 'none'; script-src 'self'; style-src 'self'; connect-src 'self'; img-src 'self' data:";
  await context.route(`${SITE}help.html`, async (route) => {
    const response = await route.fetch();
    await route.fulfill({ response, headers: { ...response.headers(), "content-security-policy": policy } });
  });
}

describe("start from a workbook, as a plain page", () => {
  test("nothing of it is fetched before it is asked for; then its page, and the list alone", async () => {
    const context = await browser.newContext(NARROW);
    const page = await context.newPage();
    const asked: string[] = [];
    page.on("request", (request) => asked.push(request.url().replace(SITE, "")));
    await page.goto(`${SITE}help.html`);
    await page.locator("a.entry").first().waitFor();
    const before = asked.splice(0);
    expect(before.filter((url) => /workbooks|excelWorkbook|starters/.test(url))).toEqual([]);
    await page.getByRole("link", { name: "Workbooks" }).click();
    await page.getByRole("heading", { name: FIRST.title }).waitFor();
    expect(asked).toEqual(["workbooks.js", "starters/index.json"]);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("Start from a workbook");
    await context.close();
  });

  test("lists every starter with what it is for, under a policy that lets in nothing but the site's own files", async () => {
    const context = await browser.newContext(NARROW);
    await underStrictPolicy(context);
    const page = await context.newPage();
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => void (message.type() === "error" && complaints.push(message.text())));
    await page.goto(`${SITE}help.html#workbooks`);
    await page.getByRole("heading", { name: FIRST.title }).waitFor();
    expect(await page.locator("h2").allTextContents()).toEqual(starters.map(({ title }) => title));
    for (const { purpose } of starters) expect(await page.getByText(purpose, { exact: true }).count()).toBe(1);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("links to the files where the site has them, in the units that are chosen, and else says that it has none", async () => {
    const { page } = await openPage(browser, "help.html#workbooks", NARROW);
    await page.getByText("This site does not have it as an Excel file.").first().waitFor();
    expect(await page.locator("main a[download]").count()).toBe(0);
    await page.route("**/starters/index.json", async (route) => {
      const list = (await (await route.fetch()).json()) as object[];
      await route.fulfill({ json: list.map((line) => ({ ...line, files: true })) });
    });
    await page.reload();
    const links = page.locator("main a[download]");
    await links.first().waitFor();
    expect(await links.first().getAttribute("href")).toBe(`starters/${FIRST.id}-us.xlsx`);
    await page.getByRole("button", { name: "Show them in metric units" }).click();
    expect(await links.nth(0).getAttribute("href")).toBe(`starters/${FIRST.id}-metric.xlsx`);
    expect(await links.nth(1).getAttribute("href")).toBe(`starters/${FIRST.id}-metric-plain.xlsx`);
    expect(await page.getByRole("radio", { name: "metric" }).isChecked()).toBe(true);
    await page.context().close();
  });

  test("says in a sentence what did not arrive, and comes when it is tried again", async () => {
    const { page } = await openPage(browser, "help.html", NARROW);
    await page.locator("a.entry").first().waitFor();
    await page.route("**/workbooks.js", (route) => route.abort());
    await page.route("**/starters/index.json", (route) => route.fulfill({ status: 404, body: "no" }));
    await page.getByRole("link", { name: "Workbooks" }).click();
    await page.getByText("This page did not arrive. Check the connection, then try again.").waitFor();
    await page.unroute("**/workbooks.js");
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByText("The list of workbooks did not arrive. Check the connection, then try again.").waitFor();
    expect(await faultsOf(page)).toEqual([]);
    await page.unroute("**/starters/index.json");
    await page.getByRole("button", { name: "Try again" }).click();
    await page.getByRole("heading", { name: FIRST.title }).waitFor();
    await page.context().close();
  });
});

describe("start from a workbook, in Excel", () => {
  test("says beforehand which sheets it adds and that the others stay, and afterwards what it has done", async () => {
    const { page, asked } = await openInExcel();
    const main = page.locator("main");
    await main.getByText("Your own sheets, cells and names stay as they are.").waitFor();
    const list = (await (await page.request.get(`${SITE}starters/index.json`)).json()) as { sheets: string[] }[];
    const { sheets } = list[0]!;
    await main
      .getByText(`Adds ${sheets.length} new sheets: ${sheets.slice(0, -1).join(", ")} and`)
      .first()
      .waitFor();
    expect(asked.filter((url) => url.includes(`${FIRST.id}-`))).toEqual([]);
    await page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` }).click();
    await main.getByText(`${sheets.length} sheets added: ${sheets.slice(0, -1).join(", ")} and`).waitFor();
    await main.getByText("One undo takes them all away again.").waitFor();
    expect(asked.filter((url) => url.includes(`${FIRST.id}-`))).toEqual([`starters/${FIRST.id}-us.json`]);
    expect(asked).toContain("excelWorkbook.js");
    await page.context().close();
  });

  test("tells the sheet's new name where the words on the sheets still say the old one", async () => {
    const { page } = await openInExcel();
    await page.evaluate(() => ((window as unknown as { excelSheets: string[] }).excelSheets = ["Inputs"]));
    await page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` }).click();
    await page.getByText("Where their words name a sheet, such as Checks, take Checks 2.").waitFor();
    await page.context().close();
  });

  test("takes the edition of the units that are chosen", async () => {
    const { page, asked } = await openInExcel();
    await page.getByRole("radio", { name: "metric" }).check();
    await page.getByText("These are in metric units.").waitFor();
    await page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` }).click();
    await page.getByText("sheets added:").waitFor();
    expect(asked).toContain(`starters/${FIRST.id}-metric.json`);
    await page.context().close();
  });

  test("by keyboard alone: a second press while it works does nothing, and the focus stays", async () => {
    const { page, asked } = await openInExcel();
    await page.evaluate(() => {
      const page = window as unknown as { excelHold: unknown; release: () => void };
      page.excelHold = new Promise<void>((resolve) => (page.release = resolve));
    });
    await page.getByRole("heading", { name: "Start from a workbook" }).focus();
    for (const name of ["Show them in metric units", `Add these sheets: ${FIRST.title}`]) {
      await page.keyboard.press("Tab");
      expect(
        await page.evaluate(
          () => (document.activeElement as HTMLElement).ariaLabel ?? document.activeElement?.textContent,
        ),
      ).toBe(name);
    }
    await page.keyboard.press("Enter");
    await page.getByText("Adding the sheets.").waitFor();
    await page.keyboard.press("Enter");
    await page.getByText("Excel is still at it. If a cell is being edited, finish it with Enter.").waitFor();
    await page.evaluate(() => (window as unknown as { release: () => void }).release());
    await page.getByText("sheets added:").waitFor();
    expect(asked.filter((url) => url.startsWith("starters/") && url.includes(FIRST.id))).toHaveLength(1);
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("BUTTON");
    await page.context().close();
  });

  test("tells what an older Excel could not make, and that undo does not take it back", async () => {
    const { page } = await openInExcel();
    await page.evaluate(() => ((window as unknown as { excelVersion: number }).excelVersion = 8));
    await page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` }).click();
    await page
      .getByText(
        "This Excel could not make the set-up for printing and the descriptions of the charts for screen readers.",
      )
      .waitFor();
    await page.getByText("To be rid of them, delete these sheets").waitFor();
    await page.context().close();
  });

  test("tells of a failure in a sentence, and can be tried again", async () => {
    const { page } = await openInExcel();
    const button = page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` });
    await page.route("**/excelWorkbook.js", (route) => route.abort());
    await button.click();
    await page.getByText("The workbook could not be added.").waitFor();
    await page.unroute("**/excelWorkbook.js");
    await page.evaluate(() =>
      (window as unknown as { excelFailures: string[] }).excelFailures.push("", "", "", "GeneralException"),
    );
    await button.click();
    await page.getByText("The sheets that were added have been taken away again").waitFor();
    await page.route("**/starters/*-us.json", (route) => route.abort());
    await button.click();
    await page.getByText("The workbook did not arrive. Check the connection, then try again.").waitFor();
    await page.unroute("**/starters/*-us.json");
    await button.click();
    await page.getByText("sheets added:").waitFor();
    expect(await page.getByText("The workbook did not arrive.").count()).toBe(0);
    await page.context().close();
  });

  test.each<[string, BrowserContextOptions]>([
    ["320 pixels, light", NARROW],
    ["350 pixels, dark", { viewport: { width: 350, height: 700 }, colorScheme: "dark" }],
    ["320 pixels, forced colours", { ...NARROW, forcedColors: "active" }],
  ])("at %s nothing runs over the edge, and a checker of accessibility finds nothing", async (_look, options) => {
    const { page } = await openInExcel(options);
    expect(await faultsOf(page)).toEqual([]);
    await page.getByRole("button", { name: `Add these sheets: ${FIRST.title}` }).click();
    await page.getByText("sheets added:").waitFor();
    expect(await faultsOf(page)).toEqual([]);
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(options.viewport!.width);
    await page.context().close();
  });
});

describe("start from a workbook, beside the browser sheet", () => {
  interface PageAround {
    canyardOpenStarter: unknown;
    asked: string[];
  }

  test("asks the page around to open it, in the edition that is chosen", async () => {
    const { page } = await openSheet(browser);
    const help = new HelpOnPage(page);
    await help.open();
    await page.evaluate(() => {
      const around = window as unknown as PageAround;
      around.asked = [];
      around.canyardOpenStarter = async (id: string, edition: string) => {
        around.asked.push(`${id} ${edition}`);
        return around.asked.length > 1;
      };
    });
    await help.goTo("Workbooks");
    const button = help.frame.getByRole("button", { name: `Open in the sheet: ${FIRST.title}` });
    await button.click();
    await page.waitForFunction(() => (window as unknown as PageAround).asked.length === 1);
    expect(await help.frame.getByText("It is open in the sheet.").count()).toBe(0);
    await help.frame.getByRole("radio", { name: "metric" }).check();
    await button.click();
    await help.frame.getByText("It is open in the sheet.").waitFor();
    expect(await page.evaluate(() => (window as unknown as PageAround).asked)).toEqual([
      `${FIRST.id} us`,
      `${FIRST.id} metric`,
    ]);
    await page.context().close();
  });

  test("tells in a sentence when the sheet cannot open it", async () => {
    const { page } = await openSheet(browser);
    const help = new HelpOnPage(page);
    await help.open();
    await help.goTo("Workbooks");
    const button = help.frame.getByRole("button", { name: `Open in the sheet: ${FIRST.title}` });
    await button.waitFor();
    await page.evaluate(() => Reflect.deleteProperty(window, "canyardOpenStarter"));
    await button.click();
    await help.frame.getByText("This page has no chooser of workbooks.").waitFor();
    await page.evaluate(() => {
      (window as unknown as PageAround).canyardOpenStarter = () => Promise.reject(new Error("raw"));
    });
    await button.click();
    await help.frame.getByText("The sheet could not open it.").waitFor();
    await page.context().close();
  });
});
