/** Leaching tests at Tern Hollow, all invented, as a US and as a metric nursery would write them down. */
import type { Edition } from "../../kit";

export interface LeachingTest {
  readonly date: number;
  readonly zone: string;
  readonly minutes: number;
  readonly by: string;
  /** mL, pot by pot. */
  readonly applied: readonly number[];
  readonly leachate: readonly number[];
  /** mS/cm of every fourth pot's leachate, the first one's first. */
  readonly ec: readonly number[];
}

export interface Figures {
  readonly crops: readonly string[];
  readonly flows: readonly number[];
  readonly tests: readonly LeachingTest[];
}

/** 8 June, 22 June and 6 July 2026. */
const [FIRST, SECOND, THIRD] = [46_181, 46_195, 46_209];

export const ZONES = ["Yard A", "Yard B", "Yard C", "Yard D"];
export const EMITTERS = [1, 2, 1, 1];
const DRY = Array<number>(10).fill(0);

// prettier-ignore
export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    crops: ["holly, #15", "viburnum, #7", "boxwood, #5", "maple, #10"],
    flows: [6, 1, 1, 5],
    tests: [
      {
        date: FIRST, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1.6, 1.5, 1.7],
        applied: [7500, 7400, 7600, 7600, 7400, 7500, 7500, 7300, 7600, 7600],
        leachate: [1300, 1100, 1400, 1500, 1000, 1200, 1300, 1100, 1400, 1450],
      },
      {
        date: SECOND, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1.4, 1.3, 1.5],
        applied: [7600, 7500, 7400, 7700, 7300, 7400, 7600, 7500, 7400, 7600],
        leachate: [1900, 1700, 1800, 2100, 1500, 1700, 1900, 1800, 1700, 1900],
      },
      {
        date: SECOND, zone: "Yard B", minutes: 21, by: "crew 2", ec: [1.7, 1.8, 1.6],
        applied: [2600, 2650, 2700, 2600, 2550, 2650, 2700, 2600, 2650, 2700],
        leachate: [230, 240, 260, 220, 210, 240, 260, 230, 250, 260],
      },
      {
        date: THIRD, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1, 0.9, 1.1],
        applied: [7600, 7400, 7500, 7700, 7300, 7500, 7600, 7400, 7500, 7500],
        leachate: [3300, 2700, 3000, 3500, 2500, 2900, 3200, 2800, 3100, 3000],
      },
      {
        date: THIRD, zone: "Yard B", minutes: 21, by: "crew 2", ec: [1.5, 1.6, 1.4],
        applied: [2650, 2600, 2650, 2700, 2600, 2600, 2700, 2650, 2600, 2750],
        leachate: [310, 330, 320, 340, 290, 300, 330, 320, 310, 330],
      },
      {
        date: THIRD, zone: "Yard C", minutes: 12, by: "crew 2", ec: [], leachate: DRY,
        applied: [750, 760, 740, 770, 750, 760, 730, 750, 770, 760],
      },
    ],
  },
  metric: {
    crops: ["holly, 57 L", "viburnum, 26 L", "boxwood, 19 L", "maple, 38 L"],
    flows: [24, 4, 4, 20],
    tests: [
      {
        date: FIRST, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1.6, 1.5, 1.7],
        applied: [8000, 7900, 8100, 8100, 7900, 8000, 8000, 7800, 8100, 8100],
        leachate: [1400, 1200, 1450, 1550, 1100, 1300, 1400, 1200, 1450, 1550],
      },
      {
        date: SECOND, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1.4, 1.3, 1.5],
        applied: [8100, 8000, 7900, 8200, 7800, 7900, 8100, 8000, 7900, 8100],
        leachate: [2000, 1850, 1900, 2250, 1600, 1800, 2050, 1900, 1850, 2000],
      },
      {
        date: SECOND, zone: "Yard B", minutes: 20, by: "crew 2", ec: [1.7, 1.8, 1.6],
        applied: [2650, 2700, 2600, 2650, 2700, 2600, 2700, 2650, 2650, 2700],
        leachate: [260, 280, 250, 270, 280, 250, 280, 260, 260, 270],
      },
      {
        date: THIRD, zone: "Yard A", minutes: 20, by: "crew 1", ec: [1, 0.9, 1.1],
        applied: [8100, 7900, 8000, 8200, 7800, 8000, 8100, 7900, 8000, 8000],
        leachate: [3500, 2900, 3200, 3700, 2700, 3100, 3400, 3000, 3300, 3200],
      },
      {
        date: THIRD, zone: "Yard B", minutes: 20, by: "crew 2", ec: [1.5, 1.6, 1.4],
        applied: [2700, 2650, 2700, 2650, 2600, 2650, 2700, 2700, 2600, 2650],
        leachate: [330, 320, 350, 330, 310, 330, 345, 350, 320, 340],
      },
      {
        date: THIRD, zone: "Yard C", minutes: 12, by: "crew 2", ec: [], leachate: DRY,
        applied: [790, 800, 780, 810, 800, 800, 790, 800, 810, 800],
      },
    ],
  },
};
