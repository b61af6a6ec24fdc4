/**
 * Google Sheets' edge: what that host sends and what it can show.
 *
 * A function there is a plain function of a script. A range arrives as an array of rows, a single cell as its value, an
 * empty cell as "", an error in a cell as its text, a date or a time of day as a Date. A thrown error becomes #ERROR!
 * with its message; a table cannot hold errors, so that they stand in it as text.
 */
import {
  FunctionError,
  PassedError,
  type Answer,
  type ArgumentInput,
  type CellAnswer,
  type CellInput,
} from "../../kernel";
import { call, NAMESPACE } from "../call";
import { serialOf } from "./dates";

/** What the host puts in place of an answer that has not come yet. */
const STILL_LOADING = "Loading...";

/** An error of a cell as text: "#N/A", or with its reason behind it as `errorText` writes it. */
const ERROR_TEXT = /^#(?:N\/A|VALUE!|DIV\/0!|NUM!|REF!|NAME\?|NULL!|ERROR!)(?=$|: )/;

function errorText({ code, message }: FunctionError): string {
  return `${code}: ${message}`;
}

function isDate(value: unknown): value is Date {
  return Object.prototype.toString.call(value) === "[object Date]";
}

function cellInput(value: unknown): CellInput {
  if (value === null || value === undefined || typeof value === "number" || typeof value === "boolean") return value;
  if (isDate(value)) return serialOf(value);
  // What is neither, such as a picture in a cell, is refused as text and not taken for blank.
  const text = String(value);
  if (text === STILL_LOADING) return { code: text };
  const code = ERROR_TEXT.exec(text)?.[0];
  return code === undefined ? text : { code, message: text };
}

function argumentInput(value: unknown): ArgumentInput {
  if (!Array.isArray(value)) return cellInput(value);
  return (value as readonly unknown[]).map((row) => (Array.isArray(row) ? row.map(cellInput) : [cellInput(row)]));
}

function cellOutput(cell: CellAnswer): number | string | boolean {
  return cell instanceof FunctionError ? errorText(cell) : cell;
}

function output(found: Answer): unknown {
  if (!Array.isArray(found)) return cellOutput(found as CellAnswer);
  return (found as readonly (readonly CellAnswer[])[]).map((row) => row.map(cellOutput));
}

function failureText(error: unknown, name: string): string {
  if (error instanceof FunctionError) return error.message;
  if (!(error instanceof PassedError)) return `${NAMESPACE}_${name} could not be worked out`;
  if (error.code === STILL_LOADING) return `${name}: a cell that it was given is still being worked out`;
  return `${name}: a cell that it was given holds the error ${error.message}`;
}

/** One call of a cell with the arguments as they were typed. */
export function answer(name: string, args: ArrayLike<unknown>): unknown {
  try {
    return output(call(name, Array.from(args, argumentInput)));
  } catch (error) {
    throw new Error(failureText(error, name));
  }
}
