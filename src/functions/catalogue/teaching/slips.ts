/** What may lie behind a wrong number: the function's own mistakes, then slips that any calculation can suffer. */
import { compute, mistakeAnswer, silentShowFor, type AnyMistake, type Show } from "../../../kernel";
import type { WorkedCall } from "./workedCall";

/** A slip, and the number that it gives on these inputs. */
export interface Slip {
  readonly words: string;
  readonly gives: number;
}

/** "The flow per hour ..." inside a sentence: a capital stays only where the next letter is one too. */
export function inSentence(words: string): string {
  const [first = "", second = ""] = words;
  return second === second.toLowerCase() ? first.toLowerCase() + words.slice(1) : words;
}

/** The slip as it comes out on these inputs; none where it gives no number. */
export function slipsOf({ entry, read, right }: WorkedCall, mistake: AnyMistake): readonly Slip[] {
  const gives = mistakeAnswer(entry, read, mistake, right);
  return gives === null ? [] : [{ words: inSentence(mistake.slip), gives }];
}

export function ownSlips(call: WorkedCall): readonly Slip[] {
  return call.entry.mistakes.flatMap((mistake) => slipsOf(call, mistake));
}

/** How far one unit is from another that people take for it; both ways round. */
const UNIT_RATIOS: readonly (readonly [ratio: number, words: string])[] = [
  [60, "per minute and per hour, or minutes and hours, were mixed up"],
  [3.785411784, "US gallons and litres were mixed up"],
  [4.54609 / 3.785411784, "US and imperial gallons were mixed up"],
  [2.54, "inches and centimetres were mixed up"],
  [25.4, "inches and millimetres were mixed up"],
  [0.45359237, "pounds and kilograms were mixed up"],
];

export function unitSlips({ right }: WorkedCall): readonly Slip[] {
  return UNIT_RATIOS.flatMap(([ratio, words]) => [
    { words, gives: right * ratio },
    { words, gives: right / ratio },
  ]);
}

const POWERS = [1, 2, 3, 4, 5, 6];

export function powerSlips({ right }: WorkedCall): readonly Slip[] {
  return POWERS.flatMap((power) => {
    const factor = 10 ** power;
    const words =
      power === 2
        ? "a percentage was taken for a fraction, or the decimal point is two places off"
        : `the decimal point is ${power === 1 ? "one place" : `${power} places`} off, or a unit with its prefix was missed`;
    return [
      { words, gives: right * factor },
      { words, gives: right / factor },
    ];
  });
}

export function turnedSlips({ right }: WorkedCall): readonly Slip[] {
  return [
    ...(right === 0 ? [] : [{ words: "the ratio was inverted", gives: 1 / right }]),
    { words: "the sign was turned", gives: -right },
  ];
}

/** A factor left out or used twice: the answer is off by one of the inputs. */
export function factorSlips({ entry, read, right }: WorkedCall): readonly Slip[] {
  return Object.entries(entry.params).flatMap(([name, param]) => {
    const value = read.given[name];
    if (!("symbol" in param) || typeof value !== "number" || value === 0 || Math.abs(value) === 1) return [];
    return [
      { words: `${name} was left out, or used twice`, gives: right / value },
      { words: `${name} was left out, or used twice`, gives: right * value },
    ];
  });
}

/** Rounds each step, so that the calculation goes on with what a student would have written down. */
function roundingShow(places: number, system: WorkedCall["read"]["system"]): Show {
  const silent = silentShowFor(system);
  const scale = 10 ** places;
  const rounded = (value: number): number => Math.round(value * scale) / scale;
  return Object.assign((_equation: string, value: number) => rounded(value), {
    toMetric: (...step: Parameters<Show["toMetric"]>) => rounded(silent.toMetric(...step)),
    fromMetric: (...step: Parameters<Show["fromMetric"]>) => rounded(silent.fromMetric(...step)),
    silent,
  }) as Show;
}

const PLACES = [0, 1, 2];

export function roundingSlips({ entry, read }: WorkedCall): readonly Slip[] {
  return PLACES.flatMap((places) => {
    const answer = attempt(() => compute(entry, read, roundingShow(places, read.system)));
    const digits = places === 0 ? "whole numbers" : `${places} decimal${places === 1 ? "" : "s"}`;
    return typeof answer === "number" ? [{ words: `each step was rounded to ${digits}`, gives: answer }] : [];
  });
}

function attempt<T>(work: () => T): T | null {
  try {
    return work();
  } catch {
    return null;
  }
}

/** Two of the function's own mistakes at once, or one of them and a mixed-up unit. */
export function doubleSlips(call: WorkedCall): readonly Slip[] {
  const { right } = call;
  const own = ownSlips(call);
  if (right === 0) return [];
  const both = (first: Slip, second: Slip): Slip => ({
    words: `${first.words}; and ${second.words}`,
    gives: (first.gives * second.gives) / right,
  });
  return own.flatMap((first, index) => [
    ...own.slice(index + 1).map((second) => both(first, second)),
    ...unitSlips(call).map((second) => both(first, second)),
  ]);
}
