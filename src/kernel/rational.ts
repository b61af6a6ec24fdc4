/**
 * Exact ratios of positive whole numbers, so that the constants which units bring (231 in3 to the gallon,
 * 0.45359237 kg to the pound) reach the arithmetic as the nearest double and nothing less.
 *
 * Large whole numbers are made by BigInt(): the editor of Google's scripts cannot read them as 10n.
 */
export interface Rational {
  readonly over: bigint;
  readonly under: bigint;
}

const ZERO = BigInt(0);
const ONE = BigInt(1);
const TWO = BigInt(2);
const TEN = BigInt(10);

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  return b === ZERO ? a : greatestCommonDivisor(b, a % b);
}

export function ratio(over: bigint, under: bigint): Rational {
  const divisor = greatestCommonDivisor(over, under);
  return { over: over / divisor, under: under / divisor };
}

/** An exact decimal, written as text: `decimal("0.45359237")`. */
export function decimal(text: string): Rational {
  const [, places = ""] = text.split(".");
  return ratio(BigInt(text.replace(".", "")), TEN ** BigInt(places.length));
}

export function times(a: Rational, b: Rational): Rational {
  return ratio(a.over * b.over, a.under * b.under);
}

export function dividedBy(a: Rational, b: Rational): Rational {
  return times(a, { over: b.under, under: b.over });
}

const BITS_KEPT = BigInt(70);

/**
 * The double nearest to the ratio: both parts are scaled so that the division keeps more bits than a double holds, and
 * a last bit says that something was left over, so that nothing just above a half is taken for a half.
 */
export function toNumber({ over, under }: Rational): number {
  if (over <= BigInt(Number.MAX_SAFE_INTEGER) && under <= BigInt(Number.MAX_SAFE_INTEGER)) {
    return Number(over) / Number(under);
  }
  const shift = BITS_KEPT + BigInt(under.toString(2).length) - BigInt(over.toString(2).length);
  const top = shift >= ZERO ? over << shift : over;
  const bottom = shift >= ZERO ? under : under << -shift;
  const leftOver = top % bottom === ZERO ? ZERO : ONE;
  return Number((top / bottom) * TWO + leftOver) * 2 ** -Number(shift + ONE);
}
