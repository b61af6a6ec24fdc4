/**
 * July at Tern Hollow, worked by hand first (all inputs invented): FAO-56 Eq. 52 day by day, then the books of one pot.
 *
 * US edition
 *   8 July, 93 F and 69 F: ET0 = 0.2508 in, as worked out in ternHollow.test.ts; use 0.2508 x 1.05 x 3.5 x 144 / 231 = 0.5745 gal
 *   9 July has no reading: (0.2163 + 0.2322 + 0.2508 + 0.2364 + 0.2331 + 0.2288) / 6 = 1.3976 / 6 = 0.2329 in
 *   23 July: (0.2581 + 0.2606 + 0.2532 + 0.2355 + 0.2225 + 0.2200) / 6 = 1.4499 / 6 = 0.2417 in
 *   Pot: pi x 10.5 / 12 x (196 + 168 + 144) = 1396.4 in3 = 6.0452 gal; a quarter is available, 1.5113; 0.4 of it, 0.6045
 *   14 July, 1.1 in on a 14 in opening: 1.1 x 49 pi / 231 = 0.7330 gal; 0.4816 + 0.3676 - 0.7330 - 0.6 x 0.85 = -0.3938, which drains
 *   31 July: the pot lacks 0.2423; / 0.85 = 0.2851 gal; 60 x 0.2851 / (2 x 1) = 8.55 min
 *   Month: 0.3 + 16.7290 - 0.7330 - 16.4475 + 0.3938 = 0.2423
 *   Weighed, 8.3454 lb to the gallon: 4.6, 4.8, 5.7, 4.7 lb = 0.5512, 0.5752, 0.6830, 0.5632 gal, in all 2.3726;
 *     by the weather 0.5319 + 0.5265 + 0.6255 + 0.5332 = 2.2171; 1.0701
 *     Kc: 1.05 x 0.5512 / 0.5319 = 1.0882, 1.1 x 0.5752 / 0.5265 = 1.2017, 1.2011, 1.1618; mean 1.1632
 * Metric edition
 *   8 July, 34 C and 20.5 C: 0.0023 x (27.25 + 17.8) x root of 13.5 x 0.408 x 41.29 = 6.413 mm; x 1.05 x 0.325 m2 = 2.1884 L
 *   Pot: pi x 27 / 12 x (1296 + 1080 + 900) = 23,157 cm3; available 5.7892 L; refill at 2.3157
 *   14 July, 28 mm: 2.8 x 324 pi = 2850 mL; 1.5028 + 1.4310 - 2.8501 - 2.3 x 0.85 = -1.8712
 *   31 July: 0.8706 / 0.85 = 1.0243 L; 60 x 1.0243 / (2 x 4) = 7.68 min
 *   Month: 1.2 + 63.2944 - 2.8501 - 62.6450 + 1.8712 = 0.8706 (rounded parts)
 *   Weighed: 2.06 + 2.15 + 2.55 + 2.10 = 8.86 L; by the weather 1.9916 + 1.9791 + 2.3676 + 1.9967 = 8.3350; 1.0630
 *     Kc: 1.0860, 1.1950, 1.1848, 1.1569; mean 1.1557
 */
import { translateFormulaToR1C1 } from "@borgar/fx";
import type { Edition } from "../../src/workbooks/kit";
import { columnNumber, rowNumber } from "../../src/workbooks/kit";
import { isFormula } from "../../src/workbooks/model";
import { dailyDemand } from "../../src/workbooks/starters/dailyDemand";
import { openStarter, type StarterReader } from "../rig/starterReader";

interface ByHand {
  /** Used by the plant, and lacking in the evening, 1 to 31 July. */
  readonly use: readonly number[];
  readonly lacks: readonly number[];
  /** Lines of Result. */
  readonly result: Readonly<Record<string, number | string>>;
  readonly within: number;
}

// prettier-ignore
const BY_HAND: Readonly<Record<Edition, ByHand>> = {
  us: {
    use: [
      0.5132, 0.5278, 0.5343, 0.5254, 0.4939, 0.4955, 0.5319, 0.5745, 0.5336, 0.5417, 0.5341, 0.5243, 0.4815, 0.3676, 0.4494, 0.5265,
      0.5707, 0.5999, 0.6135, 0.6195, 0.6255, 0.6078, 0.58, 0.5652, 0.534, 0.5279, 0.5196, 0.5332, 0.5537, 0.5591, 0.5644,
    ],
    lacks: [
      0.3032, 0.321, 0.3453, 0.3607, 0.3446, 0.3301, 0.352, 0.4165, 0.4401, 0.4718, 0.4959, 0.5101, 0.4816, 0, 0.4494, 0.4234,
      0.4416, 0.4891, 0.5501, 0.6171, 0.6901, 0.7454, 0.4753, 0.4455, 0.3845, 0.3174, 0.242, 0.2227, 0.2239, 0.2304, 0.2423,
    ],
    result: {
      "The plant used that day": 0.5644,
      "The pot lacks": 0.2423,
      "It is time to irrigate at": 0.6045,
      Irrigate: "before tomorrow evening",
      "Water that fills the pot again": 0.2851,
      "Days worked": 31,
      "of them without a reading, filled": 2,
      "The plant used": 16.729,
      "Rain into the pot": 0.733,
      "Irrigation kept": 16.4475,
      "Drained beyond full": 0.3938,
      "Use that the pot could not give": 0,
      "Evenings at the refill line or beyond": 3,
      "Scale / weather, all weighings": 1.0701,
      "Crop coefficient by the scale, mean": 1.1632,
    },
    within: 0.0001,
  },
  metric: {
    use: [
      1.9292, 1.979, 2.0007, 1.9697, 1.8618, 1.8677, 1.9916, 2.1884, 2.0229, 2.0765, 2.05, 1.9631, 1.8171, 1.431, 1.7072, 1.9791,
      2.1296, 2.2817, 2.3276, 2.3478, 2.3676, 2.307, 2.2028, 2.1613, 2.054, 1.9791, 1.9505, 1.9967, 2.0659, 2.1352, 2.1527,
    ],
    lacks: [
      1.1742, 1.1982, 1.2439, 1.2586, 1.1654, 1.0781, 1.1147, 1.3481, 1.416, 1.5375, 1.6326, 1.6407, 1.5028, 0, 1.7072, 1.5613,
      1.5659, 1.7226, 1.9252, 2.148, 2.3906, 2.5726, 1.7153, 1.6666, 1.5106, 1.2797, 1.0202, 0.8918, 0.8328, 0.843, 0.8706,
    ],
    result: {
      "The plant used that day": 2.1527,
      "The pot lacks": 0.8706,
      "It is time to irrigate at": 2.3157,
      Irrigate: "before tomorrow evening",
      "Water that fills the pot again": 1.0243,
      "Days worked": 31,
      "of them without a reading, filled": 2,
      "The plant used": 63.2944,
      "Rain into the pot": 2.8501,
      "Irrigation kept": 62.645,
      "Drained beyond full": 1.8712,
      "Use that the pot could not give": 0,
      "Evenings at the refill line or beyond": 2,
      "Scale / weather, all weighings": 1.063,
      "Crop coefficient by the scale, mean": 1.1557,
    },
    within: 0.0001,
  },
};

const MISSING = "Every day up to the last has its reading";
const [NINTH, LAST] = [8, 30];
let starter: StarterReader;

const days = (heading: string): number[] => starter.column("Days", heading) as number[];
const type = (heading: string, row: number, content: number | string): void =>
  starter.setInColumn("Weather", heading, row, content);
const sum = (numbers: readonly number[]): number => numbers.reduce((total, number) => total + number, 0);

describe.each(["us", "metric"] as const)("July in Yard B, %s, agrees with the month worked by hand", (edition) => {
  const { use, lacks, result, within } = BY_HAND[edition];
  beforeAll(() => {
    starter = openStarter(dailyDemand, edition);
  });

  test("the plant's use of each day", () => {
    expect(days("plant used")).toHaveLength(31);
    days("plant used").forEach((found, day) => expect(Math.abs(found - use[day]!)).toBeLessThanOrEqual(within));
  });

  test("what the pot lacks each evening", () => {
    days("the pot lacks").forEach((found, day) => expect(Math.abs(found - lacks[day]!)).toBeLessThanOrEqual(within));
  });

  test.each(Object.entries(result))("%s", (label, byHand) => {
    const found = starter.line("Result", label);
    if (typeof byHand === "string") expect(found).toBe(byHand);
    else expect(Math.abs((found as number) - byHand)).toBeLessThanOrEqual(within);
  });

  test("the minutes that fill the pot again", () => {
    const minutes = edition === "us" ? 8.55 : 7.68;
    expect(Math.abs((starter.line("Result", "Minutes for it") as number) - minutes)).toBeLessThan(0.005);
  });

  test("no water is lost in the books: start + use = rain + irrigation - drained + not met + end", () => {
    const start = starter.line("Inputs", "Deficit before the first day") as number;
    const put = sum(days("rain into the pot")) + sum(days("irrigation kept"));
    const away = sum(days("drained")) - sum(days("not met"));
    expect(start + sum(days("plant used"))).toBeCloseTo(put - away + days("the pot lacks")[LAST]!, 9);
  });
});

describe("days without a reading", () => {
  beforeEach(() => {
    starter = openStarter(dailyDemand, "us");
  });

  test("the two of the demo are marked, counted and shown by the check", () => {
    expect(starter.column("Days", "reading").filter((word) => word === "filled")).toHaveLength(2);
    expect([starter.check(MISSING), starter.overall()]).toEqual(["LOOK", "See Checks"]);
  });

  test("when their readings are typed, all checks are OK", () => {
    for (const row of [NINTH, 22]) {
      type("highest temperature", row, 92);
      type("lowest temperature", row, 68);
    }
    expect(starter.overall()).toBe("All checks OK");
  });

  test("a day with one of the two temperatures is no reading", () => {
    type("lowest temperature", 0, "");
    expect(starter.column("Days", "reading")[0]).toBe("filled");
    expect(starter.line("Result", "of them without a reading, filled")).toBe(3);
  });

  test("a lowest temperature above the highest is told in words and filled", () => {
    type("lowest temperature", 4, 95);
    expect(starter.column("Days", "ET by the temperatures")[4]).toMatch(/^tmin is 95/);
    expect(starter.column("Days", "reading")[4]).toBe("filled");
  });

  test("in a gap of eight days the day without a neighbour stands on the mean of all, and a check says so", () => {
    for (let row = 15; row < 22; row += 1) type("highest temperature", row, "");
    expect(starter.column("Days", "reading").slice(14, 24)).toEqual([
      "read",
      "filled",
      "filled",
      "filled",
      "guessed",
      "guessed",
      "filled",
      "filled",
      "filled",
      "read",
    ]);
    expect(days("ET worked with")[18]).toBe(starter.line("Work", "Mean ET of all days with a reading"));
    expect(starter.check("No gap is too long to be filled from the days around")).toBe("LOOK");
  });

  test("in the middle of a month the days to come are not worked and not missed", () => {
    for (let row = 20; row <= LAST; row += 1) if (row !== 22) type("highest temperature", row, "");
    expect(starter.line("Result", "Days worked")).toBe(20);
    expect(starter.line("Result", "of them without a reading, filled")).toBe(1);
    expect(starter.line("Result", "The pot lacks")).toBe(days("the pot lacks")[19]);
    expect(days("plant used").slice(20)).toEqual(Array(11).fill(0));
    expect(starter.line("Result", "Irrigate")).toBe("now");
    expect(starter.line("Result", "Evenings at the refill line or beyond")).toBe(1);
  });

  test("a left-out day is seen on every row after it", () => {
    type("date", 5, 46_210);
    expect(starter.column("Days", "reading")[5]).toBe("date?");
    expect(starter.check("Each day is the day after the one above")).toBe("LOOK");
  });
});

describe("a station's own reference ET", () => {
  beforeEach(() => {
    starter = openStarter(dailyDemand, "metric");
    starter.setLine("Inputs", "Where the reference ET comes from", "station");
  });

  test("without one typed no day is worked, and no cell is in error", () => {
    expect(starter.line("Result", "Days worked")).toBe(0);
    expect(starter.line("Result", "The plant used")).toBe(0);
    expect([starter.line("Result", "Day"), starter.line("Result", "Irrigate")]).toEqual([
      "none yet",
      "no day is worked",
    ]);
    expect(starter.line("Result", "The pot lacks")).toBe(1.2);
  });

  test("5 mm on 1 July is 5 x 1.05 x 0.325 = 1.70625 L, whatever the temperatures", () => {
    type("reference ET of a station", 0, 5);
    expect(days("plant used")[0]).toBeCloseTo(1.70625, 12);
    expect(starter.line("Result", "Days worked")).toBe(1);
  });

  test("a week's sum typed as a day is looked at", () => {
    type("reference ET of a station", 0, 24);
    expect(starter.check("Reference ET is what the trade sees")).toBe("LOOK");
  });
});

describe("each check finds its cause", () => {
  beforeEach(() => {
    starter = openStarter(dailyDemand, "us");
  });

  test.each([
    ["a blank rain gauge", "Every day has its rain", () => type("rain", 3, "")],
    ["a blank irrigation", "Every day has its irrigation", () => type("water given to a pot", 3, "")],
    [
      "pots moved 60 in apart",
      "A full pot lasts the thirstiest day",
      () => ["Spacing in the row", "Spacing between rows"].forEach((label) => starter.setLine("Inputs", label, 60)),
    ],
    [
      "a week without irrigation",
      "The pot could always give what the plant used",
      () => [15, 16, 17, 18, 19, 20].forEach((row) => type("water given to a pot", row, 0)),
    ],
    [
      "a deficit typed over the balance",
      "The balance closes",
      () => starter.setInColumn("Days", "plant used", 4, 0.9) ?? starter.setInColumn("Days", "the pot lacks", 5, 0.1),
    ],
    [
      "a pot that lost 8 lb",
      "Pots were weighed, and the scale agrees with the weather",
      () => starter.setInColumn("Weighed", "a day later", 0, 33.6),
    ],
    [
      "no weighing at all",
      "Pots were weighed, and the scale agrees with the weather",
      () => [0, 1, 2, 3].forEach((row) => starter.setInColumn("Weighed", "date", row, "")),
    ],
  ])("%s", (_cause, check, put) => {
    expect(starter.check(check)).toBe("OK");
    put();
    expect(starter.check(check)).toBe("LOOK");
  });

  test("a week without irrigation still closes: what the plant wanted and did not get is counted", () => {
    [15, 16, 17, 18, 19, 20].forEach((row) => type("water given to a pot", row, 0));
    expect(starter.line("Result", "Use that the pot could not give")).toBeGreaterThan(1);
    expect(starter.check("The balance closes")).toBe("OK");
  });

  test("where the balance has no answer nothing on Result stands at 0: the reason stands there", () => {
    starter.setLine("Inputs", "Deficit before the first day", 2);
    for (const label of ["The pot lacks", "Drained beyond full", "Use that the pot could not give", "Minutes for it"]) {
      expect(starter.message("Result", label)).toBe(starter.message("Result", "The pot lacks"));
    }
    expect(starter.message("Result", "The pot lacks")).toMatch(
      /^WATER_BALANCE: start_deficit is 2; it must be capacity/,
    );
  });

  test("a weighing on a day that is not on Weather is said in words and held against nothing", () => {
    starter.setInColumn("Weighed", "date", 0, 46_300);
    expect(starter.column("Weighed", "used by the weather")[0]).toBe("not on Weather");
    expect(starter.column("Weighed", "scale / weather")[0]).toBe("");
  });
});

describe("a longer table can be brought in", () => {
  const { workbook } = dailyDemand.build("us");
  const { inputs, following, fields } = workbook.growing!;
  const rowsOf = (range: string): [number, number] => {
    const [first = "", last = ""] = range.split("!")[1]!.split(":");
    return [rowNumber(first), rowNumber(last)];
  };
  const cellsOf = (name: string) => Object.entries(workbook.sheets.find((sheet) => sheet.name === name)!.cells);

  test("the blocks have as many rows as one another, and each field its column", () => {
    const counts = [inputs, ...following].map((range) => rowsOf(range)).map(([first, last]) => last - first + 1);
    expect(counts).toEqual([31, 31]);
    expect(fields.map(({ column }) => column)).toEqual(["A", "B", "C", "D", "E", "F"]);
  });

  test.each([["Weather"], ["Days"]])("nothing stands below the block on %s", (name) => {
    const [, last] = rowsOf([inputs, ...following].find((range) => range.startsWith(`${name}!`))!);
    expect(cellsOf(name).filter(([address]) => rowNumber(address) > last)).toEqual([]);
  });

  test("every formula of a day is that of the first, copied down", () => {
    const [first, last] = rowsOf(following[0]!);
    const formulas = new Map<number, Set<string>>();
    for (const [address, cell] of cellsOf("Days")) {
      if (rowNumber(address) < first || rowNumber(address) > last || !isFormula(cell)) continue;
      const column = columnNumber(address);
      const relative = String(translateFormulaToR1C1(cell.formula, address));
      formulas.set(column, (formulas.get(column) ?? new Set()).add(relative));
    }
    expect(formulas.size).toBe(10);
    for (const alike of formulas.values()) expect(alike.size).toBe(1);
  });
});
