/** The benchmarks as text: what is printed, and docs/benchmarks.md, in which a part that was not run keeps its place. */
import type { BenchLine, BenchPart } from "./part";

function verdictOf({ held }: BenchLine): [target: string, verdict: string] {
  if (held === undefined) return ["", ""];
  return [`at most ${held.atMost}`, held.value <= held.atMost ? "met" : "missed"];
}

function row(cells: readonly string[]): string {
  return `| ${cells.join(" | ")} |`;
}

function table({ heads, lines }: BenchPart): string[] {
  const all = ["measured", ...heads, "target", ""];
  return [
    row(all),
    row(all.map((_head, index) => (index === 0 || index > heads.length ? "---" : "---:"))),
    ...lines.map((line) => row([line.what, ...line.figures, ...verdictOf(line)])),
  ];
}

/** One part as a section, with the day and the machine on which it was measured. */
export function sectionOf(part: BenchPart, day: string, machine: string): string {
  const remarks = (part.remarks ?? []).map((remark) => `- ${remark}`);
  return [
    `## ${part.title}`,
    "",
    part.about,
    "",
    `Measured on ${day}: ${machine}.`,
    "",
    ...table(part),
    ...(remarks.length === 0 ? [] : ["", ...remarks]),
  ].join("\n");
}

const HEAD = `# Benchmarks

\`npm run build\`, then \`npm run bench\`, writes this page; \`npm run bench -- --only validation\` runs one part and keeps the others as they stand.
What counts are ratios, measured side by side in one run, the median of several rounds; the seconds are those of one machine.`;

/** A mark before each section says which part it is, so that a run of one part finds its place. */
function markOf(name: string): string {
  return `<!-- part: ${name} -->`;
}

/** The sections of a page by the names of their parts. */
function sectionsIn(page: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const piece of page.split("<!-- part: ").slice(1)) {
    const end = piece.indexOf(" -->");
    found.set(piece.slice(0, end), piece.slice(end + " -->".length).trim());
  }
  return found;
}

/** The page with the sections of a run in the place of older ones; the others stay as they are. */
export function pageWith(page: string, order: readonly string[], measured: ReadonlyMap<string, string>): string {
  const all = new Map([...sectionsIn(page), ...measured]);
  const sections = order.flatMap((name) => {
    const section = all.get(name);
    return section === undefined ? [] : [`${markOf(name)}\n\n${section}`];
  });
  return `${[HEAD, ...sections].join("\n\n")}\n`;
}

/** How many lines of a part miss their target. */
export function missed({ lines }: BenchPart): number {
  return lines.filter(({ held }) => held !== undefined && held.value > held.atMost).length;
}
