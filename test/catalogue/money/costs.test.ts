import { PMT } from "@formulajs/formulajs";
import { pmt } from "financial";
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { FormulaSheet } from "../../rig/spreadsheetEngines";
import { SEED } from "../../rig/validInputs";

function yearly(investment: number, life_years: number, rate: number, salvage?: number): number {
  return answerOf("ANNUALIZED_COST", { investment, life_years, rate, salvage });
}

describe(published("ANNUALIZED_COST"), () => {
  test("capital recovery factor of 10 % and 5 years: 0.26380 (textbook solution on capital recovery)", () => {
    expectClose(yearly(1, 5, 0.1), 0.2638, 0, 0.000006);
    expectClose(stepsOf("ANNUALIZED_COST", { investment: 1, life_years: 5, rate: 0.1 })("f"), 0.2638, 0, 0.000006);
  });

  test("sinking-fund factor, what a salvage of 1 takes off: 0.16380 at 10 % and 5 years (textbook pages)", () => {
    expectClose(yearly(10, 5, 0.1) - yearly(10, 5, 0.1, 1), 0.1638, 0, 0.000006);
  });

  test("sinking-fund factor: 0.06903 at 8 % and 10 years (textbook pages)", () => {
    expectClose(yearly(10, 10, 0.08) - yearly(10, 10, 0.08, 1), 0.06903, 0, 0.000006);
  });

  test("annual worth of 8,000, salvage 500, 5 years, 8 %, with 5,500 a year to run: 7,418.45 (engineering economy text)", () => {
    expectClose(yearly(8000, 5, 0.08, 500) + 5500, 7418.45, 0, 0.05);
  });

  test("annual worth of 25,000, salvage 2,000, 10 years, 8 %, with 500 a year to run: 4,087.69 (the same)", () => {
    expectClose(yearly(25000, 10, 0.08, 2000) + 500, 4087.69, 0, 0.1);
  });
});

describe("ANNUALIZED_COST: values recalled from print, not read again", () => {
  test.each([
    ["capital recovery factor of 6 % and 20 years (compound-interest tables)", 1, 20, 0.06, 0.08718, 0.000006],
    ["payment of 10,000 over 10 periods at 8 %/12 (help of a spreadsheet's PMT)", 10000, 10, 0.08 / 12, 1037.03, 0.006],
    [
      "payment of 200,000 over 180 periods at 7.5 %/12 (example of a library's pmt)",
      200000,
      180,
      0.075 / 12,
      1854.02,
      0.006,
    ],
  ])("%s", (_title, investment, life, rate, expected, within) => {
    // A life of more than 100 is refused as years; the periods of a loan are halved with the payment's own identity.
    if (life <= 100) return expectClose(yearly(investment, life, rate), expected, 0, within);
    const half = yearly(investment, life / 2, (1 + rate) ** 2 - 1) / (2 + rate);
    expectClose(half, expected, 0, within);
  });
});

describe(against("ANNUALIZED_COST", "financial 0.2.4 and @formulajs/formulajs 4.6.1"), () => {
  const cases = [0.001, 0.03, 0.08, 0.15, 0.5, 1].flatMap((rate) =>
    [1, 3, 4.5, 7.25, 15, 40].map((life) => ({ rate, life })),
  );

  test.each(cases)("payment at $rate over $life years, salvage 700 of 9,000", ({ rate, life }) => {
    expectClose(yearly(9000, life, rate, 700), -pmt(rate, life, 9000, -700), 1e-10);
    expectClose(yearly(9000, life, rate, 700), -(PMT(rate, life, 9000, -700) as number), 1e-10);
  });
});

describe(byAnotherRoute("ANNUALIZED_COST"), () => {
  test("straight line at a rate of 0: 15,000 less 5,000 over 5 years is 2,000", () => {
    expect(yearly(15000, 5, 0, 5000)).toBe(2000);
  });

  test("a rate near 0 comes near to straight line, without a jump", () => {
    expectClose(yearly(12000, 8, 1e-12), 1500, 1e-9);
  });

  test("the payments and the salvage, discounted year by year, bring back the investment", () => {
    const cost = yearly(5000, 6, 0.09, 400);
    let worth = 400 / 1.09 ** 6;
    for (let year = 1; year <= 6; year += 1) worth += cost / 1.09 ** year;
    expectClose(worth, 5000, 1e-12);
  });

  test("a salvage above the investment is refused, one equal to it leaves its interest", () => {
    expect(refusalOf("ANNUALIZED_COST", { investment: 100, life_years: 5, rate: 0.1, salvage: 101 }).message).toBe(
      "ANNUALIZED_COST: salvage is 101; it must be investment (100) or less",
    );
    expect(yearly(100, 5, 0.1, 100)).toBe(10);
  });

  test("dearer with interest, cheaper with a longer life", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 90 }), (rate, life) => {
        expect(yearly(1000, life, (rate + 1) / 100)).toBeGreaterThan(yearly(1000, life, rate / 100));
        expect(yearly(1000, life + 1, rate / 100)).toBeLessThanOrEqual(yearly(1000, life, rate / 100));
      }),
      { seed: SEED },
    );
  });
});

describe(byAnotherRoute("FERTILIZER_COST"), () => {
  test("a season: 500 m3 at 150 mg/L N from 20 % N is 375 kg, at 2.20 a kg 825", () => {
    const given = { volume: 500_000, ppm: 150, analysis: 0.2, price_per_weight: 2.2, units: "metric" };
    expectClose(stepsOf("FERTILIZER_COST", given)("m"), 375, 1e-12);
    expectClose(answerOf("FERTILIZER_COST", given), 825, 1e-12);
  });

  test("1000 gal at 150 ppm from 20 % N by the trade's ounces: 150 / (74.89 x 0.20) oz in 100 gal, x 10 / 16 lb", () => {
    const given = { volume: 1000, ppm: 150, analysis: 0.2, price_per_weight: 1, units: "us" };
    expectClose(answerOf("FERTILIZER_COST", given), ((150 / (74.89 * 0.2)) * 10) / 16, 1e-4);
  });

  test("is the weight of FERTILIZER_WEIGHT at its price", () => {
    const feed = { volume: 1234, ppm: 87, analysis: 0.17, units: "us" };
    const weight = answerOf("FERTILIZER_WEIGHT", feed);
    expectClose(answerOf("FERTILIZER_COST", { ...feed, price_per_weight: 1.35 }), weight * 1.35, 1e-12);
  });

  test("the same feed at the same price costs the same in either system: 1 per lb is 2.2046 per kg", () => {
    const us = answerOf("FERTILIZER_COST", {
      volume: 264.172052,
      ppm: 100,
      analysis: 0.2,
      price_per_weight: 1,
      units: "us",
    });
    const given = { volume: 1000, ppm: 100, analysis: 0.2, price_per_weight: 2.20462262, units: "metric" };
    expectClose(answerOf("FERTILIZER_COST", given), us, 1e-8);
  });

  test("less leaching saves less feed than it seems: from 0.30 to 0.15 saves 17.6 % of the cost, not 15 %", () => {
    const cost = (leaching: number): number =>
      answerOf("FERTILIZER_COST", {
        volume: 1000 / (1 - leaching),
        ppm: 100,
        analysis: 0.2,
        price_per_weight: 2,
        units: "metric",
      });
    expectClose(1 - cost(0.15) / cost(0.3), 0.3 / 1.7, 1e-12);
  });
});

describe(against("FERTILIZER_COST", "HyperFormula 3.5.0, by grams and a price per gram"), () => {
  test.each([
    [500000, 150, 0.2, 2.2],
    [38, 217.5, 0.155, 0.83],
    [1200, 20, 0.46, 5],
  ])("%d L at %d ppm from %d at %d", (volume, ppm, analysis, price) => {
    const sheet = new FormulaSheet();
    const at = sheet.formula(`=(${volume}*${ppm}/1000/${analysis})*(${price}/1000)`);
    const given = { volume, ppm, analysis, price_per_weight: price, units: "metric" };
    expectClose(answerOf("FERTILIZER_COST", given), sheet.inHyperFormula()[at] as number, 1e-12);
  });
});

describe(byAnotherRoute("COST_PER_SALEABLE_PLANT"), () => {
  test("5.80 a plant at 5 % loss is 6.105, where 1 + loss would give 6.090", () => {
    const given = { total_cost: 5.8 * 10000, plants_started: 10000, loss_fraction: 0.05 };
    expectClose(answerOf("COST_PER_SALEABLE_PLANT", given), 6.105, 0, 0.0006);
    expect(answerOf("COST_PER_SALEABLE_PLANT", given)).toBeGreaterThan(6.1);
  });

  test("5.80 a plant at 30 % loss is 8.29, where 1 + loss would give 7.54", () => {
    const given = { total_cost: 5.8 * 10000, plants_started: 10000, loss_fraction: 0.3 };
    expectClose(answerOf("COST_PER_SALEABLE_PLANT", given), 8.29, 0, 0.006);
  });

  test("the good plants pay for all: cost x plants left is the cost of the crop", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 50_000 }), fc.integer({ min: 0, max: 99 }), (plants, percent) => {
        const given = { total_cost: 12_345, plants_started: plants, loss_fraction: percent / 100 };
        const left = plants - (plants * percent) / 100;
        expectClose(answerOf("COST_PER_SALEABLE_PLANT", given) * left, 12_345, 1e-12);
      }),
      { seed: SEED },
    );
  });

  test("a crop that is lost whole has no cost per plant, and a percentage is answered with what to write", () => {
    expect(refusalOf("COST_PER_SALEABLE_PLANT", { total_cost: 1, plants_started: 1, loss_fraction: 1 }).argument).toBe(
      "loss_fraction",
    );
    const typed = { total_cost: 1, plants_started: 1, loss_fraction: 5 };
    expect(refusalOf("COST_PER_SALEABLE_PLANT", typed).message).toContain("write 0.05 or 5%");
  });
});

describe(against("COST_PER_SALEABLE_PLANT", "HyperFormula 3.5.0, total over a count of the plants left"), () => {
  test.each([
    [100, 7],
    [1000, 333],
    [12, 0],
  ])("%d plants of which %d are lost", (plants, lost) => {
    const sheet = new FormulaSheet();
    const left = sheet.put(Array.from({ length: plants }, (_row, index) => [index < lost ? 0 : 1]));
    const at = sheet.formula(`=4321/COUNTIF(${left},1)`);
    const given = { total_cost: 4321, plants_started: plants, loss_fraction: lost / plants };
    expectClose(answerOf("COST_PER_SALEABLE_PLANT", given), sheet.inHyperFormula()[at] as number, 1e-12);
  });
});

describe(byAnotherRoute("WATER_AFTER_SAVINGS"), () => {
  const after = (savings: readonly (readonly unknown[])[], baseline = 1000): number =>
    answerOf("WATER_AFTER_SAVINGS", { baseline, savings });

  test("two savings of 30 % leave 49 %, not 40 %", () => {
    expectClose(after([[0.3], [0.3]]), 490, 1e-12);
  });

  test.each([[null], [undefined], [""], [0]])("a blank cell is no saving: %j", (blank) => {
    expect(after([[0.25], [blank], [0.1]])).toBe(after([[0.25], [0.1]]));
    expect(after([[blank]])).toBe(1000);
  });

  test("the order makes no difference, and neither does the shape of the range", () => {
    expectClose(after([[0.1, 0.2, 0.5]]), after([[0.5], [0.1], [0.2]]), 1e-12);
    expectClose(
      after([
        [0.1, 0.2],
        [0.5, null],
      ]),
      after([[0.5], [0.1], [0.2]]),
      1e-12,
    );
  });

  test("what is left and what each saving took add up to the baseline", () => {
    const savings = [0.35, 0.12, 0.08];
    let left = 1000;
    let saved = 0;
    for (const part of savings) {
      saved += left * part;
      left -= left * part;
    }
    expectClose(after(savings.map((part) => [part])) + saved, 1000, 1e-12);
  });

  test("a saving of all leaves nothing; a percentage is answered with what to write", () => {
    expect(after([[0.2], [1]])).toBe(0);
    expect(refusalOf("WATER_AFTER_SAVINGS", { baseline: 1, savings: [[30]] }).message).toContain("write 0.3 or 30%");
  });
});

describe(against("WATER_AFTER_SAVINGS", "HyperFormula 3.5.0, PRODUCT of the parts left"), () => {
  test.each([[[0.3, 0.2, 0.1]], [[0.05]], [[0.333, 0.25, 0.125, 0.0625]]])("savings %j", (savings) => {
    const sheet = new FormulaSheet();
    const left = sheet.put(savings.map((part) => [1 - part]));
    const at = sheet.formula(`=3200*PRODUCT(${left})`);
    const given = { baseline: 3200, savings: savings.map((part) => [part]) };
    expectClose(answerOf("WATER_AFTER_SAVINGS", given), sheet.inHyperFormula()[at] as number, 1e-12);
  });
});
