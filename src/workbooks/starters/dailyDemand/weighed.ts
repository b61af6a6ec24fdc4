import type { BlockRef, RowCells, SheetBuilder, StarterBuilder } from "../../kit";
import type { Days } from "./days";
import { FIGURES, WEIGHED_ON } from "./figures";
import type { DemandInputs } from "./inputs";
import type { Pot } from "./work";

export type Weighed = Readonly<Record<string, BlockRef>>;

const ROWS = 8;

/** A row without a date is no weighing; one of a day that is not worked has nothing to be held against. */
const unlessBlank = (cell: RowCells, formula: string): string => `=IF(${cell("date")} = "", "", ${formula})`;
const whereWorked = (cell: RowCells, formula: string): string => `=IF(SUM(${cell("worked")}) > 0, ${formula}, "")`;

export function fillWeighed(
  kit: StarterBuilder,
  sheet: SheetBuilder,
  given: DemandInputs,
  pot: Pot,
  days: Days,
): Weighed {
  const { drained, dayLater } = FIGURES[kit.edition];
  const [weight, volume] = [kit.pick("lb", "kg"), kit.pick("gal", "L")];
  const weights = { unit: weight, format: "decimals2", limits: { least: 0.05, most: kit.pick(4000, 2000) } } as const;
  const volumes = { unit: volume, format: kit.pick("decimals3", "decimals2") } as const;
  const onTheDay = (key: string, cell: RowCells): string =>
    `INDEX(${days.column[key]!}, MATCH(${cell("date")}, ${days.column["date"]!}, 0))`;
  sheet
    .note("Weigh one pot of the block twice alike: drained after watering, and a day later before the next.")
    .note(
      "No rain, no irrigation and no dripping in between. Several pots on a day say more than one: give each its row.",
    )
    .skip();
  return sheet.table({
    rows: ROWS,
    columns: [
      {
        key: "date",
        heading: "date",
        unit: "day",
        format: "date",
        inputs: [...WEIGHED_ON, ...Array<null>(ROWS - WEIGHED_ON.length).fill(null)],
        limits: { least: 367, most: 73_050, message: "date must be a day, such as 2026-07-31." },
      },
      { key: "drained", heading: "drained after watering", inputs: drained, ...weights },
      { key: "later", heading: "a day later", inputs: dayLater, ...weights },
      {
        key: "use",
        heading: "used by the scale",
        ...volumes,
        style: "result",
        formula: (cell) => unlessBlank(cell, `CANYARD.WATER_FROM_WEIGHT(${cell("drained")}, ${cell("later")}, units)`),
        how: kit.pick(
          "difference of the weights / 8.345 lb to the gallon",
          "difference of the weights, 1 kg to the litre",
        ),
      },
      {
        key: "worked",
        heading: "used by the weather",
        ...volumes,
        formula: (cell) => {
          const isThere = `COUNTIF(${days.column["date"]!}, ${cell("date")}) > 0`;
          return unlessBlank(cell, `IF(${isThere}, ${onTheDay("use", cell)}, "not on Weather")`);
        },
        how: "what the sheet Days has for that date",
      },
      {
        key: "ratio",
        heading: "scale / weather",
        unit: "ratio",
        format: "decimals2",
        formula: (cell) => whereWorked(cell, `${cell("use")} / ${cell("worked")}`),
        how: "above 1 the plant drinks more than was worked out",
      },
      {
        key: "word",
        heading: "passes",
        style: "check",
        formula: (cell) => {
          const passes = `AND(${cell("ratio")} >= ${given.ratioLow}, ${cell("ratio")} <= ${given.ratioHigh})`;
          return `=IF(COUNT(${cell("ratio")}) = 0, "", IF(${passes}, "OK", "LOOK"))`;
        },
      },
      {
        key: "kc",
        heading: "crop coefficient by the scale",
        unit: "factor",
        format: "decimals2",
        style: "result",
        formula: (cell) =>
          whereWorked(cell, `CANYARD.CROP_COEFFICIENT(${cell("use")}, ${onTheDay("et", cell)}, ${pot.area}, units)`),
        how: "used by the scale / (ET of the day x ground of a plant)",
      },
    ],
  }).column;
}
