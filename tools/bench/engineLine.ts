import type { Comparison } from "./measure";
import type { BenchLine } from "./part";

const NO_SLOWER = 1;

/** A line of the engine's table; only what is held has a target. */
export function engineLine(words: string, step: string, found: Comparison, isHeld: boolean): BenchLine {
  const { ours, against, ratio, quarters } = found;
  return {
    what: `${words}, ${step}`,
    figures: [
      ours.toFixed(0),
      against.toFixed(0),
      ratio.toFixed(2),
      quarters.map((each) => each.toFixed(2)).join(" to "),
    ],
    ...(isHeld && { held: { value: ratio, atMost: NO_SLOWER } }),
  };
}
