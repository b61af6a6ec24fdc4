/** What holds for every starter in both editions, whatever it is about. */
import { starters } from "../../src/workbooks/starters";
import type { Workbook } from "../../src/workbooks/model";
import { finish, type Finished } from "../../tools/starters/finish";
import { openHeadless } from "../../tools/starters/headlessSheet";
import { onSheet } from "../../src/workbooks/addresses";
import { plainTwin, withOurFunctions, type LaidWorkbook } from "../../tools/starters/layOut";
import { followingCells, withMovedInputs } from "../rig/movedInputs";
import { formulasInIronCalc } from "../rig/wholeWorkbook";

const KINDS = starters.flatMap((kind) =>
  (["us", "metric"] as const).map((edition) => [kind.id, edition, kind] as const),
);

/** A laid-out workbook as one to be opened again. */
function asWorkbook({ workbook, sheets }: LaidWorkbook): Workbook {
  return {
    ...workbook,
    sheets: sheets.map(({ sheet, cells }) => ({
      ...sheet,
      cells: Object.fromEntries(
        [...cells].map(([address, { look, formula, value }]) => [
          address,
          formula !== undefined ? { ...look, formula } : value !== undefined ? { ...look, value } : look,
        ]),
      ),
    })),
  };
}

/** Below it a number is what rounding left of 0. */
const DUST = 1e-3;

function isSame(found: unknown, wanted: unknown): boolean {
  if (typeof found !== "number" || typeof wanted !== "number") return (found ?? "") === (wanted ?? "");
  return Math.abs(found - wanted) <= 1e-9 * Math.max(Math.abs(found), Math.abs(wanted), DUST);
}

describe.each(KINDS)("%s, %s", (_id, edition, kind) => {
  let laid: LaidWorkbook;
  let twin: LaidWorkbook;
  beforeAll(() => {
    const finished = finish(kind.build(edition).workbook);
    laid = withOurFunctions(finished);
    twin = plainTwin(finished);
  });

  test("gives the same in the form of the file, a formula a cell, as with tables that spill", () => {
    const headless = openHeadless(asWorkbook(laid));
    const different = laid.sheets.flatMap(({ sheet, cells }) =>
      [...cells]
        .filter(([, { formula }]) => formula !== undefined)
        .filter(([address, { value }]) => !isSame(headless.value(onSheet(sheet.name, address)), value))
        .map(([address]) => `${sheet.name}!${address}`),
    );
    expect(different).toEqual([]);
  });

  test("has a plain twin without a function of ours", () => {
    const formulas = twin.sheets.flatMap(({ cells }) => [...cells.values()].map(({ formula }) => formula ?? ""));
    expect(formulas.filter((formula) => /CANYARD|_xldudf_/i.test(formula))).toEqual([]);
  });

  test("has a twin that another engine works to the same when the inputs move, but for the values it says it carries", () => {
    const moved = finish(withMovedInputs(kind.build(edition).workbook, MOVED_BY));
    const worked = formulasInIronCalc(withInputsOf(twin, withOurFunctions(moved)));
    const following = followingCells(twin, carriedBy(twin, laid));
    const different = [...following].filter((place) => !isSame(worked.get(place), valueAt(moved, place)));
    expect(following.size).toBeGreaterThan(FEWEST_FOLLOWING);
    expect(different.map((place) => `${place} is ${worked.get(place)}, not ${valueAt(moved, place)}`)).toEqual([]);
  });
});

const MOVED_BY = 0.8;
/** A twin with fewer formulas that follow its inputs than this would be no workbook. */
const FEWEST_FOLLOWING = 20;

/** Cells that are worked in the one and only a value in the other. */
function carriedBy(twin: LaidWorkbook, ours: LaidWorkbook): ReadonlySet<string> {
  return new Set(
    ours.sheets.flatMap(({ sheet, cells }, at) =>
      [...cells]
        .filter(
          ([address, { formula }]) =>
            formula !== undefined && twin.sheets[at]!.cells.get(address)?.formula === undefined,
        )
        .map(([address]) => `${sheet.name}!${address}`),
    ),
  );
}

function withInputsOf(twin: LaidWorkbook, moved: LaidWorkbook): LaidWorkbook {
  return {
    ...twin,
    sheets: twin.sheets.map((sheet, at) => ({
      ...sheet,
      cells: new Map(
        [...sheet.cells].map(([address, cell]) => [
          address,
          cell.look.style === "input" ? (moved.sheets[at]!.cells.get(address) ?? cell) : cell,
        ]),
      ),
    })),
  };
}

function valueAt({ sheets }: Finished, place: string): unknown {
  const [, name, address] = /^(.+)!(.+)$/.exec(place)!;
  return sheets.find((sheet) => sheet.name === name)!.values.get(address!);
}
