import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipped, PANE_AT_MOST, PANE_FILES } from "../rig/gzippedSizes";

const DIST = join(__dirname, "../../dist");
const LARGEST_FETCHED = 12_000;

describe("the pane's page in all", () => {
  test("is at most 160 kB gzipped, the functions and all their texts included", () => {
    const sizes = PANE_FILES.map((name) => [name, gzipped(name)] as const);
    const all = sizes.reduce((sum, [, size]) => sum + size, 0);
    if (all > PANE_AT_MOST)
      throw new Error(`${all} bytes: ${sizes.map(([name, size]) => `${name} ${size}`).join(", ")}`);
    expect(all).toBeGreaterThan(20_000);
  });

  test("brings nothing of the workbooks: what they need is fetched when they are asked for, and is small", () => {
    const holds = (file: string): boolean[] =>
      ["ColumnClustered", "horizontalFitToPages", "-plain.xlsx"].map((text) =>
        readFileSync(join(DIST, file), "utf8").includes(text),
      );
    expect(holds("pane.js")).toEqual([false, false, false]);
    expect(holds("excelWorkbook.js")).toEqual([true, true, false]);
    expect(holds("workbooks.js")).toEqual([false, false, true]);
    expect(gzipped("workbooks.js") + gzipped("excelWorkbook.js")).toBeLessThan(LARGEST_FETCHED);
  });

  test("loads these files and, of others, the host's library alone", () => {
    const page = readFileSync(join(DIST, "taskpane.html"), "utf8");
    const loaded = [...page.matchAll(/<(?:script|link)\b[^>]*?\b(?:src|href)=["']?([^"' >]+)/g)].map(
      (match) => match[1],
    );
    const ours = loaded.filter((address) => !/^(?:https|data):/.test(address ?? ""));
    expect(ours.sort()).toEqual(PANE_FILES.slice(1).sort());
  });

  test("holds no text of the catalogue twice: it stands in the functions' file, not in the pane's", () => {
    const sentence = "Minutes to give each plant its water";
    expect(readFileSync(join(DIST, "functions.js"), "utf8")).toContain(sentence);
    expect(readFileSync(join(DIST, "pane.js"), "utf8")).not.toContain(sentence);
  });
});
