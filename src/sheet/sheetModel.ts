import type { CellContent, CellFound, CellReading, FormulaCell, SheetAdapter } from "./adapter";
import type { Engine, EngineData, EngineModel, EvaluatedCell, Position } from "./engine";
import { showOurWords } from "./guard";
import { withoutDoubledQuotes } from "./quotes";
import { wording } from "./wording";

/** An open workbook; needs no page. */
export interface SheetModel {
  readonly adapter: SheetAdapter;
  readonly model: EngineModel;
  exportData(): EngineData;
}

/** Throws when the engine cannot make sense of the data. */
export function openSheetModel(
  engine: Engine,
  data: EngineData,
  onContentChange: () => void,
  refuse: (sentence: string) => void = () => {},
): SheetModel {
  engine.setTranslationMethod(wording);
  const transportService = new engine.LocalTransportService();
  const model = new engine.Model(data, { transportService, custom: { refuse } });
  showOurWords(model);
  transportService.onNewMessage("canyard", ({ type }) => {
    if (!type.startsWith("CLIENT_")) onContentChange();
  });
  return { adapter: adapterOf(engine, model), model, exportData: () => exportData(model) };
}

/** What a browser keeps without trouble; beyond it the data are shortened, which takes a second or two. */
const LONG = 2_000_000;

/** The engine shortens its data, and fails at it where `=SUM(A1)` stands above `=SUM(B1:B2)`. */
export function exportData(model: EngineModel): EngineData {
  const whole = { ...model._exportData(false), isNotSquishable: true };
  if (JSON.stringify(whole).length < LONG) return whole;
  try {
    return model.exportData();
  } catch {
    return whole;
  }
}

function adapterOf(engine: Engine, model: EngineModel): SheetAdapter {
  const locate = (address: string) => positionOf(engine, model, address);
  return {
    selected() {
      const { col, row } = model.getters.getActivePosition();
      return engine.helpers.toXC(col, row);
    },
    selection: () => selection(engine, model),
    evaluate: (expression, sheet) => evaluate(engine, model, expression, sheetIdOf(model, sheet)),
    formulas: (sheet) => formulas(engine, model, sheetIdOf(model, sheet)),
    select: (address) => select(model, locate(address)),
    read: (address) => read(model, locate(address)),
    write: (address, content) => write(model, locate(address), content),
    watch(listener) {
      const owner = {};
      model.on("update", owner, listener);
      return () => model.off("update", owner);
    },
  };
}

function positionOf(engine: Engine, model: EngineModel, address: string): Position {
  const parts = /^(?:'((?:[^']|'')+)'!|([^'!]+)!)?(\$?[A-Za-z]{1,3}\$?[0-9]+)$/.exec(address.trim());
  if (!parts) throw new Error(`${address} is not the address of a cell`);
  const name = parts[1]?.replaceAll("''", "'") ?? parts[2];
  const sheetId = name === undefined ? model.getters.getActiveSheetId() : sheetIdOf(model, name);
  return { sheetId, ...engine.helpers.toCartesian(parts[3]!) };
}

function sheetIdOf(model: EngineModel, name: string): string {
  const sheetId = model.getters.getSheetIdByName(name);
  if (sheetId === undefined) throw new Error(`there is no sheet ${name}`);
  return sheetId;
}

function selection(engine: Engine, model: EngineModel): { sheet: string; range: string } {
  const { left, top, right, bottom } = model.getters.getSelectedZone();
  const first = engine.helpers.toXC(left, top);
  const last = engine.helpers.toXC(right, bottom);
  const sheet = model.getters.getSheetName(model.getters.getActiveSheetId());
  return { sheet, range: first === last ? first : `${first}:${last}` };
}

function evaluate(engine: Engine, model: EngineModel, expression: string, sheetId: string): CellFound[][] {
  const result = model.getters.evaluateFormulaResult(sheetId, withoutDoubledQuotes(`=${expression}`));
  const columns = Array.isArray(result) ? result : [[result]];
  return (columns[0] ?? []).map((_cell, row) => columns.map((column) => found(engine, column[row]!)));
}

function found(engine: Engine, { value, message, type }: EvaluatedCell): CellFound {
  if (value === null || type === "empty") return null;
  const isError = typeof value === "string" && Object.values(engine.CellErrorType).includes(value);
  return isError ? { code: value, message: message ? String(message) : "" } : value;
}

function formulas(engine: Engine, model: EngineModel, sheetId: string): FormulaCell[] {
  return model.getters
    .getCells(sheetId)
    .filter(({ isFormula }) => isFormula)
    .map(({ id }) => {
      const position = model.getters.getCellPosition(id);
      return {
        address: engine.helpers.toXC(position.col, position.row),
        formula: model.getters.getCellText(position, { showFormula: true }),
        found: found(engine, model.getters.getEvaluatedCell(position)),
      };
    });
}

function select(model: EngineModel, { sheetId, col, row }: Position): void {
  const sheetIdFrom = model.getters.getActiveSheetId();
  if (sheetId !== sheetIdFrom) model.dispatch("ACTIVATE_SHEET", { sheetIdFrom, sheetIdTo: sheetId });
  model.selection.selectCell(col, row);
}

function read(model: EngineModel, position: Position): CellReading {
  const { value, message, formattedValue } = model.getters.getEvaluatedCell(position);
  const isFormula = model.getters.getCell(position)?.isFormula ?? false;
  return {
    formula: isFormula ? model.getters.getCellText(position, { showFormula: true }) : null,
    value,
    shown: formattedValue,
    message: message ? String(message) : null,
  };
}

function write(model: EngineModel, position: Position, content: CellContent): void {
  const text = typeof content === "boolean" ? String(content).toUpperCase() : asTyped(String(content));
  const { isSuccessful } = model.dispatch("UPDATE_CELL", { ...position, content: text });
  if (!isSuccessful) throw new Error("the sheet did not take the change");
}

function asTyped(text: string): string {
  return text.startsWith("=") ? withoutDoubledQuotes(text) : text;
}
