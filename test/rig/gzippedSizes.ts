/** How large the built files are on their way to a browser. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const DIST = join(__dirname, "../../dist");

/** All that the pane loads of ours: the page names the three others. */
export const PANE_FILES = ["taskpane.html", "pane.js", "pane.css", "functions.js"];
/** What they may have in all, in bytes. */
export const PANE_AT_MOST = 160_000;

export function gzippedBytes(content: Uint8Array): number {
  return gzipSync(content, { level: 9 }).length;
}

/** Of a file of dist/. */
export function gzipped(name: string): number {
  return gzippedBytes(readFileSync(join(DIST, name)));
}
