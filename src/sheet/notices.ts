/** What may stand in a notice beside its sentence. */
export interface More {
  readonly points?: readonly string[];
  readonly action?: { readonly words: string; act(): void };
}

/** Sentences above the grid, each until it is closed or the same thing is told anew. */
export function tell(sentence: string, about: string = sentence, { points = [], action }: More = {}): void {
  withdraw(about);
  const notice = document.createElement("div");
  notice.className = "notice";
  notice.dataset["about"] = about;
  const words = document.createElement("div");
  words.append(paragraph(sentence), ...(points.length > 0 ? [listOf(points)] : []));
  const close = button("Close", () => notice.remove());
  notice.append(words, ...(action ? [button(action.words, action.act)] : []), close);
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

function paragraph(text: string): HTMLElement {
  const made = document.createElement("p");
  made.textContent = text;
  return made;
}

function listOf(points: readonly string[]): HTMLElement {
  const made = document.createElement("ul");
  for (const point of points) {
    const entry = document.createElement("li");
    entry.textContent = point;
    made.append(entry);
  }
  return made;
}

function button(words: string, act: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.addEventListener("click", act);
  return made;
}
