/** Flow of zones, zones at once, lines that fill, mats. */
import fc from "fast-check";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";
import { combined, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const EXACT = 1e-12;
const MATHJS = "mathjs 15.2.0, units";

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 300 });

const zoneFlow = (plants: number, emitters: number, flow: number): number =>
  answerOf("ZONE_FLOW", { plants, emitters_per_plant: emitters, emitter_flow: flow });

describe(byAnotherRoute("ZONE_FLOW"), () => {
  test("450 stakes of 12 L/h: one gives 0.2 L in a minute, all of them 90", () => {
    expectClose(zoneFlow(450, 1, 12), 90, EXACT);
  });

  test("a line of 60 m with an emitter of 1.6 L/h every 0.3 m draws 320 L/h", () => {
    expectClose(zoneFlow(60 / 0.3, 1, 1.6) * 60, 320, EXACT);
  });

  test("gives the zone in its run time what its plants were to get", () => {
    const plants = fc.tuple(
      fc.integer({ min: 1, max: 5000 }),
      fc.integer({ min: 1, max: 8 }),
      size(0.1, 80),
      size(0.01, 20),
    );
    property(plants, ([count, emitters, flow, volume]) => {
      const minutes = answerOf("RUN_MINUTES", {
        volume_per_plant: volume,
        emitter_flow: flow,
        emitters_per_plant: emitters,
      });
      expectClose(zoneFlow(count, emitters, flow) * minutes, count * volume, EXACT);
    });
  });
});

describe(against("ZONE_FLOW", MATHJS), () => {
  test.each([
    ["gallon", 2400, 2, 1],
    ["litre", 450, 1, 12],
  ])("emitters x flow in %s a minute", (volume, plants, emitters, flow) => {
    const byUnits = quantity(plants * emitters * flow, `${volume}/hour`).toNumber(`${volume}/minute`);
    expectClose(zoneFlow(plants, emitters, flow), byUnits, EXACT);
  });
});

const atOnce = (supply: number, zone: number): number =>
  answerOf("ZONES_AT_ONCE", { supply_flow: supply, zone_flow: zone });

describe(byAnotherRoute("ZONES_AT_ONCE"), () => {
  test.each([
    [250, 60, 4],
    [120, 45, 2],
    [120, 40, 3],
    [60, 80, 0],
  ])("opened one after the other, %d carries zones of %d: %d of them", (supply, zone, zones) => {
    let open = 0;
    while ((open + 1) * zone <= supply) open += 1;
    expect(open).toBe(zones);
    expect(atOnce(supply, zone)).toBe(open);
  });

  test("nine zones two at a time are five rounds, of 18 minutes each an hour and a half", () => {
    const rounds = Math.ceil(9 / atOnce(120, 45));
    expect(rounds).toBe(5);
    expect(rounds * 18).toBe(90);
  });
});

describe("zones at once", () => {
  test("of 0.3 over 0.1 are 3, and of 4.0 over 0.5 are 8", () => {
    expect(atOnce(0.3, 0.1)).toBe(3);
    expect(atOnce(4, 0.5)).toBe(8);
    expect(atOnce(4 - 1e-6, 0.5)).toBe(7);
  });

  test("fit the supply, and one more would not", () => {
    property(fc.tuple(size(1, 1000), size(1, 300)), ([supply, zone]) => {
      const zones = atOnce(supply, zone);
      expect(zones * zone).toBeLessThanOrEqual(supply * (1 + 1e-9) + 1e-6);
      expect((zones + 1) * zone).toBeGreaterThan(supply);
    });
  });
});

const fill = (length: number, bore: number, flow: number, units: string): number =>
  answerOf("LINE_FILL_MINUTES", { pipe_length: length, inside_diameter: bore, fill_flow: flow, units });

describe(byAnotherRoute("LINE_FILL_MINUTES"), () => {
  test("2-inch schedule 40: 2.067 in inside holds 3.3556 in2 x 12 / 231 = 0.17432 gal a foot; 500 ft at 40 gal/min take 2.179 min", () => {
    const gallonsAFoot = (Math.PI * (2.067 / 2) ** 2 * 12) / 231;
    expectClose(gallonsAFoot, 0.17432, 0, 0.00001);
    expectClose(fill(500, 2.067, 40, "us"), (500 * gallonsAFoot) / 40, EXACT);
    expectClose(fill(500, 2.067, 40, "us"), 2.179, 0, 0.0005);
  });

  test("100 m of 50 mm hold 10,000 cm x 19.635 cm2 = 196.35 L, at 60 L/min 3.27 min", () => {
    expectClose(fill(100, 50, 60, "metric"), (10_000 * Math.PI * 2.5 ** 2) / 1000 / 60, EXACT);
  });

  test("is way over speed: the water of 1 L/s in a 20 mm pipe goes 3.183 m in a second", () => {
    const speed = 0.001 / (Math.PI * 0.01 ** 2);
    expectClose(speed, 3.183, 0, 0.0005);
    expectClose(fill(300, 20, 60, "metric"), 300 / speed / 60, EXACT);
  });
});

describe(against("LINE_FILL_MINUTES", MATHJS), () => {
  test.each([
    ["us", "inch", "foot", "gallon", 500, 2.067, 40],
    ["metric", "mm", "m", "litre", 120, 13.6, 25],
  ])("volume of the pipe over its flow in %s", (units, bore, length, volume, far, wide, flow) => {
    const byUnits = combined(
      [quantity((Math.PI / 4) * wide, bore), quantity(wide, bore), quantity(far, length)],
      [quantity(flow, `${volume}/minute`)],
      "minute",
    );
    expectClose(fill(far, wide, flow, units), byUnits, EXACT);
  });
});

describe("a line that fills", () => {
  test("goes by the inside of the pipe: the nominal 2 in of a 2.067 in bore is 6 % short", () => {
    expectClose(fill(500, 2.067, 40, "us") / fill(500, 2, 40, "us"), 1.068, 0, 0.0005);
  });

  test("takes four times as long at twice the bore and half as long at twice the flow", () => {
    property(fc.tuple(size(1, 2000), size(5, 200), size(1, 500)), ([length, bore, flow]) => {
      const now = fill(length, bore, flow, "metric");
      expectClose(fill(length, 2 * bore, flow, "metric"), 4 * now, EXACT);
      expectClose(fill(length, bore, 2 * flow, "metric"), now / 2, EXACT);
      expectClose(fill(length / 2, bore, flow, "metric"), now / 2, EXACT);
    });
  });
});

const MAT = { mat_area: 30, wet_weight: 4.5, dry_weight: 0.5, sample_area: 1, depleted_fraction: 1, units: "metric" };
const recharge = (mat: object = {}): number => answerOf("MAT_RECHARGE", { ...MAT, ...mat });

describe(byAnotherRoute("MAT_RECHARGE"), () => {
  test("30 m2 that hold 4 L/m2 take 120 L", () => {
    expectClose(recharge(), 30 * 4, EXACT);
  });

  test("a mat of 6 by 40 ft: 2 lb on 4 ft2 are 0.2268 kg a ft2, 27.2 kg on 120 ft2, 7.19 gal", () => {
    const litresAFoot = (2 * 0.45359237) / 4;
    expectClose(litresAFoot, 0.2268, 0, 0.0001);
    const mat = {
      mat_area: 240,
      wet_weight: 2.4,
      dry_weight: 0.4,
      sample_area: 4,
      depleted_fraction: 0.5,
      units: "us",
    };
    expectClose(recharge(mat), (litresAFoot * 120) / 3.785411784, EXACT);
    expectClose(recharge(mat), 7.19, 0, 0.0005);
  });

  test("square by square: the water of 120 squares of a quarter of a square metre is that of the mat", () => {
    let litres = 0;
    for (let square = 0; square < 120; square += 1) litres += (1.3 - 0.3) * 0.6;
    const sampled = { wet_weight: 1.3, dry_weight: 0.3, sample_area: 0.25, depleted_fraction: 0.6 };
    expectClose(recharge(sampled), litres, EXACT);
  });
});

describe(against("MAT_RECHARGE", MATHJS), () => {
  test.each([
    ["us", "lbm", "sqft", "gallon"],
    ["metric", "kg", "m2", "litre"],
  ])("weight over the density of water in %s", (units, weight, area, volume) => {
    const byUnits = combined(
      [quantity((4.5 - 0.5) * 0.4, weight), quantity(30, area)],
      [quantity(2, area), quantity(1, "kg/litre")],
      volume,
    );
    expectClose(recharge({ sample_area: 2, depleted_fraction: 0.4, units }), byUnits, EXACT);
  });
});

describe("a mat", () => {
  test("as heavy dry as wet, or heavier, asks whether the two were swapped", () => {
    for (const wet_weight of [0.5, 0.3]) {
      const refused = refusalOf("MAT_RECHARGE", { ...MAT, wet_weight });
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "wet_weight" });
      expect(refused.message).toContain("swapped");
    }
  });

  test("that is half empty takes half of what a dry one takes", () => {
    expectClose(recharge({ depleted_fraction: 0.5 }), recharge() / 2, EXACT);
  });
});
