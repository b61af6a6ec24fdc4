/**
 * The zone planner, worked by hand on paper first (all inputs invented).
 *
 * US. A gallon is 231 in3, so 1 in on 1 ft2 is 144 / 231 = 0.623377 gal. Hot day 0.25 in.
 *   A  36 x 36 in = 9 ft2;    0.25 x 1.0 x 9 x 0.623377    = 1.402597 gal; / 0.85 = 1.650115; / 6 gal/h  x 60 = 16.5011 min
 *   B  21 x 24 in = 3.5 ft2;  0.25 x 1.1 x 3.5 x 0.623377  = 0.6 gal;      / 0.85 = 0.705882; / 2 gal/h  x 60 = 21.1765 min
 *   C  18 x 18 in = 2.25 ft2; 0.25 x 1.0 x 2.25 x 0.623377 = 0.350649 gal; / 0.85 = 0.412529; / 1 gal/h  x 60 = 24.7517 min
 *   D  30 x 30 in = 6.25 ft2; 0.25 x 1.1 x 6.25 x 0.623377 = 1.071429 gal; / 0.80 = 1.339286; / 5 gal/h  x 60 = 16.0714 min
 *   E  12 x 24 in = 2 ft2;    0.25 x 1.2 x 2 x 0.623377    = 0.374026 gal; / 0.85 = 0.440031; / 1 gal/h  x 60 = 26.4018 min
 *   F  8 x 8 in = 0.4444 ft2; net 0.25 x 64 = 16 in3; opening pi x 6.5^2 / 4 = 33.1831 in2: 0.482173 in;
 *      / 1.2 = 0.401811; / 0.75 = 0.535748 in; / 0.45 in/h x 60 = 71.4331 min
 *   Flows, plants x emitters x flow / 60: 60, 80, 33.333, 58.333, 900 x 12 / 12 x 1 / 60 = 15, and 18 gal/min
 *   Supply 120 x 0.9 = 108: A (B would make 140); B (C would make 113); C + D + E = 106.67 (F would make 125); F.
 *   A cycle of three: 5.5004 + 7.0588 + 8.8006 (E) + 23.8110 = 45.1708 min; three: 135.5125; eleven gaps of 2: 157.5125 min
 *   Boom: 20 gal/min on 40 x 30 ft2 a minute = 20 x 231 / 144 / 1200 = 0.0267361 in a pass;
 *      0.15 in: 5.61, 6 passes of 1.5 min; 0.10 in: 3.74, 4 passes of 1 min; empty: one crossing of 0.5 min; 13.5 min in all,
 *      water (9 + 4) x 20 = 260 gal
 *
 * Metric. 1 mm on 1 m2 is 1 L. Hot day 6.4 mm.
 *   A  0.81 m2;   6.4 x 0.81         = 5.184 L; / 0.85 = 6.098824; / 24 L/h x 60 = 15.2471 min
 *   B  0.325 m2;  6.4 x 1.1 x 0.325  = 2.288 L; / 0.85 = 2.691765; / 8 L/h  x 60 = 20.1882 min
 *   C  0.2025 m2; 6.4 x 0.2025       = 1.296 L; / 0.85 = 1.524706; / 4 L/h  x 60 = 22.8706 min
 *   D  0.5625 m2; 6.4 x 1.1 x 0.5625 = 3.96 L;  / 0.80 = 4.95;     / 20 L/h x 60 = 14.85 min
 *   E  0.18 m2;   6.4 x 1.2 x 0.18   = 1.3824 L; / 0.85 = 1.626353; / 4 L/h x 60 = 24.3953 min
 *   F  0.04 m2;   0.256 L on pi x 16.5^2 / 4 = 213.825 cm2: 11.97243 mm; / 1.2 / 0.75 = 13.30270 mm; / 11 x 60 = 72.5602 min
 *   Flows 240, 320, 133.33, 233.33, 60, 70 L/min; supply 450 x 0.9 = 405: A; B; C + D; E + F
 *   A cycle of three: 5.08235 + 6.72941 + 7.62353 + 24.18673 = 43.62202; three: 130.8661; eleven gaps of 2: 152.8661 min
 *   Boom: 75 L/min on 12 x 9 m2 a minute = 0.694444 mm a pass; 4 mm: 5.76, 6 passes of 1.5 min; 2.5 mm: 3.6, 4 of 1 min;
 *      empty 0.5 min; water 13 x 75 = 975 L
 */
import { zonePlanner } from "../../src/workbooks/starters/zonePlanner";
import { openStarter, type StarterReader } from "../rig/starterReader";

const BY_HAND = {
  us: {
    areas: [9, 3.5, 2.25, 6.25, "", ""],
    minutes: [16.5011, 21.1765, 24.7517, 16.0714, "", "", 26.4018, "", 71.4331, ""],
    flows: [60, 80, 100 / 3, 175 / 3, "", "", 15, "", 18, ""],
    sets: [["Yard A"], ["Yard B"], ["Yard C", "Yard D", "Yard E"], ["Yard F"]],
    round: 157.5125,
    most: 320 / 3,
    chain: [3.5, 0.6, 0.705882, 21.1765],
    boom: [6, 9, 180, 4, 4, 80, 0, 0.5, 0, 10, 13.5, 260],
  },
  metric: {
    areas: [0.81, 0.325, 0.2025, 0.5625, "", ""],
    minutes: [15.2471, 20.1882, 22.8706, 14.85, "", "", 24.3953, "", 72.5602, ""],
    flows: [240, 320, 400 / 3, 700 / 3, "", "", 60, "", 70, ""],
    sets: [["Yard A"], ["Yard B"], ["Yard C", "Yard D"], ["Yard E", "Yard F"]],
    round: 152.8661,
    most: 1100 / 3,
    chain: [0.325, 2.288, 2.691765, 20.1882],
    boom: [6, 9, 675, 4, 4, 300, 0, 0.5, 0, 10, 13.5, 975],
  },
} as const;

describe.each(["us", "metric"] as const)("the %s edition agrees with the day worked on paper", (edition) => {
  const byHand = BY_HAND[edition];
  let book: StarterReader;
  beforeAll(() => {
    book = openStarter(zonePlanner, edition);
  });

  const agrees = (found: readonly unknown[], expected: readonly unknown[], digits = 4): void => {
    expect(found.length).toBe(expected.length);
    expected.forEach((value, index) => {
      if (typeof value === "number") expect(found[index] as number).toBeCloseTo(value, digits);
      else expect(found[index] ?? "").toBe(value);
    });
  };

  test("areas of the plants on their own emitters", () => agrees(book.column("Work", "area of a plant"), byHand.areas));
  test("minutes of every zone", () => agrees(book.column("Work", "minutes a day", 3), byHand.minutes));
  test("flow of every zone", () => agrees(book.column("Work", "flow of the zone", 3), byHand.flows, 9));
  test("Yard B step by step", () => {
    const labels = ["Area of a plant", "Water that a plant uses", "Water to give it", "Minutes a day"];
    agrees(
      labels.map((label) => book.line("Work", label)),
      byHand.chain,
    );
  });
  test("passes, minutes and water of the boom", () => {
    const rows = book.block("Result", "Boom in House 1").slice(1, 5);
    agrees(
      rows.flatMap((row) => row.slice(1)),
      byHand.boom,
      9,
    );
  });

  test("zones whose flows fit the supply start together, in three cycles", () => {
    const runs = book.block("Result", "When each zone runs").slice(1, 19);
    const starts = [...new Set(runs.map(([, start]) => start))];
    expect(starts).toHaveLength(12);
    const sets = starts.map((start) => runs.filter((run) => run[1] === start).map(([zone]) => zone));
    expect(sets).toEqual([...byHand.sets, ...byHand.sets, ...byHand.sets]);
  });

  test("the round ends when the sum of its sets and gaps says", () => {
    const [, start, stop, flow] = book
      .block("Result", "When each zone runs")
      .find(([zone]) => zone === "end of round") as [string, number, number, number];
    expect((stop - start) * 1440).toBeCloseTo(byHand.round, 3);
    expect(flow).toBeCloseTo(byHand.most, 9);
  });

  test("the strip of the day draws every run and nothing else", () => {
    const runs = book.column("Work", "runs") as number[];
    expect(runs.filter((minutes) => minutes > 0)).toHaveLength(18);
    const perCycle = book.column("Work", "minutes a day", 3).map((minutes) => Number(minutes) / 3);
    expect(runs.reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(
      3 * perCycle.reduce((sum, minutes) => sum + minutes, 0),
      6,
    );
  });

  test("all checks are well", () => expect(book.overall()).toBe("All checks OK"));
});

describe("a check looks when its cause is put in", () => {
  let book: StarterReader;
  beforeEach(() => {
    book = openStarter(zonePlanner, "us");
  });

  test.each([
    ["Every zone that has a name has its minutes", "uniformity", 1, ""],
    ["No zone is watered on emitters that are too uneven", "uniformity", 2, 0.5],
    ["Emitter flows are what the trade sees", "flow of an emitter", 0, 0.1],
    ["No zone asks for more than the supply gives", "plants", 1, 20_000],
  ])("%s", (check, heading, row, content) => {
    expect(book.check(check)).toBe("OK");
    book.setInColumn("Inputs", heading, row, content);
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test("the round is over in time", () => {
    book.setLine("Inputs", "All must be over by", 7 / 24);
    expect(book.check("The round is over in time")).toBe("LOOK");
  });

  test("every cycle is long enough for the far end", () => {
    book.setInColumn("Inputs", "line to fill", 0, 2500);
    expect(book.check("Every cycle is long enough for the far end")).toBe("LOOK");
  });

  test("a missing number is said at the minutes, and the other zones keep theirs", () => {
    book.setInColumn("Inputs", "uniformity", 1, "");
    const minutes = book.column("Work", "minutes a day");
    expect(minutes[0]).toBeCloseTo(16.5011, 4);
    expect(book.headless.message("Work!C10")).toBe(
      "RUN_MINUTES_FROM_ET: uniformity is blank or 0; it must be more than 0, up to 1 (fraction)",
    );
    expect(book.check("Every zone stands in the day")).toBe("LOOK");
  });
});
