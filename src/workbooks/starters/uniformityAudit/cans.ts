import { BlockRef, type RowCells, type SheetBuilder, type StarterBuilder, type TableColumn } from "../../kit";
import { CAN_COLUMNS, CAN_ROWS, FIGURES } from "./figures";

const CANS = Array.from({ length: CAN_COLUMNS }, (_, at) => at);
const ROWS = Array.from({ length: CAN_ROWS }, (_, at) => `row ${at + 1}`);

/** The readings as they stand on the ground; under them the same block with the driest quarter marked. */
export function fillCans(kit: StarterBuilder, cans: SheetBuilder): BlockRef {
  const { catches } = FIGURES[kit.edition];
  cans.note("What each can caught", "heading");
  const given = cans.table({
    rows: CAN_ROWS,
    columns: [
      { key: "row", heading: "row of cans", inputs: ROWS, style: "note" },
      ...CANS.map((at): TableColumn => ({
        key: `can${at}`,
        heading: `can ${at + 1}`,
        unit: "mL",
        inputs: catches.map((row) => row[at]!),
        format: "decimals0",
        limits: {
          least: 0,
          most: 20_000,
          message: "A catch is a number of mL from 0 to 20000; Inputs says what a blank or 0 is.",
        },
      })),
    ],
  }).column;
  const grid = new BlockRef(cans.name, given["can0"]!.first, given[`can${CAN_COLUMNS - 1}`]!.last);
  kit.name("catches", grid);
  cans.skip().note("The driest quarter", "heading");
  cans.table({
    rows: CAN_ROWS,
    columns: [
      { key: "row", heading: "row of cans", formula: (_cell, row) => `=${given["row"]!.cell(row).at}` },
      ...CANS.flatMap((at) => markedCan(at, given[`can${at}`]!, grid)),
    ],
  });
  cans.note("dry: fewer than a quarter of the cans caught less than this one. Look there first.");
  return grid;
}

function markedCan(at: number, readings: BlockRef, grid: BlockRef): TableColumn[] {
  const reading = (row: number): string => readings.cell(row).at;
  return [
    {
      key: `can${at}`,
      heading: `can ${at + 1}`,
      unit: "mL",
      format: "decimals0",
      formula: (_cell, row) => `=IF(${reading(row)} = "", "", ${reading(row)})`,
    },
    {
      key: `mark${at}`,
      heading: "",
      style: "mark",
      formula: (_cell: RowCells, row: number) =>
        `=IF(COUNT(${reading(row)}) = 0, "none", IF(COUNTIF(${grid.here}, "<" & ${reading(row)}) < COUNT(${grid.here}) / 4, "dry", ""))`,
    },
  ];
}
