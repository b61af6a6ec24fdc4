import { offerText } from "./download";
import { COPY_KEPT_ASIDE, KEPT_ASIDE, UNREADABLE } from "./keepingWords";
import { tell, withdraw } from "./notices";
import { ask } from "./question";
import type { AsideText } from "./setAside";
import type { WorkbookStorage } from "./storage";

type Aside = Pick<WorkbookStorage, "asideTexts" | "removeAside">;

/** One notice for each text set aside; the newest stands with the sentence about how it came there. */
export function tellAside(storage: Aside, howItCame?: string): void {
  const texts = storage.asideTexts();
  for (const kept of texts) {
    withdraw(kept.key);
    const words = howItCame && kept === texts.at(-1) ? `${howItCame} ${COPY_KEPT_ASIDE}` : KEPT_ASIDE;
    tell(words, kept.key, {
      actions: [
        { words: "Save it as a file…", act: () => offerText(UNREADABLE, kept.text) },
        { words: "Throw it away…", act: () => void throwAway(storage, kept) },
      ],
    });
  }
}

export function agreesToThrowAway(): Promise<boolean> {
  return ask("Throw the workbook that could not be read away for good?", "Throw it away", "Keep it");
}

async function throwAway(storage: Aside, { key }: AsideText): Promise<void> {
  if (!(await agreesToThrowAway())) return;
  storage.removeAside(key);
  withdraw(key);
}
