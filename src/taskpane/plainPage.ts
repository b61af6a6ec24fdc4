import { HostFailure, type SheetHost } from "./sheetHost";

function noSheet(): Promise<never> {
  return Promise.reject(new HostFailure("There is no sheet beside this page."));
}

/** The pane as a page of its own: formulas are copied, not inserted. */
export const plainPage: SheetHost = {
  kind: "page",
  selection: noSheet,
  evaluate: () => Promise.resolve(null),
  writeFormula: noSheet,
  formulas: noSheet,
  enter: noSheet,
  onSelection: () => () => undefined,
};
