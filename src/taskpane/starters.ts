/** The starter workbooks, fetched from the pane's own site when they are asked for. */
import type { Edition } from "../workbooks/kit";
import { HostFailure, type StarterWorkbook } from "./sheetHost";

/** A line of the list of starters. */
export interface StarterLine {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly editions: readonly Edition[];
  /** Names of its sheets. */
  readonly sheets: readonly string[];
  /** Whether the site has them as Excel files as well. */
  readonly files: boolean;
}

const FOLDER = "starters/";
const LIST_FAILED = "The list of workbooks did not arrive. Check the connection, then try again.";
const WORKBOOK_FAILED = "The workbook did not arrive. Check the connection, then try again.";

export function listStarters(): Promise<readonly StarterLine[]> {
  return fetched("index.json", LIST_FAILED);
}

export function fetchStarter(id: string, edition: Edition): Promise<StarterWorkbook> {
  return fetched(`${id}-${edition}.json`, WORKBOOK_FAILED);
}

async function fetched<T>(file: string, sentence: string): Promise<T> {
  try {
    const response = await fetch(FOLDER + file);
    if (!response.ok) throw new Error(`${file}: ${response.status}`);
    return (await response.json()) as T;
  } catch {
    throw new HostFailure(sentence);
  }
}

/** The workbook as a file, and its twin in built-in functions for places without this add-in. */
export function filesOf(id: string, edition: Edition): { readonly file: string; readonly plain: string } {
  return { file: `${FOLDER}${id}-${edition}.xlsx`, plain: `${FOLDER}${id}-${edition}-plain.xlsx` };
}
