import type { Show } from "../../../kernel";

/**
 * Christiansen's factor, on symbol N; the exponent's symbol, or its number, is given. A line with one outlet has no
 * factor: all its flow runs to the end.
 */
export function outletFactor(outlets: number, exponent: number, exponentText: string, show: Show): number {
  const m = exponentText;
  return show(
    `F = IF(N = 1, 1, 1 / (${m} + 1) + 1 / (2 * N) + SQRT(${m} - 1) / (6 * N^2))`,
    outlets === 1 ? 1 : 1 / (exponent + 1) + 1 / (2 * outlets) + Math.sqrt(exponent - 1) / (6 * outlets ** 2),
    "factor",
    "Loss of a line with outlets over the loss without them",
  );
}
