import packageFile from "../../../../package.json";
import { cite, defineFunction } from "../../../kernel";

export const libraryVersion = defineFunction({
  name: "LIBRARY_VERSION",
  group: "Teaching and audit",
  summary: "Version of the functions in this sheet, to write beside its results",
  formula: "the version that this copy was released as",
  source: cite("DEFINITION", "the version of the release"),
  assumptions: [
    "Results change with the version only where the list of changes says so: a sheet that is kept should carry it.",
  ],
  params: {},
  result: { text: true, about: "Three numbers with points between them" },
  examples: [{ given: {}, gives: packageFile.version, from: cite("DEFINITION", "the version of the release") }],
  mistakes: [],
  seeAlso: ["FUNCTION_SOURCE"],
  native: null,
  compute: () => packageFile.version,
});
