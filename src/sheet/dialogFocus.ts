/**
 * A dialog that closes gives the focus back to the cell in hand, but not the caret: Chromium then drops what is typed.
 * Focused anew, the cell has both.
 */
export function giveCaretBack(dialogs: Iterable<HTMLDialogElement>): void {
  for (const dialog of dialogs) {
    dialog.addEventListener("close", () => {
      const { activeElement } = document;
      if (!(activeElement instanceof HTMLElement) || !activeElement.isContentEditable) return;
      activeElement.blur();
      activeElement.focus();
    });
  }
}
