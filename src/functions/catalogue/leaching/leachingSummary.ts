import { cite, defineFunction, type CellAnswer, type Show } from "../../../kernel";
import { ZEROS_PARAM } from "../uniformity/readings";
import { DRY_SUBSTRATE_LEACHES } from "./leachingUsual";

function total(values: readonly number[]): number {
  let sum = 0;
  for (const value of values) sum += value;
  return sum;
}

function extremes(values: readonly number[]): [low: number, high: number] {
  let low = Infinity;
  let high = -Infinity;
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return [low, high];
}

/** Coefficient of variation with n - 1, on symbol m; "" where one pot, or no leachate at all, has none. */
function variation(fractions: readonly number[], mean: number, show: Show): CellAnswer {
  if (fractions.length < 2 || mean === 0) return "";
  let squares = 0;
  for (const fraction of fractions) squares += (fraction - mean) ** 2;
  const deviation = show(
    "s",
    Math.sqrt(squares / (fractions.length - 1)),
    "fraction",
    "Standard deviation of the fractions, with n - 1",
  );
  return show("Cv = s / m", deviation / mean, "fraction", "Variation between pots");
}

/** The first pot whose leachate lies above what was applied; -1 where there is none. */
function firstAbove(leachates: readonly number[], applieds: readonly number[]): number {
  return leachates.findIndex((leachate, pot) => leachate > (applieds[pot] as number));
}

export const leachingSummary = defineFunction({
  name: "LEACHING_SUMMARY",
  group: "Leaching",
  summary: "Leaching fraction of a block from a log of pots, and how far the pots differ",
  formula: "pooled LF = sum of leachates / sum of applied",
  source: [
    cite("ENH1268", "definition of the leaching fraction, several pots to a test"),
    cite("DEFINITION", "pooled = sum over sum; Cv = standard deviation with n - 1 / mean"),
  ],
  assumptions: [
    "The pooled fraction is the one to act on: the mean of the fractions gives pots that got little water too much weight.",
    "Applied is the water that entered each pot: kept plus leached. Both columns in one unit.",
    '"count", the default here, takes a blank or 0 leachate as a dry saucer, a true 0; so a leachate that was never measured must not be left blank. "error" names the cell, "skip" leaves the pot out.',
    'A blank or 0 applied is an error, or leaves the pot out under "skip".',
    "Wait until dripping has stopped; ten pots or more, from all over the block. A variation above 0.3 asks for a look at the emitters first.",
  ],
  params: {
    leachates: {
      kind: "numbers",
      quantity: "any one unit",
      symbol: "L",
      above: 0,
      blanks: "zeros",
      column: true,
      about: "Water caught below each pot, one row a pot; a dry saucer is 0",
    },
    applieds: {
      kind: "numbers",
      quantity: "any one unit",
      symbol: "A",
      above: 0,
      blanks: "by row",
      column: true,
      about: "Water that entered each pot, in the same unit, one row a pot",
    },
    zeros: {
      ...ZEROS_PARAM,
      default: "count",
      about:
        'A blank or 0 leachate: "count" takes it as a dry saucer, "error" names the cell, "skip" leaves the pot out',
    },
  },
  result: {
    header: false,
    table: [
      { name: "label", quantity: "text" },
      { name: "value", quantity: "factor" },
    ],
    about: 'Pots, pooled fraction, mean of fractions, min, max, and Cv ("" for one pot, or where nothing leached)',
  },
  examples: [
    {
      given: { leachates: [[100], [150], [50]], applieds: [[1000], [1000], [500]], zeros: "error" },
      gives: [
        ["pots", 3],
        ["pooled fraction", 0.12],
        ["mean of fractions", 0.1167],
        ["min", 0.1],
        ["max", 0.15],
        ["Cv", 0.2474],
      ],
      within: 0.0001,
      from: cite("ARITHMETIC", "300 / 2500; (0.10 + 0.15 + 0.10) / 3; deviation sqrt(0.0016667 / 2) = 0.028868"),
    },
    {
      given: { leachates: [[null], [200], [400]], applieds: [[500], [1000], [1000]] },
      gives: [
        ["pots", 3],
        ["pooled fraction", 0.24],
        ["mean of fractions", 0.2],
        ["min", 0],
        ["max", 0.4],
        ["Cv", 1],
      ],
      from: cite("ARITHMETIC", "600 / 2500; (0 + 0.2 + 0.4) / 3; deviation sqrt((0.04 + 0 + 0.04) / 2) = 0.2"),
    },
  ],
  mistakes: [],
  seeAlso: ["LEACHING_FRACTION", "RUN_MINUTES_FROM_LEACHING", "EMITTER_SURVEY", "NUTRIENT_LEACHED"],
  caution: DRY_SUBSTRATE_LEACHES,
  compute({ leachates, applieds }, show, { refuse }) {
    const above = firstAbove(leachates, applieds);
    if (above >= 0) {
      const itMust = `it must be ${applieds[above]} or less, the applieds of the same pot (number ${above + 1} of those counted)`;
      throw refuse("leachates", leachates[above], `${itMust}; were the two columns swapped?`);
    }
    const fractions = leachates.map((leachate, pot) => leachate / (applieds[pot] as number));
    const pots = show("n = COUNT(L)", leachates.length, "count", "Pots");
    const out = show("SL = SUM(L)", total(leachates), "any one unit", "All that leached");
    const given = show("SA = SUM(A)", total(applieds), "any one unit", "All that was applied");
    const pooled = show("LF = SL / SA", out / given, "fraction", "Pooled leaching fraction");
    const mean = show("m", total(fractions) / pots, "fraction", "Mean of leachate / applied, pot by pot");
    const [low, high] = extremes(fractions);
    const least = show("low", low, "fraction", "Lowest of the pots");
    const most = show("high", high, "fraction", "Highest of the pots");
    return [
      ["pots", pots],
      ["pooled fraction", pooled],
      ["mean of fractions", mean],
      ["min", least],
      ["max", most],
      ["Cv", variation(fractions, mean, show)],
    ];
  },
});
