export interface Region {
  readonly holds: HTMLElement;
  /** A folded one is passed over. */
  readonly isThere?: () => boolean;
  focus(): void;
}

/**
 * F6 moves between the bar, the grid, the help and the line under them: inside the grid, Tab moves between cells.
 * Returns the same move for the help's frame, whose keys do not reach this page.
 */
export function moveBetweenRegions(regions: readonly Region[]): (step: number) => void {
  const move = (step: number): void => {
    const there = regions.filter(({ isThere }) => isThere?.() ?? true);
    const here = there.findIndex(({ holds }) => holds.contains(document.activeElement));
    there[(here + step + there.length) % there.length]!.focus();
  };
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      move(event.shiftKey ? -1 : 1);
    },
    { capture: true },
  );
  return move;
}
