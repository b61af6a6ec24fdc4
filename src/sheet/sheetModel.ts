import type { CellContent, CellReading, SheetAdapter } from "./adapter";
import type { Engine, EngineData, EngineModel, Position } from "./engine";
import { wording } from "./wording";

/** An open workbook; needs no page. */
export interface SheetModel {
  readonly adapter: SheetAdapter;
  readonly model: EngineModel;
  exportData(): EngineData;
}

/** Throws when the engine cannot make sense of the data. */
export function openSheetModel(engine: Engine, data: EngineData, onContentChange: () => void): SheetModel {
  engine.setTranslationMethod(wording);
  const transportService = new engine.LocalTransportService();
  const model = new engine.Model(data, { transportService });
  transportService.onNewMessage("canyard", ({ type }) => {
    if (!type.startsWith("CLIENT_")) onContentChange();
  });
  return { adapter: adapterOf(engine, model), model, exportData: () => model.exportData() };
}

function adapterOf(engine: Engine, model: EngineModel): SheetAdapter {
  const locate = (address: string) => positionOf(engine, model, address);
  return {
    selected() {
      const { col, row } = model.getters.getActivePosition();
      return engine.helpers.toXC(col, row);
    },
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
  const sheetId = name === undefined ? model.getters.getActiveSheetId() : model.getters.getSheetIdByName(name);
  if (sheetId === undefined) throw new Error(`there is no sheet ${name}`);
  return { sheetId, ...engine.helpers.toCartesian(parts[3]!) };
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
  const text = typeof content === "boolean" ? String(content).toUpperCase() : String(content);
  const { isSuccessful } = model.dispatch("UPDATE_CELL", { ...position, content: text });
  if (!isSuccessful) throw new Error("the sheet did not take the change");
}
