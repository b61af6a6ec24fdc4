/**
 * The acids that lower the alkalinity of irrigation water. Protons: those that are given off in the working range, down
 * to about pH 5 (phosphoric: one of its three). Weights: IUPAC, conventional values; the nutrient is what the acid
 * leaves in the water for each meq of alkalinity that it neutralizes (S 16.0, N 14.0, P 31.0 mg/L).
 */
import { molarMass, type Atoms } from "./atomicWeights";

interface Acid {
  readonly atoms: Atoms;
  readonly protons: number;
  readonly nutrient: Atoms;
}

export const ACIDS = {
  sulfuric: { atoms: { H: 2, S: 1, O: 4 }, protons: 2, nutrient: { S: 1 } },
  nitric: { atoms: { H: 1, N: 1, O: 3 }, protons: 1, nutrient: { N: 1 } },
  phosphoric: { atoms: { H: 3, P: 1, O: 4 }, protons: 1, nutrient: { P: 1 } },
} as const satisfies Record<string, Acid>;

export type AcidName = keyof typeof ACIDS;
export const ACID_NAMES = Object.keys(ACIDS) as AcidName[];

/** mg of nutrient per litre for each meq/L neutralized. */
export function nutrientPerMeq(acid: AcidName): number {
  return molarMass(ACIDS[acid].nutrient) / ACIDS[acid].protons;
}

export const NUTRIENT_NOTE =
  "The acid feeds too: each meq/L neutralized adds 16.0 mg/L of S (sulfuric), 14.0 of N (nitric) or 31.0 of P (phosphoric). Take it off the feed.";

export const ACID_CAUTION =
  "Acid burns eyes and skin. Always add acid to water, never water to acid; face shield, acid-proof gloves and apron, fresh air, an eyewash within reach. Never mix acid with chlorine (poison gas) or with calcium nitrate concentrate. Use an injector made for acid behind approved backflow prevention. Label, safety data sheet, local code and licensed practice come first; check pH and alkalinity at the hose end before it reaches plants.";
