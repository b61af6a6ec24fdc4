/** dist/google-sheets/Canyard.gs: the functions, the library that they call, and the licence, in one file to paste. */
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const LICENCE = fileURLToPath(new URL("../../LICENSE", import.meta.url));

/** Takes the bundle that lies in the built folder into the script; `stubs` are the functions before it. */
export function writeGoogleSheetsScript(folder, stubs) {
  const bundle = join(folder, "google-sheets/library.js");
  const library = readFileSync(bundle, "utf8").trim();
  const licence = readFileSync(LICENCE, "utf8").trim().split("\n").join("\n * ").replace(/ +$/gm, "");
  writeFileSync(join(folder, "google-sheets/Canyard.gs"), `${stubs}\n${library}\n\n/*\n * ${licence}\n */\n`);
  rmSync(bundle);
}
