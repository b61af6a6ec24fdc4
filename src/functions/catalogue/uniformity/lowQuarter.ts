import type { Show } from "../../../kernel";

function total(values: ArrayLike<number>, count: number): number {
  let sum = 0;
  for (let index = 0; index < count; index += 1) sum += values[index] as number;
  return sum;
}

/** Low-quarter distribution uniformity on symbol x; n / 4 is rounded up. */
export function lowQuarter(readings: readonly number[], show: Show): number {
  const sorted = Float64Array.from(readings).sort();
  const n = show("n = COUNT(x)", readings.length, "count", "Readings");
  const quarter = show("q = ROUNDUP(n / 4, 0)", Math.ceil(n / 4), "count", "Readings in the lowest quarter");
  show("xq = SMALL(x, q)", sorted[quarter - 1] as number, "any one unit", "The highest of the lowest quarter");
  const low = show(
    'low = (SUMIF(x, "<" & xq) + (q - COUNTIF(x, "<" & xq)) * xq) / q',
    total(sorted, quarter) / quarter,
    "any one unit",
    "Mean of the lowest quarter",
  );
  const mean = show("m = AVERAGE(x)", total(readings, n) / n, "any one unit", "Mean of all readings");
  return show("DU = low / m", low / mean, "fraction", "Low-quarter uniformity");
}
