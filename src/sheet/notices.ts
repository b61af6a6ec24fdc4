/** Sentences above the grid, each until it is closed or the same thing is told anew. */
export function tell(sentence: string, about: string = sentence): void {
  withdraw(about);
  const notice = document.createElement("p");
  notice.dataset["about"] = about;
  notice.append(sentence, closeButton(notice));
  list().append(notice);
}

export function withdraw(about: string): void {
  for (const notice of Array.from(list().children)) {
    if (notice instanceof HTMLElement && notice.dataset["about"] === about) notice.remove();
  }
}

function list(): HTMLElement {
  return document.getElementById("notices")!;
}

function closeButton(notice: HTMLElement): HTMLButtonElement {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = "Close";
  button.addEventListener("click", () => notice.remove());
  return button;
}
