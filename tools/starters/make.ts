/** Every starter in both editions: as .xlsx files with their plain twins, and as data for the pages. */
import { existsSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Edition, Starter } from "../../src/workbooks/kit";
import type { Workbook } from "../../src/workbooks/model";
import { starters } from "../../src/workbooks/starters";
import { finish, type Finished } from "./finish";
import { plainTwin, withOurFunctions } from "./layOut";
import { pagesOf } from "./pages";
import { xlsxOf } from "./xlsx";

const EDITIONS: readonly Edition[] = ["us", "metric"];

export interface FinishedStarter {
  readonly starter: Starter;
  /** The files' name without its ending: "zone-planner-us". */
  readonly name: string;
  readonly finished: Finished;
}

export function finishedStarters(): readonly FinishedStarter[] {
  return starters.flatMap((kind) =>
    EDITIONS.map((edition) => {
      const starter = kind.build(edition);
      const name = `${kind.id}-${edition}`;
      try {
        return { starter, name, finished: finish(starter.workbook) };
      } catch (thrown) {
        throw new Error(`${name}: ${(thrown as Error).message}`);
      }
    }),
  );
}

/** Returns the files' names. */
export async function makeWorkbooks(
  folder: string,
  made: readonly FinishedStarter[] = finishedStarters(),
): Promise<readonly string[]> {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  const names: string[] = [];
  for (const { starter, name, finished } of made) {
    const title = starter.workbook.name;
    const { edition } = starter;
    const files = [
      [`${name}.xlsx`, await xlsxOf(withOurFunctions(finished), { title, edition })],
      [`${name}-plain.xlsx`, await xlsxOf(plainTwin(finished), { title: `${title}, plain`, edition })],
    ] as const;
    for (const [file, bytes] of files) {
      writeFileSync(join(folder, file), bytes);
      names.push(file);
    }
  }
  return names;
}

/** What the pages fetch when a starter is asked for, and the list to choose from. */
export function makeData(folder: string, made: readonly FinishedStarter[] = finishedStarters()): void {
  mkdirSync(folder, { recursive: true });
  const write = (name: string, data: object): void => writeFileSync(join(folder, `${name}.json`), JSON.stringify(data));
  const list = starters.map(({ id, title, purpose }) => {
    const editions = made.filter(({ starter }) => starter.id === id);
    const sheets = editions[0]?.finished.workbook.sheets.map(({ name }) => name) ?? [];
    const files = editions.every(({ name }) => existsSync(join(folder, `${name}.xlsx`)));
    return { id, title, purpose, editions: EDITIONS, sheets, files };
  });
  write("index", list);
  for (const { starter, name, finished } of made) {
    const { id, edition, title, purpose } = starter;
    write(name, { id, edition, title, purpose, workbook: withPages(finished, edition) });
  }
}

/** Each sheet with how it falls onto pages, for a host that prints. */
function withPages(finished: Finished, edition: Edition): Workbook {
  const laid = withOurFunctions(finished).sheets;
  const sheets = finished.workbook.sheets.map((sheet, at) => {
    const { isOne, breaksBefore } = pagesOf(laid[at]!, edition);
    const pages = isOne ? { onePage: true as const } : { breaksBefore };
    return { ...sheet, print: { ...sheet.print, ...pages } };
  });
  return { ...finished.workbook, sheets };
}
