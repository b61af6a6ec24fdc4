import type { CellReading } from "./adapter";

/** The line under the grid: the selected cell in words, for eyes and for screen readers. */
export function showCell(address: string, { formula, value, shown, message }: CellReading): void {
  setText("cell-address", address);
  setText("cell-formula", formula ?? "");
  setText("cell-value", value === null ? "empty" : shown);
  setText("cell-message", message ?? "");
  element("cell-status").classList.toggle("in-error", message !== null);
}

// An unchanged text is left alone, so that only what changed is read out.
function setText(id: string, text: string): void {
  const target = element(id);
  if (target.textContent !== text) target.textContent = text;
}

function element(id: string): HTMLElement {
  return document.getElementById(id)!;
}
