/**
 * `npm run mutate`: mutation testing over the kernel and the catalogue, and docs/quality.md from it.
 * `-- --only kernel` or `--only catalogue` runs one and takes the other from the last run, where there is one;
 * `-- --report` writes the page anew from the last run.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { Stryker } from "@stryker-mutator/core";
import { qualityPage } from "./mutation/report.mjs";

const PAGE = fileURLToPath(new URL("../docs/quality.md", import.meta.url));

/** Mutants of the catalogue are mostly data, which the compiler judges in batches; each of the kernel it would judge alone. */
const RUNS = {
  kernel: { mutate: ["src/kernel/**/*.ts", "!src/kernel/sources.ts"], checkers: [] },
  catalogue: { mutate: ["src/functions/catalogue/**/*.ts", "!**/questions.ts"], checkers: ["typescript"] },
};

const reportOf = (name) => fileURLToPath(new URL(`../reports/mutation-${name}.json`, import.meta.url));

const { values } = parseArgs({ options: { only: { type: "string" }, report: { type: "boolean", default: false } } });
const names = values.report ? [] : Object.keys(RUNS).filter((name) => values.only === undefined || name === values.only);
for (const name of names) {
  await new Stryker({ ...RUNS[name], jsonReporter: { fileName: `reports/mutation-${name}.json` } }).runMutationTest();
}
const reports = Object.keys(RUNS)
  .map(reportOf)
  .filter((file) => existsSync(file));
const before = existsSync(PAGE) ? readFileSync(PAGE, "utf8") : "";
writeFileSync(PAGE, qualityPage(reports.map((file) => JSON.parse(readFileSync(file, "utf8"))), before));
