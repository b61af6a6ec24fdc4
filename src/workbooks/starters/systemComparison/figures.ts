/** One yard of Tern Hollow and six ways to water it, all invented, as a US and as a metric nursery would write them down. */
import type { Edition } from "../../kit";

/** The first is the baseline. */
export const SYSTEMS = [
  "overhead",
  "spray stakes",
  "drip line over pots",
  "capillary mat",
  "ebb-and-flow bench",
  "boom",
] as const;

type Inputs = readonly (number | string | null)[];

export interface Figures {
  readonly crop: Readonly<Record<"pot" | "plants" | "days" | "materials" | "labour" | "invested", number>>;
  readonly meter: number;
  readonly tariff: { readonly limits: Inputs; readonly prices: Inputs; readonly fixed: number };
  readonly bills: { readonly names: Inputs; readonly shares: Inputs };
  readonly prices: Readonly<Record<"kwh" | "lift" | "fertilizer" | "wage" | "interest", number>>;
  /** Smallest and largest pot that each system is for. */
  readonly pots: Readonly<Record<"from" | "to", Inputs>>;
  readonly water: Readonly<Record<"peak" | "enters" | "head", Inputs>>;
  readonly work: Readonly<Record<"hand" | "checking" | "cleaning" | "placing" | "upkeep", Inputs>>;
  readonly investment: Readonly<Record<"wearing" | "rest" | "once", Inputs>>;
}

/** What does not hang on units. */
export const SHARED = {
  house: ["no", "no", "no", "yes", "yes", "yes"],
  pulses: [0, 0.1, 0.1, 0, 0, 0],
  rain: [0, 0.05, 0.05, 0, 0, 0],
  leached: [0.25, 0.15, 0.34, 0.1, 0.05, 0.15],
  ppm: [100, 120, 100, 80, 80, 100],
  lost: [0.05, 0.035, 0.055, 0.08, 0.04, 0.045],
  life: [5, 5, 5, 3, 8, 5],
  grant: [0, 0, 0, 0, 0, 0],
} as const;

export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    crop: { pot: 7, plants: 12_000, days: 200, materials: 6.5, labour: 4.5, invested: 9 },
    meter: 3020,
    tariff: { limits: [100, 300, null, null], prices: [1.8, 2.4, 3.1, null], fixed: 45 },
    bills: {
      names: ["April", "May", "June", "July", "August", "September", "October"],
      shares: [0.07, 0.13, 0.18, 0.21, 0.19, 0.14, 0.08],
    },
    prices: { kwh: 0.14, lift: 80, fertilizer: 1.35, wage: 22, interest: 0.08 },
    pots: { from: [0.1, 5, 1, 0.1, 0.1, 0.02], to: [10, 100, 5, 1, 3, 3] },
    water: {
      peak: [2.19, 0.71, 1.35, 0.9, 0.63, 1.93],
      enters: [0.37, 1, 0.67, 0.74, 1, 0.37],
      head: [150, 90, 80, 60, 50, 120],
    },
    work: {
      hand: [14, 4, 8, 8, 2, 6],
      checking: [1, 6, 4, 1, 1, 1],
      cleaning: [0.5, 1, 1, 4, 3, 1],
      placing: [0, 40, 60, 30, 0, 0],
      upkeep: [650, 620, 560, 900, 2400, 1200],
    },
    investment: {
      wearing: [0, 1.15, 0.65, 3.15, 0.7, 0.15],
      rest: [0, 1.65, 0.75, 3.85, 31.5, 4.9],
      once: [0, 8000, 7500, 6000, 25_000, 10_000],
    },
  },
  metric: {
    crop: { pot: 26, plants: 10_000, days: 180, materials: 6, labour: 4.5, invested: 8.5 },
    meter: 8400,
    tariff: { limits: [500, 1500, null, null], prices: [0.6, 0.8, 1, null], fixed: 60 },
    bills: {
      names: ["March, April", "May, June", "July, August", "September, October"],
      shares: [0.12, 0.34, 0.38, 0.16],
    },
    prices: { kwh: 0.2, lift: 25, fertilizer: 2.9, wage: 24, interest: 0.07 },
    pots: { from: [0.4, 18, 4, 0.4, 0.4, 0.1], to: [40, 400, 20, 4, 12, 12] },
    water: {
      peak: [8.1, 2.7, 4.8, 3.3, 2.4, 7.2],
      enters: [0.38, 1, 0.72, 0.77, 1, 0.38],
      head: [45, 28, 25, 18, 15, 36],
    },
    work: {
      hand: [12, 4, 7, 7, 2, 5],
      checking: [1, 5, 4, 1, 1, 1],
      cleaning: [0.5, 1, 1, 4, 3, 1],
      placing: [0, 35, 50, 25, 0, 0],
      upkeep: [600, 580, 520, 800, 2200, 1100],
    },
    investment: {
      wearing: [0, 1.1, 0.6, 3, 0.7, 0.15],
      rest: [0, 1.6, 0.7, 3.6, 30, 4.6],
      once: [0, 7500, 7000, 5500, 24_000, 9500],
    },
  },
};
