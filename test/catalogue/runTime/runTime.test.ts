/** Run times of stakes, drip line and sprinklers, and what falls on the pots. */
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { combined, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const EXACT = 1e-12;
const MATHJS = "mathjs 15.2.0, units";

/** A number of the sizes that stand in a sheet. */
const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 300 });

const grossThenMinutes = (net: number, leaching: number, uniformity: number, basis: string): number =>
  answerOf("RUN_MINUTES", {
    volume_per_plant: answerOf("GROSS_WATER", { net, leaching_fraction: leaching, uniformity, basis }),
    emitter_flow: 12,
  });

describe(byAnotherRoute("RUN_MINUTES"), () => {
  test("0.4 gal at 6.5 gal/h are 3.6923 min: 0.4 / 6.5 of an hour, in seconds 221.54", () => {
    const minutes = answerOf("RUN_MINUTES", { volume_per_plant: 0.4, emitter_flow: 6.5 });
    expectClose(minutes, 3.6923, 0, 0.0001);
    expectClose(minutes * 60, 221.54, 0, 0.005);
  });

  test("1.5 L at 12 L/h: 7.5 min net, 8.8235 with 15 % leached", () => {
    expectClose(grossThenMinutes(1.5, 0, 1, "larger"), 7.5, EXACT);
    expectClose(grossThenMinutes(1.5, 0.15, 1, "leaching"), 8.8235, 0, 0.0001);
  });
});

describe(byAnotherRoute("GROSS_WATER"), () => {
  test("1.5 L at 12 L/h with 10 % leached on top of an evenness of 0.9: 7.5 / 0.81 = 9.2593 min", () => {
    expectClose(grossThenMinutes(1.5, 0.1, 0.9, "both"), 9.2593, 0, 0.0001);
  });

  test("20 minutes at an evenness of 0.8 are 25", () => {
    expectClose(
      answerOf("GROSS_WATER", { net: 20, leaching_fraction: 0, uniformity: 0.8, basis: "uniformity" }),
      25,
      EXACT,
    );
  });
});

/** Yard B of the invented nursery: #7 pots with two emitters each. */
const YARD_B = {
  reference_et: 0.25,
  crop_coefficient: 1.1,
  area_per_plant: 3.5,
  leaching_fraction: 0.15,
  uniformity: 0.88,
  emitter_flow: 1,
  emitters_per_plant: 2,
  units: "us",
};

const fromEt = (plan: object = {}): number => answerOf("RUN_MINUTES_FROM_ET", { ...YARD_B, ...plan });

const plans = fc.record({
  reference_et: size(0.01, 20),
  crop_coefficient: size(0.1, 6),
  area_per_plant: size(0.01, 50),
  leaching_fraction: size(0, 0.9),
  uniformity: size(0.1, 1),
  emitter_flow: size(0.1, 80),
  emitters_per_plant: fc.integer({ min: 1, max: 12 }),
  units: fc.constantFrom("us", "metric"),
  cover_factor: size(0.2, 1.5),
});

describe(byAnotherRoute("RUN_MINUTES_FROM_ET"), () => {
  test("Yard B, worked in litres: 6.35 mm x 1.1 x 0.32516 m2 = 2.27125 L; / 0.85 = 2.67206 L; at 7.57082 L/h 21.18 min", () => {
    const litres = 0.25 * 25.4 * 1.1 * (3.5 * 0.3048 ** 2);
    expectClose(litres, 2.27125, 0, 0.00001);
    expectClose(litres / 0.85, 2.67206, 0, 0.00001);
    expectClose(fromEt(), (60 * litres) / 0.85 / (2 * 3.785411784), EXACT);
    expectClose(fromEt(), 21.1765, 0, 0.0001);
  });

  test("is the chain PLANT_WATER_DEMAND, GROSS_WATER, RUN_MINUTES for any plan in either system", () => {
    property(plans, (plan) => {
      const net = answerOf("PLANT_WATER_DEMAND", plan);
      const gross = answerOf("GROSS_WATER", { ...plan, net });
      const minutes = answerOf("RUN_MINUTES", { ...plan, volume_per_plant: gross });
      expectClose(answerOf("RUN_MINUTES_FROM_ET", plan), minutes, EXACT);
    });
  });

  test("records the net and the gross water of that chain", () => {
    const step = stepsOf("RUN_MINUTES_FROM_ET", YARD_B);
    expectClose(step("N"), 0.6, EXACT);
    expectClose(step("G"), 0.6 / 0.85, EXACT);
  });
});

describe(against("RUN_MINUTES_FROM_ET", MATHJS), () => {
  test.each([
    ["us", "inch", "sqft", "gallon", 0.25, 3.5, 1],
    ["metric", "mm", "m2", "litre", 5, 0.16, 4],
  ])("depth x area / (flow x emitters) in %s", (units, depth, area, volume, et, ground, flow) => {
    const byUnits = combined(
      [quantity(et * 1.1, depth), quantity(ground, area)],
      [quantity(0.85 * 2 * flow, `${volume}/hour`)],
      "minute",
    );
    expectClose(fromEt({ reference_et: et, area_per_plant: ground, emitter_flow: flow, units }), byUnits, EXACT);
  });
});

describe("run time from the weather", () => {
  test("rises with weather, crop, area and leaching, and falls with flow, emitters and evenness", () => {
    property(plans, (plan) => {
      const now = answerOf("RUN_MINUTES_FROM_ET", plan);
      const more = (change: object): number => answerOf("RUN_MINUTES_FROM_ET", { ...plan, ...change }) / now;
      expectClose(more({ reference_et: 2 * plan.reference_et }), 2, EXACT);
      expectClose(more({ crop_coefficient: 2 * plan.crop_coefficient }), 2, EXACT);
      expectClose(more({ area_per_plant: 2 * plan.area_per_plant }), 2, EXACT);
      expectClose(more({ emitter_flow: 2 * plan.emitter_flow }), 0.5, EXACT);
      expectClose(more({ emitters_per_plant: 2 * plan.emitters_per_plant }), 0.5, EXACT);
      expect(more({ leaching_fraction: plan.leaching_fraction / 2 })).toBeLessThanOrEqual(1);
      expect(more({ uniformity: plan.uniformity / 2 })).toBeGreaterThanOrEqual(1);
    });
  });

  test("counts one loss, the larger: with 0.15 leached an evenness of 0.88 changes nothing, one of 0.75 does", () => {
    expect(fromEt({ uniformity: 0.88 })).toBe(fromEt({ uniformity: 1 }));
    expectClose(fromEt({ uniformity: 0.75 }) / fromEt(), 0.85 / 0.75, EXACT);
  });

  test("takes the demand under cover from the cover factor, and open ground without one", () => {
    expect(fromEt({ cover_factor: 1 })).toBe(fromEt());
    expectClose(fromEt({ cover_factor: 0.7 }), 0.7 * fromEt(), EXACT);
  });

  test("takes a uniformity of 75 and a leaching fraction of 15 for the slips they are", () => {
    expect(refusalOf("RUN_MINUTES_FROM_ET", { ...YARD_B, uniformity: 75 }).message).toContain("write 0.75 or 75%");
    expect(refusalOf("RUN_MINUTES_FROM_ET", { ...YARD_B, leaching_fraction: 15 }).message).toContain("write 0.15");
  });
});

const shareOf = (pot: object): number => answerOf("INTERCEPTION_FRACTION", { units: "us", ...pot });

describe(published("INTERCEPTION_FRACTION"), () => {
  // University course on water in nurseries, module 4.4, rectangular spacing example: 0.54 ft2 of 2 ft2.
  test("pots of 10 in at 1 ft by 2 ft catch 27 %", () => {
    expectClose(shareOf({ top_diameter: 10, area_per_plant: 2 }), 0.27, 0, 0.005);
    expectClose(
      stepsOf("INTERCEPTION_FRACTION", { top_diameter: 10, area_per_plant: 2, units: "us" })("At") / 144,
      0.54,
      0,
      0.006,
    );
  });
});

describe(byAnotherRoute("INTERCEPTION_FRACTION"), () => {
  test("of pots that touch in a square is pi / 4 = 78.54 %", () => {
    expectClose(100 * shareOf({ top_diameter: 12, area_per_plant: 1 }), 78.54, 0, 0.01);
    expectClose(100 * shareOf({ top_diameter: 100, area_per_plant: 1, units: "metric" }), 78.54, 0, 0.01);
  });

  test("of pots that touch in triangles is pi / (2 sqrt 3) = 90.69 %: each has sqrt(3) / 2 of a square", () => {
    expectClose(100 * shareOf({ top_diameter: 12, area_per_plant: Math.sqrt(3) / 2 }), 90.69, 0, 0.01);
  });

  test("counted drop by drop: of 40,000 drops on a grid over 18 in by 12 in, those within 5 in of the middle hit the pot", () => {
    let hits = 0;
    for (let along = 0; along < 200; along += 1) {
      for (let across = 0; across < 200; across += 1) {
        if (Math.hypot(((along + 0.5) / 200 - 0.5) * 18, ((across + 0.5) / 200 - 0.5) * 12) <= 5) hits += 1;
      }
    }
    expectClose(shareOf({ top_diameter: 10, area_per_plant: 1.5 }), hits / 40_000, 0.002);
  });
});

describe(against("INTERCEPTION_FRACTION", MATHJS), () => {
  test.each([
    ["us", "inch", "sqft", 10, 1.5],
    ["metric", "cm", "m2", 25.4, 0.14],
  ])("top over ground in %s", (units, length, area, diameter, ground) => {
    const top = combined([quantity((Math.PI / 4) * diameter, length), quantity(diameter, length)], [], area);
    expectClose(shareOf({ top_diameter: diameter, area_per_plant: ground, units }), top / ground, EXACT);
  });
});

describe("what falls on the pots", () => {
  test("above all of the ground asks whether pot and ground were swapped", () => {
    const refused = refusalOf("INTERCEPTION_FRACTION", { top_diameter: 10, area_per_plant: 0.5, units: "us" });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "area_per_plant" });
    expect(refused.message).toBe(
      "INTERCEPTION_FRACTION: area_per_plant is 0.5; it must be 0.5454, the pot top, or more; were the two swapped?",
    );
  });

  test("grows with the square of the pot and shrinks with the ground", () => {
    property(fc.tuple(size(1, 50), size(40, 400)), ([diameter, ground]) => {
      const now = shareOf({ top_diameter: diameter, area_per_plant: ground });
      expectClose(shareOf({ top_diameter: diameter / 2, area_per_plant: ground }), now / 4, EXACT);
      expectClose(shareOf({ top_diameter: diameter, area_per_plant: 2 * ground }), now / 2, EXACT);
    });
  });

  test("and stays in them is interception x capture x (1 - leaching), and not 1 - leaching", () => {
    // One plant on 1.5 ft2 under 1 in of water: 216 in3 fall, 78.54 on the top, 94.25 with a capture of 1.2, 80.11 kept.
    const share = shareOf({ top_diameter: 10, area_per_plant: 1.5 });
    expectClose(share * 1.2, 0.436, 0, 0.0005);
    expectClose(share * 1.2 * 0.85, 80.11 / 216, 0, 0.0001);
  });
});

describe(byAnotherRoute("CAPTURE_FACTOR"), () => {
  test("12.7 mm on a top of 25.4 cm is 643 mL; a pot that got 1158 mL caught 1.801 times that", () => {
    const emptyPot = (1.27 * Math.PI * 25.4 ** 2) / 4;
    expectClose(emptyPot, 643.5, 0, 0.1);
    expectClose(answerOf("CAPTURE_FACTOR", { water_with_plant: 1158, water_empty_pot: 643 }), 1.801, 0, 0.001);
  });

  test("of a pot that got what it would have got empty is 1", () => {
    expect(answerOf("CAPTURE_FACTOR", { water_with_plant: 643, water_empty_pot: 643 })).toBe(1);
  });

  test("and back: empty catch x factor is what entered the pot", () => {
    property(fc.tuple(size(1, 5000), size(1, 5000)), ([withPlant, empty]) => {
      const factor = answerOf("CAPTURE_FACTOR", { water_with_plant: withPlant, water_empty_pot: empty });
      expectClose(factor * empty, withPlant, EXACT);
    });
  });
});

const overhead = (bed: object): number =>
  answerOf("OVERHEAD_DEPTH", { capture_factor: 1, leaching_fraction: 0, uniformity: 1, ...bed });

describe(byAnotherRoute("OVERHEAD_DEPTH"), () => {
  test("a use of 15 mm over the pot top, capture 1.5, evenness 0.8: 15 / 1.5 / 0.8 = 12.5 mm", () => {
    for (const diameter of [10, 25.4, 40]) {
      const net = (1.5 * Math.PI * diameter ** 2) / 4 / 1000;
      const bed = { net_per_plant: net, top_diameter: diameter, capture_factor: 1.5, uniformity: 0.8, units: "metric" };
      expectClose(overhead(bed), 12.5, EXACT);
    }
  });

  test("water into a pot from overhead: 12.7 mm x 506.7 cm2 x 1.8 = 1.1583 L, and back", () => {
    const bed = { net_per_plant: 1.1583, top_diameter: 25.4, capture_factor: 1.8, units: "metric" };
    expectClose(overhead(bed), 12.7, 0, 0.001);
  });

  test("the day of a 10 in pot on 1.5 ft2: 0.2338 gal of use needs 0.819 in of water, 0.765 gal on its ground", () => {
    // 0.2338 gal = 54.0 in3 on a top of 78.54 in2 with a capture of 1.2: 0.573 in; / 0.70 = 0.8185 in; x 216 in2 = 176.8 in3.
    const bed = {
      net_per_plant: 54 / 231,
      top_diameter: 10,
      capture_factor: 1.2,
      leaching_fraction: 0.15,
      uniformity: 0.7,
      units: "us",
    };
    const depth = overhead(bed);
    expectClose(depth, 54 / (25 * Math.PI * 1.2) / 0.7, EXACT);
    expectClose((depth * 216) / 231, 0.7654, 0, 0.0001);
  });
});

describe(against("OVERHEAD_DEPTH", MATHJS), () => {
  test.each([
    ["us", "gallon", "inch", "inch", 0.17, 10],
    ["metric", "litre", "cm", "mm", 0.5, 20],
  ])("volume over the pot top in %s", (units, volume, length, depth, net, diameter) => {
    const byUnits = combined(
      [quantity(net, volume)],
      [quantity((Math.PI / 4) * 1.25 * 0.8 * diameter, length), quantity(diameter, length)],
      depth,
    );
    const bed = { net_per_plant: net, top_diameter: diameter, capture_factor: 1.25, uniformity: 0.8, units };
    expectClose(overhead(bed), byUnits, EXACT);
  });
});

describe("overhead water", () => {
  const bed = {
    net_per_plant: 0.17,
    top_diameter: 10,
    capture_factor: 1.25,
    leaching_fraction: 0.15,
    uniformity: 0.8,
    units: "us",
  };

  test("is a depth on the pot top, not on the ground of the plant nor on a radius taken for a diameter", () => {
    expectClose(overhead({ ...bed, top_diameter: 20 }), overhead(bed) / 4, EXACT);
  });

  test("for 0.3 leached beside an evenness of 0.8 is divided by 0.7 alone: 39.27 in3 on 25 pi in2, 0.5 / 1.25 / 0.7", () => {
    const leached = { ...bed, net_per_plant: (12.5 * Math.PI) / 231, leaching_fraction: 0.3 };
    expectClose(overhead(leached), 0.5 / 1.25 / 0.7, EXACT);
  });

  test("needs less the more the canopy gathers", () => {
    expectClose(overhead({ ...bed, capture_factor: 2.5 }), overhead(bed) / 2, EXACT);
    expect(overhead({ ...bed, capture_factor: 0.8 })).toBeGreaterThan(overhead(bed));
  });

  test("has its losses in it once: the answer of GROSS_WATER in place of the net counts them twice", () => {
    const gross = answerOf("GROSS_WATER", { ...bed, net: bed.net_per_plant });
    expectClose(overhead({ ...bed, net_per_plant: gross }), overhead(bed) / 0.8, EXACT);
  });

  test("covers the plant's use and the larger loss, pot by pot", () => {
    property(
      fc.record({
        net_per_plant: size(0.01, 10),
        top_diameter: size(5, 80),
        capture_factor: size(0.5, 4),
        leaching_fraction: size(0, 0.6),
        uniformity: size(0.4, 1),
        units: fc.constant("metric"),
      }),
      (one) => {
        const litres = (overhead(one) / 10) * ((Math.PI * one.top_diameter ** 2) / 4 / 1000) * one.capture_factor;
        expectClose(litres * Math.min(1 - one.leaching_fraction, one.uniformity), one.net_per_plant, EXACT);
      },
    );
  });
});

describe(published("OVERHEAD_RUN_MINUTES"), () => {
  // Public chart of run times for lawns in Texas: 0.20 in of water at 0.50 in/h.
  test("0.20 in at 0.50 in/h is 24 minutes", () => {
    expectClose(answerOf("OVERHEAD_RUN_MINUTES", { depth: 0.2, application_rate: 0.5 }), 24, EXACT);
  });
});

describe(byAnotherRoute("OVERHEAD_RUN_MINUTES"), () => {
  test("12.7 mm at an evenness of 0.8 and 8.642 mm/h: 15.875 mm, 1.837 h, 110.2 min", () => {
    expectClose(answerOf("OVERHEAD_RUN_MINUTES", { depth: 12.7 / 0.8, application_rate: 8.642 }), 110.2, 0, 0.1);
  });

  test("minute by minute: the depth is reached in the minute that the run time ends", () => {
    property(fc.tuple(size(1, 30), size(2, 30)), ([depth, rate]) => {
      const minutes = answerOf("OVERHEAD_RUN_MINUTES", { depth, application_rate: rate });
      let fallen = 0;
      let whole = 0;
      while (fallen + rate / 60 <= depth) {
        fallen += rate / 60;
        whole += 1;
      }
      expect(minutes).toBeGreaterThanOrEqual(whole - 1e-6);
      expect(minutes).toBeLessThanOrEqual(whole + 1 + 1e-6);
    });
  });
});

const dripLine = (line: object): number =>
  answerOf("DRIP_LINE_RUN_MINUTES", {
    volume_per_plant: 0.3,
    emitter_flow: 0.6,
    emitter_spacing: 6,
    top_diameter: 10,
    ...line,
  });

/** Emitters over pots of this diameter, for a line that starts at every place it can. */
function countsAlongTheLine(spacing: number, diameter: number): number[] {
  const places = 600;
  return Array.from({ length: places }, (_, place) => {
    const first = ((place + 0.5) / places) * spacing;
    let count = 0;
    for (let emitter = first; emitter < diameter; emitter += spacing) count += 1;
    return count;
  });
}

describe(byAnotherRoute("DRIP_LINE_RUN_MINUTES"), () => {
  test("0.6 gal/h every 6 in over 10 in pots: one pot in three has 1 emitter, two in three have 2", () => {
    const counts = countsAlongTheLine(6, 10);
    expectClose(counts.filter((count) => count === 1).length / counts.length, 1 / 3, 0.005);
    expectClose(counts.filter((count) => count === 2).length / counts.length, 2 / 3, 0.005);
    // With 1 emitter 0.3 gal take half an hour; on the average of 1.667 18 min, which gives the pot with 1 0.18 gal.
    expectClose(dripLine({}), 30, EXACT);
    expectClose(dripLine({ basis: "average" }), 18, EXACT);
    expectClose((18 / 60) * 0.6, 0.18, EXACT);
  });

  test("the fewest emitters over any pot, counted along the line, are those that the run time rests on", () => {
    property(fc.tuple(fc.integer({ min: 3, max: 60 }), fc.integer({ min: 3, max: 60 })), ([spacing, diameter]) => {
      if (spacing > diameter) return;
      const counts = countsAlongTheLine(spacing, diameter);
      const line = { emitter_spacing: spacing, top_diameter: diameter };
      expectClose(dripLine(line), (60 * 0.3) / (0.6 * Math.min(...counts)), EXACT);
      const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length;
      expectClose(dripLine({ ...line, basis: "average" }), (60 * 0.3) / (0.6 * mean), 0.005);
    });
  });
});

describe("a drip line over pots", () => {
  const fewest = (spacing: number, diameter: number): number =>
    stepsOf("DRIP_LINE_RUN_MINUTES", {
      volume_per_plant: 1,
      emitter_flow: 1,
      emitter_spacing: spacing,
      top_diameter: diameter,
    })("n");

  test("counts 4.0 / 0.5 as 8 and 0.3 / 0.1 as 3, although a computer makes 2.9999999999999996 of it", () => {
    expect(fewest(0.5, 4)).toBe(8);
    expect(0.3 / 0.1).toBeLessThan(3);
    expect(fewest(0.1, 0.3)).toBe(3);
    expect(fewest(0.1, 0.7)).toBe(7);
    expect(fewest(0.1, 0.7 - 1e-6)).toBe(6);
  });

  test("never gives the average more than the fewest: no pot is short on the default", () => {
    property(fc.tuple(size(2, 40), size(2, 80)), ([spacing, diameter]) => {
      if (spacing > diameter) return;
      const line = { emitter_spacing: spacing, top_diameter: diameter };
      expect(dripLine(line)).toBeGreaterThanOrEqual(dripLine({ ...line, basis: "average" }) * (1 - 1e-9));
    });
  });

  test.each(["fewest", "average"])(
    "wider spaced than the pots is refused on the basis %s: some pots get none",
    (basis) => {
      const refused = refusalOf("DRIP_LINE_RUN_MINUTES", {
        volume_per_plant: 0.3,
        emitter_flow: 0.6,
        emitter_spacing: 12,
        top_diameter: 10,
        basis,
      });
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "emitter_spacing" });
      expect(refused.message).toContain("some pots get none");
    },
  );

  test("of emitters put over the pots does not read the spacing, be it blank, 0 or wide", () => {
    for (const emitter_spacing of [null, undefined, "", 0, 6, 36]) {
      expectClose(dripLine({ emitter_spacing, aligned_emitters: 2 }), 15, EXACT);
    }
  });

  test("without them needs the spacing, and says that either will do", () => {
    for (const emitter_spacing of [null, undefined, "", 0]) {
      const { argument, message } = refusalOf("DRIP_LINE_RUN_MINUTES", {
        volume_per_plant: 0.3,
        emitter_flow: 0.6,
        emitter_spacing,
        top_diameter: 10,
      });
      expect(argument).toBe("emitter_spacing");
      expect(message).toContain("is blank or 0; it must be more than 0 (in or cm), or aligned_emitters");
    }
  });
});
