/** dist/library.mjs: what other programs may rely on. Its declarations, dist/library.d.mts, are made from this file. */
export { call, catalogue, faults, FunctionError, NAMESPACE, PassedError, verdict, VERSION, working } from ".";
export type { FunctionHelp, Parameter, ResultHelp, UsualHelp, WorkedStep } from ".";
export type {
  Answer,
  ArgumentInput,
  CellAnswer,
  CellErrorInput,
  CellInput,
  ErrorCode,
  ErrorKind,
  UnitSystem,
} from "../kernel";
