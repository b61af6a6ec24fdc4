/**
 * `npm run mutate`: mutation testing over the kernel and the catalogue, and docs/quality.md from it, about an hour.
 * `-- --only kernel,money` runs these folders and takes the others from their last run, where there is one; `-- --again`
 * tries those that live once more; `-- --file src/kernel/show.ts` runs one file of a folder; `-- --report` writes the
 * page anew from the last runs.
 */
import { existsSync, readFileSync, statSync, utimesSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { linesOfLiving, withFates, withFile } from "./mutation/again.mjs";
import { askedCompiler } from "./mutation/compiler.mjs";
import { qualityPage } from "./mutation/report.mjs";

const PAGE = fileURLToPath(new URL("../docs/quality.md", import.meta.url));

const CATALOGUE = "src/functions/catalogue";
const FOLDERS = [
  "container",
  "weather",
  "uniformity",
  "leaching",
  "runTime",
  "supply",
  "feed",
  "hydraulics",
  "money",
  "teaching",
];

const RUNS = {
  kernel: ["src/kernel/**/*.ts", "!src/kernel/sources.ts"],
  common: [`${CATALOGUE}/*.ts`, "!**/questions.ts"],
  ...Object.fromEntries(FOLDERS.map((folder) => [folder, [`${CATALOGUE}/${folder}/*.ts`]])),
};

const reportOf = (name) => fileURLToPath(new URL(`../reports/mutation-${name}.json`, import.meta.url));

function reports() {
  return all
    .filter((name) => existsSync(reportOf(name)))
    .map((name) => ({ name, on: statSync(reportOf(name)).mtime, ...JSON.parse(readFileSync(reportOf(name), "utf8")) }));
}

function run(name, mutate) {
  return new Stryker({ mutate, jsonReporter: { fileName: `reports/mutation-${name}.json` } }).runMutationTest();
}

const { values } = parseArgs({
  options: {
    only: { type: "string" },
    again: { type: "boolean", default: false },
    file: { type: "string" },
    report: { type: "boolean", default: false },
  },
});
const all = Object.keys(RUNS);
const wrong = values.only?.split(",").find((name) => !all.includes(name));
if (wrong !== undefined) throw new Error(`--only is ${wrong}; it must be some of ${all.join(",")}`);
/** Runs these mutants and lets the reports take from it what `taken` gives. */
async function runInto(mutate, taken) {
  await run("again", mutate);
  const again = JSON.parse(readFileSync(reportOf("again"), "utf8"));
  for (const { name, on, ...report } of reports()) {
    writeFileSync(reportOf(name), JSON.stringify(taken(report, again)));
    utimesSync(reportOf(name), on, on);
  }
}

if (values.file !== undefined) {
  await runInto([values.file], withFile);
} else if (values.again) {
  await runInto(linesOfLiving(askedCompiler(reports())), withFates);
} else if (!values.report) {
  for (const name of values.only?.split(",") ?? all) await run(name, RUNS[name]);
}
const before = existsSync(PAGE) ? readFileSync(PAGE, "utf8") : "";
writeFileSync(PAGE, qualityPage(askedCompiler(reports()), all, before));
