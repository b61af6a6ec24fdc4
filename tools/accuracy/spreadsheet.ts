/** The built-in functions that recorded formulas use, in big numbers: written from what spreadsheets say they do. */
import { exactly, ONE, PI, written, ZERO, type BigNumber } from "./bigNumbers";
import type { Decisions } from "./decisions";
import {
  constant,
  divided,
  larger,
  minus,
  multiplied,
  negative,
  plus,
  power,
  smaller,
  through,
  total,
  type Traced,
} from "./traced";

/** What stands for a text like "<=" joined to a number: a rule by which cells are chosen. */
export interface Rule {
  readonly operator: string;
  readonly against: Traced;
}

export type Value = Traced | readonly Traced[] | Rule | string | boolean;

export function isRange(value: Value): value is readonly Traced[] {
  return Array.isArray(value);
}

function isRule(value: Value): value is Rule {
  return typeof value === "object" && "operator" in value;
}

/** A range of one number is that number, as a cell is. */
export function numberIn(value: Value | undefined): Traced {
  const number = value !== undefined && isRange(value) && value.length === 1 ? value[0] : value;
  if (number === undefined || typeof number !== "object" || isRange(number) || isRule(number))
    throw new Error("a formula has no number where one belongs");
  return number;
}

function numbersIn(values: readonly Value[]): readonly Traced[] {
  return values.flatMap((value) => (isRange(value) ? value : [numberIn(value)]));
}

function range(value: Value | undefined): readonly Traced[] {
  if (value === undefined || !isRange(value)) throw new Error("a formula has no range where one belongs");
  return value;
}

function count(numbers: readonly Traced[]): Traced {
  return constant(exactly(numbers.length));
}

function mean(numbers: readonly Traced[]): Traced {
  return divided(total(numbers), count(numbers));
}

/** Where the number meets 0 the slope jumps; either side is as steep. */
function size(number: Traced): Traced {
  return number.value.isNegative() ? negative(number) : number;
}

const HALF = constant(written("0.5"));

function root(number: Traced): Traced {
  return number.value.isZero() ? constant(ZERO) : power(number, HALF);
}

function meanDeviation(numbers: readonly Traced[]): Traced {
  const middle = mean(numbers);
  return mean(numbers.map((number) => size(minus(number, middle))));
}

function sampleDeviation(numbers: readonly Traced[]): Traced {
  const middle = mean(numbers);
  const squares = numbers.map((number) => minus(number, middle)).map((apart) => multiplied(apart, apart));
  return root(divided(total(squares), constant(exactly(numbers.length - 1))));
}

function nthSmallest(numbers: readonly Traced[], place: Traced): Traced {
  const found = [...numbers].sort((a, b) => a.value.comparedTo(b.value))[place.value.toNumber() - 1];
  if (found === undefined) throw new Error("SMALL asks for a place that the range does not have");
  return found;
}

function chosen(numbers: readonly Traced[], rule: Value | undefined, decisions: Decisions): readonly Traced[] {
  if (rule === undefined) throw new Error("a formula has no rule where one belongs");
  const { operator, against } = isRule(rule) ? rule : { operator: "=", against: numberIn(rule) };
  return numbers.filter(({ value }) => decisions.holds(value, operator, against.value));
}

function products(first: readonly Traced[], second: readonly Traced[]): Traced {
  if (first.length !== second.length) throw new Error("SUMPRODUCT has ranges of two lengths");
  return total(first.map((number, index) => multiplied(number, second[index] as Traced)));
}

function wholeNumber(values: readonly Value[], direction: "up" | "down", decisions: Decisions): Traced {
  if (!numberIn(values[1]).value.isZero()) throw new Error("only rounding to whole numbers is known");
  return constant(decisions.whole(numberIn(values[0]).value, direction));
}

/** The day that a serial number is, counted from 30 December 1899; those before March 1900 are not asked for. */
const FIRST_DAY = Date.UTC(1899, 11, 30);
const DAY = 86_400_000;

function year(serial: Traced): Traced {
  const days = serial.value.floor().toNumber();
  return constant(exactly(new Date(FIRST_DAY + days * DAY).getUTCFullYear()));
}

function date(values: readonly Value[]): Traced {
  const [ofYear, month, day] = values.map((value) => numberIn(value).value.toNumber());
  const at = new Date(0);
  at.setUTCFullYear(ofYear as number, (month as number) - 1, day);
  return constant(exactly(Math.round((at.getTime() - FIRST_DAY) / DAY)));
}

function smooth(value: (x: BigNumber) => BigNumber, slope: (x: BigNumber, y: BigNumber) => BigNumber): Builtin {
  return ([only]) => {
    const x = numberIn(only);
    const y = value(x.value);
    if (!y.isFinite()) throw new Error("a formula has no number for an answer");
    return through(x, y, () => slope(x.value, y));
  };
}

type Builtin = (values: readonly Value[], decisions: Decisions) => Traced;

/** All but IF, which works one of its two sides only. */
export const builtins: Readonly<Record<string, Builtin>> = {
  PI: () => constant(PI),
  EXP: smooth(
    (x) => x.exp(),
    (_x, y) => y,
  ),
  LN: smooth(
    (x) => x.ln(),
    (x) => ONE.dividedBy(x),
  ),
  SIN: smooth(
    (x) => x.sin(),
    (x) => x.cos(),
  ),
  COS: smooth(
    (x) => x.cos(),
    (x) => x.sin().negated(),
  ),
  TAN: smooth(
    (x) => x.tan(),
    (_x, y) => y.times(y).plus(ONE),
  ),
  ACOS: smooth(
    (x) => x.acos(),
    (x) => ONE.negated().dividedBy(ONE.minus(x.times(x)).sqrt()),
  ),
  SQRT: ([only]) => root(numberIn(only)),
  ABS: ([only]) => size(numberIn(only)),
  INT: ([only], decisions) => {
    const { value } = numberIn(only);
    return constant(decisions.whole(value, value.isNegative() ? "up" : "down"));
  },
  ROUNDUP: (values, decisions) => wholeNumber(values, "up", decisions),
  ROUNDDOWN: (values, decisions) => wholeNumber(values, "down", decisions),
  MAX: (values) => numbersIn(values).reduce(larger),
  MIN: (values) => numbersIn(values).reduce(smaller),
  SUM: (values) => total(numbersIn(values)),
  COUNT: (values) => count(numbersIn(values)),
  AVERAGE: (values) => mean(numbersIn(values)),
  AVEDEV: (values) => meanDeviation(numbersIn(values)),
  STDEV: (values) => sampleDeviation(numbersIn(values)),
  SMALL: ([numbers, place]) => nthSmallest(range(numbers), numberIn(place)),
  COUNTIF: ([numbers, rule], decisions) => count(chosen(range(numbers), rule, decisions)),
  SUMIF: ([numbers, rule], decisions) => total(chosen(range(numbers), rule, decisions)),
  SUMPRODUCT: ([first, second]) => products(range(first), range(second)),
  YEAR: ([serial]) => year(numberIn(serial)),
  DATE: (values) => date(values),
};

/** What stands between two numbers. */
export const operators: Readonly<Record<string, (a: Traced, b: Traced) => Traced>> = {
  "+": plus,
  "-": minus,
  "*": multiplied,
  "/": divided,
  "^": power,
};
