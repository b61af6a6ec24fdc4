import { cite, defineFunction, type Show } from "../../../kernel";
import { MG_PER_MEQ } from "./atomicWeights";

interface Cations {
  readonly sodium: number;
  readonly calcium: number;
  readonly magnesium: number;
}

function inMeq({ sodium, calcium, magnesium }: Cations, show: Show): Cations {
  return {
    sodium: show("Nae = Na / 22.99", sodium / MG_PER_MEQ.sodium, "equivalents", "Sodium, 22.990 mg a meq"),
    calcium: show("Cae = Ca / 20.039", calcium / MG_PER_MEQ.calcium, "equivalents", "Calcium, 40.078 / 2 mg a meq"),
    magnesium: show(
      "Mge = Mg / 12.1525",
      magnesium / MG_PER_MEQ.magnesium,
      "equivalents",
      "Magnesium, 24.305 / 2 mg a meq",
    ),
  };
}

function inPpm({ sodium, calcium, magnesium }: Cations): Cations {
  return {
    sodium: sodium * MG_PER_MEQ.sodium,
    calcium: calcium * MG_PER_MEQ.calcium,
    magnesium: magnesium * MG_PER_MEQ.magnesium,
  };
}

const CATION = { quantity: "as named", atLeast: 0 } as const;

export const sodiumAdsorption = defineFunction({
  name: "SODIUM_ADSORPTION",
  group: "Feed and water quality",
  summary: "Sodium against calcium and magnesium: the sodium adsorption ratio of a water",
  formula: "SAR = Na / sqrt((Ca + Mg) / 2), in meq/L",
  source: [
    cite("SALINITY_LAB", "definition of the SAR"),
    cite("CSUS_GLOSSARY", "mg/L over 23.0, 20.0 and 12.15 are meq/L"),
  ],
  assumptions: [
    'SAR is defined in meq/L only. With "ppm" each ion is brought to meq/L first: mg/L of the ion itself, not as CaCO3.',
    "Ratio of the water, not of the substrate; bicarbonate that takes calcium out of solution is not allowed for (that would be the adjusted ratio).",
    "Its classes were made for field soils. In containers look at sodium and chloride themselves too.",
    "Without calcium and magnesium there is no answer.",
  ],
  params: {
    sodium: { ...CATION, symbol: "Na", about: "Sodium; 0 is a value, so leave no blank" },
    calcium: { ...CATION, symbol: "Ca", about: "Calcium, in the same unit; 0 is a value, so leave no blank" },
    magnesium: { ...CATION, symbol: "Mg", about: "Magnesium, in the same unit; 0 is a value, so leave no blank" },
    basis: {
      kind: "word",
      words: ["meq", "ppm"],
      default: "meq",
      about: 'Unit of all three: "meq" per litre, or "ppm" (mg/L of the ion)',
    },
  },
  result: {
    quantity: "factor",
    symbol: "SAR",
    about: "Sodium adsorption ratio",
    usual: {
      us: [0, 9],
      metric: [0, 9],
      high: "above 9 is severe; were ppm taken for meq?",
      source: cite("FAO29_RECALLED", "Table 1: 3 and 9"),
    },
  },
  examples: [
    {
      given: { sodium: 7.73, calcium: 2.32, magnesium: 1.44 },
      gives: 5.638,
      within: 0.001,
      from: cite("ARITHMETIC", "(2.32 + 1.44) / 2 = 1.88, its root 1.3711; 7.73 / 1.3711"),
    },
    {
      given: { sodium: 178, calcium: 46.5, magnesium: 17.5, basis: "ppm" },
      gives: 5.6464,
      within: 0.0005,
      from: cite("ARITHMETIC", "7.7425, 2.3205 and 1.4400 meq/L; 7.7425 / sqrt(1.88025)"),
    },
  ],
  mistakes: [
    {
      slip: "ppm were put in where meq per litre belong",
      // In "ppm" they are brought to meq again, which leaves the ppm as they stood.
      instead: inPpm,
    },
    {
      slip: "Calcium and magnesium were added, but not halved",
      answer: (_given, _constants, right) => right * Math.SQRT1_2,
    },
    {
      slip: "The root was halved, not the sum under it",
      answer: (_given, _constants, right) => right * Math.SQRT2,
    },
    {
      slip: "The root was left out",
      answer: ({ sodium, basis }, _constants, right) => {
        const meq = basis === "ppm" ? sodium / MG_PER_MEQ.sodium : sodium;
        return (right * right) / meq;
      },
    },
    { slip: "Magnesium was left out", instead: () => ({ magnesium: 0 }) },
  ],
  seeAlso: ["CLOGGING_RISK", "ION_BUILDUP", "LEACHING_REQUIREMENT"],
  native: 'IF(basis = "ppm", (Na / 22.99) / SQRT((Ca / 20.039 + Mg / 12.1525) / 2), Na / SQRT((Ca + Mg) / 2))',
  compute({ sodium, calcium, magnesium, basis }, show, { noAnswer }) {
    if (calcium === 0 && magnesium === 0) {
      throw noAnswer("calcium and magnesium are both 0; the ratio has no bound in such a soft water", "calcium");
    }
    if (basis === "meq") {
      const ratio = sodium / Math.sqrt((calcium + magnesium) / 2);
      return show("SAR = Na / SQRT((Ca + Mg) / 2)", ratio, "factor", "Sodium adsorption ratio");
    }
    const meq = inMeq({ sodium, calcium, magnesium }, show);
    const ratio = meq.sodium / Math.sqrt((meq.calcium + meq.magnesium) / 2);
    return show("SAR = Nae / SQRT((Cae + Mge) / 2)", ratio, "factor", "Sodium adsorption ratio");
  },
});
