import { cite, defineFunction } from "../../../kernel";
import { outletFactor } from "./outletFactor";

export const christiansenFactor = defineFunction({
  name: "CHRISTIANSEN_FACTOR",
  group: "Pipe, emitter, pump",
  summary: "Part of the friction loss that is left because a line gives off its flow on the way",
  formula: "F = 1 / (m + 1) + 1 / (2 N) + sqrt(m - 1) / (6 N^2)",
  source: cite("CHRISTIANSEN1942", "multiple-outlet factor"),
  assumptions: [
    "Outlets of equal flow at equal spacing on one bore, nothing running on past the last; the first stands a full spacing from the inlet. At half a spacing the factor is lower: 0.37 in place of 0.40 for ten outlets.",
    "The exponent must be that of the friction formula: 1.852 Hazen-Williams, 1.75 small smooth tube, 2 Darcy-Weisbach with a fixed friction factor, 1 laminar flow.",
    "One outlet gives 1, which the formula misses by 0.4 %.",
    "On a long line the far outlets give less and the loss is smaller than this factor makes it.",
  ],
  params: {
    outlets: {
      quantity: "count",
      symbol: "N",
      atLeast: 1,
      whole: true,
      about: "Outlets on the line",
      usual: { us: [2, 500], metric: [2, 500], source: cite("PRACTICE", "sprinkler and drip lines") },
    },
    exponent: {
      quantity: "factor",
      symbol: "m",
      atLeast: 1,
      atMost: 2,
      default: 1.852,
      about: "Exponent of the flow in the friction formula: 1.852, 1.75 or 2",
    },
  },
  result: { quantity: "factor", symbol: "F", about: "Factor on the loss of the full flow over the full length" },
  examples: [
    {
      given: { outlets: 10 },
      gives: 0.402,
      within: 0.0005,
      from: cite("CHRISTIANSEN1942", "ten outlets, Hazen-Williams"),
    },
    {
      given: { outlets: 10, exponent: 1.75 },
      gives: 0.415,
      within: 0.0005,
      from: cite("CHRISTIANSEN1942", "ten outlets, exponent 1.75"),
    },
    {
      given: { outlets: 3, exponent: 2 },
      gives: 14 / 27,
      from: cite("ARITHMETIC", "thirds of the line with 1, 2/3 and 1/3 of the flow: (1 + 4/9 + 1/9) / 3"),
    },
  ],
  mistakes: [
    {
      slip: "The limit for very many outlets was taken",
      answer: ({ exponent }) => 1 / (exponent + 1),
    },
    {
      slip: "The first outlet was taken at half a spacing",
      answer: ({ outlets, exponent }) =>
        ((2 * outlets) / (2 * outlets - 1)) * (1 / (exponent + 1) + Math.sqrt(exponent - 1) / (6 * outlets ** 2)),
    },
    {
      slip: "The exponent of another friction formula was used",
      instead: ({ exponent }) => ({ exponent: exponent === 1.852 ? 2 : 1.852 }),
    },
    {
      slip: "The mean flow was sent through the whole line",
      answer: ({ outlets, exponent }) => ((outlets + 1) / (2 * outlets)) ** exponent,
    },
  ],
  seeAlso: ["FRICTION_LOSS", "LATERAL_LOSS"],
  compute({ outlets, exponent }, show) {
    return outletFactor(outlets, exponent, "m", show);
  },
});
