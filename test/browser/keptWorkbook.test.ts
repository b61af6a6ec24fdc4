import type { Browser } from "playwright-core";
import { render } from "../../src/sheet/render";
import { STORAGE_KEYS } from "../../src/sheet/storedTexts";
import { fromText, toText } from "../../src/sheet/workbookFile";
import { blank } from "../../src/workbooks/blank";
import type { Workbook } from "../../src/workbooks/model";
import { seriousFaults } from "../rig/accessibility";
import { connectBrowser } from "../rig/browserPage";
import { agree, browserWith, keptText, offered, openTab, press, says, sentences } from "../rig/keptOnPage";

declare const window: { canyardSheet: { write(address: string, content: string): void } };

let browser: Browser;
beforeAll(async () => {
  browser = await connectBrowser();
});
afterAll(() => browser.close());

const NOON = new Date("2026-05-04T12:00:00Z");
const NARROW = { viewport: { width: 320, height: 700 }, timezoneId: "UTC", locale: "en-US" };

/** A small workbook, quick to open. */
function keptWith(a1: number, name = "House 4"): string {
  const [sheet] = blank.sheets;
  const workbook: Workbook = { ...blank, sheets: [{ ...sheet!, cells: { A1: { value: a1 } } }] };
  return toText({ name, data: render(workbook) }, NOON);
}

/** Of the right shape throughout, with a chart of a kind that there is not. */
function unshowable(): string {
  const { name, data } = fromText(keptWith(2, "Unshowable"));
  const figures = [{ id: "f", tag: "chart", width: 5, height: 5, data: { type: "none" } }];
  return toText({ name, data: { ...data, sheets: data.sheets.map((sheet) => ({ ...sheet, figures })) } }, NOON);
}

const valueKept = (text: string | null, address = "A1") =>
  (fromText(text ?? "").data.sheets[0]!["cells"] as Record<string, string>)[address];

describe("a damaged workbook", () => {
  test("the one before it comes back with its time, and the damaged text is offered until it is thrown away", async () => {
    const damaged = keptWith(2).replace('"A1":"2"', '"A1":"3"');
    const context = await browserWith(
      browser,
      { [STORAGE_KEYS.present]: damaged, [STORAGE_KEYS.before]: keptWith(1) },
      NARROW,
    );
    const { page, sheet } = await openTab(context);
    expect(await sheet.valueOf("A1")).toBe("1");
    expect((await sentences(page)).map((each) => each.replace("\u202f", " "))).toEqual([
      "The workbook kept last in this browser could not be read. Shown is the one kept before it, of May 4, 2026, 12:00 PM. The one that could not be read is kept aside.",
    ]);
    expect(await offered(page, "Save it as a file…")).toEqual({
      name: "unreadable workbook.canyard.json",
      text: damaged,
    });
    await page.reload();
    await sheet.ready();
    expect(await sentences(page)).toEqual(["A workbook that this page could not read is kept aside in this browser."]);
    await press(page, "Throw it away…");
    await agree(page, "Keep it");
    expect(await keptText(page, "setAside")).toBe(damaged);
    await press(page, "Throw it away…");
    await agree(page, "Throw it away");
    await page.waitForFunction(() => document.querySelector(".notice") === null);
    expect(await keptText(page, "setAside")).toBeNull();
    expect(await sheet.valueOf("A1")).toBe("1");
    await context.close();
  });

  test("that is whole and yet stops the engine is not tried again and again: the one before it comes back", async () => {
    const context = await browserWith(browser, {
      [STORAGE_KEYS.present]: unshowable(),
      [STORAGE_KEYS.before]: keptWith(1),
    });
    const { page, sheet } = await openTab(context);
    expect(await sheet.valueOf("A1")).toBe("1");
    await says(page, "could not be read. Shown is the one kept before it");
    await context.close();
  });
});

describe("a workbook of a newer version", () => {
  test("stays as it is, is offered, and gives way only when the person says so", async () => {
    const newer = keptWith(9)
      .replace('"formatVersion":1', '"formatVersion":2')
      .replace(/,"saved.*?Z"|,"checksum.*?"(?=})/g, "");
    const context = await browserWith(browser, { [STORAGE_KEYS.present]: newer }, NARROW);
    const { page, sheet } = await openTab(context);
    await says(page, "was saved by a newer Canyard, so it cannot be read here. It stays as it is");
    await sheet.startBlank();
    await sheet.type("A1", "5");
    await page.waitForFunction(() => document.getElementById("saved")?.textContent === "Not saved");
    expect(await keptText(page, "present")).toBe(newer);
    expect((await offered(page, "Save that one as a file…")).text).toBe(newer);
    await press(page, "Keep this one instead…");
    await agree(page, "Keep this one");
    await sheet.saved();
    expect(valueKept(await keptText(page, "present"))).toBe("5");
    expect(await keptText(page, "setAside")).toBe(newer);
    await context.close();
  });
});

describe("a storage that does not take it", () => {
  test("full: the last good one stays, the sentence too, until there is room or a file", async () => {
    const context = await browserWith(browser, { [STORAGE_KEYS.present]: keptWith(1) }, NARROW);
    const { page, sheet } = await openTab(context);
    await page.evaluate(() => {
      for (let size = 2 ** 22; size >= 1; size /= 2) {
        try {
          for (let at = 0; ; at += 1) localStorage.setItem(`filler ${size} ${at}`, "x".repeat(size));
        } catch {
          // The next smaller one may still go in.
        }
      }
    });
    // Longer than the copies of earlier ones, which would give way.
    await page.evaluate(() => window.canyardSheet.write("A1", "long ".repeat(3_000)));
    await says(page, "This browser's storage is full");
    expect(await page.locator(".notice").getByRole("button", { name: "Close" }).count()).toBe(0);
    expect(valueKept(await keptText(page, "present"))).toBe("1");
    expect(valueKept((await offered(page, "Save as file…")).text)).toMatch(/long long/);
    expect(await page.locator(".notice").count()).toBe(0);
    await sheet.type("A2", "7");
    await says(page, "This browser's storage is full");
    await page.evaluate(() =>
      Object.keys(localStorage).forEach((key) => key.startsWith("filler") && localStorage.removeItem(key)),
    );
    await sheet.type("A2", "8");
    await sheet.saved();
    expect(await sentences(page)).toEqual([]);
    expect(valueKept(await keptText(page, "present"), "A2")).toBe("8");
    await context.close();
  });

  test("closed to the page: the page works, says so, and asks before it is left", async () => {
    const context = await browserWith(browser, {}, NARROW);
    await context.addInitScript(() => {
      Object.defineProperty(window, "localStorage", {
        get: () => {
          throw new DOMException("closed", "SecurityError");
        },
      });
    });
    const { page, sheet } = await openTab(context);
    await says(page, "does not let the page keep the workbook, so it is lost when the page closes");
    await sheet.type("Plan!D16", "0.9");
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    await page.reload();
    expect(asked).toEqual(["beforeunload"]);
    await context.close();
  });
});

describe.each([
  ["with locks", true],
  ["without locks", false],
])("two tabs %s", (_, hasLocks) => {
  test("what one keeps is not replaced by the other in silence; each way out works, by keyboard as well", async () => {
    const context = await browserWith(browser, { [STORAGE_KEYS.present]: keptWith(1) }, NARROW);
    if (!hasLocks) await context.addInitScript(() => Object.defineProperty(navigator, "locks", { value: undefined }));
    const first = await openTab(context);
    const second = await openTab(context);
    const early = "The sheet is open in another tab of this browser too";
    const late = "Another tab of this browser has kept a later workbook";
    if (hasLocks) await says(second.page, early);
    expect(await sentences(first.page)).toEqual([]);

    await first.sheet.type("A1", "2");
    await first.sheet.saved();
    await says(second.page, late);
    await second.sheet.type("A2", "22");
    await second.page.waitForFunction(() => document.getElementById("saved")?.textContent === "Not saved");
    expect(await second.page.locator(".notice").getByRole("button", { name: "Close" }).count()).toBe(0);
    expect(valueKept(await keptText(second.page, "present"))).toBe("2");
    const file = await offered(second.page, "Save as file…");
    expect([valueKept(file.text), valueKept(file.text, "A2")]).toEqual(["1", "22"]);

    // Its own one in the place of the other's.
    await second.sheet.type("A2", "23");
    await says(second.page, late);
    await second.page.keyboard.press("Shift+F6");
    await second.page.keyboard.press("Tab");
    expect(await second.page.evaluate(() => document.activeElement?.textContent)).toBe("Keep this one instead…");
    await second.page.keyboard.press("Enter");
    await agree(second.page, "Keep this one");
    await second.sheet.saved();
    expect(valueKept(await keptText(second.page, "present"), "A2")).toBe("23");
    expect(valueKept(await keptText(second.page, "before"))).toBe("2");
    expect(await sentences(second.page)).toEqual([]);

    // The first one has lost it, and shows the other's.
    await says(first.page, late);
    await first.sheet.type("A1", "3");
    await first.page.waitForFunction(() => document.getElementById("saved")?.textContent === "Not saved");
    expect(valueKept(await keptText(first.page, "present"), "A2")).toBe("23");
    await press(first.page, "Show that one…");
    await agree(first.page, "Show the kept one");
    await first.page.waitForFunction(() => !document.querySelector(".notice")?.textContent?.includes("later workbook"));
    expect([await first.sheet.valueOf("A1"), await first.sheet.valueOf("A2")]).toEqual(["1", "23"]);
    await context.close();
  });
});

test("with locks, a tab left alone keeps the workbook again, without a word", async () => {
  const context = await browserWith(browser, { [STORAGE_KEYS.present]: keptWith(1) });
  const first = await openTab(context);
  const second = await openTab(context);
  await says(second.page, "The sheet is open in another tab");
  await second.sheet.type("A1", "4");
  await first.page.close();
  await second.sheet.saved();
  expect(await sentences(second.page)).toEqual([]);
  expect(valueKept(await keptText(second.page, "present"))).toBe("4");
  await context.close();
});

test("a file that was altered since it was saved opens only after a warning; one cut short not at all", async () => {
  const context = await browserWith(browser, { [STORAGE_KEYS.present]: keptWith(1) }, NARROW);
  const { page, sheet } = await openTab(context);
  const choose = (name: string, text: string) =>
    page.locator("#file-field").setInputFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
  await choose("short.canyard.json", keptWith(6, "Short").slice(0, 300));
  await says(
    page,
    "“short.canyard.json” was not opened. It is a Canyard workbook, but parts of it are missing or damaged.",
  );
  await choose("chart.canyard.json", unshowable());
  await agree(page, "Open the file");
  await says(page, "“chart.canyard.json” was not opened. Parts of it are missing or damaged.");
  // The page's own question has taken the focus from the cell and given it back.
  await sheet.type("A2", "=A1+1");
  expect([(await sheet.line()).value, await page.title()]).toEqual(["2", "House 4 – Canyard"]);
  await choose("altered.canyard.json", keptWith(6, "Altered").replace('"A1":"6"', '"A1":"7"'));
  await page.locator("#question-text").filter({ hasText: "its checksum does not fit" }).waitFor();
  expect(await seriousFaults(page)).toEqual([]);
  await agree(page, "Open the file");
  await page.waitForFunction(() => document.title.startsWith("Altered"));
  expect(await sheet.valueOf("A1")).toBe("7");
  await context.close();
});

test("at 320 pixels the notices fit, and an accessibility checker finds nothing serious, light and dark", async () => {
  const kept = { [STORAGE_KEYS.present]: "{cut", [STORAGE_KEYS.before]: keptWith(1) };
  const context = await browserWith(browser, kept, NARROW);
  await openTab(context);
  const { page } = await openTab(context);
  await says(page, "The sheet is open in another tab");
  await says(page, "kept aside");
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme });
    expect([colorScheme, await seriousFaults(page)]).toEqual([colorScheme, []]);
  }
  await context.close();
});
