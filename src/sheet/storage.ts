import type { AsideText } from "./setAside";
import { setAside } from "./setAside";
import { attempt, firstThatOpens, GENERATIONS, isWhole, put, STORAGE_KEYS } from "./storedTexts";
import type { NamedWorkbook } from "./workbookFile";
import { toText } from "./workbookFile";

export type SaveOutcome = "saved" | "full" | "refused" | "changed elsewhere" | "no room aside";

export type RestoreOutcome =
  | { readonly kind: "nothing stored" | "unreadable" | "refused" }
  | { readonly kind: "restored"; readonly savedAt?: Date }
  | { readonly kind: "earlier one restored"; readonly latest: "unreadable" | "missing"; readonly savedAt?: Date }
  /** Saved by a newer version: it lies where it was. */
  | { readonly kind: "newer" };

/** What an unreadable workbook has come to. */
export type Damaged = "none" | "set aside" | "no room to set it aside";

export interface Restored {
  readonly outcome: RestoreOutcome;
  readonly damaged: Damaged;
}

/**
 * The browser's own storage. It writes at once, so a page that is being closed still saves; a database could not promise
 * that. The text that lies there is replaced only while it is the one that this page read or wrote last.
 */
export interface WorkbookStorage {
  save(workbook: NamedWorkbook): SaveOutcome;
  /**
   * Hands each stored workbook, the newest first, to `open` until one opens; `open` throws on one it cannot use. Writes
   * nothing when another tab is the one that does.
   */
  restore(open: (workbook: NamedWorkbook) => Promise<void>, mayWrite: boolean): Promise<Restored>;
  /** False once another tab has put another text there. */
  isAsKnown(): boolean;
  /** The other tab's workbook, which the person has seen or gives up, may be replaced. */
  accept(): void;
  /** Sets aside what could not be read, so that it may be replaced; false when there is no room for that. Each save does. */
  release(): boolean;
  /** What could not be read may be replaced without a copy of it, by the person's wish. */
  discard(): void;
  /** What was found at the last restoring and could not be read, the newest first. */
  unreadTexts(): readonly string[];
  asideTexts(): readonly AsideText[];
  removeAside(key: string): void;
}

export function workbookStorage(area: () => Storage, now: () => Date = () => new Date()): WorkbookStorage {
  const aside = setAside(area, STORAGE_KEYS.setAside);
  const present = () => area().getItem(STORAGE_KEYS.present);
  /** What this page read or wrote last, and whether a copy of it is worth keeping. */
  let known: string | null = null;
  let isKnownWhole = false;
  /** Stored texts that could not be read, the newest first. */
  let unread: readonly string[] = [];

  const know = (text: string | null, isWhole: boolean) => {
    known = text;
    isKnownWhole = isWhole;
  };

  const save = (workbook: NamedWorkbook): SaveOutcome => {
    const there = present();
    // Where the site's data were cleared nothing is replaced.
    if (there !== null && there !== known) return "changed elsewhere";
    if (!release()) return "no room aside";
    const text = toText(workbook, now());
    if (there !== null && isKnownWhole) attempt(() => area().setItem(STORAGE_KEYS.before, there));
    const outcome = put(area(), text, isKnownWhole);
    if (outcome === "saved") know(text, true);
    else if (present() !== there) know(present(), false);
    return outcome;
  };

  const restore: WorkbookStorage["restore"] = async (open, mayWrite) => {
    const stored = GENERATIONS.map((key) => area().getItem(key));
    know(stored[0] ?? null, false);
    const { failed, isNewer, found } = await firstThatOpens(stored, open);
    unread = failed;
    if (isNewer) return { outcome: { kind: "newer" }, damaged: "none" };
    const damaged = mayWrite ? keepUnread() : "none";
    if (!found) return { outcome: { kind: failed.length > 0 ? "unreadable" : "nothing stored" }, damaged };
    if (found.isLatest) know(found.text, true);
    if (mayWrite && damaged !== "no room to set it aside") settle(found.text, found.isLatest);
    const time = found.savedAt && { savedAt: found.savedAt };
    if (found.isLatest) return { outcome: { kind: "restored", ...time }, damaged };
    const latest = failed.length > 0 ? "unreadable" : "missing";
    return { outcome: { kind: "earlier one restored", latest, ...time }, damaged };
  };

  const keepUnread = (): Damaged => {
    if (unread.length === 0) return "none";
    return unread.every((text) => aside.add(text)) ? "set aside" : "no room to set it aside";
  };

  /** What opened is what lies there, and without room for a second copy the first still counts. */
  const settle = (text: string, isLatest: boolean) => {
    if (present() !== known) return;
    if (!isLatest && put(area(), text, false) === "saved") know(text, true);
    attempt(() => area().setItem(STORAGE_KEYS.lastGood, text));
  };

  const discard = () => {
    unread = [];
  };

  const release = () => {
    if (keepUnread() === "no room to set it aside") return false;
    discard();
    return true;
  };

  const guarded = <Result>(work: () => Result, otherwise: Result): Result => {
    try {
      return work();
    } catch {
      return otherwise;
    }
  };
  return {
    save: (workbook) => guarded(() => save(workbook), "refused"),
    restore: (open, mayWrite) =>
      restore(open, mayWrite).catch(() => ({ outcome: { kind: "refused" }, damaged: "none" })),
    isAsKnown: () => guarded(() => [known, null].includes(present()), true),
    accept: () => guarded(() => know(present(), isWhole(present())), undefined),
    release: () => guarded(release, false),
    discard,
    unreadTexts: () => unread,
    asideTexts: () => guarded(aside.list, []),
    removeAside: (key) => guarded(() => aside.remove(key), undefined),
  };
}
