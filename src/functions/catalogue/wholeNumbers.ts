/** A quotient this close to a whole number is that number: 4.0 / 0.5 is 8, and 0.3 / 0.1 is 3, not a little less. */
const DUST = 1e-9;

/** In a formula: ROUNDUP(x - 1E-9, 0), for x of 1e-9 or more. */
export function wholeUp(quotient: number): number {
  return Math.ceil(quotient - DUST);
}

/** In a formula: ROUNDDOWN(x + 1E-9, 0), for x of 0 or more. */
export function wholeDown(quotient: number): number {
  return Math.floor(quotient + DUST);
}
