/** What the measures of evenness are made of: each a step of the working, on readings x with n and mean m. */
import type { QuantityName, Show } from "../../../kernel";

type Readings = readonly number[];

export const NO_MEAN = "readings are all 0; there is no mean to hold them against";

export function smallest(readings: Readings): number {
  let found = Infinity;
  for (const reading of readings) if (reading < found) found = reading;
  return found;
}

export function largest(readings: Readings): number {
  let found = -Infinity;
  for (const reading of readings) if (reading > found) found = reading;
  return found;
}

/**
 * The mean of the first values. Only what lies above the lowest is summed, so that equal readings have exactly their
 * own value as mean, and a part of the lowest never a larger mean than the whole. NaN where no double holds the sum.
 */
function average(values: ArrayLike<number>, count: number, lowest: number): number {
  let above = 0;
  for (let index = 0; index < count; index += 1) above += (values[index] as number) - lowest;
  return above < Infinity ? lowest + above / count : NaN;
}

export function mean(readings: Readings): number {
  return average(readings, readings.length, smallest(readings));
}

/** The mean of the lowest or, from the other end, the highest readings. */
export function meanOfLowest(readings: Readings, count: number): number {
  const sorted = Float64Array.from(readings).sort();
  return average(sorted, count, sorted[0] as number);
}

export function meanOfHighest(readings: Readings, count: number): number {
  const sorted = Float64Array.from(readings).sort().reverse();
  return average(sorted, count, sorted[count - 1] as number);
}

export function meanDeviation(readings: Readings, around: number): number {
  let sum = 0;
  for (const reading of readings) sum += Math.abs(reading - around);
  return sum / readings.length;
}

export function sampleDeviation(readings: Readings, around: number): number {
  let sum = 0;
  for (const reading of readings) sum += (reading - around) ** 2;
  return Math.sqrt(sum / (readings.length - 1));
}

export function showCount(readings: Readings, show: Show): number {
  return show("n = COUNT(x)", readings.length, "count", "Readings");
}

export function showMean(readings: Readings, show: Show, quantity: QuantityName = "any one unit"): number {
  return show("m = AVERAGE(x)", mean(readings), quantity, "Mean of all readings");
}

/** The mean of the lowest quarter; n / 4 is rounded up. */
export function showLowQuarter(readings: Readings, n: number, show: Show): number {
  const sorted = Float64Array.from(readings).sort();
  const quarter = show("q = ROUNDUP(n / 4, 0)", Math.ceil(n / 4), "count", "Readings in the lowest quarter");
  show("xq = SMALL(x, q)", sorted[quarter - 1] as number, "any one unit", "The highest of the lowest quarter");
  return show(
    'low = (SUMIF(x, "<" & xq) + (q - COUNTIF(x, "<" & xq)) * xq) / q',
    average(sorted, quarter, sorted[0] as number),
    "any one unit",
    "Mean of the lowest quarter",
  );
}

export function showDu(low: number, m: number, show: Show): number {
  return show("DU = low / m", low / m, "fraction", "Low-quarter uniformity");
}

/** Beyond this part of the mean, 1 - D / m loses digits: of two readings, one of them nearly 0, it loses all. */
const VERY_UNEVEN = 0.5;

/** Christiansen's coefficient, from the mean deviation D or, where readings are very uneven, without it. */
export function showCu(readings: Readings, m: number, show: Show): number {
  const deviation = meanDeviation(readings, m);
  if (deviation > VERY_UNEVEN * m) return showUnevenCu(readings, m, show);
  show("D = AVEDEV(x)", deviation, "any one unit", "Mean deviation from the mean");
  return show("CU = 1 - D / m", 1 - deviation / m, "fraction", "Christiansen's coefficient");
}

/**
 * Readings below the mean lie as far from it in all as those above. With k of them, L their sum, D is
 * 2 (k m - L) / n, which leaves a coefficient that keeps its digits near 0.
 */
function showUnevenCu(readings: Readings, m: number, show: Show): number {
  const below = readings.filter((reading) => reading < m);
  const sum = below.reduce((all, reading) => all + reading, 0);
  show('k = COUNTIF(x, "<" & m)', below.length, "count", "Readings below the mean");
  show('L = SUMIF(x, "<" & m)', sum, "any one unit", "Their sum");
  return show(
    "CU = (n - 2 * k + 2 * L / m) / n",
    (readings.length - 2 * below.length + (2 * sum) / m) / readings.length,
    "fraction",
    "Christiansen's coefficient: 1 - D / m, where D is 2 (k m - L) / n",
  );
}

/** The coefficient of variation. */
export function showCv(readings: Readings, m: number, show: Show): number {
  const deviation = show("s = STDEV(x)", sampleDeviation(readings, m), "any one unit", "Standard deviation, n - 1");
  return show("Cv = s / m", deviation / m, "fraction", "Coefficient of variation");
}
