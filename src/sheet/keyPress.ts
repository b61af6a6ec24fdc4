/** Enter and the space bar press what has the role of a button but is none. */
export function pressByKey(region: HTMLElement): void {
  region.addEventListener("keydown", (event) => {
    const { target, key } = event;
    const isButton = target instanceof HTMLElement && target.getAttribute("role") === "button";
    if (!isButton || (key !== "Enter" && key !== " ")) return;
    event.preventDefault();
    event.stopPropagation();
    target.click();
  });
}
