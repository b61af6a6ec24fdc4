/**
 * The spreadsheet engine, as far as we use it. No other file names it: it is one separate,
 * replaceable script (with its templates, its style sheet and its component library) that puts
 * itself on the page before ours.
 */
export interface Engine {
  readonly Model: new (data: EngineData, config: { transportService: Transport }) => EngineModel;
  readonly Spreadsheet: unknown;
  readonly LocalTransportService: new () => Transport;
  readonly CellErrorType: Readonly<Record<string, string>>;
  readonly helpers: {
    toCartesian(address: string): Place;
    toXC(column: number, row: number): string;
  };
  addFunction(name: string, description: EngineFunction): void;
  createAutocompleteArgumentsProvider(name: string, parameters: readonly EngineParameter[]): void;
  setTranslationMethod(translate: (text: string) => string): void;
}

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
  readonly args: readonly EngineParameter[];
  readonly compute: (...args: EngineArgument[]) => EngineResult;
}

/** A cell that an expression gave; an empty one says so in its type. */
export type EvaluatedCell = EngineCell & { readonly type?: string };

interface Zone {
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
    /** One cell, or an array of columns. */
    evaluateFormulaResult(sheetId: string, formula: string): EvaluatedCell | EvaluatedCell[][];
    getCells(sheetId: string): readonly { readonly id: number; readonly isFormula: boolean }[];
    getCellPosition(id: number): Position;
    getSheetIdByName(name: string): string | undefined;
    getEvaluatedCell(position: Position): EngineCell & { readonly formattedValue: string };
    getCell(position: Position): { readonly isFormula: boolean } | undefined;
    getCellText(position: Position, options: { showFormula: true }): string;
  };
  readonly selection: { selectCell(column: number, row: number): void };
  dispatch(command: string, payload: object): { readonly isSuccessful: boolean };
  exportData(): EngineData;
  on(event: "update", owner: object, callback: () => void): void;
  off(event: "update", owner: object): void;
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
