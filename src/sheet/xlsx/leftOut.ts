/** What a file has and this page has not, in words. */
import type { Engine, EngineSheet } from "../engine";
import type { FileWorkbook } from "./readParts";
import { counted, listed } from "./wordsFor";

/** Parts of a file by their folder or name. */
const PARTS: readonly (readonly [part: RegExp, sentence: string])[] = [
  [/^xl\/(threadedComments\/|comments)/i, "Comments on cells are left out."],
  [/vbaProject\.bin$/i, "Macros are left out."],
  [/^xl\/pivotTables\//i, "Pivot tables are plain cells here, which do not follow their source."],
  [/^xl\/externalLinks\//i, "Links to other workbooks are replaced by the values that they last had."],
  [/^xl\/(ctrlProps|activeX|embeddings)\//i, "Buttons, other controls and embedded objects are left out."],
  [/^xl\/(slicers|slicerCaches|timelines)\//i, "Slicers are left out."],
  [/^xl\/(connections\.xml|queryTables\/)/i, "Connections to sources of data are left out; what they brought stays."],
  [/^xl\/(chartsheets|dialogsheets|macrosheets)\//i, "Sheets that are one large chart are left out."],
];

const CELL_CHARTS = /<(\w+:)?sparklineGroup\b/;
const PRINT_SET_UP = /<(\w+:)?(row|col)Breaks\b|<(\w+:)?odd(Header|Footer)>[^<]/;

export function missingParts(file: FileWorkbook, sheets: readonly EngineSheet[]): string[] {
  const texts = file.sheets.map(({ path }) => String(file.parts[path] ?? ""));
  const charts = file.sheets.flatMap(({ charts }) => charts).length;
  const drawn = sheets.flatMap((sheet) => (sheet["figures"] ?? []) as { tag: string }[]);
  const isInSheets = (part: RegExp) => texts.some((text) => part.test(text));
  const notDrawn = charts - drawn.filter(({ tag }) => tag === "chart").length;
  return [
    ...PARTS.filter(([part]) => file.paths.some((path) => part.test(path))).map(([, sentence]) => sentence),
    ...(isInSheets(CELL_CHARTS) ? ["Small charts inside cells are left out."] : []),
    ...(file.hasPrintNames || isInSheets(PRINT_SET_UP) ? ["How the sheets are to be printed is left out."] : []),
    ...(notDrawn > 0 ? [`${counted(notDrawn, "chart")} of a kind that this page does not draw: left out.`] : []),
    ...(file.otherNames.length > 0
      ? [`Names that do not stand for one block of cells are left out: ${listed(file.otherNames)}.`]
      : []),
    ...(file.hasWhatIfTables ? ["What-if tables are kept as the numbers that they last had."] : []),
    ...(file.isProtected ? ["The protection of sheets is lifted: here every cell can be changed."] : []),
  ];
}

/** The engine's own list, of which only what a reader would miss is passed on. */
const WARNINGS: readonly (readonly [warning: RegExp, sentence: string])[] = [
  [/^Number format "(.+)" is not/, "A way of writing numbers that this page does not have: $1."],
  [
    /^Conditional format|^Multiple rules cond|conditional formats are not|^IconSets/,
    "Some colouring by rules is left out.",
  ],
  [/^(Time|Text length) data validation/, "Rules about times and about the length of texts are left out."],
  [/^Not equal date data validation/, "Rules that forbid one date are left out."],
  [
    /^(Fill Style|Border style|Diagonal Borders|Horizontal Alignment|Vertical Alignments)/,
    "Some borders, fills and alignments look plainer.",
  ],
  [/^(Font|Whole number)/, ""],
  [/hyperlink/i, "Some links are left out."],
];

export function engineWarnings(warnings: readonly string[]): string[] {
  const sentences = warnings.map((warning) => {
    const [pattern, sentence] = WARNINGS.find(([known]) => known.test(warning)) ?? [];
    if (sentence === undefined) return "Some of its parts could not be read.";
    return sentence.replace("$1", pattern!.exec(warning)?.[1] ?? "");
  });
  return [...new Set(sentences)].filter((sentence) => sentence !== "");
}

const QUOTED_OR_CALL = /"(?:[^"]|"")*"|'(?:[^']|'')*'|([A-Z_][\w.]*)\s*\(/gi;

export function missingFunctions(engine: Engine, sheets: readonly EngineSheet[]): string[] {
  const places = new Map<string, string[]>();
  for (const { name, ...sheet } of sheets) {
    const cells = sheet["cells"] as Readonly<Record<string, string>>;
    for (const [at, content] of Object.entries(cells)) {
      if (!content.startsWith("=")) continue;
      for (const [, called] of content.matchAll(QUOTED_OR_CALL)) {
        const known = called?.toUpperCase();
        if (known === undefined || engine.registries.functionRegistry.contains(known)) continue;
        places.set(known, [...(places.get(known) ?? []), `${name}!${at}`]);
      }
    }
  }
  return [...places].map(([called, cells]) => {
    const rest = new Set(cells).size - 1;
    return `${called} is a function that this page does not have, in ${cells[0]!}${rest > 0 ? ` and ${counted(rest, "more cell")}` : ""}: its formulas are kept and show an error.`;
  });
}
