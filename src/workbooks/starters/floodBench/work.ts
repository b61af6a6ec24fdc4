import type { CellRef, RowCells, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import type { Benches, Columns } from "./benches";
import { CHANGES, changeColumns, courseColumns, levelAt } from "./course";
import { MOST_BENCHES } from "./figures";
import type { RoundInputs } from "./inputs";
import { momentColumns } from "./moments";
import { NUMBERED } from "../shared/numbered";

/** Points of the course that is drawn: the start and sixty steps. */
const POINTS = 61;

export interface Work {
  /** The benches as they are flooded, as FLOOD_SCHEDULE gets them. */
  readonly inOrder: Columns;
  readonly moments: Columns;
  readonly changes: Columns;
  readonly course: Columns;
  /** Minutes from the first fill until the last bench is empty. */
  readonly round: CellRef;
  readonly lowest: CellRef;
}

/** The round by built-in functions: what the charts draw, and what the schedule is held against. */
export function fillWork(kit: StarterBuilder, work: SheetBuilder, round: RoundInputs, benches: Benches): Work {
  const volume = kit.pick("gal", "L");
  work.note("Benches in their order", "heading");
  const inOrder = work.table({ rows: MOST_BENCHES, columns: orderColumns(volume, benches) }).column;
  work.skip().note("When each fills and drains", "heading");
  const moments = work.table({ rows: MOST_BENCHES, columns: momentColumns(volume, round, inOrder) }).column;
  const level = levelAt(round, moments);
  work.skip().note("Tank at each change", "heading");
  const changes = work.table({ rows: CHANGES, columns: changeColumns(volume, moments, level) }).column;
  work.skip().note("Tank step by step", "heading");
  const { round: end, lowest, step } = ends(volume, work, moments, changes);
  work.skip();
  const course = work.table({ rows: POINTS, columns: courseColumns(volume, round, { level, lowest, step }) }).column;
  return { inOrder, moments, changes, course, round: end, lowest };
}

function orderColumns(volume: string, { worked }: Benches): readonly TableColumn[] {
  const found = (key: string, cell: RowCells): string =>
    `INDEX(${worked[key]!}, MATCH(${cell("n")}, ${worked["place"]!}, 0))`;
  // Wrong numbers are told on Benches; here they are missing, so that the schedule leaves out that bench alone.
  const orMissing = (key: string, cell: RowCells): string =>
    `=IF(${cell("bench")} = "", "", IFERROR(${found(key, cell)}, ""))`;
  return [
    {
      key: "bench",
      heading: "bench",
      formula: (cell) => `=IFERROR(${found("bench", cell)}, "")`,
      how: "the bench that has this place",
    },
    NUMBERED,
    {
      key: "volume",
      heading: "standing water",
      unit: volume,
      format: "decimals1",
      formula: (cell) => orMissing("volume", cell),
    },
    {
      key: "uptake",
      heading: "taken up",
      unit: volume,
      format: "decimals1",
      formula: (cell) => orMissing("uptake", cell),
    },
  ];
}

/** The end of the round, its lowest water and the step of the course. */
function ends(volume: string, work: SheetBuilder, moments: Columns, changes: Columns) {
  const value = (label: string, unit: string, formula: string, format: "decimals0" | "decimals1"): CellRef => {
    const row = work.next;
    work.put(`A${row}`, { value: label });
    work.put(`C${row}`, { value: unit });
    work.skip();
    return work.put(`D${row}`, { formula, format });
  };
  const round = value("The round takes", "min", `=MAX(${moments["empty"]!.here})`, "decimals1");
  const lowest = value("Lowest water in the tank", volume, `=MIN(${changes["water"]!.here})`, "decimals1");
  const step = value("Step", "min", `=MAX(1, ROUNDUP(${round.here} / 60, 0))`, "decimals0");
  return { round, lowest, step };
}
