/**
 * What a label or a laboratory prints, and the element in it. Label P and K are oxides by law or custom in most
 * countries, Ca, Mg and S in some; nitrate and ammonium come from water reports. Weights: IUPAC, conventional values.
 */
import { molarMass, type Atoms } from "./atomicWeights";

interface Oxide {
  /** The element asked for, with its atoms in one unit of the formula. */
  readonly element: Atoms;
  readonly all: Atoms;
}

export const OXIDES = {
  P2O5: { element: { P: 2 }, all: { P: 2, O: 5 } },
  K2O: { element: { K: 2 }, all: { K: 2, O: 1 } },
  CaO: { element: { Ca: 1 }, all: { Ca: 1, O: 1 } },
  MgO: { element: { Mg: 1 }, all: { Mg: 1, O: 1 } },
  SO3: { element: { S: 1 }, all: { S: 1, O: 3 } },
  NO3: { element: { N: 1 }, all: { N: 1, O: 3 } },
  NH4: { element: { N: 1 }, all: { N: 1, H: 4 } },
} as const satisfies Record<string, Oxide>;

export type OxideName = keyof typeof OXIDES;
export const OXIDE_NAMES = Object.keys(OXIDES) as OxideName[];

/** Element over oxide, by weight: 0.4364 for P2O5. */
export function elementShare(oxide: OxideName): number {
  return molarMass(OXIDES[oxide].element) / molarMass(OXIDES[oxide].all);
}
