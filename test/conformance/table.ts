/**
 * One table for every host: what goes into a call at the edge where spreadsheets differ, and what must come out.
 * Each host has an adapter that puts these arguments into its own cells and reads its own answer.
 */

/** How a value reaches a call: as a cell that holds it, an empty cell, left out, a block of cells, a cell in error. */
export type Given =
  | { readonly cell: number | string | boolean }
  | { readonly emptyCell: true }
  | { readonly leftOut: true }
  | { readonly block: readonly (readonly (number | string | null)[])[] }
  | { readonly errorCell: "#N/A" | "#DIV/0!" };

/** An error with its text, of a whole call or of one cell of a table. */
export interface ErrorWithText {
  readonly code: "#VALUE!" | "#N/A";
  readonly message: string;
}

export type Expected =
  | { readonly value: number | string }
  | { readonly table: readonly (readonly (number | string | ErrorWithText)[])[] }
  | ErrorWithText
  /** The error that stood in the cell comes back; hosts keep its code. */
  | { readonly passed: "#N/A" | "#DIV/0!" };

export interface Row {
  readonly title: string;
  readonly name: string;
  readonly given: readonly Given[];
  readonly gives: Expected;
}

const cell = (value: number | string | boolean): Given => ({ cell: value });
const empty: Given = { emptyCell: true };
const leftOut: Given = { leftOut: true };
const block = (...rows: (readonly (number | string | null)[])[]): Given => ({ block: rows });

const FLOW_MISSING = "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)";

const BEYOND: ErrorWithText = {
  code: "#VALUE!",
  message: "PULSE_SCHEDULE: these numbers lead beyond what a cell can hold",
};

export const conformance: readonly Row[] = [
  {
    title: "numbers in cells give the answer",
    name: "RUN_MINUTES",
    given: [cell(0.275), cell(6)],
    gives: { value: 2.75 },
  },
  {
    title: "an optional argument left out takes its default",
    name: "RUN_MINUTES",
    given: [cell(1.5), cell(12), leftOut],
    gives: { value: 7.5 },
  },
  {
    title: "a blank where 0 makes no sense is refused by name",
    name: "RUN_MINUTES",
    given: [cell(0.275), empty],
    gives: { code: "#VALUE!", message: FLOW_MISSING },
  },
  {
    title: "0 is refused in the words of a blank",
    name: "RUN_MINUTES",
    given: [cell(0.275), cell(0)],
    gives: { code: "#VALUE!", message: FLOW_MISSING },
  },
  {
    title: "text is refused and shown",
    name: "RUN_MINUTES",
    given: [cell(0.275), cell("six")],
    gives: {
      code: "#VALUE!",
      message: 'RUN_MINUTES: emitter_flow is the text "six"; it must be more than 0 (gal/h or L/h): a number, not text',
    },
  },
  {
    title: "a number stored as text is text",
    name: "RUN_MINUTES",
    given: [cell(0.275), cell("6")],
    gives: {
      code: "#VALUE!",
      message: 'RUN_MINUTES: emitter_flow is the text "6"; it must be more than 0 (gal/h or L/h): a number, not text',
    },
  },
  {
    title: "TRUE is not a number",
    name: "RUN_MINUTES",
    given: [cell(0.275), cell(true)],
    gives: { code: "#VALUE!", message: "RUN_MINUTES: emitter_flow is TRUE; it must be more than 0 (gal/h or L/h)" },
  },
  {
    title: "a block of one cell is that cell",
    name: "RUN_MINUTES",
    given: [block([0.275]), block([6])],
    gives: { value: 2.75 },
  },
  {
    title: "a column where a single value belongs is refused, not spread",
    name: "RUN_MINUTES",
    given: [block([0.275], [0.3], [0.4]), cell(6)],
    gives: {
      code: "#VALUE!",
      message: "RUN_MINUTES: volume_per_plant is a range of 3 x 1 cells; it must be a single value",
    },
  },
  {
    title: "a block where a single value belongs is refused, not spread",
    name: "GROSS_WATER",
    given: [cell(1), block([0.1, 0.2], [0.1, 0.2]), cell(0.9)],
    gives: {
      code: "#VALUE!",
      message: "GROSS_WATER: leaching_fraction is a range of 2 x 2 cells; it must be a single value",
    },
  },
  {
    title: "an error in a cell comes back as it is",
    name: "RUN_MINUTES",
    given: [{ errorCell: "#N/A" }, cell(6)],
    gives: { passed: "#N/A" },
  },
  {
    title: "an error in the second cell comes back too",
    name: "RUN_MINUTES",
    given: [cell(1), { errorCell: "#DIV/0!" }],
    gives: { passed: "#DIV/0!" },
  },
  {
    title: "a question without an answer is #N/A with its reason",
    name: "RUN_MINUTES_FROM_LEACHING",
    given: [cell(20), cell(0), cell(0.15)],
    gives: {
      code: "#N/A",
      message:
        "RUN_MINUTES_FROM_LEACHING: measured is blank or 0; where nothing leached the test cannot tell how far short the time was",
    },
  },
  {
    title: "a blank that has words of its own gets them",
    name: "RUN_MINUTES_FROM_LEACHING",
    given: [cell(20), empty, cell(0.15)],
    gives: {
      code: "#N/A",
      message:
        "RUN_MINUTES_FROM_LEACHING: measured is blank or 0; where nothing leached the test cannot tell how far short the time was",
    },
  },
  {
    title: "words are taken in any case and trimmed",
    name: "GROSS_WATER",
    given: [cell(1), cell(0.2), cell(0.9), cell(" Leaching ")],
    gives: { value: 1.25 },
  },
  {
    title: "an unknown word lists those allowed",
    name: "GROSS_WATER",
    given: [cell(1), cell(0.2), cell(0.9), cell("sum")],
    gives: {
      code: "#VALUE!",
      message: 'GROSS_WATER: basis is the text "sum"; it must be "larger", "leaching", "uniformity" or "both"',
    },
  },
  {
    title: "units left blank are refused with both words",
    name: "PLANT_WATER_DEMAND",
    given: [cell(5), cell(1), cell(0.16), empty],
    gives: { code: "#VALUE!", message: 'PLANT_WATER_DEMAND: units is blank or 0; it must be "us" or "metric"' },
  },
  {
    title: "a percentage typed as a whole number is told what was meant",
    name: "GROSS_WATER",
    given: [cell(1), cell(15), cell(0.9)],
    gives: {
      code: "#VALUE!",
      message: "GROSS_WATER: leaching_fraction is 15; it must be from 0 to less than 1 (fraction); write 0.15 or 15%",
    },
  },
  {
    title: "a range is read row by row, whatever its shape",
    name: "DU_LOW_QUARTER",
    given: [block([80, 100], [100, 120])],
    gives: { value: 0.8 },
  },
  {
    title: "a blank reading is refused with its place",
    name: "DU_LOW_QUARTER",
    given: [block([80, 100], [null, 120], [100, 100])],
    gives: {
      code: "#VALUE!",
      message:
        "DU_LOW_QUARTER: readings is blank or 0 in row 2, column 1 of the range; it must be more than 0 (same unit)",
    },
  },
  {
    title: "blank readings can be left out",
    name: "DU_LOW_QUARTER",
    given: [block([80, 100], [null, 120], [100, 100]), cell("skip")],
    gives: { value: 0.9 },
  },
  {
    title: "a table spills with its header, numbers and texts",
    name: "PULSE_SCHEDULE",
    given: [cell(30), cell(2), cell(60), cell(0.5)],
    gives: {
      table: [
        ["pulse", "start", "stop", "minutes"],
        [1, 0.5, 0.5 + 15 / 1440, 15],
        [2, 0.5 + 75 / 1440, 0.5 + 90 / 1440, 15],
      ],
    },
  },
  {
    title: "a faulty row carries its reason, an incomplete one is empty, the rest is worked",
    name: "ET0_TABLE",
    given: [block([42200, 10, 20], [42200, null, 14.8], [42200, 20, 20]), cell(45.72), cell(0), cell("metric")],
    gives: { table: [["tmin is 20; it must be tmax (10) or less"], [""], [0]] },
  },
  {
    title: "a row of a plan whose cell is empty says so, and the others run",
    name: "ZONE_SEQUENCE",
    given: [block(["A"], ["B"]), block([20], [null]), block([30], [25]), cell(60), cell(0.25)],
    gives: {
      table: [
        ["zone", "start", "stop", "flow", "note"],
        ["A", 0.25, 0.25 + 20 / 1440, 30, ""],
        ["B", "", "", "", "left out: minutes is blank or 0; it must be more than 0 (min)"],
        ["end of round", 0.25, 0.25 + 20 / 1440, 30, "1 left out"],
      ],
    },
  },
  {
    title: "a row of a plan with nothing in it is no row",
    name: "BOOM_PLAN",
    given: [
      block(["pots"], [null]),
      block([4], [null]),
      block([30], [null]),
      cell(40),
      cell(10),
      cell(8),
      cell("metric"),
    ],
    gives: {
      table: [
        ["section", "passes", "minutes", "volume"],
        ["pots", 8, 24, 960],
        ["total", 8, 24, 960],
      ],
    },
  },
  {
    title: "a cell of a table that cannot hold its number is an error of its own",
    name: "PULSE_SCHEDULE",
    given: [cell(1.7e308), cell(1), cell(0), cell(0.5), cell(1.7e308)],
    gives: {
      table: [
        ["pulse", "start", "stop", "minutes"],
        [1, BEYOND, BEYOND, BEYOND],
      ],
    },
  },
  {
    title: "one number stands where a series may",
    name: "PAYBACK_YEARS",
    given: [cell(12000), cell(3000)],
    gives: { value: 4 },
  },
  {
    title: "a series of years is read as a range",
    name: "PAYBACK_YEARS",
    given: [cell(10000), block([3000], [4000], [5000])],
    gives: { value: 2.6 },
  },
];
