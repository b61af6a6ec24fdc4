/** Salt and feed in what leaches: requirement, salt balance, nutrients lost. */
import { unit } from "mathjs";
import fc from "fast-check";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

const requirement = (ec_water: number, ec_threshold: number): number =>
  answerOf("LEACHING_REQUIREMENT", { ec_water, ec_threshold });
const fromEc = (ec_applied: number, ec_leachate: number): number =>
  answerOf("LEACHING_FROM_EC", { ec_applied, ec_leachate });
const leached = (applied_volume: number, leaching_fraction: number, ppm: number, units = "metric"): number =>
  answerOf("NUTRIENT_LEACHED", { applied_volume, leaching_fraction, ppm, units });
const gross = (net: number, leaching_fraction: number): number =>
  answerOf("GROSS_WATER", { net, leaching_fraction, uniformity: 1, basis: "leaching" });

describe(published("LEACHING_REQUIREMENT"), () => {
  test("turfgrass seminar handout (Woods 2014): water of 2 and soil of 8 dS/m ask for 0.05", () => {
    expectClose(requirement(2, 8), 0.05, 0, 0.0051);
  });

  test("FAO-56 p. 180, Eq. 93 solved for the fraction: 1 dS/m in the water and 1.533 in the soil are 0.15", () => {
    expectClose(requirement(1, 1.5333), 0.15, 0, 0.0001);
  });

  // The example rounds 1.533 to 1.5, and 1.45 to 1.55 stand for fractions of 0.160 to 0.148.
  test("FAO-56 Example 39: a leaching fraction of 0.15 with water of 1 dS/m makes 1.5 dS/m in the soil", () => {
    expectClose(requirement(1, 1.5), 0.15, 0, 0.01);
  });
});

describe(published("GROSS_WATER"), () => {
  test("turfgrass seminar handout (Woods 2014): 5 mm with that leaching requirement are 5.3 mm", () => {
    expectClose(gross(5, requirement(2, 8)), 5.3, 0, 0.051);
  });

  // Recalled, not read again.
  test("FAO-29 (Ayers & Westcot 1985), Example 2: 800 mm at a leaching requirement of 0.15 are 941 mm", () => {
    expectClose(gross(800, 0.15), 941, 0, 1);
  });
});

describe(byAnotherRoute("LEACHING_REQUIREMENT"), () => {
  test("put into FAO-56 Eq. 93, ECe = ECw (1 + LF) / (5 LF), it gives the threshold back", () => {
    const ec = fc.double({ min: 0.05, max: 20, noNaN: true });
    fc.assert(
      fc.property(ec, ec, (water, threshold) => {
        fc.pre(water < 2.4 * threshold);
        const fraction = requirement(water, threshold);
        expectClose((water * (1 + fraction)) / (5 * fraction), threshold, 1e-9);
      }),
      { seed: SEED },
    );
  });

  test("water of 1.2 and a threshold of 2.5 dS/m: 1.2 parts of 11.3", () => {
    expectClose(requirement(1.2, 2.5), 12 / 113, 1e-12);
  });
});

describe("the leaching requirement", () => {
  test.each([
    [2.5, 1],
    [3, 1],
    [5, 1],
    [6, 1],
  ])("of water of %d dS/m and a threshold of %d has no answer: never negative, never 1 or more", (water, threshold) => {
    const none = refusalOf("LEACHING_REQUIREMENT", { ec_water: water, ec_threshold: threshold });
    expect(none).toMatchObject({ code: "#N/A", argument: "ec_water" });
    expect(none.message).toContain("no leaching fraction below 1 would do");
  });

  test("just below 2.5 times the threshold is just below 1", () => {
    expect(requirement(2.499, 1)).toBeGreaterThan(0.99);
    expect(requirement(2.499, 1)).toBeLessThan(1);
  });

  test("rises with the water's salt and falls with what the crop stands", () => {
    expect(requirement(1.2, 2.5)).toBeGreaterThan(requirement(1, 2.5));
    expect(requirement(1, 3)).toBeLessThan(requirement(1, 2.5));
  });

  test("is another number than the salt balance of a container: 0.0417 against 0.2 at 0.9 and 4.5", () => {
    expectClose(requirement(0.9, 4.5), 0.9 / 21.6, 1e-12);
    expectClose(fromEc(0.9, 4.5), 0.2, 1e-12);
  });

  test("takes EC in uS/cm for the slip it is", () => {
    const refused = refusalOf("LEACHING_REQUIREMENT", { ec_water: 1200, ec_threshold: 2.5 });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "ec_water" });
    expect(refused.message).toContain("in uS/cm? Divide by 1000");
  });

  test.each(["ec_water", "ec_threshold"])("never takes a blank %s for pure water", (argument) => {
    for (const blank of [0, null, undefined, ""]) {
      const refused = refusalOf("LEACHING_REQUIREMENT", { ec_water: 1, ec_threshold: 2.5, [argument]: blank });
      expect(refused.message).toContain(`${argument} is blank or 0; `);
    }
  });
});

describe(published("LEACHING_FROM_EC"), () => {
  // USDA Agriculture Handbook 60 (1954), recalled, not read again; whole percent printed.
  test.each([
    [1, 0.13],
    [2, 0.25],
    [3, 0.38],
  ])("USDA Agriculture Handbook 60: water of %d where drainage may have 8 mmho/cm asks for %d", (water, printed) => {
    expectClose(fromEc(water, 8), printed, 0, 0.0051);
  });

  test("practice question of irrigation engineering: 1.5 over a leachate of 2 x 10 mmho/cm is 7.5 %", () => {
    expectClose(fromEc(1.5, 20), 0.075, 1e-12);
  });
});

describe(byAnotherRoute("LEACHING_FROM_EC"), () => {
  test("as much salt out as in: 100 L of 0.9 leave with 20 L of 4.5 mS/cm", () => {
    expectClose(fromEc(0.9, 4.5), 20 / 100, 1e-12);
    expectClose(100 * 0.9, 20 * 4.5, 1e-12);
  });

  test("run at 0.15, water of 0.9 mS/cm leaches at 6.0, and that leads back to 0.15", () => {
    expectClose(fromEc(0.9, 0.9 / 0.15), 0.15, 1e-12);
    expectClose(fromEc(0.9, 6), 0.15, 1e-12);
  });

  test("with twice the extract at which yield ends it is the rule for daily drip: 1.1 over 2 x 10 is 0.055", () => {
    expectClose(fromEc(1.1, 2 * 10), 0.055, 1e-12);
  });

  test("a pot watered for a year at a leaching fraction settles at the EC that gives the fraction back", () => {
    // 1 L of 0.9 mS/cm a day into 3 L of solution, well mixed; 0.25 L of that leaches and 0.75 L of water evaporates.
    let salt = 0;
    let leachate = 0;
    for (let day = 0; day < 365; day += 1) {
      salt += 0.9;
      leachate = salt / 3;
      salt -= 0.25 * leachate;
    }
    expectClose(fromEc(0.9, leachate), 0.25, 1e-9);
  });
});

describe("the leaching fraction from EC", () => {
  test("above 1 asks whether the two were swapped", () => {
    const swapped = refusalOf("LEACHING_FROM_EC", { ec_applied: 4.5, ec_leachate: 0.9 });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "ec_applied" });
    expect(swapped.message).toBe(
      "LEACHING_FROM_EC: ec_applied is 4.5; it must be ec_leachate (0.9) or less; were the two swapped?",
    );
  });

  test("takes uS/cm beside mS/cm for the slip it is", () => {
    const refused = refusalOf("LEACHING_FROM_EC", { ec_applied: 0.9, ec_leachate: 4500 });
    expect(refused.message).toContain("in uS/cm? Divide by 1000");
  });

  test("is that of RUN_MINUTES_FROM_LEACHING: minutes to come down from it to a target", () => {
    const minutes = answerOf("RUN_MINUTES_FROM_LEACHING", {
      minutes_now: 17,
      measured: fromEc(0.9, 4.5),
      target: 0.15,
    });
    expectClose(minutes, (17 * 0.8) / 0.85, 1e-12);
  });
});

describe(published("NUTRIENT_LEACHED"), () => {
  // Worked there with 8.34 lb to the gallon, which is 8.3454 at 1 kg/L: 0.065 % apart. Half of 1.9 million gal leaches.
  test("wastewater operators' handbook: 2580 mg/L in 0.95 million gal are 20,441.3 lb", () => {
    expectClose(leached(1_900_000, 0.5, 2580, "us"), 20_441.3, 0.0007);
  });
});

describe(byAnotherRoute("NUTRIENT_LEACHED"), () => {
  test("500 m3 at 0.30 and 150 mg/L: 150 m3 of 150 g each are 22.5 kg", () => {
    expectClose(leached(500_000, 0.3, 150), 150 * 0.15, 1e-12);
  });

  test("100,000 gal at 0.20 and 100 ppm: 75,708 L of 0.1 g are 7,570.8 g or 16.69 lb", () => {
    expectClose(leached(100_000, 0.2, 100, "us"), (20_000 * 3.785411784 * 0.1) / 453.59237, 1e-12);
  });

  test("from 0.30 to 0.15 at the same 350 m3 kept saves 13.235 kg of nitrogen at 150 mg/L", () => {
    const applied = (fraction: number): number => gross(350_000, fraction);
    const before = leached(applied(0.3), 0.3, 150);
    const after = leached(applied(0.15), 0.15, 150);
    expectClose(before - after, 13.235, 0, 0.002);
  });
});

describe(against("NUTRIENT_LEACHED", "mathjs 15.2.0"), () => {
  test.each([
    [1200, 0.12, 200],
    [396_000, 0.15, 100],
    [54, 0.4, 75],
  ])("%d gal at %d and %d ppm, gallons and grams converted by its units", (gallons, fraction, ppm) => {
    const litres = unit(gallons * fraction, "gallon").toNumber("liter");
    const pounds = unit(litres * ppm, "mg").toNumber("lbm");
    expectClose(leached(gallons, fraction, ppm, "us"), pounds, 1e-12);
  });
});

describe("nutrients leached", () => {
  test("are nothing where nothing leaches, and stay below all of the feed", () => {
    expect(leached(1000, 0, 150)).toBe(0);
    expect(leached(1000, 0.999, 150)).toBeLessThan((1000 * 150) / 1e6);
  });

  test("and what stays in the pots make up the feed, which PPM_FROM_WEIGHT finds again", () => {
    const volume = fc.double({ min: 1, max: 1e7, noNaN: true });
    const fraction = fc.double({ min: 0.001, max: 0.999, noNaN: true });
    const strength = fc.double({ min: 1, max: 500, noNaN: true });
    fc.assert(
      fc.property(volume, fraction, strength, fc.constantFrom("us", "metric"), (given, part, ppm, units) => {
        const weight = leached(given, part, ppm, units) + leached(given, 1 - part, ppm, units);
        expectClose(answerOf("PPM_FROM_WEIGHT", { weight, analysis: 1, volume: given, units }), ppm, 1e-9);
      }),
      { seed: SEED },
    );
  });
});
