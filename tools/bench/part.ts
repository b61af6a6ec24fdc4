/** What a part of the benchmarks hands over: lines of figures, each with its target where there is one. */

export interface BenchLine {
  /** What was measured, in words. */
  readonly what: string;
  /** Figures as they are printed, by the part's column heads. */
  readonly figures: readonly string[];
  /** What is held against the target; absent where the line only reports. */
  readonly held?: { readonly value: number; readonly atMost: number };
}

export interface BenchPart {
  readonly title: string;
  /** How it was measured and what is compared with what, in a few sentences. */
  readonly about: string;
  readonly heads: readonly string[];
  readonly lines: readonly BenchLine[];
  /** What the figures mean, what limits them, where a target is missed and why. */
  readonly remarks?: readonly string[];
}

export type RunPart = () => Promise<BenchPart>;
