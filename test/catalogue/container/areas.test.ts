/** Pots by their sizes: volume, top, depth over the top, and the ground that a plant takes up. */
import { unit } from "mathjs";
import { CONVERT } from "@formulajs/formulajs";
import fc from "fast-check";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

const SYSTEMS = ["us", "metric"] as const;
const volume = (top_diameter: number, bottom_diameter: number, height: number, units = "metric"): number =>
  answerOf("CONTAINER_VOLUME", { top_diameter, bottom_diameter, height, units });
const top = (top_diameter: number, units = "metric"): number => answerOf("TOP_AREA", { top_diameter, units });
const depth = (litres: number, top_diameter: number, units = "metric"): number =>
  answerOf("WATER_DEPTH", { volume: litres, top_diameter, units });
const ground = (in_row: unknown, between_rows: unknown, units = "metric", pattern?: string): number =>
  answerOf("PLANT_SPACING_AREA", { in_row, between_rows, units, pattern });

describe(published("CONTAINER_VOLUME"), () => {
  test("public note on nursery containers: 7 in by 7 in is 1.17 US gallons or 4.4 L", () => {
    expectClose(volume(7, 7, 7, "us"), 1.17, 0, 0.006);
    expectClose(volume(17.78, 17.78, 17.78), 4.4, 0, 0.051);
  });
});

describe(byAnotherRoute("CONTAINER_VOLUME"), () => {
  test("27.9 cm over 22.9 cm, 24 cm high: 12.2 L by adding up 10,000 slices", () => {
    const slices = 10_000;
    let sum = 0;
    for (let slice = 0; slice < slices; slice += 1) {
      const diameter = 22.9 + (5 * (slice + 0.5)) / slices;
      sum += ((Math.PI * diameter ** 2) / 4) * (24 / slices);
    }
    expectClose(volume(27.9, 22.9, 24), sum / 1000, 1e-8);
    expectClose(volume(27.9, 22.9, 24), 12.2, 0, 0.02);
  });

  test("a cone that is cut off is the whole cone less its tip: 30 cm over 20 cm, 20 cm high", () => {
    // The sides meet 60 cm below the top: 60 / 30 = 2 cm of height to the cm of diameter.
    const whole = (Math.PI / 12) * 30 ** 2 * 60;
    const tip = (Math.PI / 12) * 20 ** 2 * 40;
    expectClose(volume(30, 20, 20), (whole - tip) / 1000, 1e-12);
  });

  test("does not ask which end is up", () => {
    for (const units of SYSTEMS) expectClose(volume(9, 11, 10, units), volume(11, 9, 10, units), 1e-14);
  });
});

describe(published("TOP_AREA"), () => {
  // Worked there with 10 / 12 = 0.83 ft and pi / 4 = 0.785: 0.785 x 0.83 x 0.83.
  test("university course on container nurseries, 4.4.1: a pot of 10 in has 0.54 ft2", () => {
    expectClose(top(10, "us"), 0.54, 0, 0.006);
  });
});

describe(byAnotherRoute("TOP_AREA"), () => {
  test("the ring of a thousand corners comes within 0.001 % of it", () => {
    const corners = 1000;
    const polygon = (corners / 2) * 12.7 ** 2 * Math.sin((2 * Math.PI) / corners);
    expectClose(top(25.4), polygon / 10_000, 1e-5);
  });

  test("12.7 mm of rain on a top of 25.4 cm at a capture factor of 1.8 are 1.1583 L", () => {
    expectClose(12.7 * top(25.4) * 1.8, 1.1583, 0, 0.0001);
  });

  test("pot to pot in a square the tops cover pi / 4 of the ground, 78.54 %", () => {
    for (const units of SYSTEMS) expectClose(top(15, units) / ground(15, 15, units), 0.7854, 0, 0.00005);
  });

  test("pot to pot in a triangle they cover pi / (2 sqrt 3), 90.69 %", () => {
    for (const units of SYSTEMS) {
      expectClose(top(15, units) / ground(15, null, units, "triangle"), 0.9069, 0, 0.00005);
    }
  });
});

describe(against("TOP_AREA", "mathjs 15.2.0"), () => {
  test.each([4, 6.5, 10, 17, 24])("a circle of %d in or cm, by its units", (size) => {
    const square = (from: string, to: string): number => unit(size ** 2, from).toNumber(to);
    expectClose(top(size, "us"), (Math.PI / 4) * square("sqin", "sqft"), 1e-12);
    expectClose(top(size), (Math.PI / 4) * square("cm^2", "m^2"), 1e-12);
  });
});

describe(published("WATER_DEPTH"), () => {
  test("Clemson Extension: 27,154 gal stand an inch deep on an acre, here a circle of 43,560 ft2", () => {
    const diameter = Math.sqrt((4 * 43_560 * 144) / Math.PI);
    expectClose(depth(27_154, diameter, "us"), 1, 0.00005);
  });
});

describe(byAnotherRoute("WATER_DEPTH"), () => {
  test("0.643 L on a top of 25.4 cm: 643 cm3 on 506.7 cm2 are 12.69 mm", () => {
    expectClose(depth(0.643, 25.4), 12.69, 0, 0.01);
  });

  test("a stake of 5 gal/h on a top of 17 in gives 5.09 in/h, one of 16 gal/h 16.3", () => {
    expectClose(depth(5, 17, "us"), (5 * 231) / (Math.PI * 8.5 ** 2), 1e-12);
    expectClose(depth(5, 17, "us"), 5.09, 0, 0.005);
    expectClose(depth(16, 17, "us"), 16.28, 0, 0.006);
  });

  test("times the top area it is the volume again", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        fc.double({ min: 2, max: 100, noNaN: true }),
        (pot, diameter) => {
          expectClose(depth(pot, diameter) * top(diameter), pot, 1e-12);
          expectClose(depth(pot, diameter, "us") * top(diameter, "us") * (144 / 231), pot, 1e-12);
        },
      ),
      { seed: SEED },
    );
  });

  test("is what EFFECTIVE_RAIN puts into the pot, back in millimetres", () => {
    const caught = answerOf("EFFECTIVE_RAIN", { rain: 12.7, top_diameter: 25.4, units: "metric" });
    expectClose(depth(caught, 25.4), 12.7, 1e-12);
  });
});

describe(against("WATER_DEPTH", "@formulajs/formulajs 4.6.1"), () => {
  test.each([
    [0.25, 8],
    [1, 14],
    [5, 17],
  ])("%d gal on %d in, by CONVERT to mL, cm and in", (gallons, diameter) => {
    const cubicCm = CONVERT(gallons, "gal", "ml") as number;
    const radius = (CONVERT(diameter, "in", "cm") as number) / 2;
    const inches = CONVERT(cubicCm / (Math.PI * radius ** 2), "cm", "in") as number;
    expectClose(depth(gallons, diameter, "us"), inches, 1e-12);
  });
});

describe(published("PLANT_SPACING_AREA"), () => {
  // Greenhouse trade magazine, growers' arithmetic, part 4; in2 to the pot and pots on 100 ft2, whole numbers printed.
  test.each([
    ["10 in square", 10, "square", 100, 144],
    ["14 in diagonal", 14, "triangle", 170, 85],
  ])(
    "trade magazine on spacing, %s: %d in, %s, are %d in2 and %d pots on 100 ft2",
    (_what, side, pattern, in2, pots) => {
      const area = ground(side, side, "us", pattern);
      expectClose(area * 144, in2, 0, 0.51);
      expectClose(100 / area, pots, 0, 0.51);
    },
  );

  test("trade magazine on spacing: 6 in square are 400 pots on 100 ft2, 6 in diagonal 462", () => {
    expectClose(100 / ground(6, 6, "us"), 400, 1e-12);
    expect(Math.round(100 / ground(6, null, "us", "triangle"))).toBe(462);
  });

  test("university course on container nurseries, 4.4.1: 1 ft by 2 ft are 2 ft2 of ground", () => {
    expectClose(ground(12, 24, "us"), 2, 1e-14);
  });
});

describe(byAnotherRoute("PLANT_SPACING_AREA"), () => {
  test("a triangle of 0.3 m puts 1,283 plants on 100 m2", () => {
    expect(Math.floor(100 / ground(30, null, "metric", "triangle"))).toBe(1283);
  });

  test("a triangle is worth its rows: side x height, the height by Pythagoras", () => {
    const height = Math.sqrt(30 ** 2 - 15 ** 2);
    expectClose(ground(30, null, "metric", "triangle"), ground(30, height), 1e-12);
  });

  test("plants counted out on a bed of 1,000 x 1,000: shifted rows stand 0.866 of the side apart", () => {
    const side = 10;
    let plants = 0;
    for (let row = 0; row * side * (Math.sqrt(3) / 2) < 1000; row += 1) {
      for (let at = row % 2 === 0 ? 0 : side / 2; at < 1000; at += side) plants += 1;
    }
    expectClose(ground(side, null, "metric", "triangle"), 100 / plants, 0.005);
  });
});

describe("the ground of a plant", () => {
  test("in a triangle needs no distance between rows, or the side again", () => {
    const blank = ground(12, "", "us", "triangle");
    for (const between of [null, undefined, 0, 12]) expect(ground(12, between, "us", "triangle")).toBe(blank);
    expectClose(blank, Math.sqrt(3) / 2, 1e-14);
  });

  test("in a triangle refuses another distance, and points to the square", () => {
    const rows = { in_row: 12, between_rows: 10.4, units: "us", pattern: "triangle" };
    const refused = refusalOf("PLANT_SPACING_AREA", rows);
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "between_rows" });
    expect(refused.message).toContain('take "square"');
  });

  test("in a square asks for the distance between rows, a blank as a 0", () => {
    const said = [null, undefined, "", 0].map(
      (between_rows) => refusalOf("PLANT_SPACING_AREA", { in_row: 12, between_rows, units: "us" }).message,
    );
    expect(new Set(said)).toEqual(
      new Set([
        "PLANT_SPACING_AREA: between_rows is blank or 0; it must be more than 0 (in or cm); only a triangle does without it",
      ]),
    );
  });

  test("of measured rows takes no second 0.866: 30 by 25 is 750, shifted or not", () => {
    expectClose(ground(30, 25), 0.075, 1e-12);
  });

  test("grows fourfold with twice the spacing, in both systems and patterns", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 200, noNaN: true }), fc.constantFrom(...SYSTEMS), (side, units) => {
        expectClose(ground(2 * side, 2 * side, units), 4 * ground(side, side, units), 1e-12);
        const triangle = ground(side, null, units, "triangle");
        expectClose(ground(2 * side, null, units, "triangle"), 4 * triangle, 1e-12);
        expectClose(ground(side, side, units) / triangle, 2 / Math.sqrt(3), 1e-12);
      }),
      { seed: SEED },
    );
  });
});

describe("a pot", () => {
  test("of the mean diameter is low by 0.3 %, one of the mean area high by twice that, for a usual taper", () => {
    const cone = volume(27.9, 22.9, 24);
    const low = cone - volume(25.4, 25.4, 24);
    const high = (volume(27.9, 27.9, 24) + volume(22.9, 22.9, 24)) / 2 - cone;
    expectClose(low, 0.03927, 0, 0.00001);
    expectClose(high, 2 * low, 1e-9);
  });

  test("measured to the rim and not to the fill line is high: an inch of ten is a tenth and more", () => {
    expect(volume(10, 8, 10, "us") / volume(9.8, 8, 9, "us")).toBeGreaterThan(1.1);
  });
});
