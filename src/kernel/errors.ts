/** Where a call ends without a number: a wrong input, or a right one that has no answer. */
export type ErrorKind = "input" | "no answer";

export const ERROR_CODES = { input: "#VALUE!", "no answer": "#N/A" } as const;
export type ErrorCode = (typeof ERROR_CODES)[ErrorKind];

/** The end of an error's text where a double no longer holds what was asked for. */
export const BEYOND_CELLS = "these numbers lead beyond what a cell can hold";

/** The one error that the catalogue throws. The hosts' adapters turn it into the error of a cell. */
export class FunctionError extends Error {
  readonly kind: ErrorKind;
  /** The argument at fault, or null where it is the whole question. */
  readonly argument: string | null;
  readonly code: ErrorCode;

  constructor(kind: ErrorKind, argument: string | null, message: string) {
    super(message);
    this.name = "FunctionError";
    this.kind = kind;
    this.argument = argument;
    this.code = ERROR_CODES[kind];
  }
}
