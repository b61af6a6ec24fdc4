/** docs/accuracy.md, made of what was measured. */
import { LIMIT } from "./judge";
import type { Measured, Worst } from "./measure";

export interface Run {
  readonly day: string;
  readonly machine: string;
  readonly command: string;
  readonly seed: number;
  /** Calls wanted of each function in each system of units. */
  readonly calls: number;
  /** Of one core's work. */
  readonly seconds: number;
}

/** Why a function has no number that could be measured so. */
export const NOT_MEASURED: Readonly<Record<string, string>> = {
  CLOGGING_RISK: "answers with a word; its formulas only compare the input with two limits",
  SHOW_WORKING: "shows the steps of another function, which is measured itself",
  CHECK_ANSWER: "answers with words",
  DIAGNOSE_ANSWER: "answers with words",
  COMMON_MISTAKES: "answers with words and wrong answers, which nobody calculates with",
  CHECK_RANGE: "answers with words",
  UNIT_LABEL: "answers with words",
  FUNCTION_SOURCE: "answers with words",
  LIBRARY_VERSION: "answers with the version",
};

const ABOUT = `Every function records its working: each step is a formula of a spreadsheet. Here those formulas are worked a second time, in numbers of 64 digits, and the answer of the function is held against that.

- The formulas are parsed as a spreadsheet parses them (@borgar/fx) and worked with big numbers (mathjs) by functions written for this purpose from what spreadsheets say that SUM, EXP or STDEV do. No arithmetic of the catalogue runs there. Each step rests on the big numbers before it, never on a double.
- Inputs are the doubles that the function got, bit by bit. Units come in as exact ratios (a gallon is 231 cubic inches), numbers written in a formula as they are written.
- The **error** is a part of the answer. The **condition** says by how many parts of itself the answer moves when each input moves by one, each the way that is worse; it is worked with the answer, by the slope of every step. It counts as 1 or more, since no answer is better than the double that holds it. Counts and dates are exact and do not move, nor do the constants of a formula and of the units.
- The limit is an error of 1e-12 for each 1 of the condition. The last bit of a double is 1.1e-16.
- The calls are random, within the limits of each argument: from a millionth to a million where there is no limit. In every third call numbers of one kind are drawn close to each other or to a limit, to the third to twelfth digit, where a difference loses most.
- Where an answer differs and a decision of the formula (IF, ROUNDUP, COUNTIF) lies within 1e-12 of its edge, the formula is worked once more with that decision turned. If it then agrees, the call counts as at an edge and not as an error.`;

const LIMITS_OF_THIS = `## What this does and does not show

It shows that the arithmetic keeps the digits that its own formulas and inputs allow. It does not show that a formula is the right one: a wrong formula, faithfully worked, passes. The published values, the oracles and the hand calculations of the other tests stand for that (docs/check-values.md). It does not show that a formula fits plants, soil or weather to any number of digits. The worst calls are the worst of these draws, not proven bounds. Numbers near the ends of what a double can hold are not drawn: there products fall below the smallest double and lose their digits whatever the algebra, and 64 digits are too few for 1 + 1e-60.

The recorded formula and the code stand in the same file, written by the same hand. That the code does what its formula says is what is measured; the ratios of the units start from the same table of definitions, which the tests of the units hold against another library.`;

const MENDED = `## What was found and mended

- CU_CHRISTIANSEN, and the CU of UNIFORMITY_AUDIT: 1 - D / m lost up to nine digits near 0, as of two readings of which one is nearly nothing (an error of 7e-10 for each 1 of the condition, in the audit 4e-7). Where D is more than half of m, it is now worked from the readings below the mean, which lie as far from it in all as those above.
- VAPOR_PRESSURE_DEFICIT: es - ea left a last digit of something in saturated air, where nothing is lacking (5 of 800 calls). It is now worked by what each extreme lacks, and is exactly 0 there.`;

function digits(value: number): string {
  if (value === 0) return "0";
  return Number.isFinite(value) ? value.toExponential(1).replace("e+", "e") : "no number";
}

function plainCondition(value: number): string {
  return value < 1000 ? value.toFixed(1) : digits(value);
}

const LONGEST_CALL = 120;

function shortCall(call: string): string {
  return `\`${call.length > LONGEST_CALL ? `${call.slice(0, LONGEST_CALL)}...` : call}\``;
}

function worstCells(worst: Worst): string[] {
  return [digits(worst.error), plainCondition(worst.condition), digits(worst.share / LIMIT)];
}

function row({ name, calls, numbers, atAnEdge, worst, isScalar }: Measured): string {
  const cells = worst === null ? ["", "", ""] : worstCells(worst);
  const call = worst === null || worst.share === 0 ? "" : shortCall(worst.call);
  const compared = isScalar ? [String(calls)] : [String(calls), String(numbers)];
  return `| ${[name, ...compared, ...cells, String(atAnEdge), call].join(" | ")} |`;
}

const WORST_HEADS = ["worst error", "condition there", "part of the limit", "calls at an edge", "the worst call"];

function table(heads: readonly string[], rows: readonly string[]): string {
  const aligned = heads.map((head) => (head === "function" || head === "the worst call" ? "---" : "---:"));
  return [`| ${heads.join(" | ")} |`, `| ${aligned.join(" | ")} |`, ...rows].join("\n");
}

function byShare(a: Measured, b: Measured): number {
  return (b.worst?.share ?? -1) - (a.worst?.share ?? -1);
}

function beyondText(all: readonly Measured[]): string {
  const beyond = all.filter(({ worst }) => worst !== null && !(worst.share <= LIMIT)).map(({ name }) => name);
  const dusty = all.filter(({ dust }) => dust > 0).map(({ name, dust }) => `${name} (${dust})`);
  return [
    beyond.length === 0 ? "No function goes beyond the limit." : `**Beyond the limit**: ${beyond.join(", ")}.`,
    dusty.length === 0
      ? "No answer that should be 0 is a last digit of something else."
      : `Answers that should be 0 and are a last digit of something: ${dusty.join(", ")}.`,
  ].join(" ");
}

function asRecordedText(all: readonly Measured[]): string {
  const lines = all.flatMap(({ name, asRecorded }) =>
    asRecorded.length === 0
      ? []
      : [`- ${name}: ${asRecorded.map(({ symbol, words }) => `${symbol} (${words})`).join("; ")}`],
  );
  return `Steps without a formula, as numbers counted or read through a range, are taken as the call recorded them, and count as inputs:\n\n${lines.join("\n")}`;
}

function notMeasuredText(all: readonly Measured[]): string {
  return all
    .filter(({ calls, atAnEdge }) => calls + atAnEdge === 0)
    .map(({ name }) => `- ${name}: ${NOT_MEASURED[name] ?? "**no reason written down**"}`)
    .join("\n");
}

export function accuracyPage(all: readonly Measured[], run: Run): string {
  const withNumbers = all.filter(({ calls, atAnEdge }) => calls + atAnEdge > 0).sort(byShare);
  const scalars = withNumbers.filter(({ isScalar }) => isScalar);
  const tables = withNumbers.filter(({ isScalar }) => !isScalar);
  const calls = withNumbers.reduce((sum, measured) => sum + measured.calls, 0);
  return `<!-- Made by \`npm run accuracy\`; do not edit. -->

# Accuracy

${run.day}, ${run.machine}, \`${run.command}\`, seed ${run.seed}, ${run.calls} calls of each function in each system of units: ${calls} calls compared in ${run.seconds} seconds of one core.

${beyondText(withNumbers)}

${ABOUT}

## Functions with one answer, the worst first

${table(["function", "calls compared", ...WORST_HEADS], scalars.map(row))}

Error and condition are those of the worst call, the one with the largest error for its condition; its numbers are shown to four digits.

## Tables, the worst first

The numbers in their cells that a recorded step gave; start and stop times, counts and words that no step gave are not among them.

${table(["function", "calls compared", "numbers", ...WORST_HEADS], tables.map(row))}

## Not measured so

${notMeasuredText(all)}

${asRecordedText(withNumbers)}

${MENDED}

${LIMITS_OF_THIS}
`;
}
