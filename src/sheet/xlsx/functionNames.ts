/**
 * Names of functions as files write them and as a cell shows them. Excel stores ours as `_xldudf_CANYARD_X(`; others
 * write them small, or as they are shown. Newer built-in functions carry a prefix in a file.
 */

import { withoutDoubledQuotes } from "../quotes";

const SHOWN = "CANYARD.";
const STORED = "_xldudf_CANYARD_";

/** Texts and sheet names in quotes are passed over. */
const QUOTED = String.raw`"(?:[^"]|"")*"|'(?:[^']|'')*'`;
const OURS_IN_FILE = String.raw`(?:\[\d+\]!)?(?<![\w.])(?:_xldudf_|_xll\.)?CANYARD[._](?<name>\w+)(?=\s*\()`;
const PREFIX_IN_FILE = String.raw`_xlfn\.|_xlws\.|_xlpm\.`;
const FROM_FILE = new RegExp(`${QUOTED}|${OURS_IN_FILE}|${PREFIX_IN_FILE}`, "gi");
const TO_FILE = new RegExp(String.raw`${QUOTED}|(?<![\w.])CANYARD\.(?<name>\w+)(?=\s*\()`, "gi");

/** A formula of a file as it stands in a cell. */
export function fromFile(formula: string): string {
  return withoutDoubledQuotes(formula).replace(FROM_FILE, (part: string, name: string | undefined) => {
    if (name !== undefined) return SHOWN + name.toUpperCase();
    return isQuoted(part) ? part : "";
  });
}

/** A cell's formula as Excel stores it, as far as our functions go. */
export function toFile(formula: string): string {
  return formula.replace(TO_FILE, (part: string, name: string | undefined) =>
    name === undefined ? part : STORED + name.toUpperCase(),
  );
}

export function holdsOurs(formula: string): boolean {
  return [...formula.matchAll(TO_FILE)].some(({ groups }) => groups?.["name"] !== undefined);
}

const isQuoted = (part: string): boolean => part.startsWith('"') || part.startsWith("'");
