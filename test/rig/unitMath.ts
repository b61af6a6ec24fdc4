import { evaluate, lusolve, unit, type Unit } from "mathjs";

/** A quantity in any unit of mathjs, which brings its own table of units. */
export function quantity(value: number, of: string): Unit {
  return unit(value, of);
}

/** Factors multiplied and divided with their units; what comes out is asked for in a unit, which it must be able to take. */
export function combined(over: readonly Unit[], under: readonly Unit[], asked: string): number {
  const product = over.reduce((all, factor) => all.multiply(factor) as Unit);
  return under.reduce((all, divisor) => all.divide(divisor) as Unit, product).toNumber(asked);
}

/** A statement of physics worked by mathjs with the units of its quantities; what comes out must be able to take `asked`. */
export function physical(
  statement: string,
  quantities: Readonly<Record<string, Unit | number>>,
  asked: string,
): number {
  const value: unknown = evaluate(statement, { ...quantities });
  if (typeof value === "number") {
    if (asked !== "") throw new Error(`${statement} has no unit, where ${asked} was asked for`);
    return value;
  }
  return (value as Unit).toNumber(asked);
}

/** The unknowns of balances that are linear: each row of factors times the unknowns is its sum. */
export function balanced(factors: readonly (readonly number[])[], sums: readonly number[]): number[] {
  const solved = lusolve(
    factors.map((row) => [...row]),
    [...sums],
  ) as number[][];
  return solved.map(([unknown]) => unknown as number);
}
