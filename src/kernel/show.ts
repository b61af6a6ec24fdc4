/** What hears the steps of a calculation; the working listens, a cell does not. */
import type { Show } from "./define";
import { fromMetric, toMetric, type QuantityName, type UnitSystem } from "./units";

type RecordStep = (equation: string, value: number, quantity: QuantityName, words: string) => number;

/**
 * A recorder from its three parts, made of the first, which must be a function of its own; what is not to be heard goes
 * to `silent`, by default the recorder itself.
 */
export function showOf(
  { step, toMetric, fromMetric }: { step: RecordStep; toMetric: RecordStep; fromMetric: RecordStep },
  silent?: Show,
): Show {
  const show = Object.assign(step, { toMetric, fromMetric, silent: silent as Show });
  if (silent === undefined) show.silent = show;
  return show;
}

function silentShow(system: UnitSystem): Show {
  return showOf({
    step: (_equation, value) => value,
    toMetric: (_equation, value, quantity) => toMetric(quantity, value, system),
    fromMetric: (_equation, value, quantity) => fromMetric(quantity, value, system),
  });
}

const silent = { us: silentShow("us"), metric: silentShow("metric"), none: silentShow("metric") };

export function silentShowFor(system: UnitSystem | null): Show {
  return silent[system ?? "none"];
}
