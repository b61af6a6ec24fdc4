/** Finds functions by name, by words of the trade, by arguments and by the questions that people ask. */
import MiniSearch, { type SearchResult } from "minisearch";
import type { FunctionHelp } from "./library";

interface Indexed {
  readonly id: string;
  readonly name: string;
  readonly questions: string;
  readonly summary: string;
  readonly words: string;
}

/** Words that a question carries and that tell nothing; "how" and "much" do tell. */
const EMPTY_WORDS = new Set("a an and the of to do does is it i my for in on at what me s canyard".split(" "));

const FUZZINESS = 0.25;
const SHORTEST_FUZZY = 4;
const MOST_SLIPS = 2;
/** What scores less than this part of the best is only a word in common. */
const WORTH_SHOWING = 0.1;

/** One spelling for both sides of the ocean. */
function oneSpelling(word: string): string {
  return word.replace(/ilis(?=[aei])/, "iliz").replace(/^((?:milli|centi|kilo)?(?:lit|met))re/, "$1er");
}

function termOf(term: string): string | null {
  const bare = oneSpelling(term.toLowerCase());
  return EMPTY_WORDS.has(bare) || bare === "" ? null : bare;
}

function wordsOf(text: string): string[] {
  return text.split(/[^\p{L}\p{N}]+/u);
}

function termsOf(text: string): string[] {
  return wordsOf(text).flatMap((word) => termOf(word) ?? []);
}

export interface Finder {
  find(wanted: string): readonly FunctionHelp[];
}

const JUST_THAT = 0;
const ALL_OF_IT = 1;
const SOME_OF_IT = 2;

/** How much of what is wanted stands in the name or in one of the questions, slips aside. */
function closeness({ name, questions }: FunctionHelp, { match, queryTerms }: SearchResult, wanted: number): number {
  const met = new Set(Object.keys(match));
  if (queryTerms.length < wanted) return SOME_OF_IT;
  const ranks = [name, ...questions].map((line) => {
    const terms = termsOf(line);
    const inCommon = terms.filter((term) => met.has(term)).length;
    if (inCommon < wanted) return SOME_OF_IT;
    if (terms.length === wanted) return JUST_THAT;
    return wanted > 1 ? ALL_OF_IT : SOME_OF_IT;
  });
  return Math.min(...ranks);
}

export function finderOf(catalogue: readonly FunctionHelp[]): Finder {
  const index = new MiniSearch<Indexed>({
    fields: ["name", "questions", "summary", "words"],
    tokenize: wordsOf,
    processTerm: termOf,
    searchOptions: {
      boost: { name: 4, questions: 3, summary: 2 },
      prefix: (term) => term.length > 1,
      fuzzy: (term) => (term.length >= SHORTEST_FUZZY ? FUZZINESS : false),
      maxFuzzy: MOST_SLIPS,
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
  const places = new Map(catalogue.map((entry, place) => [entry.name, { entry, place }]));
  const find = (wanted: string): readonly FunctionHelp[] => {
    const results = index.search(wanted);
    const worth = (results[0]?.score ?? 0) * WORTH_SHOWING;
    const count = new Set(termsOf(wanted)).size;
    return results
      .flatMap((result) => {
        const found = places.get(result.id as string);
        if (found === undefined) return [];
        return [{ ...found, score: result.score, rank: closeness(found.entry, result, count) }];
      })
      .filter(({ score, rank }) => score >= worth || rank < SOME_OF_IT)
      .sort((a, b) => a.rank - b.rank || (a.rank === JUST_THAT ? a.place - b.place : b.score - a.score))
      .map(({ entry }) => entry);
  };
  return { find };
}
