/** The help pane at the side of the grid: a page of its own in a frame, loaded when it is first seen. */

const PAGE = "help.html";
const KEPT = "canyard.help";
const ROOM_FOR_BOTH = "(min-width: 1200px)";

export interface Help {
  readonly place: HTMLElement;
  isOpen(): boolean;
  focus(): void;
  /** Loads the page into the room that it was given when this page opened. */
  fill(): void;
}

/** Where there is room, the pane is open from the start, but empty: the grid comes first. */
export function connectHelp(place: HTMLElement, button: HTMLElement, onResize: () => void): Help {
  const isOpen = (): boolean => !place.hidden;
  const fill = (): void => {
    if (isOpen() && place.querySelector("iframe") === null) place.append(frame());
  };
  const fold = (open: boolean): void => {
    place.hidden = !open;
    button.setAttribute("aria-expanded", String(open));
    onResize();
  };
  button.addEventListener("click", () => {
    fold(!isOpen());
    fill();
    keep(isOpen());
    if (isOpen()) place.querySelector("iframe")?.focus();
  });
  fold(kept() ?? window.matchMedia(ROOM_FOR_BOTH).matches);
  return { place, isOpen, focus: () => place.querySelector("iframe")?.focus(), fill };
}

function frame(): HTMLIFrameElement {
  const made = document.createElement("iframe");
  made.src = PAGE;
  made.title = "Canyard help";
  return made;
}

function kept(): boolean | null {
  try {
    const word = localStorage.getItem(KEPT);
    return word === null ? null : word === "open";
  } catch {
    return null;
  }
}

function keep(open: boolean): void {
  try {
    localStorage.setItem(KEPT, open ? "open" : "folded");
  } catch {
    // Then the choice lasts as long as the page.
  }
}
