/** F6 moves between the bar, the grid and the line under it: inside the grid, Tab moves between cells. */
export function moveBetweenRegions(regions: readonly { readonly holds: HTMLElement; focus(): void }[]): void {
  window.addEventListener(
    "keydown",
    (event) => {
      if (event.key !== "F6" || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      event.stopPropagation();
      const here = regions.findIndex(({ holds }) => holds.contains(document.activeElement));
      const step = event.shiftKey ? -1 : 1;
      regions[(here + step + regions.length) % regions.length]!.focus();
    },
    { capture: true },
  );
}
