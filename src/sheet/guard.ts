import type { Engine, EngineCommand, EngineModel, PluginConfig, Position, ValidationRule, Zone } from "./engine";

/** Our sentence about an edit that a cell does not take, whichever way it came. */
export const refused = (address: string, message: string): string => `${address} was not changed. ${message}`;

/** What wording.ts makes of the engine's own sentence about a refused edit. */
export const REFUSED_BY_ENGINE = refused("%s", "%s");
const ADDRESS_REFUSED = /^([A-Z]+[0-9]+) was not changed\. /;

/** The engine's sentence about a refused edit with our words in place of its own, where the cell has some. */
export function withOurWords(engine: Engine, model: EngineModel, text: string): string {
  const address = ADDRESS_REFUSED.exec(text)?.[1];
  if (address === undefined) return text;
  const position = { sheetId: model.getters.getActiveSheetId(), ...engine.helpers.toCartesian(address) };
  const message = model.getters.getValidationRuleForCell(position)?.message;
  return message === undefined ? text : refused(address, message);
}

/** What hovers over a cell that holds what it should not likewise. */
export function showOurWords(model: EngineModel): void {
  const { getters } = model;
  const theirs = getters.getInvalidDataValidationMessage.bind(getters);
  getters.getInvalidDataValidationMessage = (position) => {
    const message = theirs(position);
    return message && (getters.getValidationRuleForCell(position)?.message ?? message);
  };
}

type Edit = EngineCommand & Position & { readonly content?: string };
type Clearing = EngineCommand & { readonly sheetId: string; readonly target: readonly Zone[] };

const ALLOWED = "Success";
const REFUSED = "Refused";

/**
 * Refuses what the engine itself would let through: pasting over or deleting a cell that has one word to choose from,
 * and a number with a fraction where only whole ones will do.
 */
export function guardPlugin(engine: Engine): unknown {
  return class Guard extends engine.UIPlugin {
    private readonly refuse: (sentence: string) => void;

    constructor(config: PluginConfig) {
      super(config);
      this.refuse = config.custom?.refuse ?? (() => {});
    }

    override allowDispatch(command: EngineCommand): string {
      const sentence = isEdit(command)
        ? this.aboutEdit(command)
        : isClearing(command)
          ? this.aboutClearing(command)
          : null;
      if (sentence === null) return ALLOWED;
      this.refuse(sentence);
      return REFUSED;
    }

    private aboutEdit({ sheetId, col, row, content = "" }: Edit): string | null {
      const position = { sheetId, col, row };
      const rule = this.getters.getValidationRuleForCell(position);
      if (!rule?.message) return null;
      const isRefused =
        (isLocked(rule) && content !== this.getters.getCell(position)?.content) ||
        (rule.whole === true && hasFraction(this.valueTyped(content, sheetId)));
      return isRefused ? refused(engine.helpers.toXC(col, row), rule.message) : null;
    }

    private aboutClearing({ sheetId, target }: Clearing): string | null {
      for (const { left, right, top, bottom } of target) {
        for (let row = top; row <= bottom; row += 1) {
          for (let col = left; col <= right; col += 1) {
            const rule = this.getters.getValidationRuleForCell({ sheetId, col, row });
            if (rule?.message && isLocked(rule)) return refused(engine.helpers.toXC(col, row), rule.message);
          }
        }
      }
      return null;
    }

    private valueTyped(content: string, sheetId: string): unknown {
      if (!content.startsWith("=")) return Number(content);
      const found = this.getters.evaluateFormulaResult(sheetId, content);
      return Array.isArray(found) ? found[0]?.[0]?.value : found.value;
    }
  };
}

const isEdit = (command: EngineCommand): command is Edit =>
  command.type === "UPDATE_CELL" && (command as Edit).content !== undefined;

const isClearing = (command: EngineCommand): command is Clearing =>
  command.type === "DELETE_CONTENT" || command.type === "CLEAR_CELLS";

const isLocked = ({ criterion }: ValidationRule): boolean =>
  criterion.type === "isValueInList" && criterion.values.length === 1;

const hasFraction = (value: unknown): boolean =>
  typeof value === "number" && Number.isFinite(value) && !Number.isInteger(value);
