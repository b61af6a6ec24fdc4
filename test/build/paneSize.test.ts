import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const DIST = join(__dirname, "../../dist");
const LARGEST = 160_000;

/** All that the pane loads of ours: the page names the three others. */
const FILES = ["taskpane.html", "pane.js", "pane.css", "functions.js"];

function gzipped(name: string): number {
  return gzipSync(readFileSync(join(DIST, name)), { level: 9 }).length;
}

describe("the pane's page in all", () => {
  test("is at most 160 kB gzipped, the functions and all their texts included", () => {
    const sizes = FILES.map((name) => [name, gzipped(name)] as const);
    const all = sizes.reduce((sum, [, size]) => sum + size, 0);
    if (all > LARGEST) throw new Error(`${all} bytes: ${sizes.map(([name, size]) => `${name} ${size}`).join(", ")}`);
    expect(all).toBeGreaterThan(20_000);
  });

  test("loads these files and, of others, the host's library alone", () => {
    const page = readFileSync(join(DIST, "taskpane.html"), "utf8");
    const loaded = [...page.matchAll(/<(?:script|link)\b[^>]*?\b(?:src|href)=["']?([^"' >]+)/g)].map(
      (match) => match[1],
    );
    const ours = loaded.filter((address) => !/^(?:https|data):/.test(address ?? ""));
    expect(ours.sort()).toEqual(FILES.slice(1).sort());
  });

  test("holds no text of the catalogue twice: it stands in the functions' file, not in the pane's", () => {
    const sentence = "Minutes to give each plant its water";
    expect(readFileSync(join(DIST, "functions.js"), "utf8")).toContain(sentence);
    expect(readFileSync(join(DIST, "pane.js"), "utf8")).not.toContain(sentence);
  });
});
