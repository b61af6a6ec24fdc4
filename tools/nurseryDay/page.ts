/** docs/nursery-day.md: the words around the day's cells. */
import {
  BOOM_TOTAL,
  CYCLES,
  END_OF_ROUND,
  FIRST_SECTION,
  FIRST_WATER,
  FIRST_YARD,
  FIRST_ZONE,
  LAST_SECTION,
  LAST_YARD,
  LAST_ZONE,
  WATER_TOTAL,
} from "./plan";
import { clock } from "./drawing";
import type { DaySheet, Value } from "./sheet";

type Shown = (value: Value) => string;

const MINUTES_PER_DAY = 1440;

function places(digits: number): Shown {
  return (value) => (typeof value === "number" ? value.toFixed(digits) : value);
}

const asIs: Shown = (value) => String(value);
const whole: Shown = (value) => (typeof value === "number" ? Math.round(value).toLocaleString("en-US") : value);
const percent: Shown = (value) => (typeof value === "number" ? `${Math.round(100 * value)}%` : value);
const time: Shown = (value) => (typeof value === "number" ? clock(value * MINUTES_PER_DAY) : value);
const date: Shown = () => "8 July 2026";

function table(header: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const lines = [header, header.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`);
  return [...lines, ""];
}

type Line = readonly [address: string, what: string, shown: Shown, unit?: string];

/** One cell a line: where it stands, what it is, what is typed, what it answers. */
function cellByCell(sheet: DaySheet, lines: readonly Line[]): string[] {
  const rows = lines.map(([address, what, shown, unit = ""]) => {
    const { formula, value } = sheet.cell(address);
    const answer = `${shown(value)}${unit === "" ? "" : ` ${unit}`}`;
    return [address, what, formula === null ? "" : `\`${formula}\``, answer];
  });
  return table(["cell", "what", "formula", "value"], rows);
}

type Column = readonly [letter: string, heading: string, shown: Shown];

function block(sheet: DaySheet, first: number, last: number, columns: readonly Column[]): string[] {
  const rows = Array.from({ length: last - first + 1 }, (_, index) => {
    const at = first + index;
    const cells = columns.map(([letter, , shown]) => {
      const address = `${letter}${at}`;
      return sheet.has(address) ? shown(sheet.value(address)) : "";
    });
    return [String(at), ...cells];
  });
  return table(["", ...columns.map(([letter, heading]) => `${letter}: ${heading}`)], rows);
}

function formulasOf(sheet: DaySheet, addresses: readonly string[]): string[] {
  return ["```text", ...addresses.map((address) => `${address}  ${sheet.cell(address).formula}`), "```", ""];
}

function beginning(sheet: DaySheet): string[] {
  return [
    "<!-- Made by `npm run nursery-day`; do not edit. -->",
    "",
    "# One day at a nursery, from the weather to the last valve",
    "",
    "This page plans a hot Wednesday at Tern Hollow, an invented nursery, in one sheet: what the plants use, what to give, how long each zone runs, which zones run together, and when the boom goes over its house. Type the same cells and the same answers stand there; put in your own figures and it is your day. All figures are invented, and every number is an estimate until a bucket, a scale and a meter agree with it.",
    "",
    "Emitters of their own are for pots of about #5 to #7 and up. Smaller pots stay under water from above: the #1 pots of Bed 1 under sprinklers, plugs and the small pots of the house under a boom.",
    "",
    `![What runs when: four yards, a sprinkler bed and the boom house on a time axis, with the flow drawn from the supply below it](pictures/nursery-day.svg)`,
    "",
    `The round of ${CYCLES} cycles begins at ${time(sheet.value("B11"))} and ends at ${time(sheet.value(`G${END_OF_ROUND}`))}; the boom follows until ${time(sheet.value("B79"))}. At most ${places(1)(sheet.value(`H${END_OF_ROUND}`))} gal/min are drawn at once of the ${places(1)(sheet.value("B10"))} that are counted on, and ${whole(sheet.value(`C${WATER_TOTAL}`))} gal go through the meter.`,
    "",
  ];
}

function weather(sheet: DaySheet): string[] {
  return [
    "## The day",
    "",
    ...cellByCell(sheet, [
      ["B2", "units of all numbers", asIs],
      ["B3", "date", date],
      ["B4", "highest temperature", asIs, "F"],
      ["B5", "lowest temperature", asIs, "F"],
      ["B6", "latitude", asIs, "degrees"],
      ["B7", "reference ET", places(3), "in/day"],
      ["B8", "leaching fraction wanted", places(2)],
      ["B9", "flow of the well, measured", asIs, "gal/min"],
      ["B10", "flow that is counted on", places(1), "gal/min"],
      ["B11", "first start", time],
      ["B12", "gap between sets", asIs, "min"],
      ["B13", "cycles", asIs],
      ["B14", "all done by", time],
    ]),
    "A tenth of the measured flow stays in hand: filters load up and pumps wear.",
    "",
  ];
}

function yards(sheet: DaySheet): string[] {
  const at = FIRST_YARD;
  return [
    "## Pots with emitters: demand, gross water, minutes",
    "",
    "One row a zone, in the order in which they may run. Flow is what the emitters gave in a bucket test, uniformity what the readings gave.",
    "",
    ...block(sheet, FIRST_YARD, LAST_YARD, [
      ["A", "zone", asIs],
      ["B", "pot", asIs],
      ["C", "plants", whole],
      ["D", "ft2 a plant", asIs],
      ["E", "Kc", asIs],
      ["F", "uniformity", places(2)],
      ["G", "emitters", asIs],
      ["H", "gal/h each", asIs],
      ["I", "ft of pipe to a valve", whole],
      ["J", "its bore, in", places(2)],
    ]),
    `Typed once in row ${at} and copied down:`,
    "",
    ...formulasOf(
      sheet,
      ["K", "L", "M", "N", "O", "P", "Q", "R"].map((letter) => `${letter}${at}`),
    ),
    ...block(sheet, FIRST_YARD, LAST_YARD, [
      ["A", "zone", asIs],
      ["K", "net, gal a plant", places(3)],
      ["L", "gross, gal a plant", places(3)],
      ["M", "minutes", places(1)],
      ["N", "flow, gal/min", places(1)],
      ["O", "such zones at once", asIs],
      ["P", "valves", asIs],
      ["Q", "min to fill", places(2)],
      ["R", "minutes with filling", places(1)],
    ]),
    `Yard B draws ${places(0)(sheet.value("N20"))} gal/min, more than the supply gives: column O answers ${asIs(sheet.value("O20"))}, and it must be piped as ${asIs(sheet.value("P20"))} valves. The lines drain at each rest, so every cycle fills them anew. The minutes of column M in one call, without the steps between:`,
    "",
    ...formulasOf(sheet, [`S${at}`]),
    `It answers ${places(1)(sheet.value(`S${at}`))}, the same as M${at}.`,
    "",
  ];
}

function bed(sheet: DaySheet): string[] {
  return [
    "## Pots under sprinklers: depth and minutes",
    "",
    ...cellByCell(sheet, [
      ["B25", "pots in Bed 1, #1", whole],
      ["B26", "ground of one, 9 in by 9 in", asIs, "ft2"],
      ["B27", "crop coefficient on that ground", asIs],
      ["B28", "diameter of the pot top", asIs, "in"],
      ["B29", "capture factor, measured on ten pots", asIs],
      ["B30", "uniformity of the cans", places(2)],
      ["B31", "rate of the cans", places(2), "in/h"],
      ["B32", "sprinklers", asIs],
      ["B33", "flow of one", asIs, "gal/min"],
      ["B34", "net water", places(3), "gal a plant"],
      ["B35", "part of the water that falls on pots", percent],
      ["B36", "gross depth", places(2), "in"],
      ["B37", "minutes", places(0), "min"],
      ["B38", "flow of the bed", places(1), "gal/min"],
    ]),
    "Its pipes stay full behind check valves, so nothing is added for filling.",
    "",
  ];
}

function sequence(sheet: DaySheet): string[] {
  const at = FIRST_ZONE;
  return [
    "## Who runs when",
    "",
    ...block(sheet, FIRST_ZONE, LAST_ZONE, [
      ["A", "zone", asIs],
      ["B", "minutes", places(1)],
      ["C", "flow, gal/min", places(1)],
    ]),
    `Each cell points at the tables above (\`${sheet.cell(`B${at}`).formula}\`, \`${sheet.cell(`C${at}`).formula}\`, \`${sheet.cell(`B${LAST_ZONE}`).formula}\`). One formula spills the whole round:`,
    "",
    ...formulasOf(sheet, [`E${at}`]),
    ...block(sheet, at + 1, END_OF_ROUND, [
      ["E", "zone", asIs],
      ["F", "start", time],
      ["G", "stop", time],
      ["H", "flow, gal/min", places(1)],
      ["I", "note", asIs],
    ]),
    "Yards A and C fit the supply together; B runs alone, one valve after the other; D and Bed 1 fit together again. While the bed runs the yards rest, and what they got can soak in. Times are shown to the minute.",
    "",
  ];
}

function boom(sheet: DaySheet): string[] {
  return [
    "## The boom house",
    "",
    "The boom starts when the round is over and has the supply to itself.",
    "",
    ...cellByCell(sheet, [
      ["B62", "nozzles", asIs],
      ["B63", "flow of one", asIs, "gal/min"],
      ["B64", "flow of the boom", places(1), "gal/min"],
      ["B65", "speed", asIs, "ft/min"],
      ["B66", "width watered", asIs, "ft"],
      ["B67", "depth of one pass", places(4), "in"],
      ["B68", "leaching fraction wanted", places(2)],
    ]),
    ...block(sheet, FIRST_SECTION, LAST_SECTION, [
      ["A", "section", asIs],
      ["B", "ft", asIs],
      ["C", "ft2 a plant", asIs],
      ["D", "Kc", asIs],
      ["E", "cover", asIs],
      ["F", "top, in", asIs],
      ["G", "capture", asIs],
      ["H", "uniformity", asIs],
      ["I", "depth, in", places(3)],
    ]),
    "Plugs get the depth that they have shown to need, and the empty bay 0. For pots the depth follows from their use; then one formula spills the plan:",
    "",
    ...formulasOf(sheet, [`I${FIRST_SECTION + 2}`, `K${FIRST_SECTION}`]),
    ...block(sheet, FIRST_SECTION + 1, BOOM_TOTAL, [
      ["K", "section", asIs],
      ["L", "passes", asIs],
      ["M", "minutes", places(1)],
      ["N", "gal", places(0)],
    ]),
    ...cellByCell(sheet, [
      ["B78", "the boom starts", time],
      ["B79", "the boom is done", time],
    ]),
  ];
}

function closing(sheet: DaySheet): string[] {
  const [first, bedRow] = [FIRST_WATER, WATER_TOTAL - 2];
  const rows = Array.from({ length: WATER_TOTAL - first + 1 }, (_, index) => {
    const at = first + index;
    const hasUse = at <= bedRow;
    return [
      String(at),
      asIs(sheet.value(`A${at}`)),
      hasUse ? whole(sheet.value(`B${at}`)) : "",
      whole(sheet.value(`C${at}`)),
      hasUse ? percent(sheet.value(`D${at}`)) : "",
    ];
  });
  return [
    "## Water of the day",
    "",
    ...table(["", "A: zone", "B: used by the plants, gal", "C: through the meter, gal", "D: part used"], rows),
    ...formulasOf(sheet, [`B${first}`, `C${first}`, `D${first}`, `B${bedRow}`, `C${bedRow}`, `C${WATER_TOTAL}`]),
    `Of the water of Bed 1 ${percent(sheet.value(`D${bedRow}`))} is used. Bare pots catch ${percent(sheet.value("B35"))} of what falls on their ground, and the canopy brings that to ${percent(sheet.number("B35") * sheet.number("B29"))}; unevenness takes ${percent(1 - sheet.number("B30"))} of it, and the aisles are watered too.`,
    "",
    "## Before the clock is set",
    "",
    ...cellByCell(sheet, [
      ["B93", "the flow at once stays within what is counted on", asIs],
      ["B94", "all is done in time", asIs],
      ["B95", "every pulse is 1.5 times its filling or longer", asIs],
      ["B96", "no zone was left out", asIs],
    ]),
    "- One emitter to a pot has no neighbour: walk the lines on the first hot days.",
    "- Weigh a few pots before and after: the weighed pot is the referee of every crop coefficient here.",
    "- Catch the leachate of ten pots in each yard. At a leaching fraction of 0.15 the minutes are right; RUN_MINUTES_FROM_LEACHING says what to change.",
    "- Look at the pressure of the farthest zone while the most flow is drawn.",
    "- Planning figures for people, not for automatic control. Permits, drought orders and local codes come first.",
    "",
  ];
}

export function dayPage(sheet: DaySheet): string {
  return [
    ...beginning(sheet),
    ...weather(sheet),
    ...yards(sheet),
    ...bed(sheet),
    ...sequence(sheet),
    ...boom(sheet),
    ...closing(sheet),
  ].join("\n");
}
