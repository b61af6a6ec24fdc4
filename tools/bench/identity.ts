/** Bundles for the official runtime: one in which every function only gives back a cell, and ours made comparable. */
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Names of the language that our functions look up while they calculate. */
const LANGUAGE = ["Array", "Number", "Math", "Object", "Float64Array", "String", "Date", "Infinity", "NaN"];

/**
 * In a page the language's names are looked up at once; in the rig's vm each look-up goes through a sandbox, at about a
 * microsecond. So a bundle gets them as local names.
 */
function withLocalNames(bundle: string): string {
  const names = LANGUAGE.join(", ");
  return `(function (${names}) {\n${bundle}\n})(${names});`;
}

function temporary(name: string, text: string): string {
  const file = join(mkdtempSync(join(tmpdir(), "canyard-bench-")), name);
  writeFileSync(file, text);
  return file;
}

/** Our bundle, ready to be timed in the rig; gives its path. */
export function writeOurBundle(file: string): string {
  return temporary("functions.js", withLocalNames(readFileSync(file, "utf8")));
}

/** A bundle that associates the same names with a function that gives back the first cell; gives its path. */
export function writeIdentityBundle(ids: readonly string[]): string {
  const bundle = [
    "function identity(block) { return block[0][0]; }",
    ...ids.map((id) => `CustomFunctions.associate(${JSON.stringify(id)}, identity);`),
  ].join("\n");
  return temporary("identity.js", withLocalNames(bundle));
}
