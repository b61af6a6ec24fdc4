/** What the trade usually sees, as a verdict in words: a warning for a person, never an error. */
import type { Entry, UsualRange } from "./define";
import { isScalar } from "./define";
import { limitNumber } from "./format";
import type { UnitSystem } from "./units";

/** The usual range of an argument, or of the answer where the argument is "". */
export function usualOf(entry: Entry, argument: string): UsualRange | undefined {
  if (argument === "") return isScalar(entry.result) ? entry.result.usual : undefined;
  const param = entry.params[argument];
  return param !== undefined && "usual" in param ? param.usual : undefined;
}

/** "ok", or which way a number lies outside and the slip that is likely. */
export function usualVerdict(usual: UsualRange, value: number, system: UnitSystem): string {
  const [low, high] = usual[system];
  if (value >= low && value <= high) return "ok";
  const side = value < low ? "low" : "high";
  const slip = usual[side] ?? `usually ${limitNumber(low)} to ${limitNumber(high)}`;
  return `${side}: ${slip}`;
}
