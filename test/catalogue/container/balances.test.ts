/** Substrate and pots against physics that another library works: three phases in a pot, and water that is weighed. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { balanced, physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-10;
const SYSTEMS = [
  ["us", "lbm", "gallon", "in"],
  ["metric", "kg", "L", "cm"],
] as const;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 60 });

const WATER = quantity(1, "kg/L");

describe(against("CONTAINER_CAPACITY", "mathjs 15.2.0, units, back from a pot filled with known water"), () => {
  test.each(SYSTEMS)(
    "%s: water of a known part of the volume, weighed on the dry substrate",
    (units, weight, volume) => {
      property(fc.record({ dry: size(0.05, 50), part: size(0.05, 0.95), size: size(0.05, 100) }), (pot) => {
        const dry = quantity(pot.dry, weight);
        const wet_weight = physical(
          "dry + part * V * rho",
          { dry, part: pot.part, V: quantity(pot.size, volume), rho: WATER },
          weight,
        );
        const call = { wet_weight, dry_weight: pot.dry, volume: pot.size, units };
        // The water is the difference of two weights: what is lost of its digits is dry over water times the rounding.
        expectClose(answerOf("CONTAINER_CAPACITY", call), pot.part, 1e-9, 1e-12);
      });
    },
  );
});

describe(against("AIR_SPACE", "mathjs 15.2.0, lusolve: solids, water and air of a pot from its two weights"), () => {
  /*
   * Unknown are the solids, the water that stays and the air, in litres. Together they fill the pot; drained, solids and
   * water weigh what the scale says; soaked, the air is water too.
   */
  test("the air that the two weights and the volume leave room for, for any pot", () => {
    const pots = fc.record({ volume: size(0.1, 60), air: size(0, 0.6), water: size(0.1, 1), density: size(1.2, 2.7) });
    property(pots, ({ volume, air, water, density }) => {
      const drained_volume = air * volume;
      const stays = water * (volume - drained_volume);
      const drainedWeight = (volume - drained_volume - stays) * density + stays;
      const [, , gas] = balanced(
        [
          [1, 1, 1],
          [density, 1, 0],
          [density, 1, 1],
        ],
        [volume, drainedWeight, drainedWeight + drained_volume],
      ) as [number, number, number];
      expectClose(answerOf("AIR_SPACE", { drained_volume, container_volume: volume }), gas / volume, 0, 1e-10);
    });
  });

  test.each(SYSTEMS)("%s: drained water weighed and turned into the unit of the pot", (_units, weight, volume) => {
    property(fc.record({ pounds: size(0.01, 3), pot: size(5, 50) }), ({ pounds, pot }) => {
      const drained = physical("m / rho", { m: quantity(pounds, weight), rho: WATER }, volume);
      const part = physical("m / rho / V", { m: quantity(pounds, weight), rho: WATER, V: quantity(pot, volume) }, "");
      expectClose(answerOf("AIR_SPACE", { drained_volume: drained, container_volume: pot }), part, CLOSE);
    });
  });
});

describe(against("WATER_HELD", "mathjs 15.2.0, units, the water as a column of its own on the pot's area"), () => {
  test.each(SYSTEMS)(
    "%s: a straight pot whose water, let out of the substrate, stands this high",
    (_u, _w, volume, length) => {
      property(
        fc.record({ across: size(5, 60), high: size(5, 60), part: size(0.05, 0.95) }),
        ({ across, high, part }) => {
          const pot = { d: quantity(across, length), h: quantity(high, length), part };
          const holds = physical("pi / 4 * d^2 * h", pot, volume);
          const column = physical("pi / 4 * d^2 * (h - (1 - part) * h)", pot, volume);
          expectClose(answerOf("WATER_HELD", { volume: holds, container_capacity: part }), column, CLOSE);
        },
      );
    },
  );

  test.each(SYSTEMS)(
    "%s: what the scale says is held, of CONTAINER_CAPACITY's own weights",
    (units, weight, volume) => {
      property(fc.record({ dry: size(0.5, 10), water: size(0.5, 10), pot: size(12, 60) }), ({ dry, water, pot }) => {
        const call = { wet_weight: dry + water, dry_weight: dry, volume: pot, units };
        const container_capacity = answerOf("CONTAINER_CAPACITY", call);
        const held = physical("m / rho", { m: quantity(water, weight), rho: WATER }, volume);
        expectClose(answerOf("WATER_HELD", { volume: pot, container_capacity }), held, CLOSE);
      });
    },
  );
});

describe(against("TARGET_WEIGHT", "mathjs 15.2.0, lusolve: water left and water used of a weighed pot"), () => {
  const pots = fc.record({ dry: size(0.2, 20), water: size(0.2, 20), fraction: size(0.05, 1) });

  test.each(SYSTEMS)(
    "%s, part of the water: left + used is what it held, and left is that part of the two",
    (_u, weight) => {
      property(pots, ({ dry, water, fraction }) => {
        const kilograms = (amount: number): number => quantity(amount, weight).toNumber("kg");
        const [left] = balanced(
          [
            [1, 1],
            [1 - fraction, -fraction],
          ],
          [kilograms(water), 0],
        ) as [number, number];
        const target = quantity(kilograms(dry) + left, "kg").toNumber(weight);
        const call = { drained_weight: dry + water, dry_weight: dry, fraction, basis: "water" };
        expectClose(answerOf("TARGET_WEIGHT", call), target, CLOSE);
      });
    },
  );

  test.each(SYSTEMS)(
    "%s, part of the total: target + lost is the drained weight, lost the other part of it",
    (_u, weight) => {
      property(pots, ({ dry, water, fraction }) => {
        const drained = dry + water;
        fc.pre(fraction * drained > dry);
        const [target] = balanced(
          [
            [1, 1],
            [1 - fraction, -fraction],
          ],
          [quantity(drained, weight).toNumber("kg"), 0],
        ) as [number, number];
        const call = { drained_weight: drained, dry_weight: dry, fraction, basis: "total" };
        expectClose(answerOf("TARGET_WEIGHT", call), quantity(target, "kg").toNumber(weight), CLOSE);
      });
    },
  );
});
