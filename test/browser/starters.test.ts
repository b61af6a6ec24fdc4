import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import type { ListedStarter } from "../../src/sheet/starterFiles";
import type { Chart, Workbook } from "../../src/workbooks/model";
import { connectBrowser } from "../rig/browserPage";
import { openSheet, type OpenedSheet } from "../rig/sheetOnPage";

const FOLDER = join(__dirname, "../../dist/starters");
const read = <T>(file: string): T => JSON.parse(readFileSync(join(FOLDER, file), "utf8")) as T;
const listed = read<readonly ListedStarter[]>("index.json");
const workbookOf = (id: string, edition: string): Workbook =>
  read<{ workbook: Workbook }>(`${id}-${edition}.json`).workbook;

/** For each starter an input by its label on Inputs, or by its cell; a number far from what is usual; the chart that follows it. */
const CHANGES: Readonly<Record<string, readonly [label: string, value: number, chart: string]>> = {
  "zone-planner": ["Reference ET of a hot day", 0.6, "Minutes of each zone, and the window"],
  "daily-demand": ["Spacing in the row", 120, "What a pot used"],
  "leaching-log": ["Log!D10", 200_000, "Leaching fraction of each test"],
  "uniformity-audit": ["Flow that they should give", 60, "Flow of each emitter"],
  "flood-bench": ["Drain", 120, "Water in the tank"],
  "stock-tank": ["Nitrogen wanted in the feed", 1000, "Nitrogen, planned and found"],
  "system-comparison": ["Plants started", 1_000_000, "Cost of a year by line"],
  "class-exercise": ["Emitters for a plant", 20, "How each step went"],
};

interface Found {
  readonly code?: string;
}
interface Sheet {
  evaluate(expression: string, sheet: string): readonly (readonly (Found | string | number | boolean | null)[])[];
  select(address: string): void;
  write(address: string, value: number): void;
}
interface DrawnChart {
  readonly data: { readonly datasets: readonly { readonly data: readonly unknown[] }[] };
}
declare const window: { canyardSheet: Sheet; Chart: { getChart(canvas: unknown): DrawnChart | undefined } };

let browser: Browser;
let opened: OpenedSheet;
beforeAll(async () => {
  browser = await connectBrowser();
  // Wide enough for whole charts, so that each is drawn when its corner is in sight.
  opened = await openSheet(browser, { viewport: { width: 1900, height: 1150 }, locale: "en-US" });
  await opened.page.getByRole("button", { name: "Help" }).click();
});
afterAll(() => browser.close());

const cells = (page: Page, block: string, sheet: string) =>
  page.evaluate(([at, name]) => window.canyardSheet.evaluate(at!, name!), [block, sheet]);

async function errorsOn(page: Page, sheets: readonly string[]): Promise<string[]> {
  const found: string[] = [];
  for (const sheet of sheets) {
    const rows = await cells(page, "A1:AZ200", sheet);
    rows.forEach((row, down) =>
      row.forEach((cell, across) => {
        if (typeof cell === "object" && cell !== null)
          found.push(`${sheet} row ${down + 1}, column ${across + 1}: ${cell.code}`);
      }),
    );
  }
  return found;
}

/** How many colours a chart's picture has, once it is in sight; and the numbers that it draws. */
async function drawn(page: Page, sheet: string, { title, position }: Pick<Chart, "title" | "position">) {
  await page.evaluate((at) => window.canyardSheet.select(at), `'${sheet}'!${position.cell}`);
  const canvas = page.locator(`canvas[role=img][aria-label^=${JSON.stringify(title)}]`).first();
  await canvas.waitFor();
  return canvas.evaluate(async (element) => {
    const picture = element as HTMLCanvasElement;
    const colours = () => {
      const { data } = picture.getContext("2d")!.getImageData(0, 0, picture.width, picture.height);
      const seen = new Set<number>();
      for (let at = 0; at < data.length; at += 4) seen.add((data[at]! << 16) | (data[at + 1]! << 8) | data[at + 2]!);
      return seen.size;
    };
    for (let frame = 0; frame < 60 && colours() < 4; frame += 1)
      await new Promise((done) => requestAnimationFrame(done));
    const datasets = window.Chart.getChart(picture)?.data.datasets ?? [];
    return { colours: colours(), numbers: JSON.stringify(datasets.map(({ data }) => data)) };
  });
}

describe.each(listed.map((starter) => [starter.title, starter] as const))("the starter “%s”", (title, { id }) => {
  const { sheets } = workbookOf(id, "us");
  const charts = sheets.flatMap(({ name, charts = [] }) => charts.map((chart) => [name, chart] as const));
  const [label, value, follows] = CHANGES[id] ?? ["", 0, ""];

  test("opens in US units without an error, with its charts drawn", async () => {
    const { page, sheet, complaints } = opened;
    await sheet.startFrom(title);
    expect(await page.title()).toContain(title);
    expect(
      await errorsOn(
        page,
        sheets.map(({ name }) => name),
      ),
    ).toEqual([]);
    expect(charts.length).toBeGreaterThan(0);
    for (const [name, chart] of charts) {
      const { colours } = await drawn(page, name, chart);
      expect([chart.title, colours > 3]).toEqual([chart.title, true]);
    }
    expect(complaints).toEqual([]);
  });

  test(`has a chart and checks that follow “${label}”`, async () => {
    const { page, sheet } = opened;
    const labels = (await cells(page, "A1:A80", "Inputs")).map(([cell]) => cell);
    const address = label.includes("!") ? label : `Inputs!D${labels.indexOf(label) + 1}`;
    const [name, chart] = charts.find(([, each]) => each.title.startsWith(follows))!;
    const checks = () => cells(page, "D6:D30", "Checks");
    const before = { ...(await drawn(page, name, chart)), checks: await checks() };
    await page.evaluate(([at, to]) => window.canyardSheet.write(at, to), [address, value] as const);
    // The engine draws a frame or two later.
    let { numbers } = await drawn(page, name, chart);
    for (let tries = 0; tries < 30 && numbers === before.numbers; tries += 1) {
      await page.waitForTimeout(100);
      ({ numbers } = await drawn(page, name, chart));
    }
    expect(numbers).not.toBe(before.numbers);
    expect(await checks()).not.toEqual(before.checks);
    expect(await sheet.valueOf("About!A2")).toBe("See Checks");
  });

  test("refuses another word for its units, in the sheet's own sentence", async () => {
    const { page, sheet } = opened;
    const units = workbookOf(id, "us").namedRanges!["units"]!;
    await sheet.type(units.replaceAll("$", ""), "metric");
    expect(await sheet.valueOf(units.replaceAll("$", ""))).toBe("us");
    const notice = page.locator(".notice[data-about='the grid'] p");
    expect(await notice.textContent()).toMatch(
      /^[A-Z]+\d+ was not changed\. This workbook is in US units .+ Take the metric edition instead\.$/,
    );
    await page.keyboard.press("Delete");
    expect(await sheet.valueOf(units.replaceAll("$", ""))).toBe("us");
    await page.locator(".notice").getByRole("button", { name: "Close" }).click();
  });
});

test("every starter opens in metric units without an error", async () => {
  const { page, sheet } = opened;
  for (const { id, title } of listed) {
    await page.getByRole("button", { name: "New…" }).click();
    await page.getByLabel("metric units").check();
    await page.getByRole("button", { name: "Back", exact: true }).click();
    await sheet.startFrom(title);
    expect(await page.title()).toContain("metric");
    const errors = await errorsOn(
      page,
      workbookOf(id, "metric").sheets.map(({ name }) => name),
    );
    expect([title, errors]).toEqual([title, []]);
  }
}, 60_000);
