/** What must hold for any numbers: round trips, scaling, conservation of salt and water, and which way an answer goes. */
import fc from "fast-check";
import { OXIDE_NAMES } from "../../../src/functions/catalogue/feed/oxides";
import { answerOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { SEED } from "../../rig/validInputs";

const CLOSE = 1e-9;
const RUNS = { seed: SEED, numRuns: 200 };

function between(low: number, high: number): fc.Arbitrary<number> {
  return fc.integer({ min: 0, max: 100_000 }).map((at) => low + ((high - low) * at) / 100_000);
}

const units = fc.constantFrom("us", "metric");
const ppm = between(1, 1000);
const analysis = between(0.01, 1);
const volume = between(0.5, 20_000);
const ratio = between(2, 500);
const ec = between(0.01, 5);

describe("there and back", () => {
  test("PPM_FROM_WEIGHT undoes FERTILIZER_WEIGHT", () => {
    fc.assert(
      fc.property(ppm, analysis, volume, units, (p, a, v, u) => {
        const weight = answerOf("FERTILIZER_WEIGHT", { ppm: p, analysis: a, volume: v, units: u });
        expectClose(answerOf("PPM_FROM_WEIGHT", { weight, analysis: a, volume: v, units: u }), p, CLOSE);
      }),
      RUNS,
    );
  });

  test("PPM_FROM_EC undoes FERTIGATION_EC", () => {
    fc.assert(
      fc.property(between(0, 2), ppm, ec, ppm, (water_ec, p, label_ec, label_ppm) => {
        const label = { water_ec, label_ec, label_ppm };
        const feed_ec = answerOf("FERTIGATION_EC", { ...label, ppm: p });
        fc.pre(feed_ec <= 60);
        // The rise is a difference: where it is small beside the water, digits are lost to it.
        const lost = (1e-15 * feed_ec) / (feed_ec - water_ec);
        expectClose(answerOf("PPM_FROM_EC", { ...label, feed_ec }), p, CLOSE + lost);
      }),
      RUNS,
    );
  });

  test("BLEND_EC undoes BLEND_SHARE", () => {
    fc.assert(
      fc.property(ec, ec, between(0.001, 0.999), (a, b, at) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const target = a + (b - a) * at;
        const share = answerOf("BLEND_SHARE", { value_a: a, value_b: b, target });
        expectClose(answerOf("BLEND_EC", { volumes: [[share, 1 - share]], ecs: [[a, b]] }), target, CLOSE);
      }),
      RUNS,
    );
  });

  test("an injector that was fed by STOCK_WEIGHT and measured by INJECTOR_RATIO gives the ppm asked for", () => {
    fc.assert(
      fc.property(ppm, analysis, ratio, volume, units, (p, a, injector_ratio, stock_volume, u) => {
        const weight = answerOf("STOCK_WEIGHT", { ppm: p, analysis: a, injector_ratio, stock_volume, units: u });
        const treated_volume = stock_volume * injector_ratio;
        const measured = answerOf("INJECTOR_RATIO", { treated_volume, stock_used: stock_volume });
        expectClose(measured, injector_ratio, CLOSE);
        const whole = { weight, analysis: a, volume: stock_volume * measured, units: u };
        expectClose(answerOf("PPM_FROM_WEIGHT", whole), p, CLOSE);
      }),
      RUNS,
    );
  });

  test("CONVERT_EC comes back from every unit as it went", () => {
    const unit = fc.constantFrom("mS/cm", "dS/m", "mmho/cm", "uS/cm", "tds_ppm");
    fc.assert(
      fc.property(ec, unit, unit, between(500, 800), (value, from, to, tds_factor) => {
        const there = answerOf("CONVERT_EC", { value, from, to, tds_factor });
        expectClose(answerOf("CONVERT_EC", { value: there, from: to, to: from, tds_factor }), value, CLOSE);
      }),
      RUNS,
    );
  });

  test("metering before the injector or behind it gives the same ratio", () => {
    fc.assert(
      fc.property(ratio, volume, (r, stock_used) => {
        const treated_volume = r * stock_used;
        const behind = answerOf("INJECTOR_RATIO", { treated_volume, stock_used });
        const before = { treated_volume: treated_volume - stock_used, stock_used, counts_stock: false };
        fc.pre(before.treated_volume >= stock_used);
        expectClose(answerOf("INJECTOR_RATIO", before), behind, CLOSE);
      }),
      RUNS,
    );
  });
});

describe("nothing is lost", () => {
  test("salt of the tank and of the water is the salt of the diluted tank", () => {
    fc.assert(
      fc.property(volume, between(0, 1), between(0.1, 2), between(0.01, 2), (tank_volume, water_ec, up, over) => {
        const ec_target = water_ec + up;
        const ec_now = ec_target + over;
        const water = answerOf("TANK_DILUTION", { tank_volume, ec_now, ec_target, water_ec });
        expectClose(tank_volume * ec_now + water * water_ec, (tank_volume + water) * ec_target, CLOSE);
      }),
      RUNS,
    );
  });

  test("a dose brings the tank up to its EC, its volume set aside", () => {
    fc.assert(
      fc.property(volume, between(0, 2), between(0, 2), ec, ratio, (tank_volume, ec_now, up, feed_ec_rise, r) => {
        fc.pre(ec_now + up > 0);
        const call = { tank_volume, ec_now, ec_target: ec_now + up, feed_ec_rise, injector_ratio: r };
        const dose = answerOf("TANK_DOSE", call);
        expectClose(ec_now + (dose * r * feed_ec_rise) / tank_volume, ec_now + up, CLOSE);
      }),
      RUNS,
    );
  });

  test("rounds of make-up one after the other are the same as together", () => {
    const rounds = fc.integer({ min: 0, max: 60 });
    fc.assert(
      fc.property(between(0, 100), between(10, 200), between(0, 10), rounds, rounds, (start, makeup, uptake, n, m) => {
        const loop = { makeup_ppm: makeup, uptake_ppm: uptake, makeup_volume: 50, tank_volume: 1000 };
        const first = answerOf("ION_BUILDUP", { ...loop, start_ppm: start, rounds: n });
        const second = answerOf("ION_BUILDUP", { ...loop, start_ppm: first, rounds: m });
        expectClose(second, answerOf("ION_BUILDUP", { ...loop, start_ppm: start, rounds: n + m }), CLOSE, 1e-9);
      }),
      RUNS,
    );
  });

  test("a mixture lies between its waters, and does not care for their order", () => {
    const waters = fc.array(fc.tuple(volume, ec), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(waters, (rows) => {
        const call = { volumes: rows.map(([v]) => [v]), ecs: rows.map(([, c]) => [c]) };
        const mixed = answerOf("BLEND_EC", call);
        const ecs = rows.map(([, c]) => c);
        expect(mixed).toBeGreaterThanOrEqual(Math.min(...ecs) * (1 - CLOSE));
        expect(mixed).toBeLessThanOrEqual(Math.max(...ecs) * (1 + CLOSE));
        const turned = { volumes: [...call.volumes].reverse(), ecs: [...call.ecs].reverse() };
        expectClose(answerOf("BLEND_EC", turned), mixed, CLOSE);
      }),
      RUNS,
    );
  });

  test("an element never weighs more than its oxide", () => {
    fc.assert(
      fc.property(between(0.1, 100), fc.constantFrom(...OXIDE_NAMES), (percent, oxide) => {
        const element = answerOf("ELEMENT_FROM_OXIDE", { percent, oxide });
        expect(element).toBeGreaterThan(0);
        expect(element).toBeLessThan(percent);
      }),
      RUNS,
    );
  });

  test("acid takes alkalinity down in steps as it does at once", () => {
    fc.assert(
      fc.property(between(0, 100), between(0, 200), between(0, 200), volume, units, (low, up, more, water, u) => {
        fc.pre(low + up > 0);
        const acid = (alkalinity: number, target_alkalinity: number): number =>
          answerOf("ACID_VOLUME", { alkalinity, target_alkalinity, acid_normality: 12, volume: water, units: u });
        const [middle, top] = [low + up, low + up + more];
        expectClose(acid(top, middle) + acid(middle, low), acid(top, low), CLOSE, 1e-9);
      }),
      RUNS,
    );
  });
});

describe("which way an answer goes", () => {
  const more = between(1.01, 3);

  test("stronger feed, weaker product, more water: more to weigh out, in proportion", () => {
    fc.assert(
      fc.property(ppm, between(0.05, 0.3), volume, more, units, (p, a, v, by, u) => {
        const call = { ppm: p, analysis: a, volume: v, units: u };
        const weight = answerOf("FERTILIZER_WEIGHT", call);
        expectClose(answerOf("FERTILIZER_WEIGHT", { ...call, ppm: p * by }), weight * by, CLOSE);
        expectClose(answerOf("FERTILIZER_WEIGHT", { ...call, analysis: a * by }), weight / by, CLOSE);
        expectClose(answerOf("FERTILIZER_WEIGHT", { ...call, volume: v * by }), weight * by, CLOSE);
      }),
      RUNS,
    );
  });

  test("more sodium raises the ratio in proportion, more calcium lowers it, a thicker water raises it by the root", () => {
    const ion = between(0.1, 50);
    fc.assert(
      fc.property(ion, ion, ion, more, (sodium, calcium, magnesium, by) => {
        const sar = answerOf("SODIUM_ADSORPTION", { sodium, calcium, magnesium });
        expectClose(answerOf("SODIUM_ADSORPTION", { sodium: sodium * by, calcium, magnesium }), sar * by, CLOSE);
        expect(answerOf("SODIUM_ADSORPTION", { sodium, calcium: calcium * by, magnesium })).toBeLessThan(sar);
        const thicker = { sodium: sodium * by, calcium: calcium * by, magnesium: magnesium * by };
        expectClose(answerOf("SODIUM_ADSORPTION", thicker), sar * Math.sqrt(by), CLOSE);
      }),
      RUNS,
    );
  });

  test("a stronger acid takes less, by as much", () => {
    fc.assert(
      fc.property(between(3, 12), more, volume, units, (normality, by, water, u) => {
        const call = { alkalinity: 250, target_alkalinity: 100, volume: water, units: u };
        const acid = answerOf("ACID_VOLUME", { ...call, acid_normality: normality });
        expectClose(answerOf("ACID_VOLUME", { ...call, acid_normality: normality * by }), acid / by, CLOSE);
      }),
      RUNS,
    );
  });

  test("saltier water takes more of itself to thin a tank", () => {
    fc.assert(
      fc.property(between(0, 0.5), between(0.01, 0.5), (water_ec, saltier) => {
        const call = { tank_volume: 400, ec_now: 2, ec_target: 1.5 };
        const water = answerOf("TANK_DILUTION", { ...call, water_ec });
        expect(answerOf("TANK_DILUTION", { ...call, water_ec: water_ec + saltier })).toBeGreaterThan(water);
      }),
      RUNS,
    );
  });
});
