/** The declarations that the build makes and the sources that they are made of stand for each other, both ways. */
import type * as Built from "../../dist/library.mjs";
import type * as Sources from "../../src/functions/library";

declare const built: typeof Built;
declare const sources: typeof Sources;

export const builtWhereSourcesBelong: typeof Sources = built;
export const sourcesWhereBuiltBelong: typeof Built = sources;

/** Every type by its name; a name that one side lacks does not compile. */
interface BuiltTypes {
  Answer: Built.Answer;
  ArgumentInput: Built.ArgumentInput;
  CellAnswer: Built.CellAnswer;
  CellErrorInput: Built.CellErrorInput;
  CellInput: Built.CellInput;
  ErrorCode: Built.ErrorCode;
  ErrorKind: Built.ErrorKind;
  FunctionError: Built.FunctionError;
  FunctionHelp: Built.FunctionHelp;
  Parameter: Built.Parameter;
  PassedError: Built.PassedError;
  ResultHelp: Built.ResultHelp;
  UnitSystem: Built.UnitSystem;
  UsualHelp: Built.UsualHelp;
  WorkedStep: Built.WorkedStep;
}
interface SourceTypes {
  Answer: Sources.Answer;
  ArgumentInput: Sources.ArgumentInput;
  CellAnswer: Sources.CellAnswer;
  CellErrorInput: Sources.CellErrorInput;
  CellInput: Sources.CellInput;
  ErrorCode: Sources.ErrorCode;
  ErrorKind: Sources.ErrorKind;
  FunctionError: Sources.FunctionError;
  FunctionHelp: Sources.FunctionHelp;
  Parameter: Sources.Parameter;
  PassedError: Sources.PassedError;
  ResultHelp: Sources.ResultHelp;
  UnitSystem: Sources.UnitSystem;
  UsualHelp: Sources.UsualHelp;
  WorkedStep: Sources.WorkedStep;
}

declare const builtTypes: BuiltTypes;
declare const sourceTypes: SourceTypes;

export const builtTypesServe: SourceTypes = builtTypes;
export const sourceTypesServe: BuiltTypes = sourceTypes;
