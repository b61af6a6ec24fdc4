/** Numbers of 64 digits: what a double, an exact ratio and a decimal of a formula are in them. */
import { create, bignumberDependencies, type BigNumber } from "mathjs";
import type { Rational } from "../../src/kernel";

export const DIGITS = 64;

const { bignumber } = create(bignumberDependencies!, { number: "BigNumber", precision: DIGITS });

export type { BigNumber };

/** A number as it is written, every digit of it: 0.1 is a tenth. */
export function written(decimal: string): BigNumber {
  return bignumber(decimal);
}

export const ZERO = written("0");
export const ONE = written("1");
export const PI = written("-1").acos();

const FRACTION_BITS = 52n;
const FRACTION_MASK = (1n << FRACTION_BITS) - 1n;
const EXPONENT_MASK = 0x7ffn;
/** Exponent of the last bit of a double between 1 and 2, as IEEE 754 stores it: 1023 + 52. */
const STORED_EXPONENT_OF_ONE = 1075;
const TWO = written("2");

/**
 * A double bit by bit: 0.1 is 0.1000000000000000055..., the number that the arithmetic got, and not a tenth.
 * Taken apart by its bits, since the big numbers would otherwise read its shortest decimal.
 */
export function exactly(value: number): BigNumber {
  if (!Number.isFinite(value)) throw new Error(`${value} is no number`);
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, Math.abs(value));
  const bits = view.getBigUint64(0);
  const stored = Number((bits >> FRACTION_BITS) & EXPONENT_MASK);
  const fraction = bits & FRACTION_MASK;
  const whole = stored === 0 ? fraction : fraction + (1n << FRACTION_BITS);
  const size = written(whole.toString()).times(TWO.pow(Math.max(stored, 1) - STORED_EXPONENT_OF_ONE));
  return value < 0 ? size.negated() : size;
}

export function exactRatio({ over, under }: Rational): BigNumber {
  return written(over.toString()).dividedBy(written(under.toString()));
}
