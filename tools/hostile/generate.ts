/** From a seed and a place in the run to a call: mostly valid, with one hostile argument or two. */
import fc, { type Arbitrary } from "fast-check";
import { catalogue } from "../../src/functions/catalogue";
import { drawBelow } from "../../src/functions/catalogue/teaching/hash";
import { isRange, isRepeating, type ArgumentInput, type CellInput, type Entry } from "../../src/kernel";
import { isRows, type HostileCall, type HostileInput } from "./call";
import { changed, changesOf, type Change } from "./changes";
import type { Kind } from "./kinds";
import { hostileCell, type Hostile } from "./values";
import { validCalls, type ValidCall } from "./validCalls";

export interface Plan {
  readonly seed: number;
  /** One function alone. */
  readonly only?: string;
}

/** Calls of each function in a batch. */
const OF_EACH = 2;
const OF_ONE_ALONE = 200;
/** One batch in so many has a call with very long ranges. */
export const BATCHES_TO_A_LONG_CALL = 9;
const LONG_CELLS: readonly [number, number] = [20_000, 40_000];
const LARGEST_SEED = 2 ** 31;

export function entriesOf({ only }: Plan): readonly Entry[] {
  const entries = only === undefined ? catalogue : catalogue.filter(({ name }) => name === only.toUpperCase());
  if (entries.length === 0) throw new Error(`the catalogue has no function ${only}`);
  return entries;
}

const eachIn = ({ only }: Plan): number => (only === undefined ? OF_EACH : OF_ONE_ALONE);

export function batchSize(plan: Plan): number {
  return entriesOf(plan).length * eachIn(plan);
}

/** The function that a call was made for, also where its name was spoilt. */
export function functionOf(plan: Plan, { index }: HostileCall): string {
  const entries = entriesOf(plan);
  return entries[Math.floor(index / eachIn(plan)) % entries.length]!.name;
}

type CallChange = "none" | Extract<Kind, `${string}arguments${string}` | "name of no function">;

const callChanges: Arbitrary<CallChange> = fc.oneof(
  { weight: 40, arbitrary: fc.constant<CallChange>("none") },
  {
    weight: 4,
    arbitrary: fc.constantFrom<CallChange>("arguments in another order", "too few arguments", "too many arguments"),
  },
  { weight: 1, arbitrary: fc.constant<CallChange>("name of no function") },
);

interface Draw {
  readonly valid: ValidCall;
  readonly changes: readonly Change[];
  readonly callChange: CallChange;
  readonly extra: Hostile;
  readonly place: number;
}

const draws = new Map<Entry, Arbitrary<Draw>>();

function drawsOf(entry: Entry): Arbitrary<Draw> {
  const known = draws.get(entry);
  if (known !== undefined) return known;
  const made = fc.record({
    valid: validCalls(entry),
    changes: changesOf(entry),
    callChange: callChanges,
    extra: hostileCell,
    place: fc.nat(1000),
  });
  draws.set(entry, made);
  return made;
}

function reordered(args: readonly HostileInput[], place: number): HostileInput[] {
  const by = 1 + (place % Math.max(1, args.length - 1));
  return [...args.slice(by), ...args.slice(0, by)];
}

/** Every range of the call as long as the others, or the first argument where it takes none. */
function longCall(entry: Entry, args: readonly ArgumentInput[], length: number): HostileInput[] {
  const params = Object.values(entry.params);
  const isLong = args.map((input, index) => {
    const param = params[Math.min(index, params.length - 1)]!;
    return isRepeating(param) ? isRows(input) : isRange(param);
  });
  if (!isLong.includes(true)) isLong[0] = true;
  const width = Math.max(1, ...args.map((input, at) => (isLong[at] && isRows(input) ? (input[0]?.length ?? 1) : 1)));
  const rows = Math.floor(length / width);
  return args.map((input, at) => {
    if (isLong[at] !== true) return input;
    const block = isRows(input) && input.length > 0 ? input : [[input as CellInput]];
    return Array.from({ length: rows }, (_row, line) => block[line % block.length]!);
  });
}

function callFrom(entry: Entry, draw: Draw, index: number, longRanges: number | null): HostileCall {
  const { valid, changes, callChange, extra, place } = draw;
  if (longRanges !== null && Object.keys(entry.params).length > 0) {
    const args = longCall(entry, valid.args, longRanges);
    return { index, name: entry.name, args, kinds: ["very long ranges", valid.kind] };
  }
  const kinds = new Set<Kind>(changes.length > 2 ? ["every argument hostile"] : []);
  if (changes.length <= 2) kinds.add(valid.kind);
  const args = changed(valid.args, changes, kinds);
  if (callChange !== "none") kinds.add(callChange);
  switch (callChange) {
    case "arguments in another order":
      return { index, name: entry.name, args: reordered(args, place), kinds: [...kinds] };
    case "too few arguments":
      return { index, name: entry.name, args: args.slice(0, place % Math.max(1, args.length)), kinds: [...kinds] };
    case "too many arguments":
      return {
        index,
        name: entry.name,
        args: [...args, ...Array(1 + (place % 5)).fill(extra.value)],
        kinds: [...kinds],
      };
    case "name of no function":
      return { index, name: `${entry.name}${place % 2 === 0 ? "_X" : "S2"}`, args, kinds: [...kinds] };
    default:
      return { index, name: entry.name, args, kinds: [...kinds] };
  }
}

/** Where a function takes any number of arguments, what is left out at the end is not there, as in a formula. */
function withoutLeftOutEnd(entry: Entry, call: HostileCall): HostileCall {
  if (!Object.values(entry.params).some(isRepeating)) return call;
  const count = call.args.reduce<number>((most, input, at) => (input === undefined ? most : at + 1), 0);
  return { ...call, args: call.args.slice(0, count) };
}

/** All calls of a batch: of each function as many. */
export function callsOfBatch(plan: Plan, batch: number): HostileCall[] {
  const entries = entriesOf(plan);
  const each = eachIn(plan);
  const hasLong = batch % BATCHES_TO_A_LONG_CALL === 0;
  const longEntry = (batch / BATCHES_TO_A_LONG_CALL) % entries.length;
  return entries.flatMap((entry, at) => {
    const key = [String(plan.seed), String(batch), entry.name];
    const seed = drawBelow(LARGEST_SEED, key);
    return fc.sample(drawsOf(entry), { seed, numRuns: each }).map((draw, which) => {
      const isLong = hasLong && at === longEntry && which === 0;
      const length = isLong ? LONG_CELLS[0] + drawBelow(LONG_CELLS[1] - LONG_CELLS[0], [...key, "length"]) : null;
      return withoutLeftOutEnd(entry, callFrom(entry, draw, (batch * entries.length + at) * each + which, length));
    });
  });
}
