/**
 * The class exercise, worked by hand on paper first for two students (all ranges and answers invented). Their draws were
 * worked apart from this project, by the published 32-bit FNV-1a over "MAPLE", the ID, "REFERENCE ET#1" and so on, and
 * the finisher of MurmurHash3.
 *
 * US. A gallon is 231 in3, so 1 in on 1 ft2 is 144 / 231 = 0.6233766 gal; two emitters; 25 gal/min; Zone 2 runs 20 min.
 *   TH-05, second draw: 0.26 in, Kc 1.25, 3.75 ft2, leaching 0.17, uniformity 0.95, 1.1 gal/h, 2300 plants, measured 0.42
 *     net 0.26 x 1.25 x 3.75 x 0.6233766 = 0.7597403; 1 - 0.17 = 0.83 is less than 0.95: / 0.83 = 0.9153497 gal
 *     60 x 0.9153497 / 2.2 = 24.96408 min; 2300 x 2 x 1.1 / 60 = 84.33333 gal/min; / 25 = 3.37: 4 valves
 *     20 x 0.58 / 0.83 = 13.97590 min
 *     handed in: 0.964 = 0.7597403 / (0.83 x 0.95) = 0.963526, both divided out; 60 x 0.964 / 2.2 = 26.29
 *   TH-02, first draw: 0.26, 1.25, 3.75, 0.17, 0.70, 1.1, 1600, 0.42
 *     net as above; 0.70 is less than 0.83: 0.7597403 / 0.70 = 1.0853433; 29.60027 min; 58.66667, 2.35: 3; 13.97590
 * Metric. 1 mm on 1 m2 is 1 L; two emitters; 100 L/min; 20 min.
 *   TH-05, first draw: 6.25 mm, 1.15, 0.26 m2, 0.13, 0.80, 3.6 L/h, 2000, 0.40
 *     6.25 x 1.15 x 0.26 = 1.86875; 0.80 is less than 0.87: 2.3359375; 60 x 2.3359375 / 7.2 = 19.46615; 240: 2.4: 3 valves
 *     20 x 0.60 / 0.87 = 13.79310
 *     handed in: 2.68 = 1.86875 / (0.87 x 0.80) = 2.684986; 60 x 2.68 / 7.2 = 22.33
 *   TH-02, first draw: 6.5, 1.25, 0.24, 0.17, 0.70, 4.4, 1600, 0.42
 *     6.5 x 1.25 x 0.24 = 1.95; / 0.70 = 2.7857143; 60 x 2.7857143 / 8.8 = 18.99351; 234.66667: 3; 13.97590
 */
import { ITEMS } from "../../src/workbooks/starters/classExercise/figures";
import { classExercise } from "../../src/workbooks/starters/classExercise";
import { openStarter, type StarterReader } from "../rig/starterReader";

const EDITIONS = ["us", "metric"] as const;
type EditionName = (typeof EDITIONS)[number];

const STEPS = ["1 net water", "2 gross water", "3 minutes", "4 zone flow", "5 valves", "6 new minutes"];
const DRAWN = [
  "reference ET",
  "crop coefficient",
  "area of a plant",
  "leaching wanted",
  "uniformity",
  "flow of an emitter",
  "plants",
  "leaching measured",
];

const BY_HAND = {
  us: {
    "TH-05": {
      drawn: [0.26, 1.25, 3.75, 0.17, 0.95, 1.1, 2300, 0.42],
      key: [0.7597403, 0.9153497, 24.96408, 84.33333, 4, 13.9759],
    },
    "TH-02": {
      drawn: [0.26, 1.25, 3.75, 0.17, 0.7, 1.1, 1600, 0.42],
      key: [0.7597403, 1.0853433, 29.60027, 58.66667, 3, 13.9759],
    },
  },
  metric: {
    "TH-05": {
      drawn: [6.25, 1.15, 0.26, 0.13, 0.8, 3.6, 2000, 0.4],
      key: [1.86875, 2.3359375, 19.46615, 240, 3, 13.7931],
    },
    "TH-02": {
      drawn: [6.5, 1.25, 0.24, 0.17, 0.7, 4.4, 1600, 0.42],
      key: [1.95, 2.7857143, 18.99351, 234.66667, 3, 13.9759],
    },
  },
} as const;

/** What each student was made to do wrong, and the code that it must get; all others have six times R. */
const MEANT: Readonly<
  Record<string, readonly [codes: string, mistake: string | Readonly<Record<EditionName, string>>]>
> = {
  "TH-02": ["RRCRRR", "no known mistake"],
  "TH-03": ["RWFRRR", { us: "the leaching fraction was left out", metric: "the uniformity was left out" }],
  "TH-05": ["RWFRRN", "leaching and uniformity were both divided out"],
  "TH-07": ["RRRRRW", "nothing left for the target"],
  "TH-08": ["RRWRRR", "the flow per hour was taken as flow per minute"],
  "TH-10": ["NNNNNN", ""],
  "TH-11": ["RWFRRR", "leaching and uniformity were both divided out"],
  "TH-12": ["RRRRWR", "the valves were not rounded up"],
  "TH-13": ["RRRRRC", "the difference of the two fractions was taken off the time"],
  "TH-14": ["RWFRRR", "the leaching fraction was added, not divided out"],
  "TH-16": ["CFFRRR", "no known mistake"],
  "TH-17": ["RRRWFR", "the flow was left per hour"],
  "TH-18": ["RRRWFR", "the emitters per plant were left out"],
  "TH-19": ["RWFRRR", "nothing was added for leaching or unevenness"],
  "TH-20": ["WFFRRR", "the crop coefficient was left out"],
  "TH-21": ["WFFRRR", { us: "the unit constant was left out", metric: "the decimal point is one place off" }],
  "TH-22": ["RRWRRR", "the emitters per plant were left out"],
  "TH-23": ["RWFRRR", "the uniformity was left out"],
  "TH-24": ["RRRRRW", "the difference of the two fractions was taken off the time"],
  "TH-25": ["RWFRRR", "leaching and uniformity were both divided out"],
  "TH-26": ["RRRRRW", "the ratio was inverted"],
  "TH-27": ["RWFRRR", "the leaching fraction was left out"],
  "TH-28": ["RRRRWN", "the valves were not rounded up"],
  "TH-29": ["RRWRRR", "the flow per hour was taken as flow per minute"],
  "TH-30": ["RRRRRW", "no known mistake"],
};
/** Mistakes that lie within five tolerances in the metric draws only, or are wrong there and close in US. */
const METRIC_CODES: Readonly<Record<string, string>> = { "TH-03": "RCFRRR", "TH-13": "RRRRRW", "TH-14": "RCFRRR" };

function meantCodes(student: string, edition: EditionName): string {
  return (edition === "metric" ? METRIC_CODES[student] : undefined) ?? MEANT[student]?.[0] ?? "RRRRRR";
}

const numbers = (values: readonly unknown[]): readonly number[] => values as readonly number[];

describe.each(EDITIONS)("the %s edition agrees with what was worked on paper", (edition) => {
  let book: StarterReader;
  let students: readonly string[];
  beforeAll(() => {
    book = openStarter(classExercise, edition);
    students = book.column("Work", "student") as readonly string[];
  });
  const rowOf = (sheet: string, headings: readonly string[], student: string): readonly unknown[] =>
    headings.map((heading) => book.column(sheet, heading)[students.indexOf(student)]);

  test.each(["TH-05", "TH-02"] as const)("%s draws these numbers, and this is the key", (student) => {
    const { drawn, key } = BY_HAND[edition][student];
    expect(rowOf("Work", DRAWN, student)).toEqual(drawn);
    rowOf("Work", STEPS, student).forEach((value, at) =>
      expect(Math.abs((value as number) / key[at]! - 1)).toBeLessThan(1e-6),
    );
  });

  test("every draw lies in its range and on its step", () => {
    for (const { label, range } of ITEMS) {
      const [lowest, highest, step] = range[edition];
      for (const value of numbers(book.column("Work", label))) {
        expect(value).toBeGreaterThanOrEqual(lowest);
        expect(value).toBeLessThanOrEqual(highest);
        const steps = (value - lowest) / step;
        expect(steps).toBeCloseTo(Math.round(steps), 6);
      }
    }
  });

  test("every key of every student is the same by the second route", () => {
    STEPS.forEach((step) => {
      const second = numbers(book.column("Work", `${step}, second route`));
      numbers(book.column("Work", step)).forEach((value, at) => expect(value / second[at]!).toBeCloseTo(1, 9));
    });
  });

  test("the codes are those that each answer was made for", () => {
    const codes = STEPS.map((step) => book.column("Result", step));
    const found = students.map((student, at) => [student, codes.map((column) => column[at]).join("")]);
    expect(found).toEqual(students.map((student) => [student, meantCodes(student, edition)]));
    expect(book.line("Record", "Codes that have changed since")).toBe(0);
  });

  test("each diagnosis names the mistake that was made", () => {
    const texts = STEPS.map((step) => book.column("Diagnosis", step));
    students.forEach((student, at) => {
      const own = texts.map((column) => column[at]).filter((text) => text !== "");
      const mistake = MEANT[student]?.[1] ?? "";
      const words = typeof mistake === "string" ? mistake : mistake[edition];
      expect([student, own.length]).toEqual([student, words === "" ? 0 : 1]);
      if (words !== "") expect(own[0]).toContain(words);
    });
  });

  test("points are the sum of what the codes are worth", () => {
    const worth: Readonly<Record<string, number>> = { R: 1, F: 1, C: 0.5, W: 0, N: 0 };
    const points = students.map((student) =>
      [...meantCodes(student, edition)].reduce((sum, code) => sum + worth[code]!, 0),
    );
    expect(book.column("Result", "points")).toEqual(points);
    expect(book.line("Result", "Mean")).toBeCloseTo(points.reduce((sum, each) => sum + each, 0) / 30, 9);
  });

  test("the counts by step are the codes counted, and every mistake made is counted once", () => {
    const counted = (code: string) =>
      STEPS.map((_step, at) => students.filter((student) => meantCodes(student, edition)[at] === code).length);
    [
      ["right", "R"],
      ["right on own", "F"],
      ["close", "C"],
      ["wrong", "W"],
      ["not answered", "N"],
    ].forEach(([heading, code]) => expect(book.column("Result", heading!)).toEqual(counted(code!)));
    const all = numbers(book.column("Result", "answers")).reduce((sum, each) => sum + each, 0);
    expect(all).toBe(Object.values(MEANT).filter(([, mistake]) => mistake !== "").length);
  });

  test("a dot stands at 0 for a right answer, and where flow per hour was taken as per minute at -1.78", () => {
    const up = numbers(book.column("Work", "up"));
    const across = numbers(book.column("Work", "across"));
    expect(up).toHaveLength(180);
    const dot = (student: string, step: number) => students.indexOf(student) * 6 + step - 1;
    expect(up[dot("TH-01", 3)]).toBeCloseTo(0, 2);
    expect(up[dot("TH-08", 3)]).toBeCloseTo(-Math.log10(60), 2);
    expect(up[dot("TH-17", 4)]).toBeCloseTo(Math.log10(60), 2);
    expect(across[dot("TH-08", 3)]).toBeCloseTo(3 + 8 / 60, 9);
    expect([across[dot("TH-10", 1)], up[dot("TH-10", 1)]]).toEqual([0, 0]);
  });

  test("the student's sheet is that of the shown student, and hands in the row that the class has", () => {
    const shown = book.line("Student", "Your student ID") as string;
    const labels = [
      "1 Water that a plant uses in a day",
      "2 Water to give it",
      "3 Minutes a day",
      "4 Flow of the zone",
    ];
    const typed = labels.map((label) => book.line("Student", label));
    expect(typed).toEqual(rowOf("Answers", STEPS.slice(0, 4), shown));
    expect(STEPS.slice(0, 4).map((step) => book.column("Student", step)[0])).toEqual(typed);
    expect(book.column("Student", "6 new minutes")[0]).toBe("");
  });

  test("the student's sheet shows no key", () => {
    const { key } = BY_HAND[edition]["TH-05"];
    const notFound = [key[1], key[2], key[5]];
    const { cells } = book.workbook.sheets.find(({ name }) => name === "Student")!;
    const shown = Object.keys(cells).map((address) => book.headless.value(`Student!${address}`));
    const close = shown.filter(
      (value) => typeof value === "number" && notFound.some((right) => Math.abs(value / right - 1) < 1e-3),
    );
    expect(close).toEqual([]);
  });

  test("all checks are well", () => expect(book.overall()).toBe("All checks OK"));
});
