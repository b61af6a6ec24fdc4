/** A workbook with other names for its sheets and its named cells; whatever refers to them follows. */
import type { Cell, Chart, Growing, Sheet, Validation, Workbook } from "./model";
import { isFormula, isTable, isValue } from "./model";

export interface NewNames {
  /** By the present name; a sheet that is missing here keeps its name. */
  readonly sheets: Readonly<Record<string, string>>;
  readonly names: Readonly<Record<string, string>>;
}

type Follow = (text: string) => string;

/** A text in quotation marks; a sheet before its `!`, in apostrophes or bare; a function before its bracket; a name. */
const PARTS = /"(?:[^"]|"")*"|'((?:[^']|'')+)'!|([\p{L}_][\p{L}\p{N}_.]*)(!|\()?/gu;

/** How a formula or a reference reads with the new names. */
export function follower({ sheets, names }: NewNames): Follow {
  const [newSheet, newName] = [byLowerCase(sheets), byLowerCase(names)];
  const renamed = (part: string, quoted?: string, bare = "", sign?: string): string => {
    const sheet = quoted?.replaceAll("''", "'") ?? (sign === "!" ? bare : undefined);
    if (sheet === undefined) return sign === undefined ? (newName(bare) ?? part) : part;
    const other = newSheet(sheet);
    return other === undefined ? part : `'${other.replaceAll("'", "''")}'!`;
  };
  return (text) => text.replace(PARTS, renamed);
}

function byLowerCase(names: Readonly<Record<string, string>>): (name: string) => string | undefined {
  const known = new Map(Object.entries(names).map(([name, other]) => [name.toLowerCase(), other]));
  return (name) => known.get(name.toLowerCase());
}

export function renameSheets(workbook: Workbook, newNames: NewNames): Workbook {
  const follow = follower(newNames);
  const { namedRanges, growing } = workbook;
  return {
    ...workbook,
    sheets: workbook.sheets.map((sheet) => ({
      ...renamedSheet(sheet, follow),
      name: newNames.sheets[sheet.name] ?? sheet.name,
    })),
    ...(namedRanges && {
      namedRanges: Object.fromEntries(
        Object.entries(namedRanges).map(([name, range]) => [newNames.names[name] ?? name, follow(range)]),
      ),
    }),
    ...(growing && { growing: renamedGrowing(growing, follow) }),
  };
}

function renamedSheet(sheet: Sheet, follow: Follow): Sheet {
  const { validations, charts } = sheet;
  return {
    ...sheet,
    cells: Object.fromEntries(Object.entries(sheet.cells).map(([at, cell]) => [at, renamedCell(cell, follow)])),
    ...(validations && { validations: validations.map((each) => renamedValidation(each, follow)) }),
    ...(charts && { charts: charts.map((each) => renamedChart(each, follow)) }),
  };
}

/** Words that explain a cell end with its formula. */
const PLAIN_FORMULA = /(plain: )(=.*)$/s;

function renamedCell(cell: Cell, follow: Follow): Cell {
  if (isFormula(cell)) {
    const { formula, plain } = cell;
    return { ...cell, formula: follow(formula), ...(plain !== undefined && { plain: follow(plain) }) };
  }
  if (isTable(cell)) {
    const { table, plain } = cell;
    return { ...cell, table: follow(table), ...(plain && { plain: plain.map((row) => row.map(follow)) }) };
  }
  if (isValue(cell) && typeof cell.value === "string") {
    return {
      ...cell,
      value: cell.value.replace(PLAIN_FORMULA, (_, before: string, formula: string) => before + follow(formula)),
    };
  }
  return cell;
}

function renamedValidation(validation: Validation, follow: Follow): Validation {
  return "list" in validation ? { ...validation, list: follow(validation.list) } : validation;
}

function renamedChart(chart: Chart, follow: Follow): Chart {
  return {
    ...chart,
    labels: follow(chart.labels),
    series: chart.series.map((series) => ({ ...series, values: follow(series.values) })),
  };
}

function renamedGrowing(growing: Growing, follow: Follow): Growing {
  return { ...growing, inputs: follow(growing.inputs), following: growing.following.map(follow) };
}
