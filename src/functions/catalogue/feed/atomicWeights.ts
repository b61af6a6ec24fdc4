/** Conventional atomic weights of IUPAC (abridged to five figures), g/mol, and what is made of them. */
export const ATOMIC_WEIGHTS = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  P: 30.974,
  S: 32.06,
  K: 39.098,
  Ca: 40.078,
} as const;

export type ElementSymbol = keyof typeof ATOMIC_WEIGHTS;

/** How many atoms of each element a formula has, in the order in which it is written: H2SO4. */
export type Atoms = Partial<Readonly<Record<ElementSymbol, number>>>;

function parts(atoms: Atoms): [count: number, weight: number][] {
  return Object.entries(atoms).map(([element, count]) => [count, ATOMIC_WEIGHTS[element as ElementSymbol]]);
}

export function molarMass(atoms: Atoms): number {
  return parts(atoms).reduce((sum, [count, weight]) => sum + count * weight, 0);
}

/** The same sum as a spreadsheet takes it: "2 * 1.008 + 32.06 + 4 * 15.999". */
export function molarMassFormula(atoms: Atoms): string {
  return parts(atoms)
    .map(([count, weight]) => (count === 1 ? String(weight) : `${count} * ${weight}`))
    .join(" + ");
}

/** What 1 meq weighs in mg: the atomic weight over the charge. */
export const MG_PER_MEQ = { sodium: 22.99, calcium: 40.078 / 2, magnesium: 24.305 / 2 } as const;

/** 1 meq of alkalinity in mg: as CaCO3, (40.078 + 12.011 + 3 x 15.999) / 2, and as HCO3. The trade prints 50.04 and 61.02. */
export const ALKALINITY_MG_PER_MEQ = { CaCO3: 50.043, HCO3: 61.016 } as const;
