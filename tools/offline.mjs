/** Writes the service worker of the browser sheet: which files it keeps, and a version that changes with any of them. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

const SOURCE = fileURLToPath(new URL("../src/sheet/serviceWorker.js", import.meta.url));
const NAME = "service-worker.js";

/** What only a host, an installer or a programmer needs. */
const NOT_FOR_THE_SHEET = [
  /^taskpane\.html$/,
  /^manifest\.xml$/,
  /^functions\.json$/,
  /^library\./,
  /^google-sheets\//,
  /^icons\//,
  /\.(xlsx|zip|txt|md)$/,
  /^service-worker\.js$/,
];

function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      relative(folder, join(entry.parentPath ?? entry.path, entry.name))
        .split(sep)
        .join("/"),
    )
    .sort();
}

/** The files of a built folder that the browser sheet needs to open without a network. */
export function filesToKeep(folder) {
  return filesBelow(folder).filter((name) => !NOT_FOR_THE_SHEET.some((pattern) => pattern.test(name)));
}

export function writeServiceWorker(folder) {
  const files = filesToKeep(folder);
  const hash = createHash("sha256");
  for (const name of files)
    hash
      .update(name)
      .update("\0")
      .update(readFileSync(join(folder, name)))
      .update("\0");
  const source = readFileSync(SOURCE, "utf8");
  const version = hash.digest("hex").slice(0, 16);
  const text = source
    .replace('const VERSION = "version";', `const VERSION = "${version}";`)
    .replace('const FILES = ["./"];', `const FILES = ${JSON.stringify(["./", ...files])};`);
  if (!text.includes(version) || !text.includes("index.html"))
    throw new Error("the service worker has no place for its files");
  writeFileSync(join(folder, NAME), text);
}
