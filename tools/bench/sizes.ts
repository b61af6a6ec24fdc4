/** What has to be loaded, gzipped, and what it takes to register the functions. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipped, PANE_AT_MOST, PANE_FILES } from "../../test/rig/gzippedSizes";
import type { BenchLine, RunPart } from "./part";
import { firstLoad } from "./sizesFirstLoad";
import { compareRegistering } from "./sizesRegister";

const DIST = join(__dirname, "../../dist");
const ROUNDS = 25;
const ALONE = ["library.mjs", "google-sheets/Canyard.gs"];

const kilobytes = (bytes: number): string => (bytes / 1000).toFixed(1);

function sizeLine(what: string, bytes: number, zipped: number): BenchLine {
  return { what, figures: [kilobytes(bytes), kilobytes(zipped)] };
}

function fileLine(name: string): BenchLine {
  return sizeLine(name, readFileSync(join(DIST, name)).length, gzipped(name));
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

function paneLines(): BenchLine[] {
  const all = sum(PANE_FILES.map(gzipped));
  const plain = sum(PANE_FILES.map((name) => readFileSync(join(DIST, name)).length));
  const held = { value: all / 1000, atMost: PANE_AT_MOST / 1000 };
  return [
    ...PANE_FILES.map((name) => ({ ...fileLine(name), what: `The pane: ${name}` })),
    { ...sizeLine("The pane with the functions, in all", plain, all), held },
  ];
}

async function sheetLines(): Promise<BenchLine[]> {
  const files = await firstLoad();
  return [
    ...files.map(({ name, bytes, gzipped: zipped }) => sizeLine(`The browser sheet: ${name}`, bytes, zipped)),
    sizeLine(
      "The browser sheet's first load, in all",
      sum(files.map(({ bytes }) => bytes)),
      sum(files.map(({ gzipped: zipped }) => zipped)),
    ),
  ];
}

export const sizesPart: RunPart = async () => ({
  title: "Sizes",
  about:
    "Built files in kB (1,000 bytes), as they are and gzipped at level 9. The browser sheet's files are those that a " +
    "browser asked for from opening the page until the last calculated cell was painted, in the order in which they came.",
  heads: ["kB", "gzipped, kB"],
  lines: [...paneLines(), ...ALONE.map(fileLine), ...(await sheetLines())],
});

export const registeringPart: RunPart = async () => {
  const { ours, against, ratio, quarters } = await compareRegistering(ROUNDS);
  return {
    title: "Registering the functions",
    about:
      "functions.js read, parsed and run in a new window with the official custom-functions runtime in it, until every id " +
      "of the metadata is associated; against a script that associates the same ids with functions that do nothing. " +
      `${ROUNDS} rounds in turns, no text compiled twice.`,
    heads: ["ours, ms", "empty functions, ms", "ratio", "half of the rounds"],
    lines: [
      {
        what: "Parse and register the functions bundle",
        figures: [
          ours.toFixed(1),
          against.toFixed(2),
          ratio.toFixed(0),
          quarters.map((each) => each.toFixed(0)).join(" to "),
        ],
      },
    ],
  };
};
