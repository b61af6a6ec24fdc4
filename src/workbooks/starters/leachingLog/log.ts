import type { BlockRef, RowCells, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { above, allAbove } from "../shared/rowsAround";
import { FIGURES, type LeachingTest } from "./figures";
import type { LogInputs } from "./inputs";

export type Log = Readonly<Record<string, BlockRef>>;

const ROWS = 90;
/** The leachate of every fourth pot was tested for salts. */
const EC_EVERY = 4;

/** A row without a zone is no pot. */
const unlessBlank = (cell: RowCells, formula: string): string => `=IF(${cell("zone")} = "", "", ${formula})`;

export function fillLog(kit: StarterBuilder, log: SheetBuilder, given: LogInputs): Log {
  const { tests } = FIGURES[kit.edition];
  const ofPots = (value: (test: LeachingTest, pot: number) => number | string | null): (number | string | null)[] => {
    const typed = tests.flatMap((test) => test.applied.map((_applied, pot) => value(test, pot)));
    return [...typed, ...Array<null>(ROWS - typed.length).fill(null)];
  };
  const volumes = { unit: "mL", format: "decimals0", limits: { least: 0, most: 200_000 } } as const;
  log.note(
    "A dry saucer is 0, not blank. Pot light and leaching high: do not cut the time, rewet in pulses.",
    "caution",
  );
  return log.skip().table({
    rows: ROWS,
    columns: [
      {
        key: "date",
        heading: "date",
        unit: "day",
        format: "date",
        inputs: ofPots(({ date }) => date),
        limits: { least: 36_526, most: 73_050, message: "date must be a day, such as 2026-07-06." },
      },
      {
        key: "zone",
        heading: "zone",
        inputs: ofPots(({ zone }) => zone),
        limits: { list: given.zones["zone"]!, message: "zone must be one of the zones on the sheet Inputs." },
      },
      { key: "pot", heading: "pot", inputs: ofPots((_test, pot) => pot + 1) },
      { key: "applied", heading: "applied", inputs: ofPots(({ applied }, pot) => applied[pot]!), ...volumes },
      { key: "leachate", heading: "leachate", inputs: ofPots(({ leachate }, pot) => leachate[pot]!), ...volumes },
      {
        key: "minutes",
        heading: "minutes",
        unit: "min",
        format: "decimals1",
        inputs: ofPots(({ minutes }) => minutes),
        limits: { least: 0.5, most: 600 },
      },
      {
        key: "ec",
        heading: "EC of leachate",
        unit: "mS/cm",
        format: "decimals2",
        inputs: ofPots(({ ec }, pot) => (pot % EC_EVERY === 0 ? (ec[pot / EC_EVERY] ?? null) : null)),
        limits: { least: 0.01, most: 30 },
      },
      { key: "by", heading: "by", inputs: ofPots(({ by }) => by) },
      ...workedColumns(kit),
    ],
  }).column;
}

function workedColumns(kit: StarterBuilder): readonly TableColumn[] {
  const least = kit.list("least leachate that counts, mL", [0.001]).cell(0);
  const ifShown = (cell: RowCells, formula: string): string =>
    `=IF(AND(COUNT(${cell("fraction")}) = 1, ${cell("test")} = shown_test), ${formula}, "")`;
  return [
    {
      key: "fraction",
      heading: "leaching fraction",
      unit: "fraction",
      format: "percent",
      style: "result",
      formula: (cell) =>
        unlessBlank(
          cell,
          `IF(COUNT(${cell("applied")}, ${cell("leachate")}) < 2, "not measured", CANYARD.LEACHING_FRACTION(${cell("leachate")}, ${cell("applied")}))`,
        ),
      how: "leachate / applied",
    },
    {
      key: "test",
      heading: "test",
      unit: "number",
      format: "decimals0",
      formula: (cell, row) => {
        const isSame = `AND(${cell("date")} = ${above(cell("date"))}, ${cell("zone")} = ${above(cell("zone"))})`;
        return unlessBlank(cell, `MAX(${allAbove(cell("test"), row)}) + IF(${isSame}, 0, 1)`);
      },
      how: "one more where date or zone differ from the row above",
    },
    {
      key: "shownApplied",
      heading: "shown: applied",
      unit: "mL",
      format: "decimals0",
      formula: (cell) => ifShown(cell, cell("applied")),
    },
    {
      key: "shownLeachate",
      heading: "shown: leachate",
      unit: "mL",
      format: "decimals0",
      formula: (cell) => ifShown(cell, `MAX(${cell("leachate")}, ${least})`),
      how: "pots of the test shown on Result; a dry saucer stands as 0.001 mL, or it would be left out with the blanks",
    },
    {
      key: "shownFraction",
      heading: "shown: fraction",
      unit: "fraction",
      format: "percent",
      formula: (cell) => ifShown(cell, cell("fraction")),
    },
  ];
}
