/** Both roads end at the same library: where they carry the same inputs, the same must come of a call. */
import { cellsOf, isCellError, isDataType, type HostileCall, type HostileInput, type Outcome } from "./call";
import { COMMON_CODES } from "./values";

/** What a road changes on its way: no number, an error that one of them has not, a text that is an error in a sheet. */
function isChanged(cell: HostileInput): boolean {
  if (typeof cell === "number") return Number.isNaN(cell);
  if (isCellError(cell)) return !(COMMON_CODES as readonly string[]).includes(cell.code);
  if (typeof cell === "string") return cell.startsWith("#");
  return typeof cell === "object" && cell !== null && isDataType(cell) && cell.basicValue === undefined;
}

const COUNTED_BY_ENGINE: readonly string[] = ["#BAD_EXPR", "#NAME?"];

/** Whether the two outcomes may be held against each other. */
export function areComparable({ args, kinds }: HostileCall, sheet: Outcome): boolean {
  if (kinds.includes("too many arguments") || kinds.includes("name of no function")) return false;
  if (sheet.kind === "error" && COUNTED_BY_ENGINE.includes(sheet.code)) return false;
  return !cellsOf(args).some(isChanged);
}

/** As both roads would write it: the sheet has its own code for #VALUE!. */
function plain(outcome: Outcome): string {
  return JSON.stringify(outcome, (key, value: unknown) => (key === "code" && value === "#ERROR" ? "#VALUE!" : value));
}

const SHOWN = 300;

/** What is wrong where the two differ; null where they agree. */
export function disagreement(official: Outcome, sheet: Outcome): string | null {
  const [one, other] = [plain(official), plain(sheet)];
  return one === other
    ? null
    : `the roads differ: ${one.slice(0, SHOWN)} in the runtime, ${other.slice(0, SHOWN)} in the sheet`;
}
