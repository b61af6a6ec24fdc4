/** Whatever an entry says is text on its page. */
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { parsedPage, tagsUnderstood } from "../rig/builtPage";

const ROOT = join(__dirname, "../..");
const HOSTILE = `<img src=x onerror="alert(1)">'"&lt;</code></script><script>alert(2)</script>`;
/** With a caution, usual ranges, a working and mistakes; with a table for an answer. */
const NAMES = ["RUN_MINUTES", "FLOOD_SCHEDULE"];

interface Made {
  readonly name: string;
  readonly plain: string;
  readonly hostile: string;
  /** How many texts the hostile one stands in place of. */
  readonly replaced: number;
}

const made = JSON.parse(
  execFileSync(process.execPath, ["--import", "tsx", "test/rig/hostileReference.tsx"], {
    cwd: ROOT,
    input: JSON.stringify({ names: NAMES, text: HOSTILE }),
    encoding: "utf8",
  }),
) as readonly Made[];

describe.each(made)("hostile text in every place of the page of $name", ({ plain, hostile, replaced }) => {
  const page = parsedPage(hostile);
  const all = [...page.querySelectorAll("*")];

  test("makes no element and no attribute that runs", () => {
    expect(page.querySelectorAll("img, script")).toHaveLength(0);
    const running = all.flatMap((element) => element.getAttributeNames()).filter((name) => name.startsWith("on"));
    expect(running).toEqual([]);
    const usual = new Set(tagsUnderstood(parsedPage(plain)));
    // A word for the units that is neither gets a heading of its own.
    expect(tagsUnderstood(page).filter((tag) => !usual.has(tag) && tag !== "h3")).toEqual([]);
  });

  test("is shown as it was written, in as many places as there are texts", () => {
    const shown = page.body.textContent.split(HOSTILE).length - 1;
    expect(replaced).toBeGreaterThan(50);
    expect(shown).toBeGreaterThanOrEqual(replaced);
  });

  test("leads to no page elsewhere", () => {
    const links = [...page.querySelectorAll("a")].map((link) => link.getAttribute("href") ?? "");
    expect(links.filter((link) => /^(?:[a-z]+:|\/)/i.test(link))).toEqual([]);
  });
});
