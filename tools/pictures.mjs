/** `npm run pictures`: takes the pictures that the README shows from the built pages. */
import { fileURLToPath } from "node:url";
import { launchBrowser } from "./browser.mjs";
import { startServer } from "./start.mjs";

const folder = new URL("../docs/pictures/", import.meta.url);
const SETTLE = 800;

/** A student's sheet with a slip in it: 60 x 0.35 / 6 = 3.5 minutes, answered as 0.0583. */
const CLASS_SHEET = {
  A1: "Volume per plant, gal",
  B1: '=CANYARD.EXERCISE_NUMBER("elm 2026", "S7", "volume", 0.2, 0.6, 0.05)',
  A2: "Emitter flow, gal/h",
  B2: '=CANYARD.EXERCISE_NUMBER("elm 2026", "S7", "flow", 4, 8, 0.5)',
  A3: "Minutes",
  B3: "=ROUND(CANYARD.RUN_MINUTES(B1, B2) / 60, 4)",
  C3: "=CANYARD.CHECK_ANSWER(B3, CANYARD.RUN_MINUTES(B1, B2))",
  D3: '=CANYARD.DIAGNOSE_ANSWER(B3, "RUN_MINUTES", 0.02, 2, B1, B2)',
  A6: '=CANYARD.SHOW_WORKING("RUN_MINUTES", B1, B2)',
  A14: '=CANYARD.COMMON_MISTAKES("RUN_MINUTES", B1, B2)',
};

/** Fills a blank workbook through the sheet's own adapter. */
async function fill(page, cells) {
  await page.getByRole("button", { name: "New…" }).click();
  await page.getByRole("button", { name: "A blank workbook" }).click();
  await page.waitForFunction(() => document.title.startsWith("Untitled"));
  await page.evaluate((contents) => {
    for (const [address, content] of Object.entries(contents)) window.canyardSheet.write(address, content);
    window.canyardSheet.select("B3");
  }, cells);
}

async function explain(page) {
  await page.evaluate(() => window.canyardSheet.select("Plan!D27"));
  await page.frameLocator("#help iframe").getByRole("link", { name: "This cell" }).click();
  await page.frameLocator("#help iframe").locator(".steps").first().waitFor();
}

/** Opens a starter workbook in US units and goes to one of its cells. */
async function starter(page, title, cell) {
  await page.getByRole("button", { name: "New…" }).click();
  await page.getByRole("radio", { name: /US/ }).check();
  await page.getByRole("button", { name: title }).click();
  await page.waitForFunction((words) => document.title.includes(words), title);
  await page.evaluate((address) => window.canyardSheet.select(address), cell);
  await page.getByRole("button", { name: "Help" }).click();
}

const GRID = "#grid canvas";
const PICTURES = [
  { file: "sheet.png", path: "", width: 1280, height: 760, ready: GRID },
  { file: "explain.png", path: "", width: 1280, height: 760, ready: GRID, act: explain },
  { file: "class-sheet.png", path: "", width: 1280, height: 640, ready: GRID, act: (page) => fill(page, CLASS_SHEET) },
  ...[
    ["zone-planner.png", "Zone planner"],
    ["flood-bench.png", "Flood bench and tank"],
    ["system-comparison.png", "System comparison and payback"],
  ].map(([file, title]) => ({
    file,
    path: "",
    width: 1480,
    height: 1240,
    ready: GRID,
    act: (page) => starter(page, title, "Result!A1"),
  })),
  { file: "function.png", path: "help.html#RUN_MINUTES", width: 350, height: 900, ready: ".answer" },
];

const server = await startServer({ port: 0 });
const browser = await launchBrowser();
for (const { file, path, width, height, ready, act } of PICTURES) {
  const page = await browser.newPage({ viewport: { width, height } });
  await page.goto(server.url + path);
  await page.locator(ready).first().waitFor();
  await act?.(page);
  if (path === "")
    await page
      .getByRole("button", { name: "Close" })
      .click({ timeout: SETTLE })
      .catch(() => {});
  await page.waitForTimeout(SETTLE);
  await page.screenshot({ path: fileURLToPath(new URL(file, folder)) });
  await page.close();
}
await browser.close();
await server.close();
