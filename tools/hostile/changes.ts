/** Hostile inputs put in the place of valid ones: none, one, two, or all. */
import fc, { type Arbitrary } from "fast-check";
import { isRange, isRepeating, type CellInput, type Entry } from "../../src/kernel";
import { isRows, type HostileInput } from "./call";
import { CELL_KINDS, type Kind } from "./kinds";
import { hostileFor, type Hostile } from "./values";

/** Further arguments beyond the declared ones that are tried where a function takes any number. */
const REPEATED = 4;

export interface Change {
  readonly at: number;
  readonly hostile: Hostile;
  /** Of a range, which cell; null where the whole argument is replaced. */
  readonly cell: number | null;
}

function changeOf(entry: Entry): Arbitrary<Change> {
  const params = Object.entries(entry.params);
  const choices = params.flatMap(([name, param], index) => {
    const places = isRepeating(param) ? REPEATED : 1;
    return Array.from({ length: places }, (_place, further) =>
      fc.record({
        at: fc.constant(index + further),
        hostile: hostileFor(name, param),
        cell: isRange(param) ? fc.option(fc.nat(1000), { freq: 3 }) : fc.constant(null),
      }),
    );
  });
  return fc.oneof(...choices);
}

export function changesOf(entry: Entry): Arbitrary<readonly Change[]> {
  const count = Object.keys(entry.params).length;
  if (count === 0) return fc.constant([]);
  const change = changeOf(entry);
  const every = Array.from({ length: count }, (_argument, at) => change.map((made) => ({ ...made, at, cell: null })));
  return fc.oneof(
    { weight: 35, arbitrary: fc.constant([]) },
    { weight: 40, arbitrary: fc.tuple(change) },
    { weight: 15, arbitrary: fc.tuple(change, change) },
    { weight: 5, arbitrary: fc.tuple(...every) },
  );
}

const isCellKind = (kind: Kind): boolean => (CELL_KINDS as readonly Kind[]).includes(kind);

export function changed(args: readonly HostileInput[], changes: readonly Change[], kinds: Set<Kind>): HostileInput[] {
  const made = [...args];
  for (const { at, hostile, cell } of changes) {
    const before = made[at];
    kinds.add(hostile.kind);
    if (cell === null || !isCellKind(hostile.kind) || !isRows(before) || before.flat().length === 0) {
      made[at] = hostile.value;
      continue;
    }
    kinds.add("one hostile cell in a range");
    const width = before[0]!.length;
    const place = cell % (before.length * width);
    made[at] = before.map((row, line) =>
      row.map((given, column) => (line * width + column === place ? (hostile.value as CellInput) : given)),
    );
  }
  return Array.from(made);
}
