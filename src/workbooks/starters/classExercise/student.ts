import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { plainMark } from "../shared/plainMark";
import { CLASS, IDS } from "./classList";
import { ITEMS, SHOWN, type ItemKey } from "./figures";
import type { ExerciseInputs } from "./inputs";
import { diagnosis, rightAnswer, STEPS, working, type Numbers, type Step, type StepKey } from "./steps";

export interface StudentCells {
  readonly id: CellRef;
  readonly numbers: Readonly<Record<ItemKey, CellRef>>;
  readonly answers: Readonly<Record<StepKey, CellRef>>;
}

/** Where the class's own draws stand, for the plain twin. */
export interface Drawn {
  readonly ids: BlockRef;
  readonly column: Readonly<Record<ItemKey, BlockRef>>;
}

/** One student's sheet. It leans on Inputs only, so that both can be handed out without the rest. */
export function fillStudent(
  kit: StarterBuilder,
  student: SheetBuilder,
  given: ExerciseInputs,
  drawn: Drawn,
): StudentCells {
  student.block("Your exercise", "");
  student.note("Zone 1: from the plant to the valves. Zone 2: its minutes after a leaching test.");
  const id = student.input({
    label: "Your student ID",
    input: SHOWN,
    limits: { list: given.ids, message: "Your student ID must be one of the class list on the sheet Inputs." },
    how: "choose it: these are your numbers, and no one else has them",
  });
  const numbers = numberLines(kit, student, given, drawn, id);
  student.note("House rule for step 2: the one loss that asks for more water counts.");
  const answers = answerLines(kit, student, given, numbers);
  student
    .skip()
    .note(
      "Type a number in the unit beside the cell, with three digits, and go on with it: each step is judged on your own number before it.",
    );
  handIn(kit, student, id, answers);
  return { id, numbers, answers };
}

const ZONES: Partial<Record<ItemKey, string>> = { measured: " in Zone 2", leaching: ", in both zones" };

function numberLines(
  kit: StarterBuilder,
  student: SheetBuilder,
  given: ExerciseInputs,
  drawn: Drawn,
  id: CellRef,
): Record<ItemKey, CellRef> {
  student.block("Your numbers", "");
  const counter = student.formula({
    label: "Draw",
    unit: "count",
    formula: `=INDEX(${given.counters}, MATCH(${id.here}, ${given.ids}, 0))`,
    format: "decimals0",
    style: "note",
  });
  const lines = ITEMS.map(({ key, label, unit }) => {
    const { label: name, lowest, highest, step } = given.item[key];
    const cell = student.formula({
      label: capital(label) + (ZONES[key] ?? ""),
      unit: unit[kit.edition],
      formula: `=CANYARD.EXERCISE_NUMBER(seed, ${id.here}, ${name} & "#" & ${counter.here}, ${lowest}, ${highest}, ${step})`,
      plain: `=INDEX(${drawn.column[key]}, MATCH(${id.here}, ${drawn.ids}, 0))`,
    });
    return [key, cell] as const;
  });
  const copies: readonly (readonly [string, string, CellRef])[] = [
    ["Emitters for a plant", "count", given.emitters],
    ["Flow to plan with", kit.pick("gal/min", "L/min"), given.supply],
    ["Minutes that Zone 2 runs now", "min", given.minutesNow],
    [kit.pick("1 in of water on 1 ft2", "1 mm of water on 1 m2"), kit.pick("gal", "L"), given.depth],
  ];
  for (const [label, unit, from] of copies) {
    const isDepth = from === given.depth && kit.edition === "us";
    student.formula({ label, unit, formula: `=${from}`, format: isDepth ? "decimals4" : "decimals0" });
  }
  return Object.fromEntries(lines) as Record<ItemKey, CellRef>;
}

function answerLines(
  kit: StarterBuilder,
  student: SheetBuilder,
  given: ExerciseInputs,
  numbers: Readonly<Record<ItemKey, CellRef>>,
): Record<StepKey, CellRef> {
  student.block("Your answers", "mark");
  student.put(`F${student.next - 1}`, { value: "what lies behind", style: "heading" });
  const handed = CLASS[kit.edition].answers[IDS.indexOf(SHOWN)]!;
  const cells = STEPS.map((step, at) => {
    const cell = student.input({
      label: step.label,
      unit: step.unit(kit.edition),
      input: handed[at] ?? "",
      limits: { least: 0, most: 1_000_000, message: "Type a number without its unit." },
    });
    return [step.key, cell] as const;
  });
  const answers = Object.fromEntries(cells) as Record<StepKey, CellRef>;
  const own = ownNumbers(given, numbers, answers);
  for (const step of STEPS) feedback(student, step, given, answers, own);
  return answers;
}

/** Each step goes on with the student's own number of the step before. */
function ownNumbers(
  given: ExerciseInputs,
  numbers: Readonly<Record<ItemKey, CellRef>>,
  answers: Readonly<Record<StepKey, CellRef>>,
): Numbers {
  const { emitters, supply, minutesNow, depth } = given;
  const { net, gross, zoneFlow } = answers;
  const cells = { ...numbers, emitters, supply, minutesNow, depth, net, gross, zoneFlow };
  return Object.fromEntries(Object.entries(cells).map(([key, cell]) => [key, String(cell)])) as unknown as Numbers;
}

function feedback(
  student: SheetBuilder,
  step: Step,
  given: ExerciseInputs,
  answers: Readonly<Record<StepKey, CellRef>>,
  own: Numbers,
): void {
  const answer = answers[step.key].here;
  const before = step.goesOnWith && answers[step.goesOnWith].here;
  const { relative, absolute } = given.tolerance[step.key];
  const waits = (otherwise: string): string =>
    before ? `IF(OR(${before} = "", ${before} = 0), "first the step before", ${otherwise})` : otherwise;
  const onceTyped = (words: string, otherwise: string): string =>
    `=IF(${answer} = "", "${words}", ${waits(otherwise)})`;
  const row = answers[step.key].at.slice(1);
  student.put(`E${row}`, {
    formula: onceTyped(
      "not answered",
      `CANYARD.CHECK_ANSWER(${answer}, ${rightAnswer(step, own)}, ${relative}, ${absolute})`,
    ),
    plain: onceTyped("not answered", plainMark(answer, `(${step.plain(own)})`, String(relative), String(absolute))),
    style: "result",
    wraps: true,
  });
  student.put(`F${row}`, {
    formula: onceTyped("", diagnosis(step, answer, String(relative), "level", own)),
    ...(step.ours !== null && { plain: "" }),
    style: "note",
    wraps: true,
  });
}

/** What the instructor copies, in the order of the sheet Answers. */
function handIn(
  kit: StarterBuilder,
  student: SheetBuilder,
  id: CellRef,
  answers: Readonly<Record<StepKey, CellRef>>,
): void {
  student.skip().note("The row to hand in", "heading").note("Your instructor copies it, and pastes it as values.");
  student.table({
    rows: 1,
    columns: [
      { key: "id", heading: "student ID", formula: () => `=${id.here}` },
      ...STEPS.map(({ key, short, unit, format }) => ({
        key,
        heading: short,
        unit: unit(kit.edition),
        format: format[kit.edition],
        formula: () => `=IF(${answers[key].here} = "", "", ${answers[key].here})`,
      })),
    ],
  });
}

const WORKING_ROWS = 9;

/** The working of one step, on a sheet of its own because its words are long. */
export function fillWorking(
  kit: StarterBuilder,
  sheet: SheetBuilder,
  given: ExerciseInputs,
  { numbers, answers }: StudentCells,
): BlockRef {
  sheet.block("After the attempt", "");
  kit.name(
    "show",
    sheet.input({ label: "Show the working", unit: "yes, no", input: "yes", limits: { words: ["yes", "no"] } }),
  );
  const step = sheet.input({
    label: "Of step",
    unit: "1 to 6",
    input: 1,
    limits: { least: 1, most: STEPS.length, whole: true },
  });
  const own = ownNumbers(given, numbers, answers);
  const calls = STEPS.map((each) => working(each, own)).join(", ");
  const filled = `${answers.net.sheet}!${answers.net.here}:${answers.corrected.here}`;
  sheet.skip();
  const block = sheet.spill({
    label: "How it is worked with your numbers",
    how: "Only of a step that has an answer, and on your own number of the step before.",
    table: `=IF(AND(show = "yes", INDEX(${filled}, ${step.here}) <> ""), CHOOSE(${step.here}, ${calls}), "")`,
    rows: WORKING_ROWS,
    formats: [undefined, undefined, undefined, undefined, undefined, undefined],
    header: true,
  });
  for (let row = 1; row < WORKING_ROWS; row += 1) sheet.put(block.cell(row, 1).at, { wraps: true });
  return block;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
