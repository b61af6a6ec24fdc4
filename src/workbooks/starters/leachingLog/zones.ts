import type { RowCells, TableColumn } from "../../kit";
import type { LogInputs } from "./inputs";
import type { Tests } from "./work";

const minutes = { unit: "min", format: "decimals1" } as const;

/** Only where the zone has a test. */
const whereTested = (cell: RowCells, formula: string): string => `=IF(COUNT(${cell("test")}) = 0, "", ${formula})`;
/** Only where something leached: without leachate no new run time can be told. */
const whereLeached = (cell: RowCells, formula: string): string => `=IF(SUM(${cell("fraction")}) > 0, ${formula}, "")`;

/** One zone on a row, by its latest test. */
export function zoneColumns(given: LogInputs, tests: Tests): readonly TableColumn[] {
  const ofTest = (key: string) => (cell: RowCells) => whereTested(cell, `INDEX(${tests[key]!}, ${cell("test")})`);
  const inBand = (cell: RowCells): string =>
    `AND(${cell("fraction")} >= ${given.low}, ${cell("fraction")} <= ${given.high})`;
  return [
    {
      key: "zone",
      heading: "zone",
      formula: (_cell, row) => {
        const zone = `Inputs!${given.zones["zone"]!.cell(row).at}`;
        return `=IF(${zone} = "", "", ${zone})`;
      },
    },
    {
      key: "test",
      heading: "latest test",
      unit: "number",
      format: "decimals0",
      formula: (cell) => {
        const isTested = `AND(${cell("zone")} <> "", COUNTIF(${tests["latest"]!}, ${cell("zone")}) > 0)`;
        return `=IF(${isTested}, MATCH(${cell("zone")}, ${tests["latest"]!}, 0), "")`;
      },
    },
    { key: "date", heading: "on", format: "date", formula: ofTest("date") },
    { key: "pots", heading: "pots", unit: "count", format: "decimals0", formula: ofTest("pots") },
    {
      key: "fraction",
      heading: "leaching fraction",
      unit: "pooled",
      format: "percent",
      style: "result",
      formula: ofTest("fraction"),
    },
    { key: "now", heading: "minutes now", ...minutes, formula: ofTest("minutes") },
    {
      key: "aimed",
      heading: "minutes for the leaching wanted",
      ...minutes,
      formula: (cell) =>
        whereLeached(cell, `CANYARD.RUN_MINUTES_FROM_LEACHING(${cell("now")}, ${cell("fraction")}, ${given.target})`),
      how: "minutes now x (1 - measured) / (1 - wanted): the pot keeps the same water",
    },
    {
      key: "set",
      heading: "minutes to set",
      ...minutes,
      style: "result",
      formula: (cell) => whereLeached(cell, `IF(${inBand(cell)}, ${cell("now")}, ${cell("aimed")})`),
      how: "as they are within the band",
    },
    {
      key: "change",
      heading: "change",
      unit: "of now",
      format: "percent",
      formula: (cell) => whereLeached(cell, `${cell("set")} / ${cell("now")} - 1`),
      how: "minutes to set / minutes now - 1",
    },
    {
      key: "advice",
      heading: "what to do",
      formula: (cell) => {
        const fraction = cell("fraction");
        const high = `IF(${fraction} > ${given.suspect}, "lift a pot: light? rewet. Heavy? cut", "cut")`;
        const measured = `IF(${fraction} < ${given.low}, "longer: salts gather", IF(${fraction} > ${given.high}, ${high}, "leave as it is"))`;
        const tested = `IF(${fraction} = 0, "nothing leached: run longer, test again", ${measured})`;
        return `=IF(${cell("zone")} = "", "", IF(COUNT(${fraction}) = 0, "no test yet", ${tested}))`;
      },
    },
  ];
}
