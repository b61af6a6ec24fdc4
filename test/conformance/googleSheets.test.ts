import { openGoogleSheet } from "../rig/googleSheets";
import { expectOutcome, type Outcome } from "./expectOutcome";
import { conformance, type Given, type Row } from "./table";

/** That host has one error of a script; what it is about is in its words. */
const SCRIPT_ERROR = "#ERROR!";
const PASSED_ON = /holds the error (#\S+)$/;
/** How an error stands in a table, which can hold none. */
const ERROR_AS_TEXT = /^#VALUE!: (.+)$/;

function argument(given: Given): unknown {
  if ("cell" in given) return given.cell;
  if ("errorCell" in given) return given.errorCell;
  if (!("block" in given)) return "leftOut" in given ? undefined : "";
  const rows = given.block.map((row) => row.map((cell) => cell ?? ""));
  return rows.length === 1 && rows[0]?.length === 1 ? rows[0][0] : rows;
}

function readCell(cell: unknown): unknown {
  const message = typeof cell === "string" ? ERROR_AS_TEXT.exec(cell)?.[1] : undefined;
  return message === undefined ? cell : { code: SCRIPT_ERROR, message };
}

function outcomeOf({ name, given }: Row): Outcome {
  const found = openGoogleSheet().cell(`CANYARD_${name}`, given.map(argument));
  if ("error" in found) return { code: PASSED_ON.exec(found.error)?.[1] ?? SCRIPT_ERROR, message: found.error };
  if (!Array.isArray(found.value)) return found;
  return { table: (found.value as unknown[][]).map((row) => row.map(readCell)) };
}

describe("in the script for Google Sheets", () => {
  test.each(conformance.map((row) => [row.title, row] as const))("%s", (_title, row) => {
    expectOutcome(outcomeOf(row), row.gives, { valueError: SCRIPT_ERROR, noAnswer: SCRIPT_ERROR });
  });
});
