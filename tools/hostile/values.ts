/** Hostile values by kind: what no argument expects, and what stands just across an argument's own limits. */
import fc, { type Arbitrary } from "fast-check";
import { catalogue } from "../../src/functions/catalogue";
import { boundsOf, isRange, type CellInput, type Param } from "../../src/kernel";
import { nextAbove, nextBelow } from "../../test/rig/nextNumber";
import type { DataTypeInput, HostileInput } from "./call";
import type { CellKind, Kind } from "./kinds";

export interface Hostile {
  readonly kind: Kind;
  readonly value: HostileInput;
}

/** Error codes that both roads have, and some that only one of them knows. */
export const COMMON_CODES = ["#N/A", "#DIV/0!", "#NUM!", "#NULL!"] as const;
const OTHER_CODES = ["#VALUE!", "#REF!", "#NAME?", "#SPILL!", "#CALC!", "#GETTING_DATA"] as const;

/** The most letters that a cell holds. */
export const LONGEST_CELL = 32_767;

const NAMES = catalogue.map(({ name }) => name);
const ODD_NAMES = ["canyard.run_minutes", "CANYARD.RUN_MINUTES_FROM_ET", " Canyard_Tank_Volume ", "RUN_MINUTE", "PI"];
/** Names that every object of the language has: a look-up by plain object would find them. */
const OBJECT_NAMES = ["toString", "constructor", "__proto__", "hasOwnProperty"];

const long = (part: string): string => part.repeat(Math.ceil(LONGEST_CELL / part.length)).slice(0, LONGEST_CELL);

const numberFormat = "0.00";
const DATA_TYPES = [
  { type: "FormattedNumber", basicType: "Double", basicValue: 3.5, numberFormat },
  { type: "FormattedNumber", basicType: "Double", basicValue: 0, numberFormat },
  { type: "String", basicType: "String", basicValue: "metric" },
  { type: "Boolean", basicType: "Boolean", basicValue: true },
  { type: "Entity", text: "bench" },
] as const satisfies readonly DataTypeInput[];

const CELLS: Readonly<Record<CellKind, Arbitrary<HostileInput>>> = {
  "empty cell": fc.constant(null),
  "left out in the middle": fc.constant(undefined),
  "empty text": fc.constant(""),
  "text of blanks": fc.constantFrom(" ", "   ", "\t", "\u00a0", " \n "),
  "TRUE or FALSE": fc.boolean(),
  zero: fc.constant(0),
  "negative zero": fc.constant(-0),
  "not a number": fc.constant(NaN),
  infinity: fc.constantFrom(Infinity, -Infinity),
  "huge number": fc.constantFrom(1e9, 1e15, 2 ** 53 + 2, 1e100, 1e154, 1e300, Number.MAX_VALUE),
  "tiny number": fc.constantFrom(1e-9, 1e-16, 1e-100, 1e-160, 1e-300, 2 ** -1022),
  "denormal number": fc.constantFrom(Number.MIN_VALUE, 1e-310, 2.2e-308, -Number.MIN_VALUE),
  "negative number": fc.oneof(
    fc.constantFrom(-1, -0.5, -12, -1e-12, -1e6, -1e300, -Number.MAX_VALUE),
    fc.integer({ min: -400, max: -1 }),
  ),
  date: fc.oneof(fc.integer({ min: 40_000, max: 47_000 }), fc.constantFrom(45_123.75, 1, 60, 2_958_465, 2_958_466)),
  "date as text": fc.constantFrom("2026-05-17", "17.05.2026", "5/17/2026", "2026-05-17T06:30:00Z", "17 May"),
  "number as text": fc.constantFrom("12", " 6 ", "1,5", "0.2", "1e3", "20%", "-3", "0x10", "1 000", "\u0663"),
  text: fc.constantFrom("twelve", "north", "pots", "n/a", "\u00e9t\u00e9", "\u6c34", "\u{1F331}", "true", "us", "skip"),
  "name of a function as text": fc.constantFrom(...NAMES, ...ODD_NAMES, ...OBJECT_NAMES),
  "quotes, markup, line breaks": fc.constantFrom(
    '"',
    'a"b',
    "it's",
    "<img src=x onerror=alert(1)>",
    "</script><b>",
    "&amp;&lt;",
    "a\nb",
    "a\r\nb\tc",
    "\\",
    "%s {0} ${x}",
    "=1+1",
    "\u0000",
    "\u202Eabc",
    "\uD83C",
  ),
  "text of 32,767 letters": fc.constantFrom(...["x", "RUN_MINUTES ", " ", "9", '"', "\u6c34\n"].map(long)),
  "text like an error": fc.constantFrom("#N/A", "#DIV/0!", "#VALUE!", "#REF!"),
  "cell in error": fc.constantFrom(...COMMON_CODES, ...COMMON_CODES, ...OTHER_CODES).map((code) => ({ code })),
  "data type of the host": fc.constantFrom(...DATA_TYPES),
};

/** Long texts cost most of the time that they take on the way, so they come more seldom. */
const RARE: ReadonlySet<CellKind> = new Set(["text of 32,767 letters"]);

const cellKinds = Object.entries(CELLS) as [CellKind, Arbitrary<HostileInput>][];

export const hostileCell: Arbitrary<Hostile> = fc.oneof(
  ...cellKinds.map(([kind, values]) => ({
    weight: RARE.has(kind) ? 1 : 4,
    arbitrary: values.map((value): Hostile => ({ kind, value })),
  })),
);

/** What a range of mixed kinds holds: no errors, which would answer for all of it. */
const mixedCell = fc.oneof(
  { weight: 3, arbitrary: fc.double({ min: -100, max: 1000, noNaN: true }) },
  { weight: 2, arbitrary: fc.constantFrom<CellInput>(null, "", "dry", true, false, 0, "12", "north", 1e300, -5) },
);

function block(cell: Arbitrary<CellInput>, rows: [number, number], columns: [number, number]): Arbitrary<HostileInput> {
  return fc
    .integer({ min: columns[0], max: columns[1] })
    .chain((width) =>
      fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: rows[0], maxLength: rows[1] }),
    );
}

const positive = fc.double({ min: 0.001, max: 500, noNaN: true });

export const hostileRange: Arbitrary<Hostile> = fc.oneof(
  hostileCell.map(({ value }): Hostile => ({ kind: "range of one cell", value: [[value as CellInput]] })),
  fc.constantFrom<HostileInput>([], [[]]).map((value): Hostile => ({ kind: "empty range", value })),
  block(fc.constantFrom<CellInput>(null, ""), [1, 6], [1, 3]).map((value): Hostile => ({
    kind: "range of blanks",
    value,
  })),
  block(positive, [2, 8], [1, 4]).map((value): Hostile => ({ kind: "range of numbers", value })),
  fc.tuple(positive, fc.integer({ min: 60, max: 300 })).map(([first, width]): Hostile => ({
    kind: "wide range",
    value: [Array.from({ length: width }, (_cell, column) => first + column / 7)],
  })),
  block(mixedCell, [1, 8], [1, 5]).map((value): Hostile => ({ kind: "range of mixed kinds", value })),
);

function limitsOf(param: Param): number[] {
  if (!("quantity" in param)) return [];
  return (["us", "metric"] as const).flatMap((system) => {
    const { low, high } = boundsOf(param, param.quantity, system);
    return [low, high].filter(Number.isFinite).flatMap((limit) => [limit, nextBelow(limit), nextAbove(limit)]);
  });
}

function oddly(word: string): string[] {
  const odd = [...word].map((letter, at) => (at % 2 === 0 ? letter.toUpperCase() : letter.toLowerCase())).join("");
  return [word.toUpperCase(), ` ${word} `, odd, `\t${word}\n`];
}

const WRONG_UNITS = ["imperial", "si", "US metric", "metrics", "u.s.", "usa", "m", "gal"];
const WRONG_WORDS = ["sideways", "yes", "all", "sum"];

/** From what the entry says of the argument; null where it says nothing of the kind. */
export function hostileByEntry(name: string, param: Param): Arbitrary<Hostile> | null {
  const made = (kind: Kind, values: readonly (number | string)[]): Arbitrary<Hostile>[] =>
    values.length === 0 ? [] : [fc.constantFrom(...values).map((value): Hostile => ({ kind, value }))];
  const isWhole = "whole" in param && param.whole === true;
  const words = param.kind === "word" ? param.words : [];
  const choices = [
    ...made("limit, or just beyond it", limitsOf(param)),
    ...made("fraction where a whole number belongs", isWhole ? [0.5, 1.5, 2.000001, 7.25] : []),
    ...made("right word in odd case", words.flatMap(oddly)),
    ...made(
      name === "units" ? "wrong word for the units" : "wrong word",
      words.length === 0 ? [] : [...(name === "units" ? WRONG_UNITS : WRONG_WORDS), `${words[0]}x`, words.join(" ")],
    ),
  ];
  return choices.length === 0 ? null : fc.oneof(...choices);
}

/** Anything hostile for one argument. */
export function hostileFor(name: string, param: Param): Arbitrary<Hostile> {
  const own = hostileByEntry(name, param);
  return fc.oneof(
    { weight: 6, arbitrary: hostileCell },
    { weight: isRange(param) ? 3 : 1, arbitrary: hostileRange },
    ...(own === null ? [] : [{ weight: 2, arbitrary: own }]),
  );
}
