/** Limits are data: here they become the check, and the words of the check. */
import { limitNumber } from "./format";
import type { Limits } from "./define";
import { fromMetric, unitOf, type QuantityName, type UnitSystem } from "./units";

export interface Bounds {
  readonly low: number;
  readonly lowIncluded: boolean;
  readonly high: number;
  readonly highIncluded: boolean;
  readonly whole: boolean;
}

export function boundsOf(limits: Limits, quantity: QuantityName, system: UnitSystem | null): Bounds {
  const inUnits = (limit: number): number => (system === null ? limit : fromMetric(quantity, limit, system));
  return {
    low: inUnits(limits.above ?? limits.atLeast ?? -Infinity),
    lowIncluded: limits.above === undefined,
    high: inUnits(limits.below ?? limits.atMost ?? Infinity),
    highIncluded: limits.below === undefined,
    whole: limits.whole === true,
  };
}

/** Whether a number lies inside; what is not finite lies inside nothing. */
export function within(value: number, bounds: Bounds): boolean {
  if (!Number.isFinite(value)) return false;
  if (!(bounds.lowIncluded ? value >= bounds.low : value > bounds.low)) return false;
  if (!(bounds.highIncluded ? value <= bounds.high : value < bounds.high)) return false;
  return !bounds.whole || Number.isInteger(value);
}

function rangeWords({ low, lowIncluded, high, highIncluded }: Bounds): string {
  const from = limitNumber(low);
  const to = limitNumber(high);
  if (low === -Infinity && high === Infinity) return "a number";
  if (high === Infinity) return lowIncluded ? `${from} or more` : `more than ${from}`;
  if (low === -Infinity) return highIncluded ? `${to} or less` : `less than ${to}`;
  const start = lowIncluded ? `from ${from}` : `more than ${from}`;
  if (lowIncluded) return `${start} to ${highIncluded ? "" : "less than "}${to}`;
  return highIncluded ? `${start}, up to ${to}` : `${start} and less than ${to}`;
}

/** "more than 0 (gal/h or L/h)". */
export function limitsText(limits: Limits, quantity: QuantityName, system: UnitSystem | null): string {
  const bounds = boundsOf(limits, quantity, system);
  const words = bounds.whole ? `a whole number, ${rangeWords(bounds)}` : rangeWords(bounds);
  const unit = unitOf(quantity, system);
  return unit === "count" || unit === "factor" ? words : `${words} (${unit})`;
}
