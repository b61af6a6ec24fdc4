/** Feed against the conservation of salt: what goes into a tank or a pipe comes out, as another library balances it. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { ENGINES, numberAt, type PlainCell } from "../../rig/plainSheet";
import { balanced, physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-9;
const SYSTEMS = [
  ["us", "gallon", "lbm"],
  ["metric", "L", "kg"],
] as const;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 60 });

describe(against("INJECTOR_RATIO", "mathjs 15.2.0, units, the strength of stock and feed by the salt in them"), () => {
  const runs = fc.record({ strength: size(20, 400), stock: size(0.05, 20), ratio: size(2, 500) });

  test.each(SYSTEMS)("%s: the ratio is how much weaker the feed is than the stock", (_units, volume, weight) => {
    property(runs, ({ strength, stock, ratio }) => {
      const clear = (ratio - 1) * stock;
      const salt = physical("c * v", { c: quantity(strength, "g/L"), v: quantity(stock, volume) }, weight);
      const feed = physical(
        "m / (v + w)",
        { m: quantity(salt, weight), v: quantity(stock, volume), w: quantity(clear, volume) },
        "g/L",
      );
      const caught = { treated_volume: clear + stock, stock_used: stock, counts_stock: true };
      const metered = { treated_volume: clear, stock_used: stock, counts_stock: false };
      expectClose(answerOf("INJECTOR_RATIO", caught), strength / feed, CLOSE);
      fc.pre(clear >= stock);
      expectClose(answerOf("INJECTOR_RATIO", metered), strength / feed, CLOSE);
    });
  });
});

describe(against("TANK_DOSE", "mathjs 15.2.0, units, the weight of salt that the tank lacks"), () => {
  const tanks = fc.record({
    tank: size(5, 5000),
    now: size(0, 2),
    more: size(0.05, 2),
    rise: size(0.2, 3),
    ratio: fc.integer({ min: 10, max: 400 }),
    perEc: size(400, 900),
  });

  /*
   * Salt in mg/L goes with EC, at a rate that drops out. A litre of stock makes `ratio` litres of feed, so it holds what
   * they hold; the tank lacks its volume times what its EC is short of. Lacking over holding is the dose.
   */
  test.each(SYSTEMS)("%s: lacking salt, weighed, over the salt in a measure of stock", (_units, volume, weight) => {
    property(tanks, ({ tank, now, more, rise, ratio, perEc }) => {
      const lacking = physical("c * V", { c: quantity(perEc * more, "mg/L"), V: quantity(tank, volume) }, weight);
      const holds = physical("c * V", { c: quantity(perEc * rise, "mg/L"), V: quantity(ratio, volume) }, weight);
      const call = {
        tank_volume: tank,
        ec_now: now,
        ec_target: now + more,
        feed_ec_rise: rise,
        injector_ratio: ratio,
      };
      expectClose(answerOf("TANK_DOSE", call), lacking / holds, CLOSE);
    });
  });
});

describe(against("TANK_DOSE", "mathjs 15.2.0, lusolve, salt and water balanced with the dose's own volume"), () => {
  // Unknown are the dose and the tank afterwards: after - dose = tank, and EC after = EC before + EC of the dose.
  test("never more than the whole balance asks for, and short of it by 1 part in the ratio at most", () => {
    const tanks = fc.record({
      tank: size(5, 5000),
      water: size(0, 0.8),
      rise: size(0.3, 3),
      part: size(0.05, 0.95),
      ratio: fc.integer({ min: 50, max: 400 }),
    });
    property(tanks, ({ tank, water, rise, part, ratio }) => {
      const ec_target = water + rise;
      const ec_now = water + part * rise;
      const [dose] = balanced(
        [
          [-1, 1],
          [-(water + rise * ratio), ec_target],
        ],
        [tank, ec_now * tank],
      ) as [number, number];
      const call = { tank_volume: tank, ec_now, ec_target, feed_ec_rise: rise, injector_ratio: ratio };
      const short = 1 - answerOf("TANK_DOSE", call) / dose;
      expect(short).toBeGreaterThan(-1e-9);
      expect(short).toBeLessThanOrEqual(1 / ratio + 1e-9);
    });
  });
});

describe(against("TANK_DILUTION", "mathjs 15.2.0, lusolve, salt and water before and after"), () => {
  const tanks = fc.record({ tank: size(5, 5000), water: size(0, 0.9), above: size(0.05, 2), excess: size(0, 3) });

  test.each(SYSTEMS)("%s: after - added = tank, and the salt after is that of tank and water", (_units, volume) => {
    property(tanks, ({ tank, water, above, excess }) => {
      const ec_target = water + above;
      const ec_now = ec_target + excess;
      const litres = quantity(tank, volume).toNumber("L");
      const [added] = balanced(
        [
          [-1, 1],
          [-water, ec_target],
        ],
        [litres, ec_now * litres],
      ) as [number, number];
      const call = { tank_volume: tank, ec_now, ec_target, water_ec: water };
      expectClose(answerOf("TANK_DILUTION", call), quantity(added, "L").toNumber(volume), CLOSE, 1e-9);
    });
  });
});

describe.each(ENGINES)("a closed loop, round by round in %s", (engine, worked) => {
  const ROUNDS = 60;
  const loops = Array.from({ length: 10 }, (_each, index) => ({
    start_ppm: (index * 23) % 90,
    makeup_ppm: (index * 31) % 120,
    uptake_ppm: (index * 17) % 50,
    makeup_volume: 50 + 15 * index,
    tank_volume: 1000 + 333 * index,
  }));

  describe(against("ION_BUILDUP", engine), () => {
    /*
     * Weight of the ion in the tank, one column a loop: what was there, plus what the make-up brings, less what plants take
     * up out of as much water as they drink; never below none. The tank stands at its level after each round.
     */
    test("weight in the tank over its volume, after each of sixty rounds", () => {
      const rows: PlainCell[][] = [loops.map(({ start_ppm, tank_volume }) => start_ppm * tank_volume)];
      for (let round = 1; round <= ROUNDS; round += 1) {
        rows.push(
          loops.map(({ makeup_ppm, uptake_ppm, makeup_volume }, index) => {
            const above = `${String.fromCharCode(65 + index)}${round}`;
            return `=MAX(0,${above}+${makeup_volume}*${makeup_ppm}-${makeup_volume}*${uptake_ppm})`;
          }),
        );
      }
      const values = worked(rows);
      loops.forEach((loop, index) => {
        for (let rounds = 0; rounds <= ROUNDS; rounds += 1) {
          const ppm = numberAt(values, rounds, index) / loop.tank_volume;
          expectClose(answerOf("ION_BUILDUP", { ...loop, rounds }), ppm, CLOSE, 1e-9);
        }
      });
      // Both a loop that gathers and one that is used up are among them.
      const last = (index: number): number => numberAt(values, ROUNDS, index);
      expect(loops.some((_loop, index) => last(index) === 0)).toBe(true);
      expect(loops.some((loop, index) => last(index) > 2 * loop.start_ppm * loop.tank_volume)).toBe(true);
    });
  });
});
