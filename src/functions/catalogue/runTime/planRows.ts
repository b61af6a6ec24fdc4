/** Rows of a plan in which a faulty one does not stop the others. */
import { FunctionError } from "../../../kernel";

export type PlanCell = number | FunctionError;

function isBlank(cell: PlanCell): boolean {
  return cell instanceof FunctionError ? cell.message.includes(" is blank") : cell === 0;
}

/** A row without a name and a number: a range may be longer than what is written in it, and a host may send 0 for it. */
export function isUnwritten(name: string, ...cells: readonly PlanCell[]): boolean {
  return (name === "" || name === "0") && cells.every(isBlank);
}

/** Why a row cannot be worked, without the function's name; null where it can. */
export function faultOf(...cells: readonly PlanCell[]): string | null {
  for (const cell of cells) {
    if (cell instanceof FunctionError) return `left out: ${cell.message.slice(cell.message.indexOf(": ") + 2)}`;
  }
  return null;
}
