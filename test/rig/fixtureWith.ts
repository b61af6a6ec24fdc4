import type { Entry, Params } from "../../src/kernel";
import { fixtureFunction } from "./fixtureFunction";

/** A function for tests of the kernel alone, with these parameters; it answers 0 unless the test says what. */
export function fixtureWith(params: Params, more: Partial<Entry> = {}): Entry {
  return { ...fixtureFunction(() => 0), params, compute: () => 0, ...more };
}
