import type { BlockRef, RowCells, SheetBuilder, StarterBuilder } from "../../kit";
import { DATES, LOG_ROWS, READINGS } from "./figures";
import type { FeedInputs } from "./inputs";
import type { FeedWork } from "./work";

export type Readings = Readonly<Record<string, BlockRef>>;

const unread = (cell: RowCells, formula: string): string => `=IF(${cell("ec")} = "", "", ${formula})`;

export function fillLog(kit: StarterBuilder, log: SheetBuilder, given: FeedInputs, worked: FeedWork): Readings {
  const volume = kit.pick("gal", "L");
  const { tank, waterEc, ratio, band } = given;
  const rest = Array.from({ length: LOG_ROWS - READINGS.length }, () => null);
  const low = `(ec_set - ${band})`;
  const high = `(ec_set + ${band})`;
  const readings = log.table({
    rows: LOG_ROWS,
    columns: [
      {
        key: "date",
        heading: "date",
        inputs: [...DATES, ...rest],
        format: "date",
        limits: { least: 36_526, most: 73_050, message: "date must be a date from 2000 to 2099." },
      },
      {
        key: "ec",
        heading: "EC in the tank",
        unit: "mS/cm",
        inputs: [...READINGS, ...rest],
        format: "decimals2",
        limits: { least: 0.01, most: 20 },
      },
      { key: "low", heading: "from", unit: "mS/cm", format: "decimals3", formula: () => `=ec_set - ${band}` },
      { key: "high", heading: "to", unit: "mS/cm", format: "decimals3", formula: () => `=ec_set + ${band}` },
      {
        key: "action",
        heading: "what to do",
        style: "result",
        formula: (cell) =>
          unread(cell, `IF(${cell("ec")} < ${low}, "dose", IF(${cell("ec")} > ${high}, "dilute", "leave"))`),
        how: "dose below the band, dilute above it",
      },
      {
        key: "dose",
        heading: "stock to add",
        unit: volume,
        format: "decimals2",
        style: "result",
        formula: (cell) =>
          `=IF(${cell("action")} = "dose", CANYARD.TANK_DOSE(${tank}, ${cell("ec")}, ec_set, ${worked.rise}, ${ratio}), "")`,
        how: "feed in the tank x what is missing / (what the feed adds x ratio)",
      },
      {
        key: "dilution",
        heading: "water to add",
        unit: volume,
        format: "decimals1",
        style: "result",
        formula: (cell) =>
          `=IF(${cell("action")} = "dilute", CANYARD.TANK_DILUTION(${tank}, ${cell("ec")}, ec_set, ${waterEc}), "")`,
        how: "feed in the tank x what is too much / (set EC - EC of the water)",
      },
    ],
  }).column;
  log.note("Stir, wait, read again: add half first when the dose is large. An overfull tank spills feed.", "caution");
  log.chart({
    type: "lines",
    title: "EC of the mixing tank and its band",
    description: "The EC of each day as a line, between two lines for the band in which the tank is left alone.",
    labels: String(readings["date"]!.rows(0, READINGS.length - 1)),
    series: [
      { name: "EC in the tank", values: String(readings["ec"]!.rows(0, READINGS.length - 1)) },
      { name: "from", values: String(readings["low"]!.rows(0, READINGS.length - 1)), as: "line" },
      { name: "to", values: String(readings["high"]!.rows(0, READINGS.length - 1)), as: "line" },
    ],
    axisTitles: { labels: "date", values: "mS/cm" },
    position: { cell: "A29", width: 640, height: 300 },
  });
  return readings;
}
