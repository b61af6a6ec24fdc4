/**
 * Each starter file as LibreOffice opens it: the values that come with it are shown, it prints one page wide with its
 * charts drawn, and its plain twin, worked anew, gives the same numbers.
 */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { finish } from "../../tools/starters/finish";
import { finishedStarters, type FinishedStarter } from "../../tools/starters/make";
import { seriesColours } from "../../src/workbooks/chartXml";
import { plainTwin, withOurFunctions, type LaidSheet, type LaidWorkbook } from "../../tools/starters/layOut";
import { xlsxOf } from "../../tools/starters/xlsx";
import type { Chart, Series } from "../../src/workbooks/model";
import { starters } from "../../src/workbooks/starters";
import { Office, pagesOfColours, pagesOfText, readBytes } from "../rig/office";
import { potsAndDays } from "../rig/potsAndDays";
import { partsOf, sheetsOf, type StoredSheet } from "../rig/xlsxReader";

const WITHIN = 1e-9;
/** Below it a number is what rounding left of 0. */
const DUST = 1e-3;

interface File {
  readonly name: string;
  readonly laid: LaidWorkbook;
}

const NAMES = starters.flatMap(({ id }) => ["us", "metric"].map((edition) => `${id}-${edition}`));
const FILES = NAMES.flatMap((name) => [name, `${name}-plain`]);
const PLAIN = NAMES.map((name) => `${name}-plain`);

const office = new Office();
const files = new Map<string, File>();
let shown: ReadonlyMap<string, string>;
let worked: ReadonlyMap<string, string>;
let printed: ReadonlyMap<string, string>;

beforeAll(async () => {
  const bytes: Record<string, Uint8Array> = {};
  for (const { name, starter, finished } of finishedStarters()) {
    for (const file of bothFiles(name, finished)) {
      files.set(file.name, file);
      bytes[`${file.name}.xlsx`] = await xlsxOf(file.laid, { title: file.name, edition: starter.edition });
    }
  }
  const paths = office.write("made", bytes);
  shown = office.convert(paths, "xlsx", "never", "shown");
  printed = office.convert(paths, "pdf", "never", "printed");
  const plainPaths = paths.filter((path) => path.endsWith("-plain.xlsx"));
  worked = office.convert(plainPaths, "xlsx", "always", "worked");
});
afterAll(() => office.close());

function bothFiles(name: string, finished: FinishedStarter["finished"]): readonly File[] {
  return [
    { name, laid: withOurFunctions(finished) },
    { name: `${name}-plain`, laid: plainTwin(finished) },
  ];
}

function readBack(path: string): readonly StoredSheet[] {
  return sheetsOf(partsOf(readBytes(path)));
}

/** Where a file, as LibreOffice has it, differs from what we put there. */
function differences(sheets: readonly StoredSheet[], { sheets: laid }: LaidWorkbook): readonly string[] {
  return laid.flatMap(({ sheet, cells }) => {
    const stored = sheets.find(({ name }) => name === sheet.name)!.cells;
    return [...cells].flatMap(([address, { value = "" }]) => {
      const found = stored.get(address)?.value ?? "";
      return isSame(found, value) ? [] : [`${sheet.name}!${address} is ${found} instead of ${value}`];
    });
  });
}

function isSame(found: unknown, wanted: unknown): boolean {
  if (typeof found !== "number" || typeof wanted !== "number") return found === wanted;
  return Math.abs(found - wanted) <= WITHIN * Math.max(Math.abs(found), Math.abs(wanted), DUST);
}

describe.each(FILES)("%s.xlsx in LibreOffice", (name) => {
  test("shows the values that came with it", () => {
    expect(differences(readBack(shown.get(name)!), files.get(name)!.laid)).toEqual([]);
  });

  test("has no cell in error", () => {
    const faulty = readBack(shown.get(name)!).flatMap((sheet) =>
      [...sheet.cells].filter(([, { error }]) => error !== null).map(([address]) => `${sheet.name}!${address}`),
    );
    expect(faulty).toEqual([]);
  });

  test("prints every sheet one page wide", () => {
    const pages = pagesOfText(printed.get(name)!);
    const apart = files.get(name)!.laid.sheets.flatMap((sheet) => rowsApart(sheet, pages));
    expect(apart).toEqual([]);
  });

  test("draws every series of every chart", () => {
    expect(seriesNotDrawn(files.get(name)!.laid, printed.get(name)!)).toEqual([]);
  });
});

/** Series whose colour, or name in the legend, is missing from the page on which the chart's title stands. */
function seriesNotDrawn({ sheets }: LaidWorkbook, pdf: string): readonly string[] {
  const text = pagesOfText(pdf);
  const colours = pagesOfColours(pdf);
  return sheets.flatMap(({ sheet }) =>
    (sheet.charts ?? []).flatMap((chart) => {
      const title = chart.title.replace(/\s+/g, "");
      const at = text.findIndex((page) => endsAs(page, sheet.name) && page.includes(title));
      if (at < 0) return [`${sheet.name}: no chart ${chart.title}`];
      const wanted = seriesColours(chart);
      const isSeen = (index: number): boolean => wanted[index] !== null;
      const isNamed = ({ name }: Series): boolean => isAlone(chart) || text[at]!.includes(name.replace(/\s+/g, ""));
      const isDrawn = (index: number): boolean => (colours[at]!.get(wanted[index]!) ?? 0) >= FEWEST_PIXELS;
      return chart.series
        .filter((series, index) => isSeen(index) && !(isDrawn(index) && isNamed(series)))
        .map((series) => `${sheet.name}: ${chart.title} lacks ${series.name}`);
    }),
  );
}

/** Without a legend. */
function isAlone({ series }: Chart): boolean {
  return series.filter(({ unseen }) => !unseen).length === 1;
}

/** More than the sample in a legend has. */
const FEWEST_PIXELS = 30;

/** The footer has the sheet's name and the number of the page; words of a chart may come between. */
function endsAs(page: string, sheet: string): boolean {
  return new RegExp(`${sheet.replace(/\s+/g, "")}.{0,12}?\\d+of\\d+$`).test(page);
}

/** Rows of which no page shows both the first words and the last. */
function rowsApart({ sheet, cells }: LaidSheet, pages: readonly string[]): readonly string[] {
  const own = pages.filter((page) => endsAs(page, sheet.name));
  const rows = new Map<number, string[]>();
  for (const [address, { value }] of cells) {
    const row = Number(address.replace(/[A-Z]+/, ""));
    if (typeof value === "string" && value !== "") rows.set(row, [...(rows.get(row) ?? []), value]);
  }
  return [...rows]
    .filter(([, texts]) => {
      // A narrow cell may break a word.
      const words = [texts[0]!, texts.at(-1)!].map((text) => text.split(/\s+/)[0]!.slice(0, 3));
      return !own.some((page) => words.every((word) => page.includes(word)));
    })
    .map(([row]) => `${sheet.name} row ${row}`);
}

describe.each(PLAIN)("%s.xlsx, worked anew by LibreOffice", (name) => {
  test("gives the same numbers to 1e-9", () => {
    expect(differences(readBack(worked.get(name)!), files.get(name)!.laid)).toEqual([]);
  });
});

describe("how LibreOffice is asked", () => {
  // By hand: pi x 10.5 / 12 x (16^2 + 16 x 12 + 12^2) / 231 with the top diameter 16 instead of 14.
  const CHANGED = (Math.PI * 10.5 * (16 ** 2 + 16 * 12 + 12 ** 2)) / 12 / 231;
  const AS_MADE = (Math.PI * 10.5 * (14 ** 2 + 14 * 12 + 12 ** 2)) / 12 / 231;
  const facts = { title: "Pots and days", edition: "us" } as const;

  /** The plain twin of a small workbook, an input changed in the file after it was made. */
  async function changedFile(): Promise<readonly string[]> {
    const parts = unzipSync(await xlsxOf(plainTwin(finish(potsAndDays)), facts));
    const inputs = "xl/worksheets/sheet1.xml";
    const changed = strFromU8(parts[inputs]!).replace(/(<c r="B5"[^>]*><v>)14(<\/v>)/, "$116$2");
    return office.write("changed", { "changed.xlsx": zipSync({ ...parts, [inputs]: strToU8(changed) }) });
  }

  test.each([
    ["never", AS_MADE],
    ["always", CHANGED],
  ] as const)("worked anew %s, a formula follows an input changed in the file accordingly", async (mode, wanted) => {
    const made = office.convert(await changedFile(), "xlsx", mode, `changed-${mode}`).get("changed")!;
    const [inputs, work] = readBack(made);
    expect(inputs!.cells.get("B5")?.value).toBe(16);
    expect(work!.cells.get("B5")?.value).toBeCloseTo(wanted, 9);
  });

  test("a sheet two pages wide would be noticed", async () => {
    const laid = withOurFunctions(finish(potsAndDays));
    const parts = unzipSync(await xlsxOf(laid, facts));
    const work = "xl/worksheets/sheet2.xml";
    const unfitted = strFromU8(parts[work]!).replace('<pageSetUpPr fitToPage="1"/>', "");
    const paths = office.write("wide", { "wide.xlsx": zipSync({ ...parts, [work]: strToU8(unfitted) }) });
    const pages = pagesOfText(office.convert(paths, "pdf", "never", "wide-printed").get("wide")!);
    expect(rowsApart(laid.sheets[1]!, pages)).not.toEqual([]);
  });

  test("charts of every kind are drawn, each series in its colour", async () => {
    const laid = withOurFunctions(finish(potsAndDays));
    const paths = office.write("kinds", { "kinds.xlsx": await xlsxOf(laid, facts) });
    expect(seriesNotDrawn(laid, office.convert(paths, "pdf", "never", "kinds-printed").get("kinds")!)).toEqual([]);
  });
});
