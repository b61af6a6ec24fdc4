import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expectOutcome, type Outcome } from "./expectOutcome";
import { conformance, type Given } from "./table";

const PROGRAM = join(__dirname, "../rig/callLibrary.mjs");
const LIBRARY = pathToFileURL(join(__dirname, "../../dist/library.mjs")).href;

function libraryArgument(given: Given): unknown {
  if ("cell" in given) return given.cell;
  if ("block" in given) return given.block;
  if ("errorCell" in given) return { code: given.errorCell };
  return "leftOut" in given ? "(left out)" : null;
}

interface LibraryAnswer {
  readonly answer?: unknown;
  readonly code?: string;
  readonly message?: string;
}

const calls = conformance.map(({ name, given }) => [name, given.map(libraryArgument)]);
let answers: readonly LibraryAnswer[] = [];

beforeAll(() => {
  const output = execFileSync(process.execPath, [PROGRAM, LIBRARY], { input: JSON.stringify(calls), encoding: "utf8" });
  answers = JSON.parse(output) as LibraryAnswer[];
});

function outcomeOf({ answer, code, message }: LibraryAnswer): Outcome {
  if (code !== undefined) return { code, message: message ?? "" };
  return Array.isArray(answer) ? { table: answer as unknown[][] } : { value: answer };
}

describe("from dist/library.mjs in a plain Node program", () => {
  test.each(conformance.map(({ title, gives }, index) => [title, index, gives] as const))(
    "%s",
    (_title, index, gives) => {
      expectOutcome(outcomeOf(answers[index] as LibraryAnswer), gives, { valueError: "#VALUE!" });
    },
  );
});
