/** The kernel's contents page. */
export * from "./define";
export { FunctionError, type ErrorCode, type ErrorKind } from "./errors";
export { PassedError, isBlank, isCellError } from "./coerce";
export { argumentFaults, readArguments, type Arguments } from "./arguments";
export { compute, computeGiven, evaluate, inOrder } from "./evaluate";
export { fullNumber, shortNumber, shownValue } from "./format";
export { limitsText, boundsOf, within } from "./limits";
export { decimal, dividedBy, times, toNumber, type Rational } from "./rational";
export { silentShowFor } from "./show";
export { citationText, cite, sources, type Citation, type SourceKey } from "./sources";
export {
  fromMetric,
  quantities,
  toMetric,
  unitConstant,
  unitConstants,
  unitOf,
  unitScales,
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
export { usualOf, usualVerdict } from "./usual";
export { mistakeAnswer, type AnyMistake } from "./mistakes";
