/**
 * The flood benches, worked by hand on paper first (all inputs invented). Four benches alike, flooded one after the other.
 *
 * US. Bench 6 x 40 ft = 240 ft2 under 1 in: 240 x 144 = 34,560 in3; 480 pots of 4.25 in at the base displace
 *   480 x pi / 4 x 4.25^2 = 6,809.402 in3; left 27,750.598 in3 / 231 = 120.1325 gal
 *   A pot gains 2.26 - 2.10 = 0.16 lb; a gallon of water is 8.345404 lb: 480 x 0.16 / 8.345404 = 9.202670 gal
 *   To fill (120.1325 + 9.202670) / 15 = 8.622342 min; soak 10, drain 8: empty 26.622342 min after its start
 *   after_fill: starts at 0, 8.622342, 17.244684, 25.867026; the round is over at 25.867026 + 26.622342 = 52.489368
 *   The tank, above the pump's minimum, from 545 - 25 = 520; 15 out while one fills, 120.1325 / 8 = 15.016557 back while one drains:
 *     18.622342, bench 1 starts to drain: 520 - 15 x 18.622342 = 240.664872
 *     26.622342, bench 1 is empty: + 8 x 0.016557 = 240.797330
 *     27.244684, bench 2 starts to drain: - 15 x 0.622342 = 231.462202, the lowest
 *     34.489368, bench 4 is full: + 7.244684 x 0.016557 = 231.582155
 *     35.244684, bench 2 is empty: + 0.755316 x 15.016557 = 242.924404; 43.867026: + 120.1325 = 363.056863
 *     52.489368: + 120.1325 = 483.189322, which is 520 - 4 x 9.202670
 *   At 25.867026 bench 4 starts and bench 1 still drains: four hold water.
 *   Tank: (4 x 120.132459 + 36.810678 + 25) x 1.1 = 596.5746 gal; 600 / 960 ft2 = 0.625 gal/ft2
 *   out at the lowest 545 - 256.462202 = 288.537798; rounds: 231.46 / 36.81 = 6.3, so 1 + 6 = 7
 *   Load: 120.132459 x 8.345 = 1,002.505 lb; with the pots (1,002.505 + 480 x 2.26) / 240 = 8.697106 lb/ft2
 *   after_drain: the round takes 4 x 26.622342 = 106.489368; lowest, bench 4 full: 520 - 3 x 9.202670 - 129.335128 = 363.056862;
 *   one holds water: (120.132459 + 36.810678 + 25) x 1.1 = 200.137451
 *
 * Metric. Bench 1.8 x 12 m = 21.6 m2 under 25 mm: 540 L; 450 pots of 11 cm: 450 x pi / 4 x 0.0121 m2 = 4.276493 m2 x 25 = 106.912325 L;
 *   left 433.087675 L. A pot gains 0.07 kg: 31.5 L. To fill 464.587675 / 60 = 7.743128 min; empty 25.743128 after its start
 *   starts 0, 7.743128, 15.486256, 23.229384; over at 48.972512
 *   from 1980 - 100 = 1880; 433.087675 / 8 = 54.135959 back a minute: full of bench 4 at 30.972512 is the lowest:
 *     1880 - 60 x 30.972512 = 21.649280; back from bench 1: 433.087675; from bench 2, drained from 25.486256 on: 5.486256 x 54.135959 = 297.003743;
 *     751.740698
 *   25.743128, bench 1 empty: 1880 - 60 x 25.743128 + 433.087675 + 0.256872 x 54.135959 = 782.406; 33.486256, bench 2 empty:
 *     751.740698 + 2.513744 x 54.135959 + (33.486256 - 33.229384) x 54.135959 = 901.7307; 41.229384: 1880 - 4 x 464.587675 + 3 x 433.087675 = 1320.912325
 *     + 0.256872 x 54.135959 = 1334.818; the end 1880 - 126 = 1754
 *   Tank: (4 x 433.087675 + 126 + 100) x 1.1 = 2154.18577 L; 2200 / 86.4 m2 = 25.462963 L/m2; out 1980 - 851.740698 = 1128.259302
 *   rounds 751.7 / 126 = 5.97: 1 + 5 = 6; load 433.087675 kg; (433.087675 + 450 x 1.02) / 21.6 = 41.300355 kg/m2
 *   after_drain: 102.972512 min; lowest 1880 - 3 x 31.5 - 464.587675 = 1320.912325; tank (433.087675 + 126 + 100) x 1.1 = 724.996443
 */
import { floodBench } from "../../src/workbooks/starters/floodBench";
import { openStarter, type StarterReader } from "../rig/starterReader";

const BY_HAND = {
  us: {
    bench: [240, 120.132459, 9.20267, 8.622342, 16.622342, 1002.505],
    cycle: 26.622342,
    fill: 8.622342,
    after: [240.79733, 242.924404, 363.056863, 483.189322],
    lowest: 231.462202,
    lowestAt: 27.244684,
    tank: { flood: 120.132459, uptake: 36.810678, needed: 596.574564, out: 288.537798, perArea: 0.625, rounds: 7 },
    load: 8.697106,
    afterDrain: { round: 106.489368, lowest: 363.056863, needed: 200.137451 },
    start: 545,
    dead: 25,
  },
  metric: {
    bench: [21.6, 433.087675, 31.5, 7.743128, 15.743128, 433.087675],
    cycle: 25.743128,
    fill: 7.743128,
    after: [782.406017, 901.730667, 1334.818342, 1754],
    lowest: 751.740698,
    lowestAt: 30.972512,
    tank: { flood: 433.087675, uptake: 126, needed: 2154.18577, out: 1128.259302, perArea: 25.462963, rounds: 6 },
    load: 41.300355,
    afterDrain: { round: 102.972512, lowest: 1320.912325, needed: 724.996443 },
    start: 1980,
    dead: 100,
  },
} as const;

const FIRST_FILL = 7 / 24;
const minutes = (time: unknown): number => ((time as number) - FIRST_FILL) * 24 * 60;
const numbersIn = (values: readonly unknown[]): number[] =>
  values.filter((value): value is number => typeof value === "number");

/** The benches of the schedule, and its last row. */
function round(book: StarterReader) {
  const rows = book.block("Result", "The round").slice(1);
  const last = rows.findIndex(([name]) => name === "lowest tank level");
  return { benches: rows.slice(0, last), lowest: rows[last]! };
}

describe.each(["us", "metric"] as const)("the %s edition agrees with the round worked on paper", (edition) => {
  const byHand = BY_HAND[edition];
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(floodBench, edition);
  });

  test("every bench takes its water, its minutes and its load", () => {
    const headings = [
      "area",
      "standing water",
      "taken up by the pots",
      "to fill",
      "fill and drain",
      "weight of the water",
    ];
    headings.forEach((heading, index) => {
      const column = numbersIn(book.column("Benches", heading));
      expect(column).toHaveLength(4);
      for (const value of column) expect(value / byHand.bench[index]!).toBeCloseTo(1, 6);
    });
    for (const value of numbersIn(book.column("Benches", "load with the wet pots")))
      expect(value).toBeCloseTo(byHand.load, 5);
  });

  test("each bench starts when the one before is full, and is empty after its cycle", () => {
    const { benches } = round(book);
    expect(benches.map(([name]) => name)).toEqual(["Bench 1", "Bench 2", "Bench 3", "Bench 4"]);
    benches.forEach(([, start, full, drain, empty, tank], index) => {
      expect(minutes(start)).toBeCloseTo(index * byHand.fill, 5);
      expect(minutes(full)).toBeCloseTo((index + 1) * byHand.fill, 5);
      expect(minutes(drain)).toBeCloseTo((index + 1) * byHand.fill + 10, 5);
      expect(minutes(empty)).toBeCloseTo(index * byHand.fill + byHand.cycle, 5);
      expect(tank).toBeCloseTo(byHand.after[index]!, 4);
    });
  });

  test("the tank is lowest when it was worked to be", () => {
    const { lowest } = round(book);
    expect(minutes(lowest[1])).toBeCloseTo(byHand.lowestAt, 5);
    expect(lowest[5]).toBeCloseTo(byHand.lowest, 4);
    expect(book.line("Tank", "Lowest level above the minimum")).toBe(lowest[5]);
    expect(book.line("Result", "Lowest water in the tank")).toBeCloseTo(byHand.lowest + byHand.dead, 4);
  });

  test.each([
    ["Largest flood of a bench", byHand.tank.flood],
    ["Benches that hold water at once", 4],
    ["Taken up in a round", byHand.tank.uptake],
    ["Tank needed", byHand.tank.needed],
    ["Really out of the tank at its lowest", byHand.tank.out],
    ["This tank for its benches", byHand.tank.perArea],
    ["Rounds that the tank lasts", byHand.tank.rounds],
    ["Heaviest load, wet pots with it", byHand.load],
  ])("%s: %d", (label, value) => {
    expect(book.line("Tank", label) as number).toBeCloseTo(value, 4);
  });

  test("the course drawn starts full, never leaves the changes' lowest and ends short of what the pots took up", () => {
    const course = numbersIn(book.column("Work", "water in the tank", 1));
    const lowest = byHand.lowest + byHand.dead;
    expect(course).toHaveLength(61);
    expect(course[0]).toBe(byHand.start);
    expect(course[5]).toBeCloseTo(byHand.start - 5 * (edition === "us" ? 15 : 60), 9);
    expect(Math.min(...course)).toBeGreaterThanOrEqual(lowest - 1e-6);
    expect(Math.min(...course)).toBeLessThan(lowest * 1.02);
    expect(course.at(-1)).toBeCloseTo(byHand.start - byHand.tank.uptake, 4);
  });

  test("the strip draws the fill, the soak and the drain of each bench", () => {
    const bars = ["waits", "fills", "soaks", "drains"].map((heading) => book.column("Work", heading) as number[]);
    bars[0]!.slice(0, 4).forEach((wait, index) => expect(wait).toBeCloseTo(index * byHand.fill, 5));
    expect(bars.slice(1).map((bar) => bar.reduce((sum, each) => sum + each, 0) / 4)).toEqual([
      expect.closeTo(byHand.fill, 5),
      10,
      8,
    ]);
  });

  test("after_drain takes longer, from a smaller tank", () => {
    book.setLine("Inputs", "The next bench starts", "after_drain");
    const { benches, lowest } = round(book);
    expect(minutes(benches[3]![4])).toBeCloseTo(byHand.afterDrain.round, 5);
    expect(lowest[5]).toBeCloseTo(byHand.afterDrain.lowest, 4);
    expect(book.line("Tank", "Benches that hold water at once")).toBe(1);
    expect(book.line("Tank", "Tank needed")).toBeCloseTo(byHand.afterDrain.needed, 4);
    expect(book.overall()).toBe("All checks OK");
  });

  test("two at once share the pump: each takes twice as long to fill, and the pairs follow one another", () => {
    book.setLine("Inputs", "Benches filled at once", 2);
    const { benches } = round(book);
    const starts = benches.map(([, start]) => minutes(start));
    [0, 0, 2, 2].forEach((fills, index) => expect(starts[index]).toBeCloseTo(fills * byHand.fill, 5));
    expect(benches[3]![5]).toBeCloseTo(byHand.after[3]!, 4);
    expect(book.check("The schedule agrees with plain arithmetic")).toBe("OK");
  });

  test("all checks are well", () => expect(book.overall()).toBe("All checks OK"));
});

describe("a check looks when its cause is put in", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(floodBench, "us");
  });

  test.each([
    ["The lowest level stays above the pump's minimum", "Water in the tank at the start", 288],
    ["The tank is large enough for the water on benches", "Volume of the tank", 595],
    ["The tank is of usual size, or its reason is given", "Volume of the tank", 1000],
    ["The water at the start leaves room in the tank", "Water in the tank at the start", 560],
    ["Each bench fills and drains within the limit", "Longest fill and drain allowed", 16],
    ["No more benches at once than there are", "Benches filled at once", 5],
  ])("%s", (check, label, content) => {
    expect(book.check(check)).toBe("OK");
    book.setLine("Inputs", label, content);
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test("a reason for an unusual tank is taken", () => {
    book.setLine("Inputs", "Volume of the tank", 1000);
    book.setLine("Inputs", "Why this tank is outside, if it is", "fills from the roof as well");
    expect(book.check("The tank is of usual size, or its reason is given")).toBe("OK");
  });

  test.each([
    ["Every flood is as deep as the trade floods", "depth of the flood", 0.1],
    ["Every bench that has a name stands in the round", "length inside", ""],
    ["Each bench has a place of its own in the round", "flooded as number", 3],
    ["Each bench has a place of its own in the round", "flooded as number", ""],
  ])("%s", (check, heading, content) => {
    book.setInColumn("Benches", heading, 1, content);
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });
});

describe("the round follows what is typed", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(floodBench, "us");
  });

  test("a sick bench is put last", () => {
    book.setInColumn("Benches", "flooded as number", 0, 9);
    expect(round(book).benches.map(([name]) => name)).toEqual(["Bench 2", "Bench 3", "Bench 4", "Bench 1"]);
    expect(book.overall()).toBe("All checks OK");
  });

  test("a fifth bench joins the round, and a bench taken out leaves it", () => {
    const fifth = ["bench", "flooded as number", "length inside", "width inside", "depth of the flood"].concat([
      "pots",
      "pot across its base",
      "a pot before",
      "a pot after",
    ]);
    const values = ["Floor", 5, 40, 6, 1, 480, 4.25, 2.1, 2.26];
    fifth.forEach((heading, index) => book.setInColumn("Benches", heading, 4, values[index]!));
    expect(round(book).benches.map(([name]) => name)).toEqual(["Bench 1", "Bench 2", "Bench 3", "Bench 4", "Floor"]);
    expect(book.line("Result", "The round takes")).toBeCloseTo(4 * 8.622342 + 26.622342, 5);
    book.setInColumn("Benches", "bench", 0, "");
    book.setInColumn("Benches", "flooded as number", 0, "");
    expect(round(book).benches.map(([name]) => name)).toEqual(["Bench 2", "Bench 3", "Bench 4", "Floor"]);
    expect(book.check("The schedule agrees with plain arithmetic")).toBe("OK");
  });

  test("a bench whose length is missing says so, is left out by name, and the others keep their round", () => {
    book.setInColumn("Benches", "length inside", 1, "");
    const rows = book.block("Result", "The round").slice(1);
    expect(rows[1]![0]).toBe("Bench 2");
    expect(rows[1]![6]).toMatch(/^left out: /);
    expect(minutes(rows[2]![1])).toBeCloseTo(8.622342, 5);
    expect(book.line("Result", "The round takes")).toBeCloseTo(2 * 8.622342 + 26.622342, 5);
    expect(book.check("The schedule agrees with plain arithmetic")).toBe("OK");
  });

  test("a start below the pump's minimum is refused in words", () => {
    book.setLine("Inputs", "of it below the pump's minimum", 600);
    expect(book.headless.message("Result!A7")).toMatch(/^FLOOD_SCHEDULE: start_tank is -55; it must be more than 0/);
    expect(book.overall()).toBe("See Checks");
  });
});
