import { agreesToThrowAway, tellAside } from "./asideNotices";
import { autosave } from "./autosave";
import { offerText, offerWorkbook } from "./download";
import type { Hold } from "./keepingWords";
import { HELD, NOT_SAVED, restoredSentence, UNREADABLE } from "./keepingWords";
import type { Action } from "./notices";
import { isTold, tell, withdraw } from "./notices";
import { ask } from "./question";
import type { Restored, SaveOutcome } from "./storage";
import { workbookStorage } from "./storage";
import { STORAGE_KEYS } from "./storedTexts";
import type { NamedWorkbook } from "./workbookFile";
import { claimWriting } from "./writer";

/** Keeps the workbook in the browser, or says why it does not and what can be done. */
export interface Keeping {
  /** Opens what is kept; false when there was nothing that could be opened. */
  restore(): Promise<boolean>;
  changed(): void;
  flush(): void;
  saveAsFile(): void;
}

interface Shown {
  workbook(): NamedWorkbook;
  /** Throws, and leaves everything as it was, when it cannot be opened. */
  open(workbook: NamedWorkbook): Promise<void>;
}

/** What its notices are about; one takes the place of the other. */
const SAVING = "saving";
const RESTORING = "restoring";

export function keepWorkbook(shown: Shown): Keeping {
  const storage = workbookStorage(() => window.localStorage);
  const saving = autosave(save);
  let hold: Hold | undefined;
  /** There are changes that neither the browser nor a file has. */
  let isUnsaved = false;
  const claim = claimWriting(STORAGE_KEYS.present, { gained: lookAtTabs, lost: lookAtTabs }, navigator.locks);

  function save(): void {
    if (hold === undefined) tellSaved(storage.save(shown.workbook()));
    else holdBack(hold);
  }

  function tellSaved(outcome: SaveOutcome): void {
    if (outcome === "changed elsewhere") return holdBack("other tab");
    if (outcome === "no room aside") return holdBack(outcome);
    showSaved(outcome === "saved" ? "Saved" : "Not saved");
    if (outcome !== "saved") return tellOnce(NOT_SAVED[outcome], [AS_FILE], true);
    isUnsaved = false;
    withdraw(SAVING);
  }

  function holdBack(reason: Hold): void {
    hold = reason;
    if (isUnsaved) showSaved("Not saved");
    const hasMore = reason === "other tab" && !storage.isAsKnown();
    tellOnce(HELD[hasMore ? "other tab kept more" : reason], WAYS_OUT[reason](hasMore), isUnsaved);
  }

  /** It can be closed only while there is nothing to lose. */
  function tellOnce(sentence: string, actions: readonly Action[], stays: boolean): void {
    if (!isTold(sentence, SAVING, stays)) tell(sentence, SAVING, { actions, stays });
  }

  /** Another tab was opened or closed, or has kept something. */
  function lookAtTabs(): void {
    if (hold === "newer" || hold === "no room aside") return;
    if (!claim.isOurs() || !storage.isAsKnown()) return holdBack("other tab");
    if (hold) goOn();
  }

  function goOn(): void {
    hold = undefined;
    withdraw(SAVING);
    if (isUnsaved) save();
  }

  function after(restored: Restored): void {
    const { outcome, damaged } = restored;
    const sentence = restoredSentence(restored);
    withdraw(RESTORING);
    if (sentence && damaged !== "set aside") tell(sentence, RESTORING);
    tellAside(storage, damaged === "set aside" ? sentence : undefined);
    if (outcome.kind === "newer") holdBack("newer");
    else if (damaged === "no room to set it aside") holdBack("no room aside");
    else if (outcome.kind === "refused") tellSaved("refused");
    else {
      goOn();
      lookAtTabs();
    }
  }

  async function showKept(): Promise<void> {
    const question = `Put the kept workbook in the place of “${shown.workbook().name}”? What was changed here is lost.`;
    if (isUnsaved && !(await ask(question, "Show the kept one"))) return;
    const restored = await storage.restore(shown.open, claim.isOurs());
    if (isOpen(restored)) isUnsaved = false;
    after(restored);
  }

  async function keepThis(hasMore: boolean): Promise<void> {
    const question = `Keep “${shown.workbook().name}”, as it is shown here, in the place of what the other tab kept?`;
    if (hasMore && !(await ask(question, "Keep this one", "Back"))) return;
    await claim.take();
    storage.accept();
    saveNow();
  }

  async function keepInsteadOfNewer(): Promise<void> {
    const question = `Keep “${shown.workbook().name}” in the place of the newer workbook? That one is kept aside.`;
    if (!(await ask(question, "Keep this one", "Back"))) return;
    await claim.take();
    if (!storage.release()) return holdBack("no room aside");
    saveNow();
    tellAside(storage);
  }

  async function throwAway(): Promise<void> {
    if (!(await agreesToThrowAway())) return;
    await claim.take();
    storage.discard();
    saveNow();
  }

  function saveNow(): void {
    hold = undefined;
    isUnsaved = true;
    save();
  }

  function saveAsFile(): void {
    offerWorkbook(shown.workbook());
    isUnsaved = false;
    withdraw(SAVING);
  }

  const AS_FILE: Action = { words: "Save as file…", act: saveAsFile };
  const UNREAD_AS_FILE: Action = {
    words: "Save that one as a file…",
    act: () => storage.unreadTexts().forEach((text) => offerText(UNREADABLE, text)),
  };
  const WAYS_OUT: Readonly<Record<Hold, (hasMore: boolean) => readonly Action[]>> = {
    "other tab": (hasMore) => [
      ...(hasMore ? [{ words: "Show that one…", act: () => void showKept() }] : []),
      { words: hasMore ? "Keep this one instead…" : "Keep this one from now on", act: () => void keepThis(hasMore) },
      AS_FILE,
    ],
    newer: () => [UNREAD_AS_FILE, { words: "Keep this one instead…", act: () => void keepInsteadOfNewer() }],
    "no room aside": () => [UNREAD_AS_FILE, { words: "Throw it away…", act: () => void throwAway() }],
  };

  window.addEventListener("storage", ({ key }) => {
    if (key === null || key === STORAGE_KEYS.present) lookAtTabs();
  });
  window.addEventListener("beforeunload", (event) => {
    saving.flush();
    if (isUnsaved) event.preventDefault();
  });
  return {
    async restore() {
      await claim.settled;
      const restored = await storage.restore(shown.open, claim.isOurs());
      after(restored);
      return isOpen(restored);
    },
    changed() {
      isUnsaved = true;
      if (hold === undefined) showSaved("Saving…");
      saving.changed();
    },
    flush: saving.flush,
    saveAsFile,
  };
}

function isOpen({ outcome }: Restored): boolean {
  return outcome.kind === "restored" || outcome.kind === "earlier one restored";
}

function showSaved(words: string): void {
  document.getElementById("saved")!.textContent = words;
}
