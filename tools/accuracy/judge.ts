/** How far a double lies from the number that the same formulas give in 64 digits, held against the condition. */
import { exactly } from "./bigNumbers";
import { movesInAll, type Traced } from "./traced";

/** An error of this part of the answer is allowed for each 1 of the condition. */
export const LIMIT = 1e-12;

export interface Judged {
  /** As a part of the answer in big numbers. */
  readonly error: number;
  /** By how many parts of itself the answer moves when every input moves by one, each the worse way; 1 or more. */
  readonly condition: number;
  /** The error over the condition; worked without a division by the answer, so that it is a number where that is 0. */
  readonly share: number;
}

/**
 * The condition is 1 or more, since no answer is better than the double that holds it. An answer of 0 has no parts: an
 * error there is held against what the inputs move it by.
 */
export function judge(answer: number, big: Traced): Judged {
  const off = exactly(answer).minus(big.value).abs().toNumber();
  const size = big.value.abs().toNumber();
  const moved = Math.max(size, movesInAll(big));
  return { error: part(off, size), condition: part(moved, size), share: part(off, moved) };
}

function part(of: number, whole: number): number {
  return of === 0 ? 0 : of / whole;
}
