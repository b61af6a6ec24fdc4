/** The time value of equal yearly savings, shared by the functions of payback. */
import type { Show } from "../../../kernel";

/**
 * Years until equal savings have paid the investment back, in closed form, on symbols C, r and the one given for the
 * saving; null where they never do.
 */
export function equalSavings(
  investment: number,
  saving: number,
  rate: number,
  show: Show,
  symbol = "S",
): number | null {
  if (rate === 0) {
    const years = investment / saving;
    return saving > 0 ? show(`y = C / ${symbol}`, years, "years", "Investment over the saving of a year") : null;
  }
  const share = show(
    `p = r * C / ${symbol}`,
    (rate * investment) / saving,
    "factor",
    "What interest alone takes of the saving",
  );
  if (!(saving > 0) || share >= 1) return null;
  return show(
    "y = -1 * LN(1 - p) / LN(1 + r)",
    -Math.log1p(-share) / Math.log1p(rate),
    "years",
    "Years until the discounted savings reach the investment",
  );
}

/** Today's worth of 1 a year at each year's end over a life, on symbols r and n. */
export function worthOfOneAYear(rate: number, life: number, show: Show): number {
  const words = "Today's worth of 1 a year over the life";
  if (rate === 0) return show("a = n", life, "factor", words);
  return show("a = (1 - (1 + r) ^ (-1 * n)) / r", -Math.expm1(-life * Math.log1p(rate)) / rate, "factor", words);
}
