/**
 * Random calls to measure on: ordinary numbers within the limits, and, in every third call, numbers of one kind drawn
 * close to each other or to a limit, where a difference of two loses the most digits.
 */
import fc from "fast-check";
import { boundsOf, FunctionError, within, work } from "../../src/kernel";
import type { ArgumentInput, CellInput, Entry, NumberParam, NumbersParam, Param, Working } from "../../src/kernel";
import { SEED, systemsOf, validInputs, type System } from "../../test/rig/validInputs";

export interface Draw {
  readonly args: readonly ArgumentInput[];
  readonly working: Working;
}

/** Rules between arguments refuse many a random call: for one that is wanted, so many are tried. */
const MOST_ROUNDS = 30;
const EVERY_THIRD = 3;

/** From a thousandth to the twelfth digit. */
const gap = fc
  .tuple(fc.integer({ min: 3, max: 12 }), fc.constantFrom(-1, 1))
  .map(([digits, side]) => side * 10 ** -digits);

interface Closeness {
  /** Which numbers are drawn close, and how close. */
  readonly gaps: readonly number[];
  readonly chosen: readonly boolean[];
  /** Whether numbers come close to each other, or to their limits. */
  readonly to: "each other" | "limits";
}

const closeness: fc.Arbitrary<Closeness> = fc.record({
  gaps: fc.array(gap, { minLength: 12, maxLength: 12 }),
  chosen: fc.array(fc.boolean(), { minLength: 12, maxLength: 12 }),
  to: fc.constantFrom("each other", "limits"),
});

type Limited = NumberParam | NumbersParam;

function isLimited(param: Param): param is Limited {
  return (param.kind === undefined || param.kind === "numbers") && param.whole !== true && param.quantity !== "date";
}

/** The numbers of a call, each time the last one of the same quantity seen before. */
class Neighbours {
  private readonly last = new Map<string, number>();
  private count = 0;

  constructor(
    private readonly system: System,
    private readonly closeness: Closeness,
  ) {}

  moved(param: Limited, value: CellInput): CellInput {
    if (typeof value !== "number" || value === 0) return value;
    const at = this.count++ % this.closeness.gaps.length;
    const bounds = boundsOf(param, param.quantity, this.system);
    const edge = Number.isFinite(bounds.high) ? bounds.high : bounds.low;
    const target = this.closeness.to === "limits" ? edge : this.last.get(param.quantity);
    const close = (target ?? value) * (1 + (this.closeness.gaps[at] as number));
    const taken = this.closeness.chosen[at] === true && within(close, bounds) ? close : value;
    this.last.set(param.quantity, taken);
    return taken;
  }
}

/** The call with some of its numbers drawn close; dates, counts, words and blanks stay. */
function drawnClose(entry: Entry, system: System, args: readonly ArgumentInput[], how: Closeness): ArgumentInput[] {
  const neighbours = new Neighbours(system, how);
  return Object.values(entry.params).map((param, index): ArgumentInput => {
    const given = args[index];
    if (!isLimited(param)) return given;
    if (!Array.isArray(given)) return neighbours.moved(param, given as CellInput);
    return (given as readonly (readonly CellInput[])[]).map((row) => row.map((cell) => neighbours.moved(param, cell)));
  });
}

function answered(entry: Entry, args: readonly ArgumentInput[]): Draw | null {
  try {
    return { args, working: work(entry, args) };
  } catch (error) {
    if (error instanceof FunctionError) return null;
    throw error;
  }
}

/** So many calls that have an answer, in every system of units; the same ones in every run. */
export function drawnCalls(entry: Entry, wanted: number): Draw[] {
  return systemsOf(entry).flatMap((system) => {
    const drawing = fc.tuple(validInputs(entry, system), closeness);
    const found: Draw[] = [];
    for (let round = 0; round < MOST_ROUNDS && found.length < wanted; round += 1) {
      for (const [index, [args, how]] of fc.sample(drawing, { seed: SEED + round, numRuns: wanted }).entries()) {
        const isClose = index % EVERY_THIRD === EVERY_THIRD - 1;
        const call = answered(entry, isClose ? drawnClose(entry, system, args, how) : args);
        if (call !== null && found.length < wanted) found.push(call);
      }
    }
    return found;
  });
}
