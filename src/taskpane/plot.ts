/** The answer against one argument, over its usual range, with the present value marked. */
import { takesUnits, type Argument, type FunctionHelp, type Library, type Parameter, type UnitSystem } from "./library";

const POINTS = 61;
const WIDER = 2.5;
const NARROWER = 0.25;
/** As many as anyone counts, where nothing better is known. */
const FEW = 10;
const FEWEST = 3;

export interface Plot {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly present: { readonly x: number; readonly y: number } | null;
  readonly low: number;
  readonly high: number;
}

/** Arguments that can be drawn: single numbers of a function with a single number as its answer. */
export function plottable({ params, result }: FunctionHelp): readonly Parameter[] {
  if (result.shape !== "cell" || result.unit === "") return [];
  const fixed = ["date", "time of day"];
  return params.filter(
    ({ shape, quantity, words }) =>
      shape === "cell" && words === undefined && quantity !== undefined && !fixed.includes(quantity),
  );
}

type Span = readonly [low: number, high: number];

function isWhole({ limits }: Parameter): boolean {
  return limits.startsWith("a whole number");
}

/** Around the present value, or what a fraction or a count can be. */
function spanAround(parameter: Parameter, present: number | null): Span {
  if (parameter.quantity === "count") return [1, Math.max(FEW, Math.ceil((present ?? 0) * WIDER))];
  if (parameter.quantity === "fraction" || present === null || present === 0) return [0, 1];
  return present > 0 ? [present * NARROWER, present * WIDER] : [present * WIDER, present * NARROWER];
}

/** Spans to try, the first that has a line is drawn: the usual range, then what lies around the present value. */
function spansOf(parameter: Parameter, present: number | null, system: UnitSystem): readonly Span[] {
  const usual = parameter.usual?.[system];
  const spans = [...(usual === undefined ? [] : [usual]), spanAround(parameter, present)];
  if (present === null) return spans;
  return spans.map(([low, high]) => [Math.min(low, present), Math.max(high, present)]);
}

function valuesWithin([low, high]: Span, parameter: Parameter): readonly number[] {
  const even = Array.from({ length: POINTS }, (_point, step) => low + ((high - low) * step) / (POINTS - 1));
  return isWhole(parameter) ? [...new Set(even.map(Math.round))] : even;
}

function answerAt(
  library: Library,
  entry: FunctionHelp,
  given: readonly Argument[],
  index: number,
  x: number,
): number | null {
  try {
    const answer = library.call(
      entry.name,
      given.map((value, at) => (at === index ? x : value)),
    );
    return typeof answer === "number" ? answer : null;
  } catch {
    return null;
  }
}

interface Point {
  readonly x: number;
  readonly y: number;
}

type AnswerAt = (x: number) => number | null;

function pointsWithin(span: Span, parameter: Parameter, answer: AnswerAt): readonly Point[] {
  return valuesWithin(span, parameter).flatMap((x) => {
    const y = answer(x);
    return y === null ? [] : [{ x, y }];
  });
}

/** A line over a span; where answers fill a small part of it only, over that part. */
function lineOver(span: Span, parameter: Parameter, answer: AnswerAt): readonly [Span, readonly Point[]] {
  const points = pointsWithin(span, parameter, answer);
  const first = points[0]?.x ?? span[0];
  const last = points[points.length - 1]?.x ?? span[1];
  if (points.length < FEWEST || last - first > (span[1] - span[0]) / 2) return [span, points];
  const part: Span = [first, last];
  return [part, pointsWithin(part, parameter, answer)];
}

/** Null where too few points have an answer to make a line. */
export function plotOf(
  library: Library,
  entry: FunctionHelp,
  given: readonly Argument[],
  parameter: Parameter,
  system: UnitSystem,
): Plot | null {
  const index = entry.params.indexOf(parameter);
  const padded = entry.params.map((_param, at) => given[at]);
  const value = padded[index] ?? parameter.default;
  const present = typeof value === "number" ? value : null;
  const answer: AnswerAt = (x) => answerAt(library, entry, padded, index, x);
  const spans = spansOf(parameter, present, takesUnits(entry) ? systemOf(entry, padded, system) : system);
  const lines = spans.map((span) => lineOver(span, parameter, answer));
  const [span, points] = lines.find(([, found]) => found.length >= FEWEST) ?? [];
  if (span === undefined || points === undefined) return null;
  const y = present === null ? null : answer(present);
  const [low, high] = span;
  return { points, present: present === null || y === null ? null : { x: present, y }, low, high };
}

function systemOf({ params }: FunctionHelp, given: readonly Argument[], shown: UnitSystem): UnitSystem {
  const word = given[params.findIndex(({ name }) => name === "units")];
  return word === "us" || word === "metric" ? word : shown;
}
