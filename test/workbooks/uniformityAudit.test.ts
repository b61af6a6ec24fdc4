/**
 * The uniformity audit, worked by hand on paper first (all readings invented).
 *
 * US cans: 24 catches sum to 2,412 mL, mean 100.5; the lowest six 70 + 76 + 79 + 84 + 85 + 88 = 482, mean 80.3333; DU = 0.799337
 *   squares of the deviations 5,350: s = sqrt(5,350 / 23) = 15.2515, Cv 0.151756; deviations 305: CU = 1 - 305 / 2,412 = 0.873549
 *   Mouth pi / 4 x 4.25^2 = 14.18625 in2; 100.5 mL x 231 / 3785.411784 = 6.132886 in3; 0.432312 in in 30 min: 0.864624 in/h
 *   0.45 in: 0.799337 is smaller than 0.85: 0.562967 in; / 0.864624 x 60 = 39.06671 min; x 5,400 ft2 x 144 / 231 = 1,895.078 gal
 *   mended, DU 0.90: now 0.85 is the smaller: 0.529412 in; 36.73818 min; 1,782.124 gal; spared 112.954 gal, 1 - 0.799337 / 0.85 = 5.9604 %
 *   turf: 1 / (0.4 + 0.6 x 0.799337) = 1.136878; 1 / 0.94 = 1.063830
 * Metric cans: sum 1,464 mL, mean 61; lowest six 43 + 46 + 48 + 51 + 52 + 54 = 294, mean 49; DU = 49 / 61 = 0.803279
 *   squares 1,838: s = 8.939410, Cv 0.146548; deviations 178: CU = 1 - 178 / 1,464 = 0.878415
 *   Mouth 78.53982 cm2; 61 / 78.53982 cm = 7.766761 mm in 30 min: 15.533522 mm/h
 *   11 mm / 0.803279 = 13.693878 mm; 52.894162 min; x 500 m2 = 6,846.939 L; mended 12.941176 mm, 49.986768 min, 6,470.588 L
 *   spared 376.351 L, 1 - 49 / 61 / 0.85 = 57 / 1,037 = 5.4966 %; turf 1 / 0.881967 = 1.133829
 *
 * Drippers, 30 s: 1 mL in 30 s is 120 mL/h: / 3785.411784 = 0.0317006 gal/h, or 0.12 L/h
 *   US head 260, middle 250, tail 233 mL, 743 in all: mean 30.958333 mL, 0.981399 gal/h; places 32.5, 31.25, 29.125 mL: 1.030271, 0.990645, 0.923281
 *   lowest six 25 + 28 + 29 + 29 + 29 + 30 = 170, mean 28.333333: 0.915209; one, 25 mL = 0.7925, is below 0.8 of 1 gal/h
 *   design (1 - 1.27 x 0.05 / sqrt 2) x 29.125 / 30.958333 = 0.955099 x 0.940781 = 0.898538
 *   Metric head 276, middle 266, tail 248, 790 in all: mean 32.916667, 3.95 L/h; 34.5, 33.25, 31 mL: 4.14, 3.99, 3.72
 *   lowest six 26 + 30 + 31 + 31 + 31 + 32 = 181: 30.166667 / 32.916667 = 0.916456; 26 mL = 3.12 L/h is 0.78 of 4
 *   design 0.955099 x 31 / 32.916667 = 0.899485
 *
 * Bottle. US 355 mL x 3600 / 3785.411784 = 337.61188 gal/h x s; the 24 values of 1 / s sum to 0.408110: / 24 x 337.61188 = 5.740949 gal/h
 *   times sum to 1,430, mean 59.583333: 337.61188 / 59.583333 = 5.666213, 1.3018 % too low
 *   slowest six 63, 64, 66, 68, 72, 84: 1 / s sum to 0.087150, mean 0.014525 against 0.0170046: 0.854172
 *   the trap: fastest six 50 + 51 + 52 + 53 + 54 + 55 = 315, mean 52.5 / 59.583333 = 0.881119
 *   Metric 500 mL: 1,800 L/h x s; 1 / s sum to 0.299912: 22.493369; times 1,945, mean 81.041667: 22.210797, 1.25624 % too low
 *   slowest six 86, 87, 90, 92, 98, 114: 0.854637; the trap 69 + 70 + 71 + 72 + 74 + 75 = 431, 71.833333 / 81.041667 = 0.886375
 */
import { isValue } from "../../src/workbooks/model";
import { uniformityAudit } from "../../src/workbooks/starters/uniformityAudit";
import { openStarter, type StarterReader } from "../rig/starterReader";

const BY_HAND = {
  us: {
    audit: [24, 0, 100.5, 482 / 6, 70, 126, 0.151756, 0.799337, 0.873549],
    dry: [70, 76, 79, 84, 85, 88],
    verdict: "fair",
    lines: {
      "Rate of the sprinklers": 0.864624,
      "Depth to give, as it is": 0.562967,
      "Depth to give, mended": 0.529412,
      "Minutes a day, as it is": 39.06671,
      "Minutes a day, mended": 36.73818,
      "Water a day, as it is": 1895.078,
      "Water a day, mended": 1782.124,
      "Water spared": 112.954,
      "part of it spared": 0.059604,
      "Factor for turf, as it is": 1.136878,
      "Factor for turf, mended": 1.06383,
      "Flow of an emitter": 0.981399,
      "at the head": 1.030271,
      "in the middle": 0.990645,
      "at the tail": 0.923281,
      "Evenness, measured": 0.915209,
      "Evenness that the design promises": 0.898538,
      "Flow of an emitter, by the bottle": 5.740949,
      "Trap: flow at the mean of the times": 5.666213,
      "too low by": 0.013018,
      "Evenness, by the bottle": 0.854172,
      "Trap: lowest quarter of the times": 0.881119,
    },
    meanOfRated: 0.981399,
  },
  metric: {
    audit: [24, 0, 61, 49, 43, 74, 0.146548, 49 / 61, 0.878415],
    dry: [43, 46, 48, 51, 52, 54],
    verdict: "high",
    lines: {
      "Rate of the sprinklers": 15.533522,
      "Depth to give, as it is": 13.693878,
      "Depth to give, mended": 12.941176,
      "Minutes a day, as it is": 52.894162,
      "Minutes a day, mended": 49.986768,
      "Water a day, as it is": 6846.939,
      "Water a day, mended": 6470.588,
      "Water spared": 376.351,
      "part of it spared": 57 / 1037,
      "Factor for turf, as it is": 1.133829,
      "Factor for turf, mended": 1.06383,
      "Flow of an emitter": 3.95,
      "at the head": 4.14,
      "in the middle": 3.99,
      "at the tail": 3.72,
      "Evenness, measured": 0.916456,
      "Evenness that the design promises": 0.899485,
      "Flow of an emitter, by the bottle": 22.493369,
      "Trap: flow at the mean of the times": 22.210797,
      "too low by": 0.0125624,
      "Evenness, by the bottle": 0.854637,
      "Trap: lowest quarter of the times": 0.886375,
    },
    meanOfRated: 0.9875,
  },
} as const;

/** What the block on Cans shows: each reading with the word beside it, along the rows. */
function marked(book: StarterReader): [unknown, unknown][] {
  const sheet = book.workbook.sheets.find(({ name }) => name === "Cans")!;
  const [heading] = Object.entries(sheet.cells).filter(
    ([, cell]) => isValue(cell) && cell.value === "The driest quarter",
  )[0]!;
  const first = Number(heading.slice(1)) + 4;
  return [0, 1, 2, 3].flatMap((row) =>
    ["BC", "DE", "FG", "HI", "JK", "LM"].map(([reading, mark]): [unknown, unknown] => [
      book.headless.value(`Cans!${reading!}${first + row}`),
      book.headless.value(`Cans!${mark!}${first + row}`),
    ]),
  );
}

describe.each(["us", "metric"] as const)("the %s edition agrees with the test worked on paper", (edition) => {
  const byHand = BY_HAND[edition];
  let book: StarterReader;
  beforeAll(() => {
    book = openStarter(uniformityAudit, edition);
  });

  test("the table of the cans", () => {
    const found = book.block("Result", "How even the water is");
    byHand.audit.forEach((value, row) => expect(found[row]![1]).toBeCloseTo(value, 6));
  });

  test.each(Object.entries(byHand.lines))("%s: %d", (label, value) => {
    expect((book.line("Result", label) as number) / value).toBeCloseTo(1, 5);
  });

  test("the evenness is named by the limits", () => {
    expect(book.line("Result", "The evenness is")).toBe(byHand.verdict);
  });

  test("the six driest cans, and no other, are marked where they stand", () => {
    const cans = marked(book);
    expect(cans).toHaveLength(24);
    const dry = cans.filter(([, mark]) => mark === "dry").map(([reading]) => reading as number);
    expect(dry.sort((a, b) => a - b)).toEqual(byHand.dry);
    expect(cans.filter(([, mark]) => mark !== "dry" && mark !== "")).toEqual([]);
  });

  test("the chart's catches are the readings, from the driest on, with both means beside them", () => {
    const catches = book.column("Work", "catch") as number[];
    const readings = marked(book).map(([reading]) => reading as number);
    expect(catches).toEqual(readings.sort((a, b) => a - b));
    expect(new Set(book.column("Work", "mean"))).toEqual(new Set([byHand.audit[2]]));
    for (const low of book.column("Work", "mean of the lowest quarter")) expect(low).toBeCloseTo(byHand.audit[3], 9);
  });

  test("one dripper of 24 is low, and none is without flow", () => {
    const rows = book.block("Result", "Emitters: how many are well");
    expect(rows.slice(0, 5).map(([label, count]) => [label, count])).toEqual([
      ["tested", 24],
      ["no flow", 0],
      ["low", 1],
      ["in band", 23],
      ["high", 0],
    ]);
    expect(rows[5]![2]).toBeCloseTo(byHand.meanOfRated, 6);
  });

  test("water given by the minutes at the rate is the water of the day", () => {
    const of = (label: string) => book.line("Result", label) as number;
    const perDepth = edition === "us" ? (144 / 231) * 5400 : 500;
    for (const state of ["as it is", "mended"]) {
      const came = (of(`Minutes a day, ${state}`) / 60) * of("Rate of the sprinklers") * perDepth;
      expect(came / of(`Water a day, ${state}`)).toBeCloseTo(1, 9);
    }
  });

  test("all checks are well", () => expect(book.overall()).toBe("All checks OK"));
});

describe("a can that is blank or 0", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(uniformityAudit, "us");
    book.setInColumn("Cans", "can 5", 2, ""); // The driest, 70 mL.
  });

  const audit = () => book.block("Result", "How even the water is").map((row) => row[1]);

  test("is refused by its place, and the checks say so", () => {
    const message = "UNIFORMITY_AUDIT: readings is blank or 0 in row 3, column 5 of the range; ";
    expect(book.headless.message("Result!A7")).toMatch(new RegExp(`^${message}`));
    expect(book.check("Every can has its water")).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test("skip: 23 cans of 2,342 mL; the lowest six are now 76 + 79 + 84 + 85 + 88 + 90 = 502", () => {
    book.setLine("Inputs", "A can that is blank or 0", "skip");
    expect(audit().slice(0, 2)).toEqual([23, 1]);
    expect(audit()[7]).toBeCloseTo(502 / 6 / (2342 / 23), 9);
    expect(book.check("The sorted catches give the same evenness")).toBe("OK");
    expect(book.check("At least 16 cans, in fours")).toBe("LOOK");
    expect(marked(book).filter(([, mark]) => mark === "none")).toHaveLength(1);
  });

  test("count: 24 cans of 2,342 mL; the lowest six are 0 + 76 + 79 + 84 + 85 + 88 = 412", () => {
    book.setLine("Inputs", "A can that is blank or 0", "count");
    expect(audit().slice(0, 2)).toEqual([24, 1]);
    expect(audit()[7]).toBeCloseTo(412 / 6 / (2342 / 24), 9);
    expect(book.check("The sorted catches give the same evenness")).toBe("OK");
  });

  test.each([
    ["skip", 502 / 6 / (2342 / 23)],
    ["count", 412 / 6 / (2342 / 24)],
  ])("a typed 0 is the same as a blank: %s", (word, du) => {
    book.setInColumn("Cans", "can 5", 2, 0);
    book.setLine("Inputs", "A can that is blank or 0", word);
    expect(audit()[7]).toBeCloseTo(du, 9);
    expect(book.check("The sorted catches give the same evenness")).toBe("OK");
  });
});

describe("a check looks when its cause is put in", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(uniformityAudit, "us");
  });

  test.each([
    ["The wind let the test count", "Wind", 8],
    ["The pressure was the usual one, within 10 %", "Pressure at a sprinkler", 38],
    ["The rate is one that the trade sees", "The water ran for", 3],
    ["The evenness is not low", "Evenness that is low, below", 0.81],
    ["Nine of ten emitters or more are in the band", "Flow that they should give", 1.3],
  ])("%s", (check, label, content) => {
    expect(book.check(check)).toBe("OK");
    book.setLine("Inputs", label, content);
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test.each([
    ["18 emitters or more were caught, none left out", ""],
    ["No emitter is without flow", 0],
  ])("%s", (check, content) => {
    book.setInColumn("Emitters", "caught", 10, content);
    expect(book.check(check)).toBe("LOOK");
  });

  test("head and tail, and the design: drippers at the tail half plugged", () => {
    for (let row = 16; row < 24; row += 1) book.setInColumn("Emitters", "caught", row, 15);
    expect(book.check("Head and tail differ by no more than a fifth")).toBe("LOOK");
    const alike = openStarter(uniformityAudit, "us");
    for (const row of [0, 5, 9, 14, 20]) alike.setInColumn("Emitters", "caught", row, 18);
    expect(alike.check("The emitters are as even as the design promises")).toBe("LOOK");
  });

  test("a bottle time that is missing is left out, counted, and the flows stay", () => {
    book.setInColumn("Bottle", "to fill it", 3, "");
    expect(book.check("Every emitter of the bottle test has its time")).toBe("LOOK");
    // The 51 s are gone: 24 x 5.740949 - 337.61188 / 51 = 131.162944, over 23.
    expect(book.line("Result", "Flow of an emitter, by the bottle")).toBeCloseTo(5.702737, 5);
  });
});

test("without leaching, mending from 0.80 to 0.90 spares a ninth of the water and of the minutes", () => {
  const book = openStarter(uniformityAudit, "us");
  book.setLine("Inputs", "Leaching wanted", 0);
  expect(book.line("Result", "part of it spared")).toBeCloseTo(1 - 482 / 6 / 100.5 / 0.9, 9);
  expect(book.line("Result", "Depth to give, mended")).toBeCloseTo(0.5, 9);
});
