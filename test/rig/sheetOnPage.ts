/** The browser sheet as a person uses it: keys into the selected cell, eyes on the line under the grid. */
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { openPage, type WatchedPage } from "./browserPage";

export interface OpenedSheet extends WatchedPage {
  readonly sheet: SheetOnPage;
}

export async function openSheet(browser: Browser, options: BrowserContextOptions = {}): Promise<OpenedSheet> {
  const opened = await openPage(browser, "", options);
  const sheet = new SheetOnPage(opened.page);
  await sheet.ready();
  return { ...opened, sheet };
}

interface PageSheet {
  selected(): string;
  select(address: string): void;
}

declare const window: { canyardSheet: PageSheet };

const AUTOSAVED = "Saved";

export class SheetOnPage {
  constructor(private readonly page: Page) {}

  async ready(): Promise<void> {
    await this.page.waitForFunction(() => "canyardSheet" in window);
    await this.page.locator("#grid canvas").first().waitFor();
  }

  async select(address: string): Promise<void> {
    await this.page.evaluate((at) => window.canyardSheet.select(at), address);
    await this.page.locator("#grid .o-grid-composer [contenteditable]").first().focus();
    await this.settled();
  }

  /** The engine moves its cell editor a frame or two later; keys before that would go to the cell left behind. */
  private async settled(): Promise<void> {
    await this.page.evaluate(
      () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 60)))),
    );
  }

  /** Types into a cell, enters it and comes back to it. */
  async type(address: string, text: string): Promise<void> {
    await this.startTyping(address, text.slice(0, 1));
    await this.page.keyboard.type(text.slice(1));
    await this.page.keyboard.press("Enter");
    await this.settled();
    await this.select(address);
  }

  /** A busy engine can miss that a key begins a new content: then the old one stands in the editor too. */
  private async startTyping(address: string, key: string): Promise<void> {
    const editor = this.page.locator("#grid .o-grid-composer [contenteditable]").first();
    for (let tries = 0; tries < 5; tries += 1) {
      await this.select(address);
      await this.page.keyboard.type(key);
      await this.settled();
      const written = (await editor.textContent()) ?? "";
      // A cell in percent adds its sign.
      if (written === key || written === `${key}%`) return;
      await this.page.keyboard.press("Escape");
    }
    throw new Error(`${address} cannot be typed into`);
  }

  /** What the line under the grid says of the selected cell. */
  async line(): Promise<{ address: string; formula: string; value: string; message: string }> {
    const text = async (id: string): Promise<string> => (await this.page.locator(`#${id}`).textContent()) ?? "";
    return {
      address: await text("cell-address"),
      formula: await text("cell-formula"),
      value: await text("cell-value"),
      message: await text("cell-message"),
    };
  }

  async valueOf(address: string): Promise<string> {
    await this.select(address);
    return (await this.line()).value;
  }

  async saved(): Promise<void> {
    await this.page.waitForFunction((words) => document.getElementById("saved")?.textContent === words, AUTOSAVED);
  }

  async startBlank(): Promise<void> {
    await this.startFrom("A blank workbook", "Start a blank workbook");
  }

  /** Chooses a workbook to start from; agrees when the page asks about the present one. */
  async startFrom(title: string, agree = "Start from it"): Promise<void> {
    await this.page.getByRole("button", { name: "New…" }).click();
    const before = await this.page.title();
    await this.page.locator("#chooser-list button").filter({ hasText: title }).first().click();
    await this.page.waitForFunction(
      (was) => (document.getElementById("question") as HTMLDialogElement).open || document.title !== was,
      before,
    );
    const isAsked = await this.page.locator("#question").evaluate((dialog) => (dialog as HTMLDialogElement).open);
    if (isAsked) await this.page.getByRole("button", { name: agree }).click();
    await this.page.waitForFunction((was) => document.title !== was, before);
    await this.ready();
  }
}
