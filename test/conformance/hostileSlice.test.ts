/** A short, seeded slice of `npm run hostile`: what the whole run of docs/hostile.md finds none of, this finds none of. */
import { join } from "node:path";
import { openRoads, runBatch, type Roads } from "../../tools/hostile/batch";
import { batchSize, callsOfBatch, entriesOf, type Plan } from "../../tools/hostile/generate";
import { KINDS } from "../../tools/hostile/kinds";
import { WAYS } from "../../tools/hostile/sheetRoad";
import { add, emptyTally, type Tally } from "../../tools/hostile/tally";

const PLAN: Plan = { seed: 20_260_517 };
const CALLS = 12_000;
/** A quarter hour of a busy machine; a quiet one needs ten seconds. */
const TIME = 300_000;

let roads: Roads;
const tally: Tally = emptyTally();
const batches = Math.ceil(CALLS / batchSize(PLAN));

beforeAll(async () => {
  roads = openRoads(join(__dirname, "../../dist/functions.js"));
  for (let batch = 0; batch < batches; batch += 1) add(tally, await runBatch(roads, PLAN, batch));
}, TIME);
afterAll(() => roads.official.close());

test("no hostile call finds a fault", () => {
  expect(tally.faults).toEqual([]);
  expect(tally.faultCount).toBe(0);
});

test("every function is called, and each as often", () => {
  const called = Object.entries(tally.functions);
  expect(called.map(([name]) => name)).toEqual(entriesOf(PLAN).map(({ name }) => name));
  expect(new Set(called.map(([, count]) => count)).size).toBe(1);
  expect(tally.calls).toBeGreaterThanOrEqual(CALLS);
});

test.each(KINDS)("calls hold this kind of input: %s", (kind) => {
  expect(tally.kinds[kind]).toBeGreaterThan(0);
});

test.each(WAYS)("the sheet is asked in this way: %s", (way) => {
  expect(tally.ways[way]).toBeGreaterThan(0);
});

test("much is answered, much is refused, and errors come back, on both roads", () => {
  for (const verdicts of Object.values(tally.verdicts)) {
    expect(verdicts["answer"]).toBeGreaterThan(CALLS / 5);
    expect(verdicts["our refusal"]).toBeGreaterThan(CALLS / 5);
    expect(verdicts["error passed on"]).toBeGreaterThan(100);
  }
  expect(tally.verdicts["browser sheet"]["sentence of the engine"]).toBeGreaterThan(100);
  expect(tally.verdicts["official runtime"]["sentence of the engine"]).toBeUndefined();
  expect(tally.compared).toBeGreaterThan(CALLS / 2);
});

test("a call is the same when it is made again, and another with another seed", () => {
  const text = (plan: Plan, batch: number): string => JSON.stringify(callsOfBatch(plan, batch));
  expect(text(PLAN, 3)).toBe(text(PLAN, 3));
  expect(text(PLAN, 3)).not.toBe(text(PLAN, 4));
  expect(text(PLAN, 3)).not.toBe(text({ seed: 1 }, 3));
  const [first] = callsOfBatch(PLAN, 3);
  expect(first?.index).toBe(3 * batchSize(PLAN));
});
