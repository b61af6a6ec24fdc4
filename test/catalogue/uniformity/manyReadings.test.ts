/** A million readings: no spread of huge ranges into arguments, and an answer in about a second. */
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellAnswer } from "../../../src/kernel";
import { answerOf, entryOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { mistakeAnswer } from "../../rig/mistakeAnswer";

const MILLION = 1_000_000;
const MORE_THAN_ARGUMENTS = 200_000;
/** Of the processor, not of the clock, since tests share their machine: about a second, and room for a slow one. */
const SECONDS_ALLOWED = 4;

/** A million squares, each rounded into a sum of seventeen digits and more. */
const ROUNDED = 1e-10;

/** 1 to a million, well mixed: 7919 shares no factor with a million. */
const mixed = Array.from({ length: MILLION }, (_, index) => [((index * 7919) % MILLION) + 1]);
const wide = Array.from({ length: 1000 }, (_, row) => mixed.slice(row * 1000, row * 1000 + 1000).map(([cell]) => cell));

function timed<T>(work: () => T): T {
  const before = process.cpuUsage();
  const answer = work();
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1e6).toBeLessThan(SECONDS_ALLOWED);
  return answer;
}

function tableOf(name: string, inputs: Record<string, unknown>): CellAnswer[][] {
  const entry = entryOf(name);
  return evaluate(entry, inOrder(entry, inputs)) as CellAnswer[][];
}

describe("a million readings of 1, 2, 3 ... in a column and in a square", () => {
  test.each([
    ["column", mixed],
    ["square", wide],
  ])("%s: the lowest quarter is half of 250,001, the mean half of 1,000,001", (_shape, readings) => {
    expectClose(
      timed(() => answerOf("DU_LOW_QUARTER", { readings })),
      250_001 / 1_000_001,
      1e-12,
    );
  });

  test("CU is 1 - (n / 4) over the mean, and Cv the root of n (n + 1) / 12 over the mean", () => {
    const rows = new Map(
      timed(() => tableOf("UNIFORMITY_AUDIT", { readings: mixed })).map(([label, value]) => [label, value]),
    );
    // Deviations from (n + 1) / 2 add up to n^2 / 4, so their mean is n / 4.
    expectClose(rows.get("CU"), 1 - MILLION / 4 / ((MILLION + 1) / 2), 1e-12);
    // The sample variance of 1 ... n is n (n + 1) / 12.
    expectClose(rows.get("Cv"), Math.sqrt((MILLION * (MILLION + 1)) / 12) / ((MILLION + 1) / 2), ROUNDED);
    expect([rows.get("min"), rows.get("max"), rows.get("mean")]).toEqual([1, MILLION, 500_000.5]);
  });

  test("a survey around a rated flow of 500,000 finds 399,999 low and 400,000 high", () => {
    const table = timed(() => tableOf("EMITTER_SURVEY", { flows: mixed, rated_flow: 500_000 }));
    expect(table.map((row) => row[1])).toEqual([MILLION, 0, 399_999, 200_001, 400_000, ""]);
  });

  test("the working and the likely mistakes hold more than the arguments of a call could", () => {
    const entry = entryOf("DU_LOW_QUARTER");
    const readings = mixed.slice(0, MORE_THAN_ARGUMENTS);
    expect(() => Math.min(...readings.map(([cell]) => cell as number))).toThrow(RangeError);
    expect(stepsOf("DU_LOW_QUARTER", { readings })("q")).toBe(MORE_THAN_ARGUMENTS / 4);
    for (const mistake of entry.mistakes) expect(mistakeAnswer(entry, mistake, [readings])).not.toBeNull();
  });
});
