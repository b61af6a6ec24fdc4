import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";
import { FormulaSheet } from "../../rig/spreadsheetEngines";
import { SEED } from "../../rig/validInputs";

const TARIFF = { tier_limits: [[10], [25], [60], [null]], tier_prices: [[2.15], [3.4], [5.05], [7.9]] };

function bill(volume: number, more: Readonly<Record<string, unknown>> = {}): number {
  return answerOf("WATER_COST", { volume, ...TARIFF, ...more });
}

describe(byAnotherRoute("WATER_COST"), () => {
  test("by the bill's own words: unit after unit, each at the price of the block that it falls into", () => {
    const priceOfUnit = (unit: number): number => (unit <= 10 ? 2.15 : unit <= 25 ? 3.4 : unit <= 60 ? 5.05 : 7.9);
    let paid = 18;
    for (let unit = 1; unit <= 90; unit += 1) {
      paid += priceOfUnit(unit);
      expectClose(bill(unit, { fixed_charge: 18 }), paid, 1e-12);
    }
  });

  test("annual water at one price: 3.2 million gal at 4 for 1000 gal is 12,800", () => {
    expect(answerOf("WATER_COST", { volume: 3200, tier_limits: [[""]], tier_prices: [[4]] })).toBe(12800);
  });

  test("the steps name the water and the charge of each block", () => {
    const step = stepsOf("WATER_COST", { volume: 30, ...TARIFF });
    expect([step("q1"), step("q2"), step("q3"), step("q4")]).toEqual([10, 15, 5, 0]);
    expectClose(step("c2"), 51, 1e-12);
  });
});

// The usual spreadsheet formula for blocks: each block adds the rise of its price for what lies above its lower end.
describe(against("WATER_COST", "HyperFormula 3.5.0, the rises of price"), () => {
  const volumes = [0, 3.5, 10, 10.01, 24.9, 25, 59, 60, 61, 1000];
  const sheet = new FormulaSheet();
  const above = (volume: number, lower: number, rise: string): string => `MAX(0,${volume}-${lower})*${rise}`;
  const at = volumes.map((volume) =>
    sheet.formula(
      `=18+${above(volume, 0, "2.15")}+${above(volume, 10, "(3.4-2.15)")}+${above(volume, 25, "(5.05-3.4)")}+${above(volume, 60, "(7.9-5.05)")}`,
    ),
  );
  const values = sheet.inHyperFormula();

  test.each(volumes.map((volume, index) => ({ volume, index })))("$volume units", ({ volume, index }) => {
    expectClose(bill(volume, { fixed_charge: 18 }), values[at[index] as number] as number, 1e-12);
  });
});

describe("WATER_COST: a block tariff, bill by bill", () => {
  test("the fixed charge counts once, also at a volume of 0", () => {
    expect(bill(0, { fixed_charge: 42 })).toBe(42);
    expectClose(bill(70, { fixed_charge: 42 }) - bill(70), 42, 1e-12);
  });

  test("two bills are not one bill of twice the water: blocks start again", () => {
    expect(2 * bill(40)).toBeLessThan(bill(80));
  });

  test.each([null, undefined, "", 0])("the last limit blank, as a host may send it, is no limit: %j", (last) => {
    const limits = [[10], [25], [60], [last]];
    expect(bill(100, { tier_limits: limits })).toBe(bill(100));
  });

  test("a volume above a last limit that is a number is an error that says how to leave it open", () => {
    const closed = { tier_limits: [[10], [25]], tier_prices: [[2], [3]] };
    expect(answerOf("WATER_COST", { volume: 25, ...closed })).toBe(65);
    expect(refusalOf("WATER_COST", { volume: 25.5, ...closed }).message).toBe(
      "WATER_COST: volume is 25.5; it must be 25 or less, the last of tier_limits; leave that one blank for no limit",
    );
  });

  test("rows blank in both are dropped, between the others and behind them", () => {
    const gaps = {
      tier_limits: [[10], [null], [25], [60], [""], [0]],
      tier_prices: [[2.15], [null], [3.4], [5.05], [7.9], [0]],
    };
    expect(bill(100, gaps)).toBe(bill(100));
  });

  test("limits that do not rise, a limit missing in between, and a price missing are named with their row", () => {
    const prices = [[1], [2], [3]];
    const refused = (limits: unknown, columns: unknown = prices): string =>
      refusalOf("WATER_COST", { volume: 5, tier_limits: limits, tier_prices: columns }).message;
    expect(refused([[10], [10], [null]])).toContain("it must be more than 10, the limit before it, in row 2");
    expect(refused([[20], [10], [null]])).toContain("it must be more than 20, the limit before it, in row 2");
    expect(refused([[10], [null], [30]])).toContain("it must have a limit in row 2: only the last may be blank");
    expect(refused([[10], [20], [null]], [[1], [null], [3]])).toMatch(/tier_prices is blank in row 2 of the range/);
    expect(refused([[10], [20], [null]], [[1], ["two"], [3]])).toMatch(/tier_prices is the text "two" in row 2/);
    expect(refused([[null]], [[null]])).toContain("it must have a block with its price");
    expect(refused([[10], [20]], [[1]])).toContain("tier_prices has 1 cells; it must have 2, as tier_limits has");
  });

  test("a first block that is free costs nothing", () => {
    expect(answerOf("WATER_COST", { volume: 12, tier_limits: [[8], [null]], tier_prices: [[0], [5]] })).toBe(20);
  });

  test("more water never costs less, and the last unit costs no more than the dearest price", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20_000 }), fc.integer({ min: 1, max: 100 }), (start, more) => {
        const rise = bill((start + more) / 100) - bill(start / 100);
        expect(rise).toBeGreaterThan(0);
        expect(rise).toBeLessThanOrEqual((7.9 * more) / 100 + 1e-9);
      }),
      { seed: SEED },
    );
  });

  test("a tariff of 100,000 blocks is one call", () => {
    const rows = 100_000;
    const limits = Array.from({ length: rows }, (_row, index) => [index + 1]);
    const prices = Array.from({ length: rows }, () => [2]);
    expect(answerOf("WATER_COST", { volume: rows, tier_limits: limits, tier_prices: prices })).toBe(2 * rows);
  });
});
