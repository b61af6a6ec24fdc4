import type { Growing } from "../workbooks/model";
import { plain } from "./addresses";
import type { Engine, EngineData, EngineModel, EngineRange, RangeChange } from "./engine";

/** The blocks of rows that a longer table is brought into, as they lie now. */
export interface GrowingBlock {
  readonly inputs: EngineRange;
  readonly following: readonly EngineRange[];
  readonly fields: readonly BlockField[];
}

export interface BlockField {
  readonly field: Growing["fields"][number]["field"];
  readonly unit: string;
  readonly missing?: number;
  readonly column: EngineRange;
}

interface GrowingGetters {
  getGrowingBlock(): GrowingBlock | undefined;
}

export function growingBlockOf(model: EngineModel): GrowingBlock | undefined {
  return (model.getters as unknown as GrowingGetters).getGrowingBlock();
}

/** Keeps a workbook's growing blocks with the engine's data, in step with rows and columns put in or taken out. */
export function growingBlockPlugin(engine: Engine): unknown {
  return class KeptGrowingBlock extends engine.CorePlugin {
    static readonly getters = ["getGrowingBlock"];
    private block: GrowingBlock | undefined;

    getGrowingBlock(): GrowingBlock | undefined {
      return this.block;
    }

    override import(data: EngineData): void {
      const growing = data["growing"] as Growing | undefined;
      if (!growing) return;
      const inputs = this.found(growing.inputs);
      this.block = {
        inputs,
        following: growing.following.map((range) => this.found(range)),
        fields: growing.fields.map(({ column, ...field }) => ({ ...field, column: this.columnOf(inputs, column) })),
      };
    }

    override export(data: Record<string, unknown>): void {
      if (!this.block) return;
      const { inputs, following, fields } = this.block;
      const written = (range: EngineRange) => this.getters.getRangeString(range, "every sheet by its name");
      data["growing"] = {
        fields: fields.map(({ column, ...field }) => ({
          ...field,
          column: engine.helpers.toXC(column.zone.left, 0).replace(/\d+/, ""),
        })),
        inputs: written(inputs),
        following: following.map(written),
      } satisfies Growing;
    }

    override adaptRanges({ applyChange }: { applyChange(range: EngineRange): RangeChange }): void {
      if (!this.block) return;
      const { inputs, following, fields } = this.block;
      let isWhole = true;
      const adapted = (range: EngineRange): EngineRange => {
        const change = applyChange(range);
        if (change.changeType === "REMOVE") isWhole = false;
        return "range" in change ? change.range : range;
      };
      const block: GrowingBlock = {
        inputs: adapted(inputs),
        following: following.map(adapted),
        fields: fields.map((field) => ({ ...field, column: adapted(field.column) })),
      };
      this.history.update("block", isWhole ? block : undefined);
    }

    private found(address: string): EngineRange {
      return this.getters.getRangeFromSheetXC("", plain(address));
    }

    private columnOf({ sheetId, zone }: EngineRange, letters: string): EngineRange {
      const column = letters.replace(/[^A-Za-z]/g, "");
      return this.getters.getRangeFromSheetXC(sheetId, `${column}${zone.top + 1}:${column}${zone.bottom + 1}`);
    }
  };
}
