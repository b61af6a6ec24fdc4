/** Adds the sheets of a starter to the workbook that is open in Excel. Nothing that is there is touched. */
import type { Edition } from "../../workbooks/kit";
import { freeNames } from "../../workbooks/freeNames";
import { renameSheets } from "../../workbooks/renameSheets";
import type { Sheet, Workbook } from "../../workbooks/model";
import { placeOf } from "../reference";
import type { StarterWorkbook } from "../sheetHost";
import { addressOf } from "./blocks";
import { describeForReaders, draw, type Drawing } from "./charts";
import { contentsOf } from "./contents";
import { colourChecks, dress, freeze } from "./dress";
import { limit, type RangeOf } from "./limits";
import { isSupported, isWithoutUndo, type Part, type Supports } from "./parts";
import { setUpPrinting } from "./printing";

/** What is taken away again when something fails: sheets that Excel has confirmed, and names that were free before. */
export interface Added {
  readonly sheets: { readonly id: string; readonly name: string }[];
  readonly names: string[];
}

interface New {
  readonly sheet: Sheet;
  readonly target: Excel.Worksheet;
}

/** Gives the parts that this Excel could not make. */
export async function addSheets(
  context: Excel.RequestContext,
  { workbook, edition }: StarterWorkbook,
  supports: Supports,
  added: Added,
): Promise<readonly Part[]> {
  const renamed = renameSheets(workbook, freeNames(workbook, await taken(context)));
  const all = await newSheets(context, renamed, added);
  const [first] = all;
  if (first === undefined) return [];
  const rangesOn = rangesOf(all);
  await nameCells(context, renamed, rangesOn(first.target), added);
  await fill(context, all, supports, rangesOn);
  const drawings = all.flatMap(({ sheet, target }) =>
    (sheet.charts ?? []).map((chart): Drawing => ({ chart, on: target, rangeOf: rangesOn(target) })),
  );
  if (isSupported("charts", supports)) await draw(context, drawings, supports);
  const optional: Readonly<Partial<Record<Part, () => Promise<boolean>>>> = {
    ...(drawings.length > 0 && { chartDescriptions: () => describeForReaders(context, drawings) }),
    printing: () => printing(context, all, edition),
  };
  const leftOut = await attempt(optional, supports);
  first.target.activate();
  await context.sync();
  return [...partsOf(renamed).filter((part) => !isSupported(part, supports)), ...leftOut];
}

/** Parts that are worth having, and no reason to give up the rest. */
async function attempt(
  optional: Readonly<Partial<Record<Part, () => Promise<boolean>>>>,
  supports: Supports,
): Promise<readonly Part[]> {
  const refused: Part[] = [];
  for (const [part, work] of Object.entries(optional) as [Part, () => Promise<boolean>][]) {
    if (!isSupported(part, supports)) continue;
    const isMade = await work().catch((error: unknown) => {
      if (isWithoutUndo(error)) throw error;
      return false;
    });
    if (!isMade) refused.push(part);
  }
  return refused;
}

async function printing(context: Excel.RequestContext, all: readonly New[], edition: Edition): Promise<boolean> {
  for (const { sheet, target } of all) setUpPrinting(target, sheet, edition);
  await context.sync();
  return true;
}

/** The parts that a workbook asks for. */
function partsOf({ sheets }: Workbook): readonly Part[] {
  const some = (has: (sheet: Sheet) => boolean): boolean => sheets.some(has);
  const hasCharts = some(({ charts = [] }) => charts.length > 0);
  const wanted: Readonly<Record<Part, boolean>> = {
    checkColours: some(({ cells }) => Object.values(cells).some(({ style }) => style === "check")),
    frozenPanes: some(({ frozen = {} }) => (frozen.rows ?? 0) + (frozen.columns ?? 0) > 0),
    charts: hasCharts,
    limits: some(({ validations = [] }) => validations.length > 0),
    printing: true,
    chartDescriptions: hasCharts,
  };
  return (Object.keys(wanted) as Part[]).filter((part) => wanted[part]);
}

async function taken(context: Excel.RequestContext): Promise<{ sheets: string[]; names: string[] }> {
  const { worksheets, names, tables } = context.workbook;
  worksheets.load("items/name");
  names.load("items/name");
  tables.load("items/name");
  await context.sync();
  const namesIn = (items: readonly { readonly name: string }[]): string[] => items.map(({ name }) => name);
  return { sheets: namesIn(worksheets.items), names: [...namesIn(names.items), ...namesIn(tables.items)] };
}

/** One after the other, so that it is known of each whether it was added. */
async function newSheets(context: Excel.RequestContext, workbook: Workbook, added: Added): Promise<readonly New[]> {
  const all: New[] = [];
  for (const sheet of workbook.sheets) {
    const target = context.workbook.worksheets.add(sheet.name);
    target.load("id");
    await context.sync();
    added.sheets.push({ id: target.id, name: sheet.name });
    all.push({ sheet, target });
  }
  return all;
}

/** A reference of the workbook as a range, on a sheet of its own where it names none. */
function rangesOf(all: readonly New[]): (home: Excel.Worksheet) => RangeOf {
  const byName = new Map(all.map(({ sheet, target }) => [sheet.name, target]));
  return (home) => (reference) => {
    const place = placeOf(reference);
    const target = place === null ? undefined : place.sheet === null ? home : byName.get(place.sheet);
    if (place === null || target === undefined) throw new Error(`there is no ${reference} in this workbook`);
    return target.getRange(place.range.replaceAll("$", ""));
  };
}

async function nameCells(
  context: Excel.RequestContext,
  { namedRanges = {} }: Workbook,
  rangeOf: RangeOf,
  added: Added,
): Promise<void> {
  for (const [name, reference] of Object.entries(namedRanges)) {
    added.names.push(name);
    context.workbook.names.add(name, rangeOf(reference));
  }
  await context.sync();
}

/** Everything of the cells in one go, and worked out once. */
async function fill(
  context: Excel.RequestContext,
  all: readonly New[],
  supports: Supports,
  rangesOn: (home: Excel.Worksheet) => RangeOf,
): Promise<void> {
  if (supports("1.6")) context.workbook.application.suspendApiCalculationUntilNextSync();
  for (const { sheet, target } of all) {
    const { block, entries, formats, spilling } = contentsOf(sheet);
    const range = target.getRange(addressOf(block));
    range.formulas = entries as unknown[][];
    range.numberFormat = formats as string[][];
    for (const [address, formula] of Object.entries(spilling)) target.getRange(address).formulas = [[formula]];
    dress(target, sheet);
    range.format.autofitRows();
    if (isSupported("checkColours", supports)) colourChecks(target, sheet);
    if (isSupported("frozenPanes", supports)) freeze(target, sheet);
    if (!isSupported("limits", supports)) continue;
    const rangeOf = rangesOn(target);
    for (const validation of sheet.validations ?? []) limit(rangeOf(validation.range), validation, rangeOf);
  }
  await context.sync();
}

/** Sheets by their ids: their names may be others' by now. */
export async function takeAway(context: Excel.RequestContext, { sheets, names }: Added): Promise<void> {
  const { worksheets, names: named } = context.workbook;
  const items = [
    ...names.map((name) => named.getItemOrNullObject(name)),
    ...sheets.map(({ id }) => worksheets.getItemOrNullObject(id)),
  ];
  for (const item of items) item.load("isNullObject");
  await context.sync();
  for (const item of items) if (!item.isNullObject) item.delete();
  await context.sync();
}
