/** Errors that stood in the cells of a call: they come back with their code. */
import { cellsOf, isCellError, type CellError, type HostileCall, type HostileInput } from "./call";
import type { RoadName } from "./engineSentences";
import { COMMON_CODES } from "./values";

/** What each road shows for a code that it does not have, or may not send. */
const INSTEAD: Readonly<Record<RoadName, string>> = { "official runtime": "#VALUE!", "browser sheet": "#ERROR" };

/** The code as a road carries it into a call and back. */
export function codeOn(road: RoadName, code: string): string {
  if ((COMMON_CODES as readonly string[]).includes(code)) return code;
  if (road === "browser sheet" && code === "#REF!") return "#REF";
  if (road === "browser sheet" && (code === "#NAME?" || code === "#SPILL!")) return code;
  return INSTEAD[road];
}

/** A text that spells an error is one in the browser sheet, whose cells know no difference. */
function codeIn(road: RoadName, cell: HostileInput): string | null {
  if (isCellError(cell)) return codeOn(road, cell.code);
  const isError =
    road === "browser sheet" && typeof cell === "string" && (COMMON_CODES as readonly string[]).includes(cell);
  return isError ? cell : null;
}

/** Whether the call holds an error; with an outcome, whether that outcome is one of those errors come back. */
export function passesOn({ args }: HostileCall, road?: RoadName, error?: CellError): boolean {
  const cells = cellsOf(args);
  if (road === undefined || error === undefined) return cells.some(isCellError);
  return error.message === "" && cells.some((cell) => codeIn(road, cell) === error.code);
}
