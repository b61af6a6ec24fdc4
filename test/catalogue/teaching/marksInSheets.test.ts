/** Marks and verdicts against spreadsheets that judge the same answers with ABS, MAX, ROUND and IF. */
import fc from "fast-check";
import { catalogue } from "../../../src/functions/catalogue";
import { evaluate, usualOf } from "../../../src/kernel";
import type { ArgumentInput } from "../../../src/kernel";
import { entryOf } from "../../rig/calls";
import { isClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";
import { ENGINES, numberAt, type PlainCell } from "../../rig/plainSheet";
import { SEED } from "../../rig/validInputs";

const told = (name: string, ...args: ArgumentInput[]): string => evaluate(entryOf(name), args) as string;
const sampled = <T>(from: fc.Arbitrary<T>, count: number): T[] =>
  fc.sample(fc.noBias(from), { seed: SEED, numRuns: count });
const GRID = 100_000;
/** Evenly from low to high, and between the ends of the grid: spreadsheets compare to fifteen digits. */
const size = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: GRID - 1 }).map((at) => min + ((max - min) * (at + 0.5)) / GRID);

/** An answer as it is typed: a whole number and its decimals, without a zero at the end of them. */
const typedNear = (correct: number, off: number, decimals: number): { digits: number; decimals: number } => {
  let digits = Math.round(correct * (1 + off) * 10 ** decimals);
  let places = decimals;
  for (; places > 0 && digits % 10 === 0; places -= 1) digits /= 10;
  return { digits, decimals: places };
};

const answers = fc.record({
  correct: fc.oneof(size(0.01, 2000), size(-500, -0.01), fc.constant(0)),
  off: fc.oneof(size(-0.15, 0.15), size(-0.03, 0.03), size(-3, 3), fc.constantFrom(0, -1)),
  decimals: fc.integer({ min: 0, max: 6 }),
  relative: fc.constantFrom(0, 0.001, 0.01, 0.02, 0.05),
  absolute: fc.constantFrom(0, 0, 0, 0.05, 1),
});

describe.each(ENGINES)("a column of answers marked in %s", (engine, worked) => {
  describe(against("CHECK_ANSWER", engine), () => {
    test("right within the wider tolerance or rounded to two digits or more, close within five, wrong beyond", () => {
      const all = sampled(answers, 1200).map((each) => ({
        ...each,
        ...typedNear(each.correct, each.off, each.decimals),
      }));
      // A digits typed, B decimals, C answer, D key, E and F tolerances, G distance, H tolerance, I verdict.
      const rows = all.map(({ digits, decimals, correct, relative, absolute }, index): PlainCell[] => {
        const row = index + 1;
        const isRounded = `AND(LEN(ABS(A${row}))>1,ROUND(D${row},B${row})=C${row})`;
        return [
          digits,
          decimals,
          `=A${row}/10^B${row}`,
          correct,
          relative,
          absolute,
          `=ABS(C${row}-D${row})`,
          `=MAX(E${row}*ABS(D${row}),F${row})`,
          `=IF(AND(C${row}=0,D${row}<>0),"not answered",IF(OR(G${row}<=H${row},${isRounded}),"right",IF(G${row}<=5*H${row},"close","wrong")))`,
        ];
      });
      const values = worked(rows);
      const marks = all.map(({ digits, decimals, correct, relative, absolute }) =>
        told("CHECK_ANSWER", digits / 10 ** decimals, correct, relative, absolute),
      );
      expect(marks).toEqual(values.map((row) => row[8]));
      for (const mark of ["right", "close", "wrong", "not answered"]) {
        expect(marks.filter((each) => each === mark).length).toBeGreaterThan(15);
      }
    });
  });

  describe(against("CHECK_RANGE", engine), () => {
    const ranges = catalogue.flatMap((entry) =>
      ["", ...Object.keys(entry.params)].flatMap((argument) => {
        const usual = usualOf(entry, argument);
        return usual === undefined ? [] : [{ name: entry.name, argument, usual }];
      }),
    );
    const place = size(-0.6, 1.6);

    test("low, ok or high by two comparisons, in each system and in either, for every range there is", () => {
      const places = sampled(place, 4 * ranges.length);
      const calls = ranges.flatMap(({ name, argument, usual }, index) =>
        (["us", "metric", ""] as const).flatMap((system) =>
          places.slice(4 * index, 4 * index + 4).map((at) => {
            const [low, high] = usual[system === "" ? "us" : system];
            return { name, argument, system, usual, value: low + at * (high - low) };
          }),
        ),
      );
      // A value, B and C the US range, D and E the metric one, F and G the verdicts, H the one asked for.
      const rows = calls.map(({ value, usual, system }, index): PlainCell[] => {
        const row = index + 1;
        const verdict = (low: string, high: string): string =>
          `=IF(A${row}<${low}${row},"low",IF(A${row}>${high}${row},"high","ok"))`;
        const either = `=IF(OR(F${row}="ok",G${row}="ok"),"ok",IF(AND(F${row}="low",G${row}="low"),"low","high"))`;
        const asked = { us: `=F${row}`, metric: `=G${row}`, "": either }[system];
        return [value, ...usual.us, ...usual.metric, verdict("B", "C"), verdict("D", "E"), asked];
      });
      const values = worked(rows);
      const verdicts = calls.map(({ value, name, argument, system }) => {
        const text = told("CHECK_RANGE", value, name, argument, system === "" ? null : system);
        return /^(ok$|low(?=: )|high(?=: ))/.exec(text)?.[0] ?? text;
      });
      expect(verdicts).toEqual(values.map((row) => row[7]));
      for (const verdict of ["low", "ok", "high"]) {
        expect(verdicts.filter((each) => each === verdict).length).toBeGreaterThan(100);
      }
    });
  });
});

interface Exercise {
  readonly name: string;
  /** Numbers into A, B, C ... */
  readonly inputs: fc.Arbitrary<readonly number[]>;
  /** Arguments after the numbers. */
  readonly rest?: readonly ArgumentInput[];
  readonly right: string;
  /** Words that must be in the verdict, and the mistaken arithmetic. */
  readonly mistakes: readonly (readonly [words: RegExp, formula: string])[];
}

const PART = size(0.05, 0.6);

/** Plain formulas and the mistaken ones, written from the words and not from the code. */
const EXERCISES: readonly Exercise[] = [
  {
    name: "RUN_MINUTES",
    inputs: fc.tuple(size(0.05, 3), size(0.5, 20), fc.integer({ min: 2, max: 6 })),
    right: "60*A/(B*C)",
    mistakes: [
      [/per hour .*per minute/, "A/(B*C)"],
      [/emitters per plant were left out/, "60*A/B"],
      [/emitters per plant were multiplied in/, "60*A/B*C"],
    ],
  },
  {
    name: "WATER_HELD",
    inputs: fc.tuple(size(0.5, 60), PART),
    right: "A*B",
    mistakes: [
      [/not water, solids and air/, "A*(1-B)"],
      [/divided by the capacity/, "A/B"],
    ],
  },
  {
    name: "RUN_MINUTES_FROM_LEACHING",
    inputs: fc.tuple(size(5, 90), size(0.4, 0.65), size(0.12, 0.25)),
    right: "A*(1-B)/(1-C)",
    mistakes: [
      [/difference of the two fractions/, "A*(1-(B-C))"],
      [/ratio was inverted/, "A*(1-C)/(1-B)"],
      [/whole leaching was taken off/, "A*(1-B)"],
      [/scaled by the leaching fractions/, "A*C/B"],
    ],
  },
  {
    name: "TANK_DILUTION",
    inputs: fc.tuple(size(20, 3000), size(2, 3), size(1, 1.8), size(0.1, 0.7)),
    right: "A*(B-C)/(C-D)",
    mistakes: [
      [/EC of the water was left out/, "A*(B-C)/C"],
      [/let out and replace/, "A*(B-C)/(B-D)"],
      [/whole tank afterwards/, "A+A*(B-C)/(C-D)"],
    ],
  },
  {
    name: "TANK_DOSE",
    inputs: fc.tuple(size(20, 3000), size(0.3, 1), size(1.3, 2.5), size(0.3, 0.8), fc.integer({ min: 50, max: 300 })),
    right: "A*(C-B)/(D*E)",
    mistakes: [
      [/injector ratio was left out/, "A*(C-B)/D"],
      [/EC wanted was used/, "A*C/(D*E)"],
      [/multiplied by the rise/, "A*(C-B)*D/E"],
    ],
  },
  {
    name: "AIR_SPACE",
    inputs: fc.tuple(size(0.1, 0.4), size(1, 3)),
    right: "A/B",
    mistakes: [
      [/ratio was inverted/, "B/A"],
      [/what did not drain was taken/, "1-A/B"],
      [/divided by what did not drain/, "A/(B-A)"],
    ],
  },
  {
    name: "TARGET_WEIGHT",
    inputs: fc.tuple(size(6, 14), size(2, 4), size(0.62, 0.8)),
    rest: ["water"],
    right: "B+C*(A-B)",
    mistakes: [
      [/other basis/, "C*A"],
      [/part used was taken/, "B+(1-C)*(A-B)"],
      [/dry weight was not added/, "C*(A-B)"],
    ],
  },
  {
    name: "CAPTURE_FACTOR",
    inputs: fc.tuple(size(600, 1500), size(200, 550)),
    right: "A/B",
    mistakes: [
      [/ratio was inverted/, "B/A"],
      [/difference was divided/, "(A-B)/B"],
    ],
  },
  {
    name: "DAYS_OF_STORAGE",
    inputs: fc.tuple(size(1000, 9000), size(200, 400), size(30, 90), size(50, 150)),
    right: "A/(B+C-D)",
    mistakes: [
      [/evaporation and seepage were left out/, "A/(B-D)"],
      [/what comes in was left out/, "A/(B+C)"],
      [/added to the use/, "A/(B+C+D)"],
    ],
  },
  {
    name: "RECIRCULATION_TANK",
    inputs: fc.tuple(size(20, 300), fc.integer({ min: 2, max: 8 }), size(30, 200), size(20, 100), size(0.1, 0.25)),
    right: "(A*B+C+D)*(1+E)",
    mistakes: [
      [/one bench/, "(A+C+D)*(1+E)"],
      [/pots take up was left out/, "(A*B+D)*(1+E)"],
      [/intake was counted as usable/, "(A*B+C)*(1+E)"],
      [/freeboard was left out/, "A*B+C+D"],
    ],
  },
  {
    name: "INJECTOR_RATIO",
    inputs: fc.tuple(size(20, 150), size(4, 9)),
    rest: [true],
    right: "A/B",
    mistakes: [
      [/stock was counted the other way/, "(A+B)/B"],
      [/ratio was inverted/, "B/A"],
      [/in percent/, "100*B/A"],
    ],
  },
  {
    name: "IRRIGATION_INTERVAL",
    inputs: fc.tuple(size(0.5, 5), size(0.2, 0.45), size(0.1, 0.6)),
    right: "A*B/C",
    mistakes: [
      [/depletion fraction was left out/, "A/C"],
      [/part left was taken/, "A*(1-B)/C"],
      [/available water was divided by the depletion/, "A/B/C"],
    ],
  },
  {
    name: "LEACHING_FRACTION",
    inputs: fc.tuple(size(10, 60), size(90, 300)),
    right: "A/B",
    mistakes: [
      [/divided by the water kept/, "A/(B-A)"],
      [/part kept was taken/, "1-A/B"],
      [/ratio was inverted/, "B/A"],
    ],
  },
];

/** An answer as a student types it; on a single digit nothing is claimed, by rule. */
const typed = (answer: number): number => Number(answer.toPrecision(5));
const isOneDigit = (answer: number): boolean =>
  String(Math.abs(typed(answer)))
    .split("e")[0]
    ?.replace(".", "")
    .replace(/^0+/, "").length === 1;

const STUDENTS = 40;
const TOLERANCE = 0.02;
const APART = 3 * TOLERANCE;

/** A formula of the columns A to E in a row of the sheet. */
const inRow = (formula: string, row: number): string =>
  `=${formula.replace(/\b[A-E]\b/g, (column) => `${column}${row}`)}`;

/** What comes out of each exercise, right and mistaken, for each student. */
const students = EXERCISES.flatMap((exercise) =>
  sampled(exercise.inputs, STUDENTS).map((inputs) => ({
    exercise,
    inputs: inputs.map((n) => Number(n.toPrecision(4))),
  })),
);
const MOST_INPUTS = 5;

describe.each(ENGINES)("a class worked in %s, right and with its slips", (engine, worked) => {
  const rows = students.map(({ exercise, inputs }, index): PlainCell[] => {
    const blanks = new Array<null>(MOST_INPUTS - inputs.length).fill(null);
    const formulas = [exercise.right, ...exercise.mistakes.map(([, formula]) => formula)];
    return [...inputs, ...blanks, ...formulas.map((formula) => inRow(formula, index + 1))];
  });
  const values = worked(rows);
  const rightOf = (row: number): number => numberAt(values, row, MOST_INPUTS);
  const slipOf = (row: number, slip: number): number => numberAt(values, row, MOST_INPUTS + 1 + slip);

  describe(against("DIAGNOSE_ANSWER", engine), () => {
    test.each(EXERCISES.map((exercise) => [exercise.name, exercise] as const))(
      "%s: the sheet's right number is right, and each mistaken one is named as that mistake",
      (name, exercise) => {
        const named = exercise.mistakes.map(() => 0);
        students.forEach(({ exercise: its, inputs }, row) => {
          if (its !== exercise) return;
          const diagnosis = (answer: number): string =>
            told("DIAGNOSE_ANSWER", typed(answer), name, TOLERANCE, 2, ...inputs, ...(its.rest ?? []));
          expect(diagnosis(rightOf(row))).toBe("right");
          exercise.mistakes.forEach(([words], slip) => {
            const gives = slipOf(row, slip);
            if (isClose(gives, rightOf(row), APART) || isOneDigit(gives)) return;
            named[slip] = (named[slip] as number) + 1;
            expect(diagnosis(gives)).toMatch(/^wrong: /);
            expect(diagnosis(gives)).toMatch(words);
          });
        });
        for (const times of named) expect(times).toBeGreaterThan(STUDENTS / 2);
      },
    );

    test("RUN_MINUTES in the wrong unit, or off by a place: the general slips are named too", () => {
      const general = [
        [3.785411784, /gallons and litres/],
        [0.1, /decimal point is one place off/],
        [-1, /sign was turned/],
      ] as const;
      students.forEach(({ exercise, inputs }, row) => {
        if (exercise.name !== "RUN_MINUTES") return;
        for (const [factor, words] of general) {
          const gives = factor * rightOf(row);
          // One of the function's own slips may give the same number; it comes first.
          if (isOneDigit(gives) || exercise.mistakes.some((_slip, at) => isClose(gives, slipOf(row, at), APART)))
            continue;
          expect(told("DIAGNOSE_ANSWER", typed(gives), "RUN_MINUTES", TOLERANCE, 2, ...inputs)).toMatch(words);
        }
      });
    });
  });

  describe(against("COMMON_MISTAKES", engine), () => {
    test.each(EXERCISES.map((exercise) => [exercise.name, exercise] as const))(
      "%s: its answer beside each mistake is the sheet's, and so is its ratio to the right one",
      (name, exercise) => {
        students.forEach(({ exercise: its, inputs }, row) => {
          if (its !== exercise) return;
          const table = evaluate(entryOf("COMMON_MISTAKES"), [name, ...inputs, ...(its.rest ?? [])]);
          const listed = (table as readonly (readonly [string, number, number])[]).slice(1);
          exercise.mistakes.forEach(([words], slip) => {
            const found = listed.filter(([text]) => new RegExp(words, "i").test(text));
            expect(found).toHaveLength(1);
            const [[, gives, ratio]] = found as [readonly [string, number, number]];
            expect(isClose(gives, slipOf(row, slip), 1e-9)).toBe(true);
            expect(isClose(ratio, slipOf(row, slip) / rightOf(row), 1e-9)).toBe(true);
          });
        });
      },
    );
  });
});
