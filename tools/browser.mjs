/**
 * A browser for the tests and pictures. On 64-bit Linux it comes out of an npm
 * package and brings its own libraries and fonts, so a bare system needs nothing
 * installed; elsewhere an installed Chrome, Edge or Chromium is used.
 */
import { randomUUID } from "node:crypto";
import { constants, createReadStream, createWriteStream, existsSync, readFileSync } from "node:fs";
import { access, mkdir, mkdtemp, rename, rm, writeFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import { delimiter, dirname, join } from "node:path";
import { pipeline } from "node:stream/promises";
import { fileURLToPath } from "node:url";
import { createBrotliDecompress } from "node:zlib";
import { chromium } from "playwright-core";

const PACKAGED_BROWSER = "@sparticuz/chromium";
const CACHE = fileURLToPath(new URL("../node_modules/.cache/canyard-browser", import.meta.url));
const require = createRequire(import.meta.url);

/** The package's own default arguments switch web security off; none of them is used. */
const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** @param {import("playwright-core").LaunchOptions} [options] */
export async function launchBrowser(options = {}) {
  return chromium.launch({ ...(await browserLaunchOptions()), ...options });
}

/** What `chromium.launch` and `chromium.launchServer` need to start the browser. */
export async function browserLaunchOptions() {
  const chosen = process.env.CANYARD_BROWSER;
  if (chosen) return installedBrowser(await existing(chosen));
  if (process.platform === "linux" && process.arch === "x64" && isInstalled(PACKAGED_BROWSER)) return packagedBrowser();
  const found = usualPlaces().find((place) => existsSync(place));
  if (found) return installedBrowser(found);
  throw new Error(
    "No browser was found: install Google Chrome, Microsoft Edge or Chromium, or set CANYARD_BROWSER to the path of one.",
  );
}

function installedBrowser(executablePath) {
  return { executablePath, args: ARGUMENTS, env: process.env };
}

async function existing(path) {
  try {
    await access(path, constants.X_OK);
  } catch {
    throw new Error(`CANYARD_BROWSER is set to ${path}, which is not a program that can be run.`);
  }
  return path;
}

async function packagedBrowser() {
  const folder = await unpackedBrowser();
  const libraries = [join(folder, "lib"), process.env.LD_LIBRARY_PATH].filter(Boolean).join(delimiter);
  const env = { ...process.env, LD_LIBRARY_PATH: libraries, FONTCONFIG_FILE: await fontSettings(folder) };
  return { executablePath: join(folder, "chromium"), args: ARGUMENTS, env };
}

/** Unpacks once, beside the final place and then in one rename, so runs at the same time do not meet half a browser. */
async function unpackedBrowser() {
  const source = packageFolder(PACKAGED_BROWSER);
  const folder = join(CACHE, JSON.parse(readFileSync(join(source, "package.json"), "utf8")).version);
  if (existsSync(folder)) return folder;
  await mkdir(CACHE, { recursive: true });
  const draft = await mkdtemp(join(CACHE, "unpacking-"));
  try {
    await Promise.all([
      unpackFile(join(source, "bin", "chromium.br"), join(draft, "chromium")),
      unpackFolder(join(source, "bin", "al2023.tar.br"), draft),
      unpackFolder(join(source, "bin", "fonts.tar.br"), draft),
    ]);
    await rename(draft, folder).catch((error) => {
      if (!existsSync(folder)) throw error;
    });
  } finally {
    await rm(draft, { recursive: true, force: true });
  }
  return folder;
}

function unpackFile(from, to) {
  return pipeline(createReadStream(from), createBrotliDecompress(), createWriteStream(to, { mode: 0o755 }));
}

function unpackFolder(from, to) {
  const { extract } = createRequire(join(packageFolder(PACKAGED_BROWSER), "package.json"))("tar-fs");
  return pipeline(createReadStream(from), createBrotliDecompress(), extract(to, { chown: false }));
}

/** Our fonts come first, so that pictures look the same everywhere; the system's own fill what they lack. */
async function fontSettings(folder) {
  const folders = [join(folder, "fonts"), "/usr/share/fonts", "/usr/local/share/fonts"];
  if (isInstalled("dejavu-fonts-ttf/package.json")) {
    folders.unshift(join(dirname(require.resolve("dejavu-fonts-ttf/package.json")), "ttf"));
  }
  const file = join(folder, "fonts.conf");
  const draft = `${file}.${randomUUID()}`;
  await writeFile(draft, fontconfig(folders, join(CACHE, "fontconfig")));
  await rename(draft, file);
  return file;
}

function fontconfig(folders, cache) {
  const lines = [
    ...folders.map((folder) => `<dir>${xmlText(folder)}</dir>`),
    `<cachedir>${xmlText(cache)}</cachedir>`,
    preference("sans-serif", "Open Sans", "DejaVu Sans"),
    preference("serif", "DejaVu Serif", "Open Sans"),
    preference("monospace", "DejaVu Sans Mono", "Open Sans"),
  ];
  return `<?xml version="1.0"?>\n<fontconfig>\n${lines.join("\n")}\n</fontconfig>\n`;
}

function preference(asked, ...given) {
  const families = given.map((family) => `<family>${family}</family>`).join("");
  return `<alias binding="same"><family>${asked}</family><prefer>${families}</prefer></alias>`;
}

function xmlText(text) {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
}

function isInstalled(name) {
  try {
    return Boolean(require.resolve(name));
  } catch {
    return false;
  }
}

/** The package's `exports` hide its package.json, so its folder is found from its entry file. */
function packageFolder(name) {
  const entry = require.resolve(name);
  const end = join("node_modules", ...name.split("/"));
  return entry.slice(0, entry.lastIndexOf(end) + end.length);
}

function usualPlaces() {
  if (process.platform === "darwin") return macPlaces();
  if (process.platform === "win32") return windowsPlaces();
  const names = ["google-chrome", "google-chrome-stable", "chromium", "chromium-browser", "microsoft-edge"];
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name)));
}

function macPlaces() {
  const names = ["Google Chrome", "Microsoft Edge", "Chromium"];
  const folders = ["/Applications", join(homedir(), "Applications")];
  return names.flatMap((name) => folders.map((folder) => join(folder, `${name}.app`, "Contents", "MacOS", name)));
}

function windowsPlaces() {
  const programs = [
    ["Google", "Chrome", "Application", "chrome.exe"],
    ["Microsoft", "Edge", "Application", "msedge.exe"],
    ["Chromium", "Application", "chrome.exe"],
  ];
  const folders = [process.env.ProgramFiles, process.env["ProgramFiles(x86)"], process.env.LOCALAPPDATA].filter(
    Boolean,
  );
  return programs.flatMap((program) => folders.map((folder) => join(folder, ...program)));
}
