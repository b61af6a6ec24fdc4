import type { BlockRef, SheetBuilder, StarterBuilder, TableColumn } from "../../kit";
import { STUDENTS } from "./classList";
import type { ExerciseInputs } from "./inputs";
import { STEPS, type Numbers, type StepKey } from "./steps";
import { beside, numbersOf, unlessBlank, type Draws, type Keys } from "./work";

/** Fewer tolerances than this from the right answer, and a wrong method cannot be told from it. */
const LEAST_TOLERANCES = 3;

interface WrongMethod {
  readonly heading: string;
  readonly step: StepKey;
  /** In built-in functions, on the student's numbers and the key. */
  readonly gives: (numbers: Numbers, key: Readonly<Record<StepKey, string>>) => string;
  /** Not an error where the unit constant is 1. */
  readonly onlyUs?: true;
}

const WRONG_METHODS: readonly WrongMethod[] = [
  { heading: "1 Kc left out", step: "net", gives: ({ kc }, { net }) => `${net} / ${kc}` },
  {
    heading: "1 unit constant left out",
    step: "net",
    gives: ({ depth }, { net }) => `${net} / ${depth}`,
    onlyUs: true,
  },
  {
    heading: "2 the loss that counts left out",
    step: "gross",
    gives: ({ leaching, uniformity }, { net }) => `${net} / MAX(1 - ${leaching}, ${uniformity})`,
  },
  {
    heading: "2 both divided out",
    step: "gross",
    gives: ({ leaching, uniformity }, { net }) => `${net} / ((1 - ${leaching}) * ${uniformity})`,
  },
  {
    heading: "2 one divided out twice",
    step: "gross",
    gives: ({ leaching, uniformity }, { net }) => `${net} / MIN(1 - ${leaching}, ${uniformity}) ^ 2`,
  },
  { heading: "2 leaching added", step: "gross", gives: ({ leaching }, { net }) => `${net} * (1 + ${leaching})` },
  { heading: "2 nothing added", step: "gross", gives: (_numbers, { net }) => net },
  { heading: "3 per hour as per minute", step: "minutes", gives: (_numbers, { minutes }) => `${minutes} / 60` },
  {
    heading: "3 emitters left out",
    step: "minutes",
    gives: ({ emitters }, { minutes }) => `${minutes} * ${emitters}`,
  },
  { heading: "4 left per hour", step: "zoneFlow", gives: (_numbers, { zoneFlow }) => `${zoneFlow} * 60` },
  {
    heading: "5 to the nearest valve",
    step: "valves",
    gives: ({ supply }, { zoneFlow }) => `ROUND(${zoneFlow} / ${supply}, 0)`,
  },
  {
    heading: "6 difference taken off",
    step: "corrected",
    gives: ({ minutesNow, measured, leaching }) => `${minutesNow} * (1 - (${measured} - ${leaching}))`,
  },
  {
    heading: "6 nothing left for the target",
    step: "corrected",
    gives: ({ minutesNow, measured }) => `${minutesNow} * (1 - ${measured})`,
  },
];

export interface Apart {
  readonly draw: BlockRef;
}

/** How many tolerances each wrong method lies from the right answer, and whether the student must draw again. */
export function fillApart(
  kit: StarterBuilder,
  work: SheetBuilder,
  given: ExerciseInputs,
  draws: Draws,
  keys: Keys,
): Apart {
  const methods = WRONG_METHODS.filter(({ onlyUs }) => !onlyUs || kit.edition === "us");
  const keyOf = (row: number) =>
    Object.fromEntries(STEPS.map(({ key }) => [key, keys.column[key].cell(row).at])) as Record<StepKey, string>;
  work.skip().note("Apart", "heading").note("How many tolerances each wrong method lies from the key.");
  const columns = work.table({
    rows: STUDENTS,
    columns: [
      {
        key: "id",
        heading: "student",
        formula: (_cell, row) => unlessBlank(draws.ids.cell(row).at, draws.ids.cell(row).at),
      },
      {
        key: "draw",
        heading: "draw",
        style: "result",
        formula: (cell, row) => {
          const nearest = `MIN(${methods.map(({ heading }) => cell(heading)).join(", ")})`;
          const twice = `${draws.sameNumbers.cell(row).at} > 1`;
          return unlessBlank(cell("id"), `IF(OR(${nearest} < ${LEAST_TOLERANCES}, ${twice}), "redraw", "ok")`);
        },
        how: "redraw where a wrong method lies within 3 tolerances of the key, or where another student has the same eight numbers",
      },
      {
        key: "next",
        heading: "counter to try",
        formula: (cell, row) =>
          unlessBlank(cell("id"), `${beside(given.counters, row)} + IF(${cell("draw")} = "redraw", 1, 0)`),
        how: "to be copied, and pasted as values over the counters on Inputs, until no row says redraw",
      },
      ...methods.map(({ heading, step, gives }): TableColumn => ({
        key: heading,
        heading,
        unit: "tolerances",
        format: "decimals1",
        formula: (cell, row) => {
          const key = keyOf(row);
          const numbers = numbersOf(given, draws, row, { net: key.net, gross: key.gross, zoneFlow: key.zoneFlow });
          const { relative, absolute } = given.tolerance[step];
          const tolerance = `MAX(${relative} * ${key[step]}, ${absolute})`;
          return unlessBlank(cell("id"), `ABS(${gives(numbers, key)} - ${key[step]}) / ${tolerance}`);
        },
      })),
    ],
  }).column;
  work.note(
    "Left out or used in place of the right loss, the smaller loss gives the right number: that is no mistake.",
  );
  return { draw: columns["draw"]! };
}
