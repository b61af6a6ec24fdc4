import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { ACID_CAUTION, NUTRIENT_NOTE } from "./acids";
import { ALKALINITY_MG_PER_MEQ } from "./atomicWeights";

const { CaCO3, HCO3 } = ALKALINITY_MG_PER_MEQ;

export const acidVolume = defineFunction({
  name: "ACID_VOLUME",
  group: "Feed and water quality",
  summary: "Acid that takes the alkalinity of water down to a target",
  formula: "v = (A - At) / 50.04 x litres / N",
  source: [
    cite("STOICHIOMETRY", "1 meq of acid neutralizes 1 meq of alkalinity"),
    cite("NCSU_ALKALINITY", "1 meq/L is 50.04 mg/L of CaCO3"),
  ],
  assumptions: [
    "Alkalinity as CaCO3. From HCO3 in ppm multiply by 0.820 (they differ by 22 %), from meq/L by 50.04. Hardness, also given as CaCO3, is another quantity.",
    "Stoichiometry only: it sets the alkalinity that is left, not a pH. To reach about pH 5.8, some 80 % of the alkalinity must go.",
    "Published rates differ by 6 % and more, since strengths vary and some count to a pH: start lower, and measure.",
    "A target of 0 takes all buffer away and the pH falls to about 4.5.",
    NUTRIENT_NOTE,
  ],
  params: {
    alkalinity: {
      quantity: "alkalinity",
      symbol: "A",
      above: 0,
      about: "Alkalinity of the water, ppm as CaCO3",
      usual: {
        us: [20, 500],
        metric: [20, 500],
        low: "looks like meq/L: multiply by 50.04",
        high: "check the report again: as HCO3, or hardness?",
        source: cite("PRACTICE", "well and surface waters"),
      },
    },
    target_alkalinity: {
      quantity: "alkalinity",
      symbol: "At",
      atLeast: 0,
      about: "Alkalinity to leave, ppm as CaCO3; 0 is a value, so leave no blank",
      usual: {
        us: [40, 200],
        metric: [40, 200],
        low: "leaves hardly any buffer: the pH may fall below 5",
        high: "hardly needs acid",
        source: cite("PRACTICE", "60 to 100 for plugs, 80 to 120 for small pots, 100 to 200 for large pots"),
      },
    },
    acid_normality: {
      quantity: "normality",
      symbol: "N",
      above: 0,
      atMost: 40,
      guard: "none of the three acids is stronger",
      hint: "ACID_NORMALITY gives it from strength and specific gravity",
      about: "Strength of the acid in equivalents per litre, from ACID_NORMALITY",
      usual: {
        us: [3, 37],
        metric: [3, 37],
        low: "looks like a diluted acid, or like the specific gravity",
        high: "stronger than any of them",
        source: cite("REAGENTS", "14.8 for phosphoric (one proton) to 36.8 for sulfuric"),
      },
    },
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Water to be treated" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "litres of a volume" },
  result: { quantity: "acid volume", symbol: "v", about: "Acid as it is in the drum" },
  examples: [
    {
      given: { alkalinity: 236, target_alkalinity: 100, acid_normality: 34.8, volume: 100, units: "us" },
      gives: 29.57,
      within: 0.07,
      from: cite("UMASS_ACID", "1 fl oz (29.57 mL) of sulfuric, 93 %, in 100 gal neutralizes 136.0 ppm"),
    },
    {
      given: { alkalinity: 250, target_alkalinity: 150, acid_normality: 34.8, volume: 100, units: "us" },
      gives: 21.74,
      within: 0.01,
      from: cite("ARITHMETIC", "100 / 50.043 = 1.9983 meq/L in 378.54 L = 756.4 meq; / 34.8 meq per mL"),
    },
    {
      given: { alkalinity: 200.086, target_alkalinity: 100, acid_normality: 34.8, volume: 1000, units: "metric" },
      gives: 57.47126436781609,
      from: cite("ARITHMETIC", "100.086 ppm are 2 meq/L; 2000 meq / 34.8"),
    },
  ],
  mistakes: [
    {
      slip: "Alkalinity in ppm of HCO3 was taken for ppm of CaCO3",
      instead: ({ alkalinity }) => ({ alkalinity: (alkalinity * HCO3) / CaCO3 }),
    },
    { slip: "All of the alkalinity was neutralized, down to 0", instead: () => ({ target_alkalinity: 0 }) },
    { slip: "ppm were used as meq/L, undivided by 50", answer: (_given, _constants, right) => right * CaCO3 },
    {
      slip: "CaCO3 was counted as 100 mg a meq, its molar mass, not as 50",
      answer: (_given, _constants, right) => right / 2,
    },
    {
      slip: "Gallons were used as litres",
      answer: ({ units }, { k }, right) => (units === "us" ? right / k : NaN),
    },
  ],
  seeAlso: ["ACID_NORMALITY", "BLEND_SHARE", "CLOGGING_RISK"],
  caution: ACID_CAUTION,
  compute({ alkalinity, target_alkalinity, acid_normality, volume }, show, { constants: { k }, noAnswer }) {
    if (target_alkalinity > alkalinity) {
      const why = `target_alkalinity is ${target_alkalinity}, above alkalinity (${alkalinity}): acid only takes it down`;
      throw noAnswer(why, "target_alkalinity");
    }
    const excess = (alkalinity - target_alkalinity) / CaCO3;
    const meq = show("d = (A - At) / 50.043", excess, "equivalents", "Alkalinity to neutralize, 50.043 mg CaCO3 a meq");
    const litres = show("W = k * V", k * volume, "volume in L", "Water in litres");
    return show("v = d * W / N", (meq * litres) / acid_normality, "acid volume", "Acid: meq over meq per mL");
  },
});
