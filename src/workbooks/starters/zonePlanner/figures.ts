/** The zones of Tern Hollow, all invented, as a US and as a metric nursery would write them down. */
import type { Edition } from "../../kit";

export type Inputs = readonly (number | string | null)[];

export interface Figures {
  readonly et: number;
  readonly supply: number;
  readonly spaced: Readonly<Record<"crop" | "plants" | "inRow" | "between" | "flow" | "length" | "bore", Inputs>>;
  readonly line: Readonly<
    Record<"crop" | "plants" | "top" | "inRow" | "between" | "spacing" | "flow" | "length" | "bore", Inputs>
  >;
  readonly overhead: Readonly<Record<"crop" | "top" | "inRow" | "between" | "rate" | "flow", Inputs>>;
  readonly boom: Readonly<Record<"depths" | "lengths", Inputs>> & Readonly<Record<"flow" | "speed" | "swath", number>>;
}

export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    et: 0.25,
    supply: 120,
    spaced: {
      crop: ["holly, #15", "viburnum, #7", "boxwood, #5", "maple, #10", null, null],
      plants: [600, 2400, 2000, 700, null, null],
      inRow: [36, 21, 18, 30, null, null],
      between: [36, 24, 18, 30, null, null],
      flow: [6, 1, 1, 5, null, null],
      length: [250, 300, 250, 220, null, null],
      bore: [1.61, 2.067, 1.61, 1.61, null, null],
    },
    line: {
      crop: ["hydrangea, #5", null],
      plants: [900, null],
      top: [11, null],
      inRow: [12, null],
      between: [24, null],
      spacing: [12, null],
      flow: [1, null],
      length: [180, null],
      bore: [1.049, null],
    },
    overhead: {
      crop: ["liners, #1", null],
      top: [6.5, null],
      inRow: [8, null],
      between: [8, null],
      rate: [0.45, null],
      flow: [18, null],
    },
    boom: { depths: [0.15, 0.1, 0], lengths: [60, 40, 20], flow: 20, speed: 40, swath: 30 },
  },
  metric: {
    et: 6.4,
    supply: 450,
    spaced: {
      crop: ["holly, 57 L", "viburnum, 26 L", "boxwood, 19 L", "maple, 38 L", null, null],
      plants: [600, 2400, 2000, 700, null, null],
      inRow: [90, 50, 45, 75, null, null],
      between: [90, 65, 45, 75, null, null],
      flow: [24, 4, 4, 20, null, null],
      length: [75, 90, 75, 65, null, null],
      bore: [40.9, 52.5, 40.9, 40.9, null, null],
    },
    line: {
      crop: ["hydrangea, 19 L", null],
      plants: [900, null],
      top: [28, null],
      inRow: [30, null],
      between: [60, null],
      spacing: [30, null],
      flow: [4, null],
      length: [55, null],
      bore: [26.6, null],
    },
    overhead: {
      crop: ["liners, 3 L", null],
      top: [16.5, null],
      inRow: [20, null],
      between: [20, null],
      rate: [11, null],
      flow: [70, null],
    },
    boom: { depths: [4, 2.5, 0], lengths: [18, 12, 6], flow: 75, speed: 12, swath: 9 },
  },
};
