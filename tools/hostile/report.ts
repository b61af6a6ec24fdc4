/** docs/hostile.md */
import type { CrewResult } from "./crew";
import type { RoadName } from "./engineSentences";
import { SENTENCES } from "./engineSentences";
import { KINDS } from "./kinds";
import { WAYS } from "./sheetRoad";
import type { Counts, SlowCall, Tally } from "./tally";
import { machineKind } from "../machineKind.mjs";

export interface RunFacts extends CrewResult {
  readonly command: string;
  readonly seed: number;
  readonly only: string | undefined;
  readonly date: string;
  readonly minutes: number;
  readonly workers: number;
}

const ROADS: readonly RoadName[] = ["official runtime", "browser sheet"];
const VERDICTS = ["answer", "our refusal", "error passed on", "sentence of the engine"] as const;
const MIB = 2 ** 20;

const grouped = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, ",");

/** A text of a call inside a line of the page. */
function quoted(text: string): string {
  return `\`${text.replace(/[`\n\r|]/g, " ")}\``;
}

function table(heads: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]): string => `| ${cells.join(" | ")} |`;
  return [line(heads), line(heads.map((_head, at) => (at === 0 ? "---" : "---:"))), ...rows.map(line)];
}

function share(part: number, whole: number): string {
  return whole === 0 ? "0 %" : `${((100 * part) / whole).toFixed(1)} %`;
}

function verdictRows({ verdicts, roads }: Tally): string[][] {
  return VERDICTS.map((verdict) => [
    verdict,
    ...ROADS.map(
      (road) => `${grouped(verdicts[road][verdict] ?? 0)} (${share(verdicts[road][verdict] ?? 0, roads[road] ?? 0)})`,
    ),
  ]);
}

function slowestLines(title: string, slowest: Partial<Record<RoadName, SlowCall>>): string[] {
  return ROADS.map((road) => {
    const found = slowest[road];
    if (found === undefined) return `- ${title}, ${road}: no call had to be timed by itself.`;
    return `- ${title}, ${road}: ${found.milliseconds.toFixed(0)} ms, call ${found.index}: ${quoted(found.text)}`;
  });
}

function leastAndMost(functions: Counts): string {
  const counts = Object.values(functions);
  const [least, most] = [Math.min(...counts), Math.max(...counts)];
  const each = least === most ? grouped(least) : `${grouped(least)} to ${grouped(most)}`;
  return `${counts.length} functions, each in ${each} calls.`;
}

function faultLines({ tally: { faults, faultCount }, seed, only }: RunFacts): string[] {
  if (faultCount === 0) return ["None."];
  const again = `npm run hostile -- --seed ${seed}${only === undefined ? "" : ` --only ${only}`} --repeat`;
  const shown = faults.map(
    ({ road, index, text, fault }) => `- ${road}, \`${again} ${index}\`: ${quoted(fault)}\n  ${quoted(text)}`,
  );
  return [`${grouped(faultCount)}, of which ${shown.length} are shown.`, "", ...shown];
}

const JUDGED_BY = [
  "Every call goes over both roads. A fault is any of these:",
  "",
  "- it hangs, or takes more than 1 second (10 seconds with very long ranges) in each of three attempts;",
  "- an exception reaches the caller, or was caught at the edge without a sentence for it;",
  "- an answer, or a cell of a table, that is not finite, -0, missing, or of no kind that a cell holds; a table with uneven rows; an answer of another shape than the entry says; a text longer than a cell holds;",
  '- an answer or an error text that says "NaN", "undefined", "Infinity" or "[object" where no input did;',
  "- an error without a text, or one whose text is no sentence or does not begin with the function's name;",
  "- an error that stood in an argument's cell and did not come back with its code;",
  "- another outcome on one road than on the other, where both carry the same inputs.",
];

const LIMITS = [
  "What the roads cannot carry: the official runtime speaks JSON with its host, so a number that is none and an argument left out reach it as an empty cell; it cuts off arguments beyond those declared; codes that it may not return, such as #REF!, come back as #VALUE!. The engine of the sheet refuses wrong counts of arguments and unknown names by itself, in these sentences, and no other of its own was let pass:",
  "",
  ...SENTENCES.map(({ words, code }) => `- ${code}: ${words}`),
];

function tables({ tally }: RunFacts): string[] {
  return [
    "## Outcomes",
    "",
    ...table(["outcome", ...ROADS], verdictRows(tally)),
    "",
    `Outcomes of both roads held against each other: ${grouped(tally.compared)}.`,
    "",
    "How the sheet was asked:",
    "",
    ...table(
      ["way", "calls"],
      WAYS.map((way) => [way, grouped(tally.ways[way] ?? 0)]),
    ),
    "",
    "## Kinds of input",
    "",
    "A call may hold several.",
    "",
    ...table(
      ["kind", "calls"],
      KINDS.map((kind) => [kind, grouped(tally.kinds[kind] ?? 0)]),
    ),
  ];
}

export function hostilePage(facts: RunFacts): string {
  const { tally, memory, seed, date, minutes, workers, command } = facts;
  return [
    "<!-- Written by `npm run hostile`; do not edit. -->",
    "",
    "# Hostile input",
    "",
    `${date}, ${machineKind()}. Command: \`${command}\`, seed ${seed}; ${minutes.toFixed(1)} minutes in ${workers} processes.`,
    "",
    `${grouped(tally.calls)} generated calls: ${grouped(tally.roads["official runtime"] ?? 0)} through the official runtime, ${grouped(tally.roads["browser sheet"] ?? 0)} through the browser sheet's adapter in its engine (a name of no function goes to the sheet alone). ${leastAndMost(tally.functions)} Largest process: ${Math.round(memory.early / MIB)} MiB after its first batches, ${Math.round(memory.most / MIB)} MiB at most.`,
    "",
    ...JUDGED_BY,
    "",
    ...LIMITS,
    "",
    "## Faults",
    "",
    ...faultLines(facts),
    "",
    ...tables(facts),
    "",
    "## Slowest calls",
    "",
    "Ordinary calls run together, and together took less than a second; those of a slower lot were timed one by one.",
    "",
    ...slowestLines("very long ranges", tally.slowest),
    ...slowestLines("ordinary sizes", tally.slowestOrdinary),
    "",
  ].join("\n");
}
