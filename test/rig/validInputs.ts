/** Random inputs inside the limits that an entry declares, for every function of the catalogue alike. */
import fc, { type Arbitrary } from "fast-check";
import { boundsOf, isOptional, within } from "../../src/kernel";
import type {
  ArgumentInput,
  CellInput,
  ColumnParam,
  Entry,
  NumberParam,
  NumbersParam,
  Param,
  UnitSystem,
  WordParam,
} from "../../src/kernel";
import { columnsOf, widthsOf } from "./mixedRanges";
import { textsOf } from "./textsOf";

/** One seed for every property, so that a run can be repeated; a failure prints it with the path to the case. */
export const SEED = 19_980_623;

export type System = UnitSystem | null;
type Limited = NumberParam | NumbersParam | ColumnParam;
type Numbers = (param: Limited, system: System) => Arbitrary<number>;
type Rows = readonly (readonly CellInput[])[];

interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** The systems in which a function can be asked: none where it takes no units. */
export function systemsOf(entry: Entry): readonly System[] {
  return "units" in entry.params ? ["us", "metric"] : [null];
}

const GRID = 100_000;
/** Where a limit is open, numbers go from a millionth to a million: sizes of a sheet. */
const OPEN_DECADES = 6;
const MOST_WHOLE = 60;

const distance = fc.integer({ min: -GRID, max: GRID }).map((at) => 10 ** ((OPEN_DECADES * at) / GRID));

function evenly(low: number, high: number): Arbitrary<number> {
  return fc.integer({ min: 0, max: GRID }).map((at) => low + ((high - low) * at) / GRID);
}

/** Numbers of the size that a sheet holds, the limits themselves and the usual range among them. */
export function ordinaryNumbers(param: Limited, system: System): Arbitrary<number> {
  const bounds = boundsOf(param, param.quantity, system);
  const { low, high, whole } = bounds;
  if (whole) return fc.integer({ min: Math.ceil(low), max: Math.min(high, low + MOST_WHOLE) });
  const usual = "usual" in param && param.usual !== undefined ? param.usual[system ?? "metric"] : null;
  const edges = [low, high, 0, 1].filter((limit) => within(limit, bounds)).concat(usual ?? []);
  const choices = [
    low > -Infinity && high < Infinity ? evenly(low, high) : distance.map((far) => (low > -Infinity ? low + far : far)),
    ...(low === -Infinity ? [distance.map((far) => (high < Infinity ? high - far : -far))] : []),
    ...(usual === null ? [] : [evenly(...usual)]),
    ...(edges.length === 0 ? [] : [fc.constantFrom(...edges)]),
  ];
  return fc.oneof(...choices).filter((value) => within(value, bounds));
}

/** Any double inside the limits, down to the smallest and up to the largest that there is. */
export function extremeNumbers(param: Limited, system: System): Arbitrary<number> {
  const bounds = boundsOf(param, param.quantity, system);
  if (bounds.whole) return ordinaryNumbers(param, system);
  const min = Math.max(bounds.low, -Number.MAX_VALUE);
  const max = Math.min(bounds.high, Number.MAX_VALUE);
  return fc.double({ min, max, noNaN: true }).filter((value) => within(value, bounds));
}

function word(param: WordParam): Arbitrary<string> {
  const spelling = fc.constantFrom(
    (text: string) => text,
    (text: string) => text.toUpperCase(),
    (text: string) => `  ${text} `,
  );
  return fc.tuple(fc.constantFrom(...param.words), spelling).map(([chosen, spell]) => spell(chosen));
}

const texts = fc.constantFrom("north", "bench 4", "pots", "RUN_MINUTES");
const blankCell = fc.constantFrom<CellInput>(null, undefined, "");
const mixedCell = fc.oneof(
  evenly(-10, 100),
  evenly(40_000, 46_000),
  blankCell,
  fc.constantFrom<CellInput>("dry", 0, true),
);

function grid(cell: Arbitrary<CellInput>, { rows, columns }: Shape): Arbitrary<Rows> {
  const row = fc.array(cell, { minLength: columns, maxLength: columns });
  return fc.array(row, { minLength: rows, maxLength: rows });
}

/** A range that the function reads itself: rows that fit, some cells blank or wrong; where nothing is known, anything. */
function mixedRange(entry: Entry, name: string, shape: Shape, system: System, numbers: Numbers): Arbitrary<Rows> {
  const known = widthsOf(entry, name).map((width) => {
    const cells = columnsOf(entry, name, width).map((column) =>
      fc.oneof({ weight: 20, arbitrary: numbers(column, system) }, { weight: 1, arbitrary: mixedCell }),
    );
    return fc.array(fc.tuple(...cells), { minLength: shape.rows, maxLength: shape.rows });
  });
  return fc.oneof(...known, grid(mixedCell, shape));
}

function input(
  entry: Entry,
  name: string,
  param: Param,
  shape: Shape,
  system: System,
  numbers: Numbers,
): Arbitrary<ArgumentInput> {
  if (name === "units" && system !== null) return fc.constant(system);
  switch (param.kind) {
    case "word":
      return word(param);
    case "cells":
      return mixedRange(entry, name, shape, system, numbers);
    case "switch":
      return fc.boolean();
    case "text":
      return textsOf(entry, name);
    case "cell":
      return fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.constantFrom(null, "", "text", true));
    case "inputs":
      return fc.constant(null);
    case "texts":
      return grid(texts, shape);
    case "column":
      return grid(
        fc.oneof({ weight: 20, arbitrary: numbers(param, system) }, { weight: 1, arbitrary: mixedCell }),
        shape,
      );
    case "numbers":
      return shape.rows * shape.columns === 1 ? numbers(param, system) : grid(numbers(param, system), shape);
    default:
      return numbers(param, system);
  }
}

/** Which cells of a range are blank, where a blank means something. */
const holes = fc.array(fc.tuple(fc.nat(30), fc.constantFrom<CellInput>(null, "", 0)), { maxLength: 4 });
type Holes = readonly (readonly [at: number, cell: CellInput])[];

function punched(rows: Rows, made: Holes): Rows {
  const width = rows[0]?.length ?? 1;
  return rows.map((row, index) =>
    row.map((cell, column) => made.find(([at]) => at === index * width + column)?.[1] ?? cell),
  );
}

function withHoles(entry: Entry, args: readonly ArgumentInput[], made: Holes): ArgumentInput[] {
  const params = Object.entries(entry.params);
  const zeros = args[params.findIndex(([name]) => name === "zeros")];
  const blanksCount = typeof zeros === "string" && /count|skip/i.test(zeros);
  const rowsAreSkipped = typeof zeros === "string" && /skip/i.test(zeros);
  return args.map((given, index) => {
    const param = params[index]?.[1];
    if (param?.kind !== "numbers" || !Array.isArray(given)) return given;
    const punch = (param.blanks === "zeros" && blanksCount) || (param.blanks === "by row" && rowsAreSkipped);
    return punch ? punched(given as Rows, made) : given;
  });
}

const shapes: Arbitrary<Shape> = fc.oneof(
  fc.record({ rows: fc.integer({ min: 1, max: 12 }), columns: fc.constant(1) }),
  fc.record({ rows: fc.integer({ min: 1, max: 5 }), columns: fc.integer({ min: 1, max: 5 }) }),
);

function fewestCells(entry: Entry): number {
  return Math.max(
    1,
    ...Object.values(entry.params).map((param) => (param.kind === "numbers" ? (param.fewest ?? 1) : 1)),
  );
}

/** Arguments that are each within their own limits; ranges of one call have one shape. */
export function validInputs(
  entry: Entry,
  system: System,
  numbers: Numbers = ordinaryNumbers,
): Arbitrary<ArgumentInput[]> {
  const params = Object.entries(entry.params);
  return shapes
    .filter(({ rows, columns }) => rows * columns >= fewestCells(entry))
    .chain((shape) => {
      const inputs = params.map(([name, param]): Arbitrary<ArgumentInput> => {
        const given = input(entry, name, param, shape, system, numbers);
        return isOptional(param)
          ? fc.oneof({ weight: 1, arbitrary: blankCell }, { weight: 3, arbitrary: given })
          : given;
      });
      return fc.tuple(fc.tuple(...inputs), holes).map(([args, made]) => withHoles(entry, args, made));
    });
}
