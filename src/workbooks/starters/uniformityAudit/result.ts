import type { FormatName } from "../../model";
import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { Columns } from "./emitters";
import type { AuditInputs } from "./inputs";
import type { Counts } from "./work";

/** The rows of the audit's answer, in its order. */
const ROWS = { mean: 2, du: 7 } as const;

/** Counts, then mL, then ratios. */
const FORMATS = [0, 0, 1, 1, 1, 1, 3, 3, 3].map((places) => `decimals${places}` as FormatName);

export interface Audit {
  readonly block: BlockRef;
  value(of: keyof typeof ROWS): CellRef;
}

/** The whole test in one table. */
export function fillAudit(
  result: SheetBuilder,
  given: AuditInputs,
  grid: BlockRef,
  counts: Counts,
  sorted: Columns,
): Audit {
  const block = result.spill({
    label: "How even the water is",
    how: "DU: the driest quarter / the mean; CU: all deviations, wet and dry.",
    table: `=CANYARD.UNIFORMITY_AUDIT(${grid}, ${given.zeros})`,
    rows: 9,
    formats: [undefined, "decimals3"],
    header: false,
    plain: auditPlain(given, counts, sorted),
  });
  FORMATS.forEach((format, row) => result.put(block.cell(row, 1).at, { format }));
  return { block, value: (of) => block.cell(ROWS[of], 1) };
}

/** The audit of the sorted catches, by built-in functions. */
function auditPlain(given: AuditInputs, { used, without, quarter }: Counts, sorted: Columns): string[][] {
  const catches = sorted["catch"]!;
  const mean = `AVERAGE(${catches})`;
  const low = `SUMIF(${sorted["n"]!}, "<=" & ${quarter}, ${catches}) / ${quarter}`;
  const rows: readonly (readonly [string, string])[] = [
    ["readings used", `IF(AND(${given.zeros} = "error", ${without} > 0), NA(), ${used})`],
    ["blanks or zeros met", `${without}`],
    ["mean", mean],
    ["low-quarter mean", low],
    ["min", `MIN(${catches})`],
    ["max", `MAX(${catches})`],
    ["Cv", `STDEV(${catches}) / ${mean}`],
    ["DU", `${low} / ${mean}`],
    ["CU", `1 - AVEDEV(${catches}) / ${mean}`],
  ];
  return rows.map(([label, formula]) => [`="${label}"`, `=${formula}`]);
}

export interface Rate {
  readonly rate: CellRef;
  readonly range: CellRef;
}

export function fillRate(
  kit: StarterBuilder,
  result: SheetBuilder,
  given: AuditInputs,
  grid: BlockRef,
  audit: Audit,
): Rate {
  const unit = kit.pick("in/h", "mm/h");
  const usual = kit.list(`usual rate, ${unit}`, kit.pick([0.1, 1.5], [2.5, 38]));
  const mean = audit.value("mean").here;
  result.block("What it says");
  const rate = result.formula({
    label: "Rate of the sprinklers",
    unit,
    formula: `=CANYARD.CATCH_RATE(${grid}, ${given.can}, ${given.minutes}, units, ${given.zeros})`,
    plain: `=60 * ${mean} * ${kit.pick("231 / 3785.411784", "10")} / (PI() * ${given.can}^2 / 4) / ${given.minutes}`,
    format: kit.pick("decimals3", "decimals1"),
    how: "mean catch / area of the mouth, in an hour",
  });
  const range = result.formula({
    label: "against what the trade sees",
    formula: `=CANYARD.CHECK_RANGE(${rate.here}, "CATCH_RATE", "", units)`,
    plain: `=IF(${rate.here} < ${usual.cell(0)}, "low", IF(${rate.here} > ${usual.cell(1)}, "high", "ok"))`,
  });
  const du = audit.value("du").here;
  result.formula({
    label: "The evenness is",
    formula: `=IF(${du} < ${given.low}, "low", IF(${du} < ${given.high}, "fair", "high"))`,
    how: "by the limits on Inputs; low: mend the system first, no schedule makes up for it",
  });
  return { rate, range };
}

/** What the same plants are given when the system is mended. */
export function fillWhatIf(
  kit: StarterBuilder,
  result: SheetBuilder,
  given: AuditInputs,
  audit: Audit,
  rate: CellRef,
): void {
  const du = audit.value("du").here;
  const volume = kit.pick("gal", "L");
  const pair = (
    [label, unit, how]: readonly [string, string, string],
    formula: (evenness: string, at: number) => string,
    format: "decimals0" | "decimals1" | "decimals2" | "decimals3",
  ): readonly CellRef[] =>
    [du, String(given.wanted)].map((evenness, at) =>
      result.formula({
        label: `${label}, ${at === 0 ? "as it is" : "mended"}`,
        unit,
        formula: `=${formula(evenness, at)}`,
        format,
        how,
      }),
    );
  result.block("What if the system were mended");
  const depths = pair(
    ["Depth to give", kit.pick("in/day", "mm/day"), "need / the smaller of 1 - leaching and evenness, never both"],
    (evenness) => `CANYARD.GROSS_WATER(${given.depth}, ${given.leaching}, ${evenness})`,
    kit.pick("decimals3", "decimals1"),
  );
  const minutes = pair(
    ["Minutes a day", "min/day", "60 x depth / rate"],
    (_evenness, at) => `CANYARD.OVERHEAD_RUN_MINUTES(${depths[at]!.here}, ${rate.here})`,
    "decimals1",
  );
  const water = pair(
    ["Water a day", `${volume}/day`, "depth x area x water of that depth"],
    (_evenness, at) => `${depths[at]!.here} * ${given.area} * ${given.waterOfDepth}`,
    "decimals0",
  );
  result.formula({
    label: "Water spared",
    unit: `${volume}/day`,
    formula: `=${water[0]!.here} - ${water[1]!.here}`,
    format: "decimals0",
    how: "as it is - mended",
  });
  result.formula({
    label: "part of it spared",
    unit: "fraction",
    formula: `=1 - ${water[1]!.here} / ${water[0]!.here}`,
    format: "percent",
    how: "evenness beyond 1 - leaching spares no more: that water leaches anyway",
  });
  result.formula({
    label: "Minutes spared",
    unit: "min/day",
    formula: `=${minutes[0]!.here} - ${minutes[1]!.here}`,
    format: "decimals1",
    how: "as it is - mended",
  });
  pair(
    [
      "Factor for turf",
      "factor",
      "1 / (0.4 + 0.6 DU), on the minutes of an even zone, where roots share the ground; never for pots",
    ],
    (evenness) => `CANYARD.RUN_TIME_MULTIPLIER(${evenness})`,
    "decimals3",
  );
  result.note(
    "One pot cannot drink from the next: for pots the factor above leaves the driest quarter short.",
    "caution",
  );
}

export function drawSorted(result: SheetBuilder, sorted: Columns): void {
  result.chart({
    type: "columns",
    title: "The catches, from the driest can to the wettest",
    description:
      "A column for each can, from the driest to the wettest: its catch. Two lines across: the mean of all, and the mean of the lowest quarter.",
    labels: String(sorted["n"]!),
    series: [
      { name: "catch", values: String(sorted["catch"]!) },
      { name: "mean", values: String(sorted["mean"]!), as: "line" },
      { name: "mean of the lowest quarter", values: String(sorted["low"]!), as: "line" },
    ],
    axisTitles: { labels: "cans, from the driest", values: "mL" },
    position: { cell: `A${result.next + 1}`, width: 760, height: 320 },
  });
}
