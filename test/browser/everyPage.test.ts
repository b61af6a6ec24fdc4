import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { catalogue } from "../../src/functions";
import { plottable } from "../../src/taskpane/plot";
import { connectBrowser, openPage } from "../rig/browserPage";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

interface Checker {
  run(options: object): Promise<AxeResults>;
}

/** The checker is large: it goes into a page once, and only what it found comes back. */
async function serious(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Checker };
    const { violations } = await axe.run({ resultTypes: ["violations"] });
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}

async function goTo(page: Page, place: string): Promise<void> {
  await page.evaluate((hash) => (location.hash = hash), place);
  await page.locator("h1").filter({ hasText: place }).waitFor();
}

describe("every function has its page", () => {
  test("at 320 pixels: the example's answer, its working, its drawing, nothing over the edge, nothing inaccessible", async () => {
    const { page, complaints } = await openPage(browser, "help.html", { viewport: { width: 320, height: 700 } });
    const faults: string[] = [];
    for (const entry of catalogue) {
      await goTo(page, entry.name);
      const state = await page.evaluate(() => ({
        width: document.documentElement.scrollWidth,
        answer: document.querySelector(".answer, .result table")?.textContent ?? "",
        steps: document.querySelectorAll(".steps li").length,
        drawn: document.querySelectorAll(".plot .line").length,
      }));
      if (state.width > 320) faults.push(`${entry.name} is ${state.width} wide`);
      if (state.answer === "") faults.push(`${entry.name} shows no answer`);
      if (state.steps === 0 && entry.result.unit !== "") faults.push(`${entry.name} shows no working`);
      if (state.drawn === 0 && plottable(entry).length > 0) faults.push(`${entry.name} is not drawn`);
      for (const fault of await serious(page)) faults.push(`${entry.name}: ${fault}`);
    }
    expect(faults).toEqual([]);
    expect(complaints).toEqual([]);
    await page.context().close();
  }, 120_000);
});

const LOOKS: readonly (readonly [string, BrowserContextOptions])[] = [
  ["320 pixels, light", { viewport: { width: 320, height: 700 } }],
  ["350 pixels, dark", { viewport: { width: 350, height: 700 }, colorScheme: "dark" }],
  ["1280 pixels, light", {}],
  ["350 pixels, forced colours", { viewport: { width: 350, height: 700 }, forcedColors: "active" }],
  [
    "350 pixels, reduced motion, twice the size",
    { viewport: { width: 350, height: 700 }, reducedMotion: "reduce", deviceScaleFactor: 2 },
  ],
];

describe("an accessibility checker finds nothing serious", () => {
  test.each(LOOKS)(
    "on the pane's pages at %s",
    async (_look, options) => {
      const { page } = await openPage(browser, "help.html", options);
      await page.locator("a.entry").first().waitFor();
      const found: Record<string, string[]> = { find: await serious(page) };
      for (const name of ["RUN_MINUTES", "PULSE_SCHEDULE", "ET0_TABLE"]) {
        await goTo(page, name);
        found[name] = await serious(page);
      }
      await goTo(page, "RUN_MINUTES");
      await page.locator("#emitter_flow").fill("six");
      await page.locator("#emitter_flow-error").waitFor();
      found["an error"] = await serious(page);
      for (const [hash, heading] of [
        ["cell", "Explain this cell"],
        ["about", "About Canyard"],
      ] as const) {
        await page.evaluate((place) => (location.hash = place), hash);
        await page.getByRole("heading", { name: heading }).waitFor();
        found[hash] = await serious(page);
      }
      expect(Object.entries(found).filter(([, faults]) => faults.length > 0)).toEqual([]);
      await page.context().close();
    },
    60_000,
  );

  test("and finds a fault that is put into the page", async () => {
    const { page } = await openPage(browser, "help.html");
    await page.locator("a.entry").first().waitFor();
    await page.evaluate(() => {
      document.querySelector("label[for=search]")?.remove();
      document.getElementById("search")?.removeAttribute("placeholder");
      document.querySelectorAll<HTMLElement>("h1").forEach((heading) => (heading.style.color = "#ddd"));
    });
    const faults = (await serious(page)).map((fault) => fault.split(":")[0]);
    expect(faults).toEqual(expect.arrayContaining(["color-contrast", "label"]));
    await page.context().close();
  });

  test("on the sheet's page, help open", async () => {
    const { page } = await openPage(browser, "");
    await page.frameLocator("#help iframe").locator("a.entry").first().waitFor();
    expect(await serious(page)).toEqual([]);
    await page.context().close();
  });
});
