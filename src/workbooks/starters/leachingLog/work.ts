import type { BlockRef, RowCells, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { above, wholeColumn } from "../shared/rowsAround";
import type { LogInputs } from "./inputs";
import type { Log } from "./log";

/** The tests of the log, one on a row. */
export type Tests = Readonly<Record<string, BlockRef>>;

export const TEST_ROWS = 12;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

export function fillWork(kit: StarterBuilder, work: SheetBuilder, given: LogInputs, log: Log): Tests {
  work.note(
    "Each test of the log, its pots pooled: sum of leachate / sum of applied. Rows beyond the last test stay blank.",
  );
  return work.skip().table({
    rows: TEST_ROWS,
    columns: [...whichColumns(kit, log), ...pooledColumns(given, log), ...pailColumns(kit, given)],
  }).column;
}

function whichColumns(kit: StarterBuilder, log: Log): readonly TableColumn[] {
  const months = kit.list("months", MONTHS);
  const first = (key: string) => (cell: RowCells) =>
    `=IF(COUNTIF(${log["test"]!}, ${cell("test")}) = 0, "", INDEX(${log[key]!}, MATCH(${cell("test")}, ${log["test"]!}, 0)))`;
  return [
    {
      key: "test",
      heading: "test",
      unit: "number",
      format: "decimals0",
      formula: (cell) => `=SUM(${above(cell("test"))}) + 1`,
    },
    { key: "date", heading: "date", format: "date", formula: first("date") },
    { key: "zone", heading: "zone", formula: first("zone") },
    {
      key: "label",
      heading: "test of",
      formula: (cell) =>
        `=IF(${cell("zone")} = "", "", DAY(${cell("date")}) & " " & INDEX(${months}, MONTH(${cell("date")})) & ", " & ${cell("zone")})`,
    },
    { key: "minutes", heading: "minutes", unit: "min", format: "decimals1", formula: first("minutes") },
  ];
}

function pooledColumns(given: LogInputs, log: Log): readonly TableColumn[] {
  const measured = (cell: RowCells): string => `${log["test"]!}, ${cell("test")}, ${log["fraction"]!}, ">=0"`;
  const wherePots = (cell: RowCells, formula: string): string => `=IF(${cell("pots")} = 0, "", ${formula})`;
  const salty = (cell: RowCells): string => `${log["test"]!}, ${cell("test")}, ${log["ec"]!}, ">0"`;
  return [
    {
      key: "pots",
      heading: "pots",
      unit: "count",
      format: "decimals0",
      formula: (cell) => `=COUNTIFS(${measured(cell)})`,
      how: "those with both measures",
    },
    {
      key: "applied",
      heading: "applied",
      unit: "mL",
      format: "decimals0",
      formula: (cell) => wherePots(cell, `SUMIFS(${log["applied"]!}, ${measured(cell)})`),
    },
    {
      key: "leached",
      heading: "leached",
      unit: "mL",
      format: "decimals0",
      formula: (cell) => wherePots(cell, `SUMIFS(${log["leachate"]!}, ${measured(cell)})`),
    },
    {
      key: "fraction",
      heading: "leaching fraction",
      unit: "pooled",
      format: "percent",
      style: "result",
      formula: (cell) => wherePots(cell, `CANYARD.LEACHING_FRACTION(${cell("leached")}, ${cell("applied")})`),
      how: "all that leached / all that was applied; the mean of the pots' fractions gives dry pots too much weight",
    },
    { key: "low", heading: "band from", unit: "fraction", format: "percent0", formula: () => `=${given.low}` },
    { key: "high", heading: "band to", unit: "fraction", format: "percent0", formula: () => `=${given.high}` },
    {
      key: "ec",
      heading: "EC of leachate",
      unit: "mS/cm",
      format: "decimals2",
      formula: (cell) =>
        `=IF(COUNTIFS(${salty(cell)}) = 0, "", SUMIFS(${log["ec"]!}, ${salty(cell)}) / COUNTIFS(${salty(cell)}))`,
      how: "mean of the pots where it was measured",
    },
  ];
}

function pailColumns(kit: StarterBuilder, given: LogInputs): readonly TableColumn[] {
  const ofZone = (key: string, cell: RowCells): string =>
    `INDEX(${given.zones[key]!}, MATCH(${cell("zone")}, ${given.zones["zone"]!}, 0))`;
  return [
    {
      key: "flow",
      heading: "flow by the pail",
      unit: kit.pick("gal/h", "L/h"),
      format: "decimals2",
      formula: (cell) => {
        const share = `${cell("applied")} / ${cell("pots")} / ${ofZone("emitters", cell)}`;
        const isKnown = `AND(${cell("pots")} > 0, COUNTIF(${given.zones["zone"]!}, ${cell("zone")}) > 0)`;
        return `=IF(${isKnown}, CANYARD.EMITTER_FLOW(${share}, ${cell("minutes")} * 60, units), "")`;
      },
      how: "applied to a pot / emitters / seconds, per hour",
    },
    {
      key: "ratio",
      heading: "pail / emitter",
      unit: "ratio",
      format: "decimals2",
      formula: (cell) => `=IF(COUNT(${cell("flow")}) = 0, "", ${cell("flow")} / ${ofZone("flow", cell)})`,
      how: "flow by the pail / flow on Inputs",
    },
    {
      key: "latest",
      heading: "latest of",
      formula: (cell, row) => {
        const [zone, date] = [cell("zone"), cell("date")];
        const later = `COUNTIFS(${wholeColumn(zone, row, TEST_ROWS)}, ${zone}, ${wholeColumn(date, row, TEST_ROWS)}, ">" & ${date})`;
        return `=IF(${zone} = "", "", IF(${later} = 0, ${zone}, ""))`;
      },
      how: "the zone, where no test of it has a later date",
    },
  ];
}
