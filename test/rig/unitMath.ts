import { unit, type Unit } from "mathjs";

/** A quantity in any unit of mathjs, which brings its own table of units. */
export function quantity(value: number, of: string): Unit {
  return unit(value, of);
}

/** Factors multiplied and divided with their units; what comes out is asked for in a unit, which it must be able to take. */
export function combined(over: readonly Unit[], under: readonly Unit[], asked: string): number {
  const product = over.reduce((all, factor) => all.multiply(factor) as Unit);
  return under.reduce((all, divisor) => all.divide(divisor) as Unit, product).toNumber(asked);
}
