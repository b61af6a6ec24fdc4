/** Tanks and ponds against the water that goes in and out of them, worked by another library. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { ENGINES, numberAt, type PlainCell } from "../../rig/plainSheet";
import { physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-9;
const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 60 });

describe(against("RECIRCULATION_TANK", "mathjs 15.2.0, units, a round tank whose levels are known"), () => {
  /*
   * A round tank and its levels: the pump's intake above the floor, the full mark, the rim. From the full mark down to the
   * intake is what benches and pots may take; the benches hold their depth of water on their area, pots take the rest.
   */
  test.each([
    ["us", "ft", "in", "ft^2", "gallon"],
    ["metric", "m", "cm", "m^2", "L"],
  ])("%s: the tank up to its rim is what its levels ask for", (_units, long, short, ground, volume) => {
    const tanks = fc.record({
      across: size(4, 12),
      full: size(4, 9),
      intake: size(0, 1),
      freeboard: size(0, 0.3),
      benches: fc.integer({ min: 1, max: 8 }),
      bench: size(2, 8),
      flood: size(1, 2.5),
    });
    property(tanks, ({ across, full, intake, freeboard, benches, bench, flood }) => {
      const d = quantity(across, long);
      const layer = (height: number): number => physical("pi / 4 * d^2 * h", { d, h: quantity(height, long) }, volume);
      const flood_volume = physical("A * h", { A: quantity(bench, ground), h: quantity(flood, short) }, volume);
      const uptake = layer(full - intake) - benches * flood_volume;
      fc.pre(uptake >= 0);
      const call = {
        flood_volume,
        benches_holding_water: benches,
        uptake_until_topup: uptake,
        dead_storage: layer(intake),
        freeboard,
      };
      expectClose(answerOf("RECIRCULATION_TANK", call), layer(full * (1 + freeboard)), CLOSE);
    });
  });
});

describe.each(ENGINES)("a tank pumped down bench by bench in %s", (engine, worked) => {
  describe(against("RECIRCULATION_TANK", engine), () => {
    test("filled below its freeboard it floods every bench, feeds the pots, and is down to its dead storage", () => {
      const tanks = Array.from({ length: 20 }, (_each, index) => ({
        flood_volume: 20 + 7 * index,
        benches_holding_water: 1 + (index % 6),
        uptake_until_topup: (index * 31) % 90,
        dead_storage: (index * 17) % 60,
        freeboard: (index % 5) / 16,
      }));
      const rows = tanks.map((tank, index): PlainCell[] => {
        const row = index + 1;
        const levels = Array.from({ length: tank.benches_holding_water }, (_bench, at) => {
          return `=${String.fromCharCode(67 + at)}${row}-$A${row}`;
        });
        const lowest = String.fromCharCode(67 + tank.benches_holding_water);
        const full = `=${answerOf("RECIRCULATION_TANK", tank)}-B${row}`;
        // What stands in the freeboard: of T = S + f S, T less S; S is found as T less T f / (1 + f).
        const room = `=${answerOf("RECIRCULATION_TANK", tank)}*${tank.freeboard}/(1+${tank.freeboard})`;
        return [tank.flood_volume, room, full, ...levels, `=${lowest}${row}-${tank.uptake_until_topup}`];
      });
      const values = worked(rows);
      tanks.forEach(({ dead_storage, benches_holding_water }, index) => {
        expectClose(numberAt(values, index, benches_holding_water + 3), dead_storage, 1e-9, 1e-9);
      });
    });
  });
});

describe(against("DAYS_OF_STORAGE", "mathjs 15.2.0, units, a pond that gives water for known days"), () => {
  test.each(["gallon", "L", "m^3", "acre in"])(
    "in %s: pump by the hour, evaporation by its depth, a well by the second",
    (volume) => {
      const ponds = fc.record({
        pump: size(20, 400),
        hours: size(1, 20),
        depth: size(0, 10),
        pond: size(0.05, 3),
        well: size(0, 0.9),
        days: size(0.5, 200),
      });
      property(ponds, ({ pump, hours, depth, pond, well, days }) => {
        const pumped = { q: quantity(pump, "gallon/minute"), t: quantity(hours, "hour") };
        const daily_use = physical("q * t", pumped, volume);
        const daily_loss = physical("h * A", { h: quantity(depth, "mm"), A: quantity(pond, "acre") }, volume);
        // The well runs at that part of the pump's water, day and night.
        const flow = quantity(well * physical("q * t / (24 hour)", pumped, "L/s"), "L/s");
        const daily_inflow = physical("f * (86400 s)", { f: flow }, volume);
        const all = {
          ...pumped,
          h: quantity(depth, "mm / day"),
          A: quantity(pond, "acre"),
          f: flow,
          days: quantity(days, "day"),
        };
        const usable_volume = physical("(q * t / (1 day) + h * A - f) * days", all, volume);
        expectClose(answerOf("DAYS_OF_STORAGE", { usable_volume, daily_use, daily_loss, daily_inflow }), days, CLOSE);
      });
    },
  );
});

describe.each(ENGINES)("a store counted down day by day in %s", (engine, worked) => {
  describe(against("DAYS_OF_STORAGE", engine), () => {
    test("water is left after the whole days of the answer, and none after one more", () => {
      const stores = Array.from({ length: 12 }, (_each, index) => ({
        usable_volume: 1000 + 613 * index,
        daily_use: 211 + 13 * index,
        daily_loss: (index * 29) % 60,
        daily_inflow: (index * 41) % 150,
      }));
      const rows: PlainCell[][] = [stores.map(({ usable_volume }) => usable_volume)];
      for (let day = 1; day <= 60; day += 1) {
        rows.push(
          stores.map(({ daily_use, daily_loss, daily_inflow }, index) => {
            const above = `${String.fromCharCode(65 + index)}${day}`;
            return `=${above}-${daily_use}-${daily_loss}+${daily_inflow}`;
          }),
        );
      }
      const values = worked(rows);
      stores.forEach((store, index) => {
        const days = answerOf("DAYS_OF_STORAGE", store);
        const whole = Math.floor(days);
        expect(numberAt(values, whole, index)).toBeGreaterThanOrEqual(0);
        expect(numberAt(values, whole + 1, index)).toBeLessThan(0);
        // The last day is used evenly: the part of it is what is left over what that day takes.
        const left = numberAt(values, whole, index);
        expectClose(days - whole, left / (left - numberAt(values, whole + 1, index)), CLOSE, 1e-9);
      });
    });
  });
});
