/** `npm run bench`: measures, prints, and writes docs/benchmarks.md; `-- --only growth` runs one part. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { enginePart } from "./bench/engine";
import { growthPart } from "./bench/growth";
import { pagePart } from "./bench/page";
import type { RunPart } from "./bench/part";
import { missed, pageWith, sectionOf } from "./bench/report";
import { registeringPart, sizesPart } from "./bench/sizes";
import { validationPart } from "./bench/validation";
import { machineKind } from "./machineKind.mjs";

const PAGE = join(__dirname, "../docs/benchmarks.md");
const BUILT = join(__dirname, "../dist/library.mjs");

const parts: Readonly<Record<string, RunPart>> = {
  validation: validationPart,
  growth: growthPart,
  engine: enginePart,
  sizes: sizesPart,
  registering: registeringPart,
  page: pagePart,
};

function partsAskedFor(only: string | undefined): string[] {
  const names = Object.keys(parts);
  if (only === undefined) return names;
  if (!names.includes(only)) throw new Error(`--only is ${only}; it must be one of ${names.join(", ")}`);
  return [only];
}

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { only: { type: "string" } } });
  const names = partsAskedFor(values.only);
  if (!existsSync(BUILT)) throw new Error("dist/ is not built: npm run build first");
  const [day = ""] = new Date().toISOString().split("T");
  const machine = machineKind();
  const sections = new Map<string, string>();
  let misses = 0;
  for (const name of names) {
    const part = await (parts[name] as RunPart)();
    const section = sectionOf(part, day, machine);
    sections.set(name, section);
    misses += missed(part);
    console.log(`\n${section}`);
  }
  const before = existsSync(PAGE) ? readFileSync(PAGE, "utf8") : "";
  writeFileSync(PAGE, pageWith(before, Object.keys(parts), sections));
  console.log(`\nwrote docs/benchmarks.md; ${misses === 0 ? "every target is met" : `${misses} targets are missed`}`);
}

main().catch((error: unknown) => {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
});
