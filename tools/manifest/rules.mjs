/** What a manifest must be, rule by rule; each gives sentences on what is wrong, or none. */
import { manifestIn } from "./reading.mjs";
import * as places from "./places.mjs";
import * as structure from "./structure.mjs";

export const RULES = [
  ["it is a task pane add-in", structure.rootIsTaskPaneApp],
  ["every part is there", structure.everyPartIsThere],
  ["the elements are in order", structure.elementsAreInOrder],
  ["texts are there and short enough", structure.textsAreShortEnough],
  ["every resource id resolves", structure.idsResolve],
  ["no id occurs twice", structure.idsAreUnique],
  ["id and version are legal", structure.idAndVersionAreLegal],
  ["the host is the workbook", structure.hostIsTheWorkbook],
  ["it asks for the requirement sets that it needs, and no more", structure.requirementsAreThose],
  ["it has functions and a button", places.functionsPointIsThere],
  ["addresses are https, and no localhost", places.addressesAreSafe],
  ["addresses share one base", places.addressesShareOneBase],
  ["pane and functions share one page", places.onePageIsShared],
  ["the shared page loads the functions", places.sharedPageLoadsTheFunctions],
  ["the namespace is legal", places.namespaceIsLegal],
  ["every file is there", places.filesAreThere],
  ["icons have their size", places.iconsHaveTheirSize],
  ["functions.json agrees", places.metadataAgrees],
];

/**
 * The rules with what each found in a manifest whose files lie in a folder.
 * @param options.version The version that the manifest must have, without its fourth part.
 * @param options.allowLocal For a manifest that only this computer uses.
 */
export function validate(folder, text, options) {
  let manifest;
  try {
    manifest = manifestIn(folder, text);
  } catch (error) {
    return [{ rule: "it is well-formed", wrong: [error.message] }];
  }
  const results = RULES.map(([rule, check]) => ({ rule, wrong: check(manifest, options) }));
  return [{ rule: "it is well-formed", wrong: [] }, ...results];
}
