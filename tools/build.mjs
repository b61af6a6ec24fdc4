/** `npm run build`: makes dist/ from clean. `-- --base-url https://example.org/canyard/` names the place of its files. */
import { spawn } from "node:child_process";
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import webpack from "webpack";
import configuration from "../webpack.config.js";
import { writeGoogleSheetsScript } from "./googleSheets/script.mjs";
import { writeLicences } from "./licences.mjs";
import { writeServiceWorker } from "./offline.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const DIST = fileURLToPath(new URL("../dist", import.meta.url));

/** The address with a slash at its end; a host loads an add-in from https only. */
function baseUrlOf(text) {
  if (text === undefined) return undefined;
  const address = URL.canParse(text) ? new URL(text) : null;
  if (address?.protocol !== "https:") {
    throw new Error(`--base-url is ${text}; it must be an https address, as https://example.org/canyard/`);
  }
  return address.href.endsWith("/") ? address.href : `${address.href}/`;
}

/** Runs a program of ours beside the bundler; gives what it wrote. */
async function runBeside(what, ...args) {
  const child = spawn(process.execPath, args, { cwd: ROOT, stdio: ["ignore", "pipe", "pipe"] });
  let written = "";
  let said = "";
  child.stdout.setEncoding("utf8").on("data", (text) => (written += text));
  child.stderr.setEncoding("utf8").on("data", (text) => (said += text));
  const code = await new Promise((resolve, reject) => child.on("error", reject).on("close", resolve));
  if (code !== 0) throw new Error(`${what} could not be made:\n${said}`);
  return written;
}

const startersData = () => runBeside("the starter workbooks", "--import", "tsx", "tools/starters.ts", "--data");
const declarations = () => runBeside("the library's types", "tools/declarations.mjs");
const referencePages = () => runBeside("the reference", "--import", "tsx", "tools/reference.ts");
const sheetsStubs = () => runBeside("the Google Sheets functions", "--import", "tsx", "tools/googleSheetsStubs.ts");

export async function build({ baseUrl } = {}) {
  rmSync(DIST, { recursive: true, force: true });
  const compiler = webpack(configuration({ baseUrl: baseUrlOf(baseUrl) }));
  const bundled = new Promise((resolve, reject) => {
    compiler.run((error, result) => (error ? reject(error) : resolve(result)));
  });
  const [stats, stubs] = await Promise.all([bundled, sheetsStubs(), declarations(), startersData(), referencePages()]);
  await new Promise((resolve) => compiler.close(resolve));
  if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true, errorDetails: true }));
  writeGoogleSheetsScript(DIST, stubs);
  writeLicences(DIST, stats);
  writeServiceWorker(DIST);
  return stats;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const { values } = parseArgs({ options: { "base-url": { type: "string" } } });
    const stats = await build({ baseUrl: values["base-url"] });
    console.log(stats.toString({ all: false, warnings: true, timings: true }));
    console.log("dist/ is built");
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
