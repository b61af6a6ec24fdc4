/** One function over a long block of readings, against the readings sorted beside it and the means of both. */
import type { SheetModel } from "../../src/sheet/sheetModel";
import { mustAgree } from "./engineAgree";
import { compareInTurns } from "./engineCompare";
import { engineLine } from "./engineLine";
import { dataOf, opened, write, type Cells } from "./engineSheets";
import type { BenchLine } from "./part";

const WHAT = "Uniformity of one block of all readings: 1 cell against a sorted column, two means and their ratio";

/** Invented catches of 40 to 139, no two neighbours alike. */
const reading = (row: number): number => 40 + ((row * 7919) % 997) / 10;

export async function blockLines(readings: number, rounds: number): Promise<BenchLine[]> {
  const column: Cells = {};
  for (let row = 1; row <= readings; row += 1) column[`A${row}`] = String(reading(row));
  const all = `A1:A${readings}`;
  const ours = dataOf({ ...column, B1: `=CANYARD.DU_LOW_QUARTER(${all})` }, readings, 2);
  const chain = {
    ...column,
    B1: `=SORT(${all})`,
    C1: `=AVERAGE(B1:B${Math.ceil(readings / 4)})`,
    C2: `=AVERAGE(${all})`,
    C3: "=C1/C2",
  };
  const against = dataOf(chain, readings, 3);
  const sheets = { ours: opened(ours), against: opened(against) };
  const places = [["B1", "C3"]] as const;
  mustAgree(WHAT, sheets.ours, sheets.against, places);
  const changes = { ours: changer(sheets.ours), against: changer(sheets.against) };
  changes.ours();
  changes.against();
  mustAgree(`${WHAT}, changed`, sheets.ours, sheets.against, places);
  const recalculation = await compareInTurns(changes.ours, changes.against, rounds);
  const build = await compareInTurns(
    () => opened(ours),
    () => opened(against),
    rounds,
  );
  return [engineLine(WHAT, "build", build, true), engineLine(WHAT, "recalculation", recalculation, true)];
}

/** The first reading is taken anew, there and back in turns. */
function changer(sheet: SheetModel): () => void {
  let turn = 0;
  return () => write(sheet, "A1", turn++ % 2 === 0 ? 20 : reading(1));
}
