/** Weather and demand against physics that another library works, and a greenhouse's year in a spreadsheet. */
import fc from "fast-check";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, published } from "../../rig/evidence";
import { inHyperFormula, numberAt, type PlainCell } from "../../rig/plainSheet";
import { serialNumber } from "../../rig/serialNumber";
import { physical, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-11;
const SYSTEMS = [
  ["us", "in", "ft^2", "gallon", "in"],
  ["metric", "mm", "m^2", "L", "cm"],
] as const;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 60 });

describe(
  against("CROP_COEFFICIENT", "mathjs 15.2.0, units, back from the volume that a known coefficient uses"),
  () => {
    test.each(SYSTEMS)("%s: depth x coefficient x area, as a volume", (units, depth, ground, volume) => {
      property(fc.record({ kc: size(0.1, 3), et: size(0.02, 10), area: size(0.05, 30) }), ({ kc, et, area }) => {
        const measured_use = physical(
          "kc * et * A",
          { kc, et: quantity(et, depth), A: quantity(area, ground) },
          volume,
        );
        expectClose(
          answerOf("CROP_COEFFICIENT", { measured_use, reference_et: et, area_per_plant: area, units }),
          kc,
          CLOSE,
        );
      });
    });
  },
);

describe(against("EFFECTIVE_RAIN", "mathjs 15.2.0, units, what a pot stores of the rain and what runs through"), () => {
  const pots = fc.record({
    rain: size(0.1, 60),
    across: size(5, 60),
    capture_factor: size(0.3, 3),
    room: size(0, 3),
  });

  test.each(SYSTEMS)("%s: stored and drained are the rain on the round top", (units, depth, _a, volume, length) => {
    property(pots, ({ rain, across, capture_factor, room }) => {
      const sky = { P: quantity(rain, depth), d: quantity(across, length), CF: capture_factor };
      const caught = physical("P * CF * pi * (d / 2)^2", sky, volume);
      const call = { rain, top_diameter: across, units, capture_factor };
      expectClose(answerOf("EFFECTIVE_RAIN", call), caught, CLOSE);
      const stored = answerOf("EFFECTIVE_RAIN", { ...call, room });
      const drained = Math.max(0, caught - room);
      expectClose(stored + drained, caught, CLOSE, 1e-12);
      expect(stored).toBeLessThanOrEqual(room);
    });
  });
});

/** Latent heat of vaporisation that stands behind the 0.408 of FAO-56 Eq. 20: 1 / 2.45, which is 0.40816. */
const LATENT = quantity(2.45, "MJ/kg");
const ROUNDED_408 = 0.0005;

describe(published("ET0_GREENHOUSE"), () => {
  /*
   * Fernandez et al. (2010), abstract: grass in a plastic house at Almeria (36.8 N) used slightly less than 1 mm a day in
   * winter and about 4 mm a day in July. The sun outside is taken as 0.55 (winter) and 0.65 (July) of FAO-56's
   * extraterrestrial radiation and the transmission as 0.60, both assumed, so the bounds are wide: they tell coefficients
   * that are a third off or more, and the two branches taken for one another.
   */
  const day = (month: number, clearness: number): number => {
    const date = serialNumber(2003, month, 15);
    const solar_radiation = clearness * answerOf("EXTRATERRESTRIAL_RADIATION", { latitude: 36.8, date });
    return answerOf("ET0_GREENHOUSE", { solar_radiation, transmission: 0.6, date, units: "metric" });
  };

  test("Fernandez et al. (2010), abstract: about 4 mm a day in July", () => {
    expectClose(day(7, 0.65), 4, 0, 0.5);
  });

  test("Fernandez et al. (2010), abstract: slightly less than 1 mm a day in winter", () => {
    for (const month of [12, 1]) {
      expect(day(month, 0.55)).toBeGreaterThan(0.6);
      expect(day(month, 0.55)).toBeLessThan(1);
    }
  });
});

describe(against("ET0_GREENHOUSE", "mathjs 15.2.0, units, the sun inside as evaporated water"), () => {
  test.each([
    ["us", "in"],
    ["metric", "mm"],
  ] as const)("%s: radiation over latent heat over density, x 0.573 on day 150", (units, depth) => {
    const date = serialNumber(2015, 1, 1) + 149;
    property(fc.record({ sun: size(1, 35), part: size(0.2, 0.9) }), ({ sun, part }) => {
      const water = physical(
        "part * R * (1 day) / L / rho",
        { part, R: quantity(sun, "MJ / m^2 / day"), L: LATENT, rho: quantity(1, "kg/L") },
        depth,
      );
      const call = { solar_radiation: sun, transmission: part, date, units };
      expectClose(answerOf("ET0_GREENHOUSE", call), 0.573 * water, ROUNDED_408);
    });
  });
});

describe(against("ET0_GREENHOUSE", "HyperFormula 3.5.0, a year row by row"), () => {
  /*
   * Columns: date, day of the year by the sheet's own calendar, radiation, the part that evaporates by going up from day
   * to day (0.2899 on 1 January, 0.0019 more each day to 220; 0.70252 on day 221, 0.00288 less each day), and the water.
   */
  test.each([2015, 2016])("every day of %d", (year) => {
    const first = serialNumber(year, 1, 1);
    const days = serialNumber(year + 1, 1, 1) - first;
    const sun = Array.from({ length: days }, (_day, index) => 16 - 10 * Math.cos((2 * Math.PI * (index + 10)) / days));
    const rows = sun.map((radiation, index): PlainCell[] => {
      const row = index + 1;
      const above = row - 1;
      const part = row === 1 ? 0.2899 : `=IF(B${row}<221,D${above}+0.0019,IF(B${row}=221,0.70252,D${above}-0.00288))`;
      return [first + index, `=A${row}-DATE(YEAR(A${row}),1,0)`, radiation, part, `=D${row}*0.62*C${row}/2.45`];
    });
    const values = inHyperFormula(rows);
    sun.forEach((solar_radiation, index) => {
      const call = { solar_radiation, transmission: 0.62, date: first + index, units: "metric" };
      expect(numberAt(values, index, 1)).toBe(index + 1);
      expectClose(answerOf("ET0_GREENHOUSE", call), numberAt(values, index, 4), ROUNDED_408);
    });
  });
});
