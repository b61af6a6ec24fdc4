/** What Google Sheets sends to the script, and what it can show of an answer. */
import { call } from "../../src/functions";
import { openGoogleSheet } from "../rig/googleSheets";

const sheet = openGoogleSheet();
const FLOW_MISSING = "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)";

describe("what that host sends", () => {
  test("an empty cell, an argument left out and a null are all blank", () => {
    for (const blank of ["", undefined, null]) {
      expect(sheet.errorOf("CANYARD_RUN_MINUTES", 0.275, blank)).toBe(FLOW_MISSING);
      expect(sheet.valueOf("CANYARD_RUN_MINUTES", 1.5, 12, blank)).toBe(7.5);
    }
    expect(sheet.valueOf("CANYARD_RUN_MINUTES", 1.5, 12)).toBe(7.5);
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", 0.275)).toBe(FLOW_MISSING);
  });

  test("an empty cell of a range is blank, not 0 and not text", () => {
    const readings = [
      [80, 100],
      ["", 120],
      [100, 100],
    ];
    expect(sheet.errorOf("CANYARD_DU_LOW_QUARTER", readings)).toBe(
      "DU_LOW_QUARTER: readings is blank or 0 in row 2, column 1 of the range; it must be more than 0 (same unit)",
    );
    // The lowest quarter of five is two readings, 80 and 100: 90 of a mean of 100.
    expect(sheet.valueOf("CANYARD_DU_LOW_QUARTER", readings, "skip")).toBe(0.9);
  });

  test("a range of one cell arrives as its value and is a range all the same", () => {
    expect(sheet.valueOf("CANYARD_PAYBACK_YEARS", 12000, 3000)).toBe(4);
    expect(sheet.valueOf("CANYARD_BOOM_PLAN", "pots", 4, 30, 40, 10, 8, "metric")).toEqual([
      ["section", "passes", "minutes", "volume"],
      ["pots", 8, 24, 960],
      ["total", 8, 24, 960],
    ]);
  });

  test("a range where one value belongs is refused with its size", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", [[0.275], [0.3], [0.4]], 6)).toBe(
      "RUN_MINUTES: volume_per_plant is a range of 3 x 1 cells; it must be a single value",
    );
  });

  test("a tick box is TRUE or FALSE: 99 metered before the injector and 1 of stock are 100 behind it", () => {
    expect(sheet.valueOf("CANYARD_INJECTOR_RATIO", 99, 1, true)).toBe(99);
    expect(sheet.valueOf("CANYARD_INJECTOR_RATIO", 99, 1, false)).toBe(100);
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", 0.275, true)).toBe(
      "RUN_MINUTES: emitter_flow is TRUE; it must be more than 0 (gal/h or L/h)",
    );
  });

  test("a picture in a cell is text that is refused, not a blank", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", 0.275, { toString: () => "CellImage" })).toBe(
      'RUN_MINUTES: emitter_flow is the text "CellImage"; it must be more than 0 (gal/h or L/h): a number, not text',
    );
  });

  test.each(["#N/A", "#VALUE!", "#DIV/0!", "#NUM!", "#REF!", "#NAME?", "#NULL!", "#ERROR!"])(
    "the error %s of a cell or of a range is passed on by its name",
    (code) => {
      const told = `a cell that it was given holds the error ${code}`;
      expect(sheet.errorOf("CANYARD_RUN_MINUTES", code, 6)).toBe(`RUN_MINUTES: ${told}`);
      expect(sheet.errorOf("CANYARD_DU_LOW_QUARTER", [[80], [code]])).toBe(`DU_LOW_QUARTER: ${told}`);
    },
  );

  test("a text that only begins like an error is a text", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", "#N/A yet", 6)).toContain('is the text "#N/A yet"');
  });

  test("a cell that still waits for its own answer is said to", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", "Loading...", 6)).toBe(
      "RUN_MINUTES: a cell that it was given is still being worked out",
    );
  });

  test("too many arguments are counted", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", 0.275, 6, 1, 1)).toBe(
      "RUN_MINUTES: 4 arguments were given; it takes 3",
    );
    expect(sheet.errorOf("CANYARD_LIBRARY_VERSION", 1)).toBe("LIBRARY_VERSION: 1 arguments were given; it takes 0");
  });

  test("further arguments of a teaching function may be cells and ranges, as many as it needs", () => {
    const readings = [[80], [100], [120], [100]];
    expect(sheet.valueOf("CANYARD_SHOW_WORKING", "DU_LOW_QUARTER", readings)).toEqual(
      call("SHOW_WORKING", ["DU_LOW_QUARTER", readings]),
    );
  });

  test.each(["RUN_MINUTES", "CANYARD.RUN_MINUTES", "CANYARD_RUN_MINUTES", " canyard_run_minutes "])(
    "a function is named as %s",
    (name) => {
      expect(sheet.valueOf("CANYARD_SHOW_WORKING", name, 0.275, 6)).toEqual(
        call("SHOW_WORKING", ["RUN_MINUTES", 0.275, 6]),
      );
      expect(sheet.valueOf("CANYARD_FUNCTION_SOURCE", name)).toBe(call("FUNCTION_SOURCE", ["RUN_MINUTES"]));
    },
  );
});

const HEADER = ["pulse", "start", "stop", "minutes"];

describe("what that host can show", () => {
  test("an error is thrown with our words, and with nothing else", () => {
    const words = { message: FLOW_MISSING, name: "Error" };
    expect(() => sheet.context["CANYARD_RUN_MINUTES"](0.275, 0)).toThrow(expect.objectContaining(words));
  });

  test("a question without an answer says why", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES_FROM_LEACHING", 20, 0, 0.15)).toBe(
      "RUN_MINUTES_FROM_LEACHING: measured is blank or 0; where nothing leached the test cannot tell how far short the time was",
    );
  });

  const BEYOND = "#VALUE!: PULSE_SCHEDULE: these numbers lead beyond what a cell can hold";

  test("an error in one cell of a table is text with its code before it", () => {
    expect(sheet.valueOf("CANYARD_PULSE_SCHEDULE", 1.7e308, 1, 0, 0.5, 1.7e308)).toEqual([
      HEADER,
      [1, BEYOND, BEYOND, BEYOND],
    ]);
  });

  test("such a text, given to the next function, is the error that it stands for", () => {
    expect(sheet.errorOf("CANYARD_RUN_MINUTES", BEYOND, 6)).toBe(
      `RUN_MINUTES: a cell that it was given holds the error ${BEYOND}`,
    );
  });

  test("times are parts of a day: 30 minutes in 2 pulses from 12:00 with an hour of rest", () => {
    expect(sheet.valueOf("CANYARD_PULSE_SCHEDULE", 30, 2, 60, sheet.date(1899, 12, 30, 12))).toEqual([
      HEADER,
      [1, 0.5, 0.5 + 15 / 1440, 15],
      [2, 0.5 + 75 / 1440, 0.5 + 90 / 1440, 15],
    ]);
  });
});
