/** Independent libraries as judges: the chemistry of the elements, and units. */
import { elementsObject } from "chemical-elements";
import { unit, type Unit } from "mathjs";
import { ACIDS, nutrientPerMeq } from "../../../src/functions/catalogue/feed/acids";
import {
  ALKALINITY_MG_PER_MEQ,
  ATOMIC_WEIGHTS,
  molarMass,
  MG_PER_MEQ,
} from "../../../src/functions/catalogue/feed/atomicWeights";
import { elementShare, OXIDE_NAMES } from "../../../src/functions/catalogue/feed/oxides";
import { answerOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";

const CHEMISTRY = "chemical-elements 2.3.3, its atomic weights";
const UNITS = "mathjs 15.2.0, its units";

/**
 * The package weighs the isotopes by their abundance; the conventional values are rounded to five figures and stand for
 * what nature varies by. Sulfur is furthest apart: 32.065 and 32.06, 1.5e-4.
 */
const WEIGHTS_APART = 2e-4;

function weight(element: string): number {
  const known = elementsObject[element];
  if (known?.mass === undefined || known.mass === null) throw new Error(`no weight of ${element}`);
  return known.mass;
}

/** Atomic weight of a formula as it is written: "H2SO4". */
function formulaWeight(formula: string): number {
  return [...formula.matchAll(/([A-Z][a-z]?)(\d*)/g)].reduce(
    (sum, [, element = "", count]) => sum + weight(element) * Number(count || 1),
    0,
  );
}

describe("atomic weights against chemical-elements 2.3.3", () => {
  test.each(Object.entries(ATOMIC_WEIGHTS))("%s %d", (element, value) => {
    expectClose(value, weight(element), WEIGHTS_APART);
  });

  test("1 meq of alkalinity: half of CaCO3, and one HCO3", () => {
    expectClose(ALKALINITY_MG_PER_MEQ.CaCO3, formulaWeight("CaCO3") / 2, WEIGHTS_APART);
    expectClose(ALKALINITY_MG_PER_MEQ.HCO3, formulaWeight("HCO3"), WEIGHTS_APART);
    expectClose(ALKALINITY_MG_PER_MEQ.CaCO3, molarMass({ Ca: 1, C: 1, O: 3 }) / 2, 1e-12);
    expectClose(ALKALINITY_MG_PER_MEQ.HCO3, molarMass({ H: 1, C: 1, O: 3 }), 1e-12);
  });
});

describe(against("ELEMENT_FROM_OXIDE", CHEMISTRY), () => {
  const elements: Record<string, string> = {
    P2O5: "P2",
    K2O: "K2",
    SO3: "S",
    CaO: "Ca",
    MgO: "Mg",
    NO3: "N",
    NH4: "N",
  };

  test.each(OXIDE_NAMES)("%s", (oxide) => {
    const share = formulaWeight(elements[oxide] ?? "") / formulaWeight(oxide);
    expectClose(answerOf("ELEMENT_FROM_OXIDE", { percent: 40, oxide }), 40 * share, WEIGHTS_APART);
    expectClose(elementShare(oxide), share, WEIGHTS_APART);
  });
});

describe(against("SODIUM_ADSORPTION", CHEMISTRY), () => {
  test("mg/L of each ion over its atomic weight by its charge", () => {
    const [sodium, calcium, magnesium] = [178, 46.5, 17.5];
    const meq = [sodium / weight("Na"), (2 * calcium) / weight("Ca"), (2 * magnesium) / weight("Mg")] as const;
    const steps = stepsOf("SODIUM_ADSORPTION", { sodium, calcium, magnesium, basis: "ppm" });
    ["Nae", "Cae", "Mge"].forEach((symbol, index) => expectClose(steps(symbol), meq[index] ?? NaN, WEIGHTS_APART));
    expectClose(steps("SAR"), meq[0] / Math.sqrt((meq[1] + meq[2]) / 2), WEIGHTS_APART);
  });

  test("the weights of the working are those of the table", () => {
    expect(MG_PER_MEQ).toEqual({ sodium: 22.99, calcium: 20.039, magnesium: 12.1525 });
  });
});

describe(against("ACID_NORMALITY", CHEMISTRY), () => {
  test.each([
    ["sulfuric", "H2SO4", 2],
    ["nitric", "HNO3", 1],
    ["phosphoric", "H3PO4", 1],
  ])("%s acid, %s, protons %d", (acid, formula, protons) => {
    const call = { acid, percent_by_weight: 0.6, specific_gravity: 1.5 };
    expectClose(answerOf("ACID_NORMALITY", call), (1500 * 0.6 * protons) / formulaWeight(formula), WEIGHTS_APART);
  });
});

describe(against("ACID_VOLUME", CHEMISTRY), () => {
  test("100 ppm of CaCO3 in 1000 L are 2000 mol of charge over the weight of CaCO3", () => {
    const call = { alkalinity: 180, target_alkalinity: 80, acid_normality: 12, volume: 1000, units: "metric" };
    const charges = (2 * 100 * 1000) / formulaWeight("CaCO3");
    expectClose(answerOf("ACID_VOLUME", call), charges / 12, WEIGHTS_APART);
  });

  test.each([
    ["sulfuric", "S", 2],
    ["nitric", "N", 1],
    ["phosphoric", "P", 1],
  ] as const)("what %s acid adds for each meq, of %s", (acid, element, protons) => {
    expect(ACIDS[acid].protons).toBe(protons);
    expectClose(nutrientPerMeq(acid), weight(element) / protons, WEIGHTS_APART);
  });
});

/** mathjs rounds its gallon to 3.785 L, so a gallon is said in cubic inches: 231 by definition. */
function gallons(count: number): Unit {
  return unit(231 * count, "in^3");
}

function times(strength: string, volume: Unit): Unit {
  return unit(strength).multiply(volume) as Unit;
}

describe(against("FERTILIZER_WEIGHT", UNITS), () => {
  test("175 mg/L of N in 350 gal, in pounds of a product with 17 %", () => {
    const element = times("175 mg/L", gallons(350));
    const call = { ppm: 175, analysis: 0.17, volume: 350, units: "us" };
    expectClose(answerOf("FERTILIZER_WEIGHT", call), element.toNumber("lb") / 0.17, 1e-9);
  });
});

describe(against("PPM_FROM_WEIGHT", UNITS), () => {
  test("2.5 lb of a product with 21 % in 400 gal, in mg/L", () => {
    const strength = unit("2.5 lb").divide(gallons(400)) as Unit;
    const call = { weight: 2.5, analysis: 0.21, volume: 400, units: "us" };
    expectClose(answerOf("PPM_FROM_WEIGHT", call), strength.toNumber("mg/L") * 0.21, 1e-9);
  });
});

describe(against("STOCK_WEIGHT", UNITS), () => {
  test("120 mg/L at 1:128, 30 gal of stock, in pounds of a product with 20 %", () => {
    const element = times("15360 mg/L", gallons(30));
    const call = { ppm: 120, analysis: 0.2, injector_ratio: 128, stock_volume: 30, units: "us" };
    expectClose(answerOf("STOCK_WEIGHT", call), element.toNumber("lb") / 0.2, 1e-9);
  });
});

describe(against("CONVERT_EC", UNITS), () => {
  const spelt = { "mS/cm": "mS/cm", "dS/m": "dS/m", "uS/cm": "uS/cm" } as const;
  const pairs = Object.keys(spelt).flatMap((from) => Object.keys(spelt).map((to) => [from, to] as const));

  test.each(pairs)("%s to %s", (from, to) => {
    const judged = unit(1.37, from).toNumber(to);
    expectClose(answerOf("CONVERT_EC", { value: 1.37, from, to }), judged, 1e-12);
  });
});

describe(against("ACID_VOLUME", UNITS), () => {
  test("water in litres: 100 gal", () => {
    const call = { alkalinity: 250, target_alkalinity: 150, acid_normality: 34.8, volume: 100, units: "us" };
    expectClose(stepsOf("ACID_VOLUME", call)("W"), gallons(100).toNumber("L"), 1e-9);
  });
});
