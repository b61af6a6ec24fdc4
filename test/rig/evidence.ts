/**
 * Titles of the test groups by which docs/check-values.md knows what stands behind each function. The page is made of
 * the tests that passed, so a title is a claim that a run has proven.
 */

/** Values out of print: each test of the group names its source. */
export function published(name: string): string {
  return `${name}: published values`;
}

/** An independent library or engine; `what` says which of its answers is compared. */
export function against(name: string, library: string): string {
  return `${name}: against ${library}`;
}

/** A case worked by hand in the test, by another route than the code takes. */
export function byAnotherRoute(name: string): string {
  return `${name}: arithmetic by another route`;
}

/** A function that gives words and works nothing out; `what` says what its words are held against. */
export function noArithmetic(name: string, what: string): string {
  return `${name}: no arithmetic, held against ${what}`;
}
