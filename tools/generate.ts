/** `npm run generate`: writes the generated files; `--check` only says whether they are current. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { format } from "prettier";
import { functionsFile, referencePage } from "./generated";

const ROOT = join(__dirname, "..");

/** Path below the root to its text as it must be, in the project's own layout. */
async function generatedFiles(): Promise<Record<string, string>> {
  const { printWidth } = JSON.parse(readFileSync(join(ROOT, ".prettierrc.json"), "utf8")) as { printWidth: number };
  return {
    "src/functions/functions.ts": await format(functionsFile(), { parser: "typescript", printWidth }),
    "docs/FUNCTIONS.md": await format(referencePage(), { parser: "markdown", printWidth }),
  };
}

function isCurrent(path: string, text: string): boolean {
  const file = join(ROOT, path);
  return existsSync(file) && readFileSync(file, "utf8") === text;
}

async function main(onlyCheck: boolean): Promise<void> {
  for (const [path, text] of Object.entries(await generatedFiles())) {
    if (isCurrent(path, text)) {
      console.log(`${path} is current`);
    } else if (onlyCheck) {
      console.log(`${path} is stale: run \`npm run generate\``);
      process.exitCode = 1;
    } else {
      writeFileSync(join(ROOT, path), text);
      console.log(`wrote ${path}`);
    }
  }
}

void main(process.argv.includes("--check"));
