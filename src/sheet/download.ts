import type { NamedWorkbook } from "./workbookFile";
import { FILE_ENDING, fileNameFor, toText } from "./workbookFile";

/** How long the browser may take to fetch what it is offered. */
const OFFERED_MS = 60_000;

export function offer(name: string, content: Blob): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(content);
  link.download = name;
  link.click();
  window.setTimeout(() => URL.revokeObjectURL(link.href), OFFERED_MS);
}

export function offerText(name: string, text: string): void {
  offer(fileNameFor(name, FILE_ENDING), new Blob([text], { type: "application/json" }));
}

export function offerWorkbook(workbook: NamedWorkbook): void {
  offerText(workbook.name, toText(workbook, new Date()));
}
