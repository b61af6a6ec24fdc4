import { citationText, cite, defineFunction, type Citation, type Entry } from "../../../kernel";
import type { LookUp } from "./lookUp";
import { entryNamed } from "./workedCall";

function sourcesOf({ source }: Entry): readonly Citation[] {
  return Array.isArray(source) ? (source as readonly Citation[]) : [source as Citation];
}

export const functionSource = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "FUNCTION_SOURCE",
    group: "Teaching and audit",
    summary: "Source of a function's formula: author, year, title, equation or table",
    formula: "the citation of the function's own entry",
    source: cite("DEFINITION", "each entry carries its source"),
    assumptions: [
      'Several sources are joined by "; ". "recalled, not read again" marks what was written from memory: look it up before you cite it.',
      "A definition and common practice are named as such; they have no author.",
    ],
    params: { function_name: { kind: "text", about: "Name of the function" } },
    result: { text: true, about: "The citation" },
    examples: [
      {
        given: { function_name: "ET0_HARGREAVES" },
        gives:
          "Allen, R.G., Pereira, L.S., Raes, D. & Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56: Eq. 52, with Ra by Eqs 21 to 25",
        from: cite("DEFINITION", "the source of that entry"),
      },
      {
        given: { function_name: "canyard.daylight_hours" },
        gives:
          "Allen, R.G., Pereira, L.S., Raes, D. & Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56: Eq. 34, with Eqs 22, 24 and 25",
        from: cite("DEFINITION", "any case, with or without the prefix"),
      },
    ],
    mistakes: [],
    seeAlso: ["SHOW_WORKING", "LIBRARY_VERSION"],
    native: null,
    compute: ({ function_name }) =>
      sourcesOf(entryNamed("FUNCTION_SOURCE", function_name, find, names))
        .map(citationText)
        .join("; "),
  });
