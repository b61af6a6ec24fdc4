/** What stands in arguments that take a text, where not any text will do. */
import fc, { type Arbitrary } from "fast-check";
import type { Entry } from "../../src/kernel";

const ANY = ["north", "bench 4", "pots", "RUN_MINUTES"];
const FUNCTIONS = ["RUN_MINUTES", "run_minutes", "CANYARD.RUN_MINUTES_FROM_ET", "no such function"];

/** By function and argument. */
const KNOWN: Readonly<Record<string, readonly string[]>> = {
  "CONVERT_UNIT from": ["gal", "L", "CCF", "acre-inch", "in", "mm", "F", "C", "psi", "bar", "no such unit"],
  "CONVERT_UNIT to": ["gal", "fl oz", "m3", "1000 gal", "ft", "gal/ft2", "F", "C", "kPa", "psi", "no such unit"],
  "CHECK_RANGE function_name": FUNCTIONS,
  "CHECK_RANGE argument": ["", "emitter_flow", "emitters_per_plant", "no such argument"],
  "UNIT_LABEL function_name": FUNCTIONS,
  "UNIT_LABEL argument": ["", "emitter_flow", "emitters_per_plant", "no such argument"],
};

export function textsOf({ name }: Entry, argument: string): Arbitrary<string> {
  return fc.constantFrom(...(KNOWN[`${name} ${argument}`] ?? ANY));
}
