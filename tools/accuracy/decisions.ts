/**
 * Decisions of a formula: which of two numbers is larger, which whole number comes next. Doubles may decide the other
 * way where the numbers meet within their last digits. Those decisions are remembered, so that the formula can be
 * worked once more with them turned: what then agrees stood at an edge; what does not is an error.
 */
import { ONE, type BigNumber } from "./bigNumbers";

/** Numbers that lie within this part of each other may stand in either order once they are rounded. */
const MEET_WITHIN = 1e-12;
/** More than so many at once are not turned one by one. */
const MOST_TURNED = 8;

function meet(a: BigNumber, b: BigNumber, size: BigNumber): boolean {
  return a.minus(b).abs().lessThanOrEqualTo(size.times(MEET_WITHIN));
}

function compared(order: number, operator: string): boolean {
  switch (operator) {
    case "=":
      return order === 0;
    case "<>":
      return order !== 0;
    case "<":
      return order < 0;
    case "<=":
      return order <= 0;
    case ">":
      return order > 0;
    case ">=":
      return order >= 0;
    default:
      throw new Error(`no comparison ${operator}`);
  }
}

export class Decisions {
  private made = 0;
  /** The decisions, by number, that might have gone the other way. */
  readonly close: number[] = [];

  constructor(private readonly turned: ReadonlySet<number> = new Set()) {}

  private turns(isClose: boolean): boolean {
    const number = this.made;
    this.made += 1;
    if (isClose) this.close.push(number);
    return isClose && this.turned.has(number);
  }

  /** Whether a comparison of a spreadsheet holds. */
  holds(a: BigNumber, operator: string, b: BigNumber): boolean {
    const truth = compared(a.comparedTo(b), operator);
    const size = a.abs().greaterThan(b.abs()) ? a.abs() : b.abs();
    return this.turns(meet(a, b, size)) ? !truth : truth;
  }

  /** The next whole number away from 0, or towards it. */
  whole(value: BigNumber, direction: "up" | "down"): BigNumber {
    const size = value.abs();
    const found = direction === "up" ? size.ceil() : size.floor();
    const nearest = size.round();
    const turned = this.turns(meet(size, nearest, size.lessThan(ONE) ? ONE : size));
    return withSign(turned ? otherWhole(found, nearest, direction) : found, value);
  }
}

/** Near a whole number, up gives it or the one above, and down it or the one below. */
function otherWhole(found: BigNumber, nearest: BigNumber, direction: "up" | "down"): BigNumber {
  if (!found.equals(nearest)) return nearest;
  return direction === "up" ? nearest.plus(1) : nearest.minus(1);
}

function withSign(size: BigNumber, of: BigNumber): BigNumber {
  return of.isNegative() ? size.negated() : size;
}

/** Every way of turning the close decisions: each by itself first, then together. */
export function waysToTurn(close: readonly number[]): ReadonlySet<number>[] {
  if (close.length > MOST_TURNED) return [...close.map((number) => new Set([number])), new Set(close)];
  const ways = Array.from({ length: 2 ** close.length - 1 }, (_, index) =>
    close.filter((_number, bit) => ((index + 1) >> bit) & 1),
  );
  return ways.sort((a, b) => a.length - b.length).map((way) => new Set(way));
}
