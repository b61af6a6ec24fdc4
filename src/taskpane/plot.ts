/** The answer against one argument, over its usual range, with the present value marked. */
import { takesUnits, type Argument, type FunctionHelp, type Library, type Parameter, type UnitSystem } from "./library";

const POINTS = 61;
const WIDER = 2.5;
const NARROWER = 0.25;

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

function spanOf({ usual, quantity }: Parameter, present: number | null, system: UnitSystem): readonly [number, number] {
  const range = usual?.[system];
  const around = present === null || present === 0 ? null : [present * NARROWER, present * WIDER].sort((a, b) => a - b);
  const [low, high] = range ?? (quantity === "fraction" ? [0, 1] : (around ?? [0, 1]));
  if (present === null) return [low as number, high as number];
  return [Math.min(low as number, present), Math.max(high as number, present)];
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

/** Null where too few points of the range have an answer to make a line. */
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
  const [low, high] = spanOf(parameter, present, takesUnits(entry) ? systemOf(entry, padded, system) : system);
  const points = Array.from({ length: POINTS }, (_point, step) => low + ((high - low) * step) / (POINTS - 1)).flatMap(
    (x) => {
      const y = answerAt(library, entry, padded, index, x);
      return y === null ? [] : [{ x, y }];
    },
  );
  if (points.length < 3) return null;
  const y = present === null ? null : answerAt(library, entry, padded, index, present);
  return { points, present: present === null || y === null ? null : { x: present, y }, low, high };
}

function systemOf({ params }: FunctionHelp, given: readonly Argument[], shown: UnitSystem): UnitSystem {
  const word = given[params.findIndex(({ name }) => name === "units")];
  return word === "us" || word === "metric" ? word : shown;
}
