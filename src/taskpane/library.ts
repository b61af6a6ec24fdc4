/** The library, as the functions bundle put it on the page: no text of it is shipped twice. */
import type * as Bundle from "../functions";

export type Library = typeof Bundle;
export type FunctionHelp = Library["catalogue"][number];
export type Parameter = FunctionHelp["params"][number];
export type Step = ReturnType<Library["working"]>[number];
export type Argument = Parameters<Library["call"]>[1][number];
export type Answer = ReturnType<Library["call"]>;
export type UnitSystem = "us" | "metric";

declare global {
  interface Window {
    readonly canyard?: Library;
  }
}

/** Units that say nothing beside a number. */
const SILENT_UNITS = ["count", "factor"];

/** A unit in the system shown: of "gal or L" the one that fits. */
export function unitIn(unit: string, system: UnitSystem | null): string {
  if (SILENT_UNITS.includes(unit)) return "";
  const [us = unit, metric = us] = unit.split(" or ");
  if (system === null) return unit;
  return system === "us" ? us : metric;
}

export function unitFor({ unit }: Parameter | FunctionHelp["result"], system: UnitSystem | null): string {
  return unitIn(unit, system);
}

export function takesUnits({ params }: FunctionHelp): boolean {
  return params.some(({ name }) => name === "units");
}

export interface AnswerTable {
  /** What stands in each column: a quantity, or "text". */
  readonly columns: readonly string[];
  /** Whether the first row names the columns. */
  readonly header: boolean;
}

/** How a table that a function gives is made; null for a single answer. */
export function tableOf(library: Library, name: string): AnswerTable | null {
  const result = library.find(name)?.result;
  if (result === undefined || !("table" in result)) return null;
  return { columns: result.table.map(({ quantity }) => quantity), header: result.header };
}
