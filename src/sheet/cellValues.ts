import type { EngineArgument, EngineCell, EngineResult } from "./engine";
import type { Answer, Functions, Given } from "./functions";

// The engine has no #VALUE!; #ERROR is the code that IFERROR catches and that keeps its text.
const ENGINE_ERROR = "#ERROR";

/** Tells an error code of the engine from a text. */
export type IsErrorCode = (value: unknown) => value is string;

type GivenCell = Exclude<Given, readonly unknown[]>;

/** Engine tables are column first, ours are row first. */
export function fromEngine(argument: EngineArgument, shape: "cell" | "range", isErrorCode: IsErrorCode): Given {
  if (argument === undefined) return undefined;
  if (!Array.isArray(argument)) return givenCell(argument, isErrorCode);
  const rows = turned(argument, (cell) => givenCell(cell, isErrorCode));
  return shape === "cell" && rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0] : rows;
}

// An error is passed as the engine's own cell, so that it can come back as it was.
function givenCell(cell: EngineCell, isErrorCode: IsErrorCode): GivenCell {
  return isErrorCode(cell.value) ? { ...cell, code: cell.value } : (cell.value ?? null);
}

export function toEngine(answer: Answer, FunctionError: Functions["FunctionError"]): EngineResult {
  if (!isTable(answer)) return answerCell(answer, FunctionError);
  if (!answer[0]?.length) throw new Error("a table without cells");
  return turned(answer, (cell) => answerCell(cell, FunctionError));
}

function isTable(answer: Answer): answer is Extract<Answer, readonly unknown[]> {
  return Array.isArray(answer);
}

function answerCell(
  answer: Exclude<Answer, readonly unknown[]>,
  FunctionError: Functions["FunctionError"],
): EngineCell {
  return answer instanceof FunctionError ? errorCell(answer) : { value: answer };
}

export function errorCell(error: { readonly code: string; readonly message: string }): EngineCell {
  return { value: error.code === "#N/A" ? "#N/A" : ENGINE_ERROR, message: error.message };
}

function turned<From, To>(table: readonly (readonly From[])[], each: (cell: From) => To): To[][] {
  return (table[0] ?? []).map((_, across) => table.map((line) => each(line[across]!)));
}
