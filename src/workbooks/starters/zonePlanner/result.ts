import type { BlockRef, SheetBuilder, StarterBuilder } from "../../kit";
import { MOST_CYCLES, type Columns, type ZoneInputs } from "./inputs";

const ZONES = 10;
/** Runs that the strip of the day has room for. */
const STRIP_ROWS = 24;

export interface Day {
  readonly sequence: BlockRef;
  readonly boom: BlockRef;
}

export function fillResult(kit: StarterBuilder, result: SheetBuilder, given: ZoneInputs, order: Columns): Day {
  const { start, gap, cycles } = given;
  const zones = ["zone", "minutes", "flow"].map((key) => String(order[key])).join(", ");
  const boom = result.spill({
    label: "Boom in House 1",
    how: "Passes are whole, rounded up.",
    table: `=CANYARD.BOOM_PLAN(${["section", "depth", "length"].map((key) => String(given.boom[key])).join(", ")}, ${given.boomFlow}, ${given.boomSpeed}, ${given.swath}, units)`,
    rows: 5,
    formats: [undefined, "decimals0", "decimals1", "decimals0"],
    header: true,
    plain: boomPlain(kit, given),
  });
  const sequence = result.spill({
    label: "When each zone runs",
    how: "Zones whose flows fit the supply together start together; the next set waits until they have stopped.",
    table: `=CANYARD.ZONE_SEQUENCE(${zones}, supply_flow, ${start}, ${gap}, ${cycles})`,
    rows: ZONES * MOST_CYCLES + 2,
    formats: [undefined, "time", "time", "decimals1", undefined],
    header: true,
  });
  charts(result, order);
  return { sequence, boom };
}

/** Passes, minutes and water of a section, and their sums, in built-in functions. */
function boomPlain(kit: StarterBuilder, given: ZoneInputs): readonly (readonly string[])[] {
  const { boom, boomFlow, boomSpeed, swath } = given;
  const perPass = kit.pick(
    `(${boomFlow} * 231 / 144 / (${boomSpeed} * ${swath}))`,
    `(${boomFlow} / (${boomSpeed} * ${swath}))`,
  );
  const rows = [0, 1, 2].map((row) => {
    const passes = `IF(${boom["depth"]!.cell(row)} = 0, 0, MAX(1, ROUNDUP(${boom["depth"]!.cell(row)} / ${perPass} - 1E-9, 0)))`;
    const crossing = `${boom["length"]!.cell(row)} / ${boomSpeed}`;
    return [
      `=${boom["section"]!.cell(row)}`,
      `=${passes}`,
      `=MAX(${passes}, 1) * ${crossing}`,
      `=${passes} * ${crossing} * ${boomFlow}`,
    ];
  });
  const sum = (column: number): string => `=${rows.map((row) => row[column]!.slice(1)).join(" + ")}`;
  return [['="section"', '="passes"', '="minutes"', '="volume"'], ...rows, ['="total"', sum(1), sum(2), sum(3)]];
}

function charts(result: SheetBuilder, order: Columns): void {
  result
    .chart({
      type: "columns",
      title: "Minutes of each zone, and the window",
      description: "A column for each zone: its minutes a day. A line across: the minutes of the window.",
      labels: String(order["zone"]),
      series: [
        { name: "minutes a day", values: String(order["minutes"]) },
        { name: "window", values: String(order["window"]), as: "line" },
      ],
      axisTitles: { values: "minutes" },
      position: { cell: "G5", width: 520, height: 300 },
    })
    .chart({
      type: "columns",
      title: "Flow of each zone, and the supply",
      description: "A column for each zone: its flow. A line across: the flow to plan with.",
      labels: String(order["zone"]),
      series: [
        { name: "flow of the zone", values: String(order["flow"]) },
        { name: "flow to plan with", values: String(order["supply"]), as: "line" },
      ],
      axisTitles: { values: "flow" },
      position: { cell: "G21", width: 520, height: 300 },
    });
}

/** Start and length of each run in minutes, for the strip of the day. */
export function fillStrip(work: SheetBuilder, result: SheetBuilder, { start }: ZoneInputs, { sequence }: Day): void {
  const begin = (row: number) => sequence.cell(row + 1, 1);
  const stop = (row: number) => sequence.cell(row + 1, 2);
  const isRun = (row: number) =>
    `AND(ISNUMBER(${sequence.cell(row + 1, 3)}), ${sequence.cell(row + 1)} <> "end of round")`;
  work.skip().note(`The first ${STRIP_ROWS} runs as a strip`, "heading");
  const strip = work.table({
    rows: STRIP_ROWS,
    columns: [
      {
        key: "zone",
        heading: "zone",
        formula: (_cell, row) => `=IF(${isRun(row)}, ${sequence.cell(row + 1)}, "")`,
      },
      {
        key: "wait",
        heading: "after the first start",
        unit: "min",
        format: "decimals1",
        formula: (_cell, row) => `=IF(${isRun(row)}, (${begin(row)} - ${start}) * 24 * 60, 0)`,
      },
      {
        key: "runs",
        heading: "runs",
        unit: "min",
        format: "decimals1",
        formula: (_cell, row) => `=IF(${isRun(row)}, (${stop(row)} - ${begin(row)}) * 24 * 60, 0)`,
      },
    ],
  }).column;
  result.chart({
    type: "bars",
    stacked: true,
    topDown: true,
    title: "Strip of the day",
    description: "A lying bar for each run, in the order of the table: it begins at its start and ends at its stop.",
    labels: String(strip["zone"]),
    series: [
      { name: "after the first start", values: String(strip["wait"]), unseen: true },
      { name: "runs", values: String(strip["runs"]) },
    ],
    axisTitles: { values: "minutes after the first start" },
    position: { cell: "G37", width: 520, height: 620 },
  });
}
