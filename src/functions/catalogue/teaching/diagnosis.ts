/** What lies behind an answer: the first hit in a fixed order, in words without blame. */
import { fullNumber, shortNumber, type CellInput, type Step } from "../../../kernel";
import { isRounded, isUnanswered, isWithin, typedDigits } from "./answers";
import {
  doubleSlips,
  factorSlips,
  ownSlips,
  powerSlips,
  roundingSlips,
  turnedSlips,
  unitSlips,
  type Slip,
} from "./slips";
import type { WorkedCall } from "./workedCall";

/** How much a student is told: 0 right or wrong, 1 which step, 2 the mistake, 3 the numbers too. */
export type Detail = 0 | 1 | 2 | 3;

const FEWEST_DIGITS = 2;
/** Two slips whose answers lie this close to the typed one cannot be told apart by it. */
const AS_NEAR = 1e-6;

/** In this order; the first kind in which any slip fits is the one that is told. */
const KINDS: readonly ((call: WorkedCall) => readonly Slip[])[] = [
  ownSlips,
  unitSlips,
  powerSlips,
  turnedSlips,
  roundingSlips,
  factorSlips,
  doubleSlips,
];

function distance(answer: number, gives: number): number {
  return Math.abs(answer - gives) / Math.abs(gives === 0 ? 1 : gives);
}

/** The nearest slip that gives this answer, and a second that is as near; none that lies within tolerance of the key. */
function fitting(slips: readonly Slip[], answer: number, right: number, tolerance: number): readonly Slip[] {
  const found = slips
    .filter(
      ({ gives }) =>
        !isWithin(gives, right, tolerance) && (isWithin(answer, gives, tolerance) || isRounded(answer, gives)),
    )
    .sort((a, b) => distance(answer, a.gives) - distance(answer, b.gives));
  const [first, ...others] = found;
  if (first === undefined) return [];
  const isAsNear = ({ words, gives }: Slip): boolean =>
    words !== first.words &&
    (Math.abs(distance(answer, gives) - distance(answer, first.gives)) <= AS_NEAR ||
      (isRounded(answer, gives) && isRounded(answer, first.gives)));
  return [first, ...others.filter(isAsNear).slice(0, 1)];
}

/** A step that is worked out, and its number in SHOW_WORKING, which shows what was looked up too. */
interface WorkedStep extends Step {
  readonly number: number;
}

function stepText({ number, words, symbol, formula }: WorkedStep): string {
  return `step ${number}, ${words}: ${symbol} = ${formula}`;
}

function workedSteps({ working }: WorkedCall): readonly WorkedStep[] {
  return working.steps
    .filter(({ silent }) => !silent)
    .map((step, index) => ({ ...step, number: index + 1 }))
    .filter(({ formula }) => formula !== "");
}

/** The step behind the one whose result the typed answer is, or else the last: where to look again. */
function stepToLookAt(call: WorkedCall, answer: number, tolerance: number): string {
  const steps = workedSteps(call);
  const last = steps.length - 1;
  const stopped = steps.findIndex(({ value }) => isWithin(answer, value, tolerance));
  const step = steps[stopped >= 0 ? Math.min(stopped + 1, last) : last];
  return step === undefined ? "the units and the order of the numbers" : stepText(step);
}

function firstStep(call: WorkedCall): string {
  const [first] = workedSteps(call);
  return first === undefined ? "start again from the numbers" : `start at ${stepText(first)}`;
}

function withNumbers(text: string, slips: readonly Slip[], right: number): string {
  const gave = [...new Set(slips.map(({ gives }) => shortNumber(gives)))].join(" or ");
  return `${text} (that gives ${gave}; right is ${shortNumber(right)})`;
}

function wrong(call: WorkedCall, answer: number, tolerance: number, detail: Detail): string {
  if (detail === 0) return "wrong: not yet the right number";
  if (detail === 1) return `wrong: look again at ${stepToLookAt(call, answer, tolerance)}`;
  if (typedDigits(answer).digits < FEWEST_DIGITS) {
    return `wrong: one digit tells too little; give two or more, and ${firstStep(call)}`;
  }
  for (const kind of KINDS) {
    const slips = fitting(kind(call), answer, call.right, tolerance);
    if (slips.length === 0) continue;
    const text = `wrong: ${fullNumber(answer)} is what comes out when ${slips.map(({ words }) => words).join(", or when ")}`;
    return detail === 3 ? withNumbers(text, slips, call.right) : text;
  }
  const text = `wrong: no known mistake gives this; ${firstStep(call)}`;
  return detail === 3 ? `${text} (right is ${shortNumber(call.right)})` : text;
}

export function diagnose(answer: CellInput, call: WorkedCall, tolerance: number, detail: Detail): string {
  const { right } = call;
  if (isUnanswered(answer, right)) return "not answered";
  if (typeof answer !== "number") return "not answered: type a number, without its unit";
  if (isWithin(answer, right, tolerance)) return "right";
  return isRounded(answer, right) ? "right, rounded" : wrong(call, answer, tolerance, detail);
}
