/** The help beside the browser sheet, in its frame. */
import type { FrameLocator, Page } from "playwright-core";

export class HelpOnPage {
  readonly frame: FrameLocator;

  constructor(private readonly page: Page) {
    this.frame = page.frameLocator("#help iframe");
  }

  /** Opens it where it is folded away, and waits for its list. */
  async open(): Promise<void> {
    const button = this.page.getByRole("button", { name: "Help", exact: true });
    if ((await button.getAttribute("aria-expanded")) !== "true") await button.click();
    await this.frame.locator("main").waitFor();
  }

  async goTo(link: "Find" | "This cell" | "Workbooks" | "About"): Promise<void> {
    await this.frame.getByRole("link", { name: link, exact: true }).click();
  }

  async openFunction(words: string, name: string): Promise<void> {
    await this.goTo("Find");
    await this.frame.getByLabel("What do you want to know?").fill(words);
    await this.frame.locator(`a.entry[href="#${name}"]`).click();
    await this.frame.getByRole("heading", { name, level: 1 }).waitFor();
  }

  field(name: string) {
    return this.frame.locator(`#${name}`);
  }

  async text(selector: string): Promise<string> {
    return (await this.frame.locator(selector).first().textContent()) ?? "";
  }

  /** Waits until a part of the help says something. */
  async says(selector: string, words: string | RegExp): Promise<void> {
    await this.frame.locator(selector).filter({ hasText: words }).first().waitFor();
  }
}
