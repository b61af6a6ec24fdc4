/** Asks in the page; resolves to false when the person backs out. */
export function ask(question: string, agree: string, back = "Keep the present one"): Promise<boolean> {
  const dialog = document.getElementById("question") as HTMLDialogElement;
  dialog.querySelector("p")!.textContent = question;
  dialog.querySelector<HTMLButtonElement>("button[value=agree]")!.textContent = agree;
  dialog.querySelector<HTMLButtonElement>("button[value=back]")!.textContent = back;
  dialog.returnValue = "";
  dialog.showModal();
  return new Promise((resolve) => {
    dialog.addEventListener("close", () => resolve(dialog.returnValue === "agree"), { once: true });
  });
}
