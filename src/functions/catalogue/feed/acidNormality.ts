import { cite, defineFunction } from "../../../kernel";
import { ACID_CAUTION, ACID_NAMES, ACIDS, NUTRIENT_NOTE } from "./acids";
import { molarMass, molarMassFormula } from "./atomicWeights";

/** Protons over molar mass, whichever acid: `IF(acid = "nitric", 1 / (1.008 + ...), ...)`. */
const EQUIVALENTS_PER_GRAM = ACID_NAMES.reduceRight((rest, name) => {
  const { atoms, protons } = ACIDS[name];
  return `IF(acid = "${name}", ${protons} / (${molarMassFormula(atoms)}), ${rest})`;
}, "NA()");

export const acidNormality = defineFunction({
  name: "ACID_NORMALITY",
  group: "Feed and water quality",
  summary: "Strength of an acid in equivalents per litre, from its label",
  formula: "N = 1000 SG w z / M",
  source: [cite("STOICHIOMETRY", "weight in a litre / molar mass x protons"), cite("IUPAC", "H, N, O, P, S")],
  assumptions: [
    "Protons given off in the working range: sulfuric 2, nitric 1, phosphoric 1 of its 3 (down to about pH 5).",
    "A label gives percent by weight. The specific gravity must be that of the same product at that strength: 1.835 for sulfuric of 93 % (66 Baume), about 1.26 for 35 % (battery acid).",
    NUTRIENT_NOTE,
  ],
  params: {
    acid: { kind: "word", words: ACID_NAMES, about: "Which acid" },
    percent_by_weight: {
      quantity: "fraction",
      symbol: "w",
      above: 0,
      atMost: 1,
      about: "Acid by weight, as a fraction: 93 % is 0.93",
      usual: {
        us: [0.3, 0.98],
        metric: [0.3, 0.98],
        low: "weaker than what is sold: check the label",
        source: cite("NCSU_558", "sulfuric 35 and 93 %, nitric 61 and 67 %, phosphoric 75 and 85 %"),
      },
    },
    specific_gravity: {
      quantity: "factor",
      symbol: "SG",
      atLeast: 1,
      atMost: 2,
      guard: "water has 1, the heaviest of these acids 1.88",
      hint: "pounds per gallon? Divide by 8.345",
      about: "Weight of the acid against water, by the label",
      usual: {
        us: [1.15, 1.9],
        metric: [1.15, 1.9],
        low: "lighter than what is sold: check the label",
        source: cite("REAGENTS", "1.41 for nitric, 1.71 for phosphoric, 1.84 for sulfuric"),
      },
    },
  },
  result: {
    quantity: "normality",
    symbol: "N",
    about: "Equivalents of protons per litre of acid",
    usual: {
      us: [3, 37],
      metric: [3, 37],
      low: "weaker than what is sold",
      high: "stronger than any of them",
      source: cite("REAGENTS", "14.8 for phosphoric (one proton) to 36.8 for sulfuric"),
    },
  },
  examples: [
    {
      given: { acid: "sulfuric", percent_by_weight: 0.98, specific_gravity: 1.84 },
      gives: 36.8,
      within: 0.051,
      from: cite("REAGENTS", "sulfuric, 98 %, 1.84: 36.8 N"),
    },
    {
      given: { acid: "nitric", percent_by_weight: 0.7, specific_gravity: 1.42 },
      gives: 15.8,
      within: 0.051,
      from: cite("REAGENTS", "nitric, 70 %, 1.42: 15.8 N"),
    },
    {
      given: { acid: "phosphoric", percent_by_weight: 0.75, specific_gravity: 1.58 },
      gives: 12.093,
      within: 0.001,
      from: cite("ARITHMETIC", "1580 g x 0.75 = 1185 g; / 97.994 g/mol, one proton"),
    },
  ],
  mistakes: [
    {
      slip: "The specific gravity was left out: a litre of acid weighs more than a litre of water",
      instead: () => ({ specific_gravity: 1 }),
    },
    {
      slip: "One of the two protons of sulfuric acid was counted",
      answer: ({ acid }, _constants, right) => (acid === "sulfuric" ? right / 2 : NaN),
    },
    {
      slip: "All three protons of phosphoric acid were counted",
      answer: ({ acid }, _constants, right) => (acid === "phosphoric" ? right * 3 : NaN),
    },
    { slip: "The acid was taken as pure", instead: () => ({ percent_by_weight: 1 }) },
  ],
  seeAlso: ["ACID_VOLUME"],
  caution: ACID_CAUTION,
  native: `1000 * SG * w * ${EQUIVALENTS_PER_GRAM}`,
  compute({ acid, percent_by_weight, specific_gravity }, show) {
    const { atoms, protons } = ACIDS[acid];
    const mass = show(
      `M = ${molarMassFormula(atoms)}`,
      molarMass(atoms),
      "molar mass",
      `Weight of 1 mol of ${acid} acid`,
    );
    const z = show(`z = ${protons}`, protons, "count", "Protons in the working range");
    const normality = (1000 * specific_gravity * percent_by_weight * z) / mass;
    return show("N = 1000 * SG * w * z / M", normality, "normality", "Equivalents in a litre of acid");
  },
});
