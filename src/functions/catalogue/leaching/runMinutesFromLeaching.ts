import { cite, defineFunction } from "../../../kernel";
import { LEACHING_USUAL } from "./leachingUsual";

export const runMinutesFromLeaching = defineFunction({
  name: "RUN_MINUTES_FROM_LEACHING",
  group: "Leaching",
  summary: "New run time from a leaching test",
  formula: "t = t0 (1 - LF) / (1 - LFt)",
  source: cite("ENH1268", "the water kept per irrigation stays the same, so minutes x (1 - LF) is constant"),
  assumptions: [
    "The pot keeps the same amount of water at each irrigation; test again after a change of weather, pruning or potting on.",
    "Measured is the pooled fraction of ten pots or more, not of one. Minutes that fill the line are part of both run times.",
    "Where nothing leached the test cannot tell how far short the irrigation was: the answer is #N/A. Run longer and test again.",
  ],
  params: {
    minutes_now: {
      quantity: "minutes",
      symbol: "t0",
      above: 0,
      about: "Run time of the test",
      usual: {
        us: [1, 120],
        metric: [1, 120],
        high: "look for a slip between minutes and hours",
        source: cite("PRACTICE", "drippers and stakes to overhead sprinklers"),
      },
    },
    measured: {
      quantity: "fraction",
      symbol: "LF",
      atLeast: 0,
      below: 1,
      blankIsAnswered: true,
      about: "Leaching fraction measured at that run time; 0 or blank has no answer",
      usual: LEACHING_USUAL,
    },
    target: {
      quantity: "fraction",
      symbol: "LFt",
      atLeast: 0,
      below: 1,
      about: "Leaching fraction wanted; 0 is a value, so leave no blank",
      usual: { us: [0.05, 0.2], metric: [0.05, 0.2], source: cite("ENH1268", "below 0.15; 0.10 to 0.20 in practice") },
    },
  },
  result: {
    quantity: "minutes",
    symbol: "t",
    about: "Run time for the leaching fraction wanted",
    usual: {
      us: [1, 120],
      metric: [1, 120],
      low: "shorter than most lines take to fill",
      high: "look for a slip between minutes and hours",
      source: cite("PRACTICE", "drippers and stakes to overhead sprinklers"),
    },
  },
  examples: [
    {
      given: { minutes_now: 20, measured: 0.4, target: 0.15 },
      gives: 14.117647058823529,
      from: cite("ARITHMETIC", "20 x 0.60 / 0.85 = 12 / 0.85"),
    },
    {
      given: { minutes_now: 30, measured: 0.1, target: 0.1 },
      gives: 30,
      from: cite("ARITHMETIC", "already at the target"),
    },
  ],
  mistakes: [
    {
      slip: "The difference of the two fractions was taken off the time",
      answer: ({ minutes_now, measured, target }) => minutes_now * (1 - ((measured ?? NaN) - target)),
    },
    {
      slip: "The ratio was inverted",
      answer: ({ minutes_now, measured, target }) => (minutes_now * (1 - target)) / (1 - (measured ?? NaN)),
    },
    {
      slip: "The whole leaching was taken off, and nothing left for the target",
      answer: ({ minutes_now, measured }) => minutes_now * (1 - (measured ?? NaN)),
    },
    {
      slip: "The time was scaled by the leaching fractions themselves",
      answer: ({ minutes_now, measured, target }) => (minutes_now * target) / (measured ?? NaN),
    },
  ],
  seeAlso: ["LEACHING_FRACTION", "LEACHING_SUMMARY", "RUN_MINUTES", "PULSE_SCHEDULE"],
  caution:
    "A dry substrate that repels water leaches at once though the plant is dry, and this answer would cut the time further. Pot light and leaching high: do not cut, rewet in pulses and test again.",
  compute({ minutes_now, measured, target }, show, { noAnswer }) {
    if (measured === null || measured === 0) {
      throw noAnswer(
        "measured is blank or 0; where nothing leached the test cannot tell how far short the time was",
        "measured",
      );
    }
    const kept = show(
      "K = t0 * (1 - LF)",
      minutes_now * (1 - measured),
      "minutes",
      "Minutes' worth of water that the pot kept",
    );
    return show("t = K / (1 - LFt)", kept / (1 - target), "minutes", "New run time");
  },
});
