/**
 * The draw of EXERCISE_NUMBER worked in spreadsheets: FNV-1a and the finisher of MurmurHash3 in sums, remainders and BITXOR
 * of small numbers. The sheets are first held against test vectors that others published, then the function against them.
 */
import { answerOf } from "../../rig/calls";
import { against } from "../../rig/evidence";
import { columnName, ENGINES, wholeAt, type PlainCell } from "../../rig/plainSheet";

const WORDS = 4_294_967_296;
const ATTEMPTS = 8;

/** Formulas of one row that are written from left to right. */
class Row {
  readonly cells: PlainCell[] = [];

  constructor(private readonly row: number) {}

  put(cell: PlainCell): string {
    this.cells.push(cell);
    return `${columnName(this.cells.length - 1)}${this.row}`;
  }
}

/** FNV-1a: the byte into the lowest eight bits, then times 2^24 + 403. */
function hashed(row: Row, bytes: Iterable<number>): string {
  let hash = row.put(0x811c9dc5);
  for (const byte of bytes) {
    const mixed = row.put(`=${hash}-MOD(${hash},256)+BITXOR(MOD(${hash},256),${byte})`);
    hash = row.put(`=MOD(${mixed}*403+MOD(${mixed},256)*16777216,${WORDS})`);
  }
  return hash;
}

/** x XOR (x shifted right by so many bits), half a word at a time. */
const shifted = (x: string, bits: number): string =>
  `=BITXOR(INT(${x}/65536),INT(INT(${x}/${2 ** bits})/65536))*65536` +
  `+BITXOR(MOD(${x},65536),MOD(INT(${x}/${2 ** bits}),65536))`;

const timesWord = (x: string, factor: number): string =>
  `=MOD(MOD(INT(${x}/65536)*${factor},65536)*65536+MOD(${x},65536)*${factor},${WORDS})`;

/** The finisher of MurmurHash3 for 32 bits. */
function finished(row: Row, word: string): string {
  const first = row.put(timesWord(row.put(shifted(word, 16)), 0x85ebca6b));
  const second = row.put(timesWord(row.put(shifted(first, 13)), 0xc2b2ae35));
  return row.put(shifted(second, 16));
}

/** The first word that lies below the last full round of `count`, as a remainder; words in golden steps from the hash. */
function drawn(row: Row, text: string, count: number): void {
  const hash = hashed(row, new TextEncoder().encode(text));
  const words = Array.from({ length: ATTEMPTS }, (_each, index) => {
    return finished(row, row.put(`=MOD(${hash}+${index + 1}*2654435769,${WORDS})`));
  });
  const fair = row.put(`=${WORDS}-MOD(${WORDS},${count})`);
  row.put(`=${words.map((word) => `IF(${word}<${fair},MOD(${word},${count}),`).join("")}-1${")".repeat(ATTEMPTS)}`);
}

function rowsOf<T>(cases: readonly T[], write: (row: Row, each: T) => void): PlainCell[][] {
  return cases.map((each, index) => {
    const row = new Row(index + 1);
    write(row, each);
    return row.cells;
  });
}

// The 32-bit FNV-1a vectors in the tests of the Go standard library, and "foobar" of Noll's own list (recalled).
const FNV_1A: readonly (readonly [text: string, hash: number])[] = [
  ["", 0x811c9dc5],
  ["a", 0xe40c292c],
  ["ab", 0x4d2505ca],
  ["abc", 0x1a47e90b],
  ["foobar", 0xbf9cf968],
];

// MurmurHash3 x86 32 of an empty text is the finisher of its seed: vectors that its ports in C++, Rust and C share.
const FINISHER: readonly (readonly [word: number, mixed: number])[] = [
  [0, 0],
  [1, 0x514e28b7],
  [0xffffffff, 0x81f16f39],
];

const STUDENTS = [1, 2, 3, 17, 200, "S7", "Bo", "\u00c5sa", "\u00d8rn", "\u6797", "\u{1f331}"];
/** Low, high and step in whole steps; the last two have so many values that a word in three or four is drawn again. */
const RANGES = [
  [1, 50, 1],
  [0, 1, 1],
  [3, 1000, 7],
  [0, 999_999, 1],
  [0, 1500, 0.000001],
  [0, 1650, 0.000001],
] as const;

const exercises = STUDENTS.flatMap((student) =>
  ["flow", "Volume#2"].flatMap((item) =>
    RANGES.map(([low, high, step]) => ({ seed: "elm 2026", student, item, low, high, step })),
  ),
);

describe.each(ENGINES)("draws in %s", (engine, worked) => {
  const lastOf = (rows: PlainCell[][]): number[] => {
    const values = worked(rows);
    return rows.map((cells, row) => wholeAt(values, row, cells.length - 1));
  };

  describe(against("EXERCISE_NUMBER", engine), () => {
    test("the sheet's hash gives the published vectors of FNV-1a", () => {
      const rows = rowsOf(FNV_1A, (row, [text]) => hashed(row, new TextEncoder().encode(text)));
      expect(lastOf(rows)).toEqual(FNV_1A.map(([, hash]) => hash));
    });

    test("the sheet's finisher gives the published vectors of MurmurHash3", () => {
      const rows = rowsOf(FINISHER, (row, [word]) => finished(row, row.put(word)));
      expect(lastOf(rows)).toEqual(FINISHER.map(([, mixed]) => mixed));
    });

    test("and what it draws is the function's number, for students, items and ranges of all kinds", () => {
      const rows = rowsOf(exercises, (row, { seed, student, item, low, high, step }) => {
        const parts = [seed, String(student), item].map((part) => part.toUpperCase());
        drawn(row, [...parts, "1"].join("\u001f"), Math.floor((high - low) / step + 1e-6) + 1);
      });
      lastOf(rows).forEach((k, index) => {
        const exercise = exercises[index] as (typeof exercises)[number];
        expect(k).toBeGreaterThanOrEqual(0);
        const scale = exercise.step < 1 ? 1_000_000 : 1;
        const number = (exercise.low * scale + k * Math.round(exercise.step * scale)) / scale;
        expect(answerOf("EXERCISE_NUMBER", exercise)).toBe(number);
      });
    });
  });
});
