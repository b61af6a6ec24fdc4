/** `npm run starters`: the starter workbooks as files in dist/starters. `--data` makes only what the pages fetch. */
import { join } from "node:path";
import { parseArgs } from "node:util";
import { finishedStarters, makeData, makeWorkbooks } from "./starters/make";

const FOLDER = join(__dirname, "../dist/starters");

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { data: { type: "boolean" } } });
  const made = finishedStarters();
  if (!values.data) {
    const names = await makeWorkbooks(FOLDER, made);
    console.log(`${names.length} workbooks in dist/starters`);
  }
  makeData(FOLDER, made);
}

void main();
