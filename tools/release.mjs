/**
 * `npm run release -- --base-url https://example.org/canyard/`: one archive with the site for that address, the starter
 * workbooks, the library, the script for Google Sheets, the documents, the licences and the checksums of all of it.
 * The same sources give the same bytes; `--twice` makes it two times and compares.
 */
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { zipSync } from "fflate";
import { build } from "./build.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const RELEASE = join(ROOT, "release");
const DOCUMENTS = ["README.md", "CHANGELOG.md", "LICENSE", "docs"];
/** The earliest date that an archive can hold: the same in every build. */
const DATE = new Date(1980, 0, 1);

const sha256 = (bytes) => createHash("sha256").update(bytes).digest("hex");

function filesBelow(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath ?? entry.path, entry.name));
}

/** Name in the archive to bytes, in the order of the names. */
function contents(version) {
  const top = `canyard-${version}`;
  const entry = (name, file) => [`${top}/${name.split(sep).join("/")}`, readFileSync(file)];
  const site = filesBelow(join(ROOT, "dist")).map((file) =>
    entry(join("site", relative(join(ROOT, "dist"), file)), file),
  );
  const documents = DOCUMENTS.flatMap((name) => {
    const place = join(ROOT, name);
    const files = name === "docs" ? filesBelow(place) : [place];
    return files.map((file) => entry(relative(ROOT, file), file));
  });
  const all = [...site, ...documents].sort(([a], [b]) => (a < b ? -1 : 1));
  const sums = all.map(([name, bytes]) => `${sha256(bytes)}  ${name.slice(top.length + 1)}`).join("\n");
  return Object.fromEntries([...all, [`${top}/SHA256SUMS`, Buffer.from(`${sums}\n`)]]);
}

async function archive(baseUrl) {
  const { version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  await build(baseUrl === undefined ? {} : { baseUrl });
  for (const maker of ["tools/starters.ts", "tools/hostCheck.ts"]) {
    execFileSync(process.execPath, ["--import", "tsx", maker], { cwd: ROOT, stdio: "inherit" });
  }
  const files = contents(version);
  const zipped = Object.fromEntries(
    Object.entries(files).map(([name, bytes]) => [name, [bytes, { mtime: DATE, level: 9 }]]),
  );
  return { name: `canyard-${version}.zip`, bytes: zipSync(zipped), files };
}

function difference(first, second) {
  const names = new Set([...Object.keys(first.files), ...Object.keys(second.files)]);
  return [...names].filter((name) => {
    const [a, b] = [first.files[name], second.files[name]];
    return !a || !b || sha256(a) !== sha256(b);
  });
}

async function main() {
  const { values } = parseArgs({
    options: { "base-url": { type: "string" }, twice: { type: "boolean", default: false } },
  });
  const first = await archive(values["base-url"]);
  if (values.twice) {
    const second = await archive(values["base-url"]);
    const differing = difference(first, second);
    if (differing.length > 0 || sha256(first.bytes) !== sha256(second.bytes)) {
      throw new Error(`two builds of the same sources differ in: ${differing.join(", ") || "the archive itself"}`);
    }
    console.log("two builds give the same bytes");
  }
  rmSync(RELEASE, { recursive: true, force: true });
  mkdirSync(RELEASE);
  writeFileSync(join(RELEASE, first.name), first.bytes);
  writeFileSync(join(RELEASE, `${first.name}.sha256`), `${sha256(first.bytes)}  ${first.name}\n`);
  console.log(
    `release/${first.name}: ${Object.keys(first.files).length} files, ${Math.round(first.bytes.length / 1000)} kB`,
  );
}

main().catch((error) => {
  console.error(error.message);
  process.exitCode = 1;
});
