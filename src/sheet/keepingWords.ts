/** What the page says about the workbook kept in this browser. */
import type { Restored } from "./storage";

/** Why nothing is written, though the storage would take it. */
export type Hold = "other tab" | "newer" | "no room aside";

export const NOT_SAVED: Readonly<Record<"full" | "refused", string>> = {
  full: "This browser's storage is full, so the last changes are not kept here; what was kept before stays. Save the workbook as a file.",
  refused:
    "This browser does not let the page keep the workbook, so it is lost when the page closes. Save the workbook as a file.",
};

export const HELD: Readonly<Record<Hold | "other tab kept more", string>> = {
  "other tab":
    "The sheet is open in another tab of this browser too, and only that tab keeps its workbook. What is changed here is not kept.",
  "other tab kept more":
    "Another tab of this browser has kept a later workbook than the one shown here. What is changed here is not kept.",
  newer:
    "The workbook kept in this browser was saved by a newer Canyard, so it cannot be read here. It stays as it is, and what is changed here is not kept.",
  "no room aside":
    "There is no room to keep the workbook aside that could not be read. Save it as a file, then throw it away: until then, what is changed here is not kept.",
};

export const KEPT_ASIDE = "A workbook that this page could not read is kept aside in this browser.";
export const COPY_KEPT_ASIDE = "The one that could not be read is kept aside.";
/** What a file is called whose own name cannot be read. */
export const UNREADABLE = "unreadable workbook";

/** Undefined when nothing went wrong that it could tell. */
export function restoredSentence({ outcome }: Restored): string | undefined {
  if (outcome.kind === "unreadable") return "The workbook kept in this browser could not be read.";
  if (outcome.kind !== "earlier one restored") return undefined;
  const reason = outcome.latest === "missing" ? "is gone" : "could not be read";
  const time = outcome.savedAt ? `, of ${moment(outcome.savedAt)}` : "";
  return `The workbook kept last in this browser ${reason}. Shown is the one kept before it${time}.`;
}

function moment(time: Date): string {
  return new Intl.DateTimeFormat(undefined, { dateStyle: "medium", timeStyle: "short" }).format(time);
}
