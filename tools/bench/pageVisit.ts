/** A visit to a page in a context of its own, nothing cached: when were its calculated cells on the screen? */
import type { Browser, Page } from "playwright-core";

declare global {
  interface Window {
    /** Milliseconds from the start of the navigation; settled once. */
    benchPainted?: Promise<number>;
  }
}

/**
 * Runs in the page before its own scripts. The engine draws cells on a canvas, so a cell is painted when its text is
 * drawn and the frame with it is done.
 */
function watchPainting(texts: readonly string[]): void {
  const awaited = new Set(texts);
  const canvas = CanvasRenderingContext2D.prototype;
  const draw = canvas.fillText;
  window.benchPainted = new Promise((resolve) => {
    canvas.fillText = function (text, ...place) {
      draw.call(this, text, ...(place as [number, number]));
      if (!awaited.delete(text) || awaited.size > 0) return;
      canvas.fillText = draw;
      requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
    };
  });
}

const VIEW = { width: 1280, height: 800 };
const LONGEST_WAIT = 60_000;

export interface Visit {
  /** Milliseconds from the start of the navigation to the painted texts. */
  readonly painted: number;
  readonly page: Page;
  close(): Promise<void>;
}

/** `meet` gets the page before it goes anywhere. */
export async function visit(
  browser: Browser,
  address: string,
  texts: readonly string[],
  meet: (page: Page) => void = () => {},
): Promise<Visit> {
  const context = await browser.newContext({ viewport: VIEW });
  context.setDefaultTimeout(LONGEST_WAIT);
  const page = await context.newPage();
  meet(page);
  await page.addInitScript(watchPainting, texts);
  await page.goto(address);
  const painted = await page.evaluate(() => window.benchPainted!);
  return { painted, page, close: () => context.close() };
}
