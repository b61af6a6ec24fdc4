/**
 * Prints the bytes by which the process grew at its peak over one call, beyond the input and all else that stood before:
 * `peak.ts <name of the table> <rows>`, run with --expose-gc.
 */
import { call } from "../../src/functions/call";
import { tables } from "./tables";

const BYTES_IN_A_KILOBYTE = 1024;

function peakOver(name: string, rows: number): number {
  const table = tables.find((each) => each.name === name);
  const collect = globalThis.gc;
  if (table === undefined || collect === undefined) throw new Error(`no table ${name}, or no --expose-gc`);
  const small = table.make(1000);
  call(table.function, small.args);
  const { args } = table.make(rows);
  collect();
  const before = process.memoryUsage.rss();
  const answer = call(table.function, args);
  const peak = process.resourceUsage().maxRSS * BYTES_IN_A_KILOBYTE;
  if (answer === undefined) throw new Error(`${name} gave no answer`);
  return Math.max(0, peak - before);
}

const [name = "", rows = ""] = process.argv.slice(2);
console.log(peakOver(name, Number(rows)));
