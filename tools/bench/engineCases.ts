/** What the spreadsheet engine is asked to do: a function of ours in each row, or the built-in cells a grower writes. */
import type { CellContent } from "../../src/sheet/adapter";
import { plainIn } from "./enginePlain";

export const FIRST_ROW = 5;

type Cells = Record<string, CellContent>;
/** The formulas of one row, from the column on where the inputs end; the answer is the last. */
type RowFormulas = (row: number) => readonly string[];

export interface EngineCase {
  readonly what: string;
  /** The sheet's own inputs, above the rows. */
  readonly shared: Cells;
  /** The inputs of a row, from column A on. */
  readonly inputs: (row: number) => readonly number[];
  readonly ours: RowFormulas;
  /** A chain with a column for every step, as the working of the function shows them. */
  readonly chain: RowFormulas;
  /** With as few cells as there are functions of ours: everything in one long formula. */
  readonly long: RowFormulas;
  /** What is changed so that every row is worked anew: one shared cell, or the first input of all rows. */
  readonly change: { readonly cell: string; readonly values: readonly [number, number] } | "first input of all rows";
}

/** From `low` in equal steps up to about `low + span`, round and round, so that neighbours differ. */
function varied(row: number, low: number, span: number, stride: number): number {
  return low + (((row * stride) % 1000) / 1000) * span;
}

const JANUARY_2026 = 46_023;

const hargreaves: EngineCase = {
  what: "Reference ET (Hargreaves)",
  shared: { A1: "Latitude", B1: 38, A2: "Units", B2: "us" },
  inputs: (row) => [JANUARY_2026 + (row % 365), varied(row, 70, 30, 37), varied(row, 48, 20, 61)],
  ours: (row) => [`=CANYARD.ET0_HARGREAVES(B${row},C${row},$B$1,A${row},$B$2)`],
  chain: (row) => [
    `=((B${row}+C${row})/2-32)/1.8`,
    `=(B${row}-C${row})/1.8`,
    `=A${row}-DATE(YEAR(A${row}),1,0)`,
    `=1+0.033*COS(2*PI()*F${row}/365)`,
    `=0.409*SIN(2*PI()*F${row}/365-1.39)`,
    `=ACOS(MAX(-1,MIN(1,-TAN($B$1*PI()/180)*TAN(H${row}))))`,
    `=24*60/PI()*0.082*G${row}*(I${row}*SIN($B$1*PI()/180)*SIN(H${row})+COS($B$1*PI()/180)*COS(H${row})*SIN(I${row}))`,
    `=MAX(0,0.0023*(D${row}+17.8)*SQRT(E${row})*0.408*J${row})`,
    `=K${row}/25.4`,
  ],
  long: (row) => [
    plainIn(
      "ET0_HARGREAVES",
      { tmax: 90, tmin: 60, latitude: 38, date: JANUARY_2026, units: "us" },
      { tmax: `B${row}`, tmin: `C${row}`, latitude: "$B$1", date: `A${row}` },
    ),
  ],
  change: { cell: "B1", values: [41, 38] },
};

const LOSSES: Cells = { A1: "Leaching fraction", B1: 0.15, A2: "Reference ET", B2: 0.28, A3: "Units", B3: "us" };
const LOSS_CHANGE = { cell: "B1", values: [0.2, 0.15] } as const;

const minutesOfTheDay: EngineCase = {
  what: "Minutes of the day, from ET over gross water, in one function",
  shared: LOSSES,
  // Crop coefficient, area per plant, uniformity, flow of an emitter, emitters.
  inputs: (row) => [
    varied(row, 0.6, 0.6, 37),
    varied(row, 1, 4, 61),
    varied(row, 0.7, 0.25, 83),
    varied(row, 0.5, 1, 29),
    1 + (row % 3),
  ],
  ours: (row) => [`=CANYARD.RUN_MINUTES_FROM_ET($B$2,A${row},B${row},$B$1,C${row},D${row},E${row},$B$3)`],
  chain: (row) => [
    `=$B$2*A${row}*B${row}*144/231`,
    `=MIN(1-$B$1,C${row})`,
    `=F${row}/G${row}`,
    `=D${row}*E${row}`,
    `=60*H${row}/I${row}`,
  ],
  long: (row) => [`=60*$B$2*A${row}*B${row}*144/231/MIN(1-$B$1,C${row})/(D${row}*E${row})`],
  change: LOSS_CHANGE,
};

const grossThenMinutes: EngineCase = {
  what: "Gross water, then minutes, in two functions",
  shared: LOSSES,
  // Net water, uniformity, flow of an emitter, emitters.
  inputs: (row) => [varied(row, 0.2, 0.6, 37), varied(row, 0.7, 0.25, 83), varied(row, 0.5, 1, 29), 1 + (row % 3)],
  ours: (row) => [`=CANYARD.GROSS_WATER(A${row},$B$1,B${row})`, `=CANYARD.RUN_MINUTES(E${row},C${row},D${row})`],
  chain: (row) => [`=MIN(1-$B$1,B${row})`, `=A${row}/E${row}`, `=C${row}*D${row}`, `=60*F${row}/G${row}`],
  long: (row) => [`=A${row}/MIN(1-$B$1,B${row})`, `=60*E${row}/(C${row}*D${row})`],
  change: LOSS_CHANGE,
};

const uniformity: EngineCase = {
  what: "Uniformity of eight readings in each row",
  shared: {},
  inputs: (row) => [1, 2, 3, 4, 5, 6, 7, 8].map((place) => 40 + ((row * 31 + place * place * 17) % 53)),
  ours: (row) => [`=CANYARD.DU_LOW_QUARTER(A${row}:H${row})`],
  chain: (row) => [
    `=COUNT(A${row}:H${row})`,
    `=ROUNDUP(I${row}/4,0)`,
    `=SMALL(A${row}:H${row},J${row})`,
    `=(SUMIF(A${row}:H${row},"<"&K${row})+(J${row}-COUNTIF(A${row}:H${row},"<"&K${row}))*K${row})/J${row}`,
    `=AVERAGE(A${row}:H${row})`,
    `=L${row}/M${row}`,
  ],
  long: (row) => [`=(SMALL(A${row}:H${row},1)+SMALL(A${row}:H${row},2))/2/AVERAGE(A${row}:H${row})`],
  change: "first input of all rows",
};

export const ROW_CASES: readonly EngineCase[] = [hargreaves, minutesOfTheDay, grossThenMinutes, uniformity];
