/** A round over flood benches that share one tank: when each fills and drains, and what that does to the tank. */

export const NEXT_WORDS = ["after_fill", "after_drain"] as const;

export interface Bench {
  /** Where it stands in the plan, counted from 0. */
  readonly row: number;
  readonly volume: number;
  readonly uptake: number;
}

export interface RoundRules {
  /** Flow that reaches each open bench, per minute. */
  readonly flow: number;
  readonly atOnce: number;
  readonly soak: number;
  readonly drain: number;
  readonly next: (typeof NEXT_WORDS)[number];
}

/** A bench with its moments, in minutes from the start of the round. */
export interface Flooding extends Bench {
  readonly start: number;
  readonly full: number;
  readonly drainStart: number;
  readonly empty: number;
}

/** Benches in the order given, in groups that start together; a group waits for the last bench of the one before. */
export function floodingsOf(benches: readonly Bench[], { flow, atOnce, soak, drain, next }: RoundRules): Flooding[] {
  let start = 0;
  let waited = 0;
  return benches.map(({ row, volume, uptake }, index) => {
    if (index % atOnce === 0) start = waited;
    const full = start + (volume + uptake) / flow;
    const drainStart = full + soak;
    const empty = drainStart + drain;
    waited = Math.max(waited, next === "after_fill" ? full : empty);
    return { row, volume, uptake, start, full, drainStart, empty };
  });
}

/** A level within float dust of another, as a part of the water at the start, is the same. */
const DUST = 1e-9;

/** The tank from change to change, between which its level is a straight line. */
class Tank {
  drawn = 0;
  back = 0;
  lowest: number;
  lowestAt = 0;
  /** Benches that fill, the first of the plan first. */
  readonly filling = new Set<number>();
  private level: number;
  private minute = 0;
  private draining = 0;
  private drainingVolume = 0;

  constructor(
    private readonly start: number,
    private readonly rules: RoundRules,
  ) {
    this.level = start;
    this.lowest = start;
  }

  /** On to the next change; whether the level passed below 0 on the way. */
  reach(minute: number): boolean {
    const before = this.level;
    const dust = DUST * this.start;
    this.drawn += this.rules.flow * this.filling.size * (minute - this.minute);
    this.back += (this.drainingVolume / this.rules.drain) * (minute - this.minute);
    this.level = this.start - this.drawn + this.back;
    this.minute = minute;
    if (this.level < this.lowest - dust) [this.lowest, this.lowestAt] = [this.level, minute];
    return before >= -dust && this.level < -dust;
  }

  /** So many benches more, or fewer, drain into the tank. */
  drain(benches: 1 | -1, volume: number): void {
    this.draining += benches;
    this.drainingVolume = this.draining === 0 ? 0 : this.drainingVolume + benches * volume;
  }
}

type Moment = "start" | "full" | "drainStart" | "empty";
const MOMENTS: readonly Moment[] = ["start", "full", "drainStart", "empty"];

interface Change {
  readonly minute: number;
  readonly moment: Moment;
  readonly index: number;
}

/** What happens in the round in the order of time; at one minute in the order of the plan, and of a bench's moments. */
function changesOf(floodings: readonly Flooding[]): Change[] {
  return floodings
    .flatMap((flooding, index) => MOMENTS.map((moment) => ({ minute: flooding[moment], moment, index })))
    .sort((a, b) => a.minute - b.minute);
}

export interface TankCourse {
  /** By flooding: what was drawn from the tank, and what came back to it, until that bench was empty. */
  readonly drawn: Float64Array;
  readonly back: Float64Array;
  readonly lowest: number;
  readonly lowestAt: number;
  /** The floodings during which the level passes below 0, in the order of time. */
  readonly dry: readonly number[];
}

/** Follows the tank through a round. */
export function tankCourse(floodings: readonly Flooding[], rules: RoundRules, startTank: number): TankCourse {
  const tank = new Tank(startTank, rules);
  const drawn = new Float64Array(floodings.length);
  const back = new Float64Array(floodings.length);
  const dry: number[] = [];
  for (const { minute, moment, index } of changesOf(floodings)) {
    const [first] = tank.filling;
    if (tank.reach(minute) && first !== undefined) dry.push(first);
    const { volume } = floodings[index] as Flooding;
    if (moment === "start") tank.filling.add(index);
    if (moment === "full") tank.filling.delete(index);
    if (moment === "drainStart") tank.drain(1, volume);
    if (moment === "empty") {
      tank.drain(-1, volume);
      [drawn[index], back[index]] = [tank.drawn, tank.back];
    }
  }
  return { drawn, back, lowest: tank.lowest, lowestAt: tank.lowestAt, dry };
}
