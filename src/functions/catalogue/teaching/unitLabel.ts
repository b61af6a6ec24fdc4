import { cite, defineFunction, unitOf, UNITS_PARAM, type Entry } from "../../../kernel";
import { argumentAsked } from "./argumentOf";
import type { LookUp } from "./lookUp";
import { entryNamed } from "./workedCall";

export const unitLabel = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "UNIT_LABEL",
    group: "Teaching and audit",
    summary: "Unit of an argument or an answer, for the heading of a column",
    formula: "unit of the quantity in the system asked for",
    source: cite("DEFINITION", "the unit table of the functions"),
    assumptions: [
      'The argument "" is the answer of the function; of a function that fills a table, ask for one of its columns.',
      '"same unit" is any unit, the same in all numbers of the call; "fraction" is 0 to 1; "count" and "factor" have no unit; "date" and "time" are those of the sheet.',
      'An argument that takes a word, a text or a name has no unit: "".',
    ],
    params: {
      function_name: { kind: "text", about: "Name of the function" },
      argument: { kind: "text", mayBeBlank: true, about: 'Name of its argument; "" for its answer' },
      units: { ...UNITS_PARAM, about: 'The units that the sheet is in: "us" or "metric"' },
    },
    result: { text: true, about: "The unit as text, such as gal/h" },
    examples: [
      {
        given: { function_name: "EMITTER_FLOW", argument: "", units: "us" },
        gives: "gal/h",
        from: cite("DEFINITION", "flow of emitters"),
      },
      {
        given: { function_name: "CONTAINER_VOLUME", argument: "top_diameter", units: "metric" },
        gives: "cm",
        from: cite("DEFINITION", "size of pots"),
      },
      {
        given: { function_name: "FLOOD_SCHEDULE", argument: "tank after", units: "metric" },
        gives: "L",
        from: cite("DEFINITION", "volumes"),
      },
    ],
    mistakes: [],
    seeAlso: ["CHECK_RANGE", "CONVERT_UNIT"],
    native: null,
    compute({ function_name, argument, units }) {
      const { quantity } = argumentAsked("UNIT_LABEL", entryNamed("UNIT_LABEL", function_name, find, names), argument);
      return quantity === null ? "" : unitOf(quantity, units);
    },
  });
