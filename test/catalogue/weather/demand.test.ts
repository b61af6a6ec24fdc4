/** ET0_GREENHOUSE, CROP_COEFFICIENT, EFFECTIVE_RAIN. */
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute } from "../../rig/evidence";
import { serialNumber, serialOfDay } from "../../rig/serialNumber";
import { SEED } from "../../rig/validInputs";

const greenhouse = (solar_radiation: number, transmission: number, date: number, units = "metric"): number =>
  answerOf("ET0_GREENHOUSE", { solar_radiation, transmission, date, units });

/** Radiation that is worth so many millimetres of water, by FAO-56 Eq. 20. */
const worth = (millimetres: number): number => millimetres / 0.408;

// The method is Fernandez et al. (2010), Irrigation Science 28:497-509, its coefficients recalled; no printed example is
// at hand, so the numbers below are arithmetic on it.
describe(byAnotherRoute("ET0_GREENHOUSE"), () => {
  test("day 150, 10 mm outside, 60 % let in: (0.288 + 0.285) x 6 = 3.438 mm", () => {
    expectClose(greenhouse(worth(10), 0.6, serialOfDay(150)), 3.438, 0, 0.001);
  });

  test("day 280, 6 mm outside, 60 % let in: (1.339 - 0.8064) x 3.6 = 1.9174 mm", () => {
    expectClose(greenhouse(worth(6), 0.6, serialOfDay(280)), 1.9174, 0, 0.001);
  });

  test("20 MJ outside and 70 % let in are 14 MJ inside", () => {
    const day = { solar_radiation: 20, transmission: 0.7, date: serialOfDay(150), units: "metric" };
    expectClose(stepsOf("ET0_GREENHOUSE", day)("Ri"), 14, 1e-12);
  });

  test("the same day in inches: 3.438 / 25.4 = 0.1354 in", () => {
    expectClose(greenhouse(worth(10), 0.6, serialOfDay(150), "us"), 3.438 / 25.4, 1e-9);
  });

  test("both branches meet at day 220 (8 August): 0.706 there, 0.7025 on day 221", () => {
    const share = (day: number): number => greenhouse(worth(1), 1, serialOfDay(day));
    expectClose(share(220), 0.706, 1e-9);
    expectClose(share(221), 1.339 - 0.00288 * 221, 1e-9);
    expect(Math.abs(1.339 - 0.00288 * 220 - 0.706)).toBeLessThan(0.001);
  });

  test("is greatest for its radiation on day 220 and least on 1 January, in a leap year too", () => {
    const first = serialNumber(2016, 1, 1);
    const shares = Array.from({ length: 366 }, (_, index) => greenhouse(10, 0.6, first + index));
    expect(shares.indexOf(Math.max(...shares))).toBe(219);
    // 1.339 - 0.00288 x 366 = 0.28492, below 0.288 + 0.0019 = 0.2899: the last day is the least.
    expect(shares.indexOf(Math.min(...shares))).toBe(365);
    expectClose(shares[365], 0.28492 * 0.408 * 6, 1e-9);
  });

  test("is in proportion to the radiation and to the transmission, never a transmission of the whole reference", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 25, noNaN: true }),
        fc.double({ min: 0.05, max: 0.5, noNaN: true }),
        fc.integer({ min: 36526, max: 47482 }),
        (solar, transmission, date) => {
          const here = greenhouse(solar, transmission, date);
          expectClose(greenhouse(2 * solar, transmission, date), 2 * here, 1e-12);
          expectClose(greenhouse(solar, 2 * transmission, date), 2 * here, 1e-12);
        },
      ),
      { seed: SEED },
    );
  });

  test("stays below the water that all of the sun inside could evaporate, and below the open field's reference", () => {
    const day = { tmax: 30, tmin: 18, rh_max: 80, rh_min: 40, wind_speed: 2, solar_radiation: 25, elevation: 100 };
    const field = { ...day, latitude: 37, date: serialOfDay(180), units: "metric" };
    const inside = greenhouse(25, 0.6, serialOfDay(180));
    expect(inside).toBeLessThan(0.408 * 25 * 0.6);
    expect(inside).toBeLessThan(answerOf("ET0_PENMAN_MONTEITH", field));
  });
});

describe("ET0_GREENHOUSE", () => {
  test("takes a transmission of 60 for the slip it is", () => {
    const day = { solar_radiation: 20, transmission: 60, date: serialOfDay(150), units: "metric" };
    expect(refusalOf("ET0_GREENHOUSE", day).message).toContain("write 0.6 or 60%");
  });
});

describe(byAnotherRoute("CROP_COEFFICIENT"), () => {
  const coefficient = (measured_use: number, reference_et: number, area_per_plant: number, units = "metric"): number =>
    answerOf("CROP_COEFFICIENT", { measured_use, reference_et, area_per_plant, units });

  // One plant on three areas, from the same 5 mm: the three coefficients belong to three different areas.
  test.each([
    ["a canopy of 0.4 m", 0.62832, (Math.PI / 4) * 0.4 ** 2, 1],
    ["a pot top of 0.28 m", 0.61575, (Math.PI / 4) * 0.28 ** 2, 2],
    ["a bed of 0.4 m x 0.4 m", 0.64, 0.4 ** 2, 0.8],
  ])("1 mm on 1 m2 is 1 L: on %s, %d L at 5 mm", (_basis, litres, area, expected) => {
    expectClose(coefficient(litres, 5, area), expected, 1e-4);
  });

  test("a pot that fell from 6.82 to 6.31 kg in a day of 5 mm, on 0.16 m2: 0.51 / 0.8 = 0.6375", () => {
    expectClose(coefficient(6.82 - 6.31, 5, 0.16), 0.6375, 1e-9);
  });

  test("US: 0.6 gal is 138.6 in3, on 3.5 ft2 0.275 in, of 0.25 in 1.1", () => {
    expectClose(coefficient(0.6, 0.25, 3.5, "us"), 1.1, 1e-9);
  });

  test("PLANT_WATER_DEMAND with it gives the water that was weighed, in both systems", () => {
    const plant = fc.record({
      use: fc.double({ min: 0.01, max: 40, noNaN: true }),
      et: fc.double({ min: 0.05, max: 12, noNaN: true }),
      area: fc.double({ min: 0.01, max: 20, noNaN: true }),
      units: fc.constantFrom("us", "metric"),
    });
    fc.assert(
      fc.property(plant, ({ use, et, area, units }) => {
        const given = { reference_et: et, area_per_plant: area, units };
        const crop_coefficient = coefficient(use, et, area, units);
        expectClose(answerOf("PLANT_WATER_DEMAND", { ...given, crop_coefficient }), use, 1e-12);
      }),
      { seed: SEED },
    );
  });

  test("belongs to its area: on half the area it is twice as large", () => {
    expectClose(coefficient(0.5, 5, 0.08), 2 * coefficient(0.5, 5, 0.16), 1e-12);
  });
});

describe("CROP_COEFFICIENT", () => {
  test.each(["measured_use", "reference_et", "area_per_plant"])("has no answer for a blank or 0 %s", (name) => {
    const given: Record<string, unknown> = {
      measured_use: 0.5,
      reference_et: 5,
      area_per_plant: 0.16,
      units: "metric",
    };
    for (const blank of [0, null, ""]) {
      expect(refusalOf("CROP_COEFFICIENT", { ...given, [name]: blank }).message).toContain(`${name} is blank or 0`);
    }
  });
});

describe(byAnotherRoute("EFFECTIVE_RAIN"), () => {
  const POT = { rain: 10, top_diameter: 25.4, units: "metric" };
  const rain = (change: Readonly<Record<string, unknown>> = {}): number =>
    answerOf("EFFECTIVE_RAIN", { ...POT, ...change });

  test("10 mm x 0.0507 m2 x 1.2 is 0.608 L, of which the pot takes the 0.4 L that it has room for", () => {
    expectClose(rain({ capture_factor: 1.2, room: 0.4 }), 0.4, 0, 1e-9);
    expectClose(rain({ capture_factor: 1.2 }), 10 * 0.0507 * 1.2, 0.001);
  });

  test("one millimetre on one square metre of pot top is a litre", () => {
    // A diameter of 2 / sqrt(pi) m has an area of 1 m2.
    expectClose(rain({ rain: 1, top_diameter: 200 / Math.sqrt(Math.PI) }), 1, 1e-12);
  });

  test("a pot that holds its rain as a column: 1 in of rain in a 10 in pot is 25 pi in3 = 0.34 gal", () => {
    expectClose(rain({ rain: 1, top_diameter: 10, units: "us" }), (25 * Math.PI) / 231, 1e-12);
  });

  test("is what PLANT_WATER_DEMAND counts for the same depth on the same area", () => {
    const area = (Math.PI * 0.254 ** 2) / 4;
    const depth = { reference_et: 10, crop_coefficient: 1, area_per_plant: area, units: "metric" };
    expectClose(rain(), answerOf("PLANT_WATER_DEMAND", depth), 1e-12);
  });

  test('room left out, blank or "none" is no cap; a room of 0 is a full pot, and no rain counts', () => {
    const open = rain();
    for (const room of [undefined, null, "", "none", " None "]) expect(rain({ room })).toBe(open);
    expect(rain({ room: 0 })).toBe(0);
  });

  test("no rain is no water, whatever the room", () => {
    expect(rain({ rain: 0 })).toBe(0);
    expect(rain({ rain: 0, room: 3 })).toBe(0);
  });

  test("goes with the rain and with the square of the diameter up to the room, and never beyond it", () => {
    const pot = fc.record({
      rain: fc.double({ min: 0, max: 100, noNaN: true }),
      top_diameter: fc.double({ min: 5, max: 100, noNaN: true }),
      capture_factor: fc.double({ min: 0.3, max: 4, noNaN: true }),
      room: fc.double({ min: 0, max: 20, noNaN: true }),
    });
    fc.assert(
      fc.property(pot, ({ room, ...given }) => {
        const open = rain(given);
        const held = rain({ ...given, room });
        expectClose(rain({ ...given, rain: 2 * given.rain }), 2 * open, 1e-12);
        expectClose(rain({ ...given, top_diameter: 2 * given.top_diameter }), 4 * open, 1e-12);
        expect(held).toBe(Math.min(open, room));
      }),
      { seed: SEED },
    );
  });
});

describe("EFFECTIVE_RAIN", () => {
  test("another word than none is refused by name", () => {
    expect(refusalOf("EFFECTIVE_RAIN", { rain: 10, top_diameter: 25.4, units: "metric", room: "full" })).toMatchObject({
      code: "#VALUE!",
      argument: "room",
    });
  });
});
