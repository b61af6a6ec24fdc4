import type { SheetAdapter } from "./adapter";

/** One adapter for the life of the page, whatever workbook lies behind it. */
export interface PresentSheet extends SheetAdapter {
  becomes(sheet: SheetAdapter): void;
}

export function presentSheet(first: SheetAdapter): PresentSheet {
  const listeners = new Set<() => void>();
  const tellAll = () => listeners.forEach((listener) => listener());
  let sheet = first;
  let stopWatching = sheet.watch(tellAll);
  return {
    selected: () => sheet.selected(),
    selection: () => sheet.selection(),
    evaluate: (expression, on) => sheet.evaluate(expression, on),
    formulas: (on) => sheet.formulas(on),
    select: (address) => sheet.select(address),
    read: (address) => sheet.read(address),
    write: (address, content) => sheet.write(address, content),
    watch(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    becomes(next) {
      stopWatching();
      sheet = next;
      stopWatching = sheet.watch(tellAll);
      tellAll();
    },
  };
}
