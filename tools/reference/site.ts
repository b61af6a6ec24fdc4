/** The files of the reference site by their names. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue, find } from "../../src/functions";
import type { Entry } from "../../src/kernel";
import { factsOf } from "./facts";
import { functionPage } from "./FunctionPage";
import { indexPage } from "./IndexPage";

export function referenceFiles(): Readonly<Record<string, string>> {
  const pages = catalogue.map((help, at) => {
    const facts = factsOf(find(help.name) as Entry, help);
    const place = { previous: catalogue[at - 1]?.name, next: catalogue[at + 1]?.name };
    return [`${help.name}.html`, functionPage(facts, place)] as const;
  });
  return {
    ...Object.fromEntries(pages),
    "index.html": indexPage(catalogue),
    "reference.css": readFileSync(join(__dirname, "reference.css"), "utf8"),
  };
}
