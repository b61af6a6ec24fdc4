/** `npm run nursery-day`: works one day through the library and writes its page and its picture; `--check` only says whether they are current. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { format } from "prettier";
import { drawDay } from "./nurseryDay/drawing";
import { dayPage } from "./nurseryDay/page";
import { planDay } from "./nurseryDay/plan";

const ROOT = join(__dirname, "..");

/** Path below the root to its text as it must be, the page in the project's own layout. */
async function dayFiles(): Promise<Record<string, string>> {
  const { printWidth } = JSON.parse(readFileSync(join(ROOT, ".prettierrc.json"), "utf8")) as { printWidth: number };
  const sheet = planDay();
  return {
    "docs/nursery-day.md": await format(dayPage(sheet), { parser: "markdown", printWidth }),
    "docs/pictures/nursery-day.svg": drawDay(sheet),
  };
}

function isCurrent(path: string, text: string): boolean {
  const file = join(ROOT, path);
  return existsSync(file) && readFileSync(file, "utf8") === text;
}

async function main(onlyCheck: boolean): Promise<void> {
  for (const [path, text] of Object.entries(await dayFiles())) {
    if (isCurrent(path, text)) {
      console.log(`${path} is current`);
    } else if (onlyCheck) {
      console.log(`${path} is stale: run \`npm run nursery-day\``);
      process.exitCode = 1;
    } else {
      writeFileSync(join(ROOT, path), text);
      console.log(`wrote ${path}`);
    }
  }
}

void main(process.argv.includes("--check"));
