import { FunctionError, isTable } from "../../src/kernel";
import type { Answer, Entry, Table } from "../../src/kernel";

/** What is wrong with an outcome of a call whose arguments are within their limits; null where nothing is. */
export function disorder(entry: Entry, outcome: Answer | FunctionError): string | null {
  if (outcome instanceof FunctionError) return errorDisorder(entry, outcome);
  if (Array.isArray(outcome) !== isTable(entry.result)) return `shape of the answer: ${JSON.stringify(outcome)}`;
  const rows = (Array.isArray(outcome) ? outcome : [[outcome]]) as Table;
  if (rows.length === 0 || rows.some((row) => row.length !== rows[0]?.length)) return "a table with uneven rows";
  const wrong = rows.flat().filter((cell) => !isOrderlyCell(cell));
  return wrong.length === 0 ? null : `cells that no sheet can show: ${wrong.map(String).join(", ")}`;
}

function isOrderlyCell(cell: unknown): boolean {
  if (typeof cell === "number") return Number.isFinite(cell) && !Object.is(cell, -0);
  return typeof cell === "string" || typeof cell === "boolean" || cell instanceof FunctionError;
}

function errorDisorder(entry: Entry, { code, argument, message }: FunctionError): string | null {
  if (!message.startsWith(`${entry.name}: `))
    return `an error that does not begin with the function's name: ${message}`;
  if (/\b(NaN|undefined|null|Infinity|\[object)\b/.test(message)) return `an error for programmers: ${message}`;
  const named = argument !== null && argument in entry.params && message.includes(argument);
  return code === "#N/A" || named ? null : `an error that names no argument: ${message}`;
}
