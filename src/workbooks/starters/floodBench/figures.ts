/** The flood benches of Tern Hollow, all invented, as a US and as a metric house would write them down. */
import type { Edition } from "../../kit";

export const MOST_BENCHES = 6;

export type Column = readonly (number | string | null)[];

export interface Figures {
  readonly flow: number;
  readonly tank: number;
  readonly start: number;
  readonly dead: number;
  readonly usual: readonly [least: number, most: number];
  readonly waterWeight: number;
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly pots: number;
  readonly base: number;
  readonly before: number;
  readonly after: number;
}

export const FIGURES: Readonly<Record<Edition, Figures>> = {
  us: {
    flow: 15,
    tank: 600,
    start: 545,
    dead: 25,
    usual: [0.5, 1],
    waterWeight: 8.345,
    length: 40,
    width: 6,
    depth: 1,
    pots: 480,
    base: 4.25,
    before: 2.1,
    after: 2.26,
  },
  metric: {
    flow: 60,
    tank: 2200,
    start: 1980,
    dead: 100,
    usual: [20, 40],
    waterWeight: 1,
    length: 12,
    width: 1.8,
    depth: 25,
    pots: 450,
    base: 11,
    before: 0.95,
    after: 1.02,
  },
};

const BENCHES = 4;

/** The same in each of the benches, and nothing in the rows left free. */
export const onEveryBench = (value: number): Column =>
  Array.from({ length: MOST_BENCHES }, (_, row) => (row < BENCHES ? value : null));
