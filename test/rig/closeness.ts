/** How far two numbers lie apart, as a part of the second; the plain difference where that is 0. */
export function relativeDifference(value: number, of: number): number {
  return of === 0 ? Math.abs(value) : Math.abs((value - of) / of);
}

const NEAR_ZERO = 1e-12;

/** Whether a value is a number this close to the expected one, as a part of it; near 0, within 1e-12. */
export function isClose(value: unknown, expected: number, relative: number): boolean {
  return typeof value === "number" && Math.abs(value - expected) <= Math.max(relative * Math.abs(expected), NEAR_ZERO);
}

/** Fails with both numbers where they lie further apart than the part of the expected one that is allowed. */
export function expectClose(value: unknown, expected: number, relative: number, absolute = 0): void {
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new Error(`expected ${expected}, got ${JSON.stringify(value)}`);
  }
  const allowed = Math.max(relative * Math.abs(expected), absolute);
  if (!(Math.abs(value - expected) <= allowed)) {
    throw new Error(`expected ${expected}, got ${value}: apart by ${value - expected}, allowed ${allowed}`);
  }
}
