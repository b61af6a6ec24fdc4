/** The error codes of Excel as sentences for the pane: what could not be done, and what would help. */
import { HostFailure } from "./sheetHost";

const TOO_OLD = "This version of Excel is too old for that.";
const TOO_LARGE = "That is too much for Excel to hand over at once. Choose fewer cells.";

const SENTENCES: Readonly<Record<string, string>> = {
  InvalidSelection:
    "Click one cell of this workbook first: several blocks, a drawing or another workbook are selected.",
  InvalidOperationInCellEditMode: "A cell is being edited. Finish it with Enter or Escape, then try again.",
  AccessDenied: "This sheet is protected. Unprotect it, or choose a cell that is open.",
  GeneralException: "Excel did not take that. Choose a single cell of an open sheet and try again.",
  ItemNotFound: "That sheet, range or name is not in this workbook.",
  InvalidReference: "That is not a range of this workbook.",
  InvalidArgument: "Excel did not take that. Check the formula and the cells that it names.",
  RequestPayloadSizeLimitExceeded: TOO_LARGE,
  ResponsePayloadSizeLimitExceeded: TOO_LARGE,
  ApiNotFound: TOO_OLD,
  ApiNotAvailable: TOO_OLD,
};

export function sentenceFor(error: unknown): HostFailure {
  if (error instanceof HostFailure) return error;
  const code = (error as { code?: string } | null)?.code ?? "";
  return new HostFailure(SENTENCES[code] ?? `Excel could not do that (${code === "" ? "no reason given" : code}).`);
}
