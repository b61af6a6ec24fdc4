/** Part 2: how time and memory grow with the rows of a range. */
import { spawn } from "node:child_process";
import { join } from "node:path";
import { builtLibrary, type Call } from "./builtLibrary";
import { compare, type Comparison } from "./measure";
import type { BenchLine, RunPart } from "./part";
import { tables, type TableCase } from "./tables";

const AT_MOST_GROWTH = 1.3;
const AT_MOST_BARE = 1.5;
/** Rows that a round works through at least, so that small tables are timed as long as large ones. */
const ROWS_IN_A_ROUND = 100_000;
const ROUNDS = 9;
/** Below it, what a process takes for itself hides what the rows need. */
const FEWEST_ROWS_FOR_MEMORY = 100_000;

interface Measured {
  readonly rows: number;
  readonly comparison: Comparison;
  /** Nanoseconds a row, ours and bare. */
  readonly ours: number;
  readonly bare: number;
  /** Bytes a row at the peak of one call, beyond the input; null of a table too small to tell. */
  readonly bytes: number | null;
}

function repeated(work: () => unknown, times: number): () => unknown {
  return () => {
    let last: unknown;
    for (let time = 0; time < times; time += 1) last = work();
    return last;
  };
}

/** The peak over one call, in a process of its own. */
async function bytesPerRow({ name }: TableCase, rows: number): Promise<number | null> {
  if (rows < FEWEST_ROWS_FOR_MEMORY) return null;
  const child = spawn(
    process.execPath,
    ["--expose-gc", "--import", "tsx", join(__dirname, "peak.ts"), name, String(rows)],
    { stdio: ["ignore", "pipe", "inherit"] },
  );
  let said = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => (said += text));
  const code = await new Promise((resolve, reject) => child.on("error", reject).on("close", resolve));
  if (code !== 0) throw new Error(`the memory of ${name} could not be measured`);
  return Number(said) / rows;
}

async function measured(call: Call, table: TableCase, rows: number): Promise<Measured> {
  const { args, bare } = table.make(rows);
  const times = Math.max(1, Math.round(ROWS_IN_A_ROUND / rows));
  const ours = repeated(() => call(table.function, args), times);
  const comparison = compare(ours, repeated(bare, times), ROUNDS);
  const perRow = (milliseconds: number): number => (milliseconds / (rows * times)) * 1e6;
  return {
    rows,
    comparison,
    ours: perRow(comparison.ours),
    bare: perRow(comparison.against),
    bytes: await bytesPerRow(table, rows),
  };
}

function linesOf(table: TableCase, all: readonly Measured[]): BenchLine[] {
  const lines = all.map(({ rows, comparison, ours, bare, bytes }): BenchLine => {
    const ratio = comparison.ratio;
    return {
      what: `${table.name}, ${rows.toLocaleString("en-US")} rows`,
      figures: [ours.toFixed(0), bare.toFixed(0), ratio.toFixed(2), bytes?.toFixed(0) ?? ""],
      ...(table.heldToBare ? { held: { value: ratio, atMost: AT_MOST_BARE } } : {}),
    };
  });
  const [first, last] = [all[0] as Measured, all[all.length - 1] as Measured];
  const growth = last.ours / first.ours;
  lines.push({
    what: `${table.name}, a row of the largest table against one of the smallest`,
    figures: [growth.toFixed(2), (last.bare / first.bare).toFixed(2), "", growthOfMemory(all)],
    held: { value: growth, atMost: AT_MOST_GROWTH },
  });
  return lines;
}

function growthOfMemory(all: readonly Measured[]): string {
  const known = all.flatMap(({ bytes }) => bytes ?? []);
  const [first, last] = [known[0], known[known.length - 1]];
  return first === undefined || last === undefined || known.length < 2 ? "" : (last / first).toFixed(2);
}

export const growthPart: RunPart = async () => {
  const { call } = await builtLibrary();
  const lines: BenchLine[] = [];
  for (const table of tables) {
    const all: Measured[] = [];
    for (const rows of table.sizes) all.push(await measured(call, table, rows));
    lines.push(...linesOf(table, all));
  }
  return {
    title: "Growth with the rows of a range",
    about:
      `Functions on tables of growing length against a bare loop over the same rows; ${ROUNDS} rounds, small tables ` +
      `repeated to ${ROWS_IN_A_ROUND.toLocaleString("en-US")} rows a round. ns a row; bytes a row are the peak of ` +
      "one call beyond the input, in a process of its own.",
    heads: ["ours, ns a row", "bare, ns a row", "ratio", "bytes a row"],
    lines,
    remarks: [
      "The lines of growth hold a row of the largest table against a row of the smallest; what the bare loop grows by, beside it, is the share of the machine: caches, and the collection of memory.",
      "Where ET0_TABLE stays above 1.5 of bare: a row is checked cell by cell against the limits of its columns, and its steps go through a recorder that hears none of them; what they hold for a moment is collected again (a profile of 10,000 rows of 7 columns: collection 17 %, the checks of the rows 11 %, the rest the arithmetic). Without the checks a faulty row could not carry its reason.",
    ],
  };
};
