/**
 * `npm run repeat -- 20`: all tests so many times in a row on one build, and what came of it in docs/quality.md. It goes
 * on after a failure, and ends with an error then.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { machineKind } from "./machineKind.mjs";
import { withRuns } from "./mutation/report.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const PAGE = join(ROOT, "docs/quality.md");

const MOST_TEXT = 2 ** 28;

/** The last words of a run that ended with an error although no test failed. */
function lastWords(status, text) {
  return `ended with ${status} although no test failed: ${text.trim().split("\n").slice(-12).join(" | ")}`;
}

/** One run: what jest counted and which tests failed. */
function run(env) {
  const file = join(mkdtempSync(join(tmpdir(), "canyard-run-")), "result.json");
  const start = Date.now();
  const args = ["jest", "--silent", "--json", "--outputFile", file, ...process.argv.slice(3)];
  const options = { cwd: ROOT, env, encoding: "utf8", maxBuffer: MOST_TEXT, stdio: ["ignore", "ignore", "pipe"] };
  const { status, stderr } = spawnSync("npx", args, options);
  const seconds = Math.round((Date.now() - start) / 1000);
  const { numPassedTests = 0, testResults = [] } = JSON.parse(readFileSync(file, "utf8"));
  const failed = testResults.flatMap(({ name, message, status: of, assertionResults }) => {
    const tests = assertionResults.filter((each) => each.status === "failed").map(({ fullName }) => fullName);
    return tests.length === 0 && of === "failed" ? [`${name.replace(ROOT, "")}: ${message.split("\n")[0]}`] : tests;
  });
  if (status !== 0 && failed.length === 0) failed.push(lastWords(status, stderr));
  return { status, seconds, passed: numPassedTests, failed };
}

function sentence(runs) {
  const good = runs.filter(({ status }) => status === 0);
  const failures = runs.flatMap(({ failed }, index) => failed.map((name) => `- run ${index + 1}: ${name}`));
  const seconds = runs.map((each) => each.seconds).sort((a, b) => a - b);
  const [day] = new Date().toISOString().split("T");
  return [
    "## Runs in a row",
    "",
    `\`npm run repeat -- ${runs.length}\`, ${day}, ${machineKind()}: all tests ${runs.length} times in a row, ${good.length} times without a failure (${runs.at(-1).passed} tests passed in the last run). The middle run took ${seconds[Math.floor(seconds.length / 2)]} s, the longest ${seconds.at(-1)} s.`,
    ...(failures.length === 0 ? [] : ["", ...failures]),
  ].join("\n");
}

const times = Number(process.argv[2] ?? 20);
if (!Number.isInteger(times) || times < 1)
  throw new Error(`${process.argv[2]} is no number of runs; it must be 1 or more`);
const runs = [];
while (runs.length < times) {
  const result = run({ ...process.env, CANYARD_BUILT: runs.length === 0 ? "" : "yes" });
  runs.push(result);
  const { status, seconds, passed, failed } = result;
  console.log(`run ${runs.length} of ${times}: ${status === 0 ? "passed" : "FAILED"}, ${passed} tests, ${seconds} s`);
  for (const name of failed) console.log(`  ${name}`);
}
writeFileSync(PAGE, withRuns(readFileSync(PAGE, "utf8"), sentence(runs)));
if (runs.some(({ status }) => status !== 0)) process.exitCode = 1;
