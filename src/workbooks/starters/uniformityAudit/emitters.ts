import type { BlockRef, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { EMITTERS, FIGURES, NUMBERED, PLACED, PLACES } from "./figures";
import type { AuditInputs } from "./inputs";

export type Columns = Readonly<Record<string, BlockRef>>;

/** Each emitter's catch in the same seconds. */
export function fillEmitters(kit: StarterBuilder, emitters: SheetBuilder, given: AuditInputs): Columns {
  emitters
    .note("Each row is an emitter", "heading")
    .note("Delete the rows that you do not test; copy a row within the table for more.");
  const caught: TableColumn = {
    key: "caught",
    heading: "caught",
    unit: "mL",
    inputs: FIGURES[kit.edition].emitters,
    format: "decimals0",
    limits: { least: 0, most: 20_000 },
  };
  const columns = emitters.table({
    rows: EMITTERS,
    columns: [
      ...placeColumns(),
      caught,
      flowColumn(kit, "mL / seconds of each catch", (row) => `${row("caught")}, ${given.seconds}`, "caught"),
      {
        key: "rated",
        heading: "should give",
        unit: kit.pick("gal/h", "L/h"),
        format: "decimals2",
        formula: () => `=${given.rated}`,
      },
    ],
  }).column;
  emitters.chart({
    type: "columns",
    title: "Flow of each emitter, from head to tail",
    description:
      "A column for each emitter, from the head of the zone over its middle to its tail: its flow. A line across: the flow that it should give.",
    labels: String(columns["place"]!),
    series: [
      { name: "flow", values: String(columns["flow"]!) },
      { name: "should give", values: String(columns["rated"]!), as: "line" },
    ],
    axisTitles: { labels: "where it stands", values: kit.pick("gal/h", "L/h") },
    position: { cell: "G8", width: 560, height: 320 },
  });
  return columns;
}

/** The seconds that each emitter takes to fill the same bottle. */
export function fillBottle(kit: StarterBuilder, bottle: SheetBuilder, given: AuditInputs): Columns {
  bottle
    .note("Each row is an emitter", "heading")
    .note("The slowest give the least: average the flows, never the times.");
  return bottle.table({
    rows: EMITTERS,
    columns: [
      ...placeColumns(),
      {
        key: "time",
        heading: "to fill it",
        unit: "s",
        inputs: FIGURES[kit.edition].seconds,
        format: "decimals0",
        limits: { least: 1, most: 7200 },
      },
      flowColumn(kit, "mL of the bottle / seconds", (row) => `${given.bottle}, ${row("time")}`, "time"),
    ],
  }).column;
}

function placeColumns(): TableColumn[] {
  return [
    {
      key: "place",
      heading: "place",
      inputs: PLACED,
      limits: { words: PLACES },
    },
    { key: "number", heading: "emitter", unit: "no.", inputs: NUMBERED, format: "decimals0" },
  ];
}

function flowColumn(
  kit: StarterBuilder,
  how: string,
  given: (cell: (key: string) => string) => string,
  needed: string,
): TableColumn {
  return {
    key: "flow",
    heading: "flow",
    unit: kit.pick("gal/h", "L/h"),
    format: kit.pick("decimals3", "decimals2"),
    style: "result",
    formula: (cell) => `=IF(${cell(needed)} = "", "", CANYARD.EMITTER_FLOW(${given(cell)}, units))`,
    how,
  };
}
