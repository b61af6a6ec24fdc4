import { unzipSync, strFromU8 } from "fflate";
import { hostCheck } from "../../tools/hostCheck/workbook";
import { finish } from "../../tools/starters/finish";
import { withOurFunctions } from "../../tools/starters/layOut";
import { xlsxOf } from "../../tools/starters/xlsx";

test("the file spells the functions as the host stores them", async () => {
  const bytes = await xlsxOf(withOurFunctions(finish(hostCheck())), { title: "Canyard host check", edition: "us" });
  const parts = unzipSync(bytes);
  const sheets = Object.keys(parts).filter((name) => /^xl\/worksheets\/sheet\d+\.xml$/.test(name));
  const stored = sheets.flatMap((name) => strFromU8(parts[name]!).match(/<f>[^<]*_xldudf_CANYARD_[A-Z0-9_]+\(/g) ?? []);
  expect(stored.length).toBeGreaterThan(600);
  const unstored = sheets.flatMap((name) => strFromU8(parts[name]!).match(/<f>[^<]*CANYARD\.[A-Z0-9_]+\(/g) ?? []);
  expect(unstored).toEqual([]);
});
