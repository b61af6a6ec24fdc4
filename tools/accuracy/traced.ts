/**
 * A big number that knows what it owes to each input: for every input x of the call, x times the slope of the number
 * by x. That is how far it moves, by the first order, when x moves by the whole of itself; a part in 1e16 of x moves it
 * by that part of the entry. The entries are doubles: of a condition, a few digits are enough.
 */
import { ONE, ZERO, type BigNumber } from "./bigNumbers";

export interface Traced {
  readonly value: BigNumber;
  /** By the number of the input; empty where no input has a part in it. */
  readonly moves: readonly number[];
}

export function constant(value: BigNumber): Traced {
  return { value, moves: [] };
}

/** The input of this number: it moves by the whole of itself, and with no other. */
export function input(value: BigNumber, number: number): Traced {
  const moves = new Array<number>(number + 1).fill(0);
  moves[number] = value.toNumber();
  return { value, moves };
}

/** How far the number moves in all when every input moves by the whole of itself, each the way that is worse. */
export function movesInAll({ moves }: Traced): number {
  return moves.reduce((sum, move) => sum + Math.abs(move), 0);
}

function combined(a: readonly number[], ofA: BigNumber, b: readonly number[], ofB: BigNumber): number[] {
  const length = Math.max(a.length, b.length);
  if (length === 0) return [];
  const [slopeA, slopeB] = [ofA.toNumber(), ofB.toNumber()];
  return Array.from({ length }, (_, index) => scaled(a[index] ?? 0, slopeA) + scaled(b[index] ?? 0, slopeB));
}

/** Nothing moves by nothing, whatever the slope. */
function scaled(move: number, slope: number): number {
  return move === 0 ? 0 : move * slope;
}

/** A function of one number, by its value and its slope there. */
export function through({ moves }: Traced, value: BigNumber, slope: () => BigNumber): Traced {
  return { value, moves: moves.length === 0 ? [] : combined(moves, slope(), [], ZERO) };
}

export function plus(a: Traced, b: Traced): Traced {
  return { value: a.value.plus(b.value), moves: combined(a.moves, ONE, b.moves, ONE) };
}

export function minus(a: Traced, b: Traced): Traced {
  return { value: a.value.minus(b.value), moves: combined(a.moves, ONE, b.moves, ONE.negated()) };
}

export function multiplied(a: Traced, b: Traced): Traced {
  return { value: a.value.times(b.value), moves: combined(a.moves, b.value, b.moves, a.value) };
}

export function divided(a: Traced, b: Traced): Traced {
  if (b.value.isZero()) throw new Error("a formula divides by 0");
  const value = a.value.dividedBy(b.value);
  return {
    value,
    moves: combined(a.moves, ONE.dividedBy(b.value), b.moves, value.dividedBy(b.value).negated()),
  };
}

export function power(base: Traced, exponent: Traced): Traced {
  const value = base.value.pow(exponent.value);
  if (!value.isFinite()) throw new Error("a formula raises to a power that is no number");
  const lower = base.moves.length === 0 ? ZERO : exponent.value.times(base.value.pow(exponent.value.minus(ONE)));
  const higher = exponent.moves.length === 0 || value.isZero() ? ZERO : value.times(base.value.ln());
  return { value, moves: combined(base.moves, lower, exponent.moves, higher) };
}

export function total(numbers: readonly Traced[]): Traced {
  return numbers.reduce(plus, constant(ZERO));
}

/** Of two that are equal, the one that moves more: the condition is that of the worse side. */
export function larger(a: Traced, b: Traced): Traced {
  const order = a.value.comparedTo(b.value);
  if (order === 0) return movesInAll(a) >= movesInAll(b) ? a : b;
  return order > 0 ? a : b;
}

export function negative({ value, moves }: Traced): Traced {
  return { value: value.negated(), moves: moves.map((move) => -move) };
}

export function smaller(a: Traced, b: Traced): Traced {
  return negative(larger(negative(a), negative(b)));
}
