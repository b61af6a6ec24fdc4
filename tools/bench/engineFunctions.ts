/** The functions as the pages load them: the built file, compiled like any script. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { runInThisContext } from "node:vm";
import type { Functions } from "../../src/sheet/functions";

export const FUNCTIONS_FILE = join(__dirname, "../../dist/functions.js");

/** The sources run by tsx would carry its marks at every function made: what is measured is what is served. */
export function builtFunctions(): Functions {
  if (!existsSync(FUNCTIONS_FILE)) throw new Error("There is no dist/functions.js yet: run `npm run build` first.");
  return runInThisContext(`${readFileSync(FUNCTIONS_FILE, "utf8")}\n;canyard;`, {
    filename: FUNCTIONS_FILE,
  }) as Functions;
}
