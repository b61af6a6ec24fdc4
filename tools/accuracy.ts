/**
 * `npm run accuracy`: holds every function against its own formulas in numbers of 64 digits and writes docs/accuracy.md.
 * `--calls 40` measures on fewer calls, `--only NAME` one function; neither writes the page.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { format } from "prettier";
import { catalogue } from "../src/functions/catalogue";
import { SEED } from "../test/rig/validInputs";
import { LIMIT } from "./accuracy/judge";
import { measured, type Measured } from "./accuracy/measure";
import { accuracyPage } from "./accuracy/page";
import { machineKind } from "./machineKind.mjs";

const CALLS = 800;
const MICROSECONDS = 1_000_000;
const PAGE = join(__dirname, "../docs/accuracy.md");

function line({ name, calls, atAnEdge, dust, worst }: Measured): string {
  const found = worst === null ? "no number" : `${(worst.share / LIMIT).toExponential(1)} of the limit`;
  const verdict = worst !== null && !(worst.share <= LIMIT) ? `  BEYOND IT: ${worst.call}: ${worst.step}` : "";
  return `${name.padEnd(28)}${String(calls).padStart(5)} calls, ${atAnEdge} at an edge, ${dust} dust: ${found}${verdict}`;
}

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { calls: { type: "string" }, only: { type: "string" } } });
  const calls = Number(values.calls ?? CALLS);
  const all: Measured[] = [];
  for (const entry of catalogue) {
    if (values.only !== undefined && entry.name !== values.only) continue;
    const found = measured(entry, calls);
    console.log(line(found));
    all.push(found);
  }
  if (all.some(({ worst }) => worst !== null && !(worst.share <= LIMIT))) process.exitCode = 1;
  if (values.calls !== undefined || values.only !== undefined) return;
  const page = accuracyPage(all, {
    day: new Date().toISOString().slice(0, 10),
    machine: machineKind(),
    command: "npm run accuracy",
    seed: SEED,
    calls,
    seconds: Math.round(process.cpuUsage().user / MICROSECONDS),
  });
  writeFileSync(PAGE, await format(page, { parser: "markdown", printWidth: 120 }));
  console.log("wrote docs/accuracy.md");
}

void main();
