/** Two feed rooms of Tern Hollow, all figures invented: one weighs in pounds, one in kilograms. */
import type { Edition } from "../../kit";

export interface Figures {
  readonly stockVolume: number;
  readonly price: number;
  readonly most: number;
  readonly treated: number;
  readonly stockUsed: number;
  readonly tank: number;
  readonly returned: number;
  readonly fresh: number;
}

export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: { stockVolume: 50, price: 1.35, most: 3, treated: 60, stockUsed: 0.61, tank: 400, returned: 260, fresh: 140 },
  metric: {
    stockVolume: 200,
    price: 3,
    most: 0.35,
    treated: 250,
    stockUsed: 2.54,
    tank: 1500,
    returned: 975,
    fresh: 525,
  },
};

/** Monday, 6 July 2026, as a serial number. */
const MONDAY = 46_209;
const READINGS = [1.31, 1.28, 1.24, 1.33, 1.4, 1.46, 1.35, 1.7, 1.32, 1];

export const LOG_ROWS = 14;
export const DATES = READINGS.map((_reading, day) => MONDAY + day);
export { READINGS };

export interface Product {
  readonly name: string;
  readonly calcium: "yes" | "no";
  readonly clouds: "yes" | "no";
  readonly tank: "A" | "B";
}

/** Calcium clouds with sulphate and with phosphate in a concentrate. */
export const PRODUCTS: readonly Product[] = [
  { name: "calcium nitrate", calcium: "yes", clouds: "no", tank: "A" },
  { name: "iron chelate", calcium: "no", clouds: "no", tank: "A" },
  { name: "20-10-20", calcium: "no", clouds: "yes", tank: "B" },
  { name: "magnesium sulphate", calcium: "no", clouds: "yes", tank: "B" },
];
export const PRODUCT_ROWS = 6;
