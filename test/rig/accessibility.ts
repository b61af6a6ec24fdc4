/** What an accessibility checker finds serious on a page. */
import { readFileSync } from "node:fs";
import type { AxeResults } from "axe-core";
import type { Page } from "playwright-core";

const AXE = readFileSync(require.resolve("axe-core/axe.min.js"), "utf8");

interface Checker {
  run(options: object): Promise<AxeResults>;
}

/** The checker is large: it goes into a page once, and only what it found comes back. */
export async function seriousFaults(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as { axe: Checker };
    const { violations } = await axe.run({ resultTypes: ["violations"] });
    return violations
      .filter(({ impact }) => impact === "serious" || impact === "critical")
      .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
  });
}
