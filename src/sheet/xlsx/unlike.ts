/** Opens a file that was just made and compares it with the workbook that it was made from, formula by formula. */
import type { Engine, EngineModel, FormulaNode } from "../engine";
import { openXlsx } from "./open";
import { counted } from "./wordsFor";

const QUOTED_OR_CALL = /"(?:[^"]|"")*"|'(?:[^']|'')*'|([A-Z_][\w.]*)\s*\(/gi;

/** In words, which formulas the file does not hold as they stand here, and which functions Excel does not have. */
export function unlikeOpen(engine: Engine, model: EngineModel, bytes: Uint8Array): string[] {
  const { getters } = model;
  const saved = new Map(openXlsx(engine, bytes, "").workbook.data.sheets.map((sheet) => [sheet.name, sheet["cells"]]));
  const changed: string[] = [];
  const foreign = new Set<string>();
  for (const sheetId of getters.getSheetIds()) {
    const name = getters.getSheetName(sheetId);
    const cells = saved.get(name) as Readonly<Record<string, string>> | undefined;
    for (const { id, isFormula } of getters.getCells(sheetId)) {
      if (!isFormula) continue;
      const position = getters.getCellPosition(id);
      const address = engine.helpers.toXC(position.col, position.row);
      const formula = getters.getCellText(position, { showFormula: true });
      if (meaning(engine, formula) !== meaning(engine, cells?.[address] ?? "")) changed.push(`${name}!${address}`);
      for (const called of callsIn(formula)) if (!isInExcel(engine, called)) foreign.add(called);
    }
  }
  return [
    ...(changed.length > 0
      ? [`${counted(changed.length, "formula")} could not be written as here, the first in ${changed[0]!}.`]
      : []),
    ...[...foreign].map(
      (called) =>
        `${called} is a function that Excel does not have: its formulas are kept and may show an error there.`,
    ),
  ];
}

function callsIn(formula: string): string[] {
  return [...formula.matchAll(QUOTED_OR_CALL)].flatMap(([, called]) => (called ? [called.toUpperCase()] : []));
}

function isInExcel(engine: Engine, called: string): boolean {
  const { functionRegistry } = engine.registries;
  return !functionRegistry.contains(called) || functionRegistry.get(called).isExported === true;
}

/** The same for formulas that differ in spaces, small letters and brackets without effect only. */
function meaning(engine: Engine, formula: string): string {
  if (!formula.startsWith("=")) return formula;
  try {
    return JSON.stringify(bare(engine.parse(formula)));
  } catch {
    return formula.replace(/\s/g, "").toUpperCase();
  }
}

function bare({ type, value, args, left, right, operand }: FormulaNode): unknown {
  const isName = type === "FUNCALL" || type === "REFERENCE" || type === "SYMBOL";
  const parts = [...(args ?? []), left, right, operand].filter((part) => part !== undefined);
  return [type, isName ? String(value).toUpperCase().replaceAll("'", "") : value, ...parts.map(bare)];
}
