/** Finds functions by name, by words of the trade, by arguments and by the questions that people ask. */
import MiniSearch from "minisearch";
import type { FunctionHelp } from "./library";

interface Indexed {
  readonly id: string;
  readonly name: string;
  readonly questions: string;
  readonly summary: string;
  readonly words: string;
}

/** Words that a question carries and that tell nothing; "how" and "much" do tell. */
const EMPTY_WORDS = new Set([
  "a",
  "an",
  "and",
  "the",
  "of",
  "to",
  "do",
  "does",
  "is",
  "it",
  "i",
  "my",
  "for",
  "in",
  "on",
  "at",
  "what",
  "me",
  "s",
]);

const FUZZINESS = 0.25;
const SHORTEST_FUZZY = 4;

function termOf(term: string): string | null {
  const bare = term.toLowerCase();
  return EMPTY_WORDS.has(bare) || bare === "" ? null : bare;
}

export interface Finder {
  find(wanted: string): readonly FunctionHelp[];
}

export function finderOf(catalogue: readonly FunctionHelp[]): Finder {
  const index = new MiniSearch<Indexed>({
    fields: ["name", "questions", "summary", "words"],
    tokenize: (text) => text.split(/[^\p{L}\p{N}]+/u),
    processTerm: termOf,
    searchOptions: {
      boost: { name: 4, questions: 3, summary: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length >= SHORTEST_FUZZY ? FUZZINESS : false),
      combineWith: "OR",
    },
  });
  index.addAll(
    catalogue.map(({ name, summary, group, params, result, formula, questions }) => ({
      id: name,
      name: name.replace(/_/g, " "),
      questions: questions.join(" "),
      summary: `${summary} ${result.about}`,
      words: [
        group,
        formula,
        ...params.map((parameter) => `${parameter.name.replace(/_/g, " ")} ${parameter.about}`),
      ].join(" "),
    })),
  );
  const byName = new Map(catalogue.map((entry) => [entry.name, entry]));
  return {
    find: (wanted) => index.search(wanted).flatMap(({ id }) => byName.get(id as string) ?? []),
  };
}
