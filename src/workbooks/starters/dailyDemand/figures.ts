/** July 2026 in Yard B of Tern Hollow, all invented, as a US and as a metric nursery would write it down. */
import type { Edition } from "../../kit";

type Reading = number | null;

export interface Figures {
  readonly elevation: number;
  readonly pot: Readonly<Record<"top" | "bottom" | "height" | "inRow" | "between", number>>;
  readonly flow: number;
  readonly startDeficit: number;
  readonly tmax: readonly Reading[];
  readonly tmin: readonly Reading[];
  readonly rain: readonly number[];
  readonly irrigation: readonly number[];
  /** Weights of a pot: drained after watering, and a day later before the next. */
  readonly drained: readonly number[];
  readonly dayLater: readonly number[];
}

/** 1 July 2026. */
export const FIRST_DAY = 46_204;
export const DAYS = 31;
const STORM = 14;
export const WEIGHED_ON = [7, 16, 21, 28].map((day) => FIRST_DAY + day - 1);

const dryBut = (storm: number): readonly number[] =>
  Array.from({ length: DAYS }, (_day, at) => (at === STORM - 1 ? storm : 0));

/** The clock stayed as it was through the hot week; one day off after the storm; on the 23rd the pots were refilled. */
const clock = (early: number, hot: number, refill: number, then: number, late: number): readonly number[] => [
  ...Array<number>(14).fill(early),
  0,
  ...Array<number>(7).fill(hot),
  refill,
  ...Array<number>(4).fill(then),
  ...Array<number>(4).fill(late),
];

// prettier-ignore
export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    elevation: 250,
    pot: { top: 14, bottom: 12, height: 10.5, inRow: 21, between: 24 },
    flow: 1,
    startDeficit: 0.3,
    tmax: [
      86, 87, 88, 88, 86, 85, 88, 93, null, 91, 90, 90, 88, 80, 83,
      86, 90, 93, 95, 96, 97, 96, null, 93, 90, 88, 87, 88, 90, 91, 92,
    ],
    tmin: [
      64, 64, 65, 66, 66, 64, 65, 69, null, 69, 68, 69, 70, 68, 65,
      64, 66, 68, 70, 71, 72, 72, null, 71, 69, 66, 65, 65, 66, 67, 68,
    ],
    rain: dryBut(1.1),
    irrigation: clock(0.6, 0.65, 1, 0.7, 0.65),
    drained: [41.6, 41.9, 41.4, 41.8],
    dayLater: [37, 37.1, 35.7, 37.1],
  },
  metric: {
    elevation: 75,
    pot: { top: 36, bottom: 30, height: 27, inRow: 50, between: 65 },
    flow: 4,
    startDeficit: 1.2,
    tmax: [
      30, 30.5, 31, 31, 30, 29.5, 31, 34, null, 33, 32.5, 32, 31, 27, 28.5,
      30, 32, 34, 35, 35.5, 36, 35.5, null, 34, 32.5, 31, 30.5, 31, 32, 33, 33.5,
    ],
    tmin: [
      18, 18, 18.5, 19, 19, 18, 18.5, 20.5, null, 20.5, 20, 20.5, 21, 20, 18.5,
      18, 19, 20, 21, 21.5, 22, 22, null, 21.5, 20.5, 19, 18.5, 18.5, 19, 19.5, 20,
    ],
    rain: dryBut(28),
    irrigation: clock(2.3, 2.5, 3.6, 2.6, 2.5),
    drained: [18.9, 19.05, 18.8, 18.95],
    dayLater: [16.84, 16.9, 16.25, 16.85],
  },
};

const MONTHS = [
  ["Jan", 31],
  ["Feb", 29],
  ["Mar", 31],
  ["Apr", 30],
  ["May", 31],
  ["Jun", 30],
  ["Jul", 31],
  ["Aug", 31],
  ["Sep", 30],
  ["Oct", 31],
  ["Nov", 30],
  ["Dec", 31],
] as const;

/** Two to a month: the first fifteen days and the rest. */
export const HALF_MONTHS: readonly string[] = MONTHS.flatMap(([month, last]) => [
  `1 to 15 ${month}`,
  `16 to ${last} ${month}`,
]);

/** An evergreen shrub on the ground that it stands on. */
// prettier-ignore
export const CROP_COEFFICIENTS = [
  0.4, 0.4, 0.4, 0.45, 0.5, 0.55, 0.65, 0.75, 0.85, 0.9, 0.95, 1,
  1.05, 1.1, 1.1, 1.1, 1, 0.95, 0.85, 0.75, 0.6, 0.5, 0.4, 0.4,
];
