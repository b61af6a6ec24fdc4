import type { RowCells, TableColumn } from "../../kit";
import type { Columns } from "./benches";
import { MOST_BENCHES } from "./figures";
import type { RoundInputs } from "./inputs";
import { allAbove, wholeColumn } from "../shared/rowsAround";

/** What arithmetic leaves of a difference of nothing, in minutes or of the water in the tank. */
export const DUST = "0.000001";

type IfFlooded = (cell: RowCells, formula: string, otherwise: string) => string;

/** When each bench fills and drains, in minutes from the first fill; a bench whose numbers are missing has none. */
export function momentColumns(volume: string, round: RoundInputs, inOrder: Columns): readonly TableColumn[] {
  const of = (key: string, row: number): string => inOrder[key]!.cell(row).at;
  const minutes = { unit: "min", format: "decimals2" } as const;
  const ifFlooded = (cell: RowCells, formula: string, otherwise: string): string =>
    `=IF(ISNUMBER(${cell("start")}), ${formula}, ${otherwise})`;
  return [
    { key: "bench", heading: "bench", formula: (_cell, row) => `=${of("bench", row)}` },
    {
      key: "start",
      heading: "fill starts",
      ...minutes,
      formula: (cell, row) => {
        const before = (key: string): string => `MAX(${allAbove(cell(key), row)})`;
        const isFirst = `MOD(COUNT(${allAbove(cell("start"), row)}), ${round.atOnce}) = 0`;
        const waited = `IF(${round.next} = "after_fill", ${before("full")}, ${before("empty")})`;
        const start = `IF(${isFirst}, ${waited}, ${before("start")})`;
        return `=IF(COUNT(${of("volume", row)}:${of("uptake", row)}) = 2, ${start}, "")`;
      },
      how: "with its group; a group when the one before is full (after_fill) or empty (after_drain)",
    },
    {
      key: "full",
      heading: "full",
      ...minutes,
      formula: (cell, row) =>
        ifFlooded(cell, `${cell("start")} + (${of("volume", row)} + ${of("uptake", row)}) / ${round.benchFlow}`, '""'),
      how: "start + (standing water + taken up) / flow",
    },
    {
      key: "drain",
      heading: "drain starts",
      ...minutes,
      formula: (cell) => ifFlooded(cell, `${cell("full")} + ${round.soak}`, '""'),
      how: "full + soak",
    },
    {
      key: "empty",
      heading: "empty",
      ...minutes,
      formula: (cell) => ifFlooded(cell, `${cell("drain")} + ${round.drain}`, '""'),
      how: "drain starts + drain",
    },
    ...stripColumns({ unit: "min", format: "decimals0" }, round, ifFlooded),
    ...returnColumns(volume, of, ifFlooded),
    {
      key: "holding",
      heading: "benches with water",
      unit: "count",
      format: "decimals0",
      formula: (cell, row) => {
        const column = (key: string): string => wholeColumn(cell(key), row, MOST_BENCHES);
        const until = `"<" & (${cell("start")} + ${DUST})`;
        return ifFlooded(cell, `COUNTIF(${column("start")}, ${until}) - COUNTIF(${column("empty")}, ${until})`, '""');
      },
      how: "fills begun by the start of this one, less benches empty by then",
    },
  ];
}

/** Lengths of the bars of the strip. */
function stripColumns(
  minutes: { unit: string; format: "decimals0" },
  round: RoundInputs,
  ifFlooded: IfFlooded,
): readonly TableColumn[] {
  return [
    { key: "wait", heading: "waits", ...minutes, formula: (cell) => ifFlooded(cell, cell("start"), "0") },
    {
      key: "filling",
      heading: "fills",
      ...minutes,
      formula: (cell) => ifFlooded(cell, `${cell("full")} - ${cell("start")}`, "0"),
    },
    { key: "soaking", heading: "soaks", ...minutes, formula: (cell) => ifFlooded(cell, `${round.soak}`, "0") },
    { key: "draining", heading: "drains", ...minutes, formula: (cell) => ifFlooded(cell, `${round.drain}`, "0") },
  ];
}

/** What comes back from a bench, so that it can be summed up to any minute. */
function returnColumns(
  volume: string,
  of: (key: string, row: number) => string,
  ifFlooded: IfFlooded,
): readonly TableColumn[] {
  return [
    {
      key: "back",
      heading: "comes back",
      unit: volume,
      format: "decimals1",
      formula: (cell, row) => ifFlooded(cell, of("volume", row), "0"),
    },
    {
      key: "backStart",
      heading: "x drain starts",
      unit: `${volume} min`,
      format: "decimals1",
      formula: (cell) => ifFlooded(cell, `${cell("back")} * ${cell("drain")}`, "0"),
    },
    {
      key: "backEnd",
      heading: "x empty",
      unit: `${volume} min`,
      format: "decimals1",
      formula: (cell) => ifFlooded(cell, `${cell("back")} * ${cell("empty")}`, "0"),
    },
  ];
}
