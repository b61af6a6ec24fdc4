/** Two ways of doing the same work, timed side by side in one run: what counts is their ratio, not the seconds. */

/** Does the work once; what it returns is kept, so that no engine can leave the work out. */
export type Work = () => unknown;

export interface Comparison {
  /** Median milliseconds of one round of ours, and of what it is held against. */
  readonly ours: number;
  readonly against: number;
  /** Median of the rounds' own ratios, ours to the other. */
  readonly ratio: number;
  /** The quarters of those ratios: half of all rounds lie between. */
  readonly quarters: readonly [number, number];
}

let kept: unknown;

/** The last thing that any work returned. */
export function lastKept(): unknown {
  return kept;
}

export function milliseconds(work: Work): number {
  const start = performance.now();
  kept = work();
  return performance.now() - start;
}

/** The value that `share` of all lie below, between neighbours in proportion. */
export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (sorted.length - 1) * share;
  const [below, above] = [sorted[Math.floor(at)] as number, sorted[Math.ceil(at)] as number];
  return below + (above - below) * (at - Math.floor(at));
}

export function median(values: readonly number[]): number {
  return quantile(values, 0.5);
}

function comparison(ours: readonly number[], against: readonly number[]): Comparison {
  const ratios = ours.map((time, round) => time / (against[round] as number));
  return {
    ours: median(ours),
    against: median(against),
    ratio: median(ratios),
    quarters: [quantile(ratios, 0.25), quantile(ratios, 0.75)],
  };
}

/** Round after round, one beside the other, each first in every second round; `warmUp` rounds are not counted. */
export function compare(ours: Work, against: Work, rounds = 15, warmUp = 3): Comparison {
  const times: { ours: number[]; against: number[] } = { ours: [], against: [] };
  for (let round = -warmUp; round < rounds; round += 1) {
    const oursFirst = round % 2 === 0;
    const first = milliseconds(oursFirst ? ours : against);
    const second = milliseconds(oursFirst ? against : ours);
    if (round < 0) continue;
    times.ours.push(oursFirst ? first : second);
    times.against.push(oursFirst ? second : first);
  }
  return comparison(times.ours, times.against);
}

/** The same for work that must be waited for; each returns the milliseconds that it took by its own clock. */
export async function compareTimed(
  ours: () => Promise<number>,
  against: () => Promise<number>,
  rounds = 9,
  warmUp = 1,
): Promise<Comparison> {
  const times: { ours: number[]; against: number[] } = { ours: [], against: [] };
  for (let round = -warmUp; round < rounds; round += 1) {
    const oursFirst = round % 2 === 0;
    const first = await (oursFirst ? ours() : against());
    const second = await (oursFirst ? against() : ours());
    if (round < 0) continue;
    times.ours.push(oursFirst ? first : second);
    times.against.push(oursFirst ? second : first);
  }
  return comparison(times.ours, times.against);
}
