/** The rules of a sheet's cells, made such that the engine reads them, and what it does not keep of them. */
import { plain } from "../addresses";
import { add, all, attribute, child, first } from "./xml";

export interface FileRule {
  readonly ranges: readonly string[];
  /** The sentence that the file shows when something else is typed. */
  readonly message?: string;
  readonly whole?: true;
}

const RANGE = /^(?:'(?:[^']|'')+'!|[^'!,()"]+!)?\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

export function readRules(document: Document, names: Readonly<Record<string, string>>): FileRule[] {
  takeInExtension(document);
  return all(document, "dataValidation").flatMap((element) => {
    const type = attribute(element, "type");
    if (type === "list" && !readList(element, names)) {
      element.remove();
      return [];
    }
    // The engine works out a formula from what stood in the cell before, so it marks and does not refuse.
    if (type === "custom" || !doesRefuse(element)) element.setAttribute("errorStyle", "warning");
    if (type === "whole") element.setAttribute("type", "decimal");
    const message = attribute(element, "error");
    return [
      {
        ranges: (attribute(element, "sqref") ?? "").split(/\s+/),
        ...(message && { message }),
        ...(type === "whole" && { whole: true as const }),
      },
    ];
  });
}

function doesRefuse(element: Element): boolean {
  const isShown = ["1", "true"].includes(attribute(element, "showErrorMessage") ?? "");
  return isShown && !["warning", "information"].includes(attribute(element, "errorStyle") ?? "");
}

/** A list is words in quotes or a range, perhaps by its name; one that a formula works out is not read. */
function readList(element: Element, names: Readonly<Record<string, string>>): boolean {
  const formula = child(element, "formula1");
  const text = formula?.textContent?.trim() ?? "";
  const words = /^"(.*)"$/s.exec(text)?.[1];
  const named = Object.entries(names).find(([name]) => name.toLowerCase() === text.toLowerCase())?.[1];
  const list =
    words === undefined
      ? plain(named ?? text)
      : `"${words
          .split(",")
          .map((word) => word.trim())
          .join(",")}"`;
  if (formula) formula.textContent = list;
  return words !== undefined || RANGE.test(list);
}

/** Rules that refer to another sheet stand, in files of some versions, in an extension that the engine passes over. */
function takeInExtension(document: Document): void {
  for (const list of all(document, "ext").flatMap((extension) => all(extension, "dataValidations"))) {
    const sheet = document.documentElement;
    const home = Array.from(sheet.children).find(({ localName }) => localName === "dataValidations") ?? newHome(sheet);
    for (const theirs of all(list, "dataValidation")) {
      const ours = add(home, "dataValidation");
      for (const { name, value } of Array.from(theirs.attributes))
        if (!name.includes(":")) ours.setAttribute(name, value);
      ours.setAttribute("sqref", first(theirs, "sqref")?.textContent ?? "");
      for (const name of ["formula1", "formula2"]) {
        const formula = first(theirs, name)?.textContent;
        if (formula) add(ours, name).textContent = formula;
      }
    }
    list.remove();
  }
}

function newHome(sheet: Element): Element {
  return add(sheet, "dataValidations");
}
