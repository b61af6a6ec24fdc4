/**
 * The comparison, worked by hand on paper first (all inputs invented).
 *
 * US: 12,000 #7, 200 days, mean day / hottest day 0.60
 *   water: overhead 2.19 x 12,000 x 200 x 0.60 = 3,153,600 gal; stakes 0.71: 1,022,400; x 0.90 x 0.95 = 874,152 gal
 *   bills of overhead, 3,153.6 units: April, October (15 %, 473.04) end in the second block:
 *     2 x (45 + 180) + (473.04 - 200) x 2.40 = 1,105.296; the other five (85 %, 2,680.56) in the third:
 *     5 x (45 + 180 + 480) + (2,680.56 - 1,500) x 3.10 = 7,184.736; together 8,290.032
 *   bills of stakes, 874.152 units: April, October (131.1228) in the first: 2 x 45 + 131.1228 x 1.80 = 326.021;
 *     the other five (743.0292) in the second: 5 x 225 + 243.0292 x 2.40 = 1,708.270; together 2,034.2911
 *   pumping: 3.785411784 kg x 9.80665 x 0.3048 m / 3,600,000 = 3.143021E-6 kWh for a gallon-foot
 *     3,153,600 x 150 x 3.143021E-6 / 0.55 = 2,703.22 kWh x 0.14 = 378.4508; 874,152 x 90: 449.586 kWh, 62.9421
 *   feed: 8.345404E-6 lb for a gallon at 1 ppm; 946,080 gal x 100 ppm = 789.542 lb N / 0.20 x 1.35 = 5,329.4087
 *     262,245.6 gal x 120 ppm = 262.6255 lb N, 1,772.7219
 *     leached 789.542 x 0.37 x 0.25 = 73.0326, beside 789.542 x 0.63 = 497.4115; stakes 262.6255 x 0.15 = 39.3938, 0
 *   labour: 200 / 7 weeks; 15.5 h x 28.57143 x 22 = 9,742.8571; (11 h x 28.57143 + 40 h) x 22 = 7,794.2857
 *   lost: 12,000 x 0.05 x 9 = 5,400; x 0.035: 3,780. Upkeep 650, 620. Replacement 12,000 x 1.15 / 5 = 2,760
 *   together 29,790.7487 - 18,824.2408 = 10,966.5078 saved a year
 *   investment 13,800 + 12,000 x 1.65 + 8,000 = 41,600; 41,600 / 10,966.5078 = 3.79337 years
 *   with 8 %: -ln(1 - 0.08 x 3.793368) / ln 1.08 = 4.69905 years; 1 a year for 10 years is worth 6.7100814:
 *     73,586.16 - 41,600 = 31,986.16
 *   own well: 10,966.508 - 6,255.741 + 201.840 - 55.949 (80 ft more) = 4,856.659; 8.56556 years, with 8 % 15.02007; -9,011.42
 *   no loss gain: - 1,620 = 9,346.508; smaller savings: x 0.75 = 8,224.881
 *   short life: - 13,800 x (1/3 - 1/5) = - 1,840: 9,126.508
 *   system a year: 13,800 x 0.25045645 (5 years) + 27,800 x 0.14902949 (10 years) = 3,456.299 + 4,143.020 = 7,599.319
 *   a plant sold: (12,000 x 11 + 8,290.03 + 378.45 + 5,329.41 + 9,742.86 + 650) / 11,400 = 156,390.75 / 11,400 = 13.71849
 *     (132,000 + 2,034.29 + 62.94 + 1,772.72 + 7,794.29 + 620 + 7,599.32) / 11,580 = 151,883.56 / 11,580 = 13.11602
 *   mat: 29,790.749 - 35,796.742 = -6,005.993: never. Bench: 411,400 / 14,875.904 = 27.65546; 8 % of 411,400 is 32,912: never
 *
 * Metric: 10,000 pots of 26 L, 180 days
 *   water: 8.1 x 10,000 x 180 x 0.60 = 8,748,000 L; stakes 2.7: 2,916,000 x 0.855 = 2,493,180 L
 *   bills of overhead, 8,748 m3: 12 % (1,049.76) and 16 % (1,399.68) in the second block: 2 x (60 + 300) + 1,449.44 x 0.80 = 1,879.552;
 *     72 % (6,298.56) in the third: 2 x (60 + 300 + 800) + 3,298.56 x 1 = 5,618.56; together 7,498.112
 *   bills of stakes, 2,493.18 m3: 28 % (698.0904) in the first: 120 + 418.8542 = 538.8542;
 *     72 % (1,795.0896) in the second: 720 + 795.0896 x 0.80 = 1,356.0717; together 1,894.9259
 *   pumping: 9.80665 / 3,600,000 kWh for a litre-metre; x 45 x 8,748,000 / 0.55 = 1,949.740 kWh x 0.20 = 389.9481; 28 m: 69.1508
 *   feed: 2,624,400 L x 100 mg = 262.44 kg N / 0.20 x 2.90 = 3,805.38; 747,954 L x 120 mg = 89.75448 kg, 1,301.44
 *     leached 262.44 x 0.38 x 0.25 = 24.9318, beside x 0.62 = 162.7128; stakes 13.4632, 0
 *   labour: 13.5 h x 180 / 7 x 24 = 8,331.4286; (10 h x 25.714286 + 35 h) x 24 = 7,011.4286
 *   lost: 10,000 x 0.05 x 8.50 = 4,250; 2,975. Upkeep 600, 580. Replacement 11,000 / 5 = 2,200
 *   together 24,874.8686 - 16,031.9452 = 8,842.9234; investment 11,000 + 16,000 + 7,500 = 34,500: 3.90142 years
 *   with 7 %: 4.71434 years; 7.0235815 x 8,842.9234 - 34,500 = 27,608.99
 *   own well: - 5,603.186 + 216.638 - 61.742 = 3,394.633; no loss gain 7,567.923; smaller 6,632.193; short life - 1,466.667 = 7,376.257
 *   system a year: 11,000 x 0.24389069 + 23,500 x 0.14237750 = 6,028.669
 *   a plant sold: 125,624.87 / 9,500 = 13.22367; 121,885.61 / 9,650 = 12.63063
 */
import { systemComparison } from "../../src/workbooks/starters/systemComparison";
import { openStarter, type StarterReader } from "../rig/starterReader";

const NEVER = "never";

const BY_HAND = {
  us: {
    water: [3_153_600, 874_152, 1_662_120, 1_296_000, 907_200, 2_779_200],
    bills: [8290.032, 2034.2911, 3929.4816, 3010.968, 2110.632, 7168.704],
    overhead: [8290.032, 378.4508, 5329.4087, 9742.8571, 5400, 650, 0, 29_790.7487],
    stakes: [2034.2911, 62.9421, 1772.7219, 7794.2857, 3780, 620, 2760, 18_824.2408],
    together: [29_790.7487, 18_824.2408, 24_396.1815, 35_796.742, 14_914.8444, 23_580.7854],
    nitrogen: [73.0326, 497.4115, 39.3938, 0],
    investment: [0, 41_600, 24_300, 90_000, 411_400, 70_600],
    yearly: [0, 7599.3189, 4412.5469, 22_447.0061, 61_520.6079, 10_704.0504],
    sold: [13.71849, 13.11602, 13.51929, 15.30831, 17.62721, 14.05452],
    saved: [10_966.5078, 4856.6589, 9346.5078, 8224.8809, 9126.5078],
    simple: [3.79337, 8.56556, 4.45086, 5.05782, 4.55815],
    interest: [4.69905, 15.02007, 5.7193, 6.73802, 5.89366],
    value: [31_986.16, -9011.42, 21_115.83, 13_589.62, 19_639.61],
    others: {
      mat: [NEVER, NEVER, -130_300.7],
      bench: [27.65546, NEVER, -311_581.47],
      boom: [11.36883, 31.21675, -28_930.64],
    },
    discounted: [
      -41_600, -31_445.83, -22_043.81, -13_338.25, -5277.54, 2186.09, 9096.85, 15_495.7, 21_420.56, 26_906.55,
      31_986.16,
    ],
    sensitivity: [
      ["life", 18_515.12, 43_099.43, 4.69905, 4.69905],
      ["water", 21_492.03, 42_480.29, 5.67653, 4.01102],
      ["investment", 42_386.16, 21_586.16, 3.35566, 6.19751],
      ["feed bought", 26_019.75, 37_952.57, 5.20841, 4.28125],
      ["replacement", 36_616.12, 27_356.2, 4.36819, 5.08483],
      ["labour", 28_717.39, 35_254.93, 4.96491, 4.46047],
      ["plants lost", 29_268.58, 34_703.74, 4.91797, 4.49897],
      ["pumping", 31_456.89, 32_515.43, 4.74013, 4.65868],
      ["upkeep", 31_935.83, 32_036.49, 4.70292, 4.69518],
    ],
  },
  metric: {
    water: [8_748_000, 2_493_180, 4_432_320, 3_564_000, 2_592_000, 7_776_000],
    bills: [7498.112, 1894.9259, 3424.1101, 2705.664, 1968.448, 6580.544],
    overhead: [7498.112, 389.9481, 3805.38, 8331.4286, 4250, 600, 0, 24_874.8686],
    stakes: [1894.9259, 69.1508, 1301.44, 7011.4286, 2975, 580, 2200, 16_031.9452],
    together: [24_874.8686, 16_031.9452, 20_462.6467, 29_615.1974, 13_086.8345, 19_785.4004],
    nitrogen: [24.9318, 162.7128, 13.4632, 0],
    investment: [0, 34_500, 20_000, 71_500, 331_000, 57_000],
    yearly: [0, 6028.669, 3456.6292, 17_340.2163, 47_302.5852, 8267.7874],
    sold: [13.22367, 12.63063, 13.02056, 14.69081, 16.78275, 13.50033],
    saved: [8842.9234, 3394.6334, 7567.9234, 6632.1925, 7376.2567],
    simple: [3.90142, 10.1631, 4.55871, 5.2019, 4.67717],
    interest: [4.71434, 18.36828, 5.68079, 6.69191, 5.86188],
    value: [27_608.99, -10_657.52, 18_653.93, 12_081.75, 17_307.74],
    others: {
      mat: [NEVER, NEVER, -104_794.09],
      bench: [28.07932, NEVER, -248_205.78],
      boom: [11.1996, 22.6482, -21_253.7],
    },
    discounted: [
      -34_500, -26_235.59, -18_511.83, -11_293.37, -4547.15, 1757.73, 7650.15, 13_157.07, 18_303.74, 23_113.7,
      27_608.99,
    ],
    sensitivity: [
      ["life", 15_773.93, 37_602.35, 4.71434, 4.71434],
      ["water", 17_770.38, 37_447.6, 5.79834, 3.97386],
      ["investment", 36_233.99, 18_983.99, 3.38749, 6.17217],
      ["feed bought", 23_212.34, 32_005.65, 5.14355, 4.35172],
      ["replacement", 31_471.96, 23_746.02, 4.39272, 5.08729],
      ["labour", 25_291.21, 29_926.78, 4.93118, 4.51591],
      ["plants lost", 25_370.23, 29_847.76, 4.92346, 4.5224],
      ["pumping", 27_045.71, 28_172.28, 4.76525, 4.66452],
      ["upkeep", 27_573.88, 27_644.11, 4.71748, 4.7112],
    ],
  },
} as const;

const LINES = ["water", "pumping", "feed bought", "labour", "plants lost", "upkeep", "replacement", "together"];
const CASES = ["as planned", "own well", "no loss gain", "smaller savings", "short life"];
const STAKES = 1;
const ROW_OF = { mat: 3, bench: 4, boom: 5 } as const;

/** Half a unit of the last place that is written on paper, or words. */
function expectByHand(found: unknown, written: number | string, places: number): void {
  if (typeof written === "string") expect(found).toBe(written);
  else expect(Math.abs((found as number) - written)).toBeLessThanOrEqual(0.51 * 10 ** -places);
}

function expectAll(found: readonly unknown[], written: readonly (number | string)[], places: number): void {
  expect(found).toHaveLength(written.length);
  written.forEach((each, at) => expectByHand(found[at], each, places));
}

/** The columns of the lines or cases in one table on Work, of one system; tables in their order. */
const across = (book: StarterReader, headings: readonly string[], system: number, table: number) =>
  headings.map((heading) => book.column("Work", heading, table)[system]);

describe.each(["us", "metric"] as const)("the %s edition agrees with the comparison worked on paper", (edition) => {
  const byHand = BY_HAND[edition];
  let book: StarterReader;
  beforeAll(() => {
    book = openStarter(systemComparison, edition);
  });

  test("water of the season after savings that act one after the other, and its bills", () => {
    expectAll(book.column("Work", "after savings"), byHand.water, 4);
    expectAll(book.column("Work", "season"), byHand.bills, 4);
  });

  test("the cost of a year of the baseline and of stakes, line by line, and of all six together", () => {
    expectAll(across(book, LINES, 0, 0), byHand.overhead, 4);
    expectAll(across(book, LINES, STAKES, 0), byHand.stakes, 4);
    expectAll(book.column("Work", "together"), byHand.together, 4);
  });

  test("nitrogen that leaches and that falls beside the pots", () => {
    const [leached, beside] = [book.column("Work", "leached"), book.column("Work", "beside the pots")];
    expectAll([leached[0], beside[0], leached[STAKES], beside[STAKES]], byHand.nitrogen, 4);
  });

  test("investment, the system as a cost a year, and the cost of a plant that is sold", () => {
    expectAll(book.column("Work", "investment"), byHand.investment, 4);
    expectAll(book.column("Work", "system a year"), byHand.yearly, 4);
    expectAll(book.column("Work", "a plant sold"), byHand.sold, 5);
  });

  test.each([
    ["saved a year", 0, byHand.saved, 4],
    ["payback, simple", 1, byHand.simple, 5],
    ["payback with interest", 2, byHand.interest, 5],
    ["net present value", 3, byHand.value, 2],
  ] as const)("stakes in the five cases: %s", (_what, table, written, places) => {
    expectAll(across(book, CASES, STAKES, table), written, places);
  });

  test.each(["mat", "bench", "boom"] as const)(
    "%s: paybacks and value as planned, in words where it never comes",
    (system) => {
      const [simple, interest, value] = [1, 2, 3].map(
        (table) => book.column("Work", "as planned", table)[ROW_OF[system]],
      );
      const [simpleByHand, interestByHand, valueByHand] = byHand.others[system];
      expectByHand(simple, simpleByHand, 5);
      expectByHand(interest, interestByHand, 5);
      expectByHand(value, valueByHand, 2);
    },
  );

  test("the discounted sum of each year, and the sensitivity sorted by width", () => {
    const years = book.block("Result", "Paid back year by year");
    expectAll(
      years.slice(1, 12).map((row) => row[3]),
      byHand.discounted,
      2,
    );
    expect(
      years
        .slice(12)
        .flat()
        .every((cell) => (cell ?? "") === ""),
    ).toBe(true);
    const rows = book.block("Result", "Which number matters most").slice(2);
    expect(rows.map(([name]) => name)).toEqual(byHand.sensitivity.map(([name]) => name));
    byHand.sensitivity.forEach(([, ...numbers], row) =>
      numbers.forEach((number, at) => expectByHand(rows[row]?.[at + 1], number, at < 2 ? 2 : 5)),
    );
  });

  test("Result prints the baseline beside the three chosen, and says for which pots they are", () => {
    const { headless } = book;
    expect(["C9", "D9", "E9", "F9"].map((at) => headless.value(`Result!${at}`))).toEqual([
      "overhead",
      "spray stakes",
      "drip line over pots",
      "boom",
    ]);
    expect(["C10", "D10", "E10", "F10"].map((at) => headless.value(`Result!${at}`))).toEqual([
      "suits",
      "suits",
      "for smaller pots",
      "for smaller pots",
    ]);
    expect(headless.value("Result!A5")).toBe("As planned, spray stakes: paid back after 4.7 years, with interest.");
    expect(headless.value("Result!A6")).toBe("In 1 of 5 cases it does not pay within the 10 years of the plan.");
    expect(book.overall()).toBe("All checks OK");
  });
});

describe("money is conserved", () => {
  test.each(["us", "metric"] as const)(
    "%s: savings are the baseline's cost less the system's, for each line and system",
    (edition) => {
      const book = openStarter(systemComparison, edition);
      for (const line of LINES) {
        const cost = book.column("Work", line, 0) as number[];
        const saving = book.column("Work", line, 1) as number[];
        cost.forEach((each, system) => expect(saving[system]).toBeCloseTo(cost[0]! - each, 9));
      }
    },
  );

  test("a bill stays the same when the tariff is one price: volume x price + the fixed charges", () => {
    const book = openStarter(systemComparison, "us");
    [1.8, 2.4, 3.1].forEach((_price, row) => book.setInColumn("Inputs", "price", row, 2));
    expect(book.column("Work", "season")[0]).toBeCloseTo(3153.6 * 2 + 7 * 45, 6);
  });
});

describe("other numbers lead to other answers, in words where there is none", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(systemComparison, "us");
  });

  test("the system looked at drives the years and the sensitivity; a bench is never paid back", () => {
    book.setLine("Inputs", "System to look at", "ebb-and-flow bench");
    expect(book.block("Result", "Paid back year by year")[1]).toEqual([0, "", -411_400, -411_400]);
    expect(book.block("Result", "Which number matters most")[1]?.slice(3)).toEqual([NEVER, NEVER]);
    expect(book.headless.value("Result!A5")).toBe("As planned, ebb-and-flow bench: never paid back with interest.");
    expect(book.headless.value("Result!A6")).toBe("In 5 of 5 cases it does not pay within the 10 years of the plan.");
    expect(book.check("It pays back")).toBe("LOOK");
    expect(book.check("The system looked at suits the pots")).toBe("LOOK");
  });

  test("a printed column is left empty", () => {
    book.setLine("Inputs", "System to print, third", "none");
    expect(["F9", "F10", "F11", "F24"].map((at) => book.headless.value(`Result!${at}`))).toEqual(["", "", "", ""]);
    expect(book.overall()).toBe("All checks OK");
  });

  test("small pots in a house suit a mat and no longer stakes", () => {
    book.setLine("Inputs", "Size of the pots", 1);
    expect(book.column("Work", "for these pots")).toEqual([
      "suits",
      "for larger pots",
      "suits",
      "needs a roof",
      "needs a roof",
      "needs a roof",
    ]);
    book.setLine("Inputs", "Where they stand", "house");
    expect(book.column("Work", "for these pots").slice(3)).toEqual(["suits", "suits", "suits"]);
  });

  test("without interest both paybacks are the same", () => {
    book.setLine("Inputs", "Interest a year", 0);
    expect(book.column("Work", "as planned", 2)[STAKES]).toBe(book.column("Work", "as planned", 1)[STAKES]);
    expect(book.overall()).toBe("All checks OK");
  });

  test("a tariff that falls back says so in the bill", () => {
    book.setInColumn("Inputs", "up to", 1, 50);
    const at = "'Work'!B38";
    expect(book.headless.message(at)).toBe(
      "WATER_COST: tier_limits is 50; it must be more than 100, the limit before it, in row 2",
    );
  });
});

describe("each check looks at its cause", () => {
  type Cause = (book: StarterReader) => void;
  const CAUSES: readonly (readonly [what: string, label: string, cause: Cause])[] = [
    [
      "a system without a number",
      "No number is missing",
      (book) => book.setInColumn("Systems", "leached of that", STAKES, ""),
    ],
    ["no wage", "No number is missing", (book) => book.setLine("Inputs", "Wage, loaded", "")],
    [
      "a tariff with a gap",
      "Every line of cost is worked for every system",
      (book) => book.setInColumn("Inputs", "up to", 1, ""),
    ],
    [
      "a total typed over",
      "Costs add up to the same across and down",
      (book) => book.setInColumn("Work", "together", STAKES, 18_000),
    ],
    [
      "a bill in CCF taken for thousands of gallons",
      "The baseline's water is that of the meter",
      (book) => book.setLine("Inputs", "Unit of the water bill", 748.05),
    ],
    [
      "a bill that is too large a part",
      "The bills hold the whole season's water",
      (book) => book.setInColumn("Inputs", "part of it", 3, 0.3),
    ],
    [
      "a block that ends before the one above",
      "The tariff's blocks rise",
      (book) => book.setInColumn("Inputs", "up to", 1, 50),
    ],
    [
      "a season's bill typed over",
      "The baseline's bills are the same by both ways",
      (book) => book.setInColumn("Work", "season", 0, 8000),
    ],
    [
      "half the water for the same plants",
      "Plants keep about the same water with every system",
      (book) => book.setInColumn("Systems", "water of a plant", STAKES, 0.35),
    ],
    [
      "labour of 12 % of the cost",
      "Labour is a sane part of the cost",
      (book) => book.setLine("Inputs", "Labour of a plant, without irrigation", 0.3),
    ],
    [
      "lost plants at the price of a sale",
      "Lost plants are counted at cost, not at price",
      (book) => book.setLine("Inputs", "Spent on a plant when it is lost", 28),
    ],
    [
      "a grant above the cost of the rest",
      "A grant is no more than what it helps to pay",
      (book) => book.setInColumn("Systems", "grant", STAKES, 30_000),
    ],
    [
      "stakes for #3 pots",
      "The system looked at suits the pots",
      (book) => book.setLine("Inputs", "Size of the pots", 3),
    ],
    [
      "stakes that nobody checks",
      "Its new chores are counted",
      (book) => {
        const chores = ["checking emitters", "cleaning filters, mats", "placing, taking out"];
        chores.forEach((chore) => book.setInColumn("Systems", chore, STAKES, 0));
      },
    ],
    ["one plant in five lost", "It pays back", (book) => book.setInColumn("Systems", "plants lost", STAKES, 0.2)],
    [
      "stakes that last three years",
      "It pays back within the life of what wears out",
      (book) => book.setInColumn("Systems", "its life", STAKES, 3),
    ],
    [
      "a value typed over",
      "Its net present value is the same by three ways",
      (book) => book.setInColumn("Work", "value", 4, 0),
    ],
  ];

  test.each(CAUSES)("%s: %s", (_what, label, cause) => {
    const book = openStarter(systemComparison, "us");
    expect(book.check(label)).toBe("OK");
    cause(book);
    expect(book.check(label)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });
});
