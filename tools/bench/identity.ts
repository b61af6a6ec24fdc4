/** A bundle for the official runtime in which every function of ours only gives back the first cell of its first argument. */
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** The text of the bundle for these functions. */
export function identityBundle(ids: readonly string[]): string {
  return [
    "function identity(block) { return block[0][0]; }",
    ...ids.map((id) => `CustomFunctions.associate(${JSON.stringify(id)}, identity);`),
  ].join("\n");
}

/** Writes the bundle into a temporary folder; gives its path. */
export function writeIdentityBundle(ids: readonly string[]): string {
  const file = join(mkdtempSync(join(tmpdir(), "canyard-bench-")), "identity.js");
  writeFileSync(file, identityBundle(ids));
  return file;
}
