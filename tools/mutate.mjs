/**
 * `npm run mutate`: mutation testing over the kernel and the catalogue, and docs/quality.md from it, an hour and a half.
 * `-- --only kernel,money` runs these folders and takes the others from their last run, where there is one; `-- --report`
 * writes the page anew from the last runs.
 */
import { existsSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
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
  kernel: { mutate: ["src/kernel/**/*.ts", "!src/kernel/sources.ts"] },
  common: { mutate: [`${CATALOGUE}/*.ts`, "!**/questions.ts"] },
  ...Object.fromEntries(FOLDERS.map((folder) => [folder, { mutate: [`${CATALOGUE}/${folder}/*.ts`] }])),
};

const reportOf = (name) => fileURLToPath(new URL(`../reports/mutation-${name}.json`, import.meta.url));

const { values } = parseArgs({ options: { only: { type: "string" }, report: { type: "boolean", default: false } } });
const all = Object.keys(RUNS);
const wrong = values.only?.split(",").find((name) => !all.includes(name));
if (wrong !== undefined) throw new Error(`--only is ${wrong}; it must be some of ${all.join(",")}`);
for (const name of values.report ? [] : (values.only?.split(",") ?? all)) {
  await new Stryker({ ...RUNS[name], jsonReporter: { fileName: `reports/mutation-${name}.json` } }).runMutationTest();
}
const reports = all
  .filter((name) => existsSync(reportOf(name)))
  .map((name) => ({ name, on: statSync(reportOf(name)).mtime, ...JSON.parse(readFileSync(reportOf(name), "utf8")) }));
const before = existsSync(PAGE) ? readFileSync(PAGE, "utf8") : "";
writeFileSync(PAGE, qualityPage(askedCompiler(reports), all, before));
