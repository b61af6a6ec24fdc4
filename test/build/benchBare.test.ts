import { call } from "../../src/functions/call";
import type { Answer } from "../../src/kernel";
import { penmanMonteith, runMinutes } from "../../tools/bench/bare";
import { sectionOf, pageWith } from "../../tools/bench/report";
import { runMinutesCalls, stationCalls } from "../../tools/bench/samples";
import { tables } from "../../tools/bench/tables";

const CLOSE = 1e-12;
const CALLS = 2000;
const ROWS = 1500;

/** The worst relative difference of two numbers or two tables; anything else that differs is an error. */
function worstDifference(ours: unknown, bare: unknown): number {
  if (Array.isArray(ours) && Array.isArray(bare)) {
    expect(ours.length).toBe(bare.length);
    return ours.reduce((worst: number, one: unknown, index) => Math.max(worst, worstDifference(one, bare[index])), 0);
  }
  if (typeof ours === "number" && typeof bare === "number") {
    expect([ours, bare].every(Number.isFinite)).toBe(true);
    return ours === bare ? 0 : Math.abs(ours - bare) / Math.max(Math.abs(ours), Math.abs(bare));
  }
  expect(ours).toBe(bare);
  return 0;
}

describe("the bare arithmetic of the benchmarks gives what the catalogue gives", () => {
  test.each(["metric", "us"] as const)("for ET0_PENMAN_MONTEITH, %s", (units) => {
    const calls = stationCalls(CALLS, units);
    const ours = calls.map((args): Answer => call("ET0_PENMAN_MONTEITH", args));
    expect(new Set(ours).size).toBe(CALLS);
    expect(
      worstDifference(
        ours,
        calls.map((args) => penmanMonteith(...args)),
      ),
    ).toBeLessThan(CLOSE);
  });

  test("for RUN_MINUTES", () => {
    const calls = runMinutesCalls(CALLS);
    const ours = calls.map((args) => call("RUN_MINUTES", args));
    expect(
      worstDifference(
        ours,
        calls.map((args) => runMinutes(...args)),
      ),
    ).toBeLessThan(CLOSE);
  });

  test.each(tables)("for $name", (table) => {
    const { args, bare } = table.make(ROWS);
    expect(worstDifference(call(table.function, args), bare())).toBeLessThan(CLOSE);
  });

  test("and a difference would show", () => {
    expect(worstDifference([[1, 2]], [[1, 2.000001]])).toBeGreaterThan(CLOSE);
  });
});

describe("the page of the benchmarks", () => {
  const part = {
    title: "A part",
    about: "How it was measured.",
    heads: ["ours"],
    lines: [
      { what: "fast", figures: ["1"], held: { value: 1, atMost: 1.5 } },
      { what: "slow", figures: ["2"], held: { value: 2, atMost: 1.5 } },
      { what: "told", figures: ["3"] },
    ],
    remarks: ["A remark."],
  };

  test("gives each line its figure, its target, and whether it is met", () => {
    const section = sectionOf(part, "2026-01-02", "2 cores");
    expect(section).toContain("| fast | 1 | at most 1.5 | met |");
    expect(section).toContain("| slow | 2 | at most 1.5 | missed |");
    expect(section).toContain("| told | 3 |  |  |");
    expect(section).toContain("Measured on 2026-01-02: 2 cores.");
  });

  test("keeps the other parts when one is measured anew", () => {
    const order = ["first", "second"];
    const both = pageWith(
      "",
      order,
      new Map([
        ["second", "## Two"],
        ["first", "## One"],
      ]),
    );
    expect(both.indexOf("## One")).toBeLessThan(both.indexOf("## Two"));
    const anew = pageWith(both, order, new Map([["first", "## One anew"]]));
    expect(anew).toContain("## One anew");
    expect(anew).toContain("## Two");
    expect(anew).not.toContain("## One\n");
    expect(pageWith(anew, order, new Map())).toBe(anew);
  });
});
