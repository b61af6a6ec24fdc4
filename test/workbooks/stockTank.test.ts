/**
 * The stock tank, worked by hand on paper first (all inputs invented).
 *
 * 150 ppm N is 150 mg of N in a litre of feed; 20 % N: 750 mg of the product; the stock is 100 times as strong: 75 g/L.
 *   US: 50 gal x 3.785411784 = 189.2706 L; x 75 g = 14,195.29 g; / 453.59237 = 31.29526 lb: 31 lb and 4.724 oz
 *       strength 31.29526 / 50 = 0.625905 lb/gal; x 1.35 = 42.2486; feed 5,000 gal
 *   Metric: 200 L x 75 g = 15 kg; 0.075 kg/L; x 3.00 = 45.00; feed 20,000 L
 * EC: 0.35 + 150 x 0.65 / 100 = 0.35 + 0.975 = 1.325
 * Injector: US 60 / 0.61 = 98.3607, ppm 150 x 100 / 98.3607 = 152.5, EC 0.35 + 152.5 x 0.0065 = 1.34125
 *   metric 250 / 2.54 = 98.4252, ppm 152.4, EC 0.35 + 152.4 x 0.0065 = 1.3406
 *   by the meter (1.34 - 0.35) x 100 / 0.65 = 152.3077 ppm
 *   weight for the measured ratio: 31.29526 x 0.983607 = 30.78224 lb; 15 x 0.984252 = 14.76378 kg
 * Blend: US (260 x 1.35 + 140 x 0.35) / 400 = (351 + 49) / 400 = 1; metric (975 x 1.35 + 525 x 0.35) / 1500 = 1500 / 1500 = 1
 * Tank: 1.00 to 1.325 with a stock that counts as 0.975 x 100 = 97.5: 400 x 0.325 / 97.5 = 1.3333 gal; 1500 x 0.325 / 97.5 = 5 L
 *   1.70 to 1.325 with water of 0.35: 400 x 0.375 / 0.975 = 153.846 gal; 1500 x 0.375 / 0.975 = 576.923 L
 *   1.24: 400 x 0.085 / 97.5 = 0.348718 gal; 1.40: 400 x 0.075 / 0.975 = 30.7692; 1.46: 400 x 0.135 / 0.975 = 55.3846
 *   metric: 1.307692; 115.3846; 207.6923
 */
import { stockTank } from "../../src/workbooks/starters/stockTank";
import { openStarter, type StarterReader } from "../rig/starterReader";

const BY_HAND = {
  us: {
    weight: 31.29526,
    strength: 0.625905,
    feed: 5000,
    cost: 42.2486,
    ratio: 98.3607,
    given: 152.5,
    hose: 1.34125,
    measured: 30.78224,
    doses: [0.348718, 1.333333],
    dilutions: [30.7692, 55.3846, 153.8462],
  },
  metric: {
    weight: 15,
    strength: 0.075,
    feed: 20_000,
    cost: 45,
    ratio: 98.4252,
    given: 152.4,
    hose: 1.3406,
    measured: 14.76378,
    doses: [1.307692, 5],
    dilutions: [115.3846, 207.6923, 576.9231],
  },
} as const;

describe.each(["us", "metric"] as const)("the %s edition agrees with the mix worked on paper", (edition) => {
  const byHand = BY_HAND[edition];
  let book: StarterReader;
  beforeAll(() => {
    book = openStarter(stockTank, edition);
  });

  test.each([
    ["Weigh into the stock tank", byHand.weight],
    ["The weight by another way", byHand.weight],
    ["Strength of the stock", byHand.strength],
    ["Feed that this stock makes", byHand.feed],
    ["EC that the hose should show", 1.325],
    ["of which the feed adds", 0.975],
    ["Fertiliser in it", byHand.cost],
    ["The same by the scale", byHand.cost],
    ["Injector ratio, measured", byHand.ratio],
    ["Nitrogen that it then gives", byHand.given],
    ["EC that the hose should show then", byHand.hose],
    ["Nitrogen by the meter", 152.3077],
    ["Weigh for the measured ratio", byHand.measured],
    ["EC of the waters put together", 1],
  ])("%s: %d", (label, value) => {
    expect(Math.abs((book.line("Work", label) as number) / value - 1)).toBeLessThan(1e-6);
  });

  test("a reading inside the band is left alone, one below is dosed, one above is diluted", () => {
    const actions = ["leave", "leave", "dose", "leave", "dilute", "dilute", "leave", "dilute", "leave", "dose"];
    expect(book.column("Log", "what to do")).toEqual([...actions, "", "", "", ""]);
    const numbers = (heading: string) =>
      book.column("Log", heading).filter((value): value is number => typeof value === "number");
    numbers("stock to add").forEach((dose, index) => expect(dose).toBeCloseTo(byHand.doses[index]!, 5));
    numbers("water to add").forEach((water, index) => expect(water).toBeCloseTo(byHand.dilutions[index]!, 3));
    expect([numbers("stock to add").length, numbers("water to add").length]).toEqual([2, 3]);
  });

  test("a tank that is dosed or diluted as it says has its EC", () => {
    const tank = edition === "us" ? 400 : 1500;
    const dose = book.column("Log", "stock to add")[9] as number;
    // Salt before and after, the stock counting as 97.5 mS/cm above water and its volume neglected.
    expect((tank * 1 + dose * 97.5) / tank).toBeCloseTo(1.325, 9);
    const water = book.column("Log", "water to add")[7] as number;
    expect((tank * 1.7 + water * 0.35) / (tank + water)).toBeCloseTo(1.325, 9);
  });

  test("all checks are well", () => expect(book.overall()).toBe("All checks OK"));
});

test("the card for the wall says pounds and ounces", () => {
  const book = openStarter(stockTank, "us");
  expect(book.line("Result", "that is, whole pounds")).toBe(31);
  expect(book.line("Result", "and ounces")).toBeCloseTo(4.724, 3);
});

describe("a check looks when its cause is put in", () => {
  test.each([
    ["The stock dissolves", "Nitrogen wanted in the feed", 1000],
    ["The injector draws within 5 % of its setting", "Stock drawn meanwhile", 0.5],
    ["The hose shows what it should, within 10 %", "EC of the feed at the hose", 1.7],
    ["The feed is stronger than the water", "EC of the feed at the hose", 0.3],
    ["The feed is below 3 mS/cm", "EC of the feed at the hose", 3.2],
    ["The tank is set to the EC of this feed", "EC that it shall have", 1.8],
  ])("%s", (check, label, content) => {
    const book = openStarter(stockTank, "us");
    expect(book.check(check)).toBe("OK");
    book.setLine("Inputs", label, content);
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test.each([
    ["No calcium with sulphate or phosphate in stock tank A", 3, "A"],
    ["No calcium with sulphate or phosphate in stock tank B", 0, "B"],
  ])("%s", (check, row, tank) => {
    const book = openStarter(stockTank, "us");
    book.setInColumn("Inputs", "tank", row, tank);
    expect(book.check(check)).toBe("LOOK");
  });

  test("a reading in uS/cm is found", () => {
    const book = openStarter(stockTank, "us");
    book.setInColumn("Log", "EC in the tank", 0, 1325);
    expect(book.check("Every reading of the log is an EC in mS/cm")).toBe("LOOK");
  });
});
