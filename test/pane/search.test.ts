import { catalogue } from "../../src/functions";
import { questions } from "../../src/functions/catalogue/questions";
import { finderOf } from "../../src/taskpane/search";

const finder = finderOf(catalogue);

function found(wanted: string): string[] {
  return finder.find(wanted).map(({ name }) => name);
}

const EVERY_QUESTION = catalogue.flatMap(({ name }) =>
  (questions[name] ?? []).map((question) => [question, name] as const),
);

describe("every question finds its own function among the first five", () => {
  test.each(EVERY_QUESTION)("%s: %s", (question, name) => {
    expect(found(question).slice(0, 5)).toContain(name);
  });

  test("every function has a question, and every question a function", () => {
    expect(Object.keys(questions).sort()).toEqual(catalogue.map(({ name }) => name).sort());
    expect(Object.values(questions).filter((list) => list.length === 0)).toEqual([]);
  });
});

describe("every name finds itself first", () => {
  test.each(catalogue.map(({ name }) => name))("%s", (name) => {
    expect(found(name)[0]).toBe(name);
    expect(found(name.toLowerCase().replace(/_/g, " "))[0]).toBe(name);
    expect(found(`=CANYARD.${name}(`)[0]).toBe(name);
  });
});

/** What people type, what must come first, and why that one. */
const TYPED: readonly (readonly [typed: string, first: string, why: string])[] = [
  ["how long do I run", "RUN_MINUTES", "minutes from volume and emitter flow are the plain case"],
  ["salt", "LEACHING_FRACTION", "salt is kept down by leaching; the fraction is what is measured first"],
  ["how much fertiliser", "FERTILIZER_WEIGHT", "a weight for a wanted ppm"],
  ["how much fertilizer", "FERTILIZER_WEIGHT", "the same in the other spelling"],
  ["fertilizer", "FERTILIZER_WEIGHT", "the daily job, before what it costs"],
  ["uniformty", "DU_LOW_QUARTER", "the number that a catch test gives, in spite of the slip"],
  ["uniformity", "DU_LOW_QUARTER", "the same without a slip"],
  ["leeching", "LEACHING_FRACTION", "in spite of the slip"],
  ["evapotranspration", "ET0_PENMAN_MONTEITH", "the reference method, in spite of the slip"],
  ["ppm", "FERTILIZER_WEIGHT", "people mix to a ppm more often than they read one"],
  ["pump size", "PUMP_POWER", "a pump is bought by its power"],
  ["does it pay", "PAYBACK_YEARS", "years to pay back"],
  ["pot", "CONTAINER_VOLUME", "the first step of the job"],
  ["weather station", "ET0_PENMAN_MONTEITH", "it takes what a station gives"],
  ["hardness", "CLOGGING_RISK", "hard water plugs emitters"],
  ["alkalinity", "ACID_VOLUME", "acid takes it away; salinity is another word"],
  ["cu", "CU_CHRISTIANSEN", "a whole word goes before the beginning of a longer one"],
  ["drippers", "RUN_MINUTES", "minutes for drippers"],
  ["plugged", "EMITTER_SURVEY", "plugged emitters are counted"],
];

describe("what people type finds a sensible function first", () => {
  test.each(TYPED)("%s: %s, since %s", (typed, first) => {
    expect(found(typed)[0]).toBe(first);
  });
});

describe("the search takes whatever is typed", () => {
  test.each(["xyzzy", "???", "the", "   ", "((", "\\", "[", "<>"])("%p finds nothing and does no harm", (typed) => {
    expect(found(typed)).toEqual([]);
  });

  test("words are found by their beginning, while they are being typed", () => {
    for (const part of ["leac", "leach", "leachi", "leachin"]) expect(found(part)).toContain("LEACHING_FRACTION");
  });

  test("British and American spelling find the same", () => {
    expect(found("litre")).toEqual(found("liter"));
    expect(found("fertiliser")).toEqual(found("fertilizer"));
    expect(found("kilometres")).toEqual(found("kilometers"));
  });

  test("capitals, accents of the keyboard and stray signs do not matter", () => {
    expect(found("  HOW LONG do I run?? ")).toEqual(found("how long do i run"));
  });

  test("a long question brings the likely ones, not half of the catalogue", () => {
    expect(found("how long do I run the drippers in my greenhouse in summer").length).toBeLessThan(
      catalogue.length / 2,
    );
  });

  test("no function stands in a list twice", () => {
    for (const typed of ["water", "how much", "salt", "run"])
      expect(new Set(found(typed)).size).toBe(found(typed).length);
  });
});
