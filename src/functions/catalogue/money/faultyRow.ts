import { FunctionError } from "../../../kernel";

/** The error of a cell as the error of the call, with the row that it stands in. */
export function inRow(fault: FunctionError, row: number): FunctionError {
  const at = fault.message.lastIndexOf("; it must be");
  const message = `${fault.message.slice(0, at)} in row ${row + 1} of the range${fault.message.slice(at)}`;
  return new FunctionError("input", fault.argument, message);
}
