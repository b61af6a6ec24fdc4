import type { CellRef, RowCells, TableColumn } from "../../kit";
import type { Columns } from "./benches";
import { MOST_BENCHES } from "./figures";
import type { RoundInputs } from "./inputs";
import { DUST } from "./moments";
import { NUMBERED } from "../shared/numbered";
import { wholeColumn } from "../shared/rowsAround";

/** Each bench starts, is full, starts to drain and is empty. */
export const CHANGES = 4 * MOST_BENCHES;

/** Water drawn and come back up to a minute, by what was begun and ended before it. */
export interface LevelAt {
  drawn(minute: string): string;
  back(minute: string): string;
  /** All the water in the tank. */
  water(drawn: string, back: string): string;
}

export function levelAt(round: RoundInputs, moments: Columns): LevelAt {
  const column = (key: string): string => moments[key]!.here;
  return {
    drawn: (minute) => {
      const run = (key: string): string =>
        `${minute} * COUNTIF(${column(key)}, "<" & ${minute}) - SUMIF(${column(key)}, "<" & ${minute})`;
      return `${round.benchFlow} * (${run("start")} - (${run("full")}))`;
    },
    back: (minute) => {
      const run = (key: string, weighed: string): string =>
        `${minute} * SUMIF(${column(key)}, "<" & ${minute}, ${column("back")}) - SUMIF(${column(key)}, "<" & ${minute}, ${column(weighed)})`;
      return `(${run("drain", "backStart")} - (${run("empty", "backEnd")})) / ${round.drain}`;
    },
    water: (drawn, back) => `${round.start} - ${drawn} + ${back}`,
  };
}

export function changeColumns(volume: string, moments: Columns, level: LevelAt): readonly TableColumn[] {
  const all = `${moments["start"]!.cell(0).here}:${moments["empty"]!.cell(MOST_BENCHES - 1).here}`;
  const ifReached = (cell: RowCells, formula: string): string => `=IF(${cell("minute")} = "", "", ${formula})`;
  return [
    NUMBERED,
    {
      key: "minute",
      heading: "minute",
      unit: "min",
      format: "decimals2",
      formula: (cell) => `=IF(${cell("n")} > COUNT(${all}), "", SMALL(${all}, ${cell("n")}))`,
      how: "starts, fulls, drains and ends of all benches, sorted",
    },
    {
      key: "drawn",
      heading: "drawn so far",
      unit: volume,
      format: "decimals1",
      formula: (cell) => ifReached(cell, level.drawn(cell("minute"))),
      how: "flow x minutes of filling: this minute less the start, for each bench begun, and not beyond full",
    },
    {
      key: "back",
      heading: "come back so far",
      unit: volume,
      format: "decimals1",
      formula: (cell) => ifReached(cell, level.back(cell("minute"))),
      how: "standing water x minutes of draining / drain, for each bench",
    },
    {
      key: "water",
      heading: "water in the tank",
      unit: volume,
      format: "decimals1",
      style: "result",
      formula: (cell) => ifReached(cell, level.water(cell("drawn"), cell("back"))),
      how: "at the start - drawn + come back",
    },
    {
      key: "mark",
      heading: "",
      formula: (cell, row) => {
        const column = wholeColumn(cell("water"), row, CHANGES);
        return ifReached(cell, `IF(${cell("water")} - MIN(${column}) < ${DUST}, "lowest", "")`);
      },
      style: "mark",
    },
  ];
}

export interface Course {
  readonly level: LevelAt;
  readonly lowest: CellRef;
  readonly step: CellRef;
}

export function courseColumns(
  volume: string,
  round: RoundInputs,
  { level, lowest, step }: Course,
): readonly TableColumn[] {
  return [
    NUMBERED,
    {
      key: "minute",
      heading: "minute",
      unit: "min",
      format: "decimals0",
      formula: (cell) => `=(${cell("n")} - 1) * ${step.here}`,
    },
    {
      key: "water",
      heading: "water in the tank",
      unit: volume,
      format: "decimals0",
      formula: (cell) => `=${level.water(level.drawn(cell("minute")), level.back(cell("minute")))}`,
    },
    {
      key: "lowest",
      heading: "lowest of the round",
      unit: volume,
      format: "decimals0",
      formula: () => `=${lowest.here}`,
    },
    { key: "least", heading: "pump's minimum", unit: volume, format: "decimals0", formula: () => `=${round.dead}` },
  ];
}
