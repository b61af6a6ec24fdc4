const WAIT_MS = 400;

/** Saves a moment after the last change, and at once when the page is left. */
export interface Autosave {
  changed(): void;
  flush(): void;
}

export function autosave(save: () => void): Autosave {
  let timer: number | undefined;
  const flush = () => {
    if (timer === undefined) return;
    window.clearTimeout(timer);
    timer = undefined;
    save();
  };
  const changed = () => {
    window.clearTimeout(timer);
    timer = window.setTimeout(flush, WAIT_MS);
  };
  window.addEventListener("pagehide", flush);
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") flush();
  });
  return { changed, flush };
}
