/** What may stand in a notice beside its sentence. */
export interface More {
  readonly points?: readonly string[];
  readonly actions?: readonly Action[];
  /** It cannot be closed: what it says holds until it is withdrawn. */
  readonly stays?: boolean;
}

export interface Action {
  readonly words: string;
  act(): void;
}

/** Sentences above the grid, each until it is closed or the same thing is told anew. */
export function tell(
  sentence: string,
  about: string = sentence,
  { points = [], actions = [], stays }: More = {},
): void {
  withdraw(about);
  const notice = document.createElement("div");
  notice.className = "notice";
  notice.dataset["about"] = about;
  if (stays) notice.dataset["stays"] = "";
  const words = document.createElement("div");
  words.append(paragraph(sentence), ...(points.length > 0 ? [listOf(points)] : []));
  const buttons = actions.map((action) => button(action.words, action.act));
  if (!stays) buttons.push(button("Close", () => remove(notice)));
  notice.append(words, ...buttons);
  list().append(notice);
}

export function withdraw(about: string): void {
  toldAbout(about).forEach(remove);
}

/** Whether it stands there already: told anew it would be read out anew. */
export function isTold(sentence: string, about: string, stays: boolean): boolean {
  return toldAbout(about).some(
    (notice) => notice.querySelector("p")?.textContent === sentence && stays === "stays" in notice.dataset,
  );
}

function toldAbout(about: string): readonly HTMLElement[] {
  return Array.from(list().children).filter(
    (notice): notice is HTMLElement => notice instanceof HTMLElement && notice.dataset["about"] === about,
  );
}

/** Whoever pressed a key in it is not thrown back to the top of the page. */
function remove(notice: HTMLElement): void {
  const hadFocus = notice.contains(document.activeElement);
  notice.remove();
  if (hadFocus) (list().querySelector("button") ?? list()).focus();
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
