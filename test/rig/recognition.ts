/**
 * Are the known mistakes recognised when their own answer is given back? On draws around each example; an answer counts
 * that lies three tolerances or more from the right one, as a class sheet sees to by drawing again.
 */
import { catalogue } from "../../src/functions/catalogue";
import { typedDigits } from "../../src/functions/catalogue/teaching/answers";
import { drawBelow } from "../../src/functions/catalogue/teaching/hash";
import { inSentence } from "../../src/functions/catalogue/teaching/slips";
import {
  evaluate,
  FunctionError,
  inOrder,
  isScalar,
  mistakeAnswer,
  readArguments,
  type ArgumentInput,
  type Entry,
} from "../../src/kernel";

export const TOLERANCE = 0.02;
const APART = 3 * TOLERANCE;
export const DRAWS = 200;
const MOST_TRIES = 20_000;
const DIGITS = 5;
/** On a single digit nothing is claimed, by rule: such an answer is not counted. */
const FEWEST_DIGITS = 2;

const GRAIN = 1_000_000;

/** Numbers from 0 to below 1, the same in every run. */
function drawer(): () => number {
  let count = 0;
  return () => drawBelow(GRAIN, ["recognition", String((count += 1))]) / GRAIN;
}

function moved(value: unknown, draw: () => number, isFraction: boolean, isWhole: boolean): unknown {
  if (typeof value === "number") {
    const factor = 0.6 + 1.2 * draw();
    if (isWhole || (Number.isInteger(value) && value > 0 && value < 100))
      return Math.max(1, Math.round(value * factor));
    return isFraction ? Math.min(0.99, value * factor) : value * factor;
  }
  return Array.isArray(value) ? value.map((each) => moved(each, draw, isFraction, isWhole)) : value;
}

/** Dates, places and words stay; every other number is drawn between 0.6 and 1.8 times that of the example. */
function drawn(entry: Entry, args: readonly ArgumentInput[], draw: () => number): ArgumentInput[] {
  const kept = ["date", "latitude", "time of day"];
  return Object.values(entry.params).map((param, index) => {
    const value = args[index];
    if (!("quantity" in param) || kept.includes(param.quantity)) return value;
    return moved(value, draw, param.quantity === "fraction", param.whole === true) as ArgumentInput;
  });
}

interface Draw {
  readonly args: readonly ArgumentInput[];
  readonly right: number;
  readonly answers: readonly (number | null)[];
}

function attempt(entry: Entry, args: readonly ArgumentInput[]): Draw | null {
  try {
    const right = evaluate(entry, args);
    if (typeof right !== "number" || right === 0) return null;
    const read = readArguments(entry, args);
    return { args, right, answers: entry.mistakes.map((mistake) => mistakeAnswer(entry, read, mistake, right)) };
  } catch (error) {
    if (error instanceof FunctionError) return null;
    throw error;
  }
}

/** A mistake too near to the right answer on these inputs cannot be told from it, and no class sheet would draw them. */
function isApart(gives: number, right: number): boolean {
  return gives !== 0 && Math.abs(gives / right - 1) >= APART;
}

export function drawsOf(entry: Entry): readonly Draw[] {
  const draw = drawer();
  const examples = entry.examples.map(({ given }) => inOrder(entry, given));
  const found: Draw[] = [];
  for (let tries = 0; tries < MOST_TRIES && found.length < DRAWS; tries += 1) {
    const made = attempt(entry, drawn(entry, examples[tries % examples.length] as ArgumentInput[], draw));
    if (made !== null) found.push(made);
  }
  return found;
}

export interface Recognition {
  readonly name: string;
  readonly draws: number;
  readonly mistakes: number;
  readonly given: number;
  readonly recognised: number;
  /** Recognised, with a second one named beside it. */
  readonly withAnother: number;
  readonly confused: readonly { readonly slip: string; readonly told: string }[];
  /** Right answers that were not called right. */
  readonly rightMissed: number;
}

/** Functions whose answers a student works out: one number, with known mistakes. */
export const diagnosed: readonly Entry[] = catalogue.filter(
  ({ result, mistakes }) => isScalar(result) && mistakes.length > 0,
);

function tell(entry: Entry, answer: number, args: readonly ArgumentInput[]): string {
  const diagnose = catalogue.find(({ name }) => name === "DIAGNOSE_ANSWER") as Entry;
  return evaluate(diagnose, [answer, entry.name, TOLERANCE, 2, ...args]) as string;
}

export function recognitionOf(entry: Entry): Recognition {
  const draws = drawsOf(entry);
  const told = draws.flatMap(({ args, answers, right }) =>
    entry.mistakes.flatMap(({ slip }, index) => {
      const gives = answers[index];
      if (gives === null || gives === undefined || !isApart(gives, right)) return [];
      const typed = Number(gives.toPrecision(DIGITS));
      return typedDigits(typed).digits < FEWEST_DIGITS ? [] : [{ slip, told: tell(entry, typed, args) }];
    }),
  );
  const isNamed = ({ slip, told: text }: { slip: string; told: string }): boolean => text.includes(inSentence(slip));
  const recognised = told.filter(isNamed);
  return {
    name: entry.name,
    draws: draws.length,
    mistakes: entry.mistakes.length,
    given: told.length,
    recognised: recognised.length,
    withAnother: recognised.filter(({ told: text }) => text.includes(", or when ")).length,
    confused: told.filter((each) => !isNamed(each)),
    rightMissed: draws.filter(
      ({ args, right }) => !tell(entry, Number(right.toPrecision(DIGITS)), args).startsWith("right"),
    ).length,
  };
}

/** docs/diagnosis.md */
export function diagnosisPage(all: readonly Recognition[]): string {
  const sum = (count: (each: Recognition) => number): number => all.reduce((total, each) => total + count(each), 0);
  const given = sum((each) => each.given);
  const confused = sum(({ confused: list }) => list.length);
  return [
    "<!-- Generated by `npm run diagnosis`; do not edit. -->",
    "",
    "# Are the known mistakes recognised?",
    "",
    `Each mistake's own answer, to ${DIGITS} digits, was given back to DIAGNOSE_ANSWER (detail 2, tolerance ${TOLERANCE}) on up to ${DRAWS} draws around each function's examples; only answers count that lie three tolerances or more from the right one and have two digits or more: on a single digit nothing is claimed. Of ${given} answers ${given - confused} were recognised, ${sum((each) => each.withAnother)} of them with a second mistake named as equally near, and ${confused} were confused (${((100 * confused) / given).toFixed(2)} %). No right answer was called wrong: ${sum((each) => each.rightMissed)} of ${sum((each) => each.draws)}.`,
    "",
    "| function | mistakes | draws | answers given back | recognised | with a second one | confused |",
    "| --- | --- | --- | --- | --- | --- | --- |",
    ...all.map(
      (each) =>
        `| ${each.name} | ${each.mistakes} | ${each.draws} | ${each.given} | ${each.recognised} | ${each.withAnother} | ${each.confused.length} |`,
    ),
    "",
  ].join("\n");
}
