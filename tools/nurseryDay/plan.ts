/** One summer day at the invented nursery Tern Hollow, cell by cell. All figures are invented; the tests work it by hand. */
import { DaySheet, type Piece, type Value } from "./sheet";

/** Wednesday, 8 July 2026, as a serial number. */
const DATE = 46_211;
const MINUTES_PER_DAY = 1440;

/** Pots with emitters of their own, in the order in which they may run. */
const YARDS: readonly (readonly Value[])[] = [
  // zone, pot, plants, ft2 a plant, Kc, DU, emitters, gal/h, ft of pipe a valve, bore in in
  ["Yard A", "#5", 1000, 2.25, 1.1, 0.9, 1, 2, 1500, 0.62],
  ["Yard C", "#10", 500, 6.25, 1.2, 0.82, 3, 1, 900, 0.82],
  ["Yard B", "#7", 2400, 3.5, 1.1, 0.88, 2, 1, 1800, 0.62],
  ["Yard D", "#15", 300, 9, 1.2, 0.85, 4, 1, 700, 0.82],
];

/** Sections of the boom house: name, ft, and ft2 a plant, Kc, cover, in of the top, capture, DU where pots stand. */
const SECTIONS: readonly (readonly Value[])[] = [
  ["Plugs", 40],
  ["Empty", 30],
  ["4 in pots", 40, 0.1406, 1, 0.7, 4, 1.1, 0.9],
  ["#1 pots", 40, 0.4444, 1, 0.7, 6.5, 1.1, 0.9],
];
const TYPED_DEPTHS: Readonly<Record<string, number>> = { Plugs: 0.06, Empty: 0 };

export const FIRST_YARD = 18;
export const LAST_YARD = FIRST_YARD + YARDS.length - 1;
export const FIRST_ZONE = 42;
export const LAST_ZONE = FIRST_ZONE + YARDS.length;
export const FIRST_SECTION = 71;
export const LAST_SECTION = FIRST_SECTION + SECTIONS.length - 1;
export const CYCLES = 3;
/** The last row of the sequence, under its header and a row for each zone and cycle. */
export const END_OF_ROUND = FIRST_ZONE + 1 + (YARDS.length + 1) * CYCLES;
export const BOOM_TOTAL = FIRST_SECTION + SECTIONS.length + 1;
export const FIRST_WATER = 83;
export const WATER_TOTAL = FIRST_WATER + YARDS.length + 2;

const COLUMNS = "ABCDEFGHIJ";

function row(sheet: DaySheet, number: number, values: readonly Value[]): void {
  values.forEach((value, column) => sheet.input(`${COLUMNS[column]}${number}`, value));
}

/** A formula of the spreadsheet's own functions; the tests have an independent engine work its text. */
function native(text: string, value: Value): Piece {
  return { text, value };
}

function theDay(sheet: DaySheet): void {
  sheet.input("B2", "us");
  sheet.put("B3", native("DATE(2026, 7, 8)", DATE));
  sheet.input("B4", 93);
  sheet.input("B5", 69);
  sheet.input("B6", 38);
  sheet.put("B7", sheet.canyard("ET0_HARGREAVES", "B4", "B5", "B6", "B3", "B2"));
  sheet.input("B8", 0.15);
  sheet.input("B9", 68);
  sheet.put("B10", native("0.9 * B9", 0.9 * sheet.number("B9")));
  sheet.put("B11", native("TIME(5, 30, 0)", 5.5 / 24));
  sheet.input("B12", 2);
  sheet.input("B13", CYCLES);
  sheet.put("B14", native("TIME(10, 0, 0)", 10 / 24));
}

function yard(sheet: DaySheet, at: number): void {
  const number = (column: string): number => sheet.number(`${column}${at}`);
  sheet.put(`K${at}`, sheet.canyard("PLANT_WATER_DEMAND", "B$7", `E${at}`, `D${at}`, "B$2"));
  sheet.put(`L${at}`, sheet.canyard("GROSS_WATER", `K${at}`, "B$8", `F${at}`));
  sheet.put(`M${at}`, sheet.canyard("RUN_MINUTES", `L${at}`, `H${at}`, `G${at}`));
  sheet.put(`N${at}`, sheet.canyard("ZONE_FLOW", `C${at}`, `G${at}`, `H${at}`));
  sheet.put(`O${at}`, sheet.canyard("ZONES_AT_ONCE", "B$10", `N${at}`));
  const valves = Math.ceil(number("N") / sheet.number("B10"));
  sheet.put(`P${at}`, native(`ROUNDUP(N${at} / B$10, 0)`, valves));
  const valveFlow = native(`N${at} / P${at}`, number("N") / valves);
  sheet.put(`Q${at}`, sheet.canyard("LINE_FILL_MINUTES", `I${at}`, `J${at}`, valveFlow, "B$2"));
  sheet.put(`R${at}`, native(`M${at} + B$13 * Q${at}`, number("M") + CYCLES * number("Q")));
  sheet.put(
    `S${at}`,
    sheet.canyard("RUN_MINUTES_FROM_ET", "B$7", `E${at}`, `D${at}`, "B$8", `F${at}`, `H${at}`, `G${at}`, "B$2"),
  );
}

function sprinklerBed(sheet: DaySheet): void {
  [12_000, 0.5625, 1.1, 6.5, 1.2, 0.75, 0.4, 12, 2.8].forEach((value, index) => sheet.input(`B${25 + index}`, value));
  sheet.put("B34", sheet.canyard("PLANT_WATER_DEMAND", "B7", "B27", "B26", "B2"));
  sheet.put("B35", sheet.canyard("INTERCEPTION_FRACTION", "B28", "B26", "B2"));
  sheet.put("B36", sheet.canyard("OVERHEAD_DEPTH", "B34", "B28", "B29", "B8", "B30", "B2"));
  sheet.put("B37", sheet.canyard("OVERHEAD_RUN_MINUTES", "B36", "B31"));
  sheet.put("B38", native("B32 * B33", sheet.number("B32") * sheet.number("B33")));
}

function sequence(sheet: DaySheet): void {
  for (let at = FIRST_ZONE; at < LAST_ZONE; at += 1) {
    const from = FIRST_YARD + at - FIRST_ZONE;
    for (const [to, column] of [
      ["A", "A"],
      ["B", "R"],
      ["C", "N"],
    ]) {
      sheet.put(`${to}${at}`, sheet.at(`${column}${from}`));
    }
  }
  sheet.input(`A${LAST_ZONE}`, "Bed 1");
  sheet.put(`B${LAST_ZONE}`, sheet.at("B37"));
  sheet.put(`C${LAST_ZONE}`, sheet.at("B38"));
  const column = (letter: string): Piece => sheet.range(`${letter}${FIRST_ZONE}:${letter}${LAST_ZONE}`);
  sheet.put(
    `E${FIRST_ZONE}`,
    sheet.canyard("ZONE_SEQUENCE", column("A"), column("B"), column("C"), "B10", "B11", "B12", "B13"),
  );
}

function boomHouse(sheet: DaySheet): void {
  sheet.input("B62", 24);
  sheet.input("B63", 0.8);
  sheet.put("B64", native("B62 * B63", sheet.number("B62") * sheet.number("B63")));
  sheet.input("B65", 25);
  sheet.input("B66", 30);
  sheet.put("B67", sheet.canyard("BOOM_DEPTH", "B64", "B65", "B66", "B2"));
  sheet.input("B68", 0.1);
  SECTIONS.forEach((section, index) => {
    const at = FIRST_SECTION + index;
    row(sheet, at, section);
    const typed = TYPED_DEPTHS[String(section[0])];
    if (typed !== undefined) return sheet.input(`I${at}`, typed);
    const net = sheet.canyard("PLANT_WATER_DEMAND", "B$7", `D${at}`, `C${at}`, "B$2", `E${at}`);
    sheet.put(`I${at}`, sheet.canyard("OVERHEAD_DEPTH", net, `F${at}`, `G${at}`, "B$68", `H${at}`, "B$2"));
  });
  const column = (letter: string): Piece => sheet.range(`${letter}${FIRST_SECTION}:${letter}${LAST_SECTION}`);
  sheet.put(
    `K${FIRST_SECTION}`,
    sheet.canyard("BOOM_PLAN", column("A"), column("I"), column("B"), "B64", "B65", "B66", "B2"),
  );
  const start = sheet.number(`G${END_OF_ROUND}`) + sheet.number("B12") / MINUTES_PER_DAY;
  sheet.put("B78", native(`G${END_OF_ROUND} + B12 / ${MINUTES_PER_DAY}`, start));
  const stop = start + sheet.number(`M${BOOM_TOTAL}`) / MINUTES_PER_DAY;
  sheet.put("B79", native(`B78 + M${BOOM_TOTAL} / ${MINUTES_PER_DAY}`, stop));
}

/** Water of the day: what the plants use, what goes through the meter. */
function waterOfTheDay(sheet: DaySheet): void {
  const used = (at: number, text: string, value: number): void => sheet.put(`B${at}`, native(text, value));
  const metered = (at: number, text: string, value: number): void => sheet.put(`C${at}`, native(text, value));
  for (let index = 0; index < YARDS.length; index += 1) {
    const [at, from] = [FIRST_WATER + index, FIRST_YARD + index];
    sheet.put(`A${at}`, sheet.at(`A${from}`));
    used(at, `C${from} * K${from}`, sheet.number(`C${from}`) * sheet.number(`K${from}`));
    metered(at, `N${from} * R${from}`, sheet.number(`N${from}`) * sheet.number(`R${from}`));
  }
  const bed = FIRST_WATER + YARDS.length;
  sheet.input(`A${bed}`, "Bed 1");
  used(bed, "B25 * B34", sheet.number("B25") * sheet.number("B34"));
  metered(bed, "B38 * B37", sheet.number("B38") * sheet.number("B37"));
  for (let at = FIRST_WATER; at <= bed; at += 1) {
    sheet.put(`D${at}`, native(`B${at} / C${at}`, sheet.number(`B${at}`) / sheet.number(`C${at}`)));
  }
  sheet.input(`A${bed + 1}`, "Boom house");
  sheet.put(`C${bed + 1}`, sheet.at(`N${BOOM_TOTAL}`));
  const total = Array.from({ length: bed + 2 - FIRST_WATER }, (_, index) => sheet.number(`C${FIRST_WATER + index}`));
  sheet.input(`A${WATER_TOTAL}`, "Together");
  metered(
    WATER_TOTAL,
    `SUM(C${FIRST_WATER}:C${bed + 1})`,
    total.reduce((sum, gallons) => sum + gallons, 0),
  );
}

function checks(sheet: DaySheet): void {
  const check = (at: number, test: string, holds: boolean): void =>
    sheet.put(`B${at}`, native(`IF(${test}, "OK", "LOOK")`, holds ? "OK" : "LOOK"));
  check(93, `H${END_OF_ROUND} <= B10`, sheet.number(`H${END_OF_ROUND}`) <= sheet.number("B10"));
  check(94, "B79 <= B14", sheet.number("B79") <= sheet.number("B14"));
  const yards = YARDS.map((_, index) => FIRST_YARD + index);
  const long = yards.every((at) => sheet.number(`R${at}`) / CYCLES >= 1.5 * sheet.number(`Q${at}`));
  check(95, `AND(${yards.map((at) => `R${at} / B13 >= 1.5 * Q${at}`).join(", ")})`, long);
  check(96, `I${END_OF_ROUND} = ""`, sheet.value(`I${END_OF_ROUND}`) === "");
}

export function planDay(): DaySheet {
  const sheet = new DaySheet();
  theDay(sheet);
  YARDS.forEach((values, index) => {
    row(sheet, FIRST_YARD + index, values);
    yard(sheet, FIRST_YARD + index);
  });
  sprinklerBed(sheet);
  sequence(sheet);
  boomHouse(sheet);
  waterOfTheDay(sheet);
  checks(sheet);
  return sheet;
}

/** One stretch of time in which something runs, in minutes of the day. */
export interface Stretch {
  readonly name: string;
  readonly start: number;
  readonly stop: number;
  readonly flow: number;
  /** The cycle of the round; 0 for the boom, which comes after it. */
  readonly cycle: number;
}

/** The round, valve by valve. */
function roundStretches(sheet: DaySheet): Stretch[] {
  const zones = LAST_ZONE - FIRST_ZONE + 1;
  const gap = sheet.number("B12");
  return Array.from({ length: zones * CYCLES }, (_, index) => {
    const at = FIRST_ZONE + 1 + index;
    const [name, flow] = [String(sheet.value(`E${at}`)), sheet.number(`H${at}`)];
    const valves = Math.round(sheet.number(`C${FIRST_ZONE + (index % zones)}`) / flow);
    const start = sheet.number(`F${at}`) * MINUTES_PER_DAY;
    const stop = sheet.number(`G${at}`) * MINUTES_PER_DAY;
    const each = (stop - start - (valves - 1) * gap) / valves;
    return Array.from({ length: valves }, (_valve, turn) => {
      const opens = start + turn * (each + gap);
      return { name, start: opens, stop: opens + each, flow, cycle: Math.floor(index / zones) + 1 };
    });
  }).flat();
}

/** The boom, section by section; what it crosses dry draws nothing. */
function boomStretches(sheet: DaySheet): Stretch[] {
  let start = sheet.number("B78") * MINUTES_PER_DAY;
  const stretches: Stretch[] = [];
  for (let at = FIRST_SECTION + 1; at < BOOM_TOTAL; at += 1) {
    const stop = start + sheet.number(`M${at}`);
    if (sheet.number(`L${at}`) > 0) {
      stretches.push({ name: "Boom house", start, stop, flow: sheet.number("B64"), cycle: 0 });
    }
    start = stop;
  }
  return stretches;
}

/** What draws water when. */
export function stretchesOf(sheet: DaySheet): readonly Stretch[] {
  return [...roundStretches(sheet), ...boomStretches(sheet)];
}
