/**
 * The opening workbook, worked by hand on paper first (arithmetic written out; all inputs invented).
 *
 * Wednesday 8 July, latitude 38, 93 F and 69 F:
 *   J = 189, dr = 1 + 0.033 cos(3.2535) = 0.96721, declination = 0.409 sin(1.8635) = 0.39160
 *   ws = acos(-0.78129 x 0.41317) = 1.89949, Ra = 37.586 x 0.96721 x (1.89949 x 0.23498 + 0.72836 x 0.94646) = 41.29
 *   mean 81 F = 27.222 C, range 24 F = 13.333 C, root 3.6515
 *   ET0 = 0.0023 x 45.022 x 3.6515 x 0.408 x 41.29 = 6.37 mm = 0.2508 in
 * Pot: pi x 10.5 / 12 x (196 + 168 + 144) = 1396.4 in3 = 6.045 gal; half of it is water, 3.02 gal
 * Plant: 0.2508 x 1.1 x 3.5 x 144 / 231 = 0.6018 gal, 19.9 % of the water held
 * Emitters: lowest four 55 + 58 + 59 + 60 = 232 mL, mean 58; all sixteen 1008 mL, mean 63; DU = 58 / 63 = 0.9206
 *   flow = 63 mL/min = 63 x 60 / 3785.41 = 0.99857 gal/h
 * Gross: 1 - 0.15 is smaller than 0.9206: 0.6018 / 0.85 = 0.7080 gal
 * Minutes: 60 x 0.7080 / (2 x 0.99857) = 21.27; three pulses of 7.09 + 1 minute to fill
 *   6:00 to 6:08, 7:08 to 7:16, 8:16 to 8:24
 * Money: 620 + 480 + 1560 + 640 - 996 = 2304 a year; 7680 / 2304 = 3.333 years;
 *   with 8 %: -ln(1 - 0.08 x 3.3333) / ln 1.08 = 0.310155 / 0.076961 = 4.030 years
 */
import * as functions from "../../src/functions";
import { isFormula } from "../../src/workbooks/model";
import { ternHollow } from "../../src/workbooks/ternHollow";
import { createHeadlessSheet, type HeadlessSheet } from "../rig/sheetEngine";

const MINUTES_PER_DAY = 1440;

let sheet: HeadlessSheet;
beforeEach(() => {
  sheet = createHeadlessSheet(functions).open(ternHollow);
});

const number = (address: string): number => sheet.value(address) as number;

describe("the day at Tern Hollow agrees with the day worked on paper", () => {
  test.each([
    ["volume of the pot, gal", "Plan!D10", 6.045, 0.001],
    ["water held, gal", "Plan!D12", 3.0226, 0.0001],
    ["highest reference ET, in/day", "Plan!D15", 0.2508, 0.0001],
    ["net water for one plant, gal", "Plan!D18", 0.6018, 0.0002],
    ["part of the water held", "Plan!D19", 0.199, 0.0005],
    ["uniformity of the emitters", "Plan!D22", 58 / 63, 1e-12],
    ["gross water for one plant, gal", "Plan!D24", 0.708, 0.0003],
    ["measured flow, gal/h", "Plan!D25", 0.99857, 0.00001],
    ["minutes for the day", "Plan!D27", 21.27, 0.01],
    ["saving a year", "Plan!D40", 2304, 1e-9],
    ["simple payback, years", "Plan!D42", 10 / 3, 1e-12],
    ["payback with interest, years", "Plan!D43", 4.03, 0.0001],
  ])("%s", (_what, address, byHand, within) => {
    expect(Math.abs(number(address) - byHand)).toBeLessThanOrEqual(within);
  });

  test.each([
    [6, 6 * 60, 6 * 60 + 8],
    [7, 7 * 60 + 8, 7 * 60 + 16],
    [8, 8 * 60 + 16, 8 * 60 + 24],
  ])("the pulse in row %d starts and stops at its minute", (row, start, stop) => {
    expect(Math.floor(number(`Pulses!B${row}`) * MINUTES_PER_DAY + 1e-6)).toBe(start);
    expect(Math.floor(number(`Pulses!C${row}`) * MINUTES_PER_DAY + 1e-6)).toBe(stop);
  });

  test("the pulses together are the minutes of the day and three fillings of the line", () => {
    const pulses = number("Pulses!D6") + number("Pulses!D7") + number("Pulses!D8");
    expect(pulses).toBeCloseTo(number("Plan!D27") + 3, 9);
    expect(sheet.value("Pulses!A9")).toBeNull();
  });

  test("no cell is in error and every check is OK", () => {
    const addresses = ternHollow.sheets.flatMap(({ name, cells }) =>
      Object.keys(cells).map((address) => (name.includes(" ") ? `'${name}'!${address}` : `${name}!${address}`)),
    );
    const faulty = addresses.filter((address) => sheet.message(address) !== null);
    expect(faulty).toEqual([]);
    expect(sheet.value("Plan!A3")).toBe("All checks OK");
    expect(sheet.value("Plan!B3")).toBe("Run 21.3 minutes in 3 pulses from 06:00; the table is on the sheet Pulses");
  });
});

describe("what goes wrong is seen on top", () => {
  test("a day without a reading leaves its ET empty and is counted", () => {
    sheet.set("Weather!B9", "");
    expect(sheet.value("Weather!D9")).toBe("");
    expect(sheet.value("Plan!D46")).toBe("LOOK");
    expect(sheet.value("Plan!A3")).toBe("See the checks below");
  });

  test("a missing catch is refused by its place, and what hangs on it says the same", () => {
    sheet.set("'Catch test'!B7", "");
    expect(sheet.message("Plan!D22")).toBe(
      "DU_LOW_QUARTER: readings is blank or 0 in row 2, column 2 of the range; it must be more than 0 (same unit)",
    );
    expect(sheet.message("Plan!D27")).toBe(sheet.message("Plan!D22"));
    expect(sheet.value("Plan!A3")).toBe("See the checks below");
  });
});

describe("the workbook is built as the rules ask", () => {
  test("every formula of ours is written as a sheet writes it", () => {
    const formulas = ternHollow.sheets.flatMap(({ cells }) =>
      Object.values(cells).flatMap((cell) =>
        isFormula(cell) && cell.formula.includes("CANYARD") ? [cell.formula] : [],
      ),
    );
    expect(formulas.length).toBeGreaterThanOrEqual(10);
    for (const formula of formulas) expect(formula).toMatch(/^=CANYARD\.[A-Z0-9_]+\(.+\)$/);
  });

  test("every input is marked by a word or stands under a heading, not by colour alone", () => {
    const plan = ternHollow.sheets.find(({ name }) => name === "Plan");
    const inputs = Object.entries(plan?.cells ?? {}).filter(([, { style }]) => style === "input");
    expect(inputs.length).toBeGreaterThan(10);
    for (const [address] of inputs) {
      expect(plan?.cells[address.replace("D", "C")]).toMatchObject({ value: "input" });
    }
  });
});
