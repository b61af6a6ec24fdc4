import { type CellRef, type BlockRef, type SheetBuilder, type StarterBuilder } from "../../kit";
import { ZONE_ROWS, type LogInputs } from "./inputs";
import type { Log } from "./log";
import type { Tests } from "./work";
import { zoneColumns } from "./zones";

export interface ZoneResults {
  readonly column: Readonly<Record<string, BlockRef>>;
  /** Pooled fraction of the pots that are shown. */
  readonly pooled: CellRef;
}

/** Rows of LEACHING_SUMMARY. */
const SUMMARY_ROWS = 6;
const POOLED = 1;

export function fillResult(
  kit: StarterBuilder,
  result: SheetBuilder,
  given: LogInputs,
  log: Log,
  tests: Tests,
): ZoneResults {
  result.note(
    "Pot light and leaching high? Do not cut the time: dry substrate lets water run through. Rewet in short pulses, then test again.",
    "caution",
  );
  const { column } = result.skip().table({ rows: ZONE_ROWS, columns: zoneColumns(given, tests) });
  const row = result.skip().next;
  result.put(`A${row}`, { value: "Pots of the test" });
  const shown = `INDEX(${column["test"]!.here}, MATCH(${given.shown}, ${column["zone"]!.here}, 0))`;
  kit.name("shown_test", result.put(`B${row}`, { formula: `=${shown}`, format: "decimals0", style: "result" }));
  result.put(`C${row}`, { formula: `=${given.shown}`, style: "result" });
  const summary = fillSummary(result.goTo(row + 1), log);
  charts(result, column, tests);
  return { column, pooled: summary.cell(POOLED, 1) };
}

function fillSummary(result: SheetBuilder, log: Log): BlockRef {
  const { shownApplied, shownLeachate, shownFraction: fraction } = log as Record<string, BlockRef>;
  const block = result.spill({
    label: "How far they differ",
    how: "A variation (Cv) above 0.3 asks for a look at the emitters first.",
    table: `=CANYARD.LEACHING_SUMMARY(${shownLeachate!}, ${shownApplied!}, "skip")`,
    rows: SUMMARY_ROWS,
    formats: [undefined, "decimals3"],
    header: false,
    plain: [
      ['="pots"', `=COUNT(${fraction!})`],
      ['="pooled fraction"', `=SUM(${shownLeachate!}) / SUM(${shownApplied!})`],
      ['="mean of fractions"', `=AVERAGE(${fraction!})`],
      ['="min"', `=MIN(${fraction!})`],
      ['="max"', `=MAX(${fraction!})`],
      [
        '="Cv"',
        `=IF(COUNT(${fraction!}) < 2, "", IF(SUM(${fraction!}) = 0, "", STDEV(${fraction!}) / AVERAGE(${fraction!})))`,
      ],
    ],
  });
  result.put(block.cell(0, 1).at, { format: "decimals0" });
  return block;
}

const WIDTH = 900;
const HEIGHT = 300;
/** Rows of 20 pixels that a chart takes, and one more. */
const CHART_ROWS = 16;

function charts(result: SheetBuilder, column: ZoneResults["column"], tests: Tests): void {
  const first = result.next + 1;
  result
    .chart({
      type: "columns",
      title: "Leaching fraction of each test, with the band",
      description:
        "A column for each test in the order of the log: its pooled leaching fraction. Two level lines: the band that is wanted.",
      labels: String(tests["label"]),
      series: [
        { name: "leaching fraction", values: String(tests["fraction"]) },
        { name: "band from", values: String(tests["low"]), as: "line" },
        { name: "band to", values: String(tests["high"]), as: "line" },
      ],
      axisTitles: { labels: "test", values: "fraction" },
      position: { cell: `A${first}`, width: WIDTH, height: HEIGHT },
    })
    .chart({
      type: "columns",
      title: "Minutes before and after",
      description: "Two columns for each zone: the minutes of its latest test, and the minutes to set.",
      labels: String(column["zone"]),
      series: [
        { name: "minutes now", values: String(column["now"]) },
        { name: "minutes to set", values: String(column["set"]) },
      ],
      axisTitles: { labels: "zone", values: "minutes" },
      position: { cell: `A${first + CHART_ROWS}`, width: WIDTH, height: HEIGHT },
    });
}
