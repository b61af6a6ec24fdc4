/** The audits at Tern Hollow, all invented, as a US and as a metric nursery would write them down. */
import type { Edition } from "../../kit";

export const CAN_COLUMNS = 6;
export const CAN_ROWS = 4;

export interface Figures {
  readonly block: string;
  readonly catches: readonly (readonly number[])[];
  readonly can: number;
  readonly wind: number;
  readonly windMost: number;
  readonly pressure: number;
  readonly usualPressure: number;
  readonly area: number;
  readonly depth: number;
  readonly dripZone: string;
  readonly rated: number;
  /** mL from each emitter, eight at the head, in the middle, at the tail. */
  readonly emitters: readonly number[];
  readonly stakeZone: string;
  readonly bottle: number;
  /** Seconds to fill the bottle, eight at the head, in the middle, at the tail. */
  readonly seconds: readonly number[];
}

export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    block: "Yard G, azaleas in #1 pots",
    catches: [
      [112, 98, 105, 121, 84, 76],
      [118, 109, 95, 88, 126, 101],
      [92, 115, 107, 79, 70, 103],
      [119, 96, 110, 90, 85, 113],
    ],
    can: 4.25,
    wind: 3,
    windMost: 5,
    pressure: 44,
    usualPressure: 45,
    area: 5400,
    depth: 0.45,
    dripZone: "Yard B, drippers of 1 gal/h",
    rated: 1,
    emitters: [33, 32, 34, 32, 33, 31, 33, 32, 32, 31, 33, 30, 32, 31, 32, 29, 30, 29, 31, 28, 30, 25, 31, 29],
    stakeZone: "Yard A, spray stakes of 6 gal/h",
    bottle: 355,
    seconds: [50, 53, 56, 51, 58, 55, 52, 57, 54, 59, 62, 55, 60, 57, 64, 56, 58, 66, 61, 72, 59, 84, 63, 68],
  },
  metric: {
    block: "Yard G, azaleas in 3 L pots",
    catches: [
      [68, 60, 64, 73, 51, 46],
      [71, 66, 58, 54, 74, 61],
      [56, 70, 65, 48, 43, 62],
      [72, 59, 67, 55, 52, 69],
    ],
    can: 10,
    wind: 1.2,
    windMost: 2,
    pressure: 300,
    usualPressure: 310,
    area: 500,
    depth: 11,
    dripZone: "Yard B, drippers of 4 L/h",
    rated: 4,
    emitters: [35, 34, 36, 34, 35, 33, 35, 34, 34, 33, 35, 32, 34, 33, 34, 31, 32, 31, 33, 30, 32, 26, 33, 31],
    stakeZone: "Yard A, spray stakes of 24 L/h",
    bottle: 500,
    seconds: [69, 72, 76, 70, 78, 75, 71, 77, 74, 80, 84, 75, 81, 78, 87, 76, 79, 90, 83, 98, 80, 114, 86, 92],
  },
};

export const PLACES = ["head", "middle", "tail"] as const;
const EACH = 8;
export const EMITTERS = PLACES.length * EACH;
/** Where each emitter of a test stands. */
export const PLACED: readonly string[] = PLACES.flatMap((place) => Array.from({ length: EACH }, () => place));
export const NUMBERED: readonly number[] = PLACES.flatMap(() => Array.from({ length: EACH }, (_, at) => at + 1));
