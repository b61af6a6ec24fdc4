/** An .xlsx file as a workbook of this page, with a list in words of what could not be carried over. */
import { unzipSync } from "fflate";
import type { SheetAdapter } from "../adapter";

import type { Engine, EngineData, EngineSheet } from "../engine";
import { chartDefinition } from "../renderChart";
import type { NamedWorkbook } from "../workbookFile";
import { differences } from "./differences";
import { engineWarnings, missingFunctions, missingParts } from "./leftOut";
import type { FileSheet, FileWorkbook, PlacedChart } from "./readParts";
import { readParts, UnreadableFile } from "./readParts";
import { joinParts } from "./spills";

export { UnreadableFile };

export interface OpenedFile {
  readonly workbook: NamedWorkbook;
  /** What is left out or different; asked for when the workbook is open, because only then its cells have values. */
  leftOut(sheet: SheetAdapter): string[];
}

const DAMAGED = "Parts of it are missing or damaged, or it is locked with a password.";
/** What this page can still hold; a few bytes can unpack to fill the memory. */
const MOST_BYTES = 150_000_000;

export function openXlsx(engine: Engine, bytes: Uint8Array, name: string): OpenedFile {
  const file = readParts(unpacked(bytes));
  const { data, warnings } = engineData(engine, file);
  const sheets = file.sheets.flatMap((sheet) => {
    const theirs = data.sheets.find((each) => each.name === sheet.name);
    return theirs ? [completed(theirs, sheet)] : [];
  });
  if (sheets.length === 0) throw new UnreadableFile("It holds no sheet of cells.");
  const before = [...missingParts(file, sheets), ...engineWarnings(warnings), ...missingFunctions(engine, sheets)];
  return {
    workbook: { name, data: { ...data, sheets, namedRanges: file.names } },
    leftOut: (sheet) => [...before, ...differences(file.sheets, sheet)],
  };
}

function unpacked(bytes: Uint8Array): Record<string, Uint8Array> {
  let size = 0;
  try {
    return unzipSync(bytes, {
      filter: ({ originalSize }) => {
        size += originalSize;
        if (size > MOST_BYTES) throw new UnreadableFile("It is too large for this page.");
        return true;
      },
    });
  } catch (error) {
    throw error instanceof UnreadableFile ? error : new UnreadableFile(DAMAGED);
  }
}

/** The engine tells what it leaves out on the console only. */
function engineData(engine: Engine, { parts }: FileWorkbook): { data: EngineData; warnings: string[] } {
  const { warn } = console;
  const warnings: string[] = [];
  console.warn = (text: unknown) => void warnings.push(String(text));
  try {
    return { data: engine.load(parts, true), warnings };
  } catch (error) {
    console.error(error);
    throw new UnreadableFile(DAMAGED);
  } finally {
    console.warn = warn;
  }
}

type Figure = { readonly id: string; readonly tag: string; readonly col: number; readonly row: number };
type Rule = { readonly ranges: readonly string[] };

function completed(theirs: EngineSheet, ours: FileSheet): EngineSheet {
  const rules = (theirs["dataValidationRules"] ?? []) as readonly Rule[];
  return {
    ...theirs,
    cells: joinParts(textsOf(theirs["cells"])),
    dataValidationRules: rules.map((rule) => {
      const { message, whole } = ours.rules.find(({ ranges }) => ranges.join() === rule.ranges.join()) ?? {};
      return { ...rule, ...(message && { message }), ...(whole && { whole }) };
    }),
    figures: figuresOf((theirs["figures"] ?? []) as readonly Figure[], ours.charts, theirs.id),
  };
}

function textsOf(cells: unknown): Record<string, string> {
  const entries = Object.entries(cells as Record<string, unknown>);
  return Object.fromEntries(entries.flatMap(([at, content]) => (typeof content === "string" ? [[at, content]] : [])));
}

/** The engine reads charts too, though without their axes' titles, lines over columns and unseen bars. */
function figuresOf(theirs: readonly Figure[], charts: readonly PlacedChart[], sheetId: string): object[] {
  return theirs.map((figure, index) => {
    const ours = charts.find(({ column, row }) => column === figure.col && row === figure.row)?.chart;
    if (figure.tag !== "chart" || !ours) return figure;
    const id = `${sheetId}-chart${index + 1}`;
    return { ...figure, id, data: { chartId: id, ...chartDefinition(ours) } };
  });
}
