/** The rules of a sheet's cells: our sentences, whole numbers, and what a file does not take. */
import type { EngineModel, ValidationRule } from "../engine";
import { all, attribute, child } from "./xml";
import { listed } from "./wordsFor";

const TITLE = "Not taken";
/** What Excel takes. */
const LONGEST_SENTENCE = 225;
const LONGEST_LIST = 255;

export function writeRules(document: Document, model: EngineModel, sheetId: string): string[] {
  const { getters } = model;
  const missing: string[] = [];
  const elements = all(document, "dataValidation");
  for (const rule of getters.getDataValidationRules(sheetId)) {
    const ranges = rule.ranges.map((range) => getters.getRangeString(range, sheetId)).join(" ");
    const element = elements.find((each) => attribute(each, "sqref") === ranges);
    if (!element || !fits(element)) {
      element?.remove();
      missing.push(ranges);
    } else complete(element, rule);
  }
  for (const list of all(document, "dataValidations")) {
    const count = all(list, "dataValidation").length;
    list.setAttribute("count", String(count));
    if (count === 0) list.remove();
  }
  if (missing.length === 0) return [];
  return [`Rules that Excel does not have are left out: ${getters.getSheetName(sheetId)}, cells ${listed(missing)}.`];
}

function complete(element: Element, { message, whole, isBlocking }: ValidationRule): void {
  if (isBlocking) element.removeAttribute("errorStyle");
  else element.setAttribute("errorStyle", "warning");
  if (whole) element.setAttribute("type", "whole");
  if (!message) return;
  element.setAttribute("errorTitle", TITLE);
  element.setAttribute("error", message.slice(0, LONGEST_SENTENCE));
}

/** A list in words has a length that it may not pass, and commas between them. */
function fits(element: Element): boolean {
  const list = attribute(element, "type") === "list" ? (child(element, "formula1")?.textContent ?? "") : "";
  return !list.startsWith('"') || list.length <= LONGEST_LIST + 2;
}
