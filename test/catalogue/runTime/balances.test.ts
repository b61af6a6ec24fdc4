/** Run times, captured water and zones at once, against physics and a spreadsheet that others work. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { columnName, ENGINES, wholeAt, type PlainCell } from "../../rig/plainSheet";
import { physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-11;
const SYSTEMS = [
  ["us", "gallon", "in", "ft"],
  ["metric", "L", "cm", "m"],
] as const;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 60 });

describe(against("RUN_MINUTES", "mathjs 15.2.0, units, back from the water of a known run"), () => {
  test.each(SYSTEMS)(
    "%s: emitters open for known seconds give a volume, and the volume gives the time back",
    (_u, volume) => {
      const runs = fc.record({
        seconds: size(10, 20_000),
        flow: size(0.1, 80),
        emitters: fc.integer({ min: 1, max: 8 }),
      });
      property(runs, ({ seconds, flow, emitters }) => {
        const run = { n: emitters, q: quantity(flow, `${volume}/hour`), t: quantity(seconds, "s") };
        const call = {
          volume_per_plant: physical("n * q * t", run, volume),
          emitter_flow: flow,
          emitters_per_plant: emitters,
        };
        expectClose(answerOf("RUN_MINUTES", call), quantity(seconds, "s").toNumber("minute"), CLOSE);
      });
    },
  );
});

describe(against("CAPTURE_FACTOR", "mathjs 15.2.0, units, the ground that the plant gathers water from"), () => {
  test.each([
    ["inches and gallons", "in", "gallon", "in"],
    ["millimetres and millilitres", "mm", "cm^3", "cm"],
  ])(
    "%s: two rain catchers in one rain, their areas as the squares of their widths",
    (_what, depth, volume, length) => {
      property(
        fc.record({ rain: size(0.1, 40), pot: size(5, 60), gathers: size(3, 120) }),
        ({ rain, pot, gathers }) => {
          const caught = (across: number): number =>
            physical("P * pi / 4 * d^2", { P: quantity(rain, depth), d: quantity(across, length) }, volume);
          const call = { water_with_plant: caught(gathers), water_empty_pot: caught(pot) };
          expectClose(answerOf("CAPTURE_FACTOR", call), (gathers / pot) ** 2, CLOSE);
        },
      );
    },
  );
});

describe(against("DRIP_LINE_RUN_MINUTES", "mathjs 15.2.0, units, back from the water of a known run"), () => {
  const lines = fc.record({
    spacing: size(4, 40),
    whole: fc.integer({ min: 1, max: 6 }),
    rest: size(0.02, 0.98),
    flow: size(0.1, 5),
    minutes: size(1, 120),
  });

  test.each(SYSTEMS)(
    "%s, fewest: the pot with fewest emitters over it gets its water in the minutes",
    (_u, volume, length) => {
      property(lines, ({ spacing, whole, rest, flow, minutes }) => {
        const top_diameter = (whole + rest) * spacing;
        const line = {
          D: quantity(top_diameter, length),
          e: quantity(spacing, length),
          q: quantity(flow, `${volume}/hour`),
          t: quantity(minutes, "minute"),
        };
        const volume_per_plant = physical("floor(D / e) * q * t", line, volume);
        const call = { volume_per_plant, emitter_flow: flow, emitter_spacing: spacing, top_diameter };
        expectClose(answerOf("DRIP_LINE_RUN_MINUTES", call), minutes, CLOSE);
      });
    },
  );

  test.each(SYSTEMS)(
    "%s, average: the line gives so much a foot or metre, and the pot is so many of them",
    (_u, volume, length, long) => {
      property(lines, ({ spacing, whole, rest, flow, minutes }) => {
        const top_diameter = (whole + rest) * spacing;
        const perLength = physical(
          "q / e",
          { q: quantity(flow, `${volume}/hour`), e: quantity(spacing, length) },
          `${volume} / hour / ${long}`,
        );
        const run = {
          line: quantity(perLength, `${volume} / hour / ${long}`),
          D: quantity(top_diameter, length),
          t: quantity(minutes, "minute"),
        };
        const call = {
          volume_per_plant: physical("line * D * t", run, volume),
          emitter_flow: flow,
          emitter_spacing: spacing,
          top_diameter,
          basis: "average",
        };
        expectClose(answerOf("DRIP_LINE_RUN_MINUTES", call), minutes, CLOSE);
      });
    },
  );
});

describe.each(ENGINES)("zones opened one after the other in %s", (engine, worked) => {
  // Flows in eighths, so that the running sum is exact and a supply used to the last drop counts.
  const cases = Array.from({ length: 40 }, (_each, index) => ({
    zone: (1 + ((index * 37) % 160)) / 8,
    supply: (16 + ((index * index * 53) % 900)) / 8,
  })).concat([
    { zone: 12.5, supply: 50 },
    { zone: 30, supply: 25 },
    { zone: 25, supply: 25 },
  ]);

  describe(against("ZONES_AT_ONCE", engine), () => {
    test("as many as the running sum of their flows stays within the supply", () => {
      const most = 1 + Math.max(...cases.map(({ zone, supply }) => Math.ceil(supply / zone)));
      const rows = cases.map(({ zone, supply }, index): PlainCell[] => {
        const row = index + 1;
        const sums = Array.from({ length: most }, (_zone, at): PlainCell => {
          return at === 0 ? `=B${row}` : `=${columnName(at + 2)}${row}+$B${row}`;
        });
        const last = columnName(most + 2);
        return [supply, zone, `=COUNTIF(D${row}:${last}${row},"<="&A${row})`, ...sums];
      });
      const values = worked(rows);
      cases.forEach(({ zone, supply }, index) => {
        expect(answerOf("ZONES_AT_ONCE", { supply_flow: supply, zone_flow: zone })).toBe(wholeAt(values, index, 2));
      });
    });
  });
});

describe(against("ZONES_AT_ONCE", "mathjs 15.2.0, units, zones in one unit and the supply in another"), () => {
  test("they fit the supply, and one more does not", () => {
    property(fc.record({ zone: size(1, 200), supply: size(1, 2000) }), ({ zone, supply }) => {
      const zone_flow = physical("q", { q: quantity(zone, "L/minute") }, "gallon/minute");
      const flows = { q: quantity(zone, "L/minute"), s: quantity(supply, "gallon/minute") };
      const zones = answerOf("ZONES_AT_ONCE", { supply_flow: supply, zone_flow });
      const left = (count: number): number => physical(`s - ${count} * q`, flows, "L/minute");
      expect(left(zones)).toBeGreaterThanOrEqual(-1e-6);
      expect(left(zones + 1)).toBeLessThan(0);
    });
  });
});
