/**
 * Pages of the reference with hostile text in every place, for a test whose own process does not run its templates:
 * from a list of functions on standard input to their pages, as they are and hostile.
 */
import { readFileSync } from "node:fs";
import { catalogue, find } from "../../src/functions";
import { factsOf } from "../../tools/reference/facts";
import { functionPage } from "../../tools/reference/FunctionPage";

interface Asked {
  readonly names: readonly string[];
  readonly text: string;
}

const { names, text } = JSON.parse(readFileSync(0, "utf8")) as Asked;
let replaced = 0;

/** The same facts with the hostile text in place of every text. */
function hostile<T>(facts: T): T {
  if (facts === "" || typeof facts === "boolean" || facts === undefined) return facts;
  if (typeof facts === "string") {
    replaced += 1;
    return text as T;
  }
  if (Array.isArray(facts)) return facts.map(hostile) as T;
  return Object.fromEntries(Object.entries(facts as object).map(([key, value]) => [key, hostile<unknown>(value)])) as T;
}

const pages = names.map((name) => {
  const facts = factsOf(
    find(name)!,
    catalogue.find((entry) => entry.name === name)!,
  );
  const plain = functionPage(facts, { previous: "BEFORE", next: "AFTER" });
  replaced = 0;
  return { name, plain, hostile: functionPage(hostile(facts), { previous: text, next: text }), replaced };
});
process.stdout.write(JSON.stringify(pages));
