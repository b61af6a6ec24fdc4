/** The kernel's contents page. */
export * from "./define";
export { FunctionError, type ErrorCode, type ErrorKind } from "./errors";
export { PassedError, isBlank, isCellError } from "./coerce";
export { evaluate, inOrder, readArguments, silentShowFor } from "./evaluate";
export { fullNumber, shortNumber, shownValue } from "./format";
export { limitsText, boundsOf, within } from "./limits";
export { citationText, cite, sources, type Citation, type SourceKey } from "./sources";
export {
  fromMetric,
  quantities,
  toMetric,
  unitConstant,
  unitConstants,
  unitOf,
  UNIT_WORDS,
  type QuantityName,
  type UnitSystem,
} from "./units";
export {
  numbersOf,
  plainFormula,
  replaceSymbols,
  singleFormula,
  symbolsIn,
  work,
  type Step,
  type Working,
} from "./working";
