/** Writes dist/host-check.xlsx, for a person with the real host. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { hostCheck } from "./hostCheck/workbook";
import { finish } from "./starters/finish";
import { withOurFunctions } from "./starters/layOut";
import { xlsxOf } from "./starters/xlsx";

async function main(): Promise<void> {
  const finished = finish(hostCheck());
  const bytes = await xlsxOf(withOurFunctions(finished), { title: "Canyard host check", edition: "us" });
  writeFileSync(join(__dirname, "../dist/host-check.xlsx"), bytes);
}

void main();
