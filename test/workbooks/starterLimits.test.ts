/** Every input of every starter at each of its limits: an answer or a sentence of ours in every cell. */
import * as functions from "../../src/functions";
import type { Sheet, Workbook } from "../../src/workbooks/model";
import { createHeadlessSheet, type HeadlessSheet } from "../rig/sheetEngine";
import { isError, STARTER_CASES, workedCells } from "../rig/workedCells";

const { open } = createHeadlessSheet(functions);

test.each(STARTER_CASES)(
  "$title: every input at its limits gives an answer or a sentence of ours",
  ({ kind, edition }) => {
    const { workbook } = kind.build(edition);
    const sheet = open(workbook);
    const wrong = workbook.sheets.flatMap((each) =>
      (each.validations ?? []).flatMap((validation) => wrongAtLimits(workbook, sheet, each, validation)),
    );
    expect(wrong.slice(0, 20)).toEqual([]);
  },
);

type Allowed = NonNullable<Sheet["validations"]>[number];

/** Puts the first cell of a validation to each of its limits, and tells the cells that are then in error without a sentence of ours. */
function wrongAtLimits(workbook: Workbook, sheet: HeadlessSheet, { name, cells }: Sheet, allowed: Allowed): string[] {
  const first = allowed.range.replaceAll("$", "").split(":")[0]!;
  const address = `'${name}'!${first}`;
  const before = sheet.value(address);
  if (cells[first]?.style !== "input" || before === null) return [];
  const wrong = valuesOf(allowed)
    .filter((value) => value !== before)
    .flatMap((value) => {
      sheet.set(address, value);
      return workedCells(workbook, sheet)
        .filter((cell) => isError(cell) && !/^[A-Z][A-Z0-9_]+: .+/.test(cell.message ?? ""))
        .map((cell) => `${address} = ${value}: ${cell.address} is ${String(cell.value)} (${cell.message})`);
    });
  if (sheet.value(address) !== before) sheet.set(address, before);
  return wrong;
}

function valuesOf(validation: Allowed): readonly (number | string)[] {
  if ("words" in validation) return validation.words;
  if ("list" in validation) return [];
  return [validation.least, validation.most];
}
