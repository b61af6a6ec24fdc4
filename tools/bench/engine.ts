/** In the spreadsheet engine of the browser sheet: one function of ours a row against the built-in cells it stands for. */
import type { EngineData } from "../../src/sheet/engine";
import type { SheetModel } from "../../src/sheet/sheetModel";
import { mustAgree } from "./engineAgree";
import { blockLines } from "./engineBlock";
import { FIRST_ROW, ROW_CASES, type EngineCase } from "./engineCases";
import { compareInTurns } from "./engineCompare";
import { engineLine } from "./engineLine";
import { dataOf, fillFirstColumn, lettersOf, opened, write, type Cells } from "./engineSheets";
import type { Comparison } from "./measure";
import type { BenchLine, RunPart } from "./part";

const ROWS = 20_000;
const ROUNDS = 7;
/** For what is only reported. */
const FEWER_ROUNDS = 3;

interface Laid {
  readonly data: EngineData;
  /** Column letters of the last answer. */
  readonly answer: string;
}

/** Formulas of ours, or those of one of the chains. */
type Way = "ours" | "chain" | "long";

function lay(given: EngineCase, way: Way, rows: number): Laid {
  const cells: Cells = Object.fromEntries(Object.entries(given.shared).map(([at, content]) => [at, String(content)]));
  let columns = 0;
  for (let row = FIRST_ROW; row < FIRST_ROW + rows; row += 1) {
    const contents = [...given.inputs(row).map(String), ...given[way](row)];
    contents.forEach((content, column) => (cells[`${lettersOf(column)}${row}`] = content));
    columns = contents.length;
  }
  return { data: dataOf(cells, FIRST_ROW + rows - 1, columns), answer: lettersOf(columns - 1) };
}

/** Changes what every row depends on, there and back in turns. */
function changer(given: EngineCase, sheet: SheetModel, rows: number): () => void {
  let turn = 0;
  const { change } = given;
  if (change !== "first input of all rows") {
    return () => write(sheet, change.cell, change.values[turn++ % 2] as number);
  }
  const first = Array.from({ length: rows }, (_, at) => given.inputs(FIRST_ROW + at)[0] as number);
  const moved = first.map((value) => value + 1);
  return () => fillFirstColumn(sheet, FIRST_ROW, turn++ % 2 === 0 ? moved : first);
}

async function linesOf(given: EngineCase, way: "chain" | "long", rows: number, rounds: number): Promise<BenchLine[]> {
  const [ours, against] = [lay(given, "ours", rows), lay(given, way, rows)];
  const sheets = { ours: opened(ours.data), against: opened(against.data) };
  const places = Array.from(
    { length: rows },
    (_, at) => [`${ours.answer}${FIRST_ROW + at}`, `${against.answer}${FIRST_ROW + at}`] as const,
  );
  mustAgree(given.what, sheets.ours, sheets.against, places);
  const changes = { ours: changer(given, sheets.ours, rows), against: changer(given, sheets.against, rows) };
  changes.ours();
  changes.against();
  mustAgree(`${given.what}, changed`, sheets.ours, sheets.against, places);
  const recalculation = await compareInTurns(changes.ours, changes.against, rounds);
  const build = await compareInTurns(
    () => opened(ours.data),
    () => opened(against.data),
    rounds,
  );
  const count = (which: Way) => given[which](FIRST_ROW).length;
  const words = `${given.what}: ${count("ours")} cell${count("ours") > 1 ? "s" : ""} a row against ${
    way === "chain" ? `a chain of ${count("chain")}` : `${count("long")} with long formulas`
  }`;
  const lineOf = (step: string, found: Comparison) => engineLine(words, step, found, way === "chain");
  return [lineOf("build", build), lineOf("recalculation", recalculation)];
}

/** Smaller sheets and fewer rounds serve to try it. */
export async function engineLines(rows = ROWS, rounds = ROUNDS): Promise<BenchLine[]> {
  const lines: BenchLine[] = [];
  for (const given of ROW_CASES) {
    lines.push(...(await linesOf(given, "chain", rows, rounds)));
    lines.push(...(await linesOf(given, "long", rows, Math.min(rounds, FEWER_ROUNDS))));
  }
  return [...lines, ...(await blockLines(rows, rounds))];
}

export const enginePart: RunPart = async () => ({
  title: `In a spreadsheet engine, ${ROWS.toLocaleString("en-US")} rows`,
  about:
    "The engine of the browser sheet, without a page, with the functions registered as the page does it. One sheet has " +
    "a function of ours in each row; the other has the built-in formulas that give the same numbers: a chain with a " +
    "column for each step, as the function's own working shows them, or one long formula. All answers of both are " +
    "compared (1e-9) before and after a change; only then is anything timed. Build: from the workbook's data to the " +
    "last value. Recalculation: one shared input is changed, or, for the readings, one input of every row as one " +
    "change, until the last value. The target holds for the chain; the long formula is reported.",
  heads: ["ours, ms", "built-in cells, ms", "ratio", "half of the rounds"],
  lines: await engineLines(),
});
