/**
 * The spreadsheet engine, as far as we use it. No other file names it: it is one separate,
 * replaceable script (with its templates, its style sheet and its component library) that puts
 * itself on the page before ours.
 */
export interface Engine {
  readonly Model: new (data: EngineData, config: ModelConfig) => EngineModel;
  readonly CorePlugin: new (config: PluginConfig) => EngineCorePlugin;
  readonly UIPlugin: new (config: PluginConfig) => EnginePlugin;
  readonly registries: {
    readonly corePluginRegistry: EngineRegistry<unknown>;
    readonly featurePluginRegistry: EngineRegistry<unknown>;
    readonly chartTypeRegistry: EngineRegistry<EngineChartType>;
    readonly functionRegistry: EngineRegistry<EngineFunction>;
  };
  readonly Spreadsheet: unknown;
  readonly LocalTransportService: new () => Transport;
  readonly CellErrorType: Readonly<Record<string, string>>;
  readonly helpers: {
    toCartesian(address: string): Place;
    toXC(column: number, row: number): string;
  };
  addFunction(name: string, description: EngineFunction): void;
  createAutocompleteArgumentsProvider(name: string, parameters: readonly EngineParameter[]): void;
  /** The parts of an .xlsx file as the engine's own data; tells console.warn what it leaves out. */
  load(parts: object, tells: true): EngineData;
  parse(formula: string): FormulaNode;
  setTranslationMethod(translate: (text: string) => string): void;
}

interface ModelConfig {
  readonly transportService: Transport;
  /** Handed to every plugin. */
  readonly custom?: { readonly refuse: (sentence: string) => void };
}

export interface EngineRegistry<Item> {
  get(name: string): Item;
  contains(name: string): boolean;
  replace(name: string, item: Item): unknown;
}

export interface EngineChartType {
  readonly allowedDefinitionKeys: readonly string[];
  getRuntime(...given: unknown[]): {
    readonly chartJsConfig: { readonly data: { readonly datasets: { readonly type?: string; stack?: string }[] } };
  };
}

export interface PluginConfig {
  readonly custom?: ModelConfig["custom"];
}

export interface EngineCommand {
  readonly type: string;
}

export interface EnginePlugin {
  readonly getters: EngineModel["getters"];
  readonly dispatch: EngineModel["dispatch"];
  /** A change through it can be undone. */
  readonly history: { update(property: string, value: unknown): void };
  allowDispatch(command: EngineCommand): string;
  handle(command: EngineCommand): void;
}

export interface EngineCorePlugin extends EnginePlugin {
  import(data: EngineData): void;
  export(data: Record<string, unknown>): void;
  adaptRanges(adapters: { applyChange(range: EngineRange): RangeChange }): void;
}

/** A block of cells that the engine keeps in step with rows and columns put in or taken out. */
export interface EngineRange {
  readonly sheetId: string;
  readonly zone: Zone;
}

export type RangeChange =
  | { readonly changeType: "NONE" | "REMOVE" }
  | { readonly changeType: "MOVE" | "RESIZE" | "CHANGE"; readonly range: EngineRange };

export interface EngineCell {
  readonly value: number | string | boolean | null;
  readonly message?: string;
}
/** A table is an array of columns. */
export type EngineArgument = EngineCell | EngineCell[][] | undefined;
export type EngineResult = EngineCell | EngineCell[][];

export interface EngineParameter {
  readonly name: string;
  readonly description: string;
  readonly type: readonly string[];
  readonly optional?: true;
  readonly repeating?: true;
  readonly acceptMatrix: boolean;
  readonly acceptErrors: boolean;
  readonly proposalValues?: readonly { readonly value: string; readonly label: string }[];
}

export interface EngineFunction {
  readonly description: string;
  readonly category: string;
  /** Excel has it too, so a formula with it stays one in an .xlsx file. */
  readonly isExported?: boolean;
  readonly args: readonly EngineParameter[];
  readonly compute: (...args: EngineArgument[]) => EngineResult;
}

/** A cell that an expression gave; an empty one says so in its type. */
export type EvaluatedCell = EngineCell & { readonly type?: string };

export interface Zone {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

interface Place {
  readonly col: number;
  readonly row: number;
}
export interface Position extends Place {
  readonly sheetId: string;
}

export interface EngineModel {
  readonly getters: {
    getActivePosition(): Position;
    getActiveSheetId(): string;
    getSelectedZone(): Zone;
    getSheetName(sheetId: string): string;
    getSheetIds(): readonly string[];
    /** In pixels. */
    getRowSize(sheetId: string, row: number): number;
    getFigures(sheetId: string): readonly { readonly id: string; readonly tag: string }[];
    getChartIds(sheetId: string): readonly string[];
    getFigureIdFromChartId(chartId: string): string;
    getChartDefinition(chartId: string): EngineChart;
    getDataValidationRules(sheetId: string): readonly ValidationRule[];
    /** The block that a formula fills, if it is more than its own cell. */
    getSpreadZone(position: Position): Zone | undefined;
    /** One cell, or an array of columns. */
    evaluateFormulaResult(sheetId: string, formula: string): EvaluatedCell | EvaluatedCell[][];
    getCells(sheetId: string): readonly { readonly id: number; readonly isFormula: boolean }[];
    getCellPosition(id: number): Position;
    getSheetIdByName(name: string): string | undefined;
    getEvaluatedCell(
      position: Position,
    ): EngineCell & { readonly formattedValue: string; readonly type: string; readonly format?: string };
    getCell(position: Position): StoredCell | undefined;
    getRangeFromSheetXC(sheetId: string, address: string): EngineRange;
    getRangeString(range: EngineRange, onSheet: string): string;
    getTranslatedCellFormula(sheetId: string, columns: number, rows: number, formula: unknown): string;
    getArrayFormulaSpreadingOn(position: Position): Position | undefined;
    getValidationRuleForCell(position: Position): ValidationRule | undefined;
    getInvalidDataValidationMessage(position: Position): string | undefined;
    getCellText(position: Position, options: { showFormula: true }): string;
  };
  readonly selection: { selectCell(column: number, row: number): void };
  dispatch(command: string, payload: object): { readonly isSuccessful: boolean };
  /** Throws where a formula of one cell and the next like it refer to a cell and to a block: see sheetModel.ts. */
  exportData(): EngineData;
  _exportData(shortened: false): EngineData;
  exportXLSX(): Promise<{ readonly files: readonly ExportedPart[] }>;
  on(event: "update", owner: object, callback: () => void): void;
  off(event: "update", owner: object): void;
}

export type ExportedPart =
  { readonly path: string; readonly content: string } | { readonly path: string; readonly imageSrc: string };

/** A part of a formula, as far as we look into it. */
export interface FormulaNode {
  readonly type: string;
  readonly value: unknown;
  readonly args?: readonly FormulaNode[];
  readonly left?: FormulaNode;
  readonly right?: FormulaNode;
  readonly operand?: FormulaNode;
}

export interface EngineChart {
  readonly type: string;
  readonly title: { readonly text?: string; readonly description?: string };
  readonly stacked?: boolean;
  readonly horizontal?: boolean;
  readonly cumulative?: boolean;
  readonly fillArea?: boolean;
  readonly axesDesign?: Readonly<Record<string, { readonly title?: { readonly text?: string } }>>;
  readonly dataSource?: {
    readonly type: string;
    readonly dataSetsHaveTitle?: boolean;
    readonly labelRange?: string;
    readonly dataSets?: readonly { readonly dataSetId: string; readonly dataRange: string }[];
  };
  readonly dataSetStyles?: Readonly<
    Record<
      string,
      {
        readonly label?: string;
        readonly type?: string;
        readonly backgroundColor?: string;
        readonly yAxisId?: string;
        readonly trend?: { readonly display?: boolean };
      }
    >
  >;
}

interface StoredCell {
  readonly isFormula: boolean;
  readonly content: string;
  readonly compiledFormula?: unknown;
}

export interface ValidationRule {
  readonly ranges: readonly EngineRange[];
  readonly isBlocking?: boolean;
  readonly criterion: { readonly type: string; readonly values: readonly string[] };
  /** The two that renderValidation.ts adds; the engine hands them on. */
  readonly message?: string;
  readonly whole?: true;
}

interface Transport {
  onNewMessage(id: string, callback: (message: { readonly type: string }) => void): void;
}

/** The part of the engine's own workbook format that we look into. */
export interface EngineData {
  readonly version?: string;
  readonly sheets: readonly EngineSheet[];
  readonly [part: string]: unknown;
}
export interface EngineSheet {
  readonly id: string;
  readonly name: string;
  readonly [part: string]: unknown;
}

export interface ComponentLibrary {
  readonly App: new (root: unknown, options: object) => { mount(host: HTMLElement): Promise<unknown>; destroy(): void };
}

declare global {
  interface Window {
    readonly o_spreadsheet?: Engine;
    readonly owl?: ComponentLibrary;
  }
}

export function engineOnPage(): { engine: Engine; library: ComponentLibrary } | undefined {
  const { o_spreadsheet: engine, owl: library } = window;
  return engine && library && { engine, library };
}

export const TEMPLATES_FILE = "vendor/o_spreadsheet.xml";
