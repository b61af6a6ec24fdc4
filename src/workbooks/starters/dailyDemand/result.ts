import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { Days } from "./days";
import type { DemandInputs } from "./inputs";
import type { Weighed } from "./weighed";

/** What the days add up to. */
export interface Sums {
  readonly last: CellRef;
  readonly filled: CellRef;
  readonly use: CellRef;
  readonly rain: CellRef;
  readonly kept: CellRef;
  readonly drained: CellRef;
  readonly unmet: CellRef;
}

export function fillResult(
  kit: StarterBuilder,
  result: SheetBuilder,
  given: DemandInputs,
  days: Days,
  weighed: Weighed,
): Sums {
  const last = lastDay(kit, result, given, days);
  const sums = month(kit, result, days);
  referee(result, weighed);
  charts(kit, result, days, weighed);
  return { last, ...sums };
}

function lastDay(kit: StarterBuilder, result: SheetBuilder, given: DemandInputs, days: Days): CellRef {
  const unit = kit.pick("gal", "L");
  const format = kit.pick("decimals3", "decimals2");
  const ofLastDay = (column: unknown): string => `INDEX(${String(column)}, MAX(1, today_row))`;
  result.block("The evening of the last day", "how");
  result.formula({ label: "Day", unit: "date", formula: `=IF(today_row = 0, "none yet", last_day)`, format: "date" });
  const use = result.formula({
    label: "The plant used that day",
    unit,
    formula: `=${ofLastDay(days.column["use"])}`,
    format,
  });
  const deficit = result.formula({
    label: "The pot lacks",
    unit,
    formula: days.ofBalance(ofLastDay(days.balance.deficit)),
    format,
    how: "its deficit below the drained pot",
  });
  result.formula({ label: "It is time to irrigate at", unit, formula: "=refill_line", format });
  const soon = `IF(${deficit.here} + ${use.here} >= refill_line, "before tomorrow evening", "may wait a day")`;
  result.formula({
    label: "Irrigate",
    formula: `=IF(today_row = 0, "no day is worked", IF(${deficit.here} >= refill_line, "now", ${soon}))`,
    how: "if tomorrow is like the last day; lift a pot before you wait",
  });
  const gross = result.formula({
    label: "Water that fills the pot again",
    unit,
    formula: `=IF(${deficit.here} > 0, CANYARD.GROSS_WATER(${deficit.here}, ${given.leaching}, ${given.uniformity}), 0)`,
    format,
    how: "deficit / the smaller of 1 - leaching and uniformity",
  });
  result.formula({
    label: "Minutes for it",
    unit: "min",
    formula: `=IF(${gross.here} > 0, CANYARD.RUN_MINUTES(${gross.here}, ${given.flow}, ${given.emitters}), 0)`,
    format: "decimals1",
    how: "60 x water / (emitters x flow); in pulses if long",
  });
  result.note("A balance drifts. Walk the block on hot days, and weigh a pot every week or two.", "caution");
  return deficit;
}

function month(kit: StarterBuilder, result: SheetBuilder, { column, balance, ofBalance }: Days): Omit<Sums, "last"> {
  const unit = kit.pick("gal", "L");
  const format = kit.pick("decimals2", "decimals1");
  const line = (label: string, formula: string, how = ""): CellRef =>
    result.formula({ label, unit, formula, format, ...(how && { how }) });
  const sum = (key: string): string => `=SUM(${column[key]!})`;
  const balanced = (of: "drainage" | "unmet"): string => ofBalance(`SUM(${balance[of]})`);
  result.block("All days together, for one pot", "how");
  result.formula({ label: "Days worked", unit: "count", formula: "=today_row", format: "decimals0" });
  const filled = result.formula({
    label: "of them without a reading, filled",
    unit: "count",
    formula: `=COUNTIF(${column["reading"]!}, "filled") + COUNTIF(${column["reading"]!}, "guessed")`,
    format: "decimals0",
    how: "marked on the sheet Days",
  });
  const use = line("The plant used", sum("use"));
  const rain = line("Rain into the pot", sum("rain"));
  const kept = line("Irrigation kept", sum("kept"), "without what ran out below by plan");
  const drained = line("Drained beyond full", balanced("drainage"), "rain or irrigation that the pot had no room for");
  const unmet = line("Use that the pot could not give", balanced("unmet"), "above 0 the plant has stood dry");
  result.formula({
    label: "Evenings at the refill line or beyond",
    unit: "count",
    formula: `=COUNTIFS(${balance.note}, "irrigate", ${column["date"]!}, "<=" & last_day)`,
    format: "decimals0",
  });
  return { filled, use, rain, kept, drained, unmet };
}

function referee(result: SheetBuilder, weighed: Weighed): void {
  const { use, worked, ratio, kc } = weighed as Record<"use" | "worked" | "ratio" | "kc", unknown>;
  result.block("The referee: weighed pots", "how");
  result.formula({
    label: "Scale / weather, all weighings",
    unit: "ratio",
    formula: `=IF(COUNT(${String(ratio)}) = 0, "none yet", SUMIF(${String(ratio)}, ">0", ${String(use)}) / SUMIF(${String(ratio)}, ">0", ${String(worked)}))`,
    format: "decimals2",
    how: "sum over sum",
  });
  result.formula({
    label: "Crop coefficient by the scale, mean",
    unit: "factor",
    formula: `=IF(COUNT(${String(kc)}) = 0, "none yet", AVERAGE(${String(kc)}))`,
    format: "decimals2",
    how: "put it into the half-month on Inputs when several weighings agree",
  });
}

const WIDTH = 900;
const HEIGHT = 300;
/** Rows of 20 pixels that a chart takes, and one more. */
const CHART_ROWS = 16;

function charts(kit: StarterBuilder, result: SheetBuilder, days: Days, weighed: Weighed): void {
  const unit = kit.pick("gal", "L");
  const first = result.next + 1;
  result
    .chart({
      type: "columns",
      title: "What a pot used and what rain put back, with what it lacks",
      description:
        "Two columns for each day: the plant's use and the rain that fell into the pot. A line: the deficit in the evening. A level line: the deficit at which to irrigate.",
      labels: String(days.column["date"]),
      series: [
        { name: "plant used", values: String(days.column["use"]) },
        { name: "rain into the pot", values: String(days.column["rain"]) },
        { name: "deficit in the evening", values: String(days.balance.deficit), as: "line" },
        { name: "refill line", values: String(days.column["refill"]), as: "line" },
      ],
      axisTitles: { labels: "day", values: `${unit} a pot` },
      position: { cell: `A${first}`, width: WIDTH, height: HEIGHT },
    })
    .chart({
      type: "columns",
      title: "Worked by the weather against weighed",
      description: "Two columns for each weighing: what the plant used by the weather, and by the scale.",
      labels: String(weighed["date"]),
      series: [
        { name: "by the weather", values: String(weighed["worked"]) },
        { name: "by the scale", values: String(weighed["use"]) },
      ],
      axisTitles: { labels: "day of weighing", values: `${unit} a day` },
      position: { cell: `A${first + CHART_ROWS}`, width: WIDTH, height: HEIGHT },
    });
}
