/** Parts of a workbook that an older Excel cannot make: from which version of its library on, and how they are called. */

export type Supports = (version: string) => boolean;

const PARTS = {
  checkColours: { since: "1.6", words: "the colours of the checks, which say OK or LOOK all the same" },
  frozenPanes: { since: "1.7", words: "headings that stay in view" },
  charts: { since: "1.7", words: "the charts" },
  limits: { since: "1.8", words: "the limits on what the inputs take" },
  printing: { since: "1.9", words: "the set-up for printing" },
  chartDescriptions: { since: "1.14", words: "the descriptions of the charts for screen readers" },
} as const;

export type Part = keyof typeof PARTS;

/** Without these nothing can be added: finding sheets and names that may not be there, and making names. */
export const LEAST_VERSION = "1.4";
/** From this version on a workbook is one step of the undo. */
export const UNDO_GROUPS_SINCE = "1.20";

export function isSupported(part: Part, supports: Supports): boolean {
  return supports(PARTS[part].since);
}

export function wordsFor(part: Part): string {
  return PARTS[part].words;
}

/** Excel says so where a step cannot be part of one undo. */
export function isWithoutUndo(error: unknown): boolean {
  return (error as { code?: string } | null)?.code === "UndoNotSupported";
}
