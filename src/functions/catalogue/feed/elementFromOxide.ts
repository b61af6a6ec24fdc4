import { cite, defineFunction } from "../../../kernel";
import { molarMass, molarMassFormula } from "./atomicWeights";
import { OXIDE_NAMES, OXIDES } from "./oxides";

/** Element over oxide, whichever it is: `IF(oxide = "CaO", 40.078 / (40.078 + 15.999), ...)`. */
const SHARE = OXIDE_NAMES.reduceRight((rest, name) => {
  const { element, all } = OXIDES[name];
  return `IF(oxide = "${name}", (${molarMassFormula(element)}) / (${molarMassFormula(all)}), ${rest})`;
}, "NA()");

export const elementFromOxide = defineFunction({
  name: "ELEMENT_FROM_OXIDE",
  group: "Feed and water quality",
  summary: "The element in what a label prints as oxide, or a laboratory as nitrate or ammonium",
  formula: "e = p x weight of the element / weight of the oxide",
  source: [cite("IUPAC", "H, N, O, Mg, P, S, K, Ca"), cite("VT_FACTORS", "Table 1")],
  assumptions: [
    "The second number of a label is P2O5 and the third K2O, though neither is in the bag: P is 0.436 of it, K 0.830.",
    "P2O5 gives P, K2O K, CaO Ca, MgO Mg, SO3 S, NO3 and NH4 N.",
    "A percentage as the label prints it, 0 to 100. The other functions take the answer / 100 as the analysis. mg/L up to 100 convert alike.",
  ],
  params: {
    percent: {
      quantity: "percent",
      symbol: "p",
      atLeast: 0,
      atMost: 100,
      about: "Percentage that the label prints; 0 is a value, so leave no blank",
      usual: {
        us: [1, 65],
        metric: [1, 65],
        low: "looks like a fraction: write 20, not 0.20",
        source: cite("PRACTICE", "labels of soluble fertilizers"),
      },
    },
    oxide: { kind: "word", words: OXIDE_NAMES, about: "What the percentage is of, as the label writes it" },
  },
  result: { quantity: "percent", symbol: "e", about: "Percentage of the element" },
  examples: [
    {
      given: { percent: 60, oxide: "K2O" },
      gives: 49.8,
      within: 0.051,
      from: cite("VT_FACTORS", "introduction: potassium chloride with 60 % K2O has 49.8 % K"),
    },
    {
      given: { percent: 10, oxide: "P2O5" },
      gives: 4.365,
      within: 0.001,
      from: cite("VT_FACTORS", "Table 1: P2O5 x 0.4365 is P"),
    },
    {
      given: { percent: 20, oxide: "NO3" },
      gives: 4.518,
      within: 0.001,
      from: cite("STOICHIOMETRY", "14.007 / 62.004 = 0.2259"),
    },
  ],
  mistakes: [
    { slip: "The oxide was taken for the element", answer: ({ percent }) => percent },
    {
      slip: "It was divided by the factor, not multiplied",
      answer: ({ percent }, _constants, right) => (percent * percent) / right,
    },
    {
      slip: "The atoms were counted once where the formula has two",
      answer: ({ oxide }, _constants, right) => (oxide === "P2O5" || oxide === "K2O" ? right / 2 : NaN),
    },
  ],
  seeAlso: ["FERTILIZER_WEIGHT", "PPM_FROM_WEIGHT"],
  native: `p * ${SHARE}`,
  compute({ percent, oxide }, show) {
    const { element, all } = OXIDES[oxide];
    const part = show(
      `E = ${molarMassFormula(element)}`,
      molarMass(element),
      "molar mass",
      "Weight of the element in it",
    );
    const whole = show(`M = ${molarMassFormula(all)}`, molarMass(all), "molar mass", `Weight of ${oxide}`);
    return show("e = p * E / M", (percent * part) / whole, "percent", "Percentage of the element");
  },
});
